"""What is expected in a cell before one looks: the right answer, and what error patterns would write."""

from collections.abc import Hashable

from msgspec import Struct

from onewhole.marking.paper.verdict import PaperWhy
from onewhole.marking.reading.answer import Blank, Unreadable, read_written
from onewhole.marking.reading.expected import Expected
from onewhole.marking.reading.writing import alike
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.statement import Relation

#: How a class writes, in parts per million of all cells: so many answers are right, so many are what some
#: pattern writes, shared among its answers; one single other answer; nothing; no answer. Right and pattern
#: are the mix of an invented class (55 and 25 of 100); the others, and that an answer beside these has some
#: two hundred likely writings, are our own: with so many no more are wrong on the cells that tune.
RIGHT, PATTERNS, OTHER, EMPTY, NO_ANSWER = 550_000, 250_000, 1_000, 60_000, 20_000


class Foreseen(Struct, frozen=True):
    """What may be expected of one problem's cell.

    >>> from onewhole.marking.reading.expected import expect
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> asked = Foreseen(expect(Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6")))
    >>> [asked.weight(text) > OTHER for text in ("3 3/6", "4 3/6", "9 9/9")]
    [True, True, False]
    """

    expected: Expected

    def weight(self, text: str) -> int:
        """Return how often this very text is written, in parts per million; at least as often as any other.

        A right answer counts in any equal form.
        """
        read = read_written(text, self.expected.problem).read
        if isinstance(read, Blank | Unreadable):
            return OTHER
        if self.expected.is_right(read):
            return RIGHT
        written: Hashable = alike(read)
        return max(OTHER, PATTERNS // len(self.expected.exact)) if written in self.expected.exact else OTHER

    @property
    def signs(self) -> tuple[str, ...]:
        """Return the signs that may be written where one is asked for; none where it is a number.

        >>> from onewhole.marking.reading.expected import expect
        >>> from onewhole.problems.problem import Problem
        >>> from onewhole.statements.reading import read_statement
        >>> Foreseen(expect(Problem("1", read_statement("3/4 ? 5/6"), "3/4 ? 5/6"))).signs
        ('<', '=', '>')
        """
        return tuple(sign.value for sign in Relation) if isinstance(self.expected.right, Relation) else ()

    def why_shown(self, text: str) -> PaperWhy | None:
        """Say why this text is to be looked at in any case; None where nothing speaks for it.

        Problems whose answers are decimals or measures are shown, since the program does not read these well
        enough yet: in ``52`` a point may have been missed. Of signs no text is read.
        """
        right = self.expected.right
        if not isinstance(right, Quantity):
            return PaperWhy.SIGN
        if right.ladder.style is Style.DECIMAL:
            return PaperWhy.DECIMAL
        if right.ladder.style is Style.MEASURE:
            return PaperWhy.UNIT
        if isinstance(read_written(text, self.expected.problem).read, Blank | Unreadable):
            return PaperWhy.NO_NUMBER
        return None
