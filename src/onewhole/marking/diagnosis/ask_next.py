"""Which one or two problems to ask a pupil next: those expected to give the most information."""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import islice

from onewhole.marking.diagnosis.chances import Chances, chances
from onewhole.marking.diagnosis.diagnosis import Weighed
from onewhole.marking.diagnosis.hypothesis import Hypothesis, kind_of
from onewhole.marking.diagnosis.information import doubt, expected
from onewhole.marking.diagnosis.likeliest_sets import LEAST
from onewhole.marking.diagnosis.weighing import WAYS, column
from onewhole.marking.reading.expected import Expected, expect
from onewhole.notations.text import text
from onewhole.number.ladder import Style
from onewhole.problems.needs import Needs, Operation, needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

_Rows = tuple[tuple[int, ...], ...]

#: Problems on which the most patterns give an answer of their own, two for each denominator: computed over
#: the whole space by the collection that the patterns come from, and again by us (tests/agreement). The
#: last one tells two published whole-number errors apart that 143 - 28 does not: Brown and Burton (1978),
#: as restated.
TELLING = (
    "9 1/3 - 3 2/3",
    "9 1/3 - 6 2/3",
    "9 1/4 - 6 2/4",
    "6 1/4 - 3 2/4",
    "9 3/5 - 5 4/5",
    "7 3/5 - 3 4/5",
    "9 4/6 - 4 5/6",
    "9 3/6 - 5 4/6",
    "9 5/8 - 6 6/8",
    "9 5/8 - 4 6/8",
    "9 7/10 - 5 8/10",
    "9 6/10 - 7 9/10",
    "9 7/12 - 4 9/12",
    "9 4/12 - 6 5/12",
    "703 - 245",
)
#: So many problems parallel to one of each kind on the page are looked at, and so many kinds.
PARALLELS, KINDS = 2, 5
#: The least expected information, in millionths of a bit, for which a problem is asked; our own.
LEAST_TOLD = 50_000
#: A second problem is asked while the entropy expected after the first is above this; our own.
LEFT_OPEN = 300_000


@dataclass(frozen=True, slots=True)
class Candidate:
    """A problem that may be asked, its kind, and the chances of the answers to it."""

    statement: Statement
    kind: Needs
    table: Chances


def candidates(asked: Sequence[Expected]) -> tuple[Candidate, ...]:
    """Return a few problems that may be asked after a page, worked out once for a class.

    They are parallel to the first problem of each kind on the page, or tell the most patterns apart with the
    page's denominators; none is a twin of a problem on the page.
    """
    seen = {twin_key(one.problem.statement) for one in asked}
    found = []
    for statement in (*_telling(asked), *_parallels(asked)):
        if (key := twin_key(statement)) not in seen:
            seen.add(key)
            table = chances(expect(Problem("1", statement, text(statement))))
            found.append(Candidate(statement, kind_of(needs(statement)), table))
    return tuple(found)


def _telling(asked: Sequence[Expected]) -> Iterator[Statement]:
    """Yield the telling problems whose pieces are those of a difference on the page."""
    taken = [one.problem.statement for one in asked if Operation.SUBTRACT in one.needs.operations]
    pieces = {_pieces(statement) for statement in taken}
    for typed in TELLING:
        statement = read_statement(typed)
        if _pieces(statement) in pieces:
            yield statement


def _pieces(statement: Statement) -> tuple[Style, Fraction]:
    ladder = min((quantity.ladder for quantity in numbers_of(statement)), key=lambda one: one.finest)
    return ladder.style, ladder.finest


def _parallels(asked: Sequence[Expected]) -> Iterator[Statement]:
    """Yield problems parallel to the first one of each kind."""
    first: dict[Needs, Statement] = {}
    for one in asked:
        first.setdefault(kind_of(one.needs), one.problem.statement)
    for statement in islice(first.values(), KINDS):
        yield from islice(parallel(statement), PARALLELS)


