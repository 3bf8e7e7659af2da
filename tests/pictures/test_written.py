"""Products and long divisions on squared paper: each row is read back, by place value, as what it must be."""

import random
from collections.abc import Iterator
from fractions import Fraction
from itertools import chain, pairwise

import pytest

from onewhole.number.ladder import decimal
from onewhole.number.quantity import Quantity, usual, whole
from onewhole.pictures.choosing import chosen, picture
from onewhole.pictures.columns import SQUARE
from onewhole.pictures.limits import BOARD
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Box, Hop, Stroke, Words
from onewhole.pictures.squared import stills
from onewhole.pictures.squares import WrittenRow, WrittenState
from onewhole.pictures.written import written
from onewhole.pictures.written_state import written_states
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.header import Header
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.room import room
from onewhole.statements.expression import Quotient, Times
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.form import FormWanted, led_to
from onewhole.working.products.in_columns import MULTIPLY_IN_COLUMNS
from onewhole.working.quotients.long_division import LONG_DIVISION
from onewhole.working.quotients.remainder_shared import RemainderForm
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.kit.how_much import sample

SEEDED = sample(20, 60, 2_000)
STEP = sample(997, 499, 1)

PROBLEMS = (
    "386 x 24",
    "999 x 99",
    "7 x 4207",
    "896 x 201",
    "2.4 x 3.6",
    "0.2 x 0.4",
    "$3.25 x 4",
    "300 x 20",
)
DIVISIONS = ("9876 / 24", "7263 / 9", "1000 / 7", "800 / 4", "5.2 / 4", "3.2 / 8", "$7.35 / 3", "0.84 / 12")


def done(typed: str) -> Working:
    """Work a typed product or quotient in columns."""
    asked = read_statement(typed)
    return work(asked, MULTIPLY_IN_COLUMNS if " x " in typed else LONG_DIVISION)


def number(row: WrittenRow) -> int:
    """Read a row as a number; what stands empty behind its last digit counts nothing."""
    shown = [0 if digit is None else digit for digit in row.digits]
    return int("".join(map(str, shown)))


def products() -> Iterator[tuple[Quantity, Quantity]]:
    """4 x 1 and 3 x 2 digits: each so-manieth by every digit, seeded ones, and decimals."""
    for left in range(10, 10_000, STEP):
        for right in range(2, 10):
            yield whole(left), whole(right)
    chance = random.Random(17)
    for _ in range(SEEDED):
        yield whole(chance.randrange(100, 1_000)), whole(chance.randrange(10, 100))
        tenths = usual(decimal(1, 1), Fraction(chance.randrange(11, 1_000), 10))
        yield tenths, usual(decimal(1, 2), Fraction(chance.randrange(11, 1_000), 100))


def quotients() -> Iterator[tuple[Quantity, Quantity]]:
    """4 by 1 digits: each so-manieth by every digit, seeded ones by two digits, and decimals."""
    for left in range(10, 10_000, STEP):
        for right in range(2, 10):
            yield whole(left), whole(right)
    chance = random.Random(18)
    for _ in range(SEEDED):
        by = chance.randrange(10, 100)
        yield whole(chance.randrange(by, 10_000)), whole(by)
        yield usual(decimal(1, 1), Fraction(by * chance.randrange(1, 90), 10)), whole(by)


