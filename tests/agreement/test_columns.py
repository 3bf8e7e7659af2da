"""Two roads through the columns: integers for every answer, place value without columns for every digit.

The small space is walked whole under ONEWHOLE_WHOLE_WALK=1, and in a seeded sample else: every sum and
difference of two numbers up to 130 (two and three digits, with zeros to cross). Beyond it stand seeded
numbers up to 1,000,000 (4.NBT.B.4 and its footnote, CCSSM 2010), decimals to hundredths (5.NBT.B.7), and
three addends.
"""

import os
import random
from collections import Counter
from collections.abc import Callable, Iterator
from decimal import Decimal
from fractions import Fraction

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.numbers import numbers_of
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.reasons.columns import ColumnAdded, ColumnOpened, ColumnTaken
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.working import Working
from tests.agreement.test_spoken_script import all_true, changed
from tests.agreement.test_walk import agree
from tests.kit.claims import true
from tests.kit.column_claims import COLUMN_CLAIMS, PLACES, Block, blocks
from tests.kit.heard import Heard
from tests.kit.worked import question, tried

WORDS = ClassWords("strip", "strips")
EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
UP_TO = 130
SAMPLE, LARGE, SAID = 250, 150, 60


def small() -> Iterator[str]:
    """Every sum and difference with two digits at least in one of the numbers, or a seeded sample."""
    chance = random.Random(7)
    share = 1.0 if EVERYTHING else SAMPLE / (3 * UP_TO**2 / 2)
    for first in range(10, UP_TO):
        for second in range(UP_TO):
            if chance.random() < share:
                yield f"{first} + {second}"
            if second <= first and chance.random() < share:
                yield f"{first} - {second}"


def large() -> Iterator[str]:
    """Seeded numbers up to 1,000,000, one third of their digits zeros, and three or four addends."""
    chance = random.Random(11)

    def number(most: int = 7) -> int:
        digits = [chance.choice((0, 0, 0, *range(1, 10))) for _ in range(chance.randint(2, most))]
        return min(1_000_000, int("".join(map(str, digits))) or 10)

    for _ in range(20 * LARGE if EVERYTHING else LARGE):
        first, second = number(), number()
        yield f"{max(first, second, 10)} - {min(first, second)}"
        yield f"{max(10, number(6))} + {number(6)}"
        yield " + ".join(("10", *(str(number(4)) for _ in range(chance.choice((2, 3))))))
    yield from ("1000000 - 345678", "1000000 - 1", "999999 + 1", "100000 - 99999", "4006 - 1278")


def decimals() -> Iterator[str]:
    """Seeded decimals to hundredths, with different places after the point, and whole numbers beside them."""
    chance = random.Random(13)

    def number() -> str:
        after = chance.randint(0, 2)
        parts = chance.randint(1, 400 * 10**after)
        return f"{parts // 10**after}.{parts % 10**after:0{after}}" if after else str(parts)

    for _ in range(20 * LARGE if EVERYTHING else LARGE):
        first, second = number(), number()
        low, high = sorted((first, second), key=float)
        if "." in first + second:
            yield f"{high} - {low}"
            yield f"{first} + {second}"
    yield from ("12.05 - 3.8", "0.5 - 0.25", "0.05 - 0.02", "10 - 0.01", "9.9 + 0.1")


#: More than one sign: added and taken away in turn.
CHAINS = (
    "120 + 45 - 78",
    "500 - 128 - 96",
    "1000 - 250 + 75 + 999",
    "12 + 19 - 7 + 8 + 9",
    "3.5 + 0.75 - 1.8",
)


Told = tuple[Fraction, tuple[int, ...], int]


