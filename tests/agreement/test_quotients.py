"""Two roads over quotients: fractions and the written algorithm digit by digit, amounts for every word.

The space: whole numbers of 4 digits by 1 (4.NBT.B.6) and by 2 (5.NBT.B.6), pieces and mixed numbers of the
grade's denominators by whole numbers, whole numbers by unit fractions (5.NF.B.7) and by other fractions,
decimals, money, feet and inches, hours and minutes (CCSSM 2010). `make test` walks a part of each,
ONEWHOLE_WHOLE_WALK=1 (`make walk`) all of 4 by 1 digits by the written algorithm, each thirteenth of them
line by line, the small spaces whole, and seeded numbers beyond.
"""

import random
from collections.abc import Iterator
from fractions import Fraction
from itertools import chain

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.number.ladder import Style, decimal, measure, mixed
from onewhole.number.quantity import Quantity, usual, whole
from onewhole.problems.answer import answer
from onewhole.statements.expression import Quotient, WithRemainder, quantities
from onewhole.statements.statement import Question
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.form import FormWanted, form_for, formed, led_to
from onewhole.working.questions import suiting, work_question
from onewhole.working.quotients.remainder_shared import RemainderForm
from onewhole.working.quotients.table import QUOTIENT_WAYS
from onewhole.working.quotients.work_quotient import divided
from onewhole.working.work import work
from tests.agreement.test_products import fractions_of
from tests.agreement.test_spoken_script import all_true
from tests.kit.exact import amount, keeps
from tests.kit.heard import Heard
from tests.kit.how_much import sample

STEP = sample(997, 211, 13)
WRITTEN_STEP = sample(997, 211, 1)
SEEDED = sample(15, 100, 2_000)
TOLD = sample(23, 11, 7)
WORDS = ClassWords("strip", "strips")
PARTS = (2, 3, 4, 5, 6, 8, 10, 12)

Pair = tuple[Quantity, Quantity]


def wholes(step: int = STEP) -> Iterator[Pair]:
    """Up to 4 digits by 1 digit, and seeded ones of 4 by 2 digits."""
    for number in range(0, 10_000, step):
        for by in range(1, 10):
            yield whole(number), whole(by)
    chance = random.Random(17)
    for _ in range(SEEDED):
        yield whole(chance.randrange(10_000)), whole(chance.randrange(10, 100))


def pieces() -> Iterator[Pair]:
    """Pieces and mixed numbers by whole numbers."""
    every = [
        (number, whole(by)) for parts in PARTS for number in fractions_of(parts, 3) for by in range(1, 13)
    ]
    yield from every[:: sample(61, 17, 1)]


def by_pieces() -> Iterator[Pair]:
    """Whole numbers by unit fractions and by other fractions, and a fraction by a fraction."""
    every = [
        (whole(number), Quantity(mixed(parts), (None, top)))
        for number in range(13)
        for parts in PARTS
        for top in range(1, parts)
    ]
    yield from every[:: sample(17, 5, 1)]
    chance = random.Random(5)
    for _ in range(SEEDED):
        first, second = (chance.choice(PARTS) for _ in "ab")
        left = Quantity(mixed(first), (None, chance.randrange(1, 3 * first)))
        yield left, Quantity(mixed(second), (None, chance.randrange(1, second)))


def decimals() -> Iterator[Pair]:
    """Decimals with one and two places by whole numbers and by decimals, and money."""
    chance = random.Random(7)
    for _ in range(SEEDED):
        after = chance.randint(1, 2)
        number = usual(decimal(1, after), Fraction(chance.randrange(1, 3_000), 10**after))
        yield number, whole(chance.randrange(1, 13))
        yield number, usual(decimal(1, 1), Fraction(chance.randrange(1, 100), 10))
        money = usual(decimal(1, 2, "$"), Fraction(chance.randrange(1, 2_000), 100))
        yield money, whole(chance.randrange(1, 10))


def measures() -> Iterator[Pair]:
    """Feet and inches, hours and minutes by whole numbers, and by measures of the kind."""
    chance = random.Random(3)
    for _ in range(SEEDED):
        length = Quantity(measure("ft", "in"), (chance.randrange(1, 9), chance.randrange(1, 12)))
        yield length, whole(chance.randrange(1, 10))
        yield length, Quantity(measure("in"), (chance.randrange(1, 12),))
        time = Quantity(measure("h", "min"), (chance.randrange(1, 5), chance.randrange(60)))
        yield time, whole(chance.randrange(1, 10))


SPACES = {
    "wholes": wholes,
    "pieces": pieces,
    "by pieces": by_pieces,
    "decimals": decimals,
    "measures": measures,
}


