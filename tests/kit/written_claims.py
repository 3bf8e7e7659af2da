"""What a sentence about a written product or a long division claims, checked by place value alone.

Nothing here goes from column to column. What is carried to a digit is how often its place fits into the
product of all digits to the right of it; what is divided at a place is the number up to that place, less the
quotient so far times the divisor, found by dividing the whole number at once.
"""

import re
from collections.abc import Iterator
from fractions import Fraction

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Quotient, Times, quantities
from onewhole.statements.statement import Question
from tests.kit.column_claims import COLUMN_CLAIMS, PLACE, PLACES, factors, written_at_the_end
from tests.kit.dividing_claims import DIVIDING_CLAIMS
from tests.kit.heard import COUNTS, Heard, Reads
from tests.kit.product_claims import PRODUCT_CLAIMS

#: The places of an amount of money by their own names.
_MONEY = {"dollars": Fraction(1), "dimes": Fraction(1, 10), "cents": Fraction(1, 100)}
_PLACE = f"{PLACE}|{'|'.join(_MONEY)}"


def _size(place: str) -> Fraction:
    return _MONEY[place] if place in _MONEY else PLACES[place]


def _factors(heard: Heard) -> tuple[Quantity, Quantity]:
    assert isinstance(heard.item.statement, Question)
    assert isinstance(heard.item.statement.asked, Times)
    return factors(heard.item.statement.asked)


def _steps(heard: Heard) -> Iterator[tuple[int, int, int, bool]]:
    """Yield every digit fact: how often, which digit, what is carried to it, and whether it is the last."""
    above, below = (number.parts for number in _factors(heard))
    for times in {int(digit) for digit in str(below)}:
        for place in range(len(str(above))):
            carried = above % 10**place * times // 10**place
            yield times, above // 10**place % 10, carried, place == len(str(above)) - 1


