"""Three numbers or measures in order. The standards compare two; to order more is common practice."""

from collections.abc import Iterator, Sequence

from onewhole.sheets.spaces.amounts import MOST_COMMON, decimals, fractions, numbers_of_length
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

USUAL_DIGITS = 4
ASKED = ("order {0}, {1}, {2}", "order {0}, {1}, {2} from greatest to least")


def ordering(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield whole numbers, fractions whose common pieces can be written, decimals, measures in two units."""
    digits = wishes.digits or USUAL_DIGITS
    long, short = numbers_of_length(digits), numbers_of_length(digits - 1)
    yield from _asked(long, long, short)
    fine = [one for one in wishes.denominators if MOST_COMMON % one == 0]
    parts = tuple(part for one in fine for part in fractions(one, simplest=True))
    yield from _asked(parts, parts, parts)
    tenths, hundredths = decimals(1, 1), decimals(2, 1)
    yield from _asked(tenths, hundredths, hundredths)
    for large, small, ratio in (("ft", "in", 12), ("lb", "oz", 16), ("h", "min", 60)):
        counts, rest = range(1, wishes.largest + 1), range(1, ratio)
        both = tuple(f"{count} {large} {more} {small}" for count in counts for more in rest)
        whole = tuple(f"{count} {large}" for count in counts)
        yield from _asked(whole, both, tuple(f"{count} {small}" for count in range(ratio + 1, 4 * ratio)))


def of_decimals(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield tenths, hundredths and thousandths, so that the longest is not always the most: 5.NBT.A.3.b."""
    tenths, hundredths, thousandths = (decimals(places, min(2, wishes.largest)) for places in (1, 2, 3))
    yield from _asked(tenths, hundredths, thousandths)
    yield from _asked(hundredths, thousandths, thousandths)


def _asked(*numbers: Sequence[object]) -> Iterator[ProblemForm]:
    yield from (ProblemForm(asked, numbers) for asked in ASKED)
