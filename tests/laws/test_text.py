"""Plain text reads back to the same thing."""

from hypothesis import given

from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression
from onewhole.statements.reading import read_answer, read_expression, read_statement
from onewhole.statements.statement import Statement
from tests.kit.numbers import quantities
from tests.kit.statements import any_expressions, statements


@given(quantities())
def test_a_quantity_reads_back(quantity: Quantity) -> None:
    """Every quantity as the reader makes it, also as an answer."""
    assert read_expression(text(quantity)) == quantity
    assert read_answer(text(quantity)) == quantity


@given(any_expressions())
def test_an_expression_reads_back(expression: Expression) -> None:
    """Brackets stand exactly where the tree needs them."""
    assert read_expression(text(expression)) == expression


@given(statements())
def test_a_statement_reads_back(statement: Statement) -> None:
    """Questions, comparisons, and equations with a number missing."""
    assert read_statement(text(statement)) == statement


@given(statements())
def test_text_is_ascii_on_one_line(statement: Statement) -> None:
    """It can be typed on any keyboard; the sign for cents may also be typed as a word."""
    written = text(statement)
    assert written.replace("¢", "").isascii()
    assert written.isprintable()
    assert written == " ".join(written.split())
