"""Two roads over products: fractions and long multiplication by hand for every line, amounts for every word.

The space: whole numbers to 4 x 1 and 3 x 2 digits (4.NBT.B.5 asks for 4 x 1 and 2 x 2, 5.NBT.B.5 for more),
so many times fractions and mixed numbers of the grade's denominators, two fractions and two mixed numbers,
decimals, feet and inches, hours and minutes, and money. `make test` walks a part of each,
ONEWHOLE_WHOLE_WALK=1 (`make walk`) all of it up to three digits by one and seeded numbers beyond.
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
from onewhole.pictures.area import area
from onewhole.pictures.choosing import picture
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Box
from onewhole.problems.answer import answer
from onewhole.statements.expression import Times
from onewhole.statements.statement import Question
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.products.made import product_ladder
from onewhole.working.products.table import PRODUCT_WAYS
from onewhole.working.products.work_product import factors, ways_to_multiply
from onewhole.working.questions import suiting
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.agreement.test_spoken_script import all_true
from tests.kit.exact import amount, keeps
from tests.kit.heard import Heard

EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
STEP = 1 if EVERYTHING else 61
SEEDED = 2_000 if EVERYTHING else 25
TOLD = 3 if EVERYTHING else 9
WORDS = ClassWords("strip", "strips")
PARTS = (2, 3, 4, 5, 6, 8, 10, 12)

#: The smallest unit whose name is read back from its words.
FINEST = Fraction(1, 100)

Pair = tuple[Quantity, Quantity]


def wholes() -> Iterator[Pair]:
    """Two digits and three digits by one digit, and seeded ones of 4 x 1 and 3 x 2 digits."""
    for number in range(0, 1_000, STEP):
        for times in range(10):
            yield whole(times), whole(number)
    chance = random.Random(17)
    for _ in range(SEEDED):
        yield whole(chance.randrange(10_000)), whole(chance.randrange(10))
        yield whole(chance.randrange(10, 1_000)), whole(chance.randrange(10, 100))


def fractions_of(parts: int, most: int) -> Iterator[Quantity]:
    """Return fractions and mixed numbers of a denominator up to so many wholes."""
    for count in range(1, most * parts):
        yield Quantity(mixed(parts), (None, count))
        if count > parts:
            yield Quantity(mixed(parts), divmod(count, parts))


def so_many() -> Iterator[Pair]:
    """A whole number times pieces of every kind, in both orders."""
    every = [
        pair
        for parts in PARTS
        for number in fractions_of(parts, 3)
        for times in range(13)
        for pair in ((whole(times), number), (number, whole(times)))
    ]
    yield from every[::STEP]


def both() -> Iterator[Pair]:
    """Two fractions or mixed numbers."""
    every = [
        (one, other)
        for first in PARTS
        for second in PARTS
        for one in fractions_of(first, 2)
        for other in fractions_of(second, 2)
    ]
    yield from random.Random(5).sample(every, 3_000 if EVERYTHING else 60)


def decimals() -> Iterator[Pair]:
    """Decimals with one and two places by whole numbers and by decimals, and money."""
    chance = random.Random(7)
    for _ in range(SEEDED):
        after = chance.randint(1, 2)
        number = usual(decimal(1, after), Fraction(chance.randrange(1, 3_000), 10**after))
        yield whole(chance.randrange(1, 13)), number
        yield usual(decimal(1, 1), Fraction(chance.randrange(1, 100), 10)), number
        yield (
            whole(chance.randrange(1, 10)),
            usual(decimal(1, 2, "$"), Fraction(chance.randrange(1, 2_000), 100)),
        )


def measures() -> Iterator[Pair]:
    """Feet and inches, hours and minutes, so many times."""
    chance = random.Random(3)
    for _ in range(SEEDED):
        yield (
            whole(chance.randrange(1, 10)),
            Quantity(measure("ft", "in"), (chance.randrange(9), chance.randrange(1, 12))),
        )
        yield (
            whole(chance.randrange(1, 10)),
            Quantity(measure("h", "min"), (chance.randrange(1, 5), chance.randrange(60))),
        )


SPACES = {"wholes": wholes, "so many": so_many, "both": both, "decimals": decimals, "measures": measures}


def ordinary(left: int, right: int) -> int:
    """Multiply by adding rows, digit by digit, as it is written by hand: no multiplying of the numbers."""
    total = 0
    for place, digit in enumerate(reversed(str(right))):
        row = carry = 0
        for at, other in enumerate(reversed(str(left))):
            carry, written = divmod(int(other) * int(digit) + carry, 10)
            row += written * 10**at
        total += (row + carry * 10 ** len(str(left))) * 10**place
    return total


def test_every_whole_product_is_that_of_the_written_way() -> None:
    """The written algorithm, digit by digit with its carries, is the second road (4.NBT.B.5, 5.NBT.B.5)."""
    for left, right in wholes():
        asked = Question(Times(left, right))
        found = work(asked, suiting(asked)[0])
        assert isinstance(found.answer, Quantity)
        assert found.answer.value == ordinary(left.parts, right.parts)


@pytest.mark.parametrize("space", SPACES)
def test_every_line_of_every_way_is_true(space: str) -> None:
    """Every way that suits reaches the product of the two amounts, and each of its lines keeps it."""
    seen = 0
    for left, right in SPACES[space]():
        asked = Question(Times(left, right))
        product = factors(asked.asked)
        assert product is not None
        wanted = amount(left) * amount(right)
        ways = [way for way in PRODUCT_WAYS if way.unsuited(product) is None]
        assert ways_to_multiply(product), asked
        for way in ways:
            working = work(asked, way)
            assert isinstance(working.answer, Quantity)
            assert amount(working.answer) == wanted
            assert all(keeps(line.says, wanted) for line in working.lines), working
            seen += 1
    assert seen > 50


@pytest.mark.parametrize("space", SPACES)
def test_the_key_writes_what_the_working_reaches(space: str) -> None:
    """The answer of a problem is the amount at which its first way ends."""
    for left, right in SPACES[space]():
        asked = Question(Times(left, right))
        reached = work(asked, suiting(asked)[0]).answer
        written = answer(asked)
        assert isinstance(reached, Quantity)
        assert isinstance(written, Quantity)
        assert written.value == reached.value


@pytest.mark.parametrize("space", SPACES)
def test_sides_and_area_are_in_proportion(space: str) -> None:
    """The rectangle is as long and as wide as the numbers say; a longer first number may lie across."""
    for left, right in SPACES[space]():
        for way in suiting(Question(Times(left, right))):
            try:
                scene = area(work(Question(Times(left, right)), way)).scenes[-1]
            except NotDrawnError:
                continue
            (box,) = (piece.shape for piece in scene.pieces if piece.name == "product")
            assert isinstance(box, Box)
            turned = box.width > box.height and left.value > right.value
            down, across = (right.value, left.value) if turned else (left.value, right.value)
            assert box.width * down == box.height * across


def test_every_picture_that_is_chosen_can_be_drawn() -> None:
    """A product has strips, jumps or a rectangle, whichever suits; each scene stands for a line."""
    kinds: set[PictureKind] = set()
    for left, right in chain.from_iterable(space() for space in SPACES.values()):
        working = work(Question(Times(left, right)), suiting(Question(Times(left, right)))[0])
        drawn = picture(working)
        if drawn is not None:
            assert len(drawn.scenes) == len(working.lines)
            kinds.add(drawn.kind)
    assert kinds >= {PictureKind.AREA, PictureKind.STRIPS}


def test_every_sentence_reads_back_true() -> None:
    """Told in full, whatever is said of a product is true of it, by every way that is offered."""
    every = list(chain.from_iterable(space() for space in SPACES.values()))
    sayable = [pair for pair in every if product_ladder(*pair).finest >= FINEST]
    for left, right in sayable[::TOLD]:
        asked = Question(Times(left, right))
        for way in suiting(asked):
            item = _item(asked, work(asked, way))
            for chapter in script(Lesson("", "", "", WORDS, (item,))).chapters[1:-1]:
                assert all_true(chapter, Heard(item, WORDS, frozenset({"one"})))["sentences"]


def _item(asked: Question, working: Working) -> Item:
    return Item("1", asked, answer(asked), working)
