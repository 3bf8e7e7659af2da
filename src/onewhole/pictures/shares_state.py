"""What each share has at every line of a quotient, and what is still to be shared out."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from fractions import Fraction

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Quotient, Sum, WithRemainder
from onewhole.statements.statement import Question
from onewhole.working.line import LineContent
from onewhole.working.quotients.as_fraction import AS_FRACTION
from onewhole.working.quotients.known_quotient import KNOWN_QUOTIENT
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.share_units import SHARE_UNITS
from onewhole.working.quotients.work_quotient import divided
from onewhole.working.working import Working

#: Ways to divide in which a number is given out to so many shares.
GIVEN_OUT = frozenset({SHARE_UNITS.key, KNOWN_QUOTIENT.key, AS_FRACTION.key})


class SharesState(Struct, frozen=True):
    """What each of so many shares ``has``, part by part, and what is ``left`` (None: nothing more)."""

    has: tuple[Quantity, ...]
    left: Quantity | None

    @property
    def each(self) -> Fraction:
        """Return how much one share has."""
        return sum((part.value for part in self.has), Fraction(0))


def quotient_of(working: Working) -> QuotientState | None:
    """Return the two numbers of a working that divides; None for any other."""
    return divided(working.statement.asked) if isinstance(working.statement, Question) else None


def shares_states(working: Working) -> tuple[SharesState, ...]:
    """Return the state at every line of a working that gives a number out; empty for any other.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.work import work
    >>> states = shares_states(work(read_statement("87 / 4"), SHARE_UNITS))
    >>> [(state.each.numerator, state.left.parts) for state in states]
    [(0, 87), (20, 7), (21, 3), (21, 3)]
    """
    asked = quotient_of(working)
    if asked is None or asked.shares is None:
        return ()
    found: list[SharesState] = []
    for line in working.lines:
        found.append(_state(line.says, found[-1] if found else SharesState((), None)))
    return tuple(found)


def _state(says: LineContent, before: SharesState) -> SharesState:
    match says:
        case Quantity():
            return SharesState((says,), None)
        case WithRemainder(quotient, left):
            return SharesState((quotient,) if quotient.parts else (), left)
        case Quotient(Quantity() as waiting, _):
            return SharesState((), waiting)
        case Sum(terms):
            parts = [term.part for term in terms]
            rest = next((one.left for one in parts if isinstance(one, Quotient)), None)
            has = tuple([part for part in parts if isinstance(part, Quantity)])
            return SharesState(has, rest if isinstance(rest, Quantity) else None)
        case _:
            return before


def as_ones(states: tuple[SharesState, ...]) -> tuple[SharesState, ...]:
    """Count whole numbers in ones, as what is known by heart is laid out: 42 ones, and 7 in each share.

    >>> from onewhole.number.quantity import whole
    >>> as_ones((SharesState((), whole(42)),))[0].left.amounts
    (42,)
    """
    return tuple(
        [_each_number(state, lambda number: _from_rung(number, len(number.amounts) - 1)) for state in states]
    )


def in_dollars(states: tuple[SharesState, ...]) -> tuple[SharesState, ...]:
    """Count all dollars as dollars: nobody shares out tens of them."""
    return tuple(
        [
            _each_number(
                state, lambda number: _from_rung(number, len(number.amounts) - number.ladder.after - 1)
            )
            for state in states
        ]
    )


def _each_number(state: SharesState, change: Callable[[Quantity], Quantity]) -> SharesState:
    return SharesState(tuple(map(change, state.has)), None if state.left is None else change(state.left))


def _from_rung(number: Quantity, rung: int) -> Quantity:
    """Count the units above a rung in units of that rung."""
    worths, amounts = number.ladder.worths, number.amounts
    count = sum(n * worth for n, worth in zip(amounts[: rung + 1], worths, strict=False)) // worths[rung]
    ladder = replace(number.ladder, units=number.ladder.units[rung:])
    return Quantity(ladder, (count, *amounts[rung + 1 :]))


def counted_by_unit(parts: tuple[Quantity, ...]) -> dict[Unit, int]:
    """Return how many of each unit some numbers have together; units of which there is none are left out."""
    found: dict[Unit, int] = {}
    for unit, count in _counts(parts):
        found[unit] = found.get(unit, 0) + count
    return {unit: count for unit, count in found.items() if count}


def _counts(parts: tuple[Quantity, ...]) -> Iterator[tuple[Unit, int]]:
    for part in parts:
        yield from zip(part.ladder.units, part.amounts, strict=True)
