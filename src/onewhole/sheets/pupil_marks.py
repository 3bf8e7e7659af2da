"""Whose page it is: two small marks that stand for the pupil's code."""

from collections.abc import Collection, Iterable
from hashlib import sha256
from typing import Final

from onewhole.sheets.open_marks import COUNT

#: So many marks stand side by side, at the foot of the page.
PUPIL_MARKS: Final = 2


def pupil_marks(code: str) -> tuple[int, ...]:
    """Return the two marks of a code, from the left; capitals do not matter.

    They hold a number up to a million, a digest of the code. A class has some dozens of codes, so a mark that
    was found wrongly stands for none of them.

    >>> pupil_marks("K03")
    (119, 251)
    """
    number = (
        int.from_bytes(sha256(_plain(code).encode("utf-8", "surrogatepass")).digest()) % COUNT**PUPIL_MARKS
    )
    return divmod(number, COUNT)


def pupil_marked(marks: Iterable[int], codes: Collection[str]) -> str | None:
    """Return the code that two marks stand for, among the codes of a class; None where it is not one alone.

    >>> pupil_marked(pupil_marks("k03"), ["K01", "K02", "K03"])
    'K03'
    >>> pupil_marked((7, 7), ["K01", "K02", "K03"])
    """
    found = tuple(marks)
    fits = [code for code in codes if pupil_marks(code) == found]
    return fits[0] if len(fits) == 1 else None


def _plain(code: str) -> str:
    return code.strip().casefold()
