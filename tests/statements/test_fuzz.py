"""Anything at all goes through the reader: it is read, or refused with a place inside the text or at its end.

50,000 texts by default; ONEWHOLE_FUZZ=1000000 tries a million. The same seeds give the same texts.
"""

import os
import random
from collections import Counter
from collections.abc import Callable

import pytest

from onewhole.statements.reading import read_answer, read_chains, read_expression, read_statement
from onewhole.statements.tokens import ReadingError
from tests.kit.how_much import sample

TEXTS = int(os.environ.get("ONEWHOLE_FUZZ", sample("20000", "50000")))
SEEDS = 20

GOOD = (
    "7 2/6 - 3 5/6",
    "7\N{VULGAR FRACTION TWO THIRDS} + \N{VULGAR FRACTION ONE HALF}",
    "3 and 5/6",
    "39/8 = 4 ?/8",
    "4 - 1 4/3",
    "5 ft 2 in - 2 ft 7 in",
    "5' 2\" - 14 in",
    "4 tens 12 ones - 2 tens 7 ones",
    "304 - 128 + 1,000",
    "5.2 - 2.75",
    "5/6 ? 7/8",
    "(7 - 3 5/6) + 2/6 = 3 3/6",
    "(3 x 4)/(8 x 4) = 12/?",
    "1 h 5 min - ? = 50 min",
    "7 2/6 = 6 8/6\n = 5 14/6",
)
NEAR = "0123456789 ///++--=x?_().,'\"<>\t\n"
WORDS = ("and", "ft", "in", "ones", "tens", "tenths", "lb", "oz", "h", "min", "x", "yd", "or")
FAR = (
    "\N{MINUS SIGN}\N{FRACTION SLASH}½⅔⅟²٣א\N{RIGHT-TO-LEFT MARK}"
    "\N{ZERO WIDTH JOINER}\N{FIRE}é∞\x00\ud800\u2028"
)


def near(chance: random.Random) -> str:
    """A row of pieces that could stand in a problem."""
    pieces = [*NEAR, *(f" {word} " for word in WORDS)]
    return "".join(chance.choices(pieces, k=chance.randint(0, 24)))


def bent(chance: random.Random) -> str:
    """A good problem with a few characters left out, doubled, changed or put in."""
    text = list(chance.choice(GOOD))
    for _ in range(chance.randint(1, 3)):
        at = chance.randrange(len(text) + 1)
        match chance.randrange(4):
            case 0:
                del text[at : at + 1]
            case 1:
                text[at:at] = text[max(0, at - 3) : at]
            case 2:
                text[at : at + 1] = chance.choice(NEAR)
            case _:
                text.insert(at, chance.choice(chance.choice((NEAR, NEAR, FAR))))
    return "".join(text)


def spliced(chance: random.Random) -> str:
    """Two good problems cut somewhere and put together."""
    one, other = chance.choice(GOOD), chance.choice(GOOD)
    return one[: chance.randint(0, len(one))] + other[chance.randint(0, len(other)) :]


def far(chance: random.Random) -> str:
    """Characters from all of Unicode, lone surrogates included."""
    return "".join(chr(chance.randrange(0x110000)) for _ in range(chance.randint(1, 12)))


def long(chance: random.Random) -> str:
    """One piece a great many times: digits, brackets, signs."""
    piece = chance.choice(["1", "(", ")", "-", "1 + ", "1/", "? ", "\N{FIRE}", "(1 - "])
    return piece * chance.randint(50, 900)


MAKERS: tuple[Callable[[random.Random], str], ...] = (near, near, bent, bent, bent, spliced, spliced, far)
READERS: tuple[Callable[[str], object], ...] = (read_statement, read_answer, read_expression, read_chains)


def refusal(text: str, read: Callable[[str], object]) -> ReadingError | None:
    """Read it, and return the refusal if there is one; any other error comes through."""
    try:
        read(text)
    except ReadingError as refused:
        return refused
    return None


def inside(text: str, line: int | None, column: int | None) -> bool:
    """Say whether a place is in the text or right at the end of one of its lines."""
    if line is None or column is None:
        return False
    rows = text.splitlines() or [""]
    whole_text = line == 1 and 1 <= column <= len(text) + 1
    return whole_text or (1 <= line <= len(rows) and 1 <= column <= len(rows[line - 1]) + 1)


@pytest.mark.slow
@pytest.mark.parametrize("seed", range(SEEDS))
def test_nothing_that_is_typed_crashes_the_reader(seed: int) -> None:
    """Only refusals, each with a line and a column inside the text, and what to do next."""
    chance = random.Random(seed)
    found: Counter[str] = Counter()
    for at in range(TEXTS // SEEDS):
        text = (long if at % 500 == 0 else chance.choice(MAKERS))(chance)
        refused = refusal(text, READERS[at % len(READERS)])
        found["refused" if refused else "read"] += 1
        if refused:
            assert inside(text, refused.line, refused.column), (text, refused)
            assert refused.what
            assert refused.remedy
    print(f"seed {seed}:", dict(found))
    assert min(found["read"], found["refused"]) > TEXTS // SEEDS // 50
