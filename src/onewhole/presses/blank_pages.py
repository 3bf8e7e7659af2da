"""A page as it comes out of the printer, before anybody wrote on it: grey pictures to lay photos over."""

from datetime import UTC, datetime
from math import ceil
from typing import Final

import numpy as np
import pypdfium2
from numpy.typing import NDArray

from onewhole.presses.pdf import press
from onewhole.writers.printed import Printed

#: Rows of pixels, 0 black and 255 white.
GreyPixels = NDArray[np.uint8]
#: Pixels a millimetre.
SCALE: Final = 4
_POINT_MM: Final = 25.4 / 72
#: Points too few to be seen, so that no rounding makes a pixel more.
_HAIR: Final = 1e-3
_WHEN: Final = datetime(2000, 1, 1, tzinfo=UTC)


def blank_pages(page: Printed) -> tuple[GreyPixels, ...]:
    """Return every page as rows of grey, 0 black and 255 white, at 4 pixels a millimetre.

    The corner of the paper is the corner of the picture: what :func:`~.page_map.page_map` says in hundredths
    of a millimetre, divided by 25, is its place in pixels. Raises PressError.
    """
    made = pypdfium2.PdfDocument(press(page.source, data=page.content, when=_WHEN))
    try:
        return tuple(_grey(one) for one in made)
    finally:
        made.close()


def _grey(page: pypdfium2.PdfPage) -> GreyPixels:
    """Draw a page on whole pixels, none of them stretched: less than one more at the right and below."""
    left, _, _, top = page.get_mediabox()
    wide, high = (ceil(side * SCALE * _POINT_MM - _HAIR) for side in page.get_size())
    right, bottom = (side / (SCALE * _POINT_MM) - _HAIR for side in (wide, high))
    page.set_mediabox(left, top - bottom, left + right, top)
    page.set_cropbox(left, top - bottom, left + right, top)
    bitmap = page.render(scale=SCALE * _POINT_MM, grayscale=True)
    try:
        seen: GreyPixels = np.array(bitmap.to_numpy(), dtype=np.uint8)
    finally:
        bitmap.close()
    return seen[..., 0] if seen.ndim == 3 else seen
