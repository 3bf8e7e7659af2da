"""The problems that a page may be composed of, listed one at a time: a second road beside the arrays."""

from collections.abc import Iterator
from itertools import product

from onewhole.problems.difficulty import LARGE_DENOMINATOR
from onewhole.sheets.candidates import LikePair, ProblemType


def belongs(one: LikePair) -> bool:
    """Whether a problem belongs on a page on mixed numbers.

    A difference takes pieces from a mixed or a whole number and leaves something; a sum has pieces in both
    numbers and at least one whole.
    """
    if one.taken:
        left = (one.w1 - one.w2) * one.d + one.n1 - one.n2
        return one.w1 > 0 and one.n2 > 0 and left > 0
    return one.n1 > 0 and one.n2 > 0 and one.w1 + one.w2 > 0


def listed(denominators: tuple[int, ...], largest: int, *, taken: bool) -> Iterator[LikePair]:
    """Every problem of a space that belongs on a page, one after another."""
    wholes = range(largest + 1)
    for d in denominators:
        for counts in product(wholes, range(d), wholes, range(d)):
            one = LikePair(*counts, d, taken)
            if belongs(one):
                yield one


def typed_space() -> list[str]:
    """Every problem of the small space as it is typed: mixed numbers up to 4 wholes, the grade's pieces."""
    return [
        f"{_mixed(one.w1, one.n1, one.d)} {'-' if one.taken else '+'} {_mixed(one.w2, one.n2, one.d)}"
        for taken in (True, False)
        for one in listed((2, 3, 4, 5, 6, 8, 10, 12), 4, taken=taken)
    ]


def _mixed(wholes: int, top: int, bottom: int) -> str:
    parts = (str(wholes) if wholes or not top else "", f"{top}/{bottom}" if top else "")
    return " ".join(filter(None, parts))


def type_of(one: LikePair) -> ProblemType:
    """What a problem asks for."""
    if not one.taken:
        return ProblemType.FILLED if one.n1 + one.n2 >= one.d else ProblemType.APART
    if one.n1 >= one.n2:
        return ProblemType.ENOUGH
    if one.n1:
        return ProblemType.OPENED
    return ProblemType.FROM_WHOLE if one.w2 else ProblemType.PART_FROM_WHOLE


def level_of(one: LikePair) -> int:
    """The points of a problem's difficulty that come from the numbers, whatever strategy is taught."""
    mixed_number = bool(one.w1 and one.n1) or bool(one.w2 and one.n2)
    kind = type_of(one)
    return 4 * kind.regroups + 2 * kind.whole_on_top + mixed_number + (one.d > LARGE_DENOMINATOR)
