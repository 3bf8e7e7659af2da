"""The courses that a skill may take in a pupil: how soon it is learned, how long it lasts, how it shows.

Knowledge tracing (Corbett and Anderson 1995, User Modeling and User-Adapted Interaction 4, 253-278; from
memory) has one chance to learn and none to forget. Here what was learned halves in some days, and every night
of practice makes those days more; and nobody knows which numbers hold for a pupil, so that a few courses
stand side by side, each with its share. The numbers are our own, chosen in the lab for how well they foretell
later nights; `docs/decisions/0026` has the figures of what they were held against.
"""

from functools import cache
from itertools import product

from msgspec import Struct

from onewhole.marking.practice.halving import MILLION, STEPS

#: The chance, per million, that a skill is there before the first page with it.
START = 500_000

#: How an answer shows the skill: wrong although it is there, right although it is not. Source of their size:
#: the answers of 536 pupils to 20 problems (K. Tatsuoka 1984), fitted with eight skills by DINA (de la Torre
#: 2009), where the middle half of the problems have lapses of 8 to 19 % and luck of 2 to 13 %.
SHOWS = ((20_000, 50_000), (80_000, 100_000), (200_000, 150_000))


class Course(Struct, frozen=True):
    """One course, in chances per million.

    ``learns``: on a night of practice, who has it not learns it. ``half_life``: the days in which half of
    what is there is lost, after no night; each night makes them ``grows`` per cent more. ``shows`` is the
    place in ``SHOWS`` of how answers show it.
    """

    learns: int
    half_life: int
    grows: int
    shows: int

    @property
    def lapses(self) -> int:
        """Return how often an answer is wrong although the skill is there."""
        return SHOWS[self.shows][0]

    @property
    def lucky(self) -> int:
        """Return how often an answer is right although the skill is not there."""
        return SHOWS[self.shows][1]

    def steps(self, days: int, nights: int) -> int:
        """Return how many 1024ths of a half-life some days are, after so many nights of practice."""
        return days * STEPS * 100 // (self.half_life * (100 + self.grows * nights))

    def right(self, knows: int) -> int:
        """Return the chance of a right answer where the skill is there with this chance."""
        return self.lucky + knows * (MILLION - self.lapses - self.lucky) // MILLION


#: So many per cent of its half-life a skill lasts longer after each night of practice.
GROWS = 15
#: Every course; which of them a class takes is learned from its nights.
COURSES = tuple(
    Course(*numbers) for numbers in product((120_000, 500_000), (5, 15, 45, 150), (GROWS,), range(len(SHOWS)))
)


@cache
def telling(right: int, wrong: int) -> tuple[tuple[int, int], ...]:
    """Return for each of ``SHOWS`` how likely a night's answers are: where the skill is there, and where not.

    Only how these compare counts: the largest is a million, and none is below one.

    >>> there, not_there = telling(3, 0)[0]
    >>> there > 100 * not_there
    True
    """
    found = [
        ((MILLION - lapses) ** right * lapses**wrong, lucky**right * (MILLION - lucky) ** wrong)
        for lapses, lucky in SHOWS
    ]
    most = max(map(max, found))
    return tuple(
        (max(1, there * MILLION // most), max(1, absent * MILLION // most)) for there, absent in found
    )
