"""What a page would teach about a class: which doubts its problems settle, and how much that is worth."""

from collections.abc import Iterable, Mapping, Sequence
from itertools import combinations

from msgspec import Struct

from onewhole.findings.wished_skill import WishedSkill
from onewhole.misconceptions.catalogue import by_id, patterns, shows
from onewhole.misconceptions.pattern import Family, Topic
from onewhole.problems.traps import is_core
from onewhole.sheets.drawing import draw
from onewhole.sheets.wishes import Wishes
from onewhole.statements.statement import Statement

#: What the first, second ... problem that settles a doubt is worth. Each further one halves what is left of
#: the doubt, as slips and changes of mind leave about so much; from the seventh on nothing is counted. Ours.
GAINS = (32, 16, 8, 4, 2, 1)

#: How much it matters to tell a pattern from no pattern, two patterns about regrouping or the pieces from one
#: another, and any other two. Our own.
FROM_NONE, CORE, ANY_TWO = 6, 2, 1
#: What is asked about this class counts three times as much as everything else that is watched for.
BASE, ASKED = 100, 300


class Doubt(Struct, frozen=True):
    """Two sets of patterns (none: no steady pattern), and what it is worth to tell them apart.

    >>> Doubt((), ("A01",), 6).settled({"A01": "5 1/8"}, right="4 7/8")
    True
    """

    first: tuple[str, ...]
    second: tuple[str, ...]
    weight: int

    @property
    def core(self) -> bool:
        """Say whether all its patterns are about regrouping or the pieces."""
        return all(is_core(key) for key in self.first + self.second)

    def settled(self, wrote: Mapping[str, object], right: object) -> bool:
        """Say whether one problem settles it: the two sets give different answers.

        ``wrote`` has what each pattern that shows here writes. Where no pattern of a set shows, the right
        answer is written.
        """
        sides = [
            {wrote[key] for key in side if key in wrote} or {right} for side in (self.first, self.second)
        ]
        return sides[0].isdisjoint(sides[1])


#: The topics of the patterns that a page of mixed numbers watches for.
_TOPICS = {
    WishedSkill.SUBTRACT: {Topic.SUBTRACT_LIKE},
    WishedSkill.ADD: {Topic.ADD_LIKE},
    WishedSkill.BOTH: {Topic.SUBTRACT_LIKE, Topic.ADD_LIKE},
}


def watched(wishes: Wishes) -> tuple[str, ...]:
    """Return the patterns that a page watches for: all of its skill but fact slips and forms of answer.

    Where problems are drawn, they are those that show on them.
    """
    topics = _TOPICS.get(wishes.skill)
    if topics is None:
        return draw(wishes).watched
    return tuple(
        one.id
        for one in patterns()
        if one.topic in topics and one.family is not Family.FACT and not one.of_form
    )


def doubts(wishes: Wishes, tellable: int | None = None) -> tuple[Doubt, ...]:
    """Return all doubts with their weights: every pair of the patterns watched for, and what is asked.

    ``tellable`` has a bit for each doubt that some problem can settle, in the order of what is returned; what
    is asked and cannot be settled then takes no weight from the rest. The order is the same without it.
    """
    sets = [(), *((key,) for key in watched(wishes))]
    weights = {pair: _matters(*pair) for pair in combinations(sets, 2)}
    if wishes.questions:
        base = sum(weights.values())
        weights = {pair: BASE * weight for pair, weight in weights.items()}
        asked = {(one.first, one.second): one.weight for one in wishes.questions}
        places = {pair: at for at, pair in enumerate({**weights, **asked})}
        counted = {
            pair: weight for pair, weight in asked.items() if tellable is None or tellable >> places[pair] & 1
        }
        for pair in places:
            more = ASKED * base * counted.get(pair, 0) // max(1, sum(counted.values()))
            weights[pair] = max(1, weights.get(pair, 0) + more)
    return tuple(Doubt(*pair, weight) for pair, weight in weights.items())


def _matters(first: tuple[str, ...], second: tuple[str, ...]) -> int:
    if not first or not second:
        return FROM_NONE
    return CORE if all(is_core(key) for key in first + second) else ANY_TWO


class Settling(Struct, frozen=True):
    """Doubts as pairs of places among their different sides: each side is looked at once a problem."""

    sides: tuple[tuple[str, ...], ...]
    pairs: tuple[tuple[int, int], ...]

    @classmethod
    def of(cls, open_doubts: Iterable[Doubt]) -> "Settling":
        """Return doubts, in their order.

        >>> Settling.of((Doubt((), ("A01",), 6), Doubt((), ("A02",), 6))).pairs
        ((0, 1), (0, 2))
        """
        places: dict[tuple[str, ...], int] = {}
        pairs = tuple(
            [
                (places.setdefault(one.first, len(places)), places.setdefault(one.second, len(places)))
                for one in open_doubts
            ]
        )
        return cls(tuple(places), pairs)

    def bits(self, wrote: Mapping[str, object]) -> int:
        """Return the doubts that one problem settles, a bit each (:meth:`Doubt.settled`).

        >>> Settling.of((Doubt((), ("A01",), 6), Doubt((), ("A02",), 6))).bits({"A02": "5 1/8"})
        2
        """
        known: dict[object, int] = {}
        answers = {key: known.setdefault(one, len(known) + 1) for key, one in wrote.items()}
        right = frozenset({0})
        written = [
            frozenset([answers[key] for key in side if key in answers]) or right for side in self.sides
        ]
        settled = 0
        for at, (first, second) in enumerate(self.pairs):
            if written[first].isdisjoint(written[second]):
                settled |= 1 << at
        return settled


def settles(statement: Statement, open_doubts: Sequence[Doubt]) -> int:
    """Return the doubts that a problem settles, a bit each: the first doubt is the lowest bit.

    Two answers are one when they are written the same (4 8/5 is not 5 3/5).
    """
    return Settling.of(open_doubts).bits({slip.pattern: slip.wrote for slip in shows(statement)})


def worth(times: int) -> int:
    """Return what it is worth to have a doubt settled so many times, for one unit of weight.

    >>> [worth(times) for times in range(8)]
    [0, 32, 48, 56, 60, 62, 63, 63]
    """
    return sum(GAINS[:times])


def learnt(open_doubts: Sequence[Doubt], tells: Iterable[int]) -> int:
    """Return what a page teaches: the weight of each doubt times what its number of tellings is worth."""
    rows = tuple(tells)
    return sum(one.weight * worth(sum(row >> at & 1 for row in rows)) for at, one in enumerate(open_doubts))


def most(open_doubts: Sequence[Doubt]) -> int:
    """Return what a page would teach that settled every doubt often enough."""
    return sum(one.weight for one in open_doubts) * worth(len(GAINS))


def name_of(side: tuple[str, ...]) -> str:
    """Return a set of patterns in words for the teacher.

    >>> name_of(("A01", "A10")), name_of(())
    ('A01 with A10', 'no pattern')
    """
    return " with ".join(by_id(key).id for key in side) or "no pattern"
