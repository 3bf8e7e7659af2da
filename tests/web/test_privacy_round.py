"""A child in every place of the table: told, erased, and told as still there when the last day is over.

One class is worked through a whole round; then the child is erased on its page. What was there before and
after is written down once, and each place is held to its row.
"""

import json
import re
from base64 import b64encode
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path
from typing import Any, assert_never

import pytest

from onewhole.desk.keep.lying import what_lies
from onewhole.desk.keep.place import Erasing, HowHeld, LastDay, Where
from onewhole.desk.keep.places import DataPlace, place_of
from onewhole.store.opening import Store
from tests.kit.doors import NOW, Clock, opened
from tests.kit.paper_cells import CROP
from tests.kit.worked_class import (
    CHILD,
    NIGHT,
    child_answer,
    child_name,
    files_that_tell,
    objects_that_tell,
    tells,
    work_through,
)

#: What the program cannot reach in the test: the exports that the teacher saved.
SAVED = {"given/held-on-k01.json", "given/held-on-k01.csv"}


@dataclass(frozen=True, slots=True)
class Seen:
    """What was found at one moment: files by place, those that tell, rows that tell and rows in all."""

    lying: dict[DataPlace, tuple[str, ...]]
    telling: frozenset[str]
    rows: dict[str, tuple[int, int]]
    others: frozenset[str]


@dataclass(frozen=True, slots=True)
class Walked:
    """The round: before and after, the pages, and what the process held when a list was planted in it."""

    before: Seen
    after: Seen
    held: dict[str, object]
    held_page: str
    over: str
    erase_page: str
    erased: str
    objects: list[str]
    columns: dict[str, tuple[str, ...]]
    no_store: set[str]


def _seen(book: Store, folder: Path) -> Seen:
    rows = {}
    with book.reading() as connection:
        tables = connection.exec_driver_sql("SELECT name FROM sqlite_master WHERE type = 'table'").scalars()
        for table in tuple(tables):
            whole = connection.exec_driver_sql(f'SELECT * FROM "{table}"').all()  # noqa: S608 - our own names
            rows[table] = sum(tells(repr(tuple(row))) for row in whole), len(whole)
    lying = {one.place: one.files for one in what_lies(book.path)}
    placed = {file for files in lying.values() for file in files}
    there = {path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file()}
    return Seen(lying, frozenset(files_that_tell(folder)), rows, frozenset(there - placed - SAVED))


@pytest.fixture(scope="module")
def walked(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Walked]:
    """Work through, look, erase, look again; one planted object holds the name: the search is proven."""
    folder, clock = Path(tmp_path_factory.mktemp("worked")), Clock()
    with opened(folder, clock) as door:
        work_through(door, folder)
        book = door.door.books["mine"]
        columns = {}
        with book.reading() as connection:
            for table in _seen(book, folder).rows:
                found = connection.exec_driver_sql(f'PRAGMA table_info("{table}")').all()
                columns[table] = tuple(row[1] for row in found)
        assert door.post("/mine/keep/until", day="2026-09-01", saw="").status == 303
        before = _seen(book, folder)
        held = json.loads(_hidden(door.get(f"{CHILD}/held.json").text))
        held_page = _hidden(door.get(f"{CHILD}/held").text)
        clock.now = NOW + timedelta(days=1)
        over, erase_page = (_hidden(door.get(page).text) for page in ("/mine/keep", f"{CHILD}/erase"))
        pages = (CHILD, f"{CHILD}/held", f"{CHILD}/held.csv", f"{NIGHT}/marking", f"{NIGHT}/tomorrow")
        no_store = {door.client.get(page).headers["cache-control"] for page in pages}
        door.door.jobs.close()  # nothing is worked out ahead of what is asked for any more
        erased = door.post(f"{CHILD}/erase", sure="K01", backups="yes", saw=child_name()).text
        planted = [child_name()]
        objects = objects_that_tell()
        planted.clear()
        after = _seen(door.door.books["mine"], folder)
        yield Walked(before, after, held, held_page, over, erase_page, erased, objects, columns, no_store)


def _hidden(text: str) -> str:
    """Return a text without what tells: the test's own objects are not those of the program."""
    return text.replace(child_name(), "NAME").replace(child_answer(), "ANSWER")


TABLES = [place for place in DataPlace if place.value.where is Where.TABLE]
FILES = [place for place in DataPlace if place.value.where is Where.FILE]
ELSEWHERE = [place for place in DataPlace if place.value.where not in {Where.TABLE, Where.FILE}]
#: What stands in "everything held" for each table that is listed there.
LISTED: dict[DataPlace, Callable[[Any], bool]] = {
    DataPlace.PUPILS: lambda held: held["name"] == "NAME",
    DataPlace.ANSWERS: lambda held: [row["text"] for row in held["answers"]] == ["ANSWER", "5 4/6", "3 1/4"],
    DataPlace.CORRECTIONS: lambda held: (
        {row["of"] for row in held["corrections"]} == {"reading", "finding", "place"}
    ),
    DataPlace.ASKED_ANSWERS: lambda held: [row["wrote"] for row in held["asked_answers"]] == ["ANSWER", ""],
    DataPlace.PUPIL_DAYS: lambda held: (held["joined"], held["left"]) == ("2026-08-20", ""),
    DataPlace.OWN_PAGES: lambda held: held["reads"] == "braille",
    DataPlace.NIGHT_WORDS: lambda held: [row["said"] for row in held["night_words"]] == ["late"],
    DataPlace.PAPER_CELLS: lambda held: (
        [(row["text"], row["crop"]) for row in held["paper_cells"]] == [("ANSWER", b64encode(CROP).decode())]
    ),
    DataPlace.FINDINGS: lambda held: held["findings"]["nights"][0]["answers"].startswith("1: wrong"),
    # what a morning page says of a child is what was found and where it sat
    DataPlace.MORNINGS: lambda held: held["findings"]["nights"][0].keys() >= {"says", "answers", "group"},
    DataPlace.GIVEN_OUT: lambda held: held["given_out"][0]["what"] == "the table of NAME",
}


