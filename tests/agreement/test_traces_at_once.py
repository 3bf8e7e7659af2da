"""Two roads: a class's traces one by one in plain whole numbers, and all at once in arrays."""

from datetime import date, timedelta

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from onewhole.marking.practice.course import COURSES
from onewhole.presses import traces_at_once
from onewhole.presses.traces_at_once import PractisedNight, Traces
from tests.kit.traces import NEW, PlainTrace, plainly_pooled

PUPILS, SKILLS = 3, 2
FIRST = date(2026, 9, 1)
#: What a pupil may hand in of a skill: right and wrong; None for nothing.
HANDED_IN = st.none() | st.tuples(st.integers(0, 30), st.integers(0, 30))
NIGHTS = st.lists(
    st.tuples(st.integers(0, 150), st.lists(HANDED_IN, min_size=PUPILS * SKILLS, max_size=PUPILS * SKILLS)),
    max_size=8,
)


@given(NIGHTS)
def test_traces_and_shares_are_the_same_number_by_number(
    nights: list[tuple[int, list[tuple[int, int] | None]]],
) -> None:
    """Whatever was handed in, however long the pauses; also on a day after the last night."""
    one = {(pupil, skill): NEW for pupil in "abc" for skill in range(SKILLS)}
    many = traces_at_once.untouched(PUPILS, SKILLS)
    day = FIRST
    for pause, handed_in in nights:
        day += timedelta(days=pause)
        for key, said in zip(one, handed_in, strict=True):
            one[key] = one[key].after(day, *said) if said else one[key]
        table = np.array([said or (0, 0) for said in handed_in], dtype=np.int64).reshape(PUPILS, SKILLS, 2)
        here = np.array([said is not None for said in handed_in]).reshape(PUPILS, SKILLS)
        night = PractisedNight(day, tuple(range(SKILLS)), here, table[..., 0], table[..., 1])
        many = traces_at_once.traced(many, [night])
    later = day + timedelta(days=40)
    shared = traces_at_once.pooled(many)
    knows = many.on(later)
    right = traces_at_once.rights(knows)
    for place, (key, shares) in enumerate(plainly_pooled(one).items()):
        pupil, skill = divmod(place, SKILLS)
        plain = one[key]
        assert _at(many, pupil, skill) == plain
        assert tuple(map(int, shared.shares[pupil, skill])) == shares
        assert tuple(map(int, knows[pupil, skill])) == plain.on(later)
        by_course = [course.right(known) for course, known in zip(COURSES, plain.on(later), strict=True)]
        assert list(map(int, right[pupil, skill])) == by_course
        found = traces_at_once.trace(many, shared, pupil, skill)
        assert (found is None) == (plain.nights == 0)
        if found is not None:
            assert found.band(later).share == traces_at_once.chances(knows, shared.shares)[pupil, skill]


def _at(many: Traces, pupil: int, skill: int) -> PlainTrace:
    day = int(many.days[pupil, skill])
    return PlainTrace(
        date.fromordinal(day) if day else None,
        int(many.nights[pupil, skill]),
        tuple(map(int, many.knows[pupil, skill])),
        tuple(map(int, many.weights[pupil, skill])),
    )


def test_a_year_of_right_answers_stays_within_the_numbers() -> None:
    """Three hundred nights of thirty right answers each: no chance leaves its bounds, in either road."""
    trace, many = NEW, traces_at_once.untouched(1, 1)
    for night in range(300):
        day = FIRST + timedelta(days=night)
        trace = trace.after(day, 30, 0)
        ones = np.ones((1, 1), dtype=np.int64)
        many = traces_at_once.traced(many, [PractisedNight(day, (0,), ones > 0, 30 * ones, 0 * ones)])
    assert _at(many, 0, 0) == trace
    assert _within(trace)


def _within(trace: PlainTrace) -> bool:
    return len(trace.knows) == len(COURSES) and all(0 <= one <= 1_000_000 for one in trace.knows)
