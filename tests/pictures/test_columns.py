"""Columns on squared paper: every digit in its place to the millimetre, on every line."""

from fractions import Fraction
from itertools import pairwise

import pytest

from onewhole.number.quantity import Quantity
from onewhole.pictures.choosing import chosen, picture, refusal
from onewhole.pictures.columns import SQUARE, columns, stills
from onewhole.pictures.columns_state import ColumnsState, columns_states
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Scene, Stroke, Wedge, Words
from onewhole.pictures.unpictured import NotInColumns
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.table import strategy_named
from onewhole.working.work import work
from onewhole.working.working import Working

PROBLEMS = (
    "304 - 128",
    "4006 - 1278",
    "8000 - 2345",
    "1000000 - 345678",
    "999999 + 1",
    "1234 + 2876 + 777",
    "12.05 - 3.8",
    "0.5 - 0.25",
    "9.95 + 0.05",
    "65567 - 65",
    "304 - 298",
    "12 + 19 - 7 + 8 + 9",
)


def worked(problem: str, way: str = "columns") -> Working:
    """Work a problem, in columns where nothing else is said."""
    return work(read_statement(problem), strategy_named(way))


def digits(scene: Scene) -> dict[str, Words]:
    """Every digit of a scene by its name."""
    return {piece.name: piece.shape for piece in scene.pieces if isinstance(piece.shape, Words)}


@pytest.mark.parametrize("problem", PROBLEMS)
def test_digits_of_one_column_stand_exactly_under_each_other(problem: str) -> None:
    """On all lines of a working one column is one place across, and columns are one square apart."""
    found = columns(worked(problem))
    assert len(found.scenes) == len(worked(problem).lines)
    for scene in found.scenes:
        places: dict[str, set[Fraction]] = {}
        for name, words in digits(scene).items():
            places.setdefault(name.split("/")[1], set()).add(words.x)
            assert 0 < words.x < scene.width
            assert 0 < words.y - words.size / 2 < words.y + words.size / 2 < scene.height
        assert all(len(across) == 1 for across in places.values()), problem
        across = sorted(x for found_at in places.values() for x in found_at)
        assert all((b - a) % SQUARE == 0 for a, b in pairwise(across)), problem


@pytest.mark.parametrize("problem", PROBLEMS)
def test_the_answer_stands_below_at_the_end(problem: str) -> None:
    """The digits below are those of the answer, none before it, and they are there from their own line on."""
    working = worked(problem)
    assert isinstance(working.answer, Quantity)
    last = columns_states(working)[-1]
    below = [(column.unit.size, column.below) for column in last.columns if column.below is not None]
    assert sum(size * digit for size, digit in below) == working.answer.value
    assert [digit for _, digit in below] == list(working.answer.counts), problem
    shown = [_below(state) for state in columns_states(working) if state.block == last.block]
    assert all(set(before) <= set(after) for before, after in pairwise(shown))


def _below(state: ColumnsState) -> list[tuple[Fraction, int]]:
    return [(column.unit.size, column.below) for column in state.columns if column.below is not None]


@pytest.mark.parametrize("problem", PROBLEMS)
def test_what_is_above_is_worth_the_number_on_top(problem: str) -> None:
    """In taking away, the small numbers with the digits that are not struck are worth the first number."""
    for state in columns_states(worked(problem)):
        if state.taken:
            counts = [
                (one.above[-1] if one.above else one.digits[0] or 0, one.unit.size) for one in state.columns
            ]
            assert sum(count * size for count, size in counts) == state.numbers[0].value


def test_a_struck_digit_stays_readable_and_its_stroke_in_its_square() -> None:
    """304 - 128 strikes 3, 0, 4 and the 10 over the zero; each stroke is inside the square of its digit."""
    last = columns(worked("304 - 128")).scenes[-1]
    strokes = [piece for piece in last.pieces if piece.name.endswith("/struck")]
    assert len(strokes) == 4
    for piece in strokes:
        shape, words = piece.shape, digits(last)[piece.name.removesuffix("/struck")]
        assert isinstance(shape, Stroke)
        assert words.x - SQUARE / 2 < shape.x < words.x < shape.to_x < words.x + SQUARE / 2
        assert abs(shape.y - words.y) == abs(shape.to_y - words.y) <= words.size * 3 / 5


def test_points_stand_under_each_other() -> None:
    """One for each number and one for the answer, between two squares."""
    last = columns(worked("12.05 - 3.8")).scenes[-1]
    points = [piece.shape for piece in last.pieces if isinstance(piece.shape, Wedge)]
    assert len(points) == 3
    assert len({point.x for point in points}) == 1
    assert all(
        (point.x - words.x) % SQUARE == SQUARE / 2 for point in points for words in digits(last).values()
    )


def test_columns_are_chosen_for_their_way_and_for_no_other() -> None:
    """A working in columns stands in columns; regrouping first is drawn otherwise."""
    assert chosen(worked("304 - 128")) is PictureKind.COLUMNS
    other = worked("304 - 128", "regroup_first")
    refused = refusal(other, PictureKind.COLUMNS)
    assert refused is not None
    assert refused.reason == NotInColumns()
    assert chosen(other) is PictureKind.BLOCKS
    with pytest.raises(NotDrawnError):
        columns(other)


def test_stills_are_cut_to_what_stands_there() -> None:
    """One for each time that the columns begin anew, and never wider than the picture."""
    drawn = picture(worked("1000 - 250 + 75"))
    assert drawn is not None
    found = stills(worked("1000 - 250 + 75"))
    assert len(found) == 2
    assert all(scene.width < drawn.scenes[0].width for scene in found)
    assert all(0 < words.x < scene.width for scene in found for words in digits(scene).values())


#: What is missing, and the row that finds it.
MISSING = (
    ("? + 128 = 304", "304 - 128"),
    ("304 - ? = 128", "304 - 128"),
    ("? - 128 = 176", "176 + 128"),
    ("345 + ? + 67 = 540", "540 - 345 - 67"),
    ("4000 - ? + 5 = 127", "4000 + 5 - 127"),
    ("? + 1.75 = 4.2", "4.2 - 1.75"),
    ("$10 - ? = $3.35", "$10 - $3.35"),
    ("? = 1000000 - 345678", "1000000 - 345678"),
)


@pytest.mark.parametrize(("missing", "found_by"), MISSING)
def test_a_missing_number_is_found_in_the_columns_of_the_row_that_finds_it(
    missing: str, found_by: str
) -> None:
    """At the end the columns are those of the question that is left once the blank is alone."""
    last, like = ({one.block: one for one in columns_states(worked(typed))} for typed in (missing, found_by))
    assert last == like
    assert len(columns_states(worked(missing))) == len(worked(missing).lines)


def test_a_missing_number_in_no_columns_has_none() -> None:
    """Wholes and pieces are not worked in columns, nor is a number that stands there already."""
    assert columns_states(worked("9 - ? = 3 1/2")) == ()
    assert columns_states(worked("? = 5")) == ()
