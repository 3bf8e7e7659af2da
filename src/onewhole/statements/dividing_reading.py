"""Reading what divides (87 / 4, 5 ft 2 in/2), what is left over (21 r 3), and a part of 20."""

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import Kind
from onewhole.statements.cursor import Cursor
from onewhole.statements.expression import Expression, Quotient, Times, WithRemainder, kind, unit_mark, value
from onewhole.statements.gap import Gap
from onewhole.statements.numerals import UNCLEAR_REMEDY, numeral
from onewhole.statements.tokens import Token, TokenKind

#: What people write before a remainder, in English and Spanish; our own list.
REMAINDER = frozenset({"r", "rem", "remainder", "residuo", "resto"})

#: What takes a fraction of a number, in English and Spanish.
OF = frozenset({"of", "de"})


def divides(cursor: Cursor, found: Expression | Gap) -> bool:
    """Say whether a sign that divides comes next; a slash close behind a number with pieces is refused.

    Behind a measure, a decimal or money a slash can only divide: 5 ft 2 in/2.
    """
    if cursor.here.sort not in {TokenKind.SLASH, TokenKind.UNCLEAR}:
        return cursor.here.sort is TokenKind.DIVIDE
    pieces = isinstance(found, Gap) or (isinstance(found, Quantity) and found.ladder.style is Style.MIXED)
    if pieces:
        cursor.refuse("a second slash stands here, and it is not clear what it divides", UNCLEAR_REMEDY)
    return True


def part_of(cursor: Cursor, found: Expression | Gap) -> bool:
    """Say whether a word comes next that takes a part of what follows: 3/4 of 20 is 3/4 x 20, 0.5 of 20 too.

    Source: a fraction of a number is a product with it (5.NF.B.4, CCSSM 2010).
    """
    if not isinstance(found, Quantity) or found.ladder.mark:
        return False
    return found.ladder.style in {Style.MIXED, Style.DECIMAL} and cursor.word_ahead(0, OF)


def with_remainder(cursor: Cursor, found: Quantity) -> Quantity | WithRemainder:
    """Read what is left over behind a number: 21 r 3."""
    if not cursor.word_ahead(0, REMAINDER):
        return found
    cursor.take()
    left = numeral(cursor)
    if not isinstance(left, Quantity):
        cursor.refuse("the remainder is one number", "Write it as in 21 r 3.")
    return WithRemainder(found, left, cursor.divisor)


def quotient(cursor: Cursor, left: Expression, right: Expression, start: Token) -> Quotient:
    """Divide two numbers that were read, the second of them at ``start``; nothing is divided by 0.

    Source: a quotient is what times the divisor gives the number (3.OA.B.6, CCSSM 2010); by 0 there is none.
    """
    if not value(right):
        cursor.refuse_at(start, "nothing is divided by 0", "Divide by 1 or more.")
    if _with_unit(left) and not _with_unit(right) and (value(right).denominator > 1 or _pieces(right)):
        msg = "an amount with a unit is divided by a whole number here, or by such an amount"
        cursor.refuse_at(start, msg, "Write for example 2 ft / 4, 2 ft / 6 in, or $5 / $0.50.")
    cursor.divisor = right if isinstance(right, Quantity) else None
    return Quotient(left, right)


def _with_unit(number: Expression) -> bool:
    return kind(number) is not Kind.NUMBER or bool(unit_mark(number))


def _pieces(number: Expression) -> bool:
    return isinstance(number, Quantity) and not number.plain


def divisor_of(says: Expression) -> Quantity | None:
    """Return what the first side of a chain divides by, whether 87 / 4 or 87/4 was written."""
    match says:
        case Quotient(_, Quantity() as by):
            return by
        case Quotient(_, Times() as by) if kind(by) is Kind.NUMBER and value(by).denominator == 1:
            return whole(int(value(by)))
        case Quantity(ladder, (None, _)):
            return whole(ladder.denominator)
        case _:
            return None
