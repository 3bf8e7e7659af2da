"""What a sentence about rounding claims, checked by the amount and the unit alone, by dividing with a rest.

Nothing here knows how a number is worked: the neighbors are what is left when the rest is taken off, and one
unit more.
"""

from collections.abc import Callable
from fractions import Fraction

from onewhole.statements.rounding import Rounding
from tests.kit.heard import Heard
from tests.kit.spoken_reading import unsay

Reads = Callable[[Heard, tuple[str, ...]], bool]

_COUNTED = {
    Fraction(10) ** power: name
    for power, name in enumerate(
        ("whole numbers", "tens", "hundreds", "thousands", "ten thousands", "hundred thousands", "millions")
    )
} | {Fraction(1, 10): "tenths", Fraction(1, 100): "hundredths"}


def _asked(heard: Heard) -> Rounding:
    assert isinstance(heard.item.statement, Rounding)
    return heard.item.statement


def _ends(heard: Heard) -> tuple[Fraction, Fraction]:
    asked = _asked(heard)
    rest = asked.number.value % asked.to.size
    return asked.number.value - rest, asked.number.value - rest + asked.to.size


def _is_number(heard: Heard, words: str) -> bool:
    return heard.amount(words) == _asked(heard).number.value


def _counts_by(heard: Heard, groups: tuple[str, ...]) -> bool:
    asked = _asked(heard)
    return asked.to.mark != "" or _COUNTED[asked.to.size] == groups[0]


def _middle(heard: Heard, groups: tuple[str, ...]) -> bool:
    low, high = _ends(heard)
    middle = heard.amount(groups[0])
    return middle - low == high - middle


def _side(*, past: bool) -> Reads:
    def reads(heard: Heard, groups: tuple[str, ...]) -> bool:
        low, high = _ends(heard)
        number, middle = heard.amount(groups[0]), (low + high) / 2
        return _is_number(heard, groups[0]) and (number > middle if past else number < middle)

    return reads


def _apart(heard: Heard, groups: tuple[str, ...]) -> bool:
    near, nearer, far, other = map(heard.amount, groups)
    number = _asked(heard).number.value
    return near < far and abs(number - nearer) == near and abs(number - other) == far


def _tie(heard: Heard, groups: tuple[str, ...]) -> bool:
    far, *ends = map(heard.amount, groups)
    number = _asked(heard).number.value
    low, high = _ends(heard)
    return ends == [low, high][: len(ends)] and number - low == far == high - number


def _as_far(heard: Heard, groups: tuple[str, ...]) -> bool:
    low, high = _ends(heard)
    return _before(heard, groups) and low + high == 2 * _asked(heard).number.value


def _rounded(heard: Heard, amount: Fraction) -> bool:
    """The nearer end; of two as near the larger."""
    low, high = _ends(heard)
    number = _asked(heard).number.value
    return amount == (low if number - low < high - number else high)


def _gives(heard: Heard, groups: tuple[str, ...]) -> bool:
    number, result = groups[-2:]
    return _is_number(heard, number) and _rounded(heard, heard.amount(result))


def _reads(heard: Heard, groups: tuple[str, ...]) -> bool:
    read = unsay(groups[0])
    asked = _asked(heard)
    return isinstance(read, Rounding) and read.to == asked.to and read.number.value == asked.number.value


def _stays(heard: Heard, groups: tuple[str, ...]) -> bool:
    there = _ends(heard)[0] == heard.amount(groups[0])
    return there and all(_is_number(heard, group) for group in groups)


def _after(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _is_number(heard, groups[0]) and heard.amount(groups[1]) == _ends(heard)[0]


def _before(heard: Heard, groups: tuple[str, ...]) -> bool:
    return heard.amount(groups[0]) == _ends(heard)[1]


def _from_end(heard: Heard, groups: tuple[str, ...]) -> bool:
    far, end = map(heard.amount, groups)
    return end in _ends(heard) and abs(_asked(heard).number.value - end) == far


def _nearer(heard: Heard, groups: tuple[str, ...]) -> bool:
    low, high = _ends(heard)
    return low + high != 2 * _asked(heard).number.value and _rounded(heard, heard.amount(groups[0]))


def _every(*claims: tuple[int, Reads]) -> Reads:
    """Read several claims of one sentence: each takes so many of its groups."""

    def reads(heard: Heard, groups: tuple[str, ...]) -> bool:
        rest = list(groups)
        return all(holds(heard, tuple(rest.pop(0) for _ in range(count))) for count, holds in claims)

    return reads


_AFTER = r"(.+) comes after (.+) and before (.+)"
_APART = r"it is (.+) from (.+) and (.+) from (.+)"

ROUNDING_CLAIMS: dict[str, Reads] = {
    r"(?:now )?(round .+)": _reads,
    r"number .+(?:: | is )(round .+)": _reads,
    r"written the usual way, this is (.+)": lambda heard, groups: _is_number(heard, groups[0]),
    rf"count by (.+): {_AFTER}": _every((1, _counts_by), (2, _after), (1, _before)),
    r"count by (.+): (.+) comes after (.+)": _every((1, _counts_by), (2, _after)),
    r"count by (.+)": _counts_by,
    _AFTER: _every((2, _after), (1, _before)),
    r"(.+) comes after (.+)": _after,
    r"it comes before (.+)": _before,
    r"halfway is (.+), and (.+) is past it": _every((1, _middle), (1, _side(past=True))),
    r"halfway is (.+), and (.+) is not that far": _every((1, _middle), (1, _side(past=False))),
    r"halfway is (.+)": _middle,
    r"(.+) is past it": _side(past=True),
    r"(.+) is not that far": _side(past=False),
    rf"{_APART}, so (.+) is nearer": _every((4, _apart), (1, _nearer)),
    rf"{_APART}": _apart,
    r"it is (.+) from (.+), so (.+) is nearer": _every((2, _from_end), (1, _nearer)),
    r"it is (.+) from (.+)": _from_end,
    r"(?:so )?(.+) is nearer": _nearer,
    r"it is exactly halfway: (.+) from (.+) and from (.+)": _tie,
    r"it is (.+) from (.+) and from (.+)": _tie,
    r"it is exactly halfway: (.+) from (.+)": _tie,
    r"it is as far from (.+)": _as_far,
    r"(.+) is exactly (.+?)(?:, so it stays)?": _stays,
    r"(?:so |in number .+, )?(.+) is about (.+)": _gives,
    r"(?:so |in number .+, )?(.+) equals (.+)": _gives,
}
