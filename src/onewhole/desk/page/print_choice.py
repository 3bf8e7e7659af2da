"""What is printed of a page in one go: which of its pages, in which order, how many copies."""

import re
from enum import Enum

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.sheets.header import Header
from onewhole.sheets.settings import MARKS, setting_named

#: So many copies of a page at most, and so many of all together: a file of more takes too long to make.
MOST_COPIES, MOST_TOGETHER = 60, 150

_ONE = re.compile(r"(?:([0-9]{1,3})\s*(?:x\s+|\s))?\s*([a-z]+)")


class SheetPage(Enum):
    """What is printed of a sheet, in the order in which it is used; its value names its file."""

    PUPIL = "pupil"
    KEY = "key"
    WORKINGS = "workings"
    FAMILY = "family"


class PrintPart(Struct, frozen=True):
    """A page that is printed, and how many copies of it."""

    page: SheetPage
    copies: int = 1


class PrintChoice(Struct, frozen=True):
    """The pages of one print job in their order, and whether both sides of the paper are printed.

    With ``both_sides`` each page begins on a new sheet of paper. ``fit`` is the setting of a sheet that says
    on how many pages the problems go, ``marks`` the one for marks in its corners; empty, each sheet has its
    own. With ``each_pupil`` the pupils' page is printed once for each pupil, with the code on it. Raises
    InputError for no page, a page that is there twice, too many copies, and for what is no such setting.

    >>> PrintChoice((PrintPart(SheetPage.PUPIL, 27), PrintPart(SheetPage.KEY))).told
    '27 pupil, key'
    """

    parts: tuple[PrintPart, ...] = tuple(map(PrintPart, SheetPage))
    both_sides: bool = False
    fit: str = ""
    marks: str = ""
    each_pupil: bool = False

    def __post_init__(self) -> None:
        """Refuse what no printer should be asked."""
        if not self.parts:
            raise InputError("Nothing is chosen to be printed", remedy="Choose one page at least.")
        if len({part.page for part in self.parts}) < len(self.parts):
            raise InputError("A page is chosen twice", remedy="Name it once, with the copies that you want.")
        if any(not 1 <= part.copies <= MOST_COPIES for part in self.parts):
            raise InputError(f"A page is printed 1 to {MOST_COPIES} times", remedy="Give another number.")
        if sum(part.copies for part in self.parts) > MOST_TOGETHER:
            raise InputError(
                f"These are more than {MOST_TOGETHER} copies together", remedy="Print in two goes."
            )
        self.of(Header())

    def of(self, header: Header) -> Header:
        """Return the settings of a sheet as it is printed."""
        for name, said in (("fit", self.fit), (MARKS, self.marks)):
            header = setting_named(name).read(header, said) if said else header
        return header

    def copies(self, page: SheetPage) -> int:
        """Return how many copies of a page are printed; 0 for a page that is not."""
        return next((part.copies for part in self.parts if part.page is page), 0)

    @property
    def told(self) -> str:
        """Return the pages as :func:`read_order` reads them."""
        return ", ".join(
            f"{one.copies} {one.page.value}" if one.copies > 1 else one.page.value for one in self.parts
        )


def read_order(typed: str) -> tuple[PrintPart, ...]:
    """Read pages in the order in which they are wanted, each with its copies in front.

    Raises InputError for what is no page.

    >>> read_order("2 pupil, key") == (PrintPart(SheetPage.PUPIL, 2), PrintPart(SheetPage.KEY))
    True
    """
    return tuple(_part(one) for one in typed.split(","))


def _part(typed: str) -> PrintPart:
    found = _ONE.fullmatch(" ".join(typed.lower().split()))
    names = [page.value for page in SheetPage]
    if found is None or found[2] not in names:
        raise InputError(
            f"“{typed.strip()[:40]}” is no page to print",
            remedy=f"Write such as: 27 pupil, key. The pages are: {', '.join(names)}.",
        )
    return PrintPart(SheetPage(found[2]), int(found[1] or 1))
