"""The places for answers, cut out of a picture: every one of the same size, whatever the picture."""

from typing import Final

import cv2
import numpy as np
from msgspec import Struct

from onewhole.presses.paper.closer import FINE
from onewhole.presses.paper.found_papers import Matrix
from onewhole.presses.paper.matching import SCALE, LaidPage, seen_through
from onewhole.presses.paper.seen_marks import Grey
from onewhole.sheets.page_map import AnswerBox, PageBox

#: Picture elements of every cut place: 60 by 24 millimetres at 4 a millimetre.
WIDE, HIGH = 240, 96
#: White paper comes out at about this.
PAPER: Final = 245
#: A frame is printed along the edge of a place that has no line; so much of it is left out, in millimetres.
FRAME: Final = 0.7
#: Light changes more slowly than over so many picture elements; ink does not.
_LIGHT: Final = 31


class CutCell(Struct, frozen=True, eq=False):
    """The place for the answer to a problem as a picture: 96 rows of 240, 0 black, about 245 white paper.

    ``finer`` is the same with twice as many rows and columns, for a closer look; only answers have it.
    """

    label: str
    crop: Grey
    finer: Grey | None = None

    def png(self) -> bytes:
        """Return it as a file."""
        done, file = cv2.imencode(".png", self.crop)
        assert done, "a grey picture can be written as PNG"
        return file.tobytes()


def cut_cell(grey: Grey, page: LaidPage, cell: AnswerBox) -> CutCell:
    """Cut out the place for an answer."""
    framed = not cell.line and not cell.windows
    around, frame = page.around(cell.box), FRAME if framed else 0.0
    crops = (crop_of(grey, around, cell.box, frame, fine) for fine in (1, FINE))
    return CutCell(cell.label, *crops)


def crop_of(grey: Grey, to_picture: Matrix, box: PageBox, frame: float = 0.0, fine: int = 1) -> Grey:
    """Return a box of a page as a picture of 240 by 96 on evenly white paper.

    ``to_picture`` takes millimetres of the page to picture elements. A box of 60 by 24 millimetres fills it;
    a larger one is made smaller; a smaller one stands in its middle on white, without what is printed around
    it, and without so many millimetres of its edge. It has ``fine`` times as many rows and columns.
    """
    wide, high = box.width / 100 - 2 * frame, box.height / 100 - 2 * frame
    scale = min(SCALE, WIDE / wide, HIGH / high)
    across, down = min(WIDE, round(wide * scale)), min(HIGH, round(high * scale))
    left, top = box.left / 100 + frame, box.top / 100 + frame
    x, y = (WIDE - across) // 2 * fine, (HIGH - down) // 2 * fine
    across, down = across * fine, down * fine
    place = np.array([[wide / across, 0, left], [0, high / down, top], [0, 0, 1]])
    crop = np.full((HIGH * fine, WIDE * fine), PAPER, np.uint8)
    seen = seen_through(grey, to_picture @ place, across, down)
    crop[y : y + down, x : x + across] = evenly_lit(seen, fine)
    return crop


def evenly_lit(grey: Grey, fine: int = 1) -> Grey:
    """Return a picture of paper as if light fell evenly on it; the light is looked at without its detail."""
    high, wide = grey.shape
    usual = cv2.resize(grey, (wide // fine, high // fine), interpolation=cv2.INTER_AREA) if fine > 1 else grey
    size = min(_LIGHT, *(side // 2 * 2 - 1 for side in usual.shape))
    paper = cv2.medianBlur(cv2.dilate(usual, np.ones((7, 7), np.uint8)), max(3, size))
    paper = cv2.GaussianBlur(paper, (0, 0), 6)
    if fine > 1:
        paper = cv2.resize(paper, (wide, high), interpolation=cv2.INTER_LINEAR)
    lit = grey.astype(np.float32) * (PAPER / np.maximum(paper, 1).astype(np.float32))
    return np.clip(np.rint(lit), 0, 255).astype(np.uint8)
