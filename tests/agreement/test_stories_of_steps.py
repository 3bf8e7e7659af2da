"""Stories of dividing and of several steps, solved from their English alone, come to the problem's answer."""

import re
from collections.abc import Callable, Iterator
from fractions import Fraction
from itertools import islice

import pytest

from onewhole.findings.wished_skill import WishedSkill
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.story_asks import NoStoryError, asked
from onewhole.sheets.drawing import draw
from onewhole.sheets.stories import story
from onewhole.sheets.wishes import Wishes
from onewhole.statements.expression import WithRemainder, value
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import NumberRow, Statement
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.quotients.remainder_shared import RemainderForm
from tests.kit.how_much import sample
from tests.kit.stories import DIVIDED, STEPS, TRAIL

#: Each unit in the smallest of its kind; a price is in dollars.
WORTH = {"yard": 36, "foot": 12, "feet": 12, "inch": 1, "inche": 1, "pound": 16, "ounce": 1, "hour": 60}
WORTH |= {"minute": 1, "week": 10080, "day": 1440, "gallon": 128, "quart": 32, "liter": 1000, "milliliter": 1}
WORTH |= {"kilogram": 1000, "gram": 1, "meter": 1000, "centimeter": 10, "cent": 1}
UNIT = rf"\d+ (?:{'|'.join(WORTH)})s?\b"
NUMBER = re.compile(
    rf"\$(?P<price>\d+(?:\.\d\d)?)|(?P<measure>{UNIT}(?: {UNIT})*)"
    r"|(?P<plain>(?:\d+ )?\d+/\d+|[\d,]*\d\.\d+|\d{1,3}(?:,\d{3})+|\d+)"
)
#: More seeds than there are ways to tell one problem.
SEEDS = 12

Numbers = list[Fraction]


def numbers(words: str) -> Numbers:
    """Every number of a story in its order, with int and Fraction alone."""
    return [_worth(found) for found in NUMBER.finditer(words)]


def _worth(found: re.Match[str]) -> Fraction:
    if found["price"]:
        return Fraction(found["price"].replace(",", ""))
    if found["measure"]:
        parts = re.findall(r"(\d+) (\w+)", found["measure"])
        return Fraction(sum(int(count) * WORTH[unit.removesuffix("s")] for count, unit in parts))
    return sum((Fraction(part) for part in found["plain"].replace(",", "").split()), Fraction(0))


