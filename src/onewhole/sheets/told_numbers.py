"""Whether the words of a word problem tell the numbers of its equation."""

from collections.abc import Iterable, Iterator
from fractions import Fraction

from onewhole.languages.english.speech import say
from onewhole.languages.table import LANGUAGES
from onewhole.notations.sentences.text import text_of
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.sentences.node import Spot
from onewhole.sentences.typed import loosened, typed
from onewhole.sheets.story_cues import spelt_numbers
from onewhole.statements.expression import Over, Sum, Times, quantities
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.reading import read_quantity
from onewhole.statements.statement import AnotherName, Comparison, MissingNumber, Question, Statement

#: What stands between the two parts of one measure: 5 feet, 2 inches.
_JOINS = {", ", " and ", ", and "}
#: Words that may stand between two parts of a measure, in any language: 5 pies y 2 pulgadas.
_JOINING = {"and", "e", "y"}


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
    told, spelt = set(_told(loosened(problem.story))), problem.story.casefold()
    plain = _plain(spelt)
    told |= {(Kind.NUMBER, read_quantity(one.digits).value) for one in spelt_numbers(problem.story)}
    return tuple(
        number
        for number in _to_be_told(problem.statement)
        if (number.kind, number.value) not in told and say(number) not in spelt and not _named(number, plain)
    )


def _to_be_told(statement: Statement) -> tuple[Quantity, ...]:
    """Return the numbers that a story tells: of a line plot none of those that stand on it."""
    if isinstance(statement, PlotQuestion):
        return (statement.among.value,) if statement.among else ()
    return numbers_of(statement)


def _named(number: Quantity, plain: str) -> bool:
    """Say whether a measure or a time of day stands in words as a language names it: 5 pies y 2 pulgadas."""
    if number.kind is Kind.NUMBER:
        return False
    named = (text_of(one.stories.amount(number)) for one in LANGUAGES.values())
    return any(f" {_plain(words)} " in f" {plain} " for words in named)


def _plain(words: str) -> str:
    """Leave out what stands around words, and what joins the parts of a measure."""
    bare = (word.strip(".,;:?!¿¡") for word in words.casefold().split())
    return " ".join(word for word in bare if word not in _JOINING)


def _told(story: str) -> Iterator[tuple[Kind, Fraction]]:
    """Yield every number and every measure that is written in digits in the words."""
    before: Quantity | None = None
    end = 0
    for spot in typed(story).spots:
        for number in _numbers(spot):
            yield number.kind, number.value
            if number.kind is not Kind.NUMBER:
                yield from ((Kind.NUMBER, Fraction(count)) for count in number.amounts)
            if before and _goes_on(before, number) and story[end : spot.start] in _JOINS:
                yield number.kind, before.value + number.value
            before, end = number, spot.end


def _goes_on(first: Quantity, second: Quantity) -> bool:
    """Say whether a measure goes on in a smaller unit of the same kind: 5 feet, 2 inches."""
    large, small = first.ladder.units[-1], second.ladder.units[0]
    return large.kind is small.kind is not Kind.NUMBER and small.size < large.size


def _numbers(spot: Spot) -> Iterable[Quantity]:
    match spot.thing:
        case Quantity() | Sum() | Times() | Over() as expression:
            return quantities(expression)
        case Question() | Comparison() | MissingNumber() | AnotherName() as statement:
            return numbers_of(statement)
        case _:
            return ()
