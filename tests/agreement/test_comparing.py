"""Two roads over small spaces of comparisons: fractions and decimals of the standard library, from the text.

The spaces: every pair of fractions with the denominators of the grade up to 12, from nothing to more than one
whole; every pair of decimals below 2 with one or two places; mixed numbers and whole numbers in
seeded samples. `make test` takes seeded samples of them all, ONEWHOLE_WHOLE_WALK=1 (`make walk`) the whole
of the fractions and decimals. Every line keeps the order, every sentence reads back true, and no common
denominator is looked for where something simpler serves.
"""

import os
import random
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from decimal import Decimal
from fractions import Fraction
from itertools import product
from math import lcm

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.notations.sentences.speech import spoken as spoken_aloud
from onewhole.problems.answer import answer
from onewhole.statements.expression import quantities
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Comparison
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.comparing import work_comparison
from onewhole.working.reasons.comparing import SameSizeToCompare
from onewhole.working.working import Working
from tests.kit.claims import true
from tests.kit.exact import order
from tests.kit.heard import Heard, number_words, sides
from tests.kit.how_much import sample

DENOMINATORS = (2, 3, 4, 5, 6, 8, 10, 12)
EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
SAMPLE = sample(50, 150)
WORDS = ClassWords("strip", "strips")

#: Fractions whose pieces can be counted in hundredths.
IN_HUNDREDTHS = ("1/2", "3/4", "2/5", "7/10", "6/5", "0/4")

Pair = tuple[str, str]


def fractions_written() -> list[str]:
    """Every fraction from 0 to a quarter more than one whole."""
    return [f"{top}/{bottom}" for bottom in DENOMINATORS for top in range(bottom + bottom // 4 + 2)]


def decimals_written() -> list[str]:
    """Every decimal below 1 with one or two places, and some with a whole."""
    tenths = [f"{whole}.{tenth}" for whole in (0, 1) for tenth in range(10)]
    return tenths + [f"0.{hundredths:02}" for hundredths in range(100)]


def pairs(written: list[str], seed: int) -> Iterable[Pair]:
    """Every pair, or a seeded sample of them."""
    every = [(first, second) for first in written for second in written]
    return every if EVERYTHING else random.Random(seed).sample(every, SAMPLE)


def mixed_pairs() -> Iterator[Pair]:
    """Seeded pairs of mixed numbers, some with pieces for more than one whole."""
    chance = random.Random(3)
    for _ in range(SAMPLE):
        wholes = chance.randint(1, 3)
        both = (
            f"{wholes + chance.randint(0, 4) // 4} {chance.randint(0, bottom + 1)}/{bottom}"
            for bottom in chance.choices(DENOMINATORS, k=2)
        )
        yield next(both), next(both)


def whole_pairs() -> Iterator[Pair]:
    """Seeded pairs of whole numbers to 1,000,000, often with the same first digits."""
    chance = random.Random(4)
    for _ in range(SAMPLE):
        digits = chance.randint(1, 6)
        first = chance.randint(0, 10**digits)
        yield (
            str(first),
            str(chance.choice((first, max(0, first + chance.randint(-50, 50)), chance.randint(0, 10**6)))),
        )


def amount_of(written: str) -> Fraction:
    """Read a number by the standard library alone."""
    wholes, _, piece = written.rpartition(" ")
    if "/" in piece:
        return Fraction(wholes or 0) + Fraction(piece)
    return Fraction(Decimal(written))


def sign_of(first: str, second: str) -> str:
    """Compare by the standard library alone."""
    left, right = amount_of(first), amount_of(second)
    return "=" if left == right else "<" if left < right else ">"


def worked(first: str, second: str) -> Working:
    """Work a comparison."""
    statement = read_statement(f"{first} ? {second}")
    assert isinstance(statement, Comparison)
    return work_comparison(statement)


SPACES: dict[str, Callable[[], Iterable[Pair]]] = {
    "fractions": lambda: pairs(fractions_written(), 1),
    "decimals": lambda: pairs(decimals_written(), 2),
    "mixed numbers": mixed_pairs,
    "whole numbers": whole_pairs,
    "a decimal and a fraction": lambda: product(decimals_written()[::7], IN_HUNDREDTHS),
}


@pytest.mark.parametrize("space", SPACES)
def test_every_line_keeps_the_order(space: str) -> None:
    """The answer is that of the standard library, and every line on the way keeps it."""
    done: Counter[str] = Counter()
    for first, second in SPACES[space]():
        working = worked(first, second)
        wanted = sign_of(first, second)
        assert working.answer == wanted, (first, second)
        for line in working.lines:
            assert isinstance(line.says, Comparison)
            assert order(line.says) == wanted
        done[type(working.lines[-1].because).__name__] += 1
    print(space, dict(done))
    assert done


@pytest.mark.parametrize("space", SPACES)
def test_every_sentence_is_true(space: str) -> None:
    """Whatever is said of a comparison is read back from its words and holds."""
    every = list(SPACES[space]())
    for first, second in every if EVERYTHING else every[::3]:
        working = worked(first, second)
        item = Item("1", working.statement, answer(working.statement), working)
        heard = Heard(item, WORDS, frozenset({"one"}))
        (chapter,) = script(Lesson("", "", "", WORDS, (item,))).chapters[1:-1]
        for cue in chapter.cues:
            for said in map(spoken_aloud, cue.says):
                assert not number_words(said) or true(said, heard), (first, second, said)


def test_no_common_denominator_where_something_simpler_serves() -> None:
    """Of two fractions of less than one whole only those need one that nothing simpler decides.

    Simpler is: one denominator or numerator, one whole or one half between them, as many pieces missing, more
    and larger pieces, or a numerator that goes into the other. Written anew from these words.
    """
    for first, second in pairs(fractions_written(), 5):
        (top, bottom), (other, under) = (tuple(map(int, one.split("/"))) for one in (first, second))
        one, two = Fraction(first), Fraction(second)
        half = Fraction(1, 2)
        needed = (
            min(one, two) > 0
            and max(one, two) < 1
            and first != second
            and bottom != under
            and (top != other)
            and ((one > half) - (one < half) == (two > half) - (two < half))
            and (one != half or 2 in {bottom, under})
            and (one == two or bottom - top != under - other)
            and (one == two or (top - other) * (under - bottom) < 0)
            and (
                lcm(bottom, under) in {bottom, under} or one == two or max(top, other) % min(top, other) != 0
            )
        )
        found = [line for line in worked(first, second).lines if isinstance(line.because, SameSizeToCompare)]
        if max(one, two) < 1:
            assert bool(found) is needed, (first, second)
        for line in found:
            parts = {n.ladder.denominator for side in sides(line.says) for n in quantities(side)}
            if max(one, two) < 1:
                assert parts == {lcm(bottom, under)}
