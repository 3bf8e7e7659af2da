"""How the teacher reads cells, as it is kept."""

from pathlib import Path

import pytest

from onewhole.desk.marking.readings import Reading, keep_reading, readings
from onewhole.store.correction_rows import (
    row_of,
    word_of,
)
from onewhole.store.corrections import Correction, corrections_of, keep_correction
from tests.kit.marking_book import NOW, book_with_night


@pytest.mark.parametrize(
    ("kept", "read"),
    [
        ('["5 and 7 over 8?", "5 7/8"]', Reading("5 and 7 over 8?", "5 7/8")),
        ('["“é”","1/2"]', Reading("“é”", "1/2")),
        ("5 7/8", Reading(None, "5 7/8")),
        ("5", Reading(None, "5")),
        ("-", Reading(None, "-")),
        ('["a"]', Reading(None, '["a"]')),
    ],
)
def test_what_earlier_releases_kept_is_read_as_ever(tmp_path: Path, kept: str, read: Reading) -> None:
    """What was typed with its reading, or plain words, which are of whatever stands in the cell."""
    with book_with_night(tmp_path) as (book, _, _):
        keep_correction(book, Correction(1, "K01", word_of("1", "reading", kept), NOW, "t"))
        assert readings(book, 1) == {("K01", "1"): read}


def test_a_reading_is_kept_with_what_was_typed(tmp_path: Path) -> None:
    """As text that any reader of JSON takes."""
    with book_with_night(tmp_path) as (book, _, _):
        reading = Reading('5 "and" 7', "5 7/8")
        keep_reading(book, 1, reading, code="K01", label="1", now=NOW, by="t")
        assert [row_of(one.word)[2] for one in corrections_of(book, 1)] == [r'["5 \"and\" 7","5 7/8"]']
        assert readings(book, 1) == {("K01", "1"): reading}
