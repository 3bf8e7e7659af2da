"""The process that draws the pages of a PDF for `decoding`."""

from collections.abc import Iterator
from typing import Final

import pypdfium2
from PIL.Image import Image

from onewhole.findings.in_pictures import Unread
from onewhole.presses.limited import limit_time
from onewhole.presses.paper.sending import MOST_PAGES, Refused, send_pages

#: A page is drawn at so many along its longer side, whatever size it says that it has: A4 at 300 dpi.
DRAWN: Final = 3508


def draw_for_parent() -> None:
    """Send the pages in grey."""
    send_pages(_drawn)


def _drawn(content: bytes, first: int, seconds: int) -> Iterator[tuple[int, Image] | int]:
    limit_time(seconds)
    try:
        file = pypdfium2.PdfDocument(content)
        there = len(file)
    except pypdfium2.PdfiumError as error:
        locked = "password" in str(error).lower()
        raise Refused(Unread.LOCKED if locked else Unread.DAMAGED) from error
    for number in range(first, min(there, MOST_PAGES) + 1):
        limit_time(seconds)
        try:
            page = file[number - 1]
            drawn = page.render(scale=DRAWN / max(page.get_size()), grayscale=True, may_draw_forms=False)
            picture = drawn.to_pil()
        except pypdfium2.PdfiumError as error:
            raise Refused(Unread.DAMAGED) from error
        yield number, picture.convert("L")
        page.close()
    yield there
