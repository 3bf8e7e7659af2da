"""The points and jumps by which a working is shown on a number line, and when each is drawn."""

from collections.abc import Iterator
from itertools import pairwise
from typing import assert_never

from onewhole.number.ladder import Ladder, Style
from onewhole.number.quantity import Quantity
from onewhole.pictures.jump import Jump, JumpPlan
from onewhole.pictures.measured_out import measured_out
from onewhole.pictures.shares_state import quotient_of
from onewhole.statements.listing import Listing
from onewhole.statements.statement import Comparison, Ordering, Question, asked_quantities
from onewhole.working.products.equal_jumps import MOST
from onewhole.working.products.moves import turned
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.work_product import factors
from onewhole.working.reasons.columns import InColumns
from onewhole.working.reasons.comparing import Comparing
from onewhole.working.reasons.dividing import Dividing
from onewhole.working.reasons.jumping import (
    CountedUp,
    EasierToTake,
    GivenToMakeOne,
    JumpedTo,
    JumpedToWhole,
    JumpedWholes,
    Jumping,
    JumpLengths,
    SameToBoth,
    WholeAndRest,
)
from onewhole.working.reasons.listing import InListing
from onewhole.working.reasons.multiplying import Multiplying, TurnedRound
from onewhole.working.reasons.ordering import InOrdering
from onewhole.working.reasons.plotting import InPlot
from onewhole.working.reasons.regrouping import Regrouping
from onewhole.working.reasons.renaming import Renaming
from onewhole.working.reasons.rounding import InRounding
from onewhole.working.reasons.stepping import Stepping
from onewhole.working.reasons.taking import (
    AddedUnitByUnit,
    InAll,
    LargerUnitFirst,
    Left,
    OpenedToTake,
    PiecesAdded,
    PiecesTaken,
    SetAside,
    SoFar,
    TakenFromWhole,
    TakenUnitByUnit,
    UnitsTaken,
)
from onewhole.working.strategies.same_units import Signed, same_units
from onewhole.working.working import Working


def jump_plan(working: Working) -> JumpPlan | None:
    """Return the jumps of a sum, difference, comparison, product, quotient or of multiples; else None.

    The counting strategies give their own jumps; any other sum or difference is jumped number by number, the
    larger units first. Exact: every point is a count.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.count_up import COUNT_UP
    >>> from onewhole.working.work import work
    >>> [(jump.start, jump.end) for jump in jump_plan(work(read_statement("7 2/6 - 3 5/6"), COUNT_UP)).jumps]
    [(23, 24), (24, 42), (42, 44)]
    """
    match working.statement:
        case Question(asked) if (product := factors(asked)) is not None:
            return _equal_jumps(working, turned(product))
        case Question() if (quotient := quotient_of(working)) is not None:
            return measured_out(working, quotient)
        case Listing(number=Quantity() as step, most=Quantity()):
            return _counted_on(working, step, len(working.statement.found))
        case Comparison(Quantity() as left, Quantity() as right):
            signed: Signed | None = ((left, False), (right, True))
        case Ordering(parts):
            signed = tuple((part, False) for part in parts)
        case Question():
            signed = asked_quantities(working.statement)
        case _:
            signed = None
    if signed is None:
        return None
    counted, _ = same_units(signed)
    first = counted[0][0]
    if isinstance(working.answer, Quantity) and len(counted) == 1 and first.ladder.style is Style.MEASURE:
        ladder = working.answer.ladder
        count = first.on(ladder).parts
        return JumpPlan(ladder, (count,), (), (0,) * len(working.lines), count)
    if isinstance(working.statement, Comparison | Ordering):
        points = tuple(number.parts for number, _ in counted)
        return JumpPlan(first.ladder, points, (), (0,) * len(working.lines), None)
    given, jumps, lands = _jumps(working, counted)
    drawn = _drawn(working, jumps)
    answer = (jumps[-1].end if jumps else first.parts) if lands else None
    return JumpPlan(first.ladder, given, jumps, drawn, answer)


def _equal_jumps(working: Working, product: ProductState) -> JumpPlan | None:
    """Return equal jumps from 0 on; None where no whole number says how many, or where they are many."""
    times, number = product.times, product.right
    if times is None or not 1 <= times <= MOST or not number.parts:
        return None
    jumps = _equal(number.parts, times)
    shown = [0] * len(working.lines)
    for at, line in enumerate(working.lines):
        before = shown[at - 1] if at else 0
        shown[at] = before if line.because is None or isinstance(line.because, TurnedRound) else times
    shown[-1] = times
    return JumpPlan(number.ladder, (0,), jumps, tuple(shown), times * number.parts)


