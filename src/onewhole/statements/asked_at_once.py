"""Two things asked in one line, which are two problems: what to type in its place."""

import re
from math import lcm
from typing import NoReturn

from onewhole.statements.tokens import ReadingError

_DENOMINATOR = re.compile(r"\b(?:common|same|one|like|equal)\s+denominators?\b", re.IGNORECASE)
_FRACTION = re.compile(r"(\d{1,4})\s*/\s*(\d{1,4})\b")
_TWO_BLANKS = re.compile(r"=\s*[?_]+\s*/\s*\d+\s*=\s*[?_]")
#: Pieces finer than these are not proposed: as fine as a denominator may be.
_FINEST = 1000


def refuse_two_at_once(text: str, line: int, column: int) -> None:
    """Refuse a line that asks for several fractions at once, and say which problems to type.

    Raises ReadingError with the problems: fractions that are to be given one denominator, and one fraction
    that is to be cut in two ways.

    >>> try:
    ...     refuse_two_at_once("1/3 and 1/4 with one denominator", 1, 1)
    ... except ReadingError as refused:
    ...     print(refused.remedy)
    Type each as a problem of its own: 1/3 = ?/12, and below it 1/4 = ?/12.
    """
    if named := _DENOMINATOR.search(text):
        _refuse(_with_one_denominator(text), line, column + named.start())
    if two := _TWO_BLANKS.search(text):
        _refuse(_cut_twice(text), line, column + two.start())


def _refuse(problems: tuple[str, ...], line: int, column: int) -> NoReturn:
    msg = "a problem asks for one number, and here two are asked for"
    listed = ", and below it ".join(problems)
    each = "Type each as a problem of its own" if len(problems) > 1 else "Type the one that is to be changed"
    raise ReadingError(msg, line=line, column=column, remedy=f"{each}: {listed}.")


def _with_one_denominator(text: str) -> tuple[str, ...]:
    """Return a problem for each fraction whose denominator is not the common one; examples where none is."""
    found = [(int(top), int(bottom)) for top, bottom in _FRACTION.findall(text)]
    common = lcm(*(bottom for _, bottom in found))
    problems = tuple(f"{top}/{bottom} = ?/{common}" for top, bottom in found if bottom != common)
    return problems if 0 < common <= _FINEST and problems else ("1/3 = ?/12", "1/4 = ?/12")


def _cut_twice(text: str) -> tuple[str, ...]:
    first, *others = (side.strip() for side in text.split("="))
    return tuple(f"{first} = {other}" for other in others if other)
