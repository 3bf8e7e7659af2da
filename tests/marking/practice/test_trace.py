"""What is told of one pupil's trace."""

from datetime import date, timedelta

import pytest

from onewhole.marking.practice.course import COURSES
from onewhole.marking.practice.due import LATEST
from onewhole.marking.practice.halving import MILLION
from onewhole.marking.practice.trace import Trace

DAY = date(2026, 9, 1)
MANY = len(COURSES)


def _only(half_life: int, known: int = MILLION) -> Trace:
    """Return a trace whose courses with another half-life weigh nothing."""
    shares = tuple(int(course.half_life == half_life) for course in COURSES)
    return Trace(DAY, 1, (known,) * MANY, shares)


def test_it_is_due_when_a_fifth_of_the_right_answers_would_be_gone() -> None:
    """Not a day sooner; the longer the half-life, the later; where nothing was there, at the latest."""
    dues = [_only(half_life) for half_life in sorted({course.half_life for course in COURSES})]
    for one in dues:
        enough = one.band(DAY).share * 4
        assert one.band(one.due).share * 5 <= enough < one.band(one.due - timedelta(days=1)).share * 5
    assert [one.due for one in dues] == sorted({one.due for one in dues})
    assert _only(5, known=0).due == DAY + timedelta(days=LATEST)


def test_the_band_is_of_the_courses() -> None:
    """One that shares all weight among courses that differ is wide, one of a single course is a point."""
    wide = Trace(DAY, 1, (MILLION // 2,) * MANY, (1,) * MANY).band(DAY)
    single = Trace(DAY, 1, (MILLION // 2,) * MANY, (1, *(0,) * (MANY - 1))).band(DAY)
    assert wide.low < wide.share < wide.high
    assert single.low == single.share == single.high


def test_what_is_no_trace_is_refused() -> None:
    """Without a night, or with too few numbers."""
    for nights, knows in ((0, (1,) * MANY), (1, (1,))):
        with pytest.raises(ValueError, match="a trace has a night"):
            Trace(DAY, nights, knows, (1,) * MANY)
