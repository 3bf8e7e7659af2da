"""A hard fact inside a line, worked beside it so that nobody is stuck on 16 - 9 or 103 - 87.

Thinking of the addition for a difference, and making a ten, are common practice, no source.
"""

from enum import Enum

from msgspec import Struct

from onewhole.number.quantity import whole
from onewhole.statements.expression import Expression, minus, plus, value

TEN = 10
EASY = 10


class Way(Enum):
    """How a hard fact is found."""

    THINK_ADDITION = "think_addition"
    MAKE_TEN = "make_ten"


class Fact(Struct, frozen=True):
    """A fact and the true equalities that lead to it, as (left, right) pairs; the last gives the result.

    >>> len(hard_difference(16, 9).steps)
    2
    """

    asked: Expression
    way: Way
    steps: tuple[tuple[Expression, Expression], ...]

    def __post_init__(self) -> None:
        """Refuse a step that is not true."""
        for left, right in self.steps:
            if value(left) != value(right):
                msg = "a step of a fact must be true"
                raise ValueError(msg)


def hard_difference(first: int, second: int) -> Fact | None:
    """Return the side calculation for ``first - second``; None where the difference is easy.

    A difference is hard when it crosses a ten. Up to 20 it goes down through ten; beyond, it counts up.

    >>> hard_difference(9, 4) is None
    True
    """
    if second < 1 or first <= EASY or first % TEN >= second % TEN:
        return None
    asked = minus(whole(first), whole(second))
    if first < 2 * TEN and second < TEN:
        down = first - TEN
        steps = (
            (minus(whole(first), whole(down)), whole(TEN)),
            (minus(whole(TEN), whole(second - down)), whole(first - second)),
        )
        return Fact(asked, Way.MAKE_TEN, steps)
    up = -second % TEN
    near = second + up
    rest = first - near
    found: list[tuple[Expression, Expression]] = [(plus(whole(second), whole(up)), whole(near))]
    if rest > 0:
        found.append((plus(whole(near), whole(rest)), whole(first)))
        found.append((plus(whole(up), whole(rest)), whole(first - second)))
    return Fact(asked, Way.THINK_ADDITION, tuple(found))


def hard_sum(first: int, second: int) -> Fact | None:
    """Return the side calculation for ``first + second`` where it crosses a ten, or None.

    >>> hard_sum(8, 7).way.value
    'make_ten'
    """
    if first % TEN + second % TEN <= TEN or not first % TEN:
        return None
    up = -first % TEN
    steps = (
        (plus(whole(first), whole(up)), whole(first + up)),
        (plus(whole(first + up), whole(second - up)), whole(first + second)),
    )
    return Fact(plus(whole(first), whole(second)), Way.MAKE_TEN, steps)
