"""The findings that the file keeps on a child: told in plain words, as they stand there."""

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import Store, open_book
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.pupil.held_findings import held_findings
from onewhole.desk.pupil.pupil_export import all_held
from onewhole.store.answers import KeptAnswer
from onewhole.store.correction_rows import FindingAside
from onewhole.store.corrections import Correction, keep_correction
from onewhole.store.keeping import erase_pupil
from onewhole.store.night_cache import cache_night, cached_nights
from tests.kit.club import DAY, NOW, small_club
from tests.kit.kept import keep_answer


def _mark(book: Store) -> None:
    mark_missing(book, 1, lambda _done, _of: None)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """Two nights of a small class, marked."""
    made = open_book(tmp_path / "a.class")
    small_club(made, 2)
    _mark(made)
    yield made
    made.close()


def test_nothing_is_held_that_was_not_marked(tmp_path: Path) -> None:
    """Findings stand in the file only once a night was marked."""
    made = open_book(tmp_path / "b.class")
    small_club(made, 1)
    assert held_findings(made, 1, "K03") == ()
    made.close()


def test_what_the_file_keeps_is_told_in_words(book: Store) -> None:
    """Each answer, what they may show together, where the child sat, until when it is good."""
    first, second = held_findings(book, 1, "K03")
    assert (first.day, second.day, first.page) == (DAY, DAY + timedelta(days=1), "Kite tails 0")
    assert first.answers.startswith("1: wrong, as ")
    assert first.answers.endswith("3: right")
    assert first.says.startswith("Answers to 1 and 2")
    assert first.group in cached_nights(book, 1)[first.night][1]
    assert first.good_until == DAY + timedelta(days=14)
    assert not first.old
    sound = held_findings(book, 1, "K02")[0]
    assert (sound.answers, sound.says) == ("1: right; 2: right; 3: right", "No steady pattern was found.")
    assert "could not be read" in held_findings(book, 1, "K04")[0].answers
    assert held_findings(book, 1, "K05") == (), "who handed nothing in has no finding"


def test_a_finding_set_aside_says_so(book: Store) -> None:
    """Before the next marking the old one still stands in the file, and is told as old."""
    keep_correction(book, Correction(1, "K03", FindingAside(aside=True), NOW, "teacher"))
    assert [one.old for one in held_findings(book, 1, "K03")] == [True, True]
    _mark(book)
    first, _ = held_findings(book, 1, "K03")
    assert (first.says, first.old) == ("The teacher set the finding aside.", False)


def test_a_text_of_another_form_is_named_and_not_hidden(book: Store) -> None:
    """Nothing that may tell of the child is left out because it cannot be read."""
    cache_night(book, 1, "another stamp", "{}\n{}")
    first, _ = held_findings(book, 1, "K03")
    assert (first.old, first.good_until) == (True, None)
    assert "form of an earlier release" in first.says


def test_erasing_leaves_no_finding(book: Store) -> None:
    """Of nobody in the class: they are found anew when they are asked for."""
    keep_answer(book, KeptAnswer(1, "K01", "1", "5", NOW, "teacher"))
    assert len(all_held(book, 1, "K03").findings) == 2
    erase_pupil(book, 1, "K01")
    assert cached_nights(book, 1) == {}
    assert all_held(book, 1, "K03").findings == ()
