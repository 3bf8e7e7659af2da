"""Every way of working, by its key or its usual name."""

from onewhole.working.products.table import PRODUCT_WAYS
from onewhole.working.quotients.table import QUOTIENT_WAYS
from onewhole.working.steps.ways import STEP_WAYS
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.way import NamedWay, named_among

#: All ways: to add and to take away, then to multiply, to divide, and to work several steps.
WAYS: tuple[NamedWay, ...] = (*STRATEGIES, *PRODUCT_WAYS, *QUOTIENT_WAYS, *STEP_WAYS)


def way_named(name: str) -> NamedWay:
    """Return a way by its key or by its usual name, however spaced and capitalised.

    >>> way_named("Part by part").key, way_named("regroup first").key
    ('partial_products', 'regroup_first')
    """
    return named_among(name, WAYS)
