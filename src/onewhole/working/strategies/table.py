"""The strategies for sums and differences, in the order in which they are offered."""

from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.count_up import COUNT_UP
from onewhole.working.strategies.equal_shift import EQUAL_SHIFT
from onewhole.working.strategies.from_whole import FROM_WHOLE
from onewhole.working.strategies.jump_on import JUMP_ON
from onewhole.working.strategies.make_a_whole import MAKE_A_WHOLE
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.to_fractions import TO_FRACTIONS
from onewhole.working.strategies.units_apart import UNITS_APART
from onewhole.working.strategies.wholes_first import WHOLES_FIRST
from onewhole.working.strategy import Strategy
from onewhole.working.way import named_among

STRATEGIES = (
    COLUMNS,
    REGROUP_FIRST,
    WHOLES_FIRST,
    TO_FRACTIONS,
    COUNT_UP,
    FROM_WHOLE,
    EQUAL_SHIFT,
    UNITS_APART,
    MAKE_A_WHOLE,
    JUMP_ON,
)

#: The way of a class that has not said which: columns where there are places of tens, and its partner else.
USUAL = COLUMNS


def strategy_named(name: str) -> Strategy:
    """Return a strategy by its key or by its usual name, however spaced and capitalised.

    >>> strategy_named("Regroup first").key
    'regroup_first'
    """
    return named_among(name, STRATEGIES)
