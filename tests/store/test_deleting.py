"""Deleting a night, a page, a class: all that hangs on it goes, nothing else; no number comes again."""

import sqlite3
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.errors import Fault
from onewhole.store import tables
from onewhole.store.answers import answers_of, history_of
from onewhole.store.classes import add_class, add_pupil, class_names
from onewhole.store.deleting import (
    Holding,
    back_up_first,
    class_holding,
    class_made,
    delete_class,
    delete_night,
    delete_sheet,
    erase_class,
    night_holding,
    nights_of_sheet,
    sheet_holding,
)
from onewhole.store.mending import check_store, find_right, mend
from onewhole.store.nights import add_night, change_day, name_night, nights_of
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import NotThere
from onewhole.store.settings import set_setting, setting
from onewhole.store.sheets import add_sheet, newest_sheets
from tests.kit.kept import DAY, NOW, Round, every_kind_of_row, first_round, write


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """An empty file."""
    with closing(open_store(tmp_path / "a.class")) as made:
        yield made


@pytest.fixture
def kept(store: Store) -> Round:
    """A class with a row in every table, each night with settings."""
    kept = every_kind_of_row(store)
    name_night(store, kept.night, "Wind")
    for of in ("night 1", "night 11", "class 1", "class 11"):
        set_setting(store, f"film plan of {of}", "kept")
    return kept


def _rows(store: Store) -> dict[str, list[tuple[object, ...]]]:
    with store.reading() as connection:
        return {
            table.name: [tuple(row) for row in connection.execute(table.select())]
            for table in tables.METADATA.sorted_tables
            if table is not tables.table_heads
        }


def _holding(store: Store, text: bytes) -> list[str]:
    """Return the files beside a store, and that itself, that hold a text; in a process of its own.

    A process that closes a file lets go of every lock that it has on it, SQLite's too.
    """
    seek = (
        "import pathlib, sys; folder, text = pathlib.Path(sys.argv[1]), bytes.fromhex(sys.argv[2]);"
        "print(*[one.name for one in folder.iterdir() if text in one.read_bytes()])"
    )
    ran = subprocess.run(
        [sys.executable, "-c", seek, str(store.path.parent), text.hex()],
        capture_output=True,
        text=True,
        check=True,
    )
    return ran.stdout.split()


def test_a_night_goes_with_all_that_hangs_on_it_and_nothing_else(store: Store, kept: Round) -> None:
    """Its answers, talks, recordings, steps, name and settings; the page and the other night stay."""
    write(store, kept.night + 1, "9")
    before = _rows(store)
    assert night_holding(store, kept.night) == Holding(1, 2, 2, 2, 1)
    delete_night(store, kept.night)
    after = _rows(store)
    assert [night.number for night in nights_of(store, kept.class_number)] == [kept.night + 1]
    assert [one.text for one in answers_of(store, kept.night + 1)] == ["9"]
    gone = ("corrections", "asked_answers", "recordings", "steps", "reckonings")
    assert [len(after[name]) for name in gone] == [0] * len(gone)
    untouched = ("classes", "pupils", "sheets", "sheet_versions", "given_out", "numbers_given")
    assert [after[name] for name in untouched] == [before[name] for name in untouched]
    assert [row[0] for row in after["night_names"]] == [kept.night + 1]
    assert setting(store, "film plan of night 1") is None
    assert setting(store, "film plan of night 11") == "kept"
    assert check_store(store).damages == ()


def test_a_page_goes_with_its_versions_and_every_night_of_it(store: Store, kept: Round) -> None:
    """In whatever class it was set; another page and its night stay."""
    other_class = add_class(store, "Room 14", NOW)
    add_pupil(store, other_class.number)
    theirs = add_night(store, other_class.number, kept.sheet, 1, DAY)
    write(store, theirs.number, "4")
    strips = add_sheet(store, "Strips", "1. 5 - 2", NOW)
    stays = add_night(store, other_class.number, strips.number, 1, DAY)
    assert nights_of_sheet(store, kept.sheet) == (1, 2, theirs.number)
    assert sheet_holding(store, kept.sheet) == Holding(3, 3, 3, 2, 1)
    delete_sheet(store, kept.sheet)
    assert [one.number for one in newest_sheets(store)] == [strips.number]
    assert [night.number for night in nights_of(store, other_class.number)] == [stays.number]
    assert nights_of(store, kept.class_number) == ()
    assert check_store(store).damages == ()