def _counted_on(working: Working, step: Quantity, times: int) -> JumpPlan:
    """Return a jump from multiple to multiple, from 0 on; each place where one ends is named."""
    drawn = (0, *[times] * (len(working.lines) - 1))
    return JumpPlan(step.ladder, (0,), _equal(step.parts, times), drawn, None, 1, landings=True)


def _equal(long: int, times: int) -> tuple[Jump, ...]:
    """Return so many jumps of one length, from 0 on."""
    return tuple([Jump(at * long, (at + 1) * long) for at in range(times)])


def _jumps(working: Working, counted: Signed) -> tuple[tuple[int, ...], tuple[Jump, ...], bool]:
    """Return the points given, the jumps that the reasons give, and whether they land on the answer."""
    (first, _), *rest = counted
    a = first.parts
    if len(rest) == 1:
        b, ladder = rest[0][0].parts, first.ladder
        for reason in _jumping(working):
            match reason:
                case CountedUp(stops=stops):
                    places = [stop.on(ladder).parts for stop in stops]
                    return (a, b), tuple(Jump(fro, to) for fro, to in pairwise(places)), False
                case SameToBoth(by):
                    more = by.on(ladder).parts
                    return (a, b), (Jump(a, a + more), Jump(b, b + more), Jump(b + more, a + more)), False
                case TakenFromWhole(wholes, left):
                    start, end = wholes.on(ladder).parts, left.on(ladder).parts
                    return (a,), (Jump(start, end), Jump(end, a - b)), True
                case JumpedWholes() | JumpedToWhole():
                    return (a,), tuple(_on(working, ladder, a, a + b)), True
                case JumpLengths() | JumpedTo() | GivenToMakeOne() | WholeAndRest() | EasierToTake():
                    pass
                case _:
                    assert_never(reason)
    return (a,), tuple(_number_by_number(counted)), True


def _jumping(working: Working) -> Iterator[Jumping | TakenFromWhole]:
    """Yield the reasons that may have jumps of their own."""
    for line in working.lines:
        if isinstance(line.because, Jumping | TakenFromWhole):
            yield line.because


def _on(working: Working, ladder: Ladder, start: int, end: int) -> Iterator[Jump]:
    """Jump on by the wholes, to the next whole, and by the rest."""
    here = start
    for line in working.lines:
        match line.because:
            case JumpedWholes(_, by) | JumpedToWhole(_, by):
                there = here + by.on(ladder).parts
                yield Jump(here, there)
                here = there
            case _:
                pass
    if here != end:
        yield Jump(here, end)


def _number_by_number(counted: Signed) -> Iterator[Jump]:
    """Jump by every number in turn, its largest unit first."""
    here = counted[0][0].parts
    for term, (quantity, taken) in enumerate(counted[1:], start=1):
        for count, worth in zip(quantity.amounts, quantity.ladder.worths, strict=True):
            if count:
                there = here + (-count if taken else count) * worth
                yield Jump(here, there, term)
                here = there


#: Reasons at which no jump is drawn.
Still = (
    Regrouping
    | Renaming
    | Comparing
    | InOrdering
    | InColumns
    | InRounding
    | Multiplying
    | Dividing
    | Stepping
    | InListing
    | InPlot
)


def _drawn(working: Working, jumps: tuple[Jump, ...]) -> tuple[int, ...]:
    """Return how many jumps are drawn at every line: never fewer than before, all of them at the last."""
    drawn, term = 0, 1
    found: list[int] = []
    for line in working.lines:
        ends = sum(jump.term <= term for jump in jumps)
        reason = line.because
        if reason is None or isinstance(reason, Still):
            found.append(max(drawn, found[-1] if found else 0))
            continue
        match reason:
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
            case Left() | InAll() | SoFar():
                drawn, term = ends, term + 1  # the next number's turn
            case UnitsTaken() | SetAside() | JumpedTo() | GivenToMakeOne() | EasierToTake():
                pass
            case _:
                assert_never(reason)
        found.append(max(drawn, found[-1] if found else 0))
    return (*found[:-1], len(jumps))
