"""Expected information: Shannon's entropy in whole numbers, to a millionth of a bit."""

from collections.abc import Sequence
from functools import cache
from operator import mul

#: Logarithms are kept in this many binary places; the table has one row for each step of the first ones.
PLACES, STEPS = 32, 10
MILLION = 1_000_000


def bits(number: int) -> int:
    """Return the logarithm to base 2 of a whole number from 1 up, in millionths, less than one of them off.

    >>> bits(8), bits(10)
    (3000000, 3321928)
    """
    if number < 1:
        msg = f"{number} has no logarithm"
        raise ValueError(msg)
    whole = number.bit_length() - 1
    scaled = number << PLACES >> whole
    step, rest = divmod(scaled - (1 << PLACES), 1 << (PLACES - STEPS))
    low, high = _table()[step : step + 2]
    return (((whole << PLACES) + low + ((high - low) * rest >> (PLACES - STEPS))) * MILLION) >> PLACES


@cache
def _table() -> tuple[int, ...]:
    """Return the logarithms of 1, 1 + 1/1024 and so on up to 2, by squaring again and again."""
    found = []
    for step in range(1 << STEPS):
        number, total = (1 << PLACES) + (step << (PLACES - STEPS)), 0
        for place in range(PLACES - 1, -1, -1):
            number = number * number >> PLACES
            if number >> (PLACES + 1):
                number >>= 1
                total += 1 << place
        found.append(total)
    return (*found, 1 << PLACES)


def doubt(weights: Sequence[int]) -> int:
    """Return the entropy of shares in proportion to weights, in millionths of a bit.

    >>> doubt((1, 1, 2))
    1500000
    """
    whole = sum(weights)
    return sum(weight * (bits(whole) - bits(weight)) for weight in weights if weight) // whole


def expected(weights: Sequence[int], rows: Sequence[Sequence[int]]) -> int:
    """Return the information, in millionths of a bit, that one answer is expected to give about the rows.

    ``weights`` are the odds of the rows, each row the chances of every answer under it (all up to a factor of
    its own). Never below 0, and 0 where all rows are alike.

    >>> expected((1, 1), ((1, 0), (0, 1))), expected((1, 1), ((1, 3), (2, 6)))
    (1000000, 0)
    """
    whole = sum(weights)
    shares = [weight * MILLION // whole for weight in weights]
    even = [[chance * MILLION // sum(row) for chance in row] for row in rows]
    mixed = [sum(map(mul, shares, chances)) for chances in zip(*even, strict=True)]
    total = 0
    for share, row in zip(shares, even, strict=True):
        if share:
            total += share * sum(
                chance * (bits(chance * MILLION) - bits(both))
                for chance, both in zip(row, mixed, strict=True)
                if chance
            )
    return max(0, total // (MILLION * MILLION))