def test_a_class_goes_with_its_pupils_and_nights_and_its_pages_stay(store: Store, kept: Round) -> None:
    """What was given out goes too; another class stays as it was."""
    other = add_class(store, "Room 14", NOW)
    add_pupil(store, other.number, "Sled")
    assert class_holding(store, kept.class_number) == Holding(2, 2, 2, 2, 1)
    delete_class(store, kept.class_number)
    after = _rows(store)
    filled = {"classes", "pupils", "sheets", "sheet_versions", "settings", "numbers_given"}
    assert {name for name, rows in after.items() if rows} == filled
    assert class_names(store) == ((other.number, "Room 14"),)
    assert setting(store, "film plan of class 1") is None
    assert setting(store, "film plan of class 11") == "kept"
    assert check_store(store).damages == ()


def test_no_number_comes_again(store: Store, kept: Round) -> None:
    """An address or a window of a night that is gone never leads to a later one."""
    nights = [night.number for night in nights_of(store, kept.class_number)]
    for number in nights:
        delete_night(store, number)
    assert add_night(store, kept.class_number, kept.sheet, 1, DAY).number == max(nights) + 1
    delete_sheet(store, kept.sheet)
    assert add_sheet(store, "Strips", "1. 5 - 2", NOW).number == kept.sheet + 1
    delete_class(store, kept.class_number)
    assert add_class(store, "Room 14", NOW).number == kept.class_number + 1


@pytest.mark.parametrize(
    "act",
    [
        lambda store: delete_night(store, 7),
        lambda store: delete_sheet(store, 7),
        lambda store: delete_class(store, 7),
        lambda store: erase_class(store, 7),
        lambda store: night_holding(store, 7),
        lambda store: sheet_holding(store, 7),
        lambda store: class_holding(store, 7),
        lambda store: change_day(store, 7, DAY),
        lambda store: name_night(store, 7, "Wind"),
    ],
)
def test_what_is_not_there_is_refused(store: Store, kept: Round, act: Callable[[Store], object]) -> None:
    """And nothing is changed."""
    assert kept.night < 7
    before = _rows(store)
    with pytest.raises(NotThere):
        act(store)
    assert _rows(store) == before


def test_an_erased_class_leaves_no_byte(store: Store, kept: Round) -> None:
    """A name, an answer, a word on a talk: neither in the file nor in its log."""
    write(store, kept.night, "MARKED 4 7/8")
    before = class_made(store, kept.class_number)
    with pytest.raises(NotThere):
        erase_class(store, kept.class_number, before + timedelta(seconds=1))
    assert _holding(store, b"MARKED 4 7/8") != []
    erase_class(store, kept.class_number, before)
    assert _holding(store, b"MARKED 4 7/8") == []
    assert check_store(store).damages == ()
    with store.transaction() as within, pytest.raises(Fault):
        erase_class(within, kept.class_number)


def test_the_backup_made_first_has_what_was_deleted(store: Store, kept: Round, tmp_path: Path) -> None:
    """It is whole, and of the moment before; outside of a transaction none is made."""
    before = _rows(store)
    with pytest.raises(Fault):
        back_up_first(store, lambda: tmp_path / "no.backup")
    with store.transaction() as within:
        saved = back_up_first(within, lambda: tmp_path / "a.backup")
        delete_class(within, kept.class_number)
    assert saved == tmp_path / "a.backup"
    with closing(open_store(saved)) as book:
        assert _rows(book) == before


def test_what_was_lost_is_told_apart_from_what_was_deleted(store: Store) -> None:
    """A backup has both; only what was lost comes back."""
    kept = first_round(store)
    other = add_night(store, kept.class_number, kept.sheet, 1, DAY + timedelta(days=1))
    write(store, kept.night, "deleted")
    for text in ("lost", "lost too", "there"):
        write(store, other.number, text)
    with store.transaction() as within:
        saved = back_up_first(within, lambda: store.path.with_name("a.backup"))
        delete_night(within, kept.night)
    store.close()
    with closing(sqlite3.connect(store.path)) as file, file:
        file.execute("DELETE FROM answers WHERE text LIKE 'lost%'")
    with closing(open_store(store.path)) as book:
        found = find_right(book, check_store(book).damages, (saved,))
        assert mend(book, found).damages == ()
        texts = [one.text for one in history_of(book, other.number, "K01", "1")]
        assert sorted(texts) == ["lost", "lost too", "there"]
        assert night_holding(book, other.number).answers == 1