def test_every_table_and_every_file_has_its_place(walked: Walked) -> None:
    """A table that the file has, or a file that the round left, and that no row tells of turns this red."""
    assert set(walked.before.rows) == {place.value.found for place in TABLES}
    assert walked.before.others == walked.after.others == frozenset()


def test_after_erasing_only_what_was_named_tells(walked: Walked) -> None:
    """No byte of name or answer in any other file, and in no object but the one that was planted."""
    named = set(re.findall(r"<li><bdi>([^<]+)</bdi></li>", walked.erased))
    assert walked.after.telling == named | SAVED
    assert walked.objects == ["list"]
    assert not any(telling for telling, _ in walked.after.rows.values())


@pytest.mark.parametrize("place", TABLES, ids=lambda place: place.name)
def test_a_table_keeps_its_word(walked: Walked, place: DataPlace) -> None:
    """Held: listed whole, or no child in it. Erased: its rows, or all of it, or nothing that tells."""
    row, table = place.value, place.value.found
    (tell_before, all_before), (tell_after, all_after) = walked.before.rows[table], walked.after.rows[table]
    of_pupils = "pupil_number" in walked.columns[table]
    match row.held:
        case HowHeld.LISTED:
            assert LISTED[place](walked.held)
        case HowHeld.NOTHING | HowHeld.TYPED:
            assert not tell_before
            assert not of_pupils
        case HowHeld.COPY | HowHeld.MADE | HowHeld.PASSING | HowHeld.NOTED:
            pytest.fail(f"a table is not {row.held}")
        case _:
            assert_never(row.held)
    match row.erasing:
        case Erasing.ROWS:
            assert tell_before or of_pupils
            assert (tell_after, all_after < all_before) == (0, True)
        case Erasing.EMPTIED:
            assert all_before
            assert not all_after
        case Erasing.STAYS:
            assert all_after == all_before
        case _:
            pytest.fail(f"a table is not {row.erasing}")
    assert row.last_day is LastDay.TOLD
    assert "then erase the class" in walked.over


@pytest.mark.parametrize("place", FILES, ids=lambda place: place.name)
def test_a_file_keeps_its_word(walked: Walked, place: DataPlace) -> None:
    """Told on Keep with how many there are; gone, cleaned, or named, as its row says."""
    row = place.value
    before, after = walked.before.lying.get(place, ()), walked.after.lying.get(place, ())
    told_before, told_after = walked.before.telling & {*before}, walked.after.telling & {*after}
    assert place_of(row.found, "room12.class") is place
    assert row.last_day is LastDay.NAMED
    many = f"{len(before)} file{'' if len(before) == 1 else 's'}"
    assert not before or f"<li>{row.what}: {many}</li>".replace("'", "&#39;") in walked.over
    match row.erasing:
        case Erasing.ROWS:
            assert after
            assert not told_after
        case Erasing.CLEANED:
            assert told_before
            assert (after, told_after) == (before, frozenset())
            assert "Also out of 1 backup." in walked.erased
        case Erasing.TAKEN_AWAY:
            assert told_before
            assert not after
        case Erasing.NAMED:
            assert told_after == told_before != frozenset()
            assert all(f"<bdi>{file}</bdi>" in walked.erased for file in told_after)
        case Erasing.STAYS:
            assert not told_before
            assert after == before
        case _:
            pytest.fail(f"a file is not {row.erasing}")


@pytest.mark.parametrize("place", ELSEWHERE, ids=lambda place: place.name)
def test_what_is_elsewhere_keeps_its_word(walked: Walked, place: DataPlace) -> None:
    """In the process nothing tells; the browser keeps no page; what is outside is told as the teacher's."""
    row = place.value
    match row.erasing:
        case Erasing.FORGOTTEN | Erasing.PASSES | Erasing.STAYS:
            assert walked.objects == ["list"]
            assert walked.no_store == {"no-store"}
        case Erasing.TEACHERS:
            told = "What was printed, saved or handed in elsewhere is yours to find"
            assert all(told in page for page in (walked.erase_page, walked.erased, walked.over))
        case _:
            pytest.fail(f"what is elsewhere is not {row.erasing}")
    assert row.last_day in {LastDay.ENDS, LastDay.TEACHERS}
    assert row.held is not HowHeld.NOTED or '<h2 id="given">' in walked.held_page
