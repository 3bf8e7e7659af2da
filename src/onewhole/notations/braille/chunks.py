"""Cells that stay together on a line, one after another, and lines filled with them."""

from collections.abc import Iterable, Iterator

from msgspec import Struct
from msgspec.structs import replace

from onewhole.notations.braille.cells import BLANK


class Chunk(Struct, frozen=True):
    """Cells that are not broken over a line; ``spaced`` where a blank parts them from those before.

    ``first`` are the cells instead where they begin a line: a number that follows a minus sign there has its
    numeric indicator.
    """

    cells: str
    spaced: bool = True
    first: str = ""

    @property
    def at_start(self) -> str:
        """Return the cells as they stand at the beginning of a line."""
        return self.first or self.cells

    def between(self, before: str, after: str) -> "Chunk":
        """Return the chunk with cells close before and close behind it."""
        first = f"{before}{self.first}{after}" if self.first else ""
        return replace(self, cells=f"{before}{self.cells}{after}", first=first)


def one_line(chunks: Iterable[Chunk]) -> str:
    """Return chunks on one line, however long."""
    found = ""
    for chunk in chunks:
        found += f"{BLANK if chunk.spaced else ''}{chunk.cells}" if found else chunk.at_start
    return found


def closed_up(chunks: tuple[Chunk, ...], before: str = "", after: str = "") -> tuple[Chunk, ...]:
    """Return chunks with cells close before the first and close behind the last of them."""
    first, *others = chunks
    opened = [first.between(before, ""), *others]
    return (*opened[:-1], opened[-1].between("", after))


def filled(chunks: Iterable[Chunk], width: int, first: int = 0, runover: int = 2) -> Iterator[str]:
    """Fill lines of at most ``width`` cells: the first begins after so many blanks, the others after more.

    A chunk that is longer than a line is broken where the line ends.

    >>> [line.count(BLANK) for line in filled((Chunk("⠁" * 6), Chunk("⠃" * 6)), 10)]
    [0, 2]
    """
    line, indent = "", BLANK * first
    for chunk in chunks:
        joined = f"{line}{BLANK if chunk.spaced else ''}{chunk.cells}" if line else chunk.at_start
        if len(indent) + len(joined) <= width:
            line = joined
            continue
        if line:
            yield indent + line
            indent = BLANK * runover
        line = chunk.at_start
        while len(indent) + len(line) > width:
            room = width - len(indent)
            yield indent + line[:room]
            line, indent = line[room:], BLANK * runover
    if line:
        yield indent + line
