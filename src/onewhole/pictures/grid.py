"""The hundred grid: each whole a square of 10 columns; a column is a tenth, a small square a hundredth."""

from fractions import Fraction

from onewhole.pictures.limits import GRID_PARTS, PAGE, PicturePaper
from onewhole.pictures.paper import Form, cut_box, drawn
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Piece, Stroke
from onewhole.working.working import Working

TEN = 10


def grid(working: Working, paper: PicturePaper = PAGE) -> Picture:
    """Draw a working on hundred grids: one scene a line. Raises NotDrawnError (see :mod:`~.limits`).

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> len(grid(work(read_statement("3.45 - 1.27"), REGROUP_FIRST)).scenes)
    6
    """
    return drawn(working, FORM, paper)


#: In how many columns a square is cut into so many parts, so that each is made of whole small squares.
_ACROSS = {4: 2, 25: 5}


def _part(place: Box, cell: int, per: int, _across: int) -> Box:
    return cut_box(place, cell, per, _ACROSS.get(per, min(per, TEN)))


def _narrow(_per: int, _across: int, width: Fraction) -> Fraction:
    return width / TEN


def _ruled(name: str, place: Box, per: int) -> tuple[Piece, ...]:
    """Draw the square and its lines: columns, and rows too where hundredths are counted."""
    lines = [Piece(name, place)]
    right, foot = place.x + place.width, place.y + place.height
    for at in range(1, TEN):
        x = place.x + place.width * at / TEN
        lines.append(Piece(f"{name}-column-{at}", Stroke(x, place.y, x, foot)))
        if per > TEN or per in _ACROSS:
            y = place.y + place.height * at / TEN
            lines.append(Piece(f"{name}-row-{at}", Stroke(place.x, y, right, y)))
    return tuple(lines)


FORM = Form(
    kind=PictureKind.GRID,
    most_parts=max(GRID_PARTS),
    widest=Fraction(52),
    tall=Fraction(1),
    flat=False,
    whole=lambda place: place,
    part=_part,
    narrow=_narrow,
    parts=GRID_PARTS,
    ruled=_ruled,
)
