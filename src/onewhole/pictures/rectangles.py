"""Rectangles: each whole cut both ways, so that cutting each part again shows as cutting across."""

from fractions import Fraction

from onewhole.pictures.limits import MOST_PARTS_RECTANGLE, PAGE, PicturePaper
from onewhole.pictures.paper import Form, cut_box, drawn
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.working.working import Working


def rectangles(working: Working, paper: PicturePaper = PAGE) -> Picture:
    """Draw a working in rectangles: one scene a line. Raises NotDrawnError (see :mod:`~.limits`).

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> len(rectangles(work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST)).scenes)
    6
    """
    return drawn(working, FORM, paper)


def _narrow(_per: int, across: int, width: Fraction) -> Fraction:
    return width / across


FORM = Form(
    kind=PictureKind.RECTANGLES,
    most_parts=MOST_PARTS_RECTANGLE,
    widest=Fraction(54),
    tall=Fraction(2, 3),
    flat=False,
    whole=lambda place: place,
    part=cut_box,
    narrow=_narrow,
)
