"""How large a line of the board is written: its place, and its rows where it is folded."""

import math
from fractions import Fraction
from functools import lru_cache

from msgspec import Struct

from onewhole.languages.table import LANGUAGES, SPOKEN
from onewhole.notations.folding import Row, folded
from onewhole.walkthroughs.cue import Write
from onewhole.walkthroughs.measure import NEXT_LINE, ROW, before, bit_width, width, word_width

#: A line aside, and a heading, have so much of the size of a line, where that can be read.
ASIDE, HEADING = Fraction(4, 5), Fraction(6, 5)
#: A line aside is drawn at so much of the size that its place gives.
LIGHTER = Fraction(4, 5)


class LineSize(Struct, frozen=True):
    """What a line takes: width and height of its place, its rows where a formula is folded, how many more."""

    wide: int
    high: int
    rows: tuple[Row, ...] = ()

    @property
    def folds(self) -> int:
        """Return how many rows a formula takes beyond its first."""
        return max(len(self.rows) - 1, 0)


@lru_cache(maxsize=4096)
def line_size(
    write: Write, room: int, size: Fraction, least: Fraction, language: str = SPOKEN.tag
) -> LineSize | None:
    """Return what a line takes in a room so wide where lines have a size; None where it cannot stand there.

    No type is smaller than ``least``. All in units of the board.

    >>> found = line_size(Write("a", "Kites"), 900, Fraction(60), Fraction(40))
    >>> found.high
    102
    """
    size = max(least, size * (HEADING if write.heading else ASIDE if write.aside else 1))
    if isinstance(write.content, str):
        # One word that is wider than a board stands there small: words of a title stop no film.
        size = min(size, Fraction(1000 * room) / max(map(word_width, write.content.split()), default=1))
        lines = _lines(write, Fraction(1000 * room) / size)
        if lines is None:
            return None
        high = _height(write, size)
        if lines > 1:
            high = max(high, math.ceil(size * NEXT_LINE * lines))
        return LineSize(min(room, width(write, size)), high)
    needs = width(write, size)
    if needs <= room:
        return LineSize(needs, _height(write, size))
    if write.aside and (smaller := size * Fraction(room, needs)) >= least:
        return LineSize(room, _height(write, smaller))
    rows = folded(
        write.content, math.floor(1000 * room / size - before(write)), bit_width, LANGUAGES[language]
    )
    return None if rows is None else LineSize(room, _height(write, size * len(rows)), rows)


def _height(write: Write, size: Fraction) -> int:
    return math.ceil(size * ROW / (LIGHTER if write.aside else 1))


def _lines(write: Write, room: Fraction) -> int | None:
    """Return how many lines words take in so many thousandths of their size; None for too long a word."""
    lines, at = 1, before(write)
    for word in str(write.content).split():
        wide = word_width(word)
        if wide > room:
            return None
        if at + wide > room:
            lines, at = lines + 1, Fraction(0)
        at += wide + word_width(" ")
    return lines
