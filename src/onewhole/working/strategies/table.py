"""The strategies for sums and differences, in the order in which they are offered."""

from onewhole.errors import InputError
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

_BY_KEY = {strategy.key: strategy for strategy in STRATEGIES}


class UnknownStrategyError(InputError, KeyError):
    """There is no strategy of that name."""

    __str__ = InputError.__str__


def strategy_named(name: str) -> Strategy:
    """Return a strategy by its key or by its usual name, however spaced and capitalised.

    >>> strategy_named("Regroup first").key
    'regroup_first'
    """
    plain = plain_name(name)
    for strategy in STRATEGIES:
        if plain in {strategy.key, plain_name(strategy.name)}:
            return strategy
    msg = f"there is no strategy called “{name}”"
    raise UnknownStrategyError(msg, remedy=f"Choose one of: {', '.join(_BY_KEY)}.")


def plain_name(name: str) -> str:
    """Return a name in the form of a key: lower case, single underscores, no other characters."""
    return "_".join("".join(sign if sign.isalnum() else " " for sign in name.lower()).split())
