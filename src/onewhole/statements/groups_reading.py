"""Reading what is asked of a division in groups: 50 ÷ 8, groups needed; 50 ÷ 8, left over."""

import re
from collections.abc import Callable, Mapping
from types import MappingProxyType

from onewhole.errors import OnewholeError
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Expression, Quotient
from onewhole.statements.tokens import ReadingError
from onewhole.statements.whole_groups import GroupsAsk, WholeGroups

_DIVISION = "\N{DIVISION SIGN}"
REMEDY = (
    f"Write one of these: 50 {_DIVISION} 8, groups needed (7; also: up), 50 {_DIVISION} 8, full groups (6), "
    f"50 {_DIVISION} 8, left over (2)."
)
#: What a teacher may type behind a division, in English and in Spanish.
_SAID: Mapping[GroupsAsk, tuple[str, ...]] = MappingProxyType(
    {
        GroupsAsk.NEEDED: (
            *("groups needed", "how many groups are needed", "needed", "one more", "all in groups"),
            *("up", "round up", "rounded up"),
            *("grupos necesarios", "cuántos grupos hacen falta", "uno más", "hacia arriba"),
        ),
        GroupsAsk.FULL: (
            *("full groups", "full groups only", "how many full groups", "whole groups", "groups only"),
            *("whole groups only", "complete groups", "down", "round down", "rounded down"),
            *("grupos completos", "grupos llenos", "solo grupos completos", "hacia abajo"),
        ),
        GroupsAsk.LEFT: (
            *("left over", "leftover", "leftovers", "how many left over", "how many are left over"),
            *("what is left over", "remainder", "the remainder", "remainder only"),
            *("cuántos sobran", "sobran", "sobrante", "lo que sobra", "residuo", "el residuo"),
        ),
    }
)
_ASKS = MappingProxyType({words: asks for asks, said in _SAID.items() for words in said})
_LETTER = "[^\\W\\d_]"
#: Words behind a number at the end of a line; a comma or a semicolon says that they are no unit.
_ENDS = re.compile(
    rf"(?P<sides>.*\d(?:\s?{_LETTER}+(?=\s*[,;]))?)\s*(?:=\s*[?_]*\s*)?"
    rf"(?P<mark>[,;])?\s*¿?(?P<words>{_LETTER}[^\d,;|=]*)",
    re.DOTALL,
)
#: Signs that only divide, so that a line with one and with words behind a comma asks something of a division.
_DIVIDES = re.compile(r"\N{DIVISION SIGN}|\s[/:]\s")

#: How one side of a line is read, at its place.
ReadSide = Callable[[str, int, int], Expression]


def whole_groups(text: str, line: int, column: int, read: ReadSide) -> WholeGroups | None:
    """Read what is asked of whole numbers in groups; None where the line asks no such thing.

    A fraction such as 50/8 is the division too: behind it these words have no other meaning. Raises
    ReadingError.

    >>> from onewhole.statements.reading import read_expression
    >>> [
    ...     whole_groups(typed, 1, 1, read_expression).found.parts
    ...     for typed in ("50 / 8; up", "50 ÷ 8, full groups", "50/8 left over", "50 ÷ 8, hacia arriba.")
    ... ]
    [7, 6, 2, 7]
    """
    ends = _ENDS.fullmatch(text.strip())
    if ends is None:
        return None
    asks = _ASKS.get(" ".join(ends["words"].casefold().strip(" .?").split()))
    if asks is None:
        if ends["mark"] is None or _DIVIDES.search(ends["sides"]) is None:
            return None
        at = column + len(text) - len(text.lstrip()) + ends.start("words")
        msg = "it is not clear what is asked of this division"
        raise ReadingError(msg, line=line, column=at, remedy=REMEDY)
    number, by = _two(read(ends["sides"], line, column), line, column)
    try:
        return WholeGroups(number, by, asks)
    except OnewholeError as error:
        raise ReadingError(error.what, line=line, column=column, remedy=error.remedy) from error


def _two(says: Expression, line: int, column: int) -> tuple[Quantity, Quantity]:
    """Return how many things there are and how many are in a group. Raises ReadingError."""
    match says:
        case Quotient(Quantity() as number, Quantity() as by):
            return number, by
        case Quantity(counts=(None, int(top))) if not says.ladder.mark and says.ladder.denominator > 1:
            return whole(top), whole(says.ladder.denominator)
        case _:
            msg = "only one whole number divided by another is put in groups"
            raise ReadingError(msg, line=line, column=column, remedy=REMEDY)
