"""The drawing of a difference can be counted, and its words say the same numbers."""

import re

import pytest

from onewhole.notations.words import ClassWords, count_words, piece_name
from onewhole.number.quantity import Quantity
from onewhole.problems.spaces import subtractions
from onewhole.problems.taught import as_taught
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import asked_quantities
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.wholes_first import WHOLES_FIRST
from onewhole.writers.strips import MOST_PARTS, MOST_STRIPS, Strips, strips_of

KITES = ClassWords("strip", "strips", "regroup")
COUNTS = {count_words(count): count for count in range(100)}


def drawn(typed: str) -> Strips | None:
    """The drawing of a typed difference."""
    working = as_taught(read_statement(typed), REGROUP_FIRST)
    return strips_of(working) if working else None


def told_numbers(told: str) -> list[int]:
    """Every count word of a sentence, in order."""
    return [COUNTS[word] for word in re.findall(r"[a-z-]+", told.lower()) if word in COUNTS]


def test_every_small_difference_is_drawn_right() -> None:
    """Thirds, fourths and sixths up to 4: what is drawn is the first number, what is left is the answer."""
    for statement in subtractions((3, 4, 6), 4):
        working = as_taught(statement, REGROUP_FIRST)
        assert working is not None
        strips = strips_of(working)
        assert strips is not None, statement
        ((first, _), (second, _)) = asked_quantities(statement) or ()
        assert isinstance(working.answer, Quantity)
        in_pieces = (strips.closed + strips.opened) * strips.parts + strips.loose
        assert in_pieces == first.value * strips.parts
        assert strips.gone * strips.parts + strips.pieces_gone == second.value * strips.parts
        wholes, pieces = strips.left
        assert wholes * strips.parts + pieces == working.answer.value * strips.parts
        assert min(strips.left) >= 0


def test_the_words_hold_the_numbers_of_the_drawing() -> None:
    """How many strips, how many opened into how many pieces, how many crossed out, how many left."""
    for statement in subtractions((3, 5), 3):
        working = as_taught(statement, REGROUP_FIRST)
        strips = strips_of(working) if working else None
        assert strips is not None
        numbers = [strips.closed + strips.opened, strips.loose]
        numbers += [
            strips.opened,
            strips.opened * strips.parts,
            strips.gone,
            strips.pieces_gone,
            *strips.left,
        ]
        said = strips.told(KITES)
        assert told_numbers(said) == [number for number in numbers if number], said
        assert piece_name(strips.parts, 2)[:-1] in said


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        (
            "4 1/5 - 1 2/5",
            (
                "Drawn: four strips and one fifth. Opened: one strip, into five fifths. "
                "Crossed out: one strip and two fifths. Left: two strips and four fifths."
            ),
        ),
        (
            "1 - 1/2",
            "Drawn: one strip. Opened: one strip, into two halves. Crossed out: one half. Left: one half.",
        ),
        (
            "2 2/3 - 2 2/3",
            "Drawn: two strips and two thirds. Crossed out: two strips and two thirds. Left: nothing.",
        ),
    ],
)
def test_told(typed: str, told: str) -> None:
    """The words that a screen reader says for a drawing."""
    strips = drawn(typed)
    assert strips is not None
    assert strips.told(KITES) == told


@pytest.mark.parametrize(
    "typed",
    [
        f"{MOST_STRIPS + 1} - 1/3",
        f"5 - 1/{MOST_PARTS + 1}",
        "5 1/2 - 2 2/3",
        "2 4/5 + 1 3/5",
        "5.2 - 2.7",
        "52 - 27",
        "4 1/4 - 1 1/4 - 1/4",
        "5/6 ? 7/8",
    ],
)
def test_what_cannot_be_counted_is_not_drawn(typed: str) -> None:
    """Too many strips or pieces, unlike pieces, sums, other ladders and longer problems have no drawing."""
    assert drawn(typed) is None


def test_only_a_whole_that_is_opened_first_is_drawn() -> None:
    """A working by another strategy has other steps than the drawing shows."""
    working = as_taught(read_statement("4 1/5 - 1 2/5"), WHOLES_FIRST)
    assert working is not None
    assert strips_of(working) is None


def test_more_crossed_out_than_there_is_is_refused() -> None:
    """A drawing that cannot be is not built."""
    with pytest.raises(ValueError, match="more is crossed out than there is"):
        Strips(parts=3, closed=1, opened=0, loose=1, gone=2, pieces_gone=0)
