"""Pupils' pages with marks in their corners: their maps, and how they look on paper at any fineness."""

import io
from fractions import Fraction
from functools import cache
from math import ceil

import numpy as np
import pypdfium2
from numpy.typing import NDArray

from onewhole.desk.page.print_pages import fitted_pupil_page
from onewhole.presses.page_map import page_map
from onewhole.sheets.page_map import PageMap
from onewhole.sheets.page_marks import page_key
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.printed import Printed
from tests.kit.pages import made, text_of

MM = 72 / 25.4
#: The line for an answer stands this part of its box over the lower edge.
LINE_UP = Fraction(1, 6)
#: Three sheets, each another way on paper: answers over lines with boxes to work in; windows, fitted; large
#: print with places to draw in.
LINES = """corner marks: lines

1. 7 2/6 - 3 5/6
2. 7 2/6 = 6 ?/6
# Which is more?
3. 5/6 ? 7/8
4. 5 ft 2 in - 2 ft 7 in
5. 5 1/3 - 2 2/3 | Room 12 has 5 1/3 strips of kite paper. A kite takes 2 2/3 strips. How much is left?
6. ? + 2 1/3 = 5
7. 9 ft - 2 ft
"""
WINDOWS = "corner marks: windows\npaper: a4\nfit: 1\n"
LARGE = """corner marks: windows
paper: a4
print: large
picture: strip

1. 7 2/6 - 3 5/6
2. 3/4 = ?/12
3. 12.3 - 4.56
"""


def texts() -> dict[str, str]:
    """The three sheets by a name."""
    return {"lines": LINES, "windows": WINDOWS + text_of("room12"), "large": LARGE}


@cache
def page(text: str) -> Printed:
    """The pupils' page of a sheet, as it is printed."""
    return fitted_pupil_page(WorkedSheet(read_sheet(text))).page


@cache
def mapped(text: str) -> PageMap:
    """Where everything stands on it."""
    return page_map(page(text), page_key(read_sheet(text)))


def seen(pdf: bytes, per_mm: float) -> list[NDArray[np.uint8]]:
    """Every page in grey, 0 black, at so many pixels a millimetre, none of them stretched."""
    document = pypdfium2.PdfDocument(io.BytesIO(pdf))
    found = []
    for one in document:
        width, height = one.get_size()
        wide, high = (ceil(side * per_mm / MM - 0.01) * MM / per_mm - 0.001 for side in (width, height))
        one.set_mediabox(0, height - high, wide, height)
        one.set_cropbox(0, height - high, wide, height)
        pixels = np.array(one.render(scale=per_mm / MM, grayscale=True).to_numpy(), dtype=np.uint8)
        found.append(pixels[..., 0] if pixels.ndim == 3 else pixels)
    return found


@cache
def printed(text: str) -> bytes:
    """The PDF of a sheet's page."""
    return made(page(text))
