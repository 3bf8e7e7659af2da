"""Scores and their tables: right of tried, and a text that stays a text in any grade book."""

import csv
from collections.abc import Iterator
from datetime import date, timedelta
from io import BytesIO, StringIO
from pathlib import Path

import pytest
from openpyxl import load_workbook

from onewhole.desk.classes.class_list import new_class
from onewhole.desk.classes.class_records import NotThere, Store, open_book, set_night
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.classes.papers import keep_papers
from onewhole.desk.classes.pupil_days import keep_days
from onewhole.desk.classes.score_days import score_days
from onewhole.desk.classes.score_tables import night_csv, night_xlsx, range_csv, range_xlsx
from onewhole.desk.classes.scores import night_scores, owed_in, scores
from onewhole.desk.marking.cells import Change, keep_cells, read_cell_as
from onewhole.desk.marking.readings import Reading
from onewhole.errors import InputError
from tests.kit.marking_book import NOW

DAY = date(2026, 9, 1)
TYPED = "title: Kite tails\n1. 9 5/8 - 4 6/8\n2. 3/4 - 1/4\n3. 52 - 27\n"
NAMES = ("Ada", "=Bo", "Cy", "Di", "Ed")
WROTE = {"K01": ("4 7/8", "1/2", "25"), "K02": ("5 1/8", "=2/4", "-"), "K03": ("39/8", "3-4", "smudge")}


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """Five pupils and a night: three wrote, K04 was absent, K05 joined later; the smudge is read as 25."""
    made = open_book(tmp_path / "room12.class")
    new_class(made, "Room 12", 0, NAMES, NOW)
    set_night(made, 1, TYPED, DAY, NOW)
    cells = [
        Change(code, label, text)
        for code, texts in WROTE.items()
        for label, text in zip("123", texts, strict=True)
    ]
    keep_cells(made, 1, 1, cells, now=NOW, by="teacher")
    keep_papers(made, 1, 1, {"K04": "absent"}, {}, now=NOW, by="teacher")
    keep_days(made, 1, {"K05": ("2026-09-02", "")}, {})
    reading = Reading("smudge", "25")
    read_cell_as(made, 1, 1, reading, code="K03", label="3", now=NOW, by="teacher")
    yield made
    made.close()


def test_right_of_tried_is_the_same_before_and_after_a_night_is_read(book: Store) -> None:
    """Right in amount, as the teacher reads a cell; nothing written is not tried."""
    before = night_scores(book, 1, 1).of
    assert {code: (one.right, one.tried, one.wrote) for code, one in before.items()} == {
        "K01": (3, 3, True),
        "K02": (1, 2, True),
        "K03": (2, 3, True),
        "K04": (0, 0, False),
    }
    mark_missing(book, 1, lambda _done, _of: None)
    assert night_scores(book, 1, 1).of == before


def test_scores_of_several_nights_add_up_and_say_who_owes(book: Store) -> None:
    """A night outside the days is not counted, and nobody owes what is due only tomorrow."""
    for later in (1, 8):
        set_night(book, 1, TYPED, DAY + timedelta(days=later), NOW)
    cells = [Change("K01", "3", "25"), Change("K05", "3", "35")]
    keep_cells(book, 1, 2, cells, now=NOW, by="teacher")
    keep_papers(book, 1, 2, {"K03": "late", "K04": "no page"}, {}, now=NOW, by="teacher")
    found = scores(book, 1, DAY, DAY + timedelta(days=1))
    assert [pupil.code for pupil in found.pupils] == ["K01", "K02", "K03", "K04", "K05"]
    assert [found.total(code) for code in ("K01", "K02", "K04", "K05")] == [(4, 4), (1, 2), (0, 0), (0, 1)]
    assert owed_in(found, DAY + timedelta(days=1)) == ()
    owed = owed_in(found, DAY + timedelta(days=2))
    assert [(one.shown, [page.night.number for page in one.nights]) for one in owed] == [
        ("K02 =Bo", [2]),
        ("K03 Cy", [2]),
    ]
    rows = list(csv.reader(StringIO(range_csv(book, 1, DAY, DAY + timedelta(days=1)), newline="")))
    assert rows[0][:5] == [
        "Code",
        "Name",
        "2026-09-01 Kite tails: right",
        "2026-09-01 Kite tails: tried",
        "2026-09-01 Kite tails: paper",
    ]
    assert [row[1:] for row in rows[3:]] == [
        ["Cy", "2", "3", "", "", "", "late, not here yet", "2", "3"],
        ["Di", "", "", "absent", "", "", "no page", "0", "0"],
        ["Ed", "", "", "not in the class", "0", "1", "", "0", "1"],
    ]
    made = range_xlsx(book, 1, DAY, DAY + timedelta(days=1), NOW)
    cells_of = list(load_workbook(BytesIO(made))["Scores"].values)
    assert [["" if cell is None else str(cell) for cell in row] for row in cells_of] == [
        [cell.removeprefix("'") for cell in row] for row in rows
    ]


