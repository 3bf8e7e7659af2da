"""What is shown of a quantity at each line of a working: wholes and pieces, and what is taken away."""

from collections.abc import Iterable
from fractions import Fraction
from functools import reduce
from itertools import pairwise
from math import lcm
from operator import add

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import ONE, Kind, Unit
from onewhole.pictures.limits import NotDrawnError
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Expression, Over, Sum, Term, Times, kind, plus, quantities, value
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    NumberRow,
    Ordering,
    Question,
)
from onewhole.working.line import Line, LineContent
from onewhole.working.products.equal_jumps import so_many
from onewhole.working.reasons.comparing import Deciding
from onewhole.working.reasons.jumping import CountedUp, SameToBoth
from onewhole.working.reasons.multiplying import EachUnitTimes, OneFractionEach, TurnedRound
from onewhole.working.reasons.regrouping import OneIsWorth, OpensOne
from onewhole.working.reasons.renaming import CutAgain, WholesInPieces
from onewhole.working.working import Working

PAIR = 2

#: Reasons that only announce something: the picture stays as it is.
SAID_ONLY = CountedUp | TurnedRound | EachUnitTimes | OneFractionEach

#: Reasons that regroup, cut or add first: what is taken away is crossed out on a later line.
NOT_YET = OpensOne | OneIsWorth | WholesInPieces | SameToBoth | CutAgain


class Heap(Struct, frozen=True):
    """Uncut wholes, and pieces of which ``per`` make one whole (1 where there are no pieces).

    >>> Heap(6, 8, 6).amount
    Fraction(22, 3)
    """

    wholes: int = 0
    pieces: int = 0
    per: int = 1

    @property
    def amount(self) -> Fraction:
        """Return the whole amount, counted in wholes."""
        return self.wholes + Fraction(self.pieces, self.per)

    def __add__(self, other: "Heap") -> "Heap":
        """Add two heaps; the pieces get a common size."""
        per = lcm(self.per, other.per)
        pieces = self.pieces * per // self.per + other.pieces * per // other.per
        return Heap(self.wholes + other.wholes, pieces, per if pieces else 1)

    def holds(self, other: "Heap") -> bool:
        """Say whether another heap can be taken away without regrouping or cutting."""
        if not other.pieces:
            return other.wholes <= self.wholes
        pieces, uneven = divmod(other.pieces * self.per, other.per)
        return not uneven and other.wholes <= self.wholes and pieces <= self.pieces


class QuantityState(Struct, frozen=True):
    """What a line shows: a heap for each number, what is crossed out, what is still to be taken away.

    The value of the line is ``heaps`` less ``struck`` less ``waiting``. Something is crossed out only where
    there is a single heap; the ``spared`` pieces at its end are crossed out last. ``compared`` are the two
    numbers of a comparison, on the line that says which is more. ``renamed`` says that the first heap is what
    was there before the pieces were cut again or joined: it stays to be seen above the other one.
    ``seats`` are the places of the heaps from the top, where they are put in order; else they stand as they
    come.
    """

    heaps: tuple[Heap, ...]
    struck: Heap = Heap()
    waiting: Heap = Heap()
    spared: int = 0
    compared: tuple[Quantity, ...] = ()
    renamed: bool = False
    seats: tuple[int, ...] = ()

    @property
    def amount(self) -> Fraction:
        """Return the amount shown, crossed out or not."""
        return sum((heap.amount for heap in self.heaps), Fraction(0))


class _StatePart(Struct, frozen=True):
    heap: Heap
    taken: bool


def quantity_states(working: Working) -> tuple[QuantityState, ...]:
    """Return what each line of a working shows; a line that cannot be drawn repeats the one before.

    Raises NotDrawnError when the first line has nothing to show, such as 3 x 2/5.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> shown = quantity_states(work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST))
    >>> [(state.heaps[0].wholes, state.heaps[0].pieces, state.struck.pieces) for state in shown]
    [(7, 2, 0), (7, 2, 0), (6, 8, 0), (6, 8, 5), (6, 8, 5), (3, 3, 0)]
    """
    whole = whole_unit(working)
    pointed = any(
        one.ladder.style is Style.DECIMAL
        for side in _sides(working.lines[0].says)
        for one in quantities(side)
    )
    found: list[QuantityState] = []
    for line in working.lines:
        before = found[-1] if found else None
        state = state_of(line, whole, before)
        if state is None and before is None:
            msg = "this problem does not begin with amounts that can be laid out"
            raise NotDrawnError(msg, remedy="Leave the picture off, or draw a sum or a difference.")
        state = _as_fine(state, found[-1]) if state and found and pointed else state or found[-1]
        found.append(state if found or len(working.lines) <= 2 else _unstruck(state))
    if renames(working):
        return _both_seen(found)
    for at in reversed(range(len(found) - 1)):
        now, after = found[at], found[at + 1]
        later = now.heaps != after.heaps or now.struck.amount > after.struck.amount
        if now.amount == after.amount and later:
            found[at] = _unstruck(now)
    return tuple(found)


