"""On which ladder a number can be shared out: as it is, or with smaller units below it."""

from collections.abc import Iterator
from math import gcd

from onewhole.number.ladder import TEN, Ladder, Style, decimal, measure, mixed
from onewhole.number.quantity import Quantity
from onewhole.number.unit import CENT_PLACES, DOLLAR, MEASURES

#: Quotients of decimals have so many places after the point at most. Thousandths are the smallest places of
#: grade 5 (5.NBT.A.3, CCSSM 2010); beyond them pieces are written.
MOST_PLACES = 3


def to_share(number: Quantity, by: int) -> Quantity:
    """Return a number on a ladder on which it can be shared among so many, every rung written.

    A decimal gets more places, a measure smaller units, until it comes out even. Where it never does, a
    measure keeps a remainder in the first units in which each share gets something, money one in cents, and a
    decimal is written with pieces. Whole numbers and pieces stay as they are: pieces can be cut.

    >>> from onewhole.number.quantity import whole
    >>> to_share(Quantity(measure("ft"), (5,)), 2).counts
    (5, 0)
    """
    match number.ladder.style:
        case Style.PLACES | Style.MIXED if number.ladder.mark != DOLLAR:
            return number
        case Style.MIXED:
            return number
        case Style.MEASURE:
            return _first(number, by, _with_smaller(number.ladder)) or number
        case Style.PLACES | Style.DECIMAL if number.ladder.mark == DOLLAR:
            return _in_dollars(number if even(number, by, number.ladder) else in_cents(number))
        case _:
            after = places_needed(number, by)
            return _in_pieces(number) if after is None else number.on(pointed(number, after))


def in_cents(money: Quantity) -> Quantity:
    """Write the places of dimes and cents too: what is left of dollars is changed into them."""
    return money.on(pointed(money, CENT_PLACES))


def _in_dollars(money: Quantity) -> Quantity:
    """Count all dollars as dollars: nobody shares out tens of them."""
    ones = len(money.ladder.units) - money.ladder.after - 1
    dollars = sum(count * TEN ** (ones - rung) for rung, count in enumerate(money.amounts[: ones + 1]))
    return Quantity(
        Ladder(money.ladder.style, money.ladder.units[ones:]), (dollars, *money.amounts[ones + 1 :])
    )


def places_needed(number: Quantity, by: int) -> int | None:
    """Return how many places after the point a number divided by a whole number has; None for too many.

    >>> places_needed(Quantity(decimal(1, 1), (0, 5)), 4), places_needed(Quantity(decimal(1, 1), (0, 5)), 3)
    (3, None)
    """
    after = range(number.ladder.after, MOST_PLACES + 1)
    return next((places for places in after if even(number, by, pointed(number, places))), None)


def cut(number: Quantity, by: int) -> int:
    """Return into how many parts each piece is cut so that all can be shared among so many; 1 for none.

    >>> cut(Quantity(mixed(6), (None, 8)), 12)
    3
    """
    return by // gcd(number.parts, by)


def _in_pieces(number: Quantity) -> Quantity:
    parts = (1 / number.ladder.finest).numerator
    wholes, pieces = divmod(number.parts, parts)
    return Quantity(mixed(parts, number.ladder.mark), (wholes or None, pieces))


def pointed(number: Quantity, after: int) -> Ladder:
    """Return the ladder of a number with so many places after the point, at least those that it has."""
    before = len(number.ladder.units) - number.ladder.after
    return decimal(before, max(after, number.ladder.after), number.ladder.mark)


def _with_smaller(ladder: Ladder) -> Iterator[Ladder]:
    """Yield the ladder of a measure, and then with one more smaller unit of the same kind each time."""
    units = list(ladder.units)
    yield ladder
    for unit in MEASURES:
        if unit.kind is ladder.kind and unit.size < units[-1].size and (units[-1].size / unit.size) % 1 == 0:
            units.append(unit)
            yield measure(*[one.mark for one in units])


def even(number: Quantity, by: int, ladder: Ladder) -> bool:
    """Say whether a number divided by a whole number comes out even on a ladder."""
    return (number.value / by / ladder.finest) % 1 == 0


def _first(number: Quantity, by: int, ladders: Iterator[Ladder] | tuple[Ladder, ...]) -> Quantity | None:
    """Return the number on the first ladder on which it comes out even, or else each share gets some."""
    every = tuple(ladders)
    whole_counts = next((one for one in every if even(number, by, one)), None)
    some = next((one for one in every if number.value / by >= one.finest), None)
    ladder = whole_counts or some
    return number.on(ladder) if ladder else None
