"""When a skill is due, and its band."""

from datetime import date, timedelta
from functools import partial

import pytest

from onewhole.marking.practice.due import LATEST, LEFT, OF, Band, class_band, due_day, pupil_band
from onewhole.marking.practice.halving import MILLION

LAST = date(2026, 9, 1)


@pytest.mark.parametrize("days", [1, 2, 13, 14, 60, LATEST - 1])
def test_it_is_due_on_the_first_day_with_a_fifth_gone(days: int) -> None:
    """Not a day sooner."""
    enough = MILLION * LEFT // OF
    assert due_day(lambda day: MILLION if (day - LAST).days < days else enough, LAST) == LAST + timedelta(
        days
    )


def test_what_never_fades_comes_back_at_the_latest() -> None:
    """However little is right."""
    for share in (MILLION // 10, MILLION):
        assert due_day(partial(_always, share), LAST) == LAST + timedelta(LATEST)


def _always(share: int, _day: date) -> int:
    return share


def test_a_band_narrows_with_pupils_and_with_what_is_known() -> None:
    """More pupils, or more traces, never widen it."""
    by_course, shares = [MILLION * 2 // 5, MILLION * 3 // 5], [1, 1]
    wide = class_band([MILLION // 2] * 25, by_course, shares, 0)
    known = class_band([MILLION // 2] * 25, by_course, shares, 25)
    many = class_band([MILLION // 2] * 100, by_course, shares, 100)
    assert wide.high - wide.low > known.high - known.low > many.high - many.low


def test_a_band_holds_its_share_and_keeps_within_bounds() -> None:
    """Whatever the class: nobody, all right, all wrong."""
    for chances in ([], [0] * 3, [MILLION] * 3):
        band = class_band(chances, [0, MILLION], [0, 1], 0)
        assert 0 <= band.low <= band.share <= band.high <= MILLION
    assert pupil_band([3, 3], [1, 1]) == Band(3, 3, 3)
    with pytest.raises(ValueError, match="not between"):
        Band(5, 4, 6)
