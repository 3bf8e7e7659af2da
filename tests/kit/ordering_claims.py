"""What a sentence about numbers that are put in order claims, read back to exact values."""

import re
from collections.abc import Callable
from fractions import Fraction

from onewhole.statements.statement import Ordering
from tests.kit.heard import Heard

Reads = Callable[[Heard, tuple[str, ...]], bool]

_BETWEEN = re.compile(
    r"(, then |, which is the same amount as | is less than | is greater than | equals |, )"
)
_HOLDS: dict[str, Callable[[Fraction, Fraction], bool]] = {
    " is less than ": lambda one, other: one < other,
    " is greater than ": lambda one, other: one > other,
    " equals ": lambda one, other: one == other,
}


def _asked(heard: Heard) -> Ordering:
    assert isinstance(heard.item.statement, Ordering)
    return heard.item.statement


def _read(heard: Heard, words: str) -> tuple[list[Fraction], list[str]]:
    """Read amounts in a row, and what is said between them."""
    pieces = _BETWEEN.split(words)
    return [heard.amount(piece) for piece in pieces[::2]], pieces[1::2]


def _run(found: list[Fraction], whole: list[Fraction]) -> bool:
    """Say whether amounts stand one after another in a row: a long row is told in more than one sentence."""
    ends = range(len(whole) - len(found) + 1)
    return any(whole[at : at + len(found)] == found for at in ends)


def _given(heard: Heard, words: str) -> bool:
    """Numbers of the problem, as they were given, with nothing but commas between them."""
    amounts, between = _read(heard, words)
    return set(between) <= {", "} and _run(amounts, list(heard.given))


def _listed(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _given(heard, groups[-1])


def _from(*, falling: bool) -> Reads:
    return lambda heard, groups: _asked(heard).falling is falling and _given(heard, groups[0])


def _in_order(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Numbers of the problem stand as they do in order, and those that are said to be equal are."""
    amounts, between = _read(heard, groups[-1])
    wanted = sorted(heard.given, reverse=_asked(heard).falling)
    pairs = zip(amounts, between, amounts[1:], strict=False)
    alike = all((one == other) is ("same" in said) for one, said, other in pairs)
    return alike and set(between) <= {", then ", ", which is the same amount as "} and _run(amounts, wanted)


def _two(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Two of the numbers of the problem are compared, and rightly."""
    amounts, between = _read(heard, groups[0])
    one, other = amounts
    return set(amounts) <= set(heard.given) and _HOLDS[between[0]](one, other)


ORDERING_CLAIMS: dict[str, Reads] = {
    r"put these in order, from least to greatest: (.+)": _from(falling=False),
    r"put these in order, from greatest to least: (.+)": _from(falling=True),
    r"now (?:it says|we have) (.+)": _listed,
    r"(.+)": _listed,
    r"(?:so the order is|in number .+?, the order is|then|it is the same amount as) (.+)": _in_order,
    r"so (.+ (?:is|equals) .+)": _two,
}
