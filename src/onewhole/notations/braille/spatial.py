"""Numbers under each other in Nemeth braille: digits by their places, the sign, and the line below.

Source: *The Nemeth Braille Code*, 1972 revision, sections 178 and 185, from memory; APH, Braille Brain, unit
5, and CTEBVI, Nemeth spatial arrangements (excerpts): no numeric indicator, the sign one cell left of the
widest number and of its dollar sign, a line of dots 2 and 5 one cell wider at both ends.
"""

from onewhole.notations.braille.cells import BLANK
from onewhole.notations.braille.nemeth import DIGITS, SIGNS, dollars
from onewhole.number.digits import in_digits
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.row import Sign
from onewhole.statements.statement import Question, Statement, asked_quantities

_RULE, _POINT = "⠒", "⠨"


def spatial(statement: Statement) -> tuple[str, ...]:
    """Write the numbers of a question under each other, with the sign and the line below, as lines of cells.

    Nothing for a question whose numbers do not stand in digits, and for more than one that is taken away.

    >>> from onewhole.statements.reading import read_statement
    >>> spatial(read_statement("304 - 28"))
    ('⠀⠀⠒⠴⠲', '⠀⠤⠀⠆⠦', '⠒⠒⠒⠒⠒⠒')
    """
    signed = asked_quantities(statement) if isinstance(statement, Question) else None
    if not signed or len(signed) < 2 or not all(_stands(number) for number, _ in signed):
        return ()
    taken = any(gone for _, gone in signed)
    if taken and len(signed) > 2:
        return ()
    before = max(len(_sides(number)[0]) for number, _ in signed)
    after = max(len(_sides(number)[1]) for number, _ in signed)
    rows = [_row(number, before, after) for number, _ in signed]
    rows = [f"{BLANK}{BLANK}{row}" for row in rows[:-1]] + [
        f"{BLANK}{SIGNS[Sign.MINUS if taken else Sign.PLUS]}{rows[-1]}"
    ]
    return (*(row.rstrip(BLANK) for row in rows), _RULE * (len(rows[0]) + 1))


def _stands(number: Quantity) -> bool:
    """Say whether a number stands in digits, alone or as dollars; a unit behind it has no column."""
    plain = number.ladder.style in {Style.PLACES, Style.DECIMAL} and in_digits(number)
    return plain and dollars(number.ladder.mark) is not None


def _sides(number: Quantity) -> tuple[str, str]:
    """Return the digits before the point and after it, the point with them."""
    digits = "".join(str(count) for count in number.amounts).translate(DIGITS)
    after = number.ladder.after
    return (digits[:-after], _POINT + digits[-after:]) if after else (digits, "")


def _row(number: Quantity, before: int, after: int) -> str:
    front, behind = _sides(number)
    return f"{dollars(number.ladder.mark)}{front.rjust(before, BLANK)}{behind.ljust(after, BLANK)}"
