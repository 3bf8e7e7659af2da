"""When two answers are written alike."""

import pytest

from onewhole.marking.reading.writing import alike, alike_line, amount
from onewhole.number.impossible import Impossible
from onewhole.statements.reading import read_answer, read_expression
from onewhole.statements.statement import Relation


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("3", "3 0/6"),
        ("3/6", "0 3/6"),
        ("12.30", "12.3"),
        ("5", "5.0"),
        ("7 in", "0 ft 7 in"),
        ("3 ft", "3 ft 0 in"),
        ("52", "5 tens 2 ones"),
        ("3/0", "0 3/0"),
    ],
)
def test_empty_parts_make_no_difference(one: str, other: str) -> None:
    """What nobody writes, or some do, does not tell two answers apart."""
    assert alike(read_answer(one)) == alike(read_answer(other))


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("4 8/5", "5 3/5"),
        ("3/6", "1/2"),
        ("39/8", "4 7/8"),
        ("3.5", "3 1/2"),
        ("1 ft 2 in", "14 in"),
        ("52", "4 tens 12 ones"),
        ("4", "8/2"),
        ("3 3/0", "3"),
        ("3/0", "4/0"),
        ("3", "3 ft"),
        ("<", ">"),
    ],
)
def test_pieces_and_units_tell_answers_apart(one: str, other: str) -> None:
    """The same amount in other pieces is another answer, and evidence of its own."""
    assert alike(read_answer(one)) != alike(read_answer(other))


def test_lines_are_alike_part_by_part() -> None:
    """Sums, products and fractions being worked are compared in their places."""
    alikes = [("6 8/6 - 3 0/6", "6 8/6 - 3"), ("3 x 2/5", "3 x 0 2/5"), ("(44 - 23)/6", "(44 - 23)/6")]
    unalike = [
        ("6 8/6 - 3", "3 - 6 8/6"),
        ("3 x 2/5", "3 + 2/5"),
        ("(44 - 23)/6", "(44 - 22)/6"),
        ("5 - 2", "5 + 2"),
    ]
    for one, other in alikes:
        assert alike_line(read_expression(one)) == alike_line(read_expression(other))
    for one, other in unalike:
        assert alike_line(read_expression(one)) != alike_line(read_expression(other))


def test_amounts_are_of_a_kind() -> None:
    """5 ft and 60 are different amounts; what has no value has no amount."""
    assert amount(read_answer("5 ft")) == amount(read_answer("60 in")) != amount(read_answer("60"))
    assert amount(Impossible(3, 3)) is None
    assert amount(Relation.LESS) is None