def test_every_row_of_a_product_is_its_digit_times_the_upper_number() -> None:
    """Rows, carried digits and sum, each found from the numbers alone by dividing by powers of ten."""
    for left, right in products():
        working = work(Question(Times(left, right)), MULTIPLY_IN_COLUMNS)
        state = written_states(working)[-1]
        rows = {row.name: row for row in state.rows}
        longer = len(str(right.parts)) > len(str(left.parts))
        above, below = (right.parts, left.parts) if longer else (left.parts, right.parts)
        assert number(rows["above"]) == above
        assert number(rows["below"]) == below
        used = [(int(digit), at) for at, digit in enumerate(reversed(str(below))) if digit != "0"]
        made = [above * digit * 10**at for digit, at in used]
        assert number(rows["answer"]) == sum(made) == above * below
        if len(used) > 1:
            assert [number(rows[f"row/{at}"]) for at in range(len(used))] == made
        for at, (digit, _) in enumerate(used):
            carried = [above % 10**place * digit // 10**place for place in range(len(str(above)))]
            shown = number(rows[f"carried/{at}"]) if f"carried/{at}" in rows else 0
            assert shown == sum(count * 10**place for place, count in enumerate(carried))
        places = range(max(len(str(one)) for one in made))
        sums = [sum(one % 10**place for one in made) // 10**place for place in places]
        shown = number(rows["carried/sum"]) if "carried/sum" in rows else 0
        assert shown == sum(count * 10**place for place, count in enumerate(sums))


def test_every_row_of_a_long_division_stands_where_it_counts() -> None:
    """What is taken away, at its places, and what is left make the number; the quotient stands over it."""
    for left, right in quotients():
        by = right.parts
        _divided_right(work(Question(Quotient(left, right)), LONG_DIVISION), left.value, by)


def _divided_right(working: Working, amount: Fraction, by: int) -> None:
    state = written_states(working)[-1]
    rows = {row.name: row for row in state.rows}
    begin = len(str(by))
    asked = WrittenRow("number", (*(None,) * begin, *rows["number"].digits[begin:]))
    scale = Fraction(number(asked)) / amount
    assert number(rows["number"]) // 10 ** (state.squares - begin) == by
    quotient, left_over = divmod(number(asked), by)
    assert number(rows["quotient"]) == quotient
    taken = [row for row in state.rows if row.name.startswith("taken/")]
    assert sum(map(number, taken)) == quotient * by
    digits = [digit for digit in str(quotient) if digit != "0"]
    assert [int(str(number(row)).rstrip("0")) for row in taken] == [
        int(str(int(digit) * by).rstrip("0")) for digit in digits
    ]
    there = number(asked)
    for at, row in enumerate(taken):
        there -= number(row)
        shown = rows[f"left/{at}"]
        end = max(square for square, digit in enumerate(shown.digits) if digit is not None)
        worth = 10 ** (state.squares - 1 - end)
        assert number(shown) == there // worth * worth
    assert there == left_over
    assert (state.remainder or 0) == left_over
    assert scale.denominator == 1


def test_what_is_left_of_money_is_written_in_money() -> None:
    """1 cent is left of $100 shared by 3; r 1 would be a dollar."""
    state = written_states(done("$100 / 3"))[-1]
    assert (state.remainder, state.remainder_signs) == (1, "0.01")
    assert written_states(done("87 / 4"))[-1].remainder_signs == "3"


def test_a_remainder_goes_on_behind_the_point() -> None:
    """Where the sheet asks for decimals, the same columns go on, and each row still is what it must be."""
    wanted = FormWanted(remainder=RemainderForm.DECIMAL)
    for typed, answer in (
        ("87 / 4", (2, 1, 7, 5)),
        ("9876 / 24", (4, 1, 1, 5)),
        ("1001 / 8", (1, 2, 5, 1, 2, 5)),
    ):
        asked = read_statement(typed)
        assert isinstance(asked, Question)
        assert isinstance(asked.asked, Quotient)
        assert isinstance(asked.asked.left, Quantity)
        assert isinstance(asked.asked.right, Quantity)
        working = led_to(done(typed), wanted)
        assert isinstance(working.answer, Quantity)
        assert working.answer.counts == answer
        assert len(written_states(working)) == len(working.lines)
        _divided_right(working, asked.asked.left.value, asked.asked.right.parts)


@pytest.mark.parametrize("typed", [*PROBLEMS, *DIVISIONS])
def test_digits_of_one_square_stand_exactly_under_each_other(typed: str) -> None:
    """A square is one place across on every line, nothing runs over the edge, and scenes have one size."""
    working = done(typed)
    scenes = written(working)
    assert len(scenes) == len(working.lines)
    assert len({(scene.width, scene.height) for scene in scenes}) == 1
    left: set[Fraction] = set()
    for scene in (*scenes, *stills(working)):
        for piece in scene.pieces:
            match piece.shape:
                case Words(x, y, _, size):
                    corners = [(x - size / 2, y - size / 2), (x + size / 2, y + size / 2)]
                    if not piece.name.startswith("r/"):
                        left.add((x - int(piece.name.split("/")[-1]) * SQUARE) % SQUARE)
                case Stroke(x, y, to_x, to_y):
                    corners = [(x, y), (to_x, to_y)]
                case Box() | Hop():
                    pytest.fail("squared paper has no boxes and no jumps here")
                case _:
                    corners = []
            assert all(0 < x < scene.width and 0 < y < scene.height for x, y in corners), piece.name
    assert len(left) == 1


@pytest.mark.parametrize("typed", [*PROBLEMS, *DIVISIONS])
def test_they_are_chosen_on_paper_and_on_the_board(typed: str) -> None:
    """A written working stands in columns everywhere, large enough for a phone."""
    assert chosen(done(typed)) is chosen(done(typed), BOARD) is PictureKind.COLUMNS
    drawn = picture(done(typed), paper=BOARD)
    assert drawn is not None
    assert len(drawn.scenes) == len(done(typed).lines)


def test_what_is_written_stays_written() -> None:
    """From line to line digits are added and none is taken back, but a remainder that is shared on."""
    for typed in (*PROBLEMS, *DIVISIONS):
        states = written_states(done(typed))
        for before, after in pairwise(states):
            _stays(before, after)


def _stays(before: WrittenState, after: WrittenState) -> None:
    for row, later in zip(before.rows, after.rows, strict=True):
        assert row.name == later.name
        pairs = zip(row.digits, later.digits, strict=True)
        assert all(one in (None, other) for one, other in pairs), row.name
        assert later.struck or not row.struck


def test_carried_digits_of_a_row_are_struck_when_the_next_begins() -> None:
    """Both rows of carried digits stand over the number, one over the other."""
    states = written_states(done("386 x 24"))
    struck = [
        [row.struck for row in state.rows if row.small and row.name != "carried/sum"] for state in states
    ]
    assert struck[0] == [False, False]
    assert [False, True] in struck
    assert struck[-1] == [True, True]


@pytest.mark.parametrize(
    ("typed", "squares"),
    [
        ("386 x 24", (6, 7)),
        ("999 x 99", (7, 7)),
        ("9876 / 24", (9, 8)),
        ("7263 / 9", (6, 6)),
        ("4207 x 8", (7, 4)),
    ],
)
def test_the_room_on_squared_paper_holds_all_that_is_written(typed: str, squares: tuple[int, int]) -> None:
    """A square a digit, a row a number; two rows of carried digits share one (common practice, no source)."""
    sheet = read_sheet(f"multiply: multiply in columns\ndivide: long division\n\n1. {typed}")
    (problem,) = sheet.problems
    found = room(WorkedProblem(problem, sheet.header.taught), Header())
    assert found.square_mm is not None
    across, down = squares
    assert found.width_mm == across * found.square_mm
    assert found.height_mm == down * found.square_mm


def test_every_scene_has_words() -> None:
    """What stands there is said for who cannot see it, with the numbers that are multiplied or divided."""
    for typed in (*PROBLEMS, *DIVISIONS):
        assert all(scene.descriptions for scene in chain(written(done(typed)), stills(done(typed))))
