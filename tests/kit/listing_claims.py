"""What a sentence about factors and multiples claims, checked by multiplying and dividing."""

import re
from collections.abc import Callable
from fractions import Fraction

from onewhole.statements.listing import Listing
from tests.kit.heard import Heard

Reads = Callable[[Heard, tuple[str, ...]], bool]


def _asked(heard: Heard) -> Listing:
    asked = heard.item.statement
    assert isinstance(asked, Listing)
    return asked


def _numbers(heard: Heard, words: str) -> list[Fraction]:
    return [heard.amount(one) for one in re.split(r", | and ", words)]


def _not_into(heard: Heard, groups: tuple[str, ...]) -> bool:
    number = heard.amount(groups[1])
    return number == _asked(heard).number.value and all(
        (number / one).denominator > 1 for one in _numbers(heard, groups[0])
    )


def _range_not_into(heard: Heard, groups: tuple[str, ...]) -> bool:
    first, last, number = map(heard.amount, groups)
    return first < last and all((number / one).denominator > 1 for one in range(int(first), int(last) + 1))


def _product(heard: Heard, groups: tuple[str, ...]) -> bool:
    first, second, made = map(heard.amount, groups)
    return first * second == made == _asked(heard).number.value


def _counted(heard: Heard, groups: tuple[str, ...]) -> bool:
    asked = _asked(heard)
    return asked.most is not None and tuple(map(heard.amount, groups)) == (
        asked.number.value,
        asked.most.value,
    )


def _beyond(heard: Heard, groups: tuple[str, ...]) -> bool:
    asked = _asked(heard)
    assert asked.most is not None
    beyond = heard.amount(groups[0])
    return (beyond / asked.number.value).denominator == 1 and (
        asked.most.value < beyond <= asked.most.value + asked.number.value
    )


def _all(heard: Heard, groups: tuple[str, ...]) -> bool:
    number, found = _asked(heard), set(_numbers(heard, groups[0]))
    if number.most is None:
        return found == {Fraction(by) for by in range(1, 201) if not number.number.value % by}
    step, most = int(number.number.value), int(number.most.value)
    return found == {Fraction(one) for one in range(1, most + 1) if not one % step}


LISTING_CLAIMS: dict[str, Reads] = {
    r"the numbers from (.+) to (.+) do not go into (.+)": _range_not_into,
    r"(.+) (?:do|does) not go into (.+)": _not_into,
    r"(.+) times (.+) is (.+)": _product,
    r"so (.+) times (.+) equals (.+)": _product,
    r"count on by (.+) up to (.+)": _counted,
    r"the next one is (.+), and that is too many": _beyond,
    r"(?:so|in number .+?,)? ?they are (.+)": _all,
    r"(?:now it says|now we have) (.+)": _all,
    r"list the (factors|multiples) of (.+)": lambda heard, groups: (
        groups[0] == _asked(heard).sort.value
        and heard.amount(groups[1].split(" to ")[0]) == _asked(heard).number.value
    ),
}
