"""Answers with a unit or a thing behind the number, as a child writes them: 2 1/2 mi., 4 2/8 lb, 3 kites."""

import re
from collections.abc import Iterator

from msgspec import Struct

from onewhole.errors import InputError, OnewholeError
from onewhole.number.clock import DAY, HALF_DAYS, HOUR, ROUND, clock, on_clock
from onewhole.number.ladder import Style, decimal, measure, mixed
from onewhole.number.quantity import Quantity, usual, whole, with_mark
from onewhole.number.unit import CENT, DOLLAR, MEASURES, Kind, unit_marked
from onewhole.problems.answer import answer
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.statements.clock_sides import between_times, has_clock, time_asked
from onewhole.statements.reading import read_answer
from onewhole.statements.statement import Question
from onewhole.statements.unit_words import MARKS
from onewhole.statements.whole_groups import WholeGroups

#: The spellings of each unit, the shortest usual one first; our own list for stories of grade 4.
_SPELT = (
    "mi mile miles",
    "km kilometer kilometers kilometre kilometres",
    "m meter meters metre metres",
    "cm centimeter centimeters centimetre centimetres",
    "mm millimeter millimeters",
    "yd yds yard yards",
    "ft foot feet ' ′ ’",
    'in ins inch inches " ″ ”',
    "lb lbs pound pounds",
    "oz ounce ounces",
    "t ton tons",
    "kg kgs kilogram kilograms",
    "g gram grams",
    "gal gals gallon gallons",
    "qt qts quart quarts",
    "pt pts pint pints",
    "c cup cups",
    "tbsp tablespoon tablespoons",
    "tsp teaspoon teaspoons",
    "l liter liters litre litres",
    "ml milliliter milliliters",
    "h hr hrs hour hours",
    "min mins minute minutes",
    "s sec secs second seconds",
    "d day days",
    "wk wks week weeks",
    "acre acres",
    "dollar dollars $",
)
_UNIT_OF = {spelling: at for at, row in enumerate(_SPELT) for spelling in row.split()}
#: Spellings that are words, or letters, of their own: in a story they are units only behind a number.
_SHORT = frozenset({"in", "m", "t", "g", "c", "l", "h", "s", "d", "min"})
_TAIL = re.compile(r"""(.*?[0-9⅐-⅞¼-¾])\s*((?:[A-Za-z$]+\.?|['"′″’”])(?:\s+[A-Za-z]+\.?)*)""", re.DOTALL)
_WORD = re.compile(r"[a-z]+|['\"′″’”$]")
#: Hours and minutes with a colon between them, as a child writes both a time of day and how long it takes.
_HOURS = re.compile(r"\s*(\d{1,2}):(\d\d)\s*")
_BEHIND = re.compile(r"[0-9]\s*([a-z]+)")
#: Words for what is asked of things in groups, each for one of them.
_OF_GROUPS = frozenset({"group", "full", "needed", "left", "over", "grupo", "lleno", "completo", "sobran"})
_MOST = 60
#: A number without anything behind it.
_PLAIN = re.compile(r"[0-9 /.-]*")
HUNDREDTHS = 100


class UnitAnswer(Struct, frozen=True):
    """A number that was written with a word behind it; ``other`` says that the page asks for another unit."""

    number: Quantity
    other: bool


def read_with_unit(text: str, problem: Problem) -> UnitAnswer | None:
    """Read an answer with the unit, or the words, that the story of its problem says behind it.

    Where the problem itself is in measures, a mixed number of one of them is read as two: 4 2/8 lb as
    4 lb 4 oz. A unit that the story does not say is told as another one. None where the words are nothing
    that the problem says: then the text is read as any other.

    >>> from onewhole.statements.reading import read_statement
    >>> story = "Maya hiked 4 1/4 miles, and Ben 1 3/4 miles. How many miles more is that?"
    >>> hike = Problem("1", read_statement("4 1/4 - 1 3/4"), "4 1/4 - 1 3/4", story=story)
    >>> [read_with_unit(text, hike).other for text in ("2 1/2 mi.", "2 2/4 miles more", "2 1/2 lb")]
    [False, False, True]
    >>> read_with_unit("2 1/2 wide", hike) is None
    True
    """
    if isinstance(problem.statement, Question) and has_clock(problem.statement.asked):
        return _beside_a_clock(text, problem.statement)
    if asked := _asked_unit(problem):
        return _in_unit(text, asked)
    if _PLAIN.fullmatch(text) is not None:
        return None
    if (money := _money(text)) is not None:
        return _money_for(money, problem)
    found = _TAIL.fullmatch(text.strip()) if len(text) <= _MOST else None
    if found is None:
        return None
    number = _number(found[1])
    words = tuple(_words(found[2]))
    if number is None or not words:
        return None
    kind = _kind(problem)
    if kind is not Kind.NUMBER:
        return _in_measures(number, words, kind)
    said, plain = _said(problem.story)
    if isinstance(problem.statement, WholeGroups):
        plain |= _OF_GROUPS
    elif not problem.story:
        return None
    units = [_UNIT_OF[word] for word in words if word in _UNIT_OF]
    if any(word not in _UNIT_OF and _one_of(word) not in plain for word in words):
        return None
    return UnitAnswer(number, other=any(unit not in said for unit in units))


