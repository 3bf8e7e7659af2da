"""A whole working: lines that are equal one after another, in three lengths, with its checks."""

from msgspec import Struct

from onewhole.errors import Fault
from onewhole.number.factors import simplest
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, usual
from onewhole.statements.statement import RightAnswer, Statement, meaning
from onewhole.working.checks import Check
from onewhole.working.line import Line, keeps


class FalseLineError(Fault, ArithmeticError):
    """A line does not keep what the line before it said: a fault in the program, never shown as a result."""


class Working(Struct, frozen=True):
    """A statement worked by a strategy, line by line.

    Every line keeps what the one before it says (the amount, the order, or the missing number), checked
    exactly when the working is made: FalseLineError otherwise. The first line is the problem itself.
    """

    strategy: str
    statement: Statement
    lines: tuple[Line, ...]
    answer: RightAnswer
    checks: tuple[Check, ...] = ()

    def __post_init__(self) -> None:
        """Refuse a false line."""
        wanted = meaning(self.statement)
        for number, line in enumerate(self.lines, start=1):
            if not keeps(line.says, wanted):
                msg = f"line {number} of a working by {self.strategy} is not equal to the one before"
                raise FalseLineError(msg)

    def brief(self) -> tuple[Line, ...]:
        """Return the lines that a pupil writes."""
        return tuple(line for line in self.lines if not line.aside)

    def faded(self, blank: int) -> tuple[Line | None, ...]:
        """Return the pupil's lines with the last ``blank`` of them left out (None), for practice.

        The problem itself always stays. Source of fading the last steps first: Atkinson, Renkl and Merrill
        (2003), Journal of Educational Psychology (from memory).
        """
        brief = self.brief()
        shown = max(1, len(brief) - blank)
        return (*brief[:shown], *(None,) * (len(brief) - shown))


def equal_forms(answer: Quantity) -> tuple[Quantity, ...]:
    """Return other usual forms of an answer with equal parts: fewest parts, one fraction. None is demanded.

    >>> [form.counts for form in equal_forms(Quantity(mixed(6), (3, 3)))]
    [(3, 1), (None, 21)]
    """
    if answer.ladder.style is not Style.MIXED:
        return ()
    parts = answer.ladder.denominator
    top, bottom = simplest(answer.parts, parts)
    found = [usual(mixed(bottom, answer.ladder.mark), answer.value)] if bottom != parts else []
    if top >= bottom and parts > 1:
        found.append(Quantity(answer.ladder, (None, answer.parts)))
    return tuple(form for form in found if form != answer)
