"""What every pattern writes on very many problems at once: whole numbers in NumPy arrays, no float anywhere.

The catalogue defines what a pattern does, at milliseconds a problem. This is a second, fast implementation
for choosing among all the problems of a grade. `tests/agreement/test_answers_at_once.py` compares the two, on
small spaces and samples each time and on every problem in `make walk`, so it fails when a pattern is changed
or added in the catalogue alone.
"""

from collections.abc import Iterator

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.misconceptions.catalogue import by_id

Counts = NDArray[np.int64]
Mask = NDArray[np.bool_]

#: Room for a numerator and for wholes in one number that stands for an answer as it is written.
SHIFT = 20


class Table(Struct, frozen=True, eq=False):
    """Problems w1 n1/d - w2 n2/d (or + where nothing is ``taken``), one a place; numerators below d."""

    w1: Counts
    n1: Counts
    w2: Counts
    n2: Counts
    d: Counts
    taken: bool

    def __len__(self) -> int:
        return len(self.d)

    def at(self, places: Counts | Mask) -> "Table":
        """Return the problems at some places."""
        w1, n1, w2, n2, d = (column[places] for column in (self.w1, self.n1, self.w2, self.n2, self.d))
        return Table(w1, n1, w2, n2, d, self.taken)

    @property
    def pieces(self) -> Counts:
        """Return the right answers, counted in pieces."""
        first, second = self.w1 * self.d + self.n1, self.w2 * self.d + self.n2
        return first - second if self.taken else first + second


class Writes(Struct, frozen=True, eq=False):
    """What one pattern writes: where it shows, the answer as one number, and where it is right by luck."""

    shows: Mask
    answer: Counts
    lucky: Mask

    def at(self, places: Mask) -> "Writes":
        """Return the same for some of the problems."""
        return Writes(self.shows[places], self.answer[places], self.lucky[places])


Raw = tuple[str, Mask | bool, Counts | int, Counts | int, Counts | int]


def code(wholes: Counts | int, top: Counts | int, bottom: Counts | int) -> Counts:
    """Return one number for an answer as written; equal for answers that are written alike and only for them.

    >>> bool(code(np.array([3]), 0, 6) == code(3, 0, 1)), bool(code(np.array([0]), 3, 6) == code(0, 1, 2))
    (True, False)
    """
    plain = np.where(np.equal(top, 0), 1, bottom).astype(np.int64)
    tops = np.asarray(top, dtype=np.int64)
    written: Counts = (plain << 2 * SHIFT) + (np.asarray(wholes, dtype=np.int64) << SHIFT) + tops
    return written


