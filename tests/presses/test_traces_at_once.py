"""What nights of practice leave, how long it lasts, and what a pupil borrows from the class."""

from collections.abc import Sequence
from datetime import date, timedelta

import numpy as np

from onewhole.marking.practice.course import COURSES
from onewhole.marking.practice.trace import Trace
from onewhole.presses.traces_at_once import PractisedNight, Traces, pooled, trace, traced, untouched

FIRST = date(2026, 9, 1)
#: Of one skill: the days from the first, and how many of four answers were right.
Nights = Sequence[tuple[int, int]]
KEEPS: Nights = tuple((14 * at, 4) for at in range(4))
FORGETS: Nights = ((0, 4), (14, 0), (15, 4), (29, 0), (30, 4), (42, 0))


def _read(*skills: Sequence[Nights]) -> Traces:
    """Read a class: for each skill the nights of every pupil."""
    left = untouched(len(skills[0]), len(skills))
    for at, pupils in enumerate(skills):
        for day in sorted({day for nights in pupils for day, _ in nights}):
            said = [dict(nights).get(day) for nights in pupils]
            right = np.array([[one or 0] for one in said], dtype=np.int64)
            here = np.array([[one is not None] for one in said])
            left = traced(left, [PractisedNight(FIRST + timedelta(day), (at,), here, right, 4 - right)])
    return left


def _trace(left: Traces, pupil: int, skill: int = 0) -> Trace:
    found = trace(left, pooled(left), pupil, skill)
    assert found is not None
    return found


def _alone(*nights: tuple[int, int]) -> Trace:
    return _trace(_read([nights]), 0)


def _lasting(one: Trace) -> int:
    """Return the share of the courses with the longest half-life."""
    longest = max(course.half_life for course in COURSES)
    return sum(
        share for share, course in zip(one.shares, COURSES, strict=True) if course.half_life == longest
    )


def test_right_answers_raise_and_wrong_ones_lower() -> None:
    """The more of four are right, the more is expected on the same day."""
    shares = [_alone((0, right)).band(FIRST).share for right in range(5)]
    assert shares == sorted(set(shares))


def test_days_take_and_practice_makes_it_last() -> None:
    """Less is left every week; after five good nights it comes back later than after one."""
    one, five = _alone((0, 4)), _alone(*((night, 4) for night in range(5)))
    for each in (one, five):
        left = [each.band(each.day + timedelta(weeks=weeks)).share for weeks in range(12)]
        assert left == sorted(left, reverse=True)
    assert (five.due - five.day) > (one.due - one.day)


def test_who_forgets_comes_back_sooner() -> None:
    """Two with all right on their last night; one had lost the skill in each pause before."""
    keeps, forgets = _alone(*KEEPS), _alone(*FORGETS[:5])
    assert (keeps.due - keeps.day) > 2 * (forgets.due - forgets.day)


def test_no_course_is_ruled_out_by_any_answers() -> None:
    """Whatever is answered for a year, every chance stays within bounds and every share above nothing."""
    for right in range(5):
        found = _alone(*((7 * week, right) for week in range(40)))
        assert min(found.shares) >= 1
        assert all(0 <= known <= 1_000_000 for known in found.knows)


def test_a_pupil_with_one_night_borrows_from_the_class() -> None:
    """The same night in a class that keeps and in one that forgets; own nights weigh more than that."""
    once: Nights = ((0, 4),)
    kept, lost = _read([once, *[KEEPS] * 10]), _read([once, *[FORGETS] * 10])
    assert _lasting(_trace(kept, 0)) > _lasting(_trace(lost, 0))
    assert _lasting(_trace(kept, 1)) > _lasting(_trace(kept, 0))


def test_a_pupil_borrows_from_own_other_skills() -> None:
    """Of two with the same night, who forgets another skill is expected to forget this one too."""
    once: Nights = ((0, 4),)
    left = _read([once, once], [KEEPS, FORGETS])
    assert _lasting(_trace(left, 0)) > _lasting(_trace(left, 1))


def test_a_class_without_a_pupil_or_a_skill_is_no_fault() -> None:
    """Nothing to read is read as nothing."""
    for pupils, skills in ((0, 0), (0, 2), (2, 0), (1, 1)):
        left = untouched(pupils, skills)
        assert pooled(left).shares.shape == (pupils, skills, len(COURSES))
    assert trace(untouched(1, 1), pooled(untouched(1, 1)), 0, 0) is None
