"""A strategy: named steps, and the problems they do not suit."""

from collections.abc import Callable
from enum import Enum

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.ladder import Ladder, Style
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.unsuited import Unsuited
from onewhole.working.way import NamedWay

#: So many places are short enough for a way that goes in jumps.
SHORT = 3


class Act(Enum):
    """What a strategy does with two numbers."""

    ADD = "add"
    SUBTRACT = "subtract"
    EITHER = "either"


class Step(Struct, frozen=True):
    """One named step: it takes a state and gives the next one."""

    key: str
    act: Callable[[PairState], PairState]


def anywhere(_: Ladder) -> bool:
    """Say that a strategy is used on every ladder."""
    return True


def short_numbers(ladder: Ladder) -> bool:
    """Say that numbers have three places at most, so that a way along the number line stays short.

    Common practice, no source: longer whole numbers and decimals are worked in columns.

    >>> from onewhole.number.ladder import mixed, places
    >>> short_numbers(places(3)), short_numbers(places(6)), short_numbers(mixed(6))
    (True, False, True)
    """
    return ladder.style not in {Style.PLACES, Style.DECIMAL} or len(ladder.units) <= SHORT


class Strategy(NamedWay, frozen=True):
    """A way to add or subtract, as a class is taught it.

    ``unsuited`` gives the reason why a pair of numbers does not suit the strategy, or None. ``partner`` is
    the key of the strategy that a class taught this way uses for the other operation, or where this way does
    not suit. ``offered`` says on which ladders a teacher would use it; on others it is not offered, and still
    works where it was asked for. ``at_once`` says that three and more numbers are added at the same time.
    """

    act: Act
    partner: str
    steps: tuple[Step, ...]
    unsuited: Callable[[PairState], Unsuited | None]
    offered: Callable[[Ladder], bool] = anywhere
    at_once: bool = False

    def run(self, state: PairState) -> PairState:
        """Run the steps in order."""
        for step in self.steps:
            state = step.act(state)
        return state

    def with_step(self, key: str, act: Callable[[PairState], PairState]) -> "Strategy":
        """Return the strategy with one step replaced; KeyError when there is no step of that name."""
        if key not in {step.key for step in self.steps}:
            raise KeyError(key)
        steps = tuple(Step(key, act) if step.key == key else step for step in self.steps)
        return replace(self, steps=steps)


def fits(strategy: Strategy, *, taken: bool) -> bool:
    """Say whether a strategy is for this operation."""
    return strategy.act in {Act.EITHER, Act.SUBTRACT if taken else Act.ADD}
