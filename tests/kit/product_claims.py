"""What a sentence about multiplying claims, checked by multiplying and adding the amounts that it names."""

import re
from collections.abc import Callable
from fractions import Fraction
from math import prod

from onewhole.statements.statement import meaning
from tests.kit.heard import COUNTS, Heard

Reads = Callable[[Heard, tuple[str, ...]], bool]


def _multiplied(heard: Heard, words: str) -> Fraction:
    return Fraction(prod(heard.amount(one) for one in words.split(" times ")))


def _turned(heard: Heard, groups: tuple[str, ...]) -> bool:
    one, other = (_multiplied(heard, words) for words in groups)
    return one == other == meaning(heard.item.statement)


def _product(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _multiplied(heard, groups[0]) == heard.amount(groups[1])


def _each_unit(heard: Heard, groups: tuple[str, ...]) -> bool:
    """All units are taken equally often: as often as one of the two numbers says."""
    often = {COUNTS[count] for count in re.findall(r"the [a-z ]+? ([a-z-]+) times", groups[0])}
    return len(often) == 1 and often <= set(heard.given)


def _jumps(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _multiplied(heard, " times ".join(groups)) == meaning(heard.item.statement)


def _split(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The parts make the number, which is one that the problem gives."""
    number = heard.amount(groups[0])
    parts = re.split(r",? and (?![a-z-]+ cents?\b)|, ", groups[1])
    return number in heard.given and sum(map(heard.amount, parts)) == number


def _same(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A number that the problem gives, by another name."""
    old, new = map(heard.amount, groups)
    return old == new and old in heard.given


def _cut(_: Heard, groups: tuple[str, ...]) -> bool:
    first, second, both = (COUNTS[words] for words in groups)
    return first * second == both


PRODUCT_CLAIMS: dict[str, Reads] = {
    r"(.+ times .+) is as much as (.+ times .+)": _turned,
    r"take (the .+ times)": _each_unit,
    r"that is (.+) jumps? of (.+)": _jumps,
    r"split (.+) into (.+)": _split,
    r"multiply each part by (.+)": lambda heard, groups: (
        groups[0] == "each part" or heard.amount(groups[0]) in heard.given
    ),
    r"a whole in (.+) parts, each cut into (.+), has (.+) parts": _cut,
    r"(.+ times .+) is (.+)": _product,
    r"(?:as one fraction, )?(.+) is (.+)": _same,
    r"that makes (.+) in all": lambda heard, groups: heard.amount(groups[0]) == meaning(heard.item.statement),
}
