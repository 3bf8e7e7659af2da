"""A story solved from its English alone, by rules that know nothing of its equation, gives the answer."""

import re
from collections.abc import Callable
from fractions import Fraction

import pytest

from onewhole.languages.english.story_frames import FRAMES
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.sheets.stories import story
from onewhole.statements.reading import read_statement
from tests.kit.stories import THREE, TOLD, TRAIL

#: Each unit in the smallest of its kind.
WORTH = {"yard": 36, "foot": 12, "feet": 12, "inch": 1, "pound": 16, "ounce": 1, "hour": 60, "minute": 1}
WORTH |= {"gallon": 128, "quart": 32, "liter": 1000, "milliliter": 1, "kilogram": 1000, "gram": 1}
WORTH |= {"meter": 1000, "centimeter": 10}
UNIT = rf"(\d+) ({'|'.join(WORTH)})(?:e?s)?\b"
NUMBER = re.compile(r"(?:(\d+) )?(\d+)/(\d+)|(\d+\.\d+|\d+)")

Solve = Callable[[Fraction, Fraction], object]


def _less(first: Fraction, second: Fraction) -> Fraction:
    return first - second


def _missing(first: Fraction, second: Fraction) -> Fraction:
    return second - first


def _together(first: Fraction, second: Fraction) -> Fraction:
    return first + second


def _sign(first: Fraction, second: Fraction) -> str:
    return "<" if first < second else ">" if first > second else "="


#: What the English asks for: the first cue that stands in the words. Written from the sentences alone.
CUES: tuple[tuple[str, Solve], ...] = (
    (r"(do both .*|are they) the same\?$", _sign),
    # something is added, and the amount before is asked for
    (r"(brings .* more\. Now|adds|puts a kite|flies for .* more).*(at first|the pupil bring)\?$", _missing),
    (r"(into a pitcher|earns .*)\. Now.*at first\?$", _missing),
    (r"uses (some|part) .* for a kite and .* in all\.", _missing),
    # an amount must grow to another
    (r"^So far|up for .* must stay|has .* A kite needs|puts a kite in\.|has saved|pours some in", _missing),
    # something went away, and the amount before is asked for
    (r"(at first|How long is the meeting)\?$|brings (some|part) .*tears", _together),
    # two amounts and no third word about what is left
    (r"(bring|have|weigh|that|are they|are both|pay) in all\?$", _together),
    (r"(more than that|longer)[^?]*\. [^.]*\?$", _together),
)


def _asks(words: str) -> Solve:
    return next((solve for cue, solve in CUES if re.search(cue, words)), _less)


def _amounts(words: str) -> list[Fraction]:
    """Read both amounts with int and Fraction alone; measures come in their smallest unit."""
    measures = [run.group() for run in re.finditer(rf"(?:{UNIT} ?)+", words)]
    if measures:
        return [
            Fraction(sum(int(count) * WORTH[unit] for count, unit in re.findall(UNIT, run)))
            for run in measures
        ]
    return [
        Fraction(plain) if plain else int(wholes or 0) + Fraction(int(top), int(bottom))
        for wholes, top, bottom, plain in NUMBER.findall(words)
    ]


@pytest.mark.parametrize("typed", [one for one in TOLD if "?/" not in one and one not in THREE])
def test_a_reader_comes_to_the_answer(typed: str) -> None:
    """Every way to tell a statement asks for what the statement asks for."""
    statement = read_statement(typed)
    right = answer(statement)
    for seed in range(len(FRAMES)):
        words = story(statement, seed=seed).words
        found = _asks(words)(*_amounts(words))
        assert found == (right.value if isinstance(right, Quantity) else right), words


@pytest.mark.parametrize("typed", THREE)
def test_a_reader_adds_three_or_takes_the_last_away(typed: str) -> None:
    """Asked for what there is in all, everything is put together; for what is left or now, the last goes."""
    right = answer(read_statement(typed))
    assert isinstance(right, Quantity)
    for words in (None, TRAIL):
        told = story(read_statement(typed), words=words).words
        first, second, third = _amounts(told)
        goes = re.search(r"(left|now)\?$", told)
        assert goes or re.search(r"in all\?$", told)
        assert first + second + (-third if goes else third) == right.value, told


@pytest.mark.parametrize(
    ("typed", "count"), [("7 2/6 = 6 ?/6", 8), ("7 2/6 = 1 ?/6", 38), ("3/4 = ?/12", 9), ("2 = ?/5", 10)]
)
def test_the_same_amount_in_other_pieces(typed: str, count: int) -> None:
    """How many pieces make up what is not kept as wholes: by hand, 44/6 - 36/6 = 8/6 and so on."""
    words = story(read_statement(typed)).words
    (wholes,) = [int(found) for found in re.findall(r"as (\d+) whole", words)] or [0]
    (pieces,) = re.findall(r"How many (\w+) are there", words)
    bottom = {"fifths": 5, "sixths": 6, "twelfths": 12}[pieces]
    first = _amounts(words.replace(f"as {wholes} whole", ""))[0]
    right = answer(read_statement(typed))
    assert isinstance(right, Quantity)
    assert (first - wholes) * bottom == count == right.value
