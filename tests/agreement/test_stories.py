"""A story solved from its English alone, by rules that know nothing of its equation, gives the answer."""

import re
from collections.abc import Callable
from fractions import Fraction

import pytest

from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.story_asks import asked
from onewhole.sheets.stories import story
from onewhole.statements.reading import read_statement
from tests.kit.stories import (
    CLOCK_TIMES,
    DIVIDED,
    EACH,
    FURTHER,
    LISTED,
    ONE_OF_THREE,
    ORDERED,
    PLOTS,
    PRODUCTS,
    ROUNDED,
    STEPS,
    THREE,
    TOLD,
    TRAIL,
)

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
    # the word points the other way: what is less than the other one is added to find the other one
    (r"That is .* less than", _together),
    (r"That is .* more than", _less),
    (r"[Gg]ets .* more\. .* have now\?$", _together),
    (r"gets (?:more|[^?]*)\. Now it has .* (?:get|at first)\?$", _missing),
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
#: The cues that only a class has that tells of its own things.
OWN_CUES: tuple[tuple[str, Solve], ...] = (
    (r"is it the same on both\?$", _sign),
    (r"gets .* more\. Now|ties .* to a rope\. Now|puts a book of .* into|works, and then", _missing),
    (r"\. It needs|puts a book in\.|has been at work", _missing),
    (r"does it \w+ in all\?$", _together),
)


def _asks(words: str, cues: tuple[tuple[str, Solve], ...] = CUES) -> Solve:
    return next((solve for cue, solve in cues if re.search(cue, words)), _less)


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


#: What has a reader of its own.
OTHERS = {*THREE, *ONE_OF_THREE, *FURTHER, *DIVIDED, *LISTED, *STEPS, *PLOTS}
#: Sums, differences and comparisons of two.
TWO = [one for one in TOLD if "?/" not in one and one not in OTHERS]
#: More seeds than there are ways to tell one problem.
SEEDS = 12


@pytest.mark.parametrize("typed", TWO)
def test_a_reader_comes_to_the_answer(typed: str) -> None:
    """Every way to tell a statement asks for what the statement asks for."""
    statement = read_statement(typed)
    right = answer(statement)
    for own, cues in ((None, CUES), (TRAIL, (*OWN_CUES, *CUES))):
        for seed in range(SEEDS):
            words = story(statement, seed=seed, words=own).words
            found = _asks(words, cues)(*_amounts(words))
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


#: What says of how many or of which part a story tells; all else that a product tells is each amount.
CENTS = re.compile(r"\$(\d+)\.(\d\d)|(\d+) cents?\b")


def _both(words: str) -> tuple[Fraction, Fraction]:
    """The two factors that stand in a story: a plain number, and an amount in its smallest unit."""
    plain = re.sub(rf"(?:{UNIT} ?)+", " ", CENTS.sub(" ", words))
    numbers = [
        Fraction(whole) if whole else int(wholes or 0) + Fraction(int(top), int(bottom))
        for wholes, top, bottom, whole in NUMBER.findall(plain)
    ]
    money = [Fraction(int(d) * 100 + int(c)) if d else Fraction(int(n)) for d, c, n in CENTS.findall(words)]
    measures = [
        Fraction(sum(int(count) * WORTH[unit] for count, unit in re.findall(UNIT, run.group())))
        for run in re.finditer(rf"(?:{UNIT} ?)+", words)
    ]
    found = [*numbers, *money, *measures]
    assert len(found) == 2, words
    return found[0], found[1]


@pytest.mark.parametrize("typed", [one for one in (*PRODUCTS, *EACH) if "/8 in" not in one])
def test_a_reader_multiplies(typed: str) -> None:
    """Each of several, so many times as much, a part of and rows are all the product of the two numbers."""
    statement = read_statement(typed)
    right = answer(statement)
    assert isinstance(right, Quantity)
    for own in (None, TRAIL):
        for seed in range(4):
            words = story(statement, seed=seed, words=own).words
            first, second = _both(words)
            assert re.search(r"\beach\b|times as|\d of |\d as |rows? of", words, re.IGNORECASE), words
            money = "$" in words
            assert first * second == right.value * (100 if money else 1), words


@pytest.mark.parametrize("typed", ONE_OF_THREE)
def test_a_reader_takes_two_parts_from_all(typed: str) -> None:
    """The last amount is all of it, and what is asked for is the rest."""
    right = answer(read_statement(typed))
    assert isinstance(right, Quantity)
    for own in (None, TRAIL):
        words = story(read_statement(typed), words=own).words
        first, second, every = _amounts(words)
        assert re.search(r"\b(?:rest|with)\b", words, re.IGNORECASE), words
        assert every - first - second == right.value, words


#: How long after midnight each time of day is, by hand.
MIDNIGHT = {"9:45": 585, "11:20": 680, "10:40": 640, "4:40": 280, "9:50 a.m.": 590, "2:15 p.m.": 855}
MIDNIGHT |= {"1:05 p.m.": 785, "11:30 p.m.": 1410, "12:15 a.m.": 15, "1:00 a.m.": 60}


@pytest.mark.parametrize("typed", CLOCK_TIMES)
def test_a_reader_of_the_clock(typed: str) -> None:
    """From start to stop, or so long after or before: in minutes of a day, or of half a day without a.m."""
    right = answer(read_statement(typed))
    assert isinstance(right, Quantity)
    for own in (None, TRAIL):
        words = story(read_statement(typed), words=own).words
        times = [MIDNIGHT[found] for found in re.findall(r"\d+:\d\d(?: [ap]\.m\.)?", words)]
        (*_, round_the_clock) = (720, 1440) if ".m." in words else (720,)
        if len(times) == 2:
            found = times[1] - times[0]
        else:
            (change,) = _amounts(re.sub(r"\d+:\d\d", "", words))
            found = times[0] + int(change) * (1 if "does it stop" in words else -1)
            assert "does it stop" in words or "did it start" in words
        assert (found - int(right.value)) % round_the_clock == 0, words


@pytest.mark.parametrize("typed", [one for one in ORDERED if "$" not in one])
def test_a_reader_puts_amounts_in_order(typed: str) -> None:
    """All amounts, from the end that the question names."""
    statement = read_statement(typed)
    for own in (None, TRAIL):
        words = story(statement, words=own).words
        falling = "from greatest to least?" in words
        assert falling != ("from least to greatest?" in words)
        assert sorted(_amounts(words), reverse=falling) == [
            part.value
            for part in sorted(asked(statement).numbers, key=lambda one: one.value, reverse=falling)
        ]


#: What each thing that is rounded to is worth, in the smallest unit of the amount beside it.
PLACES = {"hundred": Fraction(100), "tenth": Fraction(1, 10), "dollar": Fraction(1), "dime": Fraction(1, 10)}


@pytest.mark.parametrize("typed", [one for one in ROUNDED if "in to" not in one])
def test_a_reader_rounds(typed: str) -> None:
    """The nearest multiple of what the question names, the larger one where both are as near."""
    right = answer(read_statement(typed))
    assert isinstance(right, Quantity)
    words = story(read_statement(typed)).words.replace(",", "").replace("$", "")
    (place,) = re.findall(r"to the nearest ([a-z ]+)[?,]?", words)
    size = Fraction(WORTH.get(place.removesuffix("s"), 0)) or PLACES.get(place, Fraction(1))
    (amount,) = _amounts(words)
    assert right.value == (amount / size + Fraction(1, 2)).__floor__() * size, words
