"""The problems of a skill that were drawn, by problem class."""

from collections import defaultdict
from collections.abc import Hashable, Sequence

from msgspec import Struct

from onewhole.sheets.candidates import PageCandidate, ProblemClass
from onewhole.sheets.drawing import DrawnProblem, DrawnSort, draw
from onewhole.sheets.learning import Doubt, Settling
from onewhole.sheets.wishes import Wishes


class DrawnSpace(Struct, frozen=True, eq=False):
    """The problems of a skill by problem class."""

    kinds: tuple[ProblemClass, ...]
    drawn: bool
    _members: tuple[tuple[DrawnProblem, ...], ...]

    @property
    def listed(self) -> int:
        """Return how many problems there are."""
        return sum(map(len, self._members))

    def members(self, kind: ProblemClass) -> tuple[PageCandidate, ...]:
        """Return the problems of a kind."""
        return self._members[kind.place]


def drawn_space(wishes: Wishes, doubts: Sequence[Doubt]) -> DrawnSpace:
    """Return the drawn problems by problem class."""
    found, settling = draw(wishes), Settling.of(doubts)
    classes: dict[tuple[DrawnSort, int, int, int], list[DrawnProblem]] = defaultdict(list)
    for one in found.problems:
        classes[one.sort, one.group, one.level, settling.bits(one.wrote)].append(one)
    kinds = tuple(
        ProblemClass(sort, group, level, told, len(members), 0, place, _always(members))
        for place, ((sort, group, level, told), members) in enumerate(classes.items())
    )
    return DrawnSpace(kinds, found.drawn, tuple(map(tuple, classes.values())))


def _always(members: Sequence[DrawnProblem]) -> tuple[tuple[int, Hashable], ...]:
    """Return the numbers that every one of some problems has, each with its place."""
    first, *others = (tuple(enumerate(one.numbers)) for one in members)
    return tuple(number for number in first if all(number in other for other in others))
