"""Three numbers or measures in order. The standards compare two; to order more is common practice."""

from collections.abc import Iterator, Sequence
from math import gcd

from onewhole.sheets.spaces.amounts import MOST_COMMON, decimals, fractions, numbers_of_length
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

USUAL_DIGITS = 4
ASKED = ("order {0}, {1}, {2}", "order {0}, {1}, {2} from greatest to least")
SAME_WHOLES = ("order {0} {1}, {0} {2}, {0} {3}", "order {0} {1}, {0} {2}, {0} {3} from greatest to least")


def ordering(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield whole numbers, fractions whose common pieces can be written, decimals, measures in two units."""
    digits = wishes.digits or USUAL_DIGITS
    long, short = numbers_of_length(digits), numbers_of_length(digits - 1)
    yield from _asked(long, long, short)
    yield from of_fractions(wishes)
    tenths, hundredths = decimals(1, 1), decimals(2, 1)
    yield from _asked(tenths, hundredths, hundredths)
    for large, small, ratio in (("ft", "in", 12), ("lb", "oz", 16), ("h", "min", 60)):
        counts, rest = range(1, wishes.largest + 1), range(1, ratio)
        both = tuple(f"{count} {large} {more} {small}" for count in counts for more in rest)
        whole = tuple(f"{count} {large}" for count in counts)
        yield from _asked(whole, both, tuple(f"{count} {small}" for count in range(ratio + 1, 4 * ratio)))


def of_fractions(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield fractions below one whose common pieces can be written."""
    parts = _parts(wishes)
    yield from _asked(parts, parts, parts)


def of_mixed(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield mixed numbers with the same wholes and with others, and fractions above one beside them."""
    parts, wholes = _parts(wishes), range(1, wishes.largest + 1)
    both = tuple(f"{count} {part}" for count in wholes for part in parts)
    over_one = tuple(
        f"{top}/{bottom}"
        for bottom in _fine(wishes)
        for top in range(bottom + 1, 2 * bottom)
        if gcd(top, bottom) == 1
    )
    yield from (ProblemForm(asked, (wholes, parts, parts, parts)) for asked in SAME_WHOLES)
    yield from _asked(both, both, both)
    yield from _asked(over_one, both, parts)


def _parts(wishes: Wishes) -> tuple[str, ...]:
    return tuple(part for bottom in _fine(wishes) for part in fractions(bottom, simplest=True))


def _fine(wishes: Wishes) -> list[int]:
    """Return the denominators whose common pieces can be written."""
    return [bottom for bottom in wishes.denominators if MOST_COMMON % bottom == 0]


def of_decimals(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield tenths, hundredths and thousandths, so that the longest is not always the most: 5.NBT.A.3.b."""
    tenths, hundredths, thousandths = (decimals(places, min(2, wishes.largest)) for places in (1, 2, 3))
    yield from _asked(tenths, hundredths, thousandths)
    yield from _asked(hundredths, thousandths, thousandths)


def _asked(*numbers: Sequence[object]) -> Iterator[ProblemForm]:
    yield from (ProblemForm(asked, numbers) for asked in ASKED)
