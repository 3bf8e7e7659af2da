import pytest

from onewhole.languages.english.making import amount, single, some
from onewhole.languages.english.words import TAG, words_for
from onewhole.notations.sentences.text import sentence_text
from onewhole.number.ladder import decimal, measure, mixed, places
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import ONE
from onewhole.sentences.node import Node
from onewhole.sentences.sentence import End, Sentence

STRIPS = words_for("strip of kite paper")


def _text(*nodes: Node) -> str:
    return sentence_text(Sentence(TAG, nodes, End.TYPED))


def test_counts_with_their_unit() -> None:
    """One or many, and the class's own word for a whole."""
    assert _text(some(1, mixed(6).units[1])) == "1 sixth"
    assert _text(some(3, ONE)) == "3 ones"
    assert _text(some(1, ONE, STRIPS)) == "1 strip of kite paper"


@pytest.mark.parametrize(
    ("quantity", "named", "one_thing"),
    [
        (Quantity(mixed(6), (3, 3)), "3 strips of kite paper and 3 sixths", False),
        (Quantity(mixed(6), (None, 1)), "1 sixth", True),
        (Quantity(mixed(6), (1, 1)), "1 strip of kite paper and 1 sixth", False),
        (Quantity(measure("yd", "ft", "in"), (1, 2, 7)), "1 yard, 2 feet and 7 inches", False),
        (Quantity(measure("ft"), (1,)), "1 foot", True),
        (whole(25), "25", True),
        (Quantity(decimal(1, 1), (2, 5)), "2.5", True),
        (Quantity(decimal(1, 1), (0, 25)), "25 tenths", False),
        (Quantity(decimal(1, 1), (0, 1)), "0.1", True),
        (Quantity(places(2), (1, 12)), "1 ten and 12 ones", False),
    ],
)
def test_amounts(quantity: Quantity, named: str, one_thing: bool) -> None:
    """Amounts are counted by their units; whole numbers and decimals keep the digits they have."""
    assert _text(*amount(quantity, STRIPS)) == named
    assert single(quantity) is one_thing
