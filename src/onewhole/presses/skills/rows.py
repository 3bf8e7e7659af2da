"""Rows of right and wrong as arrays, in pieces that fit in a processor's cache."""

from collections.abc import Iterator

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.mastery.right_wrong import MISSING, RIGHT, RightWrong
from onewhole.presses.skills.cells import Floats

#: Numbers in the largest array of one piece: 2 MB.
PIECE = 250_000


class RowArrays(Struct, frozen=True):
    """One row each: ``right`` and ``answered`` are 0 or 1, ``times`` how many pupils have the row."""

    right: NDArray[np.uint8]
    answered: NDArray[np.uint8]
    times: Floats

    @property
    def whole(self) -> bool:
        """Whether every problem of every row was answered."""
        return bool(self.answered.all())

    @property
    def pupils(self) -> float:
        """How many pupils there are."""
        return float(self.times.sum())

    def pieces(self, width: int) -> "Iterator[RowArrays]":
        """Return the rows in pieces, for arrays with so many columns."""
        size = max(64, PIECE // width)
        for at in range(0, len(self.times), size):
            part = slice(at, at + size)
            yield RowArrays(self.right[part], self.answered[part], self.times[part])


def row_arrays(table: RightWrong) -> RowArrays:
    """Return a table as arrays.

    >>> row_arrays(RightWrong(("1", "2"), ("10", "1."), (24, 1))).answered.tolist()
    [[1, 1], [1, 0]]
    """
    signs = np.frombuffer("".join(table.rows).encode(), dtype=np.uint8).reshape(len(table.rows), -1)
    times = np.array(table.times, dtype=np.float64)
    return RowArrays((signs == ord(RIGHT)).astype(np.uint8), (signs != ord(MISSING)).astype(np.uint8), times)


def fewer(rows: RowArrays, most: int, chance: np.random.Generator) -> RowArrays:
    """Draw so many pupils with replacement, and return their rows."""
    drawn = chance.multinomial(most, rows.times / rows.times.sum())
    kept = np.flatnonzero(drawn)
    return RowArrays(rows.right[kept], rows.answered[kept], drawn[kept].astype(np.float64))
