"""Two roads over numbers put in order: sorting by the standard library, and every word read back.

The space: three to five fractions, mixed numbers, decimals, whole numbers or measures, drawn by a seed, from
either end, and every three of the fractions with denominators 2, 3 and 4. ONEWHOLE_WHOLE_WALK=1 (`make walk`)
draws 50 times as many.
"""

import random
from collections import Counter
from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction
from itertools import combinations

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.pictures.choosing import picture
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import NumberRow, Ordering
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.ordering import work_ordering
from tests.agreement.test_spoken_script import all_true
from tests.kit.exact import amount, keeps
from tests.kit.heard import Heard
from tests.kit.how_much import sample

DENOMINATORS = (2, 3, 4, 5, 6, 8, 10, 12)
MANY = sample(20, 60, 3_000)
WORDS = ClassWords("strip", "strips")


def fraction(chance: random.Random) -> str:
    """Draw a fraction, now and then of one whole or more."""
    bottom = chance.choice(DENOMINATORS)
    return f"{chance.randint(0, bottom + bottom // 4)}/{bottom}"


def mixed(chance: random.Random) -> str:
    """Draw a mixed number up to 4, or a whole number."""
    bottom = chance.choice(DENOMINATORS)
    fraction = f" {chance.randint(1, bottom - 1)}/{bottom}" if chance.random() < 0.8 else ""
    return f"{chance.randint(1, 3)}{fraction}"


def pointed(chance: random.Random) -> str:
    """Draw a decimal with one to three places."""
    places = chance.randint(1, 3)
    return f"{chance.randint(0, 1)}.{chance.randrange(10**places):0{places}}"


def counted(chance: random.Random) -> str:
    """Draw a whole number with up to six digits."""
    return str(chance.randrange(10 ** chance.randint(1, 6)))


def inches(chance: random.Random) -> str:
    """Draw feet and inches, or inches alone."""
    found = chance.randrange(1, 60)
    return f"{found} in" if chance.random() < 0.3 else f"{found // 12 + 1} ft {found % 12} in"


DRAWN = {"fractions": fraction, "mixed": mixed, "decimals": pointed, "wholes": counted, "feet": inches}


def value_of(typed: str) -> Fraction:
    """Read a number by the standard library alone."""
    if "in" in typed:
        words = typed.split()
        sizes = {"ft": 12, "in": 1}
        return Fraction(sum(int(n) * sizes[mark] for n, mark in zip(words[::2], words[1::2], strict=True)))
    wholes, _, piece = typed.rpartition(" ")
    return Fraction(wholes or 0) + (Fraction(piece) if "/" in piece else Fraction(Decimal(piece)))


def orderings(space: str) -> Iterator[tuple[list[str], bool]]:
    """Numbers to be put in order, as typed, and whether from greatest."""
    chance = random.Random(space)
    for _ in range(MANY):
        yield [DRAWN[space](chance) for _ in range(chance.randint(3, 5))], chance.random() < 0.3
    if space == "fractions":
        small = [f"{top}/{bottom}" for bottom in (2, 3, 4) for top in range(1, bottom)]
        yield from (([*some], False) for some in combinations(small, 3))


@pytest.mark.parametrize("space", DRAWN)
def test_the_order_is_that_of_the_standard_library(space: str) -> None:
    """Every line keeps it, every sentence is true, and the picture shows every number."""
    done: Counter[str] = Counter()
    for typed, falling in orderings(space):
        asked = read_statement(f"order {', '.join(typed)}{' from greatest' if falling else ''}")
        assert isinstance(asked, Ordering)
        wanted = tuple(sorted(map(value_of, typed), reverse=falling))
        working = work_ordering(asked)
        assert isinstance(working.answer, NumberRow)
        assert tuple(map(amount, working.answer.parts)) == wanted
        assert all(keeps(line.says, wanted) for line in working.lines), asked
        drawn = picture(working)
        assert drawn is None or len(drawn.scenes) == len(working.lines)
        done["drawn"] += drawn is not None
        if done["seen"] % 3 == 0:
            item = Item("1", asked, answer(asked), working)
            (chapter,) = script(Lesson("", "", "", WORDS, (item,))).chapters[1:-1]
            done["sentences"] += all_true(chapter, Heard(item, WORDS, frozenset({"one"})))["sentences"]
        done["seen"] += 1
    assert done["sentences"] >= done["seen"] >= done["drawn"] > done["seen"] // 2
