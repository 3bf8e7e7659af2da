"""Strips: each whole a long strip, its parts side by side."""

from fractions import Fraction

from onewhole.pictures.limits import MOST_PARTS, PAGE, PicturePaper
from onewhole.pictures.paper import Form, cut_box, drawn
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box
from onewhole.working.working import Working


def strips(working: Working, paper: PicturePaper = PAGE) -> Picture:
    """Draw a working in strips: one scene a line. Raises NotDrawnError (see :mod:`~.limits`).

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> len(strips(work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST)).scenes)
    6
    """
    return drawn(working, FORM, paper)


def _part(place: Box, cell: int, per: int, _across: int) -> Box:
    return cut_box(place, cell, per, per)


def _narrow(per: int, _across: int, width: Fraction) -> Fraction:
    return width / per


FORM = Form(
    kind=PictureKind.STRIPS,
    most_parts=MOST_PARTS,
    widest=Fraction(84),
    tall=Fraction(14),
    flat=True,
    whole=lambda place: place,
    part=_part,
    narrow=_narrow,
)
