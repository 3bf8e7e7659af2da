"""Subtraction in columns from the right: how a column is answered, which digit "pays" to regroup.

The columns are rungs of a ladder of places, so ten is the ratio throughout.
"""

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from onewhole.misconceptions.attempt import Attempt, BelowZeroError, finished, written, wrongly
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.pair import pair_of
from onewhole.misconceptions.wrong_steps.apart import unit_from_unit
from onewhole.misconceptions.wrong_steps.one_unit import in_one_unit
from onewhole.number.ladder import TEN, Ladder, Style, joined
from onewhole.number.quantity import Quantity, trimmed, usual
from onewhole.statements.expression import plus
from onewhole.statements.statement import Statement
from onewhole.working.pair_state import PairState


@dataclass(slots=True)
class Columns:
    """The two numbers while they are worked, ones first; ``typed`` keeps the top digits as they were.

    A bottom digit is None where nothing stands below (a blank). ``paid`` counts the payments so far.
    """

    tops: list[int]
    bottoms: list[int | None]
    typed: tuple[int, ...]
    paid: int = 0

    def below(self, at: int) -> int:
        """Return the bottom digit, 0 for a blank."""
        return self.bottoms[at] or 0

    def blank(self, at: int) -> bool:
        """Say whether nothing stands below."""
        return self.bottoms[at] is None

    def short(self, at: int) -> bool:
        """Say whether the top digit is too small."""
        return self.tops[at] < self.below(at)

    def has(self, at: int) -> None:
        """Raise BelowZeroError when there is no column so far to the left."""
        if at >= len(self.tops):
            msg = "there is no column left to open"
            raise BelowZeroError(msg)


#: What is written in a column, and what is taken from the columns to its left to open one.
Answer = Callable[[Columns, int], int]
Pay = Callable[[Columns, int], None]
Start = Callable[[Columns], None]


def pays(columns: Columns, at: int) -> None:
    """Open one of the column ``at`` rightly: zeros become nines and the next digit pays."""
    columns.has(at)
    if columns.tops[at] == 0:
        pays(columns, at + 1)
        columns.tops[at] = TEN
    columns.tops[at] -= 1


def opens(pay: Pay = pays) -> Answer:
    """Return the answer that opens a column by a way of paying and then takes rightly."""

    def answer(columns: Columns, at: int) -> int:
        if columns.short(at):
            pay(columns, at + 1)
            columns.tops[at] += TEN
            columns.paid += 1
        return columns.tops[at] - columns.below(at)

    return answer


def untouched(_: Columns) -> None:
    """Begin with the numbers as they are typed."""


def in_columns(answer: Answer, start: Start = untouched) -> Try:
    """Return the attempt at a whole-number difference, column by column.

    A rule that meets nothing to do, such as one about zeros where there is none, gives no attempt. Where
    every column is taken rightly and only the opening was wrong, the false line is the first number as it was
    opened; otherwise it is the answer place by place.
    """

    def attempt(statement: Statement) -> Attempt | None:
        pair = pair_of(statement)
        if pair is None or not pair.taken or pair.styles != {Style.PLACES}:
            return None
        if max(*pair.first.amounts, *pair.second.amounts) >= TEN:
            return None
        ladder = joined(pair.first.ladder, pair.second.ladder)
        state = pair.state(ladder)
        columns = laid_out(state, len(pair.second.counts))
        start(columns)
        digits = [answer(columns, at) for at in range(len(columns.tops))]
        if (digits, columns.tops, columns.bottoms) == _as_taught(state, len(pair.second.counts)):
            return None
        state = _told(state, columns, digits)
        result = usual(ladder, written(ladder, tuple(reversed(digits))).value)
        return finished(pair.asked, wrongly(state.now(result=result), result))

    return in_one_unit(attempt)


def laid_out(state: PairState, below: int) -> Columns:
    """Lay two numbers out in columns, the bottom one with so many digits."""
    tops = state.first.amounts[::-1]
    bottoms = state.second.amounts[::-1]
    return Columns(list(tops), [digit if at < below else None for at, digit in enumerate(bottoms)], tops)


@lru_cache(maxsize=64)
def _as_taught(state: PairState, below: int) -> tuple[list[int], list[int], list[int | None]]:
    """Return what is written when every column is taken rightly, and the digits as they then stand."""
    columns, answer = laid_out(state, below), opens()
    return [answer(columns, at) for at in range(len(columns.tops))], columns.tops, columns.bottoms


def _told(state: PairState, columns: Columns, digits: list[int]) -> PairState:
    """Write the false line."""
    ladder: Ladder = state.first.ladder
    rightly = [top - columns.below(at) for at, top in enumerate(columns.tops)]
    if digits == rightly:
        first = written(ladder, tuple(reversed(columns.tops)))
        if all(columns.below(at) == digit for at, digit in enumerate(state.second.amounts[::-1])):
            state = state.now(first=first)
            return unit_from_unit(wrongly(state, state.joined(trimmed(first))))
    result = written(ladder, tuple(reversed(digits)))
    places = [result.only(rung) for rung in range(len(digits)) if result.amounts[rung]]
    return wrongly(state, plus(*places) if places else Quantity(ladder, result.amounts))
