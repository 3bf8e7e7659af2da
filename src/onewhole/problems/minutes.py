"""How long a problem takes, from its steps and the digits of its numbers.

No source was found for minutes a problem: these are our own start values, for a teacher to correct. They
are counted in half minutes: one to read the problem and to write its answer, one for each fact that is
worked out (a digit times a digit, a digit of a quotient), and one for each step that joins them.
"""

from fractions import Fraction
from math import ceil
from typing import assert_never

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.problems.digit_facts import (
    digit_products,
    factor_digits,
    in_digits,
    long_divisor,
    quotient_digits,
)
from onewhole.problems.needs import Needs, needs
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Times,
    WithRemainder,
    quantities,
    value,
)
from onewhole.statements.line_plot import PlotAsk, PlotQuestion
from onewhole.statements.listing import Listing, ListSort
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Statement,
)
from onewhole.statements.whole_groups import WholeGroups

#: Half minutes: to read a problem and write its answer, and what no operation is counted for (a comparison, a
#: rounding, another name); a change of pieces or units, a point to place.
READ, ASKED, CHANGED, POINT = 1, 1, 1, 1
#: A story is read and understood besides, and takes so much at least.
STORY, STORY_AT_LEAST = 3, 6
#: Sums of numbers up to so many digits are written in one go.
SHORT_DIGITS = 4
#: Half minutes for a digit of a quotient: by a number of one digit, and by a longer one, which is estimated.
EACH_SHARED, EACH_ESTIMATED = Fraction(3, 2), Fraction(3)
#: Half minutes for a product or quotient of fractions, and more for each mixed number in it.
FRACTIONS, MIXED = 2, 2
#: Pairs of factors beyond so many are found as fast as they are written.
MOST_PAIRS = 5


def minutes_of(statement: Statement, wanted: Needs, *, story: bool = False) -> Fraction:
    """Return how many minutes a problem takes, in halves; ``wanted`` is what it needs.

    >>> from onewhole.statements.reading import read_statement
    >>> for typed in ("52 - 21", "52 - 27", "386 x 24", "7254 ÷ 6"):
    ...     asked = read_statement(typed)
    ...     print(typed, minutes_of(asked, needs(asked)))
    52 - 21 1
    52 - 27 3/2
    386 x 24 4
    7254 ÷ 6 7/2
    """
    halves = READ + _asks(statement, wanted)
    return Fraction(max(halves + STORY, STORY_AT_LEAST) if story else halves, 2)


def _asks(statement: Statement, wanted: Needs) -> int:
    match statement:
        case Question(Quantity()) | MissingNumber() | AnotherName() | Rounding():
            return ASKED + wanted.regrouping
        case Question(asked):
            return _work(asked)
        case PlotQuestion(asks=PlotAsk.COUNT):
            return ASKED
        case WholeGroups(about=about):
            return ASKED + _work(about)
        case PlotQuestion():
            return ASKED + _work(statement.leads_to)
        case Comparison(left, right):
            return ASKED + _work(left) + _work(right)
        case Ordering(numbers):
            return len(numbers)
        case Listing(sort=ListSort.FACTORS, found=found):
            return min(MOST_PAIRS, ceil(len(found) / 2))
        case AskedInWords():
            return ASKED
        case _:
            assert_never(statement)


def _work(asked: Expression) -> int:
    """Return the half minutes that the operations of an expression take."""
    match asked:
        case Quantity() | WithRemainder():
            return 0
        case InBrackets(inside):
            return _work(inside)
        case Sum(terms):
            return sum(_work(term.part) for term in terms) + _joined(asked)
        case Times(left, right):
            return _work(left) + _work(right) + _times(asked)
        case Quotient(left, right):
            return _work(left) + _work(right) + _divided(asked)
        case Over(top, bottom):
            return _work(top) + _work(bottom) + ASKED
        case _:
            assert_never(asked)


def _joined(asked: Sum) -> int:
    """Return what it takes to add and take away: more where something is regrouped, renamed, or long."""
    long = any(_digits(value(term.part)) > SHORT_DIGITS for term in asked.terms)
    if not all(isinstance(term.part, Quantity) for term in asked.terms):
        return len(asked.terms) - 1 + long
    wanted = needs(Question(asked))
    return len(asked.terms) - 1 + wanted.regrouping + CHANGED * wanted.renaming + long


def _times(asked: Times) -> int:
    """Return what a product takes: its facts, and for each row of partial products a sum."""
    if not in_digits(asked):
        return _of_units(asked, FRACTIONS)
    return digit_products(asked) + min(factor_digits(asked)) - 1 + _point(asked)


def _divided(asked: Quotient) -> int:
    """Return what a quotient takes: a guess, a product and a difference for each of its digits."""
    if not in_digits(asked):
        return _of_units(asked, FRACTIONS + CHANGED)
    digits, point = quotient_digits(asked), _point(asked)
    if digits == 1:
        left_over = value(asked).denominator > 1 and not point
        return ASKED + left_over + long_divisor(asked) + point
    return ceil((EACH_ESTIMATED if long_divisor(asked) else EACH_SHARED) * digits) + point


def _of_units(asked: Expression, fractions: int) -> int:
    """Return what a product or quotient of fractions or measures takes; each further unit is worked with."""
    numbers = quantities(asked)
    pieces = [one for one in numbers if one.ladder.style is Style.MIXED]
    if not pieces:
        further = sum(len(one.ladder.units) - 1 for one in numbers if one.ladder.style is Style.MEASURE)
        return ASKED + further + CHANGED
    mixed = sum(bool(one.counts[0]) for one in pieces)
    return fractions - (len(pieces) == 1) + MIXED * mixed


def _point(asked: Expression) -> int:
    return POINT * any(one.ladder.style is Style.DECIMAL for one in quantities(asked))


def _digits(amount: Fraction) -> int:
    """Return how many digits the whole part of an amount has."""
    return len(str(abs(int(amount))))
