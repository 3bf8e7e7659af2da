"""Multiplying in columns and long division: what a class is taught, and what published examples come to."""

import pytest

from onewhole.notations.text import text
from onewhole.problems.taught import as_taught
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.reading import read_statement
from onewhole.working.products.in_columns import MULTIPLY_IN_COLUMNS
from onewhole.working.questions import DoesNotSuitError
from onewhole.working.quotients.long_division import LONG_DIVISION
from onewhole.working.quotients.partial_quotients import PARTIAL_QUOTIENTS
from onewhole.working.reasons.columns import InColumns
from onewhole.working.reasons.unsuited import (
    DigitsGoOn,
    NoColumns,
    NotSharedOut,
    NotSoManyTimes,
    TooFewToShare,
)
from onewhole.working.taught import Taught
from onewhole.working.work import work
from onewhole.writers.workings_page import workings_page

#: Rows MUL05-MUL06, MUL09-MUL13, DIV07-DIV10, DIV12-DIV14 of ../shared/domain/check-values-2.csv: OpenStax
#: Prealgebra 2e, Multiply Whole Numbers and Divide Whole Numbers, worked examples. Rows MUL26-MUL27 and
#: DIV24-DIV26: Progressions, Number and Operations in Base Ten K-5 (from memory). DIV21: NAEP, in Schoenfeld
#: (1988).
PUBLISHED = {
    "286 x 5": "1430",
    "62 x 87": "5394",
    "354 x 438": "155052",
    "896 x 201": "180096",
    "12 x 27": "324",
    "2 x 211": "422",
    "4 x 20": "80",
    "8 x 549": "4392",
    "36 x 94": "3384",
    "2596 / 4": "649",
    "4506 / 6": "751",
    "7263 / 9": "807",
    "1439 / 4": "359 r 3",
    "160 / 8": "20",
    "1461 / 13": "112 r 5",
    "74521 / 241": "309 r 52",
    "745 / 3": "248 r 1",
    "966 / 7": "138",
    "1655 / 27": "61 r 8",
    "1128 / 36": "31 r 12",
}


@pytest.mark.parametrize(("typed", "answer"), PUBLISHED.items())
def test_published_examples(typed: str, answer: str) -> None:
    """Each comes out as the source prints it."""
    working = work(read_statement(typed), MULTIPLY_IN_COLUMNS if " x " in typed else LONG_DIVISION)
    assert text(working.answer) == answer


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("7 x 8", NoColumns),
        ("0 x 11", NoColumns),
        ("3 x 1 2/5", NoColumns),
        ("3 x 2 ft 7 in", NoColumns),
        ("0.5 x $3.25", NotSoManyTimes),
        ("7 / 3", NoColumns),
        ("7 2/6 / 4", NoColumns),
        ("5 ft 2 in / 2", NoColumns),
        ("12 / 24", TooFewToShare),
        ("12 / 0.5", NotSharedOut),
        ("10.0 / 3", DigitsGoOn),
        ("3.99 / 24", DigitsGoOn),
    ],
)
def test_numbers_that_do_not_suit(typed: str, why: type) -> None:
    """They are refused with the reason."""
    with pytest.raises(DoesNotSuitError) as refused:
        work(read_statement(typed), MULTIPLY_IN_COLUMNS if " x " in typed else LONG_DIVISION)
    assert isinstance(refused.value.why, why)


@pytest.mark.parametrize(
    ("typed", "way"),
    [
        ("386 x 24", "multiply_in_columns"),
        ("2.4 x 3.6", "multiply_in_columns"),
        ("3 x 2/5", "each_unit"),
        ("7 x 8", "by_heart"),
        ("9876 / 24", "long_division"),
        ("$7.35 / 3", "long_division"),
        ("12 / 0.5", "measure_out"),
        ("3 / 4", "as_fraction"),
        ("52 - 27", "columns"),
    ],
)
def test_a_class_that_was_taught_written_ways(typed: str, way: str) -> None:
    """They are used where they suit, and give way to the first that suits elsewhere."""
    taught = Taught(product=MULTIPLY_IN_COLUMNS, quotient=LONG_DIVISION)
    working = as_taught(read_statement(typed), taught)
    assert working is not None
    assert working.strategy == way


def test_what_a_sheet_says_reaches_key_working_and_page() -> None:
    """The head names the ways; they are written back as they were typed, and every page has them."""
    head = "multiply: multiply in columns\ndivide: partial quotients\nremainder: decimal"
    typed = f"{head}\n\n1. 36 x 24\n2. 87 / 4"
    sheet = read_sheet(typed)
    assert (sheet.header.multiply, sheet.header.divide) == (MULTIPLY_IN_COLUMNS, PARTIAL_QUOTIENTS)
    worked = WorkedSheet(sheet)
    ways = [one.working.strategy for one in worked.problems if one.working]
    assert ways == ["multiply_in_columns", "partial_quotients"]
    problems = workings_page(worked).data["problems"]
    assert isinstance(problems, list)
    assert ["columns" in told for told in problems] == [True, False]
    assert text(worked.problems[1].answer) == "21.75"


@pytest.mark.parametrize(
    ("wanted", "answer"),
    [("any", "411 r 12"), ("remainder", "411 r 12"), ("fraction", "411 12/24"), ("decimal", "411.5")],
)
def test_a_remainder_ends_as_the_sheet_wants_it(wanted: str, answer: str) -> None:
    """Key and working of a long division end alike, and the decimal is found in the same columns."""
    sheet = read_sheet(f"divide: long division\nremainder: {wanted}\n\n1. 9876 / 24")
    one = WorkedProblem(sheet.problems[0], sheet.header.taught, sheet.header.form)
    assert one.working is not None
    assert text(one.answer) == text(one.working.answer) == answer
    steps = [isinstance(line.because, InColumns) for line in one.working.lines[1:]]
    assert all(steps) is (wanted != "fraction")