def ask_next(
    weighed: Weighed, asked: Sequence[Expected], pupils: Collection[str] | None = None
) -> tuple[tuple[Statement, ...], ...]:
    """Return for each pupil the one or two problems that are expected to give the most information.

    The measure is Shannon's: how much, on average over the answers that may come, the odds of the sets of
    patterns will change, in millionths of a bit and whole numbers throughout
    (:mod:`~.information`). Nothing is asked of a pupil of whom no answer was read, nor where
    one set of patterns, or none, reaches the odds asked for by itself. A second problem is of
    another kind. What the pupil was asked already is not asked again. Where ``pupils`` are given, by code,
    nothing is worked out for the others.
    """
    still = [
        _open(weighed, at) if pupils is None or one.pupil in pupils else ()
        for at, one in enumerate(weighed.diagnoses)
    ]
    union = sorted({place for places in still for place in places})
    if not union:
        return ((),) * len(still)
    ways = [weighed.page.hypotheses[place] for place in union]
    offered = [(one, _rows(one.table, ways)) for one in candidates(asked)]
    return tuple(
        _chosen(weighed, at, offered, [(union.index(place), place) for place in places]) if places else ()
        for at, places in enumerate(still)
    )


def _open(weighed: Weighed, at: int) -> tuple[int, ...]:
    """Return the places of the hypotheses that stay open for a pupil; none where nothing is open."""
    shares, ways = weighed.weights[at], weighed.page.hypotheses
    whole = sum(shares)
    if all(one is None for one in weighed.replies[at]):
        return ()
    none = sum(share for one, share in zip(ways, shares, strict=True) if not one.steady)
    if (
        max(none, *(share for one, share in zip(ways, shares, strict=True) if one.steady))
        >= weighed.confident * whole
    ):
        return ()
    return tuple(
        place
        for place, (one, share) in enumerate(zip(ways, shares, strict=True))
        if not one.steady or share * LEAST.denominator >= whole
    )


def _rows(table: Chances, ways: Sequence[Hypothesis]) -> _Rows:
    """Return for each hypothesis the chances of every reply, over all ways of working."""
    columns = [column(ways, table, given) for given in table.replies]
    return tuple(
        tuple(sum(one[at : at + WAYS]) for one in columns) for at in range(0, WAYS * len(ways), WAYS)
    )


def _chosen(
    weighed: Weighed, at: int, offered: Sequence[tuple[Candidate, _Rows]], places: Sequence[tuple[int, int]]
) -> tuple[Statement, ...]:
    """Choose for one pupil; ``places`` are those in the rows and in the page's hypotheses."""
    shares, ways = weighed.weights[at], weighed.page.hypotheses
    steady = [each for each in places if ways[each[1]].steady]
    reliabilities = [each for each in places if each not in steady]
    odds = [sum(shares[place] for _, place in reliabilities), *(shares[place] for _, place in steady)]
    talk = weighed.talks.get(weighed.diagnoses[at].pupil)
    before = {twin_key(one.problem.statement) for one in talk.marks.expected} if talk else set()
    told = []
    for candidate, rows in offered:
        if twin_key(candidate.statement) in before:
            continue
        mixed = _mixed([rows[row] for row, _ in reliabilities], [shares[place] for _, place in reliabilities])
        told.append((expected(odds, [mixed, *(rows[row] for row, _ in steady)]), candidate))
    told.sort(key=lambda one: (-one[0], text(one[1].statement)))
    first = next((one for one in told if one[0] >= LEAST_TOLD), None)
    if first is None:
        return ()
    others = (one for one in told if one[1].kind != first[1].kind and one[0] >= LEAST_TOLD)
    second = next(others, None) if doubt(odds) - first[0] > LEFT_OPEN else None
    return tuple(one[1].statement for one in (first, second) if one is not None)


def _mixed(rows: Sequence[Sequence[int]], weights: Sequence[int]) -> tuple[int, ...]:
    """Return the chances of every reply, averaged over the rows by their weights."""
    whole = sum(weights)
    return tuple(
        sum(weight * one for weight, one in zip(weights, column, strict=True)) // whole
        for column in zip(*rows, strict=True)
    )
