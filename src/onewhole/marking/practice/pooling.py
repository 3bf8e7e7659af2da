"""How a class's courses are shared out: a pupil's few nights with a skill lean on all the others.

Partial pooling: the share that a course has in a skill is counted over the class's pupils, and in a pupil over
the pupil's skills; both lean on the whole class's, and that on the shares before any night, which are equal.
"""

from collections.abc import Mapping, Sequence
from typing import TypeVar

from onewhole.marking.practice.course import COURSES
from onewhole.marking.practice.halving import MILLION
from onewhole.marking.practice.trace import Trace

#: What the shares lean on counts as much as so many pupils' traces of a skill; our own, chosen in the lab.
CLASS_LEANS, SKILL_LEANS, PUPIL_LEANS = 20, 40, 2
#: So many times the shares are counted anew; they hardly move after that.
ROUNDS = 8
#: Bounds that keep every product below 2^63, so that :mod:`onewhole.presses.traces_at_once` can do the same.
MOST, LESS = 1_000_000_000, 1000

_K = TypeVar("_K")
Shares = tuple[int, ...]
EVEN: Shares = (MILLION // len(COURSES),) * len(COURSES)


def pooled(traces: Mapping[tuple[str, _K], Trace]) -> Mapping[tuple[str, _K], Shares]:
    """Return for every pupil and skill the shares of the courses, per million, none below one.

    >>> from datetime import date
    >>> from onewhole.marking.practice.trace import NEW
    >>> forgets = NEW.after(date(2026, 9, 1), 4, 0).after(date(2026, 9, 21), 0, 4)
    >>> shares = pooled({("K01", "adding"): forgets, ("K02", "adding"): NEW})
    >>> weeks = [sum(one[at] for at, each in enumerate(COURSES) if each.half_life == 7) for one in shares.values()]
    >>> weeks[0] > weeks[1] > 333_000
    True
    """
    whole = EVEN
    by_pupil = {pupil: EVEN for pupil, _ in traces}
    by_skill = {skill: EVEN for _, skill in traces}
    for _ in range(ROUNDS):
        held = {
            key: shares(trace, by_skill[key[1]], by_pupil[key[0]], whole)
            for key, trace in traces.items()
            if trace.nights
        }
        whole = _counted(EVEN, CLASS_LEANS, list(held.values()))
        by_skill = {
            skill: _counted(whole, SKILL_LEANS, [one for key, one in held.items() if key[1] == skill])
            for skill in by_skill
        }
        by_pupil = {
            pupil: _counted(whole, PUPIL_LEANS, [one for key, one in held.items() if key[0] == pupil])
            for pupil in by_pupil
        }
    return {
        key: shares(trace, by_skill[key[1]], by_pupil[key[0]], whole) for key, trace in traces.items()
    }


def shares(trace: Trace, skill: Shares, pupil: Shares, whole: Shares) -> Shares:
    """Return the shares of the courses in one trace: what its nights say, leaning on skill and pupil."""
    weighed = [
        max(1, max(1, weight // MILLION) * min(max(1, of_skill * of_pupil // of_all), MOST) // LESS)
        for weight, of_skill, of_pupil, of_all in zip(trace.weights, skill, pupil, whole, strict=True)
    ]
    total = sum(weighed)
    return tuple(max(1, one * MILLION // total) for one in weighed)


def _counted(leans: Shares, count: int, held: Sequence[Shares]) -> Shares:
    """Return the mean of what is held, with what it leans on counted so many times."""
    return tuple(
        max(1, (share * count + sum(one[at] for one in held)) // (count + len(held)))
        for at, share in enumerate(leans)
    )
