"""Two roads: a class's traces one by one, as they are defined, and all at once in arrays."""

from datetime import date, timedelta

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from onewhole.marking.practice.course import COURSES, rights
from onewhole.marking.practice.pooling import pooled
from onewhole.marking.practice.trace import NEW, Trace
from onewhole.presses import traces_at_once
from onewhole.presses.traces_at_once import PractisedNight

PUPILS, SKILLS = 3, 2
FIRST = date(2026, 9, 1)
#: What a pupil may hand in of a skill: right and wrong; None for nothing.
HANDED_IN = st.none() | st.tuples(st.integers(0, 30), st.integers(0, 30))
NIGHTS = st.lists(
    st.tuples(st.integers(0, 150), st.lists(HANDED_IN, min_size=PUPILS * SKILLS, max_size=PUPILS * SKILLS)),
    max_size=8,
)


@given(NIGHTS)
@settings(max_examples=60, deadline=None)
def test_traces_and_shares_are_the_same_number_by_number(nights: list[tuple[int, list[tuple[int, int] | None]]]) -> None:
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
    at_once = traces_at_once.pooled(many).shares
    knows = many.on(later)
    right = traces_at_once.rights(knows)
    for place, (key, shares) in enumerate(pooled(one).items()):
        pupil, skill = divmod(place, SKILLS)
        assert many.trace(pupil, skill) == one[key]
        assert tuple(map(int, at_once[pupil, skill])) == shares
        assert tuple(map(int, knows[pupil, skill])) == one[key].on(later)
        assert tuple(map(int, right[pupil, skill])) == rights(one[key].on(later))


def test_a_year_of_right_answers_stays_within_the_numbers() -> None:
    """Three hundred nights of thirty right answers each: no chance leaves its bounds, in either road."""
    trace, many = NEW, traces_at_once.untouched(1, 1)
    for night in range(300):
        day = FIRST + timedelta(days=night)
        trace = trace.after(day, 30, 0)
        ones = np.ones((1, 1), dtype=np.int64)
        many = traces_at_once.traced(many, [PractisedNight(day, (0,), ones > 0, 30 * ones, 0 * ones)])
    assert many.trace(0, 0) == trace
    assert _within(trace)


def _within(trace: Trace) -> bool:
    return len(trace.knows) == len(COURSES) and all(0 <= one <= 1_000_000 for one in trace.knows)