def by_place_value(block: Block, smallest: Fraction) -> Iterator[Told]:
    """What each column has, from the right: its place, its counts and what is carried, by dividing alone."""
    size = smallest
    while size <= max(Fraction(1), *block.numbers):
        if block.taken and (size == smallest or block.numbers[0] // size > block.gives(size)):
            yield size, (block.have(size), block.digits(size)[1]), 0
        elif not block.taken and not all(block.blank(size)):
            pairs = zip(block.digits(size), block.blank(size), strict=True)
            yield size, tuple(digit for digit, blank in pairs if not blank), block.carried(size)
        size *= 10


def told(working: Working) -> list[Told]:
    """What each column has, as the reasons of the working say."""
    found: list[Told] = []
    for reason in (line.because for line in working.lines):
        match reason:
            case ColumnTaken(unit, have, gone):
                found.append((unit.size, (have, gone), 0))
            case ColumnAdded(unit, _, digits, carried):
                found.append((unit.size, digits, carried))
            case _:
                pass
    return found


def opened(working: Working) -> list[Fraction]:
    """The places of which one is opened, in the order of the working."""
    reasons = (line.because for line in working.lines)
    return [reason.large.size for reason in reasons if isinstance(reason, ColumnOpened)]


SPACES: dict[str, Callable[[], Iterator[str]]] = {
    "small": small,
    "large": large,
    "decimals": decimals,
    "chains": lambda: iter(CHAINS),
}


@pytest.mark.parametrize("space", SPACES)
def test_every_column_agrees_with_place_value_and_every_answer_with_integers(space: str) -> None:
    """Answer, counts, carries and openings are those of dividing; every line is worth the same."""
    done: Counter[str] = Counter()
    for typed in SPACES[space]():
        working = worked(typed)
        found = list(blocks(heard(working)))
        agree(working, found[-1].result())
        assert isinstance(working.answer, Quantity)
        assert Decimal(text(working.answer)) == in_decimals(typed), typed
        smallest = min(unit.size for one in numbers_of(working.statement) for unit in one.ladder.units)
        assert told(working) == [one for block in found for one in by_place_value(block, smallest)], typed
        gave = [size for block in found if block.taken for size in PLACES.values() if block.gives(size)]
        assert sorted(opened(working)) == sorted(gave), typed
        done["problems"] += 1
        done["opened"] += len(gave)
        done["carried"] += sum(carried for _, _, carried in told(working))
    print(space, dict(done))
    assert min(done["problems"], done["opened"], done["carried"]) > 0


def in_decimals(typed: str) -> Decimal:
    """Let Python's decimals add and take away."""
    first, *others = typed.split()
    found = Decimal(first)
    for sign, number in zip(others[::2], others[1::2], strict=True):
        found += Decimal(number) if sign == "+" else -Decimal(number)
    return found


def heard(working: Working) -> Heard:
    """What a listener knows of it."""
    item = Item("1", working.statement, answer(working.statement), working)
    return Heard(item, WORDS, frozenset({"one"}))


def worked(typed: str) -> Working:
    """Work a problem in columns."""
    found = tried(question(typed), COLUMNS)
    assert isinstance(found, Working), typed
    return found


@pytest.mark.parametrize("space", SPACES)
def test_every_sentence_about_a_column_is_true(space: str) -> None:
    """Told in full, every sentence with a number is read back by its words alone and found true."""
    found: Counter[str] = Counter()
    typed = list(SPACES[space]())
    for one in typed if EVERYTHING else typed[:: max(1, len(typed) // SAID)]:
        listener = heard(worked(one))
        for chapter in script(Lesson("", "", "", WORDS, (listener.item,))).chapters[1:-1]:
            found += all_true(chapter, listener)
    print(space, dict(found))
    assert set(found) & set(COLUMN_CLAIMS)


def test_the_claims_can_fail() -> None:
    """No sentence about a column stays true when one of its numbers or places is another."""
    kept: list[str] = []
    for typed in ("304 - 128", "1234 + 2876 + 777", "10000 - 347", "12.05 - 3.8"):
        listener = heard(worked(typed))
        (chapter,) = script(Lesson("", "", "", WORDS, (listener.item,))).chapters[1:-1]
        for said in {spoken(said) for cue in chapter.cues for said in cue.says}:
            others = [*changed(said), *other_places(said)]
            kept += [other for other in others if true(other, listener)]
    assert kept == []


def other_places(said: str) -> Iterator[str]:
    """A sentence about a column with the name of the column changed for one that no number here has."""
    if said.startswith("In the "):
        column = said.removeprefix("In the ").partition(",")[0]
        yield said.replace(column, "hundred thousands", 1)
