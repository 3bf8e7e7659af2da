"""Every way of working, by its key or its usual name."""

from onewhole.working.products.table import PRODUCT_WAYS
from onewhole.working.strategies.table import STRATEGIES, UnknownStrategyError, plain_name
from onewhole.working.way import NamedWay

#: All ways: to add and to take away, then to multiply.
WAYS: tuple[NamedWay, ...] = (*STRATEGIES, *PRODUCT_WAYS)


def way_named(name: str) -> NamedWay:
    """Return a way by its key or by its usual name, however spaced and capitalised.

    >>> way_named("Part by part").key, way_named("regroup first").key
    ('partial_products', 'regroup_first')
    """
    plain = plain_name(name)
    for way in WAYS:
        if plain in {way.key, plain_name(way.name)}:
            return way
    msg = f"there is no strategy called “{name}”"
    raise UnknownStrategyError(msg, remedy=f"Choose one of: {', '.join(way.key for way in WAYS)}.")
