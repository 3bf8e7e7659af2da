"""Numbers with a unit by two other roads: the same numbers without it, and money by Python's decimals.

The unit changes nothing in the working: line by line it is that of the plain numbers, with the unit written.
"""

import random
from decimal import Decimal

import pytest

from onewhole.misconceptions.catalogue import shows
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.pictures.choosing import picture
from onewhole.pictures.picture import PictureKind
from onewhole.problems.needs import needs
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.questions import suiting, work_question

CENT = Decimal("0.01")
PAIRS = (
    ("5 5/8 {} - 2 7/8 {}", " in"),
    ("5{} - 2 3/8{}", " in"),
    ("2 1/2{} + 1 3/4{}", " in"),
    ("7/8{} - 3/8{}", " in"),
    ("4 5/8{} - 1 7/8{}", " c"),
    ("5.2{} - 2.75{}", " km"),
    ("12.5{} + 3.75{}", " L"),
    ("3 1/4{} + 2 3/4{} + 1 1/4{}", " lb"),
)


def _without(line: str, unit: str) -> str:
    return line.replace(unit, "")


@pytest.mark.parametrize(("shape", "unit"), PAIRS)
def test_the_working_is_that_of_the_plain_numbers(shape: str, unit: str) -> None:
    """Every strategy that suits, every line; what it needs, its pictures and what the patterns write too."""
    holes = shape.count("{}")
    labelled = read_statement(shape.format(*[unit] * holes))
    plain = read_statement(shape.format(*[""] * holes))
    assert isinstance(labelled, Question)
    assert isinstance(plain, Question)
    assert needs(labelled) == needs(plain)
    assert [slip.pattern for slip in shows(labelled)] == [slip.pattern for slip in shows(plain)]
    ways = suiting(plain)
    assert suiting(labelled) == ways
    for way in ways:
        one, other = work_question(labelled, way), work_question(plain, way)
        assert isinstance(one.answer, Quantity)
        assert text(one.answer).endswith(unit)
        lines = [_without(text(line.says), unit) for line in one.lines]
        assert lines == [text(line.says) for line in other.lines]
        drawn, bare = picture(one), picture(other)
        on_ruler = drawn is not None and drawn.kind is PictureKind.RULER
        assert not on_ruler or unit == " in"  # inches stand on a ruler too, which plain numbers do not
        assert on_ruler or (drawn and drawn.kind) == (bare and bare.kind)
        assert (drawn and len(drawn.scenes)) == (bare and len(bare.scenes))


def test_money_is_what_decimals_say() -> None:
    """Sums and differences of money up to a thousand dollars, by every way that suits."""
    chance = random.Random(4)
    done = 0
    for _ in range(60):
        first, second = sorted((chance.randint(1, 99_999) * CENT for _ in range(2)), reverse=True)
        taken = chance.random() < 0.6
        asked = read_statement(f"${first} {'-' if taken else '+'} ${second}")
        assert isinstance(asked, Question)
        wanted = first - second if taken else first + second
        for way in suiting(asked):
            assert text(work_question(asked, way).answer) == f"${wanted:.2f}"
            done += 1
    assert done > 100


def test_change_from_whole_dollars() -> None:
    """From $1, $5, $10, $20, $50 and $100, across zeros."""
    for dollars in (1, 5, 10, 20, 50, 100):
        for cents in (1, 5, 35, 64, 99):
            asked = read_statement(f"${dollars} - $0.{cents:02}")
            assert isinstance(asked, Question)
            wanted = dollars - cents * CENT
            assert {text(work_question(asked, way).answer) for way in suiting(asked)} == {f"${wanted:.2f}"}
