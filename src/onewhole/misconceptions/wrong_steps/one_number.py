"""The one number that is to be written another way."""

from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.statements.statement import AnotherName, Question, Statement


def one_number(statement: Statement, form: NumberForm) -> Quantity | None:
    """Return a number that stands alone, or of which this form is asked for; None for anything else.

    >>> from onewhole.statements.reading import read_statement
    >>> one_number(read_statement("11/4 as a mixed number"), NumberForm.SIMPLEST) is None
    True
    """
    match statement:
        case Question(Quantity() as number):
            return number
        case AnotherName(number, wanted) if wanted is form:
            return number
        case _:
            return None
