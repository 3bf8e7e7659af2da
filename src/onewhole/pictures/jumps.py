"""The points and jumps by which a working is shown on a number line, and when each is drawn."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from onewhole.number.ladder import Ladder
from onewhole.number.quantity import Quantity
from onewhole.statements.statement import Comparison, Question, asked_quantities
from onewhole.working.reasons.jumping import (
    CountedUp,
    JumpedToWhole,
    JumpedWholes,
    JumpLengths,
    SameToBoth,
    WholeAndRest,
)
from onewhole.working.reasons.taking import (
    AddedUnitByUnit,
    InAll,
    LargerUnitFirst,
    Left,
    OpenedToTake,
    PiecesAdded,
    PiecesTaken,
    TakenFromWhole,
    TakenUnitByUnit,
)
from onewhole.working.strategies.count_up import stops
from onewhole.working.strategies.equal_shift import shift_of
from onewhole.working.strategies.make_a_whole import lacking
from onewhole.working.strategies.same_units import Signed, same_units
from onewhole.working.working import Working

#: The strategies with jumps of their own join two numbers.
PAIR = 2


@dataclass(frozen=True, slots=True)
class Jump:
    """A jump from one point to another, in the ladder's smallest unit; ``term`` is the number it jumps by."""

    start: int
    end: int
    term: int = 1


@dataclass(frozen=True, slots=True)
class JumpPlan:
    """Points marked from the first line on, and jumps; ``drawn[i]`` of them are drawn at line i.

    All points count the ladder's smallest unit. ``answer`` is where the answer is marked on the last line
    (None where it is the sum of the jumps and no point).
    """

    ladder: Ladder
    given: tuple[int, ...]
    jumps: tuple[Jump, ...]
    drawn: tuple[int, ...]
    answer: int | None


def jump_plan(working: Working) -> JumpPlan | None:
    """Return the jumps of a sum, a difference or a comparison; None for any other working.

    The counting strategies give their own jumps; any other sum or difference is jumped number by number, the
    larger units first. Exact: every point is a count.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.count_up import COUNT_UP
    >>> from onewhole.working.work import work
    >>> [(jump.start, jump.end) for jump in jump_plan(work(read_statement("7 2/6 - 3 5/6"), COUNT_UP)).jumps]
    [(23, 24), (24, 42), (42, 44)]
    """
    match working.statement:
        case Comparison(Quantity() as left, Quantity() as right):
            signed: Signed | None = ((left, False), (right, True))
        case Question():
            signed = asked_quantities(working.statement)
        case _:
            signed = None
    if signed is None:
        return None
    counted, _ = same_units(signed)
    first = counted[0][0]
    if isinstance(working.statement, Comparison):
        points = (first.parts, counted[1][0].parts)
        return JumpPlan(first.ladder, points, (), (0,) * len(working.lines), None)
    given, jumps = _jumps(working.strategy, counted)
    drawn = _drawn(working, jumps)
    if working.strategy in {"count_up", "equal_shift"} and len(counted) == PAIR:
        return JumpPlan(first.ladder, given, jumps, drawn, None)
    return JumpPlan(first.ladder, given, jumps, drawn, jumps[-1].end if jumps else first.parts)


def _jumps(strategy: str, counted: Signed) -> tuple[tuple[int, ...], tuple[Jump, ...]]:
    """Return the points given and the jumps."""
    (first, _), *rest = counted
    if len(rest) != 1:
        return (first.parts,), tuple(_number_by_number(counted))
    a, second = first.parts, rest[0][0]
    b = second.parts
    match strategy:
        case "count_up":
            return (a, b), tuple(Jump(fro, to) for fro, to in pairwise(stops(first, second)))
        case "equal_shift":
            by = shift_of(second)
            found = (Jump(a, a + by), Jump(b, b + by), Jump(b + by, a + by))
            return (a, b), found
        case "from_whole":
            wholes = first.only(0).on(first.ladder).parts
            return (a,), (Jump(wholes, wholes - b), Jump(wholes - b, a - b))
        case "jump_on":
            return (a,), tuple(_on(first, second))
        case _:
            return (a,), tuple(_number_by_number(counted))


def _on(first: Quantity, second: Quantity) -> Iterator[Jump]:
    """Jump on by the wholes, to the next whole, and by the rest."""
    pieces = second.amounts[-1]
    reached = first.parts + second.parts - pieces
    to_next = lacking(first)
    by = to_next if to_next < pieces else 0
    points = (first.parts, reached, reached + by, reached + pieces)
    yield from (Jump(fro, to) for fro, to in pairwise(points) if fro != to)


def _number_by_number(counted: Signed) -> Iterator[Jump]:
    """Jump by every number in turn, its largest unit first."""
    here = counted[0][0].parts
    for term, (quantity, taken) in enumerate(counted[1:], start=1):
        for count, worth in zip(quantity.amounts, quantity.ladder.worths, strict=True):
            if count:
                there = here + (-count if taken else count) * worth
                yield Jump(here, there, term)
                here = there


def _drawn(working: Working, jumps: tuple[Jump, ...]) -> tuple[int, ...]:
    """Return how many jumps are drawn at every line: never fewer than before, all of them at the last."""
    drawn, term = 0, 1
    found: list[int] = []
    for line in working.lines:
        ends = sum(jump.term <= term for jump in jumps)
        match line.because:
            case CountedUp() | JumpLengths():
                drawn = len(jumps)
            case OpenedToTake() | TakenFromWhole():
                drawn = max(drawn, min(1, len(jumps)))
            case SameToBoth():
                drawn = max(drawn, min(2, len(jumps)))
            case JumpedWholes() | JumpedToWhole() | LargerUnitFirst():
                drawn = min(drawn + 1, ends)
            case TakenUnitByUnit() | AddedUnitByUnit() | PiecesTaken() | PiecesAdded() | WholeAndRest():
                drawn = ends
            case Left() | InAll():
                drawn, term = ends, term + 1  # the next number's turn
            case _:
                pass
        found.append(max(drawn, found[-1] if found else 0))
    return (*found[:-1], len(jumps))
