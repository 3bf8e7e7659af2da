"""Damages are told by class, night, child and problem, with what the backup says; one act takes them back."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import Store, open_book
from onewhole.desk.keep.backups import back_up_daily, backups_folder, backups_of
from onewhole.desk.keep.checking import check_backups, check_book, checksum_told, let_stand, mend_book
from onewhole.store.answers import history_of
from onewhole.store.digest_check import check_rows
from tests.kit.kept import NOW, every_kind_of_row, write

LATER = NOW + timedelta(days=1)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A file with rows in every table, and its backup of the same day."""
    opened = open_book(tmp_path / "room12.class")
    every_kind_of_row(opened)
    back_up_daily(opened, backups_folder(opened.path), NOW)
    yield opened
    opened.close()


def _changed(book: Store, *lines: str) -> None:
    with closing(sqlite3.connect(book.path)) as file, file:
        for line in lines:
            file.execute(line)


def _said(book: Store) -> list[str]:
    return [one.said for one in check_book(book).damages]


def test_a_changed_digit_is_named_and_taken_back(book: Store) -> None:
    """Class, night, the child's code, the problem, and the backup that has it right."""
    _changed(book, "UPDATE answers SET text = '5 7/8' WHERE number = 3")
    assert _said(book) == [
        (
            "Room 13, Tue 1 Sep 2026, K01, problem 1: the answer stands as “5 7/8”; "
            "the backup of Tue 1 Sep 2026 says “4 7/8”."
        )
    ]
    left, before = mend_book(book, LATER)
    assert left.damages == ()
    assert [one.text for one in history_of(book, 1, "K01", "1")] == ["4 7/8", "4 8/8", "4 7/8"]
    assert before is not None
    with closing(sqlite3.connect(before)) as file:
        assert [one.row["text"] for one in check_rows(file).damages] == ["5 7/8"], "what stood there is kept"


@pytest.mark.parametrize(
    ("line", "said"),
    [
        (
            "UPDATE corrections SET problem = '2' WHERE number = 1",
            "Room 13, Tue 1 Sep 2026, K01: the problem stands as “2”; the backup of Tue 1 Sep 2026 says “”.",
        ),
        (
            "UPDATE sheet_versions SET typed = '1. 5' WHERE version = 1",
            (
                "“Kite paper”, version 1: the page stands as “1. 5”; "
                "the backup of Tue 1 Sep 2026 says “1. 5 1/8 - 2 5/8”."
            ),
        ),
        (
            "UPDATE pupils SET name = 'Wrem' WHERE number = 1",
            "Room 13, K01: the name stands as “Wrem”; the backup of Tue 1 Sep 2026 says “Wren”.",
        ),
        (
            "UPDATE recordings SET kind = 'audio/wevm'",
            (
                "Room 13, Tue 1 Sep 2026, 1: what it belongs to (kind) stands as “audio/wevm”; "
                "the backup of Tue 1 Sep 2026 says “audio/webm”."
            ),
        ),
        (
            "DELETE FROM answers WHERE number = 4",
            (
                "1 of the answers is gone; the backup of Tue 1 Sep 2026 has it: "
                "Room 13, Tue 1 Sep 2026, K02, problem 2: “5”."
            ),
        ),
        (
            "UPDATE answers SET digest = 1 WHERE number = 4",
            (
                "Room 13, Tue 1 Sep 2026, K02, problem 2: the answer is as it was written; "
                "only its checksum was damaged."
            ),
        ),
        (
            "UPDATE reckonings SET text = 'x'",
            "Room 13, Tue 1 Sep 2026: a result is damaged; it can be computed again.",
        ),
        (
            "UPDATE table_heads SET rows = 9 WHERE name = 'answers'",
            "What is counted of all answers was damaged; it can be counted anew.",
        ),
        (
            "UPDATE answers SET written = CAST(x'FF' AS TEXT) WHERE number = 4",
            (
                "Room 13, Tue 1 Sep 2026, K02, problem 2: the moment stands as “\ufffd”; "
                "the backup of Tue 1 Sep 2026 says “2026-09-01T18:30:00.000000+00:00”."
            ),
        ),
    ],
)
def test_each_damage_is_told_and_mended(book: Store, line: str, said: str) -> None:
    """In a teacher's words, and nothing of it is told afterwards."""
    _changed(book, line)
    assert _said(book) == [said]
    left, _ = mend_book(book, LATER)
    assert left.damages == ()


def test_what_no_backup_has_is_told_until_it_is_let_stand(book: Store) -> None:
    """It was written after the last backup. The file as it stood is backed up before."""
    write(book, 1, "4 6/8", code="K02")
    _changed(book, "UPDATE answers SET text = '4 9/8' WHERE number = 5")
    said = [
        (
            "Room 13, Tue 1 Sep 2026, K02, problem 1: the answer stands as “4 9/8”, which is not as "
            "it was written; no backup has it."
        )
    ]
    assert _said(book) == said
    left, before = mend_book(book, LATER)
    assert ([one.said for one in left.damages], left.mends, before) == (said, False, None)
    let_stand(book, LATER)
    assert _said(book) == []
    assert [one.at is None for one in backups_of(book.path)] == [False, True]


def test_a_lost_child_comes_back_with_its_answers(book: Store) -> None:
    """Its answers are found once the child itself is there again."""
    _changed(book, "DELETE FROM answers WHERE pupil_number = 2", "DELETE FROM pupils WHERE number = 2")
    assert len(_said(book)) == 2
    left, _ = mend_book(book, LATER)
    assert left.damages == ()
    assert [one.text for one in history_of(book, 1, "K02", "2")] == ["5"]


def test_each_backup_is_checked(book: Store) -> None:
    """One that is right tells its checksum, a damaged one how much of it is, a torn one that it is torn."""
    (saved,) = check_backups(book.path)
    assert (saved.checksum, saved.damages, saved.refused) == (check_book(book).checksum, 0, "")
    back_up_daily(book, backups_folder(book.path), LATER)
    newer = backups_of(book.path)[0].path
    with closing(sqlite3.connect(newer)) as file, file:
        file.execute("UPDATE answers SET text = '1'")
    assert [one.damages for one in check_backups(book.path)] == [4, 0]
    newer.write_bytes(b"torn")
    assert [one.refused for one in check_backups(book.path)] == ["This is not the file of a class", ""]


def test_a_checksum_is_told_in_groups() -> None:
    """Sixteen signs, which a teacher may compare by eye; a file of an early release has none."""
    assert checksum_told(1) == "0000 0000 0000 0001"
    assert checksum_told(None) == ""
