"""Whether the words of a word problem tell the numbers of its equation."""

import re
from collections.abc import Iterator
from fractions import Fraction

from onewhole.errors import OnewholeError
from onewhole.languages.english.speech import say
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_quantity

_DIGIT = "[0-9¼-¾⅐-⅞]"
_NUMBER = re.compile(rf"{_DIGIT}(?:{_DIGIT}|[.,/](?={_DIGIT})|\s(?:and\s)?(?=[0-9]+/[0-9]|[¼-¾⅐-⅞]))*")
_UNIT = "(?:yards?|yd|feet|foot|ft|inch(?:es)?|in|pounds?|lbs?|ounces?|oz|hours?|hrs?|h|minutes?|mins?)"
_MEASURE = re.compile(rf"(?<![0-9/.,])[0-9]+ {_UNIT}\b(?:,?(?: and)? [0-9]+ {_UNIT}\b)*")


def untold(problem: Problem) -> tuple[Quantity, ...]:
    """Return the numbers of a word problem's equation that do not stand in its words; none without words.

    A number stands there in digits, in any equal form, or spelt out. Words may hold more numbers than those
    ("Room 12"), and nothing is said about what they ask.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("5 1/3 - 2 2/3")
    >>> told = Problem("1", asked, "5 1/3 - 2 2/3", story="Room 12 has 5 strips. A kite takes 2⅔ strips.")
    >>> [number.counts for number in untold(told)]
    [(5, 1)]
    """
    if not problem.story:
        return ()
    told, spelt = set(_told(problem.story)), problem.story.casefold()
    return tuple(
        number
        for number in numbers_of(problem.statement)
        if (number.kind, number.value) not in told and say(number) not in spelt
    )


def _told(story: str) -> Iterator[tuple[Kind, Fraction]]:
    """Yield every number and every measure that stands in words in digits."""
    for pattern in (_NUMBER, _MEASURE):
        for found in pattern.finditer(story):
            try:
                number = read_quantity(found.group().replace(", ", " "))
            except OnewholeError:
                continue
            yield number.kind, number.value
