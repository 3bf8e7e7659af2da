"""Columns as MathML: read back cell by cell, the numbers and the answer are those of the problem."""

from fractions import Fraction
from xml.etree.ElementTree import Element, fromstring

import pytest

from onewhole.notations.columns_mathml import columns_mathml
from onewhole.number.quantity import Quantity
from onewhole.pictures.columns_state import columns_states
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.work import work
from onewhole.working.working import Working

PROBLEMS = (
    "304 - 128",
    "1000000 - 345678",
    "12.05 - 3.8",
    "1234 + 2876 + 777",
    "95 + 17",
    "0.5 - 0.25",
    "43 - 21",
)
MATH = "{http://www.w3.org/1998/Math/MathML}"


def worked(problem: str) -> Working:
    """Work a problem in columns."""
    return work(read_statement(problem), COLUMNS)


def rows(problem: str) -> list[Element]:
    """The rows of its table at the end."""
    root = fromstring(columns_mathml(columns_states(worked(problem))[-1]))  # noqa: S314  # our own
    assert "aria-label" not in root.attrib
    (table,) = root
    return list(table)


def number(row: Element) -> Fraction:
    """The number of a row, read from its digits and its point."""
    return Fraction("".join(text for cell in row[1:] for text in cell.itertext()))


@pytest.mark.parametrize("problem", PROBLEMS)
def test_read_back_cell_by_cell_it_is_true(problem: str) -> None:
    """Sign in the first cell, as many cells in each row, the numbers with their answer below."""
    working = worked(problem)
    assert isinstance(working.answer, Quantity)
    parts = problem.replace("+", "-").split(" - ")
    every = rows(problem)
    assert len({len(row) for row in every}) == 1
    *numbers, answer = every[-len(parts) - 1 :]
    assert [number(row) for row in numbers] == [Fraction(part) for part in parts]
    assert number(answer) == working.answer.value
    signs = ["".join(row[0].itertext()) for row in numbers]
    assert signs[:-1] == [""] * (len(parts) - 1)
    assert signs[-1] == ("+" if "+" in problem else "\N{MINUS SIGN}")


def test_what_is_struck_out_is_marked() -> None:
    """304 - 128: 3, 0 and 4 of the number, and the 10 above the zero; no other."""
    struck = ["".join(found.itertext()) for row in rows("304 - 128") for found in row.iter(f"{MATH}menclose")]
    assert struck == ["10", "3", "0", "4"]
    assert not [found for row in rows("1234 + 2876 + 777") for found in row.iter(f"{MATH}menclose")]


def test_before_anything_is_written_there_is_no_answer() -> None:
    """The first line of a working has a row for each number."""
    root = fromstring(columns_mathml(columns_states(worked("43 - 21"))[0]))  # noqa: S314  # our own
    assert len(root[0]) == 2