def test_a_night_as_csv_has_no_formula_and_no_date(book: Store) -> None:
    """Marks are 1 and 0; whatever is more than a plain number has an apostrophe before it."""
    head, *rows = csv.reader(StringIO(night_csv(book, 1, 1), newline=""))
    assert head == [
        *("Code", "Name", "Paper", "Right", "Tried", "Asked", "1", "2", "3"),
        *("1 answer", "2 answer", "3 answer"),
    ]
    assert rows == [
        ["K01", "Ada", "", "3", "3", "3", "1", "1", "1", "'4 7/8", "'1/2", "25"],
        ["K02", "'=Bo", "", "1", "2", "3", "0", "1", "", "'5 1/8", "'=2/4", "'-"],
        ["K03", "Cy", "", "2", "3", "3", "1", "?", "1", "'39/8", "'3-4", "'smudge"],
        ["K04", "Di", "absent", "", "", "3", "", "", "", "", "", ""],
    ]


def test_a_night_as_a_workbook_has_cells_of_text(book: Store) -> None:
    """Read back with formulas kept: counts are numbers, and every answer is the text that was typed."""
    made = load_workbook(BytesIO(night_xlsx(book, 1, 1, NOW)))
    marks, answers = made["Scores"], made["Answers"]
    assert [cell.value for cell in marks[2]] == ["K01", "Ada", None, 3, 3, 3, 1, 1, 1]
    assert [[cell.value for cell in row] for row in answers.iter_rows(min_row=2, max_row=5)] == [
        [None, "asked", "9 5/8 - 4 6/8", "3/4 - 1/4", "52 - 27"],
        [None, "right answer", "4 7/8", "2/4", "25"],
        ["K01", "Ada", "4 7/8", "1/2", "25"],
        ["K02", "=Bo", "5 1/8", "=2/4", "-"],
    ]
    kinds = {
        (cell.data_type, cell.number_format)
        for row in answers.iter_rows()
        for cell in row
        if cell.value is not None
    }
    assert kinds == {("s", "@")}
    with pytest.raises(NotThere):
        night_xlsx(book, 1, 9, NOW)


@pytest.mark.parametrize(
    ("typed", "days"),
    [
        ((None, None), ("2026-11-09", "2026-11-25")),
        ((None, "2027-06-30"), ("2026-11-09", "2027-06-30")),
        ((None, "2026-10-01"), ("2026-09-14", "2026-10-01")),
        (("2026-11-20", None), ("2026-11-20", "2026-11-25")),
    ],
)
def test_the_usual_days_are_three_weeks_up_to_today(
    typed: tuple[str | None, str | None], days: tuple[str, str]
) -> None:
    """A last day to come moves no first one; the browser and the terminal ask the same."""
    first, last = (None if day is None else date.fromisoformat(day) for day in typed)
    assert tuple(map(str, score_days(first, last, date(2026, 11, 25)))) == days


def test_a_last_day_before_the_first_is_refused() -> None:
    """Also where the first is today's usual one."""
    with pytest.raises(InputError, match="before the first"):
        score_days(date(2026, 11, 26), None, date(2026, 11, 25))