def renames(working: Working) -> bool:
    """Say whether a working writes one number another way and does nothing else with it."""
    match working.statement:
        case AnotherName() | Question(Quantity()):
            return True
        case MissingNumber(Quantity(), gap, beside=()):
            return not gap.alone
        case _:
            return False


def _both_seen(states: list[QuantityState]) -> tuple[QuantityState, ...]:
    """Keep what was there before pieces are cut again or joined above what comes of it."""
    kept: Heap | None = None
    found = states[:1]
    for before, now in pairwise(states):
        (old,), (new,) = before.heaps, now.heaps
        if kept is None and old.wholes == new.wholes and min(old.per, new.per) > 1 and old.per != new.per:
            kept = old
        found.append(now if kept is None else replace(now, heaps=(kept, new), renamed=True))
    return tuple(found)


def _as_fine(state: QuantityState, before: QuantityState) -> QuantityState:
    """Keep hundredths where a line writes 0.7 for 0.70."""
    per = max(heap.per for heap in before.heaps)
    fine = [
        Heap(heap.wholes, heap.pieces * per // heap.per, per) if heap.pieces and per % heap.per == 0 else heap
        for heap in state.heaps
    ]
    return replace(state, heaps=tuple(fine))


def _unstruck(state: QuantityState) -> QuantityState:
    """Return the same state with nothing crossed out yet."""
    return replace(state, struck=Heap(), waiting=state.struck + state.waiting)


def whole_unit(working: Working) -> Unit:
    """Return the unit that is drawn as a whole: one, or the largest measure of the problem."""
    says = working.lines[0].says
    match working.statement, working.answer:
        case ((AnotherName(number) | Question(Quantity() as number)), Quantity() as named):
            says = plus(number, named)
        case _:
            pass
    units = [unit for side in _sides(says) for quantity in quantities(side) for unit in quantity.ladder.units]
    if all(unit.kind is Kind.NUMBER for unit in units):
        return replace(ONE, mark=next((unit.mark for unit in units if unit.mark), ""))
    return max(units, key=lambda unit: unit.size)


def state_of(line: Line, whole: Unit, before: QuantityState | None) -> QuantityState | None:
    """Return the state at one line, after the state ``before``; None where nothing changes."""
    says = line.says
    if isinstance(line.because, SAID_ONLY) or isinstance(says, Rounding | AskedInWords):
        return None
    if isinstance(says, Comparison):
        return None if before and len(before.heaps) != PAIR else _compared(line, says, whole, before)
    if isinstance(says, Ordering | NumberRow):
        return _in_a_row(says, whole, before)
    amount = says.rest if isinstance(says, MissingNumber) else says
    return _dealt(line, amount, whole, before) if kind(amount) is whole.kind else None


def _compared(
    line: Line, says: Comparison, whole: Unit, before: QuantityState | None
) -> QuantityState | None:
    left, right = _heap(says.left, whole), _heap(says.right, whole)
    decided = quantities(says.left) + quantities(says.right) if says.sign else ()
    if before and isinstance(line.because, Deciding):
        return replace(before, compared=decided)
    if not left or not right:
        return None
    return QuantityState(_beside_wholes((left, right), before), compared=decided)


def _in_a_row(says: Ordering | NumberRow, whole: Unit, before: QuantityState | None) -> QuantityState | None:
    """Show numbers that are put in order: each where it stood first, and at the end in that order."""
    if before and isinstance(says, NumberRow) and says.signs:
        amounts = [part.value / whole.size for part in says.parts]
        return replace(before, compared=says.parts, seats=_seats(before.heaps, amounts))
    heaps = tuple(_heap(part, whole) for part in says.parts)
    return QuantityState(tuple(heap for heap in heaps if heap)) if all(heaps) else None


def _seats(heaps: tuple[Heap, ...], amounts: list[Fraction]) -> tuple[int, ...]:
    """Return for each heap which of the amounts it is; of equal ones each has its own."""
    free = dict(enumerate(amounts))
    found: list[int] = []
    for heap in heaps:
        seat = next(at for at, amount in free.items() if amount == heap.amount)
        found.append(seat)
        del free[seat]
    return tuple(found)


def _beside_wholes(heaps: tuple[Heap, ...], before: QuantityState | None) -> tuple[Heap, ...]:
    """Keep the wholes that both have and that a line leaves out."""
    if before is None:
        return heaps
    left_out = {old.amount - new.amount for old, new in zip(before.heaps, heaps, strict=True)}
    (wholes,) = left_out if len(left_out) == 1 else (Fraction(0),)
    return tuple(Heap(int(wholes)) + heap for heap in heaps)


def _sides(says: LineContent) -> tuple[Expression, ...]:
    match says:
        case Comparison():
            return says.left, says.right
        case Ordering(parts) | NumberRow(parts):
            return parts
        case MissingNumber():
            return (says.rest,)
        case Rounding(number):
            return (number,)
        case AskedInWords():
            return (says.about,)
        case _:
            return (says,)


def _dealt(line: Line, amount: Expression, whole: Unit, before: QuantityState | None) -> QuantityState | None:
    """Assign the terms to the numbers shown before, and cross out what can be crossed out."""
    terms = _terms(amount, whole, taken=False)
    if terms is None:
        return None
    parts = _parts(amount)
    added = sum(not part.taken for part in parts)
    if before is None or 1 < added <= len(before.heaps):
        return _numbers(parts, whole)
    state = QuantityState(_kept(terms, before) or (_together([term for term in terms if not term.taken]),))
    hold = isinstance(line.because, NOT_YET) and not before.struck.amount
    return _struck(state, terms, hold=hold)


def _numbers(parts: tuple[Term, ...], whole: Unit) -> QuantityState | None:
    """Show one heap for each part that is added."""
    heaps = [_heap(part.part, whole) for part in parts if not part.taken]
    taken = [_heap(part.part, whole) for part in parts if part.taken]
    shown, gone = [heap for heap in heaps if heap], [heap for heap in taken if heap]
    if len(shown) != len(heaps) or len(gone) != len(taken):
        return None
    return _struck(QuantityState(tuple(shown)), tuple(_StatePart(heap, taken=True) for heap in gone))


def _parts(amount: Expression) -> tuple[Term, ...]:
    match amount:
        case Sum(terms):
            return terms
        case Over(Sum(terms), bottom):
            return tuple(Term(Over(term.part, bottom), term.taken) for term in terms)
        case Times():
            return tuple(map(Term, so_many(amount))) or (Term(amount),)
        case _:
            return (Term(amount),)


def _kept(terms: tuple[_StatePart, ...], before: QuantityState) -> tuple[Heap, ...]:
    """Group the added terms, in order, into sums equal to the heaps before; empty where that fails."""
    found: list[Heap] = []
    rest = [term for term in terms if not term.taken]
    for heap in before.heaps:
        run: list[_StatePart] = []
        while rest and _together(run).amount < heap.amount:
            run.append(rest.pop(0))
        if _together(run).amount != heap.amount:
            return ()
        found.append(_together(run))
    return () if rest else tuple(found)


def _together(terms: Iterable[_StatePart]) -> Heap:
    return reduce(add, [term.heap for term in terms], Heap())


def _struck(state: QuantityState, terms: tuple[_StatePart, ...], *, hold: bool = False) -> QuantityState:
    """Cross out each taken term that is there as it stands; the others are still to be taken away."""
    struck, waiting = Heap(), Heap()
    for term in terms:
        if not term.taken:
            continue
        more = struck + term.heap
        if not hold and len(state.heaps) == 1 and state.heaps[0].holds(more) and not waiting.amount:
            struck = more
        else:
            waiting += term.heap
    last = max((at for at, term in enumerate(terms) if term.taken), default=len(terms))
    spared = _together([term for term in terms[last:] if not term.taken]).pieces
    return replace(state, struck=struck, waiting=waiting, spared=spared)


def _terms(amount: Expression, whole: Unit, *, taken: bool) -> tuple[_StatePart, ...] | None:
    """Return every term from left to right as a heap; None where one cannot be drawn as a heap."""
    match amount:
        case Quantity():
            heap = _heap(amount, whole)
            return None if heap is None else (_StatePart(heap, taken),)
        case Sum() | Over(Sum()) | Times(Quantity(), Quantity()) if _parts(amount) != (Term(amount),):
            found: list[_StatePart] = []
            for term in _parts(amount):
                inner = _terms(term.part, whole, taken=taken != term.taken)
                if inner is None:
                    return None
                found.extend(inner)
            return tuple(found)
        case _:
            heap = _heap(amount, whole)
            return None if heap is None else (_StatePart(heap, taken),)


def _heap(amount: Expression, whole: Unit) -> Heap | None:
    """Return one part of a line as a heap; None where it cannot be drawn as one."""
    match amount:
        case Quantity():
            return _counted(amount, whole)
        case Sum(terms):
            added = Heap()
            for term in terms:
                heap = _heap(term.part, whole)
                if heap is None:
                    return None
                if not term.taken:
                    added += heap
                elif added.holds(heap):
                    added = Heap(added.wholes - heap.wholes, added.pieces - heap.pieces, added.per)
                else:
                    return None
            return added
        case Over(top, bottom):
            pieces, per = value(top), value(bottom)
            if pieces.denominator != 1 or per.denominator != 1:
                return None
            return Heap(0, pieces.numerator, per.numerator) if per > 1 else Heap(pieces.numerator)
        case _:
            return None


def _counted(quantity: Quantity, whole: Unit) -> Heap | None:
    """Count a quantity in wholes and in pieces of its smallest written unit."""
    if quantity.ladder.kind is not whole.kind:
        return None
    total = Heap()
    for unit, count in zip(quantity.ladder.units, quantity.amounts, strict=True):
        times, share = unit.size / whole.size, whole.size / unit.size
        if times.denominator == 1:
            total += Heap(times.numerator * count)
        elif share.denominator == 1:
            per = share.numerator
            pieces = count + total.pieces * per // total.per
            total = Heap(total.wholes, pieces, per if pieces else 1)
        else:
            return None
    return total
