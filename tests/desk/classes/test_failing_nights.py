"""A night on which the program fails says so, and blocks no other; nor do two innocent answers."""

from collections.abc import Iterator, Sequence
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes import marked_nights
from onewhole.desk.classes.class_records import Store, open_book, set_night, start_room
from onewhole.desk.classes.marked_nights import (
    NightFailedError,
    mark_missing,
    mark_night,
    missing_before,
    night_summaries,
)
from onewhole.desk.classes.week import week
from onewhole.desk.keep.pupil_cache import clear_pupil_caches
from onewhole.desk.marking.mark import Marked, mark_sheet
from onewhole.desk.pupil.pupil_story import story
from onewhole.desk.tomorrow.morning import morning
from onewhole.marking.diagnosis.notebook import Tonight
from onewhole.marking.grouping.group_settings import GroupSettings
from onewhole.marking.reading.asked_table import AskedRow
from onewhole.marking.reading.class_answers import ClassAnswers
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.night_cache import cached_nights
from tests.kit.club import DAY, NOW, small_club
from tests.kit.kept import keep_answer

#: A page and two innocent answers on which an earlier release ended with a traceback, and with it every later
#: night of the class.
PAGE = "title: Two pieces\n\n1. 4 1/2 - 2 1/2\n2. 9 1/6 - 4 4/6\n"
WROTE = {"K01": ("2/2", "4 5/6"), "K02": ("2", "4 3/6"), "K03": ("2", "4 3/6")}
#: The title of the page on which the marking is made to fail.
FAILS = "Kite tails 1"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of five with four nights; the second and the fourth have the page that can be made to fail."""
    made = open_book(tmp_path / "room12.class")
    small_club(made, 4)
    yield made
    made.close()


def mark_all(book: Store) -> int:
    """Mark what is missing."""
    return mark_missing(book, 1, lambda _done, _of: None)


@pytest.fixture
def failing(monkeypatch: pytest.MonkeyPatch) -> pytest.MonkeyPatch:
    """The marking fails on one page, with a child's answer in the message."""

    def fails(
        worked: WorkedSheet,
        answers: ClassAnswers,
        *,
        settings: GroupSettings,
        tonight: Tonight,
        asked: Sequence[AskedRow],
    ) -> Marked:
        if worked.sheet.header.title == FAILS:
            raise ValueError("K01 wrote 5 1/8")
        return mark_sheet(worked, answers, settings=settings, tonight=tonight, asked=asked)

    clear_pupil_caches()
    monkeypatch.setattr(marked_nights, "mark_sheet", fails)
    return monkeypatch


def test_the_page_that_once_failed_is_read_and_so_are_the_nights_after_it(tmp_path: Path) -> None:
    """A file that an earlier release could not reckon, for it has no summaries, opens and reckons again."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 3, NOW)
    for at, typed in enumerate((PAGE, PAGE.replace("Two", "More"))):
        page = set_night(made, 1, typed, DAY + timedelta(days=at), NOW)
        keep_answers(
            made,
            [
                KeptAnswer(page.night.number, code, label, text, NOW, "teacher")
                for code, row in WROTE.items()
                for label, text in zip(page.labels, row, strict=True)
            ],
        )
    assert cached_nights(made, 1) == {}
    assert mark_all(made) == 2
    left = night_summaries(made, 1)
    assert (left.failed, left.missing, [sorted(one.pupils) for one in left.nights]) == (
        (),
        (),
        [["K01", "K02", "K03"]] * 2,
    )
    for night in (1, 2):
        assert [one.pupil for one in mark_night(made, 1, night).findings] == ["K01", "K02", "K03"]
        assert morning(made, 1, night).cards
    made.close()


@pytest.mark.usefixtures("failing")
def test_a_night_that_fails_blocks_no_other(book: Store) -> None:
    """All others are marked; the two that failed say so and are not marked over and over."""
    assert mark_all(book) == 4
    left = night_summaries(book, 1)
    assert ([one.night for one in left.nights], left.missing) == ([1, 3], ())
    assert [(one.on, one.page) for one in left.failed] == [
        (DAY + timedelta(days=1), FAILS),
        (DAY + timedelta(days=3), FAILS),
    ]
    assert (mark_all(book), missing_before(book, 1, 4)) == (0, 0)
    assert [one.pupil for one in mark_night(book, 1, 3).findings] == [f"K0{at}" for at in range(1, 6)]


@pytest.mark.usefixtures("failing")
def test_every_page_that_leaves_the_night_out_says_so(book: Store) -> None:
    """The Week, the pupil's page and the page for tomorrow tell which night, and what to do."""
    mark_all(book)
    for told in (week(book, 1, DAY).failed, story(book, 1, "K01", DAY).failed, morning(book, 1, 3).failed):
        assert told[0].startswith("The answers of 2 September (“Kite tails 1”) could not be worked through")
        assert "the other nights are read without them" in told[0]
    with pytest.raises(NightFailedError, match="mistake of the program") as refused:
        mark_night(book, 1, 2)
    assert "They are kept" in str(refused.value.remedy)


@pytest.mark.usefixtures("failing")
def test_nothing_of_a_child_is_kept_of_a_fault(book: Store) -> None:
    """Where it was is kept, and never its message."""
    mark_all(book)
    _, text = cached_nights(book, 1)[2]
    assert "ValueError at test_failing_nights.py" in text
    assert "5 1/8" not in text


def test_a_night_that_works_again_is_read_and_the_later_ones_anew(
    book: Store, failing: pytest.MonkeyPatch
) -> None:
    """As after a mended release: opened once more, it is there, and counts for the nights after it."""
    mark_all(book)
    without = mark_night(book, 1, 3)
    failing.undo()
    assert len(mark_night(book, 1, 2).findings) == 5
    assert night_summaries(book, 1).missing == (3, 4)
    assert mark_all(book) == 2
    assert night_summaries(book, 1).failed == ()
    assert mark_night(book, 1, 3).weighed.counts != without.weighed.counts


@pytest.mark.usefixtures("failing")
def test_an_answer_more_lets_a_failed_night_be_tried_again(book: Store) -> None:
    """What it was worked out from is another then."""
    mark_all(book)
    keep_answer(book, KeptAnswer(2, "K05", "1", "4 7/8", NOW, "teacher"))
    assert night_summaries(book, 1).missing == (2, 3, 4)
