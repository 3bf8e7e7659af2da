"""Numbers that may be asked for in the same form as one: other pieces and other counts of the same kind."""

from collections.abc import Iterator
from functools import lru_cache
from math import gcd

from onewhole.errors import OnewholeError
from onewhole.number.another_name import another_name
from onewhole.number.ladder import Style, mixed
from onewhole.number.name_wanted import NumberForm, named_as
from onewhole.number.quantity import Quantity
from onewhole.statements.statement import AnotherName, Question, Statement

#: The denominators of grade 4 (footnote to 4.NF, CCSSM 2010) but for 100, and those of decimals.
_BOTTOMS: tuple[int, ...] = (2, 3, 4, 5, 6, 8, 10, 12)
_POINTED = (2, 4, 5, 10, 20, 25, 50, 100)
_PLACES = (10, 100, 1000)
#: A fraction of more than one whole has fewer wholes than this, a mixed number at most so many.
_FEW = 5
_WHOLES = 9


def asked_in_pieces(statement: Statement) -> AnotherName | None:
    """Return a fraction or a mixed number with the form that is asked for; None for anything else.

    Of a number that stands alone that is the form of its other name.

    >>> from onewhole.statements.reading import read_statement
    >>> [asked_in_pieces(read_statement(typed)).wanted.name for typed in ("6/8", "11/4 = ?", "1 1/2 = ?")]
    ['SIMPLEST', 'MIXED', 'FRACTION']
    """
    match statement:
        case AnotherName(number, NumberForm()) if number.ladder.style is Style.MIXED:
            return statement
        case Question(Quantity() as number) if number.ladder.style is Style.MIXED:
            name = another_name(number)
            return None if name is None else AnotherName(number, _form_of(number, name))
        case _:
            return None


def _form_of(number: Quantity, name: Quantity) -> NumberForm:
    if name.ladder.style is Style.MIXED and name.ladder != number.ladder:
        return NumberForm.SIMPLEST
    one_fraction = name.ladder.style is Style.MIXED and name.counts[0] is None
    return NumberForm.FRACTION if one_fraction else NumberForm.MIXED


def like_names(asked: AnotherName) -> Iterator[AnotherName]:
    """Yield the same question about other numbers with pieces of any size, in an order that never changes.

    A fraction below one stays one, one of more than a whole stays one, a mixed number too; what is in
    simplest form already stays so, and what is not does; tenths and hundredths stay among themselves where a
    decimal is asked for. The space is walked in wide steps.

    >>> from itertools import islice
    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_statement
    >>> found = islice(like_names(read_statement("12/18 simplest")), 3)
    >>> all(gcd(one.number.amounts[1], one.number.ladder.denominator) > 1 for one in found)
    True
    """
    space = _space(asked)
    if not space:
        return
    size = len(space)
    step = next(step for step in range(size * 618 // 1000 + 1, 2 * size + 2) if gcd(step, size) == 1)
    for turn in range(1, size + 1):
        yield space[turn * step % size]


@lru_cache(maxsize=256)
def _space(asked: AnotherName) -> tuple[AnotherName, ...]:
    own = asked.number.ladder.denominator
    bottoms = _BOTTOMS
    if asked.wanted is NumberForm.DECIMAL:
        bottoms = tuple(bottom for bottom in _POINTED if (bottom in _PLACES) == (own in _PLACES))
    every = sorted({*bottoms, own})
    found = (
        AnotherName(Quantity(mixed(bottom, asked.number.ladder.mark), counts), asked.wanted)
        for bottom in every
        for counts in _counts(asked.number, bottom)
    )
    return tuple(one for one in found if one != asked and _stays(one) == _stays(asked))


def _counts(number: Quantity, bottom: int) -> Iterator[tuple[int | None, int]]:
    """Yield wholes and pieces of the same kind as a number's."""
    wholes, top = number.counts[0], number.amounts[1]
    over = top >= number.ladder.denominator
    for count in (None,) if wholes is None else range(1, _WHOLES + 1):
        yield from (
            (count, one) for one in range(bottom + 1 if over else 1, _FEW * bottom if over else bottom)
        )


def _stays(asked: AnotherName) -> bool | None:
    """Say whether a number has the name that is wanted already; None where it has no such name."""
    try:
        return named_as(asked.number, asked.wanted) == asked.number
    except OnewholeError:
        return None
