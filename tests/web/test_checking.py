"""Check everything: named on a page, taken back by a button, told on every page of the class until then."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest

from onewhole.desk.keep.backups import back_up_daily, backups_folder
from onewhole.store.answers import answers_of
from onewhole.web.checks import Checks
from onewhole.web.jobs import Jobs
from tests.kit.doors import NOW, Opened, opened
from tests.kit.kept import first_round, write

TOLD = "Something in this file is not as it was written."


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A door to a class with one answer and a backup of it."""
    with opened(tmp_path) as made:
        book = made.door.books["mine"]
        write(book, first_round(book).night, "4 7/8")
        back_up_daily(book, backups_folder(book.path), NOW)
        yield made


def _changed(door: Opened, text: str) -> None:
    with closing(sqlite3.connect(door.door.books.paths["mine"])) as file, file:
        file.execute("UPDATE answers SET text = ?", (text,))


def test_all_is_as_it_was_written(door: Opened) -> None:
    """The file and its backup; nothing can be taken back then."""
    page = door.get("/mine/keep/check").text
    assert "10 rows were read, and all are as they were written." in page
    assert page.count("as it was written.") == 1
    assert door.post("/mine/keep/mend").status == 422
    assert 'href="/mine/keep/check"' in door.get("/mine/keep").text


def test_a_changed_digit_is_named_and_taken_back(door: Opened) -> None:
    """By its class, night, child and problem, with the backup that has it right."""
    _changed(door, "5 7/8")
    page = door.get("/mine/keep/check").text
    assert "Room 12, Tue 1 Sep 2026, K01, problem 1: the answer stands as “5 7/8”" in page
    assert "the backup of Tue 1 Sep 2026 says “4 7/8”" in page
    door.door.checks.look_again("mine", door.door.books["mine"])
    assert TOLD in door.get("/mine/1/class").text
    assert door.post("/mine/keep/mend").goes == "/mine/keep/check?did=mended"
    assert [one.text for one in answers_of(door.door.books["mine"], 1)] == ["4 7/8"]
    assert TOLD not in door.get("/mine/1/class").text
    assert "What stood there before is kept" in door.get("/mine/keep/check?did=mended").text


def test_what_no_backup_has_may_be_let_stand(door: Opened) -> None:
    """It is read as it stands until then, and afterwards."""
    with closing(sqlite3.connect(door.door.books.paths["mine"])) as file, file:
        file.execute("UPDATE classes SET codes_given = 7, digest = 5")
    write(door.door.books["mine"], 1, "4 8/8")
    assert "Take it back" not in door.get("/mine/keep/check").text.replace("take it back", "")
    assert door.post("/mine/keep/stand").goes == "/mine/keep/check?did=mended"
    assert "all are as they were written" in door.get("/mine/keep/check").text


def test_what_a_text_of_a_file_says_is_no_markup(door: Opened) -> None:
    """It is shown as it stands."""
    _changed(door, "<script>alert(1)</script>")
    page = door.get("/mine/keep/check").text
    assert "<script>alert" not in page
    assert "&lt;script&gt;alert" in page


def test_a_file_is_checked_once_each_time_it_is_opened(door: Opened) -> None:
    """Beside the pages, which do not wait for it; what was found is told from then on."""
    _changed(door, "5 7/8")
    book, jobs, checks = door.door.books["mine"], Jobs(), Checks()
    assert checks.damages("mine", book, jobs) == 0
    jobs.close()
    checks.look_again("mine", book)
    assert checks.damages("mine", book, jobs) == 1
