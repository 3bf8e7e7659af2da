"""Working a product by a way to multiply, with its checks."""

from collections.abc import Iterable

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression, Times
from onewhole.statements.statement import Question
from onewhole.working.checks import Check, agreement, estimated_product
from onewhole.working.line import Line, without_repeats
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductWay
from onewhole.working.products.table import PRODUCT_WAYS
from onewhole.working.working import Working


def factors(asked: Expression) -> ProductState | None:
    """Return the two numbers of a product; None for anything else, and for times of day.

    >>> from onewhole.statements.reading import read_expression
    >>> factors(read_expression("3 x 1 2/5")).times
    3
    """
    match asked:
        case Times(Quantity() as left, Quantity() as right) if not (left.ladder.clock or right.ladder.clock):
            return ProductState(left, right)
        case _:
            return None


def ways_to_multiply(product: ProductState) -> tuple[ProductWay, ...]:
    """Return the ways that suit a product and that a teacher would use, in the order of the table.

    >>> from onewhole.statements.reading import read_expression
    >>> [way.key for way in ways_to_multiply(factors(read_expression("3 x 1 2/5")))]
    ['each_unit', 'tops_and_bottoms', 'partial_products', 'equal_jumps']
    """
    return tuple([way for way in PRODUCT_WAYS if way.unsuited(product) is None and way.offered(product)])


def work_product(question: Question, product: ProductState, way: ProductWay, *, checked: bool) -> Working:
    """Work a product by a way that suits it."""
    state = way.run(product)
    answer = state.found()
    checks = tuple(_checks(product, way, answer)) if checked else ()
    return Working(way.key, question, without_repeats((Line(question.asked), *state.lines)), answer, checks)


def _checks(product: ProductState, way: ProductWay, answer: Quantity) -> Iterable[Check]:
    yield estimated_product(product.left, product.right, answer)
    others = (*ways_to_multiply(product), *PRODUCT_WAYS)
    reached = (
        (other.key, other.run(product).found())
        for other in others
        if other.key != way.key and other.unsuited(product) is None
    )
    yield from agreement(way.key, answer, reached)
