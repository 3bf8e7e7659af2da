"""How many facts of single digits a product or a quotient is worked out with."""

from fractions import Fraction

from onewhole.number.ladder import Style
from onewhole.statements.expression import Expression, Quotient, Times, quantities, value
from onewhole.statements.statement import Question, Statement


def digit_facts(statement: Statement) -> int:
    """Return how many facts a question needs beyond the first; none but for products and long divisors.

    >>> from onewhole.statements.reading import read_statement
    >>> [digit_facts(read_statement(typed)) for typed in ("7 x 8", "386 x 24", "725 ÷ 5", "3864 ÷ 24")]
    [0, 5, 0, 3]
    """
    match statement:
        case Question(Times() as asked) if in_digits(asked):
            return digit_products(asked) - 1
        case Question(Quotient() as asked) if in_digits(asked) and long_divisor(asked):
            return quotient_digits(asked)
        case _:
            return 0


def in_digits(asked: Expression) -> bool:
    """Say whether all numbers of an expression are whole numbers and decimals, in one unit or none.

    >>> from onewhole.statements.reading import read_expression
    >>> in_digits(read_expression("2.4 x 36")), in_digits(read_expression("2 x 3/4"))
    (True, False)
    """
    return all(one.ladder.style in {Style.PLACES, Style.DECIMAL} for one in quantities(asked))


def digit_products(asked: Times) -> int:
    """Return how often a digit is multiplied by a digit: none for the zeros.

    >>> from onewhole.statements.reading import read_expression
    >>> digit_products(read_expression("386 x 24")), digit_products(read_expression("300 x 7"))
    (6, 1)
    """
    left, right = factor_digits(asked)
    return left * right


def factor_digits(asked: Times) -> tuple[int, int]:
    """Return how many digits but zeros each factor has, at least one."""
    left, right = (sum(map(bool, _digits(value(side)))) for side in (asked.left, asked.right))
    return max(1, left), max(1, right)


def quotient_digits(asked: Quotient) -> int:
    """Return how many digits of a quotient are worked out: the zeros at its end cost nothing.

    >>> from onewhole.statements.reading import read_expression
    >>> [quotient_digits(read_expression(typed)) for typed in ("7254 ÷ 6", "4500 ÷ 9", "6.25 ÷ 5")]
    [4, 1, 3]
    """
    by = value(asked.right)
    shared = value(asked.left) / by if by else Fraction(0)
    pointed = any(one.ladder.style is Style.DECIMAL for one in quantities(asked))
    return _significant(shared if pointed else Fraction(int(shared)))


def long_divisor(asked: Quotient) -> bool:
    """Say whether the divisor has several digits, so that each digit of the quotient is estimated."""
    return _significant(value(asked.right)) > 1


def _significant(amount: Fraction) -> int:
    """Return how many digits a number has from its first to its last that is no zero, at least one."""
    digits = _digits(amount)
    there = [at for at, digit in enumerate(digits) if digit]
    return there[-1] - there[0] + 1 if there else 1


def _digits(amount: Fraction) -> tuple[int, ...]:
    """Return the digits of a number down to thousandths, the last first."""
    rest, found = abs(int(amount * 1000)), []
    while rest:
        rest, digit = divmod(rest, 10)
        found.append(digit)
    return tuple(found)
