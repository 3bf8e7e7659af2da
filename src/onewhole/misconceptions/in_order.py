"""Numbers put in order by an idea about two of them: the idea compares each two, and so their order comes."""

from collections.abc import Iterator
from functools import cmp_to_key
from itertools import combinations, pairwise

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.statements.statement import Comparison, NumberRow, Ordering, Relation, relation
from onewhole.working.line import Line

_STEP = {Relation.LESS: -1, Relation.EQUAL: 0, Relation.GREATER: 1}


def in_order(asked: Ordering, compare: Try) -> Attempt | None:
    """Put numbers in order by an idea that compares two of them; None where it says nothing of any two.

    Where the idea says nothing of two, they are compared rightly. None too where what it says of each two
    makes no order, or calls two equal that are not: in which order a child writes those, nobody can say.

    >>> from onewhole.misconceptions.catalogue import by_id
    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("order 1/8, 1/2, 1/4")
    >>> [part.ladder.denominator for part in in_order(asked, by_id("C08").attempt).wrote.parts]
    [2, 4, 8]
    """
    said: dict[tuple[int, int], Relation] = {}
    ideas = 0
    for (at, one), (to, other) in combinations(enumerate(asked.parts), 2):
        tried = compare(Comparison(one, other))
        right = relation(one, other)
        found = tried.wrote if tried is not None else right
        if not isinstance(found, Relation) or (found is Relation.EQUAL and right is not Relation.EQUAL):
            return None
        ideas += tried is not None
        said[at, to] = found

    def step(one: int, other: int) -> int:
        turn = one > other
        found = _STEP[said[(other, one) if turn else (one, other)]]
        return -found if turn != asked.falling else found

    places = range(len(asked.parts))
    order = sorted(places, key=cmp_to_key(step))
    if not ideas or any(step(one, other) > 0 for one, other in combinations(order, 2)):
        return None
    signs = tuple(_sign(step(one, other), falling=asked.falling) for one, other in pairwise(order))
    row = NumberRow(tuple(asked.parts[place] for place in order), signs)
    return Attempt((Line(asked), Line(row)), row)


def pairs_of(asked: Ordering) -> Iterator[Comparison]:
    """Yield every two of the numbers to be compared, in the order in which they stand."""
    return (Comparison(one, other) for one, other in combinations(asked.parts, 2))


def _sign(step: int, *, falling: bool) -> Relation:
    if not step:
        return Relation.EQUAL
    return Relation.GREATER if falling else Relation.LESS
