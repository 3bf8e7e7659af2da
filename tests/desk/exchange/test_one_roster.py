"""OneRoster 1.2: classes in, results out; every rule that a list can break is told with file and line."""

import csv
import zipfile
from datetime import UTC, date, datetime
from io import BytesIO, StringIO
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import open_book, rooms, set_night
from onewhole.desk.classes.papers import keep_papers
from onewhole.desk.exchange.class_lists import add_classes, classes_listed, roster_classes
from onewhole.desk.exchange.results_package import results_package
from onewhole.desk.exchange.roster_files import COLUMNS, DATA_FILES, roster_package
from onewhole.errors import InputError
from onewhole.store.answers import KeptAnswer, keep_answers
from tests.kit.open_documents import open_document, sheet_xml
from tests.kit.rosters import USERS, packed, roster
from tests.kit.workbooks import workbook

WHEN = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)
DAYS = (date(2026, 9, 1), date(2026, 9, 2))

# Rules, columns and vocabularies are those of OneRoster 1.2, CSV binding (1EdTech), as they stand in
# shared/domain/interchange.md, part 1, which was read there; the tests 1 to 3 of its part 7 are here.


def test_classes_and_pupils_come_in() -> None:
    """By enrollments, students alone; the preferred name where one is, signs and commas as they are."""
    classes = classes_listed(roster(), "roster.zip")
    assert [(one.title, one.sourced_id, one.school, one.term) for one in classes] == [
        ("Room 12", "c-12", "s-1", "t-1"),
        ("Room 7", "c-7", "s-1", "t-1"),
    ]
    assert classes[0].pupils == (
        ("u-1", "Ada, 'Lovelace'"),
        ("u-2", 'Bo "B" Núñez'),
        ("u-3", "Cy =cmd"),
    )
    assert classes_listed(roster(), "roster.zip", "room 7") == classes[1:]
    assert classes_listed(roster(), "roster.zip", "c-7") == classes[1:]


def test_results_go_out_and_say_what_was_graded(tmp_path: Path) -> None:
    """A line item a night, a result a pupil; no name, no zero that nobody gave, CASE where it is known."""
    book = open_book(tmp_path / "room12.class")
    add_classes(book, classes_listed(roster(), "roster.zip"), WHEN)
    assert [(one.name, len(one.pupils)) for one in rooms(book)] == [("Room 12", 3), ("Room 7", 1)]
    night = set_night(book, 1, "title: Kites, all\n1. 5 1/8 - 2 5/8\n2. 3/4 - 1/4", DAYS[0], WHEN).night
    keep_answers(book, [KeptAnswer(night.number, "K01", "1", "2 1/2", WHEN, "teacher")])
    keep_papers(book, 1, night.number, {"K02": "excused"}, {}, now=WHEN, by="teacher")
    made = results_package(book, 1, DAYS, (roster(), "roster.zip"))
    assert b"Lovelace" not in made
    package = roster_package(made, "results.zip")
    assert {name for name in DATA_FILES if package.kinds[name] == "bulk"} == {
        "categories",
        "lineItems",
        "lineItemLearningObjectiveIds",
        "results",
    }
    (item,) = package.rows("lineItems")
    assert (item["title"], item["classSourcedId"], item["resultValueMax"]) == ("Kites, all", "c-12", "2")
    results = [
        (row["studentSourcedId"], row["scoreStatus"], row["score"], row["missing"])
        for row in package.rows("results")
    ]
    assert results == [
        ("u-1", "fully graded", "1", "false"),
        ("u-2", "exempt", "", "false"),
        ("u-3", "not submitted", "", "true"),
    ]
    ids = {row["learningObjectiveId"] for row in package.rows("lineItemLearningObjectiveIds")}
    # 4.NF.B.3c and 4.NF.B.3a in the framework of shared/domain/interchange.md, part 3.
    assert ids == {"a044d6df-82ca-5175-abdc-ac4589ef330d", "d79178e1-3138-5c45-8a35-0ced236b025e"}
    with pytest.raises(InputError, match="Pupil K01 is not by name in the class Room 7"):
        results_package(book, 1, DAYS, (roster(), "roster.zip"), "Room 7")
    with pytest.raises(InputError, match="There is a class called"):
        add_classes(book, classes_listed(roster(), "roster.zip", "Room 12"), WHEN)
    assert len(rooms(book)) == 2
    book.close()


def test_a_package_has_every_file_in_its_manifest(tmp_path: Path) -> None:
    """Twenty-one, each said to be there or not; lines end as RFC 4180 wants them."""
    assert len(DATA_FILES) == 21
    with zipfile.ZipFile(BytesIO(roster())) as files:
        text = files.read("manifest.csv").decode()
    assert text.startswith("propertyName,value\r\nmanifest.version,1.0\r\noneroster.version,1.2\r\n")
    assert sum(row[0].startswith("file.") for row in csv.reader(StringIO(text))) == 21


