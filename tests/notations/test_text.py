import pytest

from onewhole.notations.text import printed, text
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import decimal, mixed, places
from onewhole.number.quantity import Quantity
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.reading import read_answer, read_statement
from onewhole.statements.statement import Relation

WRITTEN = [
    "7 2/6 - 3 5/6",
    "6 + 6/6 + 2/6 - 3 5/6",
    "(6 - 3) + (8/6 - 5/6)",
    "(44 - 23)/6",
    "(3 x 3)/(8 x 3)",
    "3 x 2/5",
    "5 ft 2 in",
    "5.2",
    "05.20",
    "4 ones 12 tenths",
    "12 tenths",
    "4 tens 12 ones",
    "1 hundred 12 tens",
    "7 2/6 = 6 ?/6",
    "? 2/6 + 1 = 5 2/6",
    "9/? = 3/4",
    "4 9/8",
    "0 39/8",
    "5/6 ? 7/8",
    "3 1/2 > 3 1/3",
    "2 h 5 min + 50 min",
]


@pytest.mark.parametrize("written", WRITTEN)
def test_plain_text_is_kept(written: str) -> None:
    """What is written the usual way comes back letter for letter."""
    assert text(read_statement(written)) == written


@pytest.mark.parametrize(
    ("quantity", "written"),
    [
        (Quantity(mixed(6), (None, 8)), "8/6"),
        (Quantity(mixed(6), (0, 8)), "0 8/6"),
        (Quantity(places(3), (2, 10, 4)), "2 hundreds 10 tens 4 ones"),
        (Quantity(places(5), (4, 12, 0, 0, 0)), "4 ten thousands 12 thousands"),
        (Quantity(decimal(0, 1), (5,)), "0.5"),
    ],
)
def test_quantities_as_a_strategy_makes_them(quantity: Quantity, written: str) -> None:
    """Wholes may be unwritten or zero, overfull places are named."""
    assert text(quantity) == written


def test_parts_alone() -> None:
    """A gap, a relation and a number that is none can be written by themselves."""
    assert text(Gap(6, HOLE, 6)) == "6 ?/6"
    assert text(Gap(HOLE)) == "?"
    assert text(Relation.LESS) == "<"
    for impossible in (Impossible(3, 3), Impossible(None, 3)):
        assert read_answer(text(impossible)) == impossible


@pytest.mark.parametrize(
    "written", ["-1/2", "-3", "-1 1/2", "-1/-2", "1/-2", "-0.5", "-5 ft 2 in", "-3/0", "3/-0"]
)
def test_an_answer_with_minus_signs_stands_as_it_was_written(written: str) -> None:
    """Read and written, it is the same again; printed, its digits are grouped."""
    assert text(read_answer(written)) == written
    assert printed(read_answer("-1200")) == "-1,200"
