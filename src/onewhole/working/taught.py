"""How a class was taught to work: to add and take away, to multiply, and to divide."""

from msgspec import Struct

from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductWay
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.quotient_way import QuotientWay
from onewhole.working.strategies.table import USUAL
from onewhole.working.strategy import Strategy


class Taught(Struct, frozen=True):
    """The ways that a class was taught; None where it has not said how it multiplies or divides.

    A way that does not suit two numbers, or that a teacher would not use for them, gives way to the first
    one that does.

    >>> from onewhole.working.products.partial_products import PARTIAL_PRODUCTS
    >>> Taught(product=PARTIAL_PRODUCTS).strategy.key
    'columns'
    """

    strategy: Strategy = USUAL
    product: ProductWay | None = None
    quotient: QuotientWay | None = None

    def times(self, product: ProductState) -> ProductWay | None:
        """Return the taught way to multiply where it suits two numbers."""
        way = self.product
        return way if way and way.unsuited(product) is None and way.offered(product) else None

    def divides(self, quotient: QuotientState) -> QuotientWay | None:
        """Return the taught way to divide where it suits two numbers."""
        way = self.quotient
        return way if way and way.unsuited(quotient) is None and way.offered(quotient) else None


#: A class that has said only how it adds and takes away, or all.
AsTaught = Strategy | Taught


def all_ways(taught: AsTaught) -> Taught:
    """Return all ways of a class.

    >>> all_ways(USUAL).product is None
    True
    """
    return taught if isinstance(taught, Taught) else Taught(taught)
