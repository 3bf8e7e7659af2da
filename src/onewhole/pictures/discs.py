"""Discs: each whole a round, its parts equal sectors from the top on."""

from fractions import Fraction

from onewhole.pictures.limits import MOST_PARTS, PAGE, PicturePaper
from onewhole.pictures.paper import Form, drawn
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Wedge
from onewhole.working.working import Working


def discs(working: Working, paper: PicturePaper = PAGE) -> Picture:
    """Draw a working in discs: one scene a line. Raises NotDrawnError (see :mod:`~.limits`).

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> discs(work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST)).scenes[0].pieces[0].shape.sweep
    Fraction(1, 6)
    """
    return drawn(working, FORM, paper)


def _wedge(place: Box, cell: int, per: int, _across: int = 1) -> Wedge:
    x, y = place.x + place.width / 2, place.y + place.height / 2
    return Wedge(x, y, place.width / 2, Fraction(cell, per), Fraction(1, per))


def _round(place: Box) -> Wedge:
    return _wedge(place, 0, 1)


def _narrow(per: int, _across: int, width: Fraction) -> Fraction:
    """Return a width that the rim of a part is longer than: 3 diameters are less than the rim."""
    return 3 * width / per


FORM = Form(
    kind=PictureKind.DISCS,
    most_parts=MOST_PARTS,
    widest=Fraction(40),
    tall=Fraction(1),
    flat=False,
    whole=_round,
    part=_wedge,
    narrow=_narrow,
)
