"""What a sentence about two numbers that are compared claims, read back to exact values."""

from collections.abc import Callable
from fractions import Fraction

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import quantities
from onewhole.statements.statement import Comparison, Ordering
from tests.kit.column_claims import PLACES
from tests.kit.heard import COUNTS, Heard, sides
from tests.kit.spoken_reading import unsay_expression

Reads = Callable[[Heard, tuple[str, ...]], bool]


def _pieces_in_each(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Both fractions of one line have so many pieces, and the pieces are in this order of size."""
    count = COUNTS[groups[0]]
    return any(
        isinstance(says, Comparison | Ordering)
        and all(number.amounts[-1] == count for side in sides(says) for number in quantities(side))
        for says in heard.lines
    )


def _half(sign: Callable[[Fraction, Fraction], bool]) -> Reads:
    """So many of so many pieces are less than, more than or just half of them, and so is the fraction."""

    def reads(heard: Heard, groups: tuple[str, ...]) -> bool:
        top, bottom, number = COUNTS[groups[0]], COUNTS[groups[1]], heard.amount(groups[2])
        holds = sign(Fraction(top), Fraction(bottom, 2)) and sign(number, Fraction(1, 2))
        return holds and number == Fraction(top, bottom)

    return reads


def _needed(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Each of two numbers needs just so much to make one whole."""
    first, by, one, second, other = map(heard.amount, groups)
    return first + by == one == second + other


def _more_beside(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Both have as many wholes, and one of them so much more than these."""
    wholes, number, more = map(heard.amount, groups)
    return wholes + more == number and {wholes, number} <= set(heard.given)


def _both_wholes(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Both numbers of the problem have so many wholes."""
    return {given // 1 for given in heard.given} == {heard.amount(groups[0])}


def _more_pieces(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A fraction has more pieces than another, and its own pieces are larger."""
    more, less = (unsay_expression(words) for words in groups)
    assert isinstance(more, Quantity)
    assert isinstance(less, Quantity)
    larger = more.ladder.finest > less.ladder.finest
    return more.amounts[-1] > less.amounts[-1] and larger and {more, less} <= set(heard.numbers)


def _nearer(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A number is the nearer of those on its line to one whole."""
    near, one = map(heard.amount, groups)
    both = [
        {number.value for side in sides(says) for number in quantities(side)}
        for says in heard.lines
        if isinstance(says, Comparison)
    ]
    return any(near in pair and near == max(pair) and near < one for pair in both)


def _same_places(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Two numbers that are compared are alike as far as these places."""
    sizes = [PLACES.get(name, Fraction(1)) for name in groups if name]
    pairs = [
        [number.value for side in sides(says) for number in quantities(side)]
        for says in heard.lines
        if isinstance(says, Comparison)
    ]
    return any(len({value // min(sizes) for value in pair}) == 1 for pair in pairs)


def _decides(sign: Callable[[Fraction, Fraction], bool]) -> Reads:
    """Both counts stand on a line, or one is "no" of the unit; and they are in this order."""

    def reads(heard: Heard, groups: tuple[str, ...]) -> bool:
        counts = [None if said.startswith("no ") else heard.amount(said) for said in groups]
        known = [count for count in counts if count is not None]
        return all(map(heard.stands, known)) and sign(*(count or Fraction(0) for count in counts))

    return reads


#: What can be claimed of two numbers that are compared, as words with gaps, and what must then be so.
COMPARING_CLAIMS: dict[str, Reads] = {
    r"there (?:is|are) (.+) pieces? in each": _pieces_in_each,
    r"the (.+?)(?: and the (.+))? are the same": _same_places,
    r"write both numbers with as many pieces: (.+)": _pieces_in_each,
    r"(.+) is less than half of (.+), so (.+) is less than one half": _half(lambda one, other: one < other),
    r"(.+) is more than half of (.+), so (.+) is more than one half": _half(lambda one, other: one > other),
    r"(.+) is half of (.+), so (.+) is one half": _half(lambda one, other: one == other),
    r"(.+) needs (.+) to make (.+), and (.+) needs (.+)": _needed,
    r"[a-z-]+ are (?:smaller|larger) than [a-z-]+, so (.+) is nearer to (.+)": _nearer,
    r"both have (.+), and (.+) has (.+) more": _more_beside,
    r"both have (.+), so compare the fractions": _both_wholes,
    r"(.+) has more pieces than (.+), and [a-z-]+ are larger than [a-z-]+": _more_pieces,
    r"(.+) is less than (one .+)": lambda heard, groups: heard.amount(groups[0]) < heard.amount(groups[1]),
    r"(.+) is more than nothing": lambda heard, groups: heard.amount(groups[0]) > 0 in heard.given,
    r"(.+) is (one .+)": lambda heard, groups: heard.amount(groups[0]) == heard.amount(groups[1]),
    r"(.+) (?:is|are) more than (.+), and that decides": _decides(lambda one, other: one > other),
    r"(.+) (?:is|are) fewer than (.+), and that decides": _decides(lambda one, other: one < other),
}
