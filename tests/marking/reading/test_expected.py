"""What the answers to one problem are compared with."""

from fractions import Fraction

import pytest

from onewhole.marking.reading.expected import expect, is_fact_slip
from onewhole.number.unit import Kind
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_answer, read_statement


def _asked(typed: str) -> Problem:
    return Problem("1", read_statement(typed), typed)


@pytest.mark.parametrize(
    ("problem", "right", "not_right"),
    [
        (
            "7 2/6 - 3 5/6",
            ["3 3/6", "3 1/2", "21/6", "7/2", "3.5", "2 9/6", "0 42/12"],
            ["3 3/5", "3", "3 3/0"],
        ),
        ("4 - 4", ["0", "0/6"], ["1"]),
        ("52 - 27", ["25", "25.0", "2 tens 5 ones", "50/2"], ["35"]),
        (
            "5 ft 2 in - 2 ft 7 in",
            ["2 ft 7 in", "31 in", "1 ft 19 in"],
            ["31", "2 ft"],
        ),
        ("7 2/6 = 6 ?/6", ["8", "8/1", "6 8/6"], ["22/3", "7 2/6", "8/6"]),
        ("3/4 = ?/12", ["9", "9/12"], ["3/4"]),
        ("5 ft 2 in - ? = 2 ft 7 in", ["2 ft 7 in", "31 in"], ["31"]),
        ("5/6 ? 7/8", ["<"], [">", "=", "7/8"]),
        ("3 x 2/5", ["6/5", "1 1/5"], ["6/15"]),
    ],
)
def test_any_equal_form_is_right(problem: str, right: list[str], not_right: list[str]) -> None:
    """By amount and kind, exactly; a gap is answered by its count or by the whole number that holds it."""
    asked = expect(_asked(problem))
    assert [written for written in right if not asked.is_right(read_answer(written))] == []
    assert [written for written in not_right if asked.is_right(read_answer(written))] == []


@pytest.mark.parametrize(
    ("problem", "steps"),
    [
        ("9 5/8 - 4 6/8", (Fraction(1), Fraction(1, 8))),
        ("2/3 + 1/4", (Fraction(1), Fraction(1, 12))),
        ("52 - 27", (Fraction(10), Fraction(1))),
        ("5 ft 2 in - 2 ft 7 in", (Fraction(12), Fraction(1))),
        ("5.2 - 2.75", (Fraction(1), Fraction(1, 10), Fraction(1, 100))),
        ("7 2/6 = 6 ?/6", (Fraction(1),)),
        ("5/6 ? 7/8", ()),
    ],
)
def test_a_fact_slip_is_one_unit_of_the_problem(problem: str, steps: tuple[Fraction, ...]) -> None:
    """One whole, one piece, one ten, one inch: each rung of the ladder that the numbers share."""
    assert expect(_asked(problem)).steps == steps


def test_what_shows_has_no_lucky_and_no_equal_answers() -> None:
    """7 2/6 - 3 5/6 is right by luck under A28, and A35 keeps the amount: neither counts as shown."""
    asked = expect(_asked("7 2/6 - 3 5/6"))
    assert {"A01", "A02"} <= asked.shows
    assert not {"A28", "A35"} & asked.shows
    assert [ids for ids in asked.forms.values() if "A35" in ids]


def test_fact_slips_come_last() -> None:
    """What A02 writes is also one whole beside right: the idea is named before the slip."""
    asked = expect(_asked("9 5/8 - 4 6/8"))
    ids = next(ids for ids in asked.exact.values() if "A02" in ids)
    assert ids == ("A02", "A33")
    assert [is_fact_slip(pattern) for pattern in ids] == [False, True]


def test_twins_are_built_alike() -> None:
    """(w1 - w2, n1 - n2, d) agree for twins; other numbers or needs make another build."""
    first, twin, other = (expect(_asked(one)) for one in ("7 2/6 - 3 5/6", "8 1/6 - 4 4/6", "7 1/6 - 3 5/6"))
    assert first.built == twin.built != other.built


def test_the_kind_of_a_sign_is_none() -> None:
    """Only amounts measure something."""
    assert expect(_asked("5/6 ? 7/8")).kind is None
    assert expect(_asked("5 ft - 2 ft")).kind is Kind.LENGTH
