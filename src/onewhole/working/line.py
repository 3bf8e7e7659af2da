"""One line of a working."""

from collections.abc import Iterable, Sequence
from fractions import Fraction
from functools import reduce

from msgspec import Struct
from msgspec.structs import replace

from onewhole.statements.expression import Expression, is_worth, value
from onewhole.statements.factor_question import FactorQuestion, WordAnswer
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    Comparison,
    Meaning,
    MissingNumber,
    NumberRow,
    Ordering,
    Relation,
    meaning,
)
from onewhole.statements.whole_groups import GroupsMeaning, WholeGroups
from onewhole.working.fact import Fact
from onewhole.working.reason import Reason
from onewhole.working.reasons.columns import InColumns

#: What a line can contain: an amount being worked, or a whole statement.
LineContent = (
    Expression
    | Comparison
    | NumberRow
    | Ordering
    | MissingNumber
    | Rounding
    | Listing
    | FactorQuestion
    | PlotQuestion
    | WholeGroups
)

#: Statements that stand on a line whole: no equals sign leads from the line before to them.
WholeLine = (
    Comparison
    | NumberRow
    | Ordering
    | MissingNumber
    | Rounding
    | Listing
    | FactorQuestion
    | PlotQuestion
    | WholeGroups
)


class Line(Struct, frozen=True):
    """What a line says, why it follows from the line before, and what is written beside it.

    ``aside`` marks a line that the teacher says and a pupil need not write. ``facts`` are hard facts inside
    the line, worked beside it. The first line of a working is the problem itself and has no reason.
    """

    says: LineContent
    because: Reason | None = None
    aside: bool = False
    facts: tuple[Fact, ...] = ()


def followed(lines: tuple[Line, ...], line: Line) -> tuple[Line, ...]:
    """Append a line, unless it only repeats the last one.

    An aside that is repeated as a line for the pupil to write is an aside no longer: 8/8 - 3/8 after "one
    whole is 8 eighths". A column is always a line of its own, because a digit is written for it: the ones of
    190 + 5.
    """
    if not lines or lines[-1].says != line.says or isinstance(line.because, InColumns):
        return (*lines, line)
    if lines[-1].aside and not line.aside:
        return (*lines[:-1], replace(lines[-1], aside=False))
    return lines


def leads(lines: Sequence[Line], at: int) -> bool:
    """Say whether an equals sign leads from the line before to a line: both are worth something.

    A statement, and what is read or worked out first to answer one, equals no line.

    >>> from onewhole.number.quantity import whole
    >>> lines = (Line(Comparison(whole(3), whole(3), Relation.EQUAL)), Line(whole(3)), Line(whole(3)))
    >>> [leads(lines, at) for at in range(3)]
    [False, False, True]
    """
    return at > 0 and not any(isinstance(line.says, WholeLine) for line in lines[at - 1 : at + 1])


def without_repeats(lines: Iterable[Line]) -> tuple[Line, ...]:
    """Join lines, leaving out each that repeats the one before."""
    return reduce(followed, lines, ())


def keeps(says: LineContent, wanted: Meaning) -> bool:
    """Say whether a line keeps the amount, the order or the missing number that is wanted."""
    if isinstance(wanted, Fraction) and not isinstance(says, WholeLine):
        return is_worth(says, wanted)
    if isinstance(wanted, WordAnswer):
        return _keeps_word(says, wanted)
    if isinstance(wanted, tuple):
        return _keeps_order(says, wanted)
    if isinstance(wanted, GroupsMeaning) and not isinstance(says, WholeLine):
        return is_worth(says, wanted.worth)
    return kept(says) == wanted


def _keeps_order(says: LineContent, wanted: tuple[Fraction, ...]) -> bool:
    """Say whether a line keeps numbers in order: all, with true signs in this order, or two of them."""
    match says:
        case NumberRow(signs=()):
            return sorted(says.values) == sorted(wanted)
        case NumberRow():
            return says.true and says.values == wanted
        case Comparison(left, right, sign):
            return {value(left), value(right)} <= set(wanted) and sign is meaning(says)
        case Ordering():
            return says.ordered.values == wanted
        case Listing():
            return says.values == wanted
        case _:
            return False


def _keeps_word(says: LineContent, wanted: WordAnswer) -> bool:
    """Say whether a line gives the true word, or is a true equality on the way to it."""
    match says:
        case FactorQuestion():
            return says.claims is says.found is wanted
        case Comparison(sign=Relation.EQUAL):
            return meaning(says) is Relation.EQUAL
        case _:
            return False


def kept(says: LineContent) -> Meaning:
    """Return what the next line must keep: the amount, the order or the missing number.

    Numbers in a row with signs keep that order, true or not.
    """
    if isinstance(says, NumberRow):
        return says.values
    if isinstance(says, WholeLine):
        return meaning(says)
    return value(says)
