"""A page fitted on so many pages where that is asked for, and what came of it in words."""

import re
from collections.abc import Callable

from msgspec import Struct

from onewhole.presses.pdf import press_drawings
from onewhole.writers.printed import Printed

_SHARE = re.compile(rb'data-typst-label="fitted-(\d+)"')
#: With less than this share of the room, a working is better written on other paper; our own.
LITTLE = 60


class PageFit(Struct, frozen=True):
    """On how many pages a page was to fit, how many it takes, and the room it leaves.

    ``share`` is the room in hundredths of what the workings need, and None where the page fits as it is, with
    its boxes.
    """

    wanted: int
    pages: int
    share: int | None

    @property
    def fits(self) -> bool:
        """Say whether the page takes no more pages than it should."""
        return self.pages <= self.wanted

    @property
    def as_object(self) -> dict[str, object]:
        """Return it for JSON; ``room`` is in hundredths of what the workings need, at most all of it."""
        room = 100 if self.share is None else min(self.share, 100)
        return {"wanted": self.wanted, "pages": self.pages, "room": room, "boxes": self.share is None}

    @property
    def told(self) -> str:
        """Return what came of it in a sentence or two.

        >>> PageFit(1, 2, 75).told
        'It does not fit on 1 page: 2 pages are the least, with 75 % of the room that the workings need.'
        """
        if self.share is None:
            return f"It fits on {_pages(self.wanted)} with all its boxes."
        room = "all the room" if self.share >= 100 else f"{self.share} % of the room"
        first = (
            f"It fits on {_pages(self.pages)} without boxes"
            if self.fits
            else f"It does not fit on {_pages(self.wanted)}: {_pages(self.pages)} are the least"
        )
        after = " Let them be written on other paper." if self.share < LITTLE else ""
        return f"{first}, with {room} that the workings need.{after}"


class Fitted(Struct, frozen=True):
    """A page as it is printed; ``fit`` is None where nothing was to be fitted.

    ``drawn`` are its drawings where it had to be drawn for that, and empty where it had not.
    """

    page: Printed
    fit: PageFit | None = None
    drawn: tuple[bytes, ...] = ()


def fitted(made: Callable[[int | None], Printed], wanted: int | None) -> Fitted:
    """Return a page that is made for a number of pages, or for all its room.

    It stays as it is where it fits so. Raises PressError.
    """
    whole = made(None)
    if wanted is None:
        return Fitted(whole)
    drawn = tuple(press_drawings(whole.source, data=whole.content))
    if len(drawn) <= wanted:
        return Fitted(whole, PageFit(wanted, len(drawn), None), drawn)
    closer = made(wanted)
    drawn = tuple(press_drawings(closer.source, data=closer.content))
    share = next(int(found[1]) for page in drawn if (found := _SHARE.search(page)))
    return Fitted(closer, PageFit(wanted, len(drawn), share), drawn)


def _pages(count: int) -> str:
    return "1 page" if count == 1 else f"{count} pages"
