"""A problem worked with a wrong step, not yet judged: it may still come out right by luck."""

from msgspec import Struct

from onewhole.errors import OnewholeError
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Ladder
from onewhole.number.quantity import Quantity, trimmed
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Expression, WithRemainder, value
from onewhole.statements.factor_question import WordAnswer
from onewhole.statements.statement import Comparison, Meaning, NumberRow, Relation
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.line import Line, LineContent, kept
from onewhole.working.pair_state import PairState

#: What a child can write as an answer.
Outcome = Quantity | Impossible | WithMinus | Relation | NumberRow | WithRemainder | WordAnswer


class BelowZeroError(OnewholeError, ValueError):
    """The wrong step needs a count below zero, so it gives no answer that a child could write."""


class Attempt(Struct, frozen=True):
    """Lines from the problem to the answer, the answer, and other ways to write what the wrong step gives.

    The last line says the answer, unless the answer has no value (3 3/0): that one stands on no line.
    """

    lines: tuple[Line, ...]
    wrote: Outcome
    also: tuple[Outcome, ...] = ()

    @property
    def breaks(self) -> tuple[int, ...]:
        """Return the numbers of the false lines, from 1: those that contradict the line before.

        An answer without a value, such as 3 3/0, counts as one more false line.
        """
        said = [line_claim(line.says) for line in self.lines]
        false = [at for at in range(1, len(said)) if said[at] != said[at - 1]]
        if isinstance(self.wrote, Impossible):
            false.append(len(said))
        return tuple(false)


def line_claim(says: LineContent) -> Meaning:
    """Return what a line claims: an amount, the missing number, or the order.

    A comparison with its sign claims that sign, true or not.
    """
    if isinstance(says, Comparison) and says.sign is not None:
        return says.sign
    if isinstance(says, WholeGroups):
        return says.claims.asked
    return kept(says)


def answer_claim(outcome: Outcome) -> Meaning | None:
    """Return what an answer claims, or None when it has no value.

    >>> answer_claim(Impossible(3, 3)) is None
    True
    """
    match outcome:
        case Quantity() | WithMinus():
            return outcome.value
        case Impossible() | WithRemainder(by=None):
            return None
        case WithRemainder():
            return value(outcome)
        case Relation() | WordAnswer():
            return outcome
        case NumberRow():
            return outcome.values


def written(ladder: Ladder, counts: tuple[int, ...]) -> Quantity:
    """Write counts on a ladder, every rung; BelowZeroError when one is below zero.

    >>> from onewhole.number.ladder import mixed
    >>> written(mixed(8), (4, 9)).counts
    (4, 9)
    """
    if min(counts) < 0:
        msg = f"this wrong step would need a count below zero: {counts}"
        raise BelowZeroError(msg)
    return Quantity(ladder, counts)


def wrongly(state: PairState, says: Expression) -> PairState:
    """Append a line without a reason."""
    if state.lines and state.lines[-1].says == says:
        return state
    return PairState(state.first, state.second, state.taken, (*state.lines, Line(says)), state.result)


def finished(problem: Expression, state: PairState, also: tuple[Outcome, ...] = ()) -> Attempt:
    """Return the attempt of a state whose result is found and written."""
    lines = (Line(problem), *state.lines)
    kept_lines = tuple(line for at, line in enumerate(lines) if not at or line.says != lines[at - 1].says)
    return Attempt(kept_lines, trimmed(state.found()), also)
