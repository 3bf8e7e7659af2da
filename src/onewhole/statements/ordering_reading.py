"""Reading numbers to be put in order, and numbers in a row as a child writes them."""

import re
from collections.abc import Iterator

from onewhole.errors import OnewholeError
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.numerals import ReadNumber
from onewhole.statements.statement import FEWEST, MOST, NumberRow, Ordering, Relation
from onewhole.statements.tokens import ReadingError

_REMEDY = "Write for example: order 2/3, 1/2, 3/4."
_BEGINS = re.compile(r"\s*(?:put\s+in\s+)?order\b\s*", re.IGNORECASE)
_FROM = (
    r"from\s+(?:the\s+)?(?P<end>least|smallest|lowest|greatest|largest|biggest|highest)"
    r"(?:\s+to\s+(?:the\s+)?[a-z]+)?"
)
_BEFORE = re.compile(rf"(?:{_FROM}\s*)?:?\s*", re.IGNORECASE)
_AFTER = re.compile(rf"\s*,?\s*{_FROM}\s*\.?\s*\Z", re.IGNORECASE)
_FALLING = frozenset({"greatest", "largest", "biggest", "highest"})
#: What parts two numbers: a comma that is not inside a number, a semicolon, or a sign.
_BETWEEN = re.compile(r",(?![0-9]{3}(?![0-9]))|;|<|>|=")


def ordering(text: str, line: int, column: int, read: ReadNumber) -> Ordering | None:
    """Read numbers to be put in order; None where the line does not begin with "order".

    >>> from onewhole.statements.reading import read_quantity
    >>> ordering("order 2/3, 1/2 from greatest", 1, 1, read_quantity).falling
    True
    """
    begins = _BEGINS.match(text)
    if begins is None:
        return None
    text = text.rstrip().removesuffix(".")
    before = _BEFORE.match(text, begins.end())
    start = before.end() if before else begins.end()
    after = _AFTER.search(text, start)
    ends = [found["end"].lower() for found in (before, after) if found and found["end"]]
    numbers = text[start : after.start() if after else len(text)]
    parts, signs = _cut(numbers, line, column + start, read)
    if signs and any(sign is not None for sign in signs):
        msg = "a sign stands between numbers that are to be put in order"
        raise ReadingError(msg, line=line, column=column + start, remedy=_REMEDY)
    if not FEWEST <= len(parts) <= MOST:
        msg = f"{FEWEST} to {MOST} numbers can be put in order, and here stand {len(parts)}"
        remedy = "Put a comma and a blank between two numbers: order 345, 354, 435."
        raise ReadingError(msg, line=line, column=column, remedy=remedy)
    try:
        return Ordering(parts, any(end in _FALLING for end in ends))
    except OnewholeError as error:
        raise ReadingError(error.what, line=line, column=column, remedy=error.remedy) from error


def number_row(text: str, line: int, column: int, read: ReadNumber) -> NumberRow:
    """Read numbers in a row as an answer: 1/2, 2/3, 3/4 or 1/2 < 2/3 < 3/4. Raises ReadingError.

    >>> from onewhole.statements.reading import read_quantity
    >>> number_row("1/2 < 2/3 < 3/4", 1, 1, read_quantity).true
    True
    """
    parts, signs = _cut(text, line, column, read)
    written = tuple(sign for sign in signs if sign is not None)
    if written and len(written) < len(signs):
        msg = "here stand commas and signs between the numbers"
        raise ReadingError(msg, line=line, column=column, remedy="Write 1/2, 2/3, 3/4 or 1/2 < 2/3 < 3/4.")
    return NumberRow(parts, written)


def _cut(
    text: str, line: int, column: int, read: ReadNumber
) -> tuple[tuple[Quantity, ...], tuple[Relation | None, ...]]:
    """Read the numbers, and the signs between them: None for a comma."""
    pieces = tuple(_pieces(text))
    for piece, at in pieces:
        if not piece.strip():
            msg = "a number is missing between two commas or signs"
            raise ReadingError(msg, line=line, column=column + at, remedy=_REMEDY)
    parts = _with_one_unit(tuple(read(piece, line, column + at) for piece, at in pieces))
    marks = [found.group() for found in _BETWEEN.finditer(text)]
    return parts, tuple(Relation(mark) if mark in {"<", ">", "="} else None for mark in marks)


def _with_one_unit(parts: tuple[Quantity, ...]) -> tuple[Quantity, ...]:
    """Take 4 in for a number of inches beside 5 3/8 in, and for a measure by itself."""
    marks = {part.ladder.mark for part in parts if part.ladder.style is not Style.MEASURE}
    return tuple(
        whole(part.parts, part.ladder.mark)
        if part.ladder.style is Style.MEASURE and len(part.counts) == 1 and part.ladder.mark in marks
        else part
        for part in parts
    )


def _pieces(text: str) -> Iterator[tuple[str, int]]:
    """Return the texts between commas and signs, and where each begins."""
    start = 0
    for found in _BETWEEN.finditer(text):
        yield text[start : found.start()], start
        start = found.end()
    yield text[start:], start
