"""Two roads over rounding: the standard library's decimal for every answer and line, dividing for every word.

The space: whole numbers to tens, hundreds and thousands, decimals with two places to tenths, ones and tens,
mixed numbers of the grade's denominators to wholes, feet and inches, hours and minutes. `make test` walks a
part of each, ONEWHOLE_WHOLE_WALK=1 (`make walk`) all of it up to 10,000 and seeded numbers to 1,000,000.
"""

import os
import random
from collections.abc import Iterator
from fractions import Fraction
from itertools import chain

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.number.ladder import decimal, measure, mixed
from onewhole.number.quantity import Quantity, usual, whole
from onewhole.number.unit import MEASURES, ONE, Unit
from onewhole.pictures.between import between
from onewhole.pictures.scene import Stroke, Wedge, Words
from onewhole.problems.answer import answer
from onewhole.statements.rounding import Rounding
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.rounding import work_rounding
from onewhole.working.working import Working
from tests.agreement.test_spoken_script import all_true
from tests.kit.exact import keeps, rounded
from tests.kit.heard import Heard

EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
STEP = 1 if EVERYTHING else 37
LARGE = 5_000 if EVERYTHING else 60
TOLD = 1 if EVERYTHING else 19
WORDS = ClassWords("strip", "strips")
#: Exactly halfway between two long numbers: the sentence is cut for its length.
LONG_TIE = Rounding(whole(513_405), Unit(Fraction(10)))
FEET, HOURS = (next(unit for unit in MEASURES if unit.mark == mark) for mark in ("ft", "h"))


def power(tens: int) -> Unit:
    """Return the unit of a place."""
    return Unit(Fraction(10) ** tens)


def wholes() -> Iterator[Rounding]:
    """Whole numbers below 10,000 to each place, and seeded ones below 1,000,000."""
    for number in range(0, 10_000, STEP):
        for tens in (1, 2, 3):
            yield Rounding(whole(number), power(tens))
    chance = random.Random(15)
    for _ in range(LARGE):
        yield Rounding(whole(chance.randrange(1_000_001)), power(chance.randint(1, 6)))


def decimals() -> Iterator[Rounding]:
    """Decimals with two places below 20."""
    for hundredths in range(0, 2_000, max(1, STEP // 4)):
        number = usual(decimal(2, 2), Fraction(hundredths, 100))
        for tens in (-1, 0, 1):
            yield Rounding(number, power(tens))


def pieces() -> Iterator[Rounding]:
    """Mixed numbers and fractions of the grade's denominators below 4, also with more pieces than a whole."""
    for parts in (2, 3, 4, 5, 6, 8, 10, 12):
        for count in range(4 * parts):
            yield Rounding(Quantity(mixed(parts), (None, count)), ONE)
            yield Rounding(Quantity(mixed(parts), divmod(count, parts)), ONE)


def measures() -> Iterator[Rounding]:
    """Feet and inches below 4 feet, hours and minutes below 3 hours, and inches alone."""
    for inches in range(48):
        yield Rounding(Quantity(measure("ft", "in"), divmod(inches, 12)), FEET)
        yield Rounding(Quantity(measure("in"), (inches,)), FEET)
    for minutes in range(180):
        yield Rounding(Quantity(measure("h", "min"), divmod(minutes, 60)), HOURS)


SPACES = {"wholes": wholes, "decimals": decimals, "pieces": pieces, "measures": measures}


@pytest.mark.parametrize("space", SPACES)
def test_every_line_and_answer_is_that_of_the_standard_library(space: str) -> None:
    """The answer is decimal's, half up, and every line keeps it; the key writes what the working reaches."""
    seen = 0
    for asked in SPACES[space]():
        working = work_rounding(asked)
        wanted = rounded(asked)
        assert isinstance(working.answer, Quantity)
        assert working.answer == answer(asked)
        assert working.answer.value == wanted, asked
        assert all(keeps(line.says, wanted) for line in working.lines), working
        seen += 1
    assert seen > 90


@pytest.mark.parametrize("space", SPACES)
def test_every_place_on_the_line_is_in_proportion(space: str) -> None:
    """Number, halfway and neighbors stand where their amounts say, measured from the ends that are drawn."""
    for asked in SPACES[space]():
        working = work_rounding(asked)
        last = {piece.name: piece.shape for piece in between(asked, working).scenes[-1].pieces}
        low, high = last["low"], last["high"]
        assert isinstance(low, Words)
        assert isinstance(high, Words)
        assert isinstance(low.caption, Quantity)
        assert isinstance(high.caption, Quantity)
        per = (high.x - low.x) / (high.caption.value - low.caption.value)
        for name in ("number", "halfway"):
            if isinstance(shape := last.get(name), Words):
                assert isinstance(shape.caption, Quantity)
                assert shape.x == low.x + per * (shape.caption.value - low.caption.value)
        ring = last["answer"]
        assert isinstance(ring, Wedge)
        assert ring.x == low.x + per * (rounded(asked) - low.caption.value)
        assert isinstance(last["tick/0"], Stroke)


def test_every_sentence_reads_back_true() -> None:
    """Told in full, whatever is said of a number to be rounded is true of it."""
    every = list(chain.from_iterable(space() for space in SPACES.values()))
    told = [LONG_TIE, *every[::TOLD]]
    assert any(asked.tie for asked in told)
    assert any(asked.there for asked in told)
    for asked in told:
        item = _item(asked, work_rounding(asked))
        lesson = Lesson("", "", "", WORDS, (item,))
        for chapter in script(lesson).chapters[1:-1]:
            assert all_true(chapter, Heard(item, WORDS, frozenset({"one"})))["sentences"]


def _item(asked: Rounding, working: Working) -> Item:
    return Item("1", asked, answer(asked), working)
