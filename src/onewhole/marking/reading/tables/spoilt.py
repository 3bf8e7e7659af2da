"""Cells that a spreadsheet changed while they were typed, and what they may have been."""

from enum import Enum
from math import lcm

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.marking.reading.dates import fractions_of_date, fractions_of_day_number
from onewhole.marking.reading.tables.table_cell import CellMade, TableCell
from onewhole.notations.text import text as written
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.numerals import LARGEST_DENOMINATOR
from onewhole.statements.reading import read_answer

#: A right answer so near to the count of days, by this factor, may well be written as that number.
NEAR = 2


class Spoilt(Enum):
    """How a cell was changed: into a date, into a count of days, into a fraction in its lowest terms."""

    DATE = "date"
    DAYS = "days"
    REDUCED = "reduced"


class SpoiltCell(Struct, frozen=True):
    """A cell that may not be what was typed: how it was changed, what it may have been, likeliest first."""

    how: Spoilt
    offers: tuple[str, ...]


def spoilt(cell: TableCell, problem: Problem) -> SpoiltCell | None:
    """Return how a spreadsheet changed an answer; None where nothing says that it did.

    A number that counts days is one only where no answer to the problem is near it. A fraction that the sheet
    shows in its lowest terms may have been written in the pieces of the problem.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6")
    >>> [spoilt(TableCell(text), asked).offers for text in ("8-Mar", "45359")]
    [('3/8', '8/3'), ('3/8', '8/3')]
    >>> spoilt(TableCell("3 1/2", CellMade.FRACTION), asked).offers, spoilt(TableCell("3 1/2"), asked)
    (('3 1/2', '3 3/6'), None)
    """
    text = cell.plain
    dated = fractions_of_date(text)
    if dated is not None or cell.made is CellMade.DATE:
        return SpoiltCell(Spoilt.DATE, dated or ())
    days = fractions_of_day_number(text)
    if days is not None and not _near(int(text), problem):
        return SpoiltCell(Spoilt.DAYS, days)
    if cell.made is CellMade.FRACTION:
        return SpoiltCell(Spoilt.REDUCED, tuple(dict.fromkeys((text, *_in_pieces(text, problem)))))
    return None


def _near(days: int, problem: Problem) -> bool:
    right = WorkedProblem(problem).answer
    return isinstance(right, Quantity) and right.value * NEAR > days > right.value / NEAR


def _in_pieces(text: str, problem: Problem) -> tuple[str, ...]:
    """Return a number in the pieces of the problem, where it can be counted in them."""
    try:
        read = read_answer(text)
    except InputError:
        return ()
    pieces = [
        number.ladder.denominator
        for number in numbers_of(problem.statement)
        if number.ladder.style is Style.MIXED and number.ladder.denominator > 1
    ]
    if not pieces or not isinstance(read, Quantity):
        return ()
    wholes, rest = divmod(read.value, 1)
    sizes = dict.fromkeys((*pieces, lcm(*pieces)))
    tops = {size: rest * size for size in sizes if size <= LARGEST_DENOMINATOR}
    return tuple(
        written(Quantity(mixed(size), (int(wholes) or None, top.numerator)))
        for size, top in tops.items()
        if rest and top.denominator == 1
    )
