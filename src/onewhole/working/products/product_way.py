"""A way to multiply."""

from onewhole.working.products.product_state import ProductState
from onewhole.working.stepped_way import SteppedWay, WayStep


class ProductStep(WayStep[ProductState], frozen=True):
    """One named step of a way to multiply."""


class ProductWay(SteppedWay[ProductState], frozen=True):
    """A way to multiply two numbers, as a class is taught it."""