_HEAD = ",".join(COLUMNS["users"])
_LONG = "k" * 10_000


@pytest.mark.asvs("V5.2.1", "V5.2.3")
@pytest.mark.parametrize(
    ("changed", "why"),
    [
        ({"manifest": "propertyName;value\r\n"}, r"propertyName,value \(roster.zip: manifest.csv, line 1\)"),
        ({"manifest": "propertyName,value\r\noneroster.version,1.1\r\n"}, "OneRoster 1.1, and 1.2 is read"),
        ({"users": USERS.replace("orgSourcedIds", "x").replace("enabledUser", "enabledUser,role")}, "roles"),
        ({"users": USERS.replace("givenName", "firstName", 1)}, "Column 7 is called givenName"),
        ({"users": USERS.replace("Cy", '"C\ny"')}, "has a line break"),
        ({"users": USERS.replace("u-3,", "u 3,")}, "“u 3” is no sourcedId"),
        ({"users": USERS.replace("u-3,", "u-9,")}, r"no user u-3 \(roster.zip: enrollments.csv, line 4\)"),
        (
            {"users": USERS.replace("Cy", _LONG)},
            r"name of 10005 characters \(roster.zip: users.csv, line 4\)",
        ),
        ({"users": USERS.replace("Cy", "C\0y")}, "cannot be seen"),
        ({"users": USERS.replace("Cy", '"C"y')}, r"is no CSV \(roster.zip: users.csv"),
        ({"users": f"{_HEAD}\r\nu-1,,\r\n"}, "has 3 fields and not 22"),
        ({"users": USERS.encode("utf-16")}, "no UTF-8"),
        ({"users": USERS.encode("latin-1")}, r"no UTF-8 \(roster.zip: users.csv, line 3\)"),
        ({"classes": None}, "does not have this file"),
        ({"../classes": "a"}, "outside of it"),
    ],
)
def test_a_wrong_list_is_refused(changed: dict[str, str | bytes | None], why: str) -> None:
    """With the file in the package, the line, and what to ask for."""
    with pytest.raises(InputError, match=why) as told:
        roster_classes(roster(changed), "roster.zip")
    assert told.value.remedy


def test_what_is_no_package_is_refused() -> None:
    """Damaged, a bomb, and a package that says less than it has."""
    for content, why in (
        (roster()[:200] + b"manifest.csv", "damaged, locked, or no package"),
        (packed({"manifest.csv": " " * 60_000_001}), "too large"),
    ):
        with pytest.raises(InputError, match=why):
            classes_listed(content, "roster.zip")


def test_names_come_from_a_spreadsheet() -> None:
    """XLSX, ODS and CSV: the columns that are headed as names, or the only one."""
    rows = [("Code", "First name", "Last name"), ("9", "Ada", "L"), ("8", "=cmd", "")]
    texts = [[str(cell) for cell in row] for row in rows]
    csv_list = "\n".join(",".join(row) for row in texts).encode()
    for content in (csv_list, open_document(sheet_xml("a", texts[:2]))):
        (one,) = classes_listed(content, "list", "Room 12")
        assert [name for _, name in one.pupils][:1] == ["Ada L"]
    (one,) = classes_listed("Ada\nBo Núñez\n".encode(), "list", "Room 12")
    assert [name for _, name in one.pupils] == ["Ada", "Bo Núñez"]


@pytest.mark.parametrize(
    ("content", "called", "why"),
    [
        (workbook([("Name",), (date(2026, 3, 8),)]), "Room 12", "Cell A2 is a date, 3/8/2026, and no name"),
        (b"<table><tr><td>Ada</td></tr></table>", "Room 12", "a web page or XML, and no table"),
        (b"\xef\xbb\xbf\n<?xml version='1.0'?>", "Room 12", "a web page or XML, and no table"),
        (workbook([("Name",), ("=cmd|' /C calc'!A0",)]), "Room 12", "Cell A2 is a formula"),
        (workbook([("Name",), ("k" * 400,)]), "Room 12", "has a name of 400 characters"),
        (workbook([("a", "b"), ("c", "d")]), "Room 12", "Which column has the names"),
        (workbook([("Code", "ID"), ("c", "d")]), "Room 12", "no column of names"),
        (b"Ada\nBo\n", "", "does not say what the class is called"),
    ],
)
def test_a_wrong_list_of_names_is_refused(content: bytes, called: str, why: str) -> None:
    """With the cell."""
    with pytest.raises(InputError, match=why):
        classes_listed(content, "list.xlsx", called)
