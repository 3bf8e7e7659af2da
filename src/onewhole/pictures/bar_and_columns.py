"""A whole with a part missing over the columns in which it is found: both are seen while it is told."""

from fractions import Fraction

from onewhole.pictures.bar import bar
from onewhole.pictures.columns import MARGIN, SMALL, columns
from onewhole.pictures.columns_state import columns_states
from onewhole.pictures.limits import BOARD
from onewhole.pictures.moving import moved
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Scene
from onewhole.working.working import Working

#: As wide as bars are here; a larger picture has small digits that cannot be read on a phone.
WIDTH = Fraction(110)
MOST = SMALL / BOARD.least


def with_columns(working: Working) -> Picture | None:
    """Draw the bar of a working, and from its second line on the columns under it.

    None where nothing is found in columns, and where both are too large to be read on a phone. Raises
    NotDrawnError where :func:`~onewhole.pictures.bar.bar` does.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.columns import COLUMNS
    >>> from onewhole.working.work import work
    >>> drawn = with_columns(work(read_statement("? + 128 = 304"), COLUMNS))
    >>> [len(scene.descriptions) for scene in drawn.scenes]
    [3, 4, 5, 5, 6, 6, 6]
    """
    if not columns_states(working):
        return None
    above, below = bar(working, WIDTH), columns(working)
    scenes = tuple(
        _joined(one, other, shown=at > 0)
        for at, (one, other) in enumerate(zip(above.scenes, below.scenes, strict=True))
    )
    return Picture(PictureKind.BAR, scenes) if max(scenes[0].width, scenes[0].height) <= MOST else None


def _joined(bars: Scene, under: Scene, *, shown: bool) -> Scene:
    """Put columns under bars; their own margin above is left out, because the bars have theirs."""
    width = max(bars.width, under.width)
    down = bars.height - MARGIN
    pieces = [moved(piece, (width - bars.width) / 2, Fraction(0)) for piece in bars.pieces]
    if shown:
        pieces += [moved(piece, (width - under.width) / 2, down, "columns/") for piece in under.pieces]
    told = (*bars.descriptions, *(under.descriptions if shown else ()))
    return Scene(width, down + under.height, tuple(pieces), told)