def _beside_a_clock(text: str, asked: Question) -> UnitAnswer | None:
    """Read an answer to a problem with times of day: 10:80 is 10 h 80 min, and so is 1:35 where it is asked
    how long something takes.
    """
    if (found := _HOURS.fullmatch(text)) is not None:
        hours, minutes = int(found[1]), int(found[2])
        if between_times(asked.asked) or minutes >= HOUR:
            return UnitAnswer(Quantity(measure("h", "min"), (hours, minutes)), other=False)
    like = time_asked(asked.asked)
    return None if like is None else _on_the_clock(text, asked, like)


def _on_the_clock(text: str, asked: Question, like: Quantity) -> UnitAnswer | None:
    """Read a time of day where one is asked for; a.m. or p.m. counts only where the answer says it.

    Where it does not, a wrong time is taken in that half of a day in which it is nearer to the right one.
    """
    try:
        read, right = read_answer(text), answer(asked)
    except OnewholeError:
        return None
    if not isinstance(read, Quantity) or not read.ladder.clock or not isinstance(right, Quantity):
        return None
    around = DAY if read.ladder == like.ladder == HALF_DAYS else ROUND
    if (read.parts - right.parts) % around == 0:
        return UnitAnswer(right, other=False)
    if around == ROUND and like.ladder == HALF_DAYS:
        nearest = min((read.parts, read.parts + ROUND), key=lambda parts: abs(parts - right.parts))
        return UnitAnswer(clock(nearest, halves=True), other=False)
    return UnitAnswer(on_clock(read, like), other=False)


def _money(text: str) -> Quantity | None:
    """Read an amount in dollars; None for anything else."""
    read = _quantity(text)
    return read if read is not None and read.ladder.mark == DOLLAR else None


def _money_for(money: Quantity, problem: Problem) -> UnitAnswer:
    """Read dollars where cents are asked for, or where a story speaks of dollars; else it is another unit."""
    if _kind(problem) is Kind.MONEY:
        cents = money.value * HUNDREDTHS
        return UnitAnswer(Quantity(measure(CENT), (cents.numerator,)), other=False)
    said, _ = _said(problem.story)
    return UnitAnswer(with_mark(money, ""), other=_UNIT_OF[DOLLAR] not in said)


def _asked_unit(problem: Problem) -> str:
    """Return the unit of the numbers of a problem, such as in of 5 5/8 in; empty where they have none."""
    marks = (one.ladder.mark for one in numbers_of(problem.statement) if one.kind is Kind.NUMBER)
    return next(filter(None, marks), "")


def _in_unit(text: str, asked: str) -> UnitAnswer | None:
    """Read an answer to a problem whose numbers have a unit; cents are read as dollars, 2 ft as 24 in.

    None where no unit stands behind the number, and where it is no number.
    """
    read = _quantity(text)
    if read is None or not read.ladder.mark:
        return None
    if read.kind is Kind.NUMBER and read.ladder.mark == asked:
        return UnitAnswer(read, other=False)
    unit, wanted = unit_marked(read.ladder.mark), unit_marked(asked)
    amount = read.value * (unit.size if read.kind is Kind.NUMBER else 1)
    if unit.kind is not wanted.kind:
        return UnitAnswer(with_mark(read, "") if read.kind is Kind.NUMBER else read, other=True)
    amount /= wanted.size
    if amount.denominator == 1:
        return UnitAnswer(whole(amount.numerator, asked), other=False)
    hundredths = amount * HUNDREDTHS
    if asked == DOLLAR and hundredths.denominator == 1:
        return UnitAnswer(usual(decimal(1, 2, DOLLAR), amount), other=False)
    return UnitAnswer(usual(mixed(amount.denominator, asked), amount), other=False)


def _number(text: str) -> Quantity | None:
    read = _quantity(text)
    return read if read is not None and read.kind is Kind.NUMBER else None


def _quantity(text: str) -> Quantity | None:
    try:
        read = read_answer(text)
    except InputError:
        return None
    return read if isinstance(read, Quantity) else None


def _words(text: str) -> Iterator[str]:
    return iter(_WORD.findall(text.casefold()))


def _kind(problem: Problem) -> Kind:
    numbers = numbers_of(problem.statement)
    return numbers[0].kind if numbers else Kind.NUMBER


def _one_of(word: str) -> str:
    """Return a word without the end of a plural, near enough to compare words of one story."""
    return word.removesuffix("s") if len(word) > 3 else word


def _said(story: str) -> tuple[frozenset[int], frozenset[str]]:
    """Return the units that a story says, and its other words."""
    text = story.casefold()
    behind = set(_BEHIND.findall(text))
    words = set(_words(text))
    units = {_UNIT_OF[word] for word in words if word in _UNIT_OF and (word not in _SHORT or word in behind)}
    return frozenset(units), frozenset(_one_of(word) for word in words if word not in _UNIT_OF)


def _in_measures(number: Quantity, words: tuple[str, ...], kind: Kind) -> UnitAnswer | None:
    """Read a mixed number or a decimal of one measure as a number of it and of the next smaller one."""
    broken = number.ladder.style in {Style.MIXED, Style.DECIMAL}
    if len(words) != 1 or words[0] not in _UNIT_OF or not broken:
        return None
    mark = MARKS.get(_SPELT[_UNIT_OF[words[0]]].split()[0])
    marks = [unit.mark for unit in MEASURES if unit.kind is kind]
    if mark is None or mark not in marks[:-1]:
        return None
    smaller = marks[marks.index(mark) + 1]
    ladder = measure(mark, smaller)
    wholes, rest = divmod(number.value, 1)
    count = rest * ladder.ratios[0]
    if count.denominator != 1:
        return None
    return UnitAnswer(Quantity(ladder, (int(wholes), count.numerator)), other=False)
