"""What the four marks in the corners of a printed page say: which printed version, and which page of it."""

from collections.abc import Collection
from hashlib import sha256
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.sheets.document import Sheet
from onewhole.sheets.writing import write_sheet

#: The corners in the order of the marks: top left, top right, bottom right, bottom left.
CORNERS: Final = 4
#: The marks of one corner: a quarter of the thousand that there are.
DIGITS: Final = 250
#: A page with marks has so many pages at most; so many versions are told apart.
MOST_MARKED: Final = 25
KEYS: Final = DIGITS ** (CORNERS - 1) // MOST_MARKED
#: What each corner's digit counts for in the check; none has a factor in common with 250, so that one wrong
#: digit always changes the sum.
_WEIGHTS: Final = (1, 3, 7, 9)
#: Raised when answers come to stand elsewhere on paper: what was printed before is another version then.
LAYOUT: Final = 5


class MarksError(InputError):
    """Marks that do not belong together, or are none of a page of ours."""


class PageMarks(Struct, frozen=True):
    """What the marks of a page say: the ``key`` of the printed version, and the number of the page from 1.

    Raises MarksError for a key or a page that no marks can say.
    """

    key: int
    page: int

    def __post_init__(self) -> None:
        """Refuse what cannot be said."""
        if not 0 <= self.key < KEYS:
            raise MarksError(f"{self.key} is the key of no page", remedy=f"Use 0 to {KEYS - 1}.")
        if not 1 <= self.page <= MOST_MARKED:
            raise MarksError(
                f"Page {self.page} cannot have marks",
                remedy=f"Marks tell {MOST_MARKED} pages apart: print fewer problems, or without marks.",
            )


def page_key(sheet: Sheet) -> int:
    """Return the key of a sheet as it is printed: of its words and every setting that it is laid out by.

    In which further languages there is a page for home changes nothing on the pupils' page.

    >>> from onewhole.sheets.reading import read_sheet
    >>> page_key(read_sheet("1. 52 - 27")) == page_key(read_sheet("1. 52 - 28"))
    False
    """
    laid_out = replace(sheet, header=replace(sheet.header, home=None))
    text = f"{LAYOUT}\n{write_sheet(laid_out)}"
    return int.from_bytes(sha256(text.encode("utf-8", "surrogatepass")).digest()) % KEYS


def corner_marks(says: PageMarks) -> tuple[int, ...]:
    """Return the four marks that say it, in the order of the corners.

    The marks of the first corner are 0 to 249, those of the second 250 to 499, and so on: whichever way a
    page is turned, a mark tells its corner. What is left of each is a digit in base 250: the first is a
    check, the others are the key times 25 and the page.

    >>> corner_marks(PageMarks(key=140, page=1))
    (152, 250, 514, 750)
    """
    number = says.key * MOST_MARKED + says.page - 1
    digits = (number // DIGITS**2, number // DIGITS % DIGITS, number % DIGITS)
    check = -sum(weight * digit for weight, digit in zip(_WEIGHTS[1:], digits, strict=True)) % DIGITS
    return tuple(corner * DIGITS + digit for corner, digit in enumerate((check, *digits)))


def read_corners(marks: Collection[int]) -> PageMarks:
    """Return what the marks of a page say, in whichever order they were found.

    Of three marks the fourth follows; nothing is left to check them by then, but that the key is a known
    one. Raises MarksError when a corner is there twice, more than one is missing, a mark is none of the
    thousand, or the check says that one of the four is wrong.

    >>> read_corners([152, 250, 514, 750]) == read_corners([514, 750, 152]) == PageMarks(key=140, page=1)
    True
    >>> read_corners([152, 250, 515, 750])
    Traceback (most recent call last):
    ...
    onewhole.sheets.page_marks.MarksError: These marks do not belong together. Take the picture again.
    """
    found = {mark // DIGITS: mark % DIGITS for mark in marks}
    missing = set(range(CORNERS)) - set(found)
    if len(found) != len(marks) or len(missing) > 1 or set(found) - set(range(CORNERS)):
        raise MarksError("These are not the marks of one page", remedy="Show all four corners of the page.")
    rest = -sum(_WEIGHTS[corner] * digit for corner, digit in found.items()) % DIGITS
    if missing:
        (corner,) = missing
        found[corner] = rest * pow(_WEIGHTS[corner], -1, DIGITS) % DIGITS
    elif rest:
        raise MarksError("These marks do not belong together", remedy="Take the picture again.")
    key, page = divmod((found[1] * DIGITS + found[2]) * DIGITS + found[3], MOST_MARKED)
    return PageMarks(key, page + 1)