def right_answers(table: Table) -> Counts:
    """Return the right answers as they are usually written."""
    return code(table.pieces // table.d, table.pieces % table.d, table.d)


def writes(table: Table) -> dict[str, Writes]:
    """Return what each pattern on like denominators writes, by its id."""
    roads = (_opening, _apart, _by_one_fraction, _shifts) if table.taken else (_adding,)
    return {raw[0]: _judged(table, raw) for road in roads for raw in road(table)}


def _judged(table: Table, raw: Raw) -> Writes:
    """Drop answers that need a count below zero, and part wrong answers from those right by luck."""
    key, where, wholes, top, bottom = raw
    applies = np.broadcast_to(where, table.d.shape) & np.greater_equal(wholes, 0) & np.greater_equal(top, 0)
    some = np.where(np.equal(top, 0), 1, bottom)
    right = (some != 0) & ((np.multiply(wholes, some) + top) * table.d == table.pieces * some)
    of_form = by_id(key).of_form
    answer = np.broadcast_to(code(wholes, top, bottom), table.d.shape)
    return Writes(applies & (right == of_form), answer, applies & right & (not of_form))


def _opening(t: Table) -> Iterator[Raw]:
    w, n, d, few = t.w1 - t.w2, t.n1 - t.n2, t.d, t.n1 < t.n2
    nothing_on_top = (t.n1 == 0) & (t.n2 > 0)
    yield "A01", few, w, -n, d
    yield "A02", few, w, n + d, d
    yield "A03", few, w - 1, -n, d
    yield "A04", few, w - 1, n + 10, d
    yield "A05", few, w - 1, abs(n + 1), d
    yield "A06", few, w - 1, d - t.n2, d
    yield "A07", few, w - 2, n + d, d
    yield "A08", few & (t.w2 >= 1), w + 1, n + d, d
    yield "A09", t.w2 >= 1, t.w1 - few, n + few * d, d
    yield "A10", ~few, w - 1, n, d
    yield "A11", few, w, 0, d
    yield "A20", nothing_on_top, w, t.n2, d
    yield "A21", nothing_on_top, w, d - t.n2, d
    yield "A22", nothing_on_top & (t.w2 == 0), 0, abs(t.w1 - t.n2), d
    yield "A23", nothing_on_top & (t.w2 == 0), t.w1, d - t.n2, d
    yield "A36", few, w - 1, n + d, t.n1 + d


def _apart(t: Table) -> Iterator[Raw]:
    w, n, d = t.w1 - t.w2, abs(t.n1 - t.n2), t.d
    yield "A12", n > 0, w, 0, d
    yield "A13", w > 0, 0, n, d
    yield "A14", t.w2 >= 1, t.w1, n, d
    yield "A15", t.w2 >= 1, t.w1 + t.w2, n, d
    yield "A16", t.n2 >= 1, w, t.n1 + t.n2, d
    yield "A17", True, t.w1 + t.w2, t.n1 + t.n2, d
    yield "A18", True, w, n, 0
    yield "A19", n > 0, w, n, 2 * d


def _by_one_fraction(t: Table) -> Iterator[Raw]:
    right, d, wholes = t.pieces, t.d, t.w1 >= 1
    beside: Counts = np.abs(_side_by_side(t.w1, t.n1) - _side_by_side(t.w2, t.n2))
    times: Counts = np.abs(t.w1 * t.n1 - t.w2 * t.n2)
    yield "A24", wholes, 0, abs(t.w1 + t.n1 - t.w2 - t.n2), d
    yield "A25", wholes, 0, times, d
    yield "A26", t.n1 != t.n2, t.w1 - t.w2, 0, d
    in_digits = (d != 10) | (np.maximum(t.n1, t.n2) < 10)
    yield "A27", (t.n1 > 0) & (t.n2 > 0) & in_digits, beside // d, beside % d, d
    yield "A28", True, right % d, right // d, d
    yield "A35", right > d, 0, right, d


def _side_by_side(wholes: Counts, top: Counts) -> Counts:
    """Write the digits of the numerator after those of the wholes."""
    written: Counts = wholes * np.where(top < 10, 10, 100).astype(np.int64) + top
    return written


def _shifts(t: Table) -> Iterator[Raw]:
    right, d, few = t.pieces, t.d, t.n1 < t.n2
    up = d - t.n2  # what the second number lacks to the next whole
    once, twice, back = right - up, right - 2 * up, right - 2 * t.n1
    yield "A29", (t.n2 > 0) & (once >= 0), once // d, once % d, d
    yield "A30", (t.n2 > 0) & (twice >= 0), twice // d, twice % d, d
    yield "A31", (t.n1 > 0) & (back >= 0), back // d, back % d, d
    yield "A32", right >= 1, (right - 1) // d, (right - 1) % d, d
    yield "A33", True, right // d + 1, right % d, d
    yield "A34", ~few & (t.w1 > t.w2), t.w1 - t.w2 - 1, t.n1 - t.n2 + d, d


def _adding(t: Table) -> Iterator[Raw]:
    w, n, d = t.w1 + t.w2, t.n1 + t.n2, t.d
    yield "P01", True, w, n, 2 * d
    yield "P02", (t.n1 == 1) & (t.n2 == 1), w, t.n1, 2 * d
    yield "P03", n >= d, w, n - d, d
    yield "P04", n >= d, w + 1, n, d
    yield "P05", n >= 10, w + 1, n - 10, d
    yield "P06", True, w, t.n1 * t.n2, d
    yield "P07", True, w, t.n1 * t.n2, d * d
    yield "P08", n > 0, w, 0, d
    yield "P09", t.n2 > 0, w, abs(t.n1 - t.n2), d
    yield "P10", n >= d, w, n, d
    yield "P11", t.w1 >= 1, 0, w + n, d
