"""A working that is false in exactly one place, and the answer to which that leads."""

from msgspec import Struct

from onewhole.errors import OnewholeError
from onewhole.misconceptions.attempt import Attempt, Outcome, answer_claim, line_claim
from onewhole.number.impossible import Impossible
from onewhole.working.line import Line


class SlipError(OnewholeError, ValueError):
    """A working is not false in exactly one place."""


class Slip(Struct, frozen=True):
    """What a pattern writes for one problem: the lines from the problem to the answer.

    ``wrote`` is the answer exactly as it would be written, ``also`` other ways to write what the same wrong
    step gives. Exactly one line differs from the line before it; ``false_at`` is its place (the problem has
    place 0). An answer without a value (3 3/0) stands on no line and is itself the false one. A slip of
    ``form`` keeps the amount, breaks no line, and its ``false_at`` is None. Raises SlipError otherwise.

    >>> from onewhole.misconceptions.catalogue import by_id
    >>> from onewhole.statements.reading import read_statement
    >>> slip = by_id("A02").slip(read_statement("9 5/8 - 4 6/8"))
    >>> slip.wrote.counts, slip.false_at
    ((5, 7), 1)
    """

    pattern: str
    lines: tuple[Line, ...]
    wrote: Outcome
    also: tuple[Outcome, ...] = ()
    form: bool = False

    def __post_init__(self) -> None:
        """Refuse a working that breaks no line, or two, and an answer that the last line does not say."""
        breaks = Attempt(self.lines, self.wrote).breaks
        if len(breaks) != (not self.form):
            msg = f"{self.pattern} breaks {len(breaks)} lines, at {breaks}"
            raise SlipError(msg, remedy="Fold what is wrong into one line.")
        if not isinstance(self.wrote, Impossible) and answer_claim(self.wrote) != line_claim(
            self.lines[-1].says
        ):
            msg = f"the last line of {self.pattern} does not say the answer"
            raise SlipError(msg, remedy="End with the answer.")
        right = line_claim(self.lines[0].says)
        for other in self.also:
            if other == self.wrote or (answer_claim(other) is not None and answer_claim(other) == right):
                msg = f"{self.pattern} gives the right answer, or the same twice, as another way to write it"
                raise SlipError(msg, remedy="Leave that one out.")

    @property
    def false_at(self) -> int | None:
        """Return the place of the false line, or None when only the form is meant."""
        return next(iter(Attempt(self.lines, self.wrote).breaks), None)

    @property
    def outcomes(self) -> tuple[Outcome, ...]:
        """Return every way to write what the wrong step gives, the likeliest first."""
        return (self.wrote, *self.also)
