"""A pupil's story: nights, skills by weeks, findings that run out."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import NotThere, Store, night_pages, open_book
from onewhole.desk.classes.demo import fill_demo
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.pupil.pupil_story import GOOD_FOR_DAYS, story
from onewhole.store.answers import KeptAnswer
from onewhole.store.correction_rows import (
    FindingAside,
)
from onewhole.store.corrections import Correction, keep_correction
from tests.kit.club import DAY, ROWS, small_club
from tests.kit.club import NOW as CLUB
from tests.kit.invented import lay_invented_class
from tests.kit.kept import keep_answer

TODAY = date(2026, 11, 25)
NOW = datetime(2026, 11, 25, 16, tzinfo=UTC)


@pytest.fixture(scope="module")
def book(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    """The kite club, every night reckoned."""
    folder = tmp_path_factory.mktemp("club")
    lay_invented_class(folder, NOW, read=True)
    made = open_book(folder / "room12.class")
    yield made
    made.close()


def test_every_night_is_counted_once_in_the_bands(book: Store) -> None:
    """All answers that were written and read stand in one skill and week, the right ones among them."""
    told = story(book, 1, "K01", TODAY)
    bands = [one for row in told.skills for one in row.weeks.values()]
    assert sum(one.right for one in bands) == sum(night.right for night in told.nights)
    assert sum(one.of for one in bands) == sum(night.written - night.unread for night in told.nights)
    assert len(told.nights) == 9
    assert told.picture.count("<svg") == 1


def test_a_pupil_who_was_away_handed_nothing_in(book: Store) -> None:
    """K19 was away on the last night: it stands there, with nothing counted."""
    *_, last = story(book, 1, "K19", TODAY).nights
    assert (last.handed_in, last.right, last.written, last.asked) == (False, 0, 0, 12)


@pytest.mark.more("marking/diagnosis/test_finding.py")
def test_findings_fade_and_run_out_a_day_after_their_last(book: Store) -> None:
    """Good on their last day, run out the day after; nothing is told in the words of a label."""
    first = story(book, 1, "K06", TODAY).hints[-1]
    assert first.until == first.day + timedelta(days=GOOD_FOR_DAYS)
    good = story(book, 1, "K06", first.until).hints[-1]
    over = story(book, 1, "K06", first.until + timedelta(days=1))
    assert (good.good, good.days_left, over.hints[-1].good) == (True, 0, False)
    assert over.hints[-1] in over.old_hints
    assert " fit" in good.says
    assert " has " not in good.says
    assert good.ask


def test_what_the_teacher_set_aside_is_not_told(book: Store) -> None:
    """A finding set aside is out of the story; the marks stay."""
    before = story(book, 1, "K02", TODAY)
    night = before.hints[0].night
    keep_correction(book, Correction(night, "K02", FindingAside(aside=True), NOW, "teacher"))
    mark_missing(book, 1, lambda _done, _of: None)
    after = story(book, 1, "K02", TODAY)
    assert after.nights == before.nights
    assert night not in {hint.night for hint in after.hints}


def test_a_pupil_of_no_class(book: Store) -> None:
    """Refused, whatever the code looks like."""
    with pytest.raises(NotThere):
        story(book, 1, "<script>", TODAY)


def test_nothing_reckoned_is_said_and_draws_nothing(tmp_path: Path) -> None:
    """A class whose nights are not reckoned: the count of them, no night, no picture."""
    made = open_book(tmp_path / "demo.class")
    fill_demo(made, NOW)
    told = story(made, 1, "K01", TODAY)
    assert (told.missing, told.nights, told.picture, told.hints) == (9, (), "", ())
    made.close()


def test_a_finding_is_gone_with_the_first_night_that_speaks_against_it(tmp_path: Path) -> None:
    """K01 fits one idea on two nights, and works rightly on the third: told as gone since that day."""
    made = open_book(tmp_path / "room12.class")
    small_club(made, 3)
    last = next(page for page in night_pages(made, 1) if page.night.number == 3)
    for label, right in zip(last.labels, ROWS["K02"], strict=True):
        keep_answer(made, KeptAnswer(3, "K01", label, right, CLUB, "teacher"))
    mark_missing(made, 1, lambda _done, _of: None)
    second, first = story(made, 1, "K01", DAY + timedelta(days=2)).hints
    assert (first.gone, second.gone) == (DAY + timedelta(days=2),) * 2
    assert not second.good
    assert second.days_left > 0
    steady = story(made, 1, "K03", DAY + timedelta(days=2)).hints[0]
    assert steady.good
    assert steady.course == "Answers fit it since 1 September, on 3 of the last 3 nights that could show it."
    made.close()