def long_division(number: int, by: int) -> tuple[int, int]:
    """Divide as it is written by hand: digit after digit is brought down, and groups are taken off."""
    quotient = left = 0
    for digit in str(number):
        left = left * 10 + int(digit)
        goes = 0
        while left >= by:
            left, goes = left - by, goes + 1
        quotient = quotient * 10 + goes
    return quotient, left


def _written(found: object) -> tuple[int, int]:
    """Return a whole answer and what is left over, as a pupil writes them."""
    if isinstance(found, WithRemainder):
        return found.quotient.parts, found.left.parts
    assert isinstance(found, Quantity)
    return found.parts, 0


def test_every_whole_quotient_is_that_of_the_written_way() -> None:
    """The written algorithm, digit by digit, is the second road (4.NBT.B.6, 5.NBT.B.6)."""
    for left, right in wholes(WRITTEN_STEP):
        asked = Question(Quotient(left, right))
        if 0 < left.parts < right.parts:
            found = work_question(asked, suiting(asked)[0], checked=False).answer
            assert isinstance(found, Quantity)
            assert amount(found) == Fraction(left.parts, right.parts)
            continue
        for way in suiting(asked):
            found = work_question(asked, way, checked=False).answer
            assert _written(found) == long_division(left.parts, right.parts), (left, right)


@pytest.mark.parametrize("space", SPACES)
def test_every_line_of_every_way_is_true(space: str) -> None:
    """Every way that suits reaches the quotient of the two amounts, and each of its lines keeps it."""
    seen = 0
    for left, right in SPACES[space]():
        asked = Question(Quotient(left, right))
        state = divided(asked.asked)
        assert state is not None
        wanted = amount(left) / amount(right)
        assert suiting(asked), asked
        for way in (way for way in QUOTIENT_WAYS if way.unsuited(state) is None):
            working = work(asked, way)
            assert all(keeps(line.says, wanted) for line in working.lines), working
            assert isinstance(working.answer, Quantity | WithRemainder)
            assert amount(working.answer) == wanted
            if isinstance(working.answer, WithRemainder):
                assert amount(working.answer.left) < amount(right) or left.kind is not right.kind
            seen += 1
    assert seen > 30


@pytest.mark.parametrize("space", SPACES)
def test_the_key_writes_what_the_working_reaches(space: str) -> None:
    """The answer of a problem is the one at which its first way ends, to the letter."""
    for left, right in SPACES[space]():
        asked = Question(Quotient(left, right))
        assert answer(asked) == work(asked, suiting(asked)[0]).answer


def test_a_remainder_is_written_as_the_sheet_says() -> None:
    """Key and working go on alike to the fraction or the decimal, and every line is true."""
    forms = dict.fromkeys(RemainderForm, 0)
    for left, right in wholes():
        asked = Question(Quotient(left, right))
        working = work(asked, suiting(asked)[0])
        for form in RemainderForm:
            wanted = form_for(asked, FormWanted(remainder=form))
            led = led_to(working, wanted)
            assert isinstance(working.answer, Quantity | WithRemainder)
            assert led.answer == formed(working.answer, wanted)
            assert all(keeps(line.says, amount(left) / amount(right)) for line in led.lines)
            if wanted.remainder is None:
                continue
            forms[form] += 1
            assert wanted.meets(led.answer)
            if form is RemainderForm.DECIMAL:
                assert isinstance(led.answer, Quantity)
                assert led.answer.ladder.style is Style.DECIMAL
    assert min(forms.values()) > 3


def test_every_sentence_reads_back_true() -> None:
    """Told in full, whatever is said of a quotient is true of it, by every way that is offered."""
    every = list(chain.from_iterable(space() for space in SPACES.values()))
    for left, right in every[::TOLD]:
        asked = Question(Quotient(left, right))
        for way in suiting(asked):
            working = work(asked, way)
            fine = {number.ladder.finest for number in _numbers(working.lines)}
            if min(fine) < Fraction(1, 100) or max(map(_size, _numbers(working.lines))) >= 1_000:
                continue
            item = Item("1", asked, answer(asked), working)
            for chapter in script(Lesson("", "", "", WORDS, (item,))).chapters[1:-1]:
                assert all_true(chapter, Heard(item, WORDS, frozenset({"one"})))["sentences"]


def _numbers(lines: object) -> list[Quantity]:
    return [number for line in lines for number in quantities(line.says)]  # type: ignore[attr-defined]


def _size(number: Quantity) -> int:
    return max(number.amounts)
