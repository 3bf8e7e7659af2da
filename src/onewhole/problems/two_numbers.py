"""A sum or a difference of two numbers in parts: wholes, pieces, and the size of the pieces of each."""

from msgspec import Struct

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.statement import Question, Statement, asked_quantities

#: Wholes, pieces, and how many pieces make a whole.
Parts = tuple[int, int, int]


class TwoNumbers(Struct, frozen=True):
    """A sum or a difference of w1 n1/d1 and w2 n2/d2; a whole number has no pieces, of the other's size."""

    w1: int
    n1: int
    d1: int
    w2: int
    n2: int
    d2: int
    taken: bool


def parts_of(number: Quantity) -> Parts | None:
    """Return the parts of a whole or a mixed number, as written; None for any other. A whole has no pieces.

    >>> from onewhole.statements.reading import read_answer
    >>> [parts_of(read_answer(text)) for text in ("3 9/8", "7", "0.5")]
    [(3, 9, 8), (7, 0, 0), None]
    """
    if number.ladder.style is Style.MIXED:
        return number.amounts[0], number.amounts[-1], number.ladder.denominator
    return (number.value.numerator, 0, 0) if number.value.denominator == 1 else None


def two_numbers(statement: Statement) -> TwoNumbers | None:
    """Return the numbers of a sum or a difference of two whole or mixed numbers; else None.

    >>> from onewhole.statements.reading import read_statement
    >>> two_numbers(read_statement("5 - 1 3/8"))
    TwoNumbers(w1=5, n1=0, d1=8, w2=1, n2=3, d2=8, taken=True)
    """
    match statement:
        case Question() if signed := asked_quantities(statement):
            match [(parts_of(number), taken) for number, taken in signed]:
                case [((w1, n1, d1), _), ((w2, n2, d2), taken)]:
                    return TwoNumbers(w1, n1, d1 or d2 or 1, w2, n2, d2 or d1 or 1, taken)
                case _:
                    return None
        case _:
            return None