def digit_multiplied(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A digit of the lower number times one of the upper, with what is carried to it."""
    times, digit, product, *more = (COUNTS[said] for said in groups if said)
    carried, total = more or (0, product)
    fits = times * digit == product and product + carried == total
    return fits and any(step[:3] == (times, digit, carried) for step in _steps(heard))


def digit_below(heard: Heard, groups: tuple[str, ...]) -> bool:
    """One digit alone is written where nothing is carried on."""
    return any(times * digit + up == COUNTS[groups[0]] < 10 for times, digit, up, _ in _steps(heard))


def digit_and_carried(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A digit is written and the tens are carried to the next digit."""
    stays, up = map(COUNTS.__getitem__, groups)
    return any(
        times * digit + carried == 10 * up + stays and up and not last
        for times, digit, carried, last in _steps(heard)
    )


def product_ends(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Both digits are written at the left end of a row, or of the sum of all rows."""
    return written_at_the_end(heard, groups) or any(
        times * digit + carried == COUNTS[groups[0]] >= 10 and last
        for times, digit, carried, last in _steps(heard)
    )


def next_digit(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The digit of the lower number with its place: two tens."""
    below = _factors(heard)[1]
    count, size = _counted(groups[0])
    digits = enumerate(reversed(str(below.parts)))
    finest = Fraction(1, 10**below.ladder.after)
    return any(count == int(digit) > 0 and size == 10**place * finest for place, digit in digits)


def first_digit(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Nothing is multiplied by the places to the right of it: they are zeros."""
    below = _factors(heard)[1]
    _, size = _counted(groups[0])
    return next_digit(heard, groups) and not below.value % size


def zeros_first(heard: Heard, groups: tuple[str, ...]) -> bool:
    """As many zeros as places stand to the right of some digit of the lower number."""
    below = _factors(heard)[1].parts
    return any(digit != "0" and at == COUNTS[groups[0]] for at, digit in enumerate(reversed(str(below))))


def places_together(heard: Heard, groups: tuple[str, ...]) -> bool:
    """All digits after both points."""
    return COUNTS[groups[0]] == sum(number.ladder.after for number in _factors(heard))


def pointed(heard: Heard, groups: tuple[str, ...]) -> bool:
    """One of the numbers has a point."""
    return not groups and any(number.ladder.after for number in _factors(heard))


def _divided(heard: Heard) -> tuple[Fraction, int]:
    """Return the number that is divided, in its own units, and the divisor."""
    assert isinstance(heard.item.statement, Question)
    asked = heard.item.statement.asked
    assert isinstance(asked, Quotient)
    assert isinstance(asked.left, Quantity)
    assert isinstance(asked.right, Quantity)
    return asked.left.parts / Fraction(10) ** asked.left.ladder.after, asked.right.parts


def _have(heard: Heard, size: Fraction) -> int:
    """Return how many of a place are divided there: the number down to it, less what was shared before."""
    number, by = _divided(heard)
    return int(number // size - 10 * by * (number // (10 * size) // by))


def begins_with(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The first digits that make as much as the divisor, or the ones."""
    count, size = _counted(groups[0])
    number, by = _divided(heard)
    return count == number // size and (size == 1 or (count >= by > number // (10 * size)))


def _counted(said: str) -> tuple[int, Fraction]:
    """Read how many of a place there are."""
    for place in (*PLACES, *_MONEY):
        for name in (place, place.removesuffix("s")):
            count = said.removesuffix(f" {name}")
            if count != said and count in COUNTS:
                return COUNTS[count], _size(place)
    raise KeyError(said)


def goes(heard: Heard, groups: tuple[str, ...]) -> bool:
    """So many times fits into what is there, and once more does not."""
    digit, by, product, more, again, have = map(COUNTS.__getitem__, groups)
    fits = digit * by == product <= have < more * again == product + by
    return fits and by == _divided(heard)[1] and any(_have(heard, size) == have for size in PLACES.values())


def written_over(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The digit of the quotient in a place, and its product with the divisor."""
    digit, product = COUNTS[groups[0]], COUNTS[groups[2]]
    number, by = _divided(heard)
    return digit == number / by // _size(groups[1]) % 10 and product == digit * by


def zero_over(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Fewer of a place are there than the divisor says."""
    have, by, zero = (COUNTS[groups[at]] for at in (0, 1, 2))
    return not zero and have < by == _divided(heard)[1] and _have(heard, _size(groups[3])) == have


def leaves(heard: Heard, groups: tuple[str, ...]) -> bool:
    """What is there, less the product, is less than the divisor."""
    have, product, left = map(COUNTS.__getitem__, groups)
    by = _divided(heard)[1]
    there = any(_have(heard, size) == have for size in PLACES.values())
    return there and have - product == left == have % by


def brought_down(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A digit of the number, or a zero behind its last one."""
    number, _ = _divided(heard)
    return any(number // size % 10 == COUNTS[groups[0]] for size in PLACES.values())


def goes_on(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The quotient does not end with the ones, or what is divided has digits behind a point, even zeros."""
    number, by = _divided(heard)
    asked = heard.item.statement
    assert isinstance(asked, Question)
    pointed = any(one.ladder.after for one in quantities(asked.asked))
    return not groups and (pointed or (number / by).denominator > 1)


def now_there(heard: Heard, groups: tuple[str, ...]) -> bool:
    """What is divided in the next place."""
    count, size = _counted(groups[0])
    return _have(heard, size) == count


def remains(heard: Heard, groups: tuple[str, ...]) -> bool:
    """What is left in the last place that is divided."""
    left, by = map(COUNTS.__getitem__, groups)
    number, divisor = _divided(heard)
    return by == divisor > left and any(number // size % by == left for size in PLACES.values())


#: What can be claimed of numbers that are multiplied in columns; their rows are added in columns too.
MULTIPLIED_CLAIMS: dict[str, Reads] = {
    **COLUMN_CLAIMS,
    **{said: holds for said, holds in PRODUCT_CLAIMS.items() if "as much as" in said},
    r"(\S+) times (\S+) is (\S+)(?:, and the (\S+) above make (\S+))?": digit_multiplied,
    r"the point comes at the end": pointed,
    r"write (\S+) below": digit_below,
    r"write (\S+) below and (\S+) above the next digit": digit_and_carried,
    r"nothing stands to the left, so write (.+)": product_ends,
    r"next, multiply by (.+)": next_digit,
    r"multiply by (.+)": first_digit,
    r"first write (\S+) zeros? below": zeros_first,
    r"the two numbers together have (\S+) digits? after the point": places_together,
    r"so the answer has (\S+) digits? after the point": places_together,
}
#: What can be claimed of a long division.
LONG_DIVISION_CLAIMS: dict[str, Reads] = {
    **{said: holds for said, holds in DIVIDING_CLAIMS.items() if "divided by" in said},
    r"begin with (.+)": begins_with,
    r"(\S+) times (\S+) is (.+), and (\S+) times (\S+) is more than (.+)": goes,
    rf"write (\S+) over the ({_PLACE}) and (.+) below": written_over,
    rf"(.+) is less than (.+), so write (zero) over the ({_PLACE})": zero_over,
    r"(.+) take away (.+) leaves (.+)": leaves,
    r"write the point above": goes_on,
    r"bring down the (\S+)": brought_down,
    r"now there (?:is|are) (.+)": now_there,
    r"(.+) is less than (.+), so it is the remainder": remains,
}


def _taken_of(heard: Heard) -> set[tuple[int, int]]:
    """Return numerator and denominator of what is taken: as they are written, and in simplest form."""
    asked = heard.item.statement
    assert isinstance(asked, Question)
    (found,) = (
        one
        for one in quantities(asked.asked)
        if one.ladder.style in {Style.MIXED, Style.DECIMAL} and not one.ladder.mark
    )
    return {(found.parts, int(1 / found.ladder.finest)), found.value.as_integer_ratio()}


def _part_named(heard: Heard, groups: tuple[str, ...]) -> bool:
    """What is taken is the fraction that is said, and a larger piece is made of so many small ones."""
    amounts = [heard.amount(one) for one in groups]
    return amounts[0] == amounts[1] == Fraction(*next(iter(_taken_of(heard))))


def _common_factor(heard: Heard, groups: tuple[str, ...]) -> bool:
    by, top, bottom = (int(heard.amount(one)) for one in groups)
    return (top, bottom) in _taken_of(heard) and top % by == 0 == bottom % by


def _tops(heard: Heard) -> set[Fraction]:
    return {Fraction(top) for top, _ in _taken_of(heard)}


def _shares(heard: Heard, groups: tuple[str, ...]) -> bool:
    """One part of the fraction that is taken is one of as many shares as its denominator says."""
    part, shares = heard.amount(groups[0]), heard.amount(groups[1])
    return part * shares == 1 and shares in {bottom for _, bottom in _taken_of(heard)}


def _often(words: str) -> set[Fraction]:
    """Return how often units are taken: the feet three times and the inches three times."""
    return {Fraction(COUNTS[count]) for count in re.findall(r"the [a-z ]+? ([a-z-]+) times", words)}


#: What can be claimed where a part of an amount is taken.
SHARE_CLAIMS = {
    **DIVIDING_CLAIMS,
    **PRODUCT_CLAIMS,
    r"(.+) of it is one of (.+) equal shares": _shares,
    r"take (the .+ times)": lambda heard, groups: _often(groups[0]) <= _tops(heard),
    r"that makes (.+) in all": lambda heard, groups: heard.stands(heard.amount(groups[0])),
    r"take (.+) of them": lambda heard, groups: heard.amount(groups[0]) in _tops(heard),
    r"as one fraction, (.+) is (.+)": _part_named,
    r"(.+) is a factor of (.+) and of (.+)": _common_factor,
    r"every (.+) make (one .+)": lambda heard, groups: heard.amount(groups[0]) == heard.amount(groups[1]),
}

#: What can be claimed by the key of a way.
WRITTEN_CLAIMS = {
    "multiply_in_columns": MULTIPLIED_CLAIMS,
    "long_division": LONG_DIVISION_CLAIMS,
    "share_then_times": SHARE_CLAIMS,
}
