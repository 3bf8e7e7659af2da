"""The text that the slots of the reading network tell, as a child would type it."""

from collections.abc import Sequence
from typing import Final

from msgspec import Struct

#: What may stand behind a number (``$`` stands before it): nothing, a word that is no unit known here, a
#: unit, or two units of a measure. The network's answer is a place in this list.
UNITS: Final = (
    *(
        "",
        "other",
        "$",
        "in",
        "ft",
        "yd",
        "lb",
        "oz",
        "h",
        "min",
        "s",
        "mi",
        "km",
        "m",
        "cm",
        "mm",
        "kg",
        "g",
    ),
    *("L", "mL", "gal", "qt", "pt", "cups", "tsp", "days", "ft in", "yd ft", "lb oz", "h min"),
)
#: The digit slots: whole, over, under, after the point; ten in a slot means that nothing stands there.
WHOLE, OVER, UNDER, AFTER = slice(0, 4), slice(4, 7), slice(7, 10), slice(10, 13)
SLOTS: Final = 13
NOTHING: Final = 10


class Slots(Struct, frozen=True):
    """One way to read a cell: a minus or none, a digit or nothing in each slot, a unit."""

    minus: bool
    digits: tuple[int, ...]
    unit: str

    @property
    def text(self) -> str:
        """Return the text, or nothing where no answer is written like this.

        >>> nothing = (NOTHING,) * 3
        >>> Slots(False, (7, 10, 10, 10, 2, 10, 10, 6, 10, 10, *nothing), "").text
        '7 2/6'
        >>> Slots(True, (1, 2, 10, 10, *nothing, *nothing, 0, 5, 10), "").text
        '-12.05'
        >>> Slots(False, (5, 10, 10, 10, 1, 1, 10, *nothing, *nothing), "ft in").text
        '5 ft 11 in'
        >>> Slots(False, (7, 10, 10, 10, 2, 10, 10, *nothing, *nothing), "").text
        ''
        """
        parts = [_run(self.digits[part]) for part in (WHOLE, OVER, UNDER, AFTER)]
        if None in parts:
            return ""
        whole, over, under, after = (part or "" for part in parts)
        first, _, second = self.unit.partition(" ")
        if second:
            found = f"{whole} {first} {over} {second}" if whole and over and not under + after else ""
        elif after:
            found = f"{whole}.{after}" if not over + under else ""
        elif over or under:
            found = f"{whole} {over}/{under}".strip() if over and under else ""
        else:
            found = whole
        if not found:
            return "-" if self.minus and not any(parts) and not self.unit else ""
        minus = "-" if self.minus else ""
        if self.unit == "$":
            return f"{minus}${found}"
        return minus + found + (f" {self.unit}" if self.unit not in {"", "other"} and not second else "")


def _run(digits: Sequence[int]) -> str | None:
    """Return the digits of a run as text, None where one stands behind an empty slot."""
    text = "".join(str(digit) if digit < NOTHING else " " for digit in digits).rstrip()
    return None if " " in text else text