#: What the English asks for: the first cue that stands in the words. Written from the sentences alone.
CUES: tuple[tuple[str, Callable[..., Fraction]], ...] = (
    (r"does it need|do they need", lambda a, b: Fraction(-(-a // b))),
    (r"many packs are full|many full rows can", lambda a, b: Fraction(a // b)),
    (r"as many full", lambda a, b: a % b),
    (r"times as much as", lambda a, b: a / b),
    (r"ow many times as much", lambda a, b: a / b),
    (r"how many (kites|packs|meetings|full meetings|kites can it make)", lambda a, b: a / b),
    (r"shares .* equally among .* Then at each of", lambda a, n, k, b, c: a / n + k * (b - c)),
    (r"One pupil has .* shares .* one of them|^First .* up to the end", lambda a, b, n: a + b / n),
    (r"are enough for .* (makes one such|one such meeting)", lambda a, b, n: a - b / n),
    (r"are enough for .* of that size|does it \w+ at \d+ meetings\?$", lambda a, n, k: a / n * k),
    (r"gets .* more\. It \w+ all of that", lambda a, b, n: (a + b) / n),
    (r"It \w+ the rest", lambda a, b, n: (a - b) / n),
    (r"each time\?$|does each|rows of the same length|same whole number|equally among", lambda a, b: a / b),
    (r"(for a flag|one day)\. (It also|Then it)", lambda a, k, b: a + k * b),
    (r"also makes a flag|After the last one .* more\.", lambda k, a, b: k * a + b),
    (r"After the last one", lambda k, a, b: k * a - b),
    (r"^.*?It makes \d+ kites|^The trail club has .*\. At each of", lambda a, k, b: a - k * b),
    (r"^(At|On) each of .* left in all", lambda k, a, b: k * (a - b)),
    (r"left in all", lambda a, b, k: (a - b) * k),
    (r"makes \d+ kites\. Each kite .* its tail|meets \d+ times\. Each time", lambda k, a, b: k * (a + b)),
    (r"Each kite .* its tail|^Each time", lambda a, b, k: (a + b) * k),
    (r"with no tail|short day", lambda a, b, c: a - (b - c)),
    (r"its tail takes|its tail costs|in the morning", lambda a, b, c: a - (b + c)),
    (r"Then it gets", lambda a, b, c: a - b + c),
    (r"its tail|the next day", lambda a, b, c: a - b - c),
)


def solved(words: str) -> Fraction:
    """What a reader comes to: the first cue says what is done with the numbers in their order."""
    plain = words.removeprefix(words.partition(" are the same size. ")[0] + " are the same size. ")
    solve = next(solve for cue, solve in CUES if re.search(cue, plain, re.IGNORECASE))
    return solve(*numbers(words))


def reads_to_the_answer(statement: Statement, remainder: RemainderForm | None = None) -> int:
    """Hold that every way to tell a problem is solved to its answer; returns how many ways were read."""
    right, ways = answer(statement), set[str]()
    for own in (None, TRAIL):
        for seed in range(SEEDS):
            told = story(statement, seed=seed, words=own, remainder=remainder).words
            if told in ways:
                break
            ways.add(told)
    for words in ways:
        found = solved(words)
        if isinstance(right, WithRemainder) and remainder is None:
            least = Fraction(1, 100) if "the money equally" in words else Fraction(1)
            first, second = numbers(words)
            assert right.quotient.value == found // least * least, words
            assert right.left.value == first - right.quotient.value * second, words
            assert words.endswith("left over?")
        else:
            exact = value(right) if isinstance(right, WithRemainder) else _amount(right)
            assert found == exact, (words, found, exact)
            assert "left over" not in words or isinstance(statement, WholeGroups)
    return len(ways)


def _amount(right: object) -> Fraction:
    assert isinstance(right, Quantity)
    return right.value


@pytest.mark.parametrize("typed", [*DIVIDED, *STEPS])
def test_a_reader_comes_to_the_answer(typed: str) -> None:
    """Every way to tell a division or several steps asks for what the problem asks for."""
    assert reads_to_the_answer(read_statement(typed)) >= 2


@pytest.mark.parametrize("form", [RemainderForm.FRACTION, RemainderForm.DECIMAL])
def test_where_all_is_shared_nothing_is_left(form: RemainderForm) -> None:
    """A class that writes 21 3/4 or 21.75 reads no story that asks what is left over."""
    ways = reads_to_the_answer(read_statement("87 / 4"), form)
    assert ways >= 2


@pytest.mark.parametrize(("typed", "right"), [("factors of 36", "rows"), ("multiples of 7 to 50", "strips")])
def test_a_reader_lists(typed: str, right: str) -> None:
    """All lengths of rows that leave no square over; so many packs of one size, up to the end."""
    found = answer(read_statement(typed))
    assert isinstance(found, NumberRow)
    words = story(read_statement(typed)).words
    first, *most = map(int, numbers(words))
    if most:
        listed = list(range(first, most[0] + 1, first))
        assert "one pack or more" in words
        assert "no more than" in words
    else:
        listed = [rows for rows in range(1, first + 1) if first % rows == 0]
        assert "all of them in rows of the same length" in words
    assert right in words.rpartition(". ")[2]
    assert [int(part.value) for part in found.parts] == listed


def drawn(skill: WishedSkill, many: int) -> Iterator[Statement]:
    """Problems of a skill as pages have them."""
    for seed in range(many):
        yield from (one.statement for one in draw(Wishes(skill=skill, number=12, seed=seed)).problems)


#: So many of the drawn problems of a skill are told at least: what no story tells has steps in another shape.
SKILLS = {
    WishedSkill.DIVIDE_WHOLE: Fraction(1),
    WishedSkill.DIVIDE_LONG: Fraction(1),
    WishedSkill.DIVIDE_FRACTIONS: Fraction(1),
    WishedSkill.DIVIDE_MIXED: Fraction(1),
    WishedSkill.DIVIDE_DECIMALS: Fraction(1),
    WishedSkill.DIVIDE_MEASURES: Fraction(9, 10),
    WishedSkill.STEPS: Fraction(8, 10),
}


@pytest.mark.parametrize("skill", SKILLS)
def test_problems_of_pages(skill: WishedSkill) -> None:
    """What pages ask is told, and every way to tell it is solved to its answer."""
    every, told = 0, 0
    for statement in islice(drawn(skill, sample(1, 1, 40)), sample(6, 12, None)):
        every += 1
        try:
            asked(statement)
        except NoStoryError:
            continue
        told += 1
        reads_to_the_answer(statement)
    assert told >= SKILLS[skill] * every, (told, every)
