"""Working in columns on the board: the columns change in their place, and each sum is written beside them."""

from onewhole.languages.language import Language
from onewhole.number.ladder import Style
from onewhole.number.quantity import whole
from onewhole.pictures.columns_state import laid_numbers
from onewhole.statements.expression import Times, minus, plus
from onewhole.statements.statement import Comparison, Relation
from onewhole.walkthroughs.cue import Cue, Role
from onewhole.walkthroughs.memory import Memory, Once
from onewhole.working.line import Line
from onewhole.working.reasons.columns import (
    ColumnAdded,
    ColumnTaken,
    DigitBroughtDown,
    DigitMultiplied,
    DivisionEnds,
    InColumns,
    QuotientDigit,
)
from onewhole.working.working import Working


def is_column(line: Line) -> bool:
    """Say whether a line is a step of a column: the board shows it in the columns and not as a sum."""
    return isinstance(line.because, InColumns)


def laid_cues(working: Working, memory: Memory, language: Language) -> list[Cue]:
    """Say how numbers are written under each other, once in a film, and once for numbers with a point.

    Nothing for numbers that are multiplied or divided: their first step says it.
    """
    if not any(map(is_column, working.lines)):
        return []
    laid = laid_numbers(working.statement)
    if laid is None:
        return []
    pointed = any(number.ladder.style is Style.DECIMAL for number, _ in laid)
    if not memory.once(Once.POINTS if pointed else Once.COLUMNS):
        return []
    return [Cue(Role.LINE, memory.tell(language.opening.columns(pointed=pointed)))]


def beside(line: Line) -> Comparison | None:
    """Return what is worked out in a column, to be written beside it; None where there is nothing.

    >>> from onewhole.notations.text import text
    >>> from onewhole.number.unit import ONE
    >>> text(beside(Line(whole(6), ColumnTaken(ONE, 14, 8, blank=False))))
    '14 - 8 = 6'
    """
    match line.because:
        case ColumnTaken(_, have, gone, blank=False):
            return Comparison(minus(whole(have), whole(gone)), whole(have - gone), Relation.EQUAL)
        case ColumnAdded(digits=digits, carried=carried) as added:
            parts = (*digits, *((carried,) if carried else ()))
            if len(parts) == 1:
                return None
            return Comparison(plus(*map(whole, parts)), whole(added.total), Relation.EQUAL)
        case DigitMultiplied(times, digit, carried) as multiplied:
            product = Times(whole(times), whole(digit))
            says = plus(product, whole(carried)) if carried else product
            return Comparison(says, whole(multiplied.total), Relation.EQUAL)
        case QuotientDigit(by=by, digit=digit) as found if digit:
            return Comparison(Times(whole(digit), whole(by)), whole(found.product), Relation.EQUAL)
        case DigitBroughtDown(have=have, taken=int() as gone) | DivisionEnds(have, int() as gone):
            return Comparison(minus(whole(have), whole(gone)), whole(have - gone), Relation.EQUAL)
        case _:
            return None
