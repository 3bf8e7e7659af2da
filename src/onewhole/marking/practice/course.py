"""The courses that a skill may take in a pupil: how soon it is learned, how long it lasts, how it shows.

Knowledge tracing (Corbett and Anderson 1995, User Modeling and User-Adapted Interaction 4, 253-278; from
memory) has one chance to learn and none to forget. Here what was learned halves in some days, and every night
of practice makes those days more; and nobody knows which numbers hold for a pupil, so that a few courses
stand side by side, each with its weight. The numbers are our own, chosen in the lab for how well they foretell
nights that were held back; `docs/decisions` has the figures of what they were held against.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from itertools import product

from onewhole.marking.practice.halving import MILLION, STEPS

#: The chance, per million, that a skill is there before the first page with it.
START = 500_000
#: A night's evidence moves no odds further than this, so that one evening settles nothing for good.
MOST_TELLING = MILLION


@dataclass(frozen=True, slots=True)
class Course:
    """One course, in chances per million.

    ``learns``: on a night of practice, who has it not learns it. ``half_life``: the days in which half of what
    is there is lost, after no night; each night makes them ``grows`` per cent more. ``lapses``: an answer is
    wrong although the skill is there. ``lucky``: it is right although it is not.
    """

    learns: int
    half_life: int
    grows: int
    lapses: int
    lucky: int

    def steps(self, days: int, nights: int) -> int:
        """Return how many 1024ths of a half-life some days are, after so many nights of practice."""
        return days * STEPS * 100 // (self.half_life * (100 + self.grows * nights))

    def right(self, knows: int) -> int:
        """Return the chance of a right answer where the skill is there with this chance."""
        return self.lucky + knows * (MILLION - self.lapses - self.lucky) // MILLION


#: How an answer shows the skill: wrong although it is there, right although it is not. Source of their size: 536
#: pupils' answers to 20 problems (K. Tatsuoka 1984), fitted with eight skills by DINA (de la Torre 2009), where
#: the middle half of the problems have lapses of 8 to 19 % and luck of 2 to 13 %.
SHOWS = ((20_000, 50_000), (80_000, 100_000), (200_000, 150_000))
#: Every course; which of them a class takes is learned from its nights.
COURSES = tuple(
    Course(learns, half_life, grows, lapses, lucky)
    for learns, half_life, grows, (lapses, lucky) in product(
        (120_000, 500_000), (7, 25, 90), (5, 40), SHOWS
    )
)


@cache
def telling(right: int, wrong: int) -> tuple[tuple[int, int], ...]:
    """Return for every course how likely a night's answers are: where the skill is there, and where not.

    Only how these compare counts: the largest is a million, and none is below one.

    >>> there, not_there = telling(3, 0)[0]
    >>> there > 100 * not_there
    True
    """
    shows = {
        (one.lapses, one.lucky): (
            (MILLION - one.lapses) ** right * one.lapses**wrong,
            one.lucky**right * (MILLION - one.lucky) ** wrong,
        )
        for one in COURSES
    }
    most = max(max(pair) for pair in shows.values())
    least = {
        key: (max(1, there * MOST_TELLING // most), max(1, absent * MOST_TELLING // most))
        for key, (there, absent) in shows.items()
    }
    return tuple(least[one.lapses, one.lucky] for one in COURSES)


def rights(knows: Sequence[int]) -> tuple[int, ...]:
    """Return for every course the chance of a right answer where the skill is there with these chances.

    >>> rights([0] * len(COURSES))[0], rights([MILLION] * len(COURSES))[0]
    (50000, 980000)
    """
    return tuple(course.right(one) for course, one in zip(COURSES, knows, strict=True))
