"""What stands in the squares where numbers are multiplied or divided in columns, line by line."""

from onewhole.number.quantity import Quantity, trimmed
from onewhole.pictures.product_squares import product_states
from onewhole.pictures.quotient_squares import quotient_states
from onewhole.pictures.squares import WrittenState
from onewhole.statements.statement import Question
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.products.in_columns import upper_and_lower
from onewhole.working.products.work_product import factors
from onewhole.working.quotients.work_quotient import divided
from onewhole.working.reasons.columns import InColumns
from onewhole.working.whole_groups import divided_in_groups
from onewhole.working.working import Working


def written_states(working: Working) -> tuple[WrittenState, ...]:
    """Return what stands in the squares at every line where a product or a quotient is worked in columns.

    Returns nothing for any other working.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.quotients.long_division import LONG_DIVISION
    >>> from onewhole.working.work import work
    >>> last = written_states(work(read_statement("87 / 4"), LONG_DIVISION))[-1]
    >>> [row.digits for row in last.rows[:3]], last.remainder
    ([(None, 2, 1), (4, 8, 7), (None, 8, None)], 3)
    """
    if isinstance(working.statement, WholeGroups):
        begun, *others = written_states(divided_in_groups(working)) or (None,)
        return (begun, begun, *others, *others[-1:]) if begun else ()
    if not isinstance(working.statement, Question):
        return ()
    if not any(isinstance(line.because, InColumns) for line in working.lines):
        return ()
    if (product := factors(working.statement.asked)) is not None:
        assert isinstance(working.answer, Quantity), "a product is one number"
        return tuple(product_states(working.lines, upper_and_lower(product), working.answer))
    if (quotient := divided(working.statement.asked)) is not None:
        return tuple(quotient_states(working.lines, trimmed(quotient.left), quotient.right.parts))
    return ()
