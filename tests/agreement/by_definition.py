"""The error patterns once more, as their definitions say it, in plain whole numbers.

Nothing of `onewhole.misconceptions` is used or looked at here: this is the second road. A problem is w1
n1/d - w2 n2/d (or +). An answer is its raw text with its amount: `w`, `w n/d` or `n/d`; zero pieces and
zero wholes are not written. The definitions are those of a collection of 124 patterns, put together from
the sources named in `onewhole.misconceptions`. Where they leave something open, the convention is the one
under which the collection's own counts come out (`test_tell_apart.py`): smaller from larger after a wrong
change to one fraction, no answer where a count would be below zero, and no numerator written beside a whole
number.
"""

from collections.abc import Iterator
from fractions import Fraction
from itertools import chain
from math import lcm

#: Raw text and amount (None for a denominator of 0).
Answer = tuple[str, Fraction | None]
Found = tuple[str, Answer | None]


def raw(w: int, n: int, d: int) -> Answer | None:
    """Write w n/d as it comes; None when a count is below zero."""
    if w < 0 or n < 0:
        return None
    text = str(w) if n == 0 else f"{w} {n}/{d}" if w else f"{n}/{d}"
    return text, (w + Fraction(n, d) if d else None if n else Fraction(w))


def grouped(n: int, d: int) -> Answer | None:
    """Write n/d as a mixed number."""
    return raw(n // d, n % d, d) if n >= 0 else None


def subtracted(w1: int, n1: int, w2: int, n2: int, d: int) -> dict[str, Answer]:
    """Answer w1 n1/d - w2 n2/d by every pattern that applies, right answers by luck among them."""
    found: dict[str, Answer] = {}
    roads = (_opening, _apart, _whole_on_top, _one_fraction, _shifts_and_slips)
    rows = chain(*(road(w1, n1, w2, n2, d) for road in roads), _fractions_subtracted(w1, n1, d, w2, n2, d))
    found.update({key: answer for key, answer in rows if answer is not None})
    return found


def _opening(w1: int, n1: int, w2: int, n2: int, d: int) -> Iterator[Found]:
    w = w1 - w2
    if n1 < n2:
        yield "A01", raw(w, n2 - n1, d)
        yield "A02", raw(w, n1 + d - n2, d)
        yield "A03", raw(w - 1, n2 - n1, d)
        yield "A04", raw(w - 1, n1 + 10 - n2, d) if d != 10 else None
        yield "A05", raw(w - 1, n2 - n1 - 1, d)
        yield "A06", raw(w - 1, d - n2, d)
        yield "A07", raw(w - 2, n1 + d - n2, d)
        yield "A08", raw(w + 1, n1 + d - n2, d) if w2 >= 1 else None
        yield "A09", raw(w1 - 1, n1 + d - n2, d) if w2 >= 1 else None
        yield "A11", raw(w, 0, d)
        yield "A36", raw(w - 1, n1 + d - n2, n1 + d)
    else:
        yield "A09", raw(w1, n1 - n2, d) if w2 >= 1 else None
        yield "A10", raw(w - 1, n1 - n2, d)
        yield "A34", raw(w - 1, n1 + d - n2, d)


def _apart(w1: int, n1: int, w2: int, n2: int, d: int) -> Iterator[Found]:
    w, n = w1 - w2, abs(n1 - n2)
    yield "A12", raw(w, 0, d) if n else None
    yield "A13", raw(0, n, d) if w1 > w2 else None
    yield "A14", raw(w1, n, d) if w2 >= 1 else None
    yield "A15", raw(w1 + w2, n, d) if w2 >= 1 else None
    yield "A16", raw(w, n1 + n2, d) if n2 >= 1 else None
    yield "A17", raw(w1 + w2, n1 + n2, d)
    yield "A18", raw(w, n, 0)
    yield "A19", raw(w, n, 2 * d) if n else None


def _whole_on_top(w1: int, n1: int, w2: int, n2: int, d: int) -> Iterator[Found]:
    if n1 == 0:
        yield "A20", raw(w1 - w2, n2, d)
        yield "A21", raw(w1 - w2, d - n2, d)
        if w2 == 0:
            yield "A22", raw(0, abs(w1 - n2), d)
            yield "A23", raw(w1, d - n2, d)


def _one_fraction(w1: int, n1: int, w2: int, n2: int, d: int) -> Iterator[Found]:
    if w1 >= 1:
        yield "A24", raw(0, abs((w1 + n1) - (w2 + n2)), d)
        yield "A25", raw(0, abs(w1 * n1 - w2 * n2), d)
    yield "A26", grouped(abs(w1 * d - w2 * d), d) if n1 != n2 else None
    if d != 10 and n1 and n2:
        yield "A27", grouped(abs(int(f"{w1}{n1}") - int(f"{w2}{n2}")), d)
    total = w1 * d + n1 - w2 * d - n2
    yield "A28", raw(total % d, total // d, d) if total // d != total % d else None
    yield "A35", (f"{total}/{d}", Fraction(total, d)) if total > d else None


def _shifts_and_slips(w1: int, n1: int, w2: int, n2: int, d: int) -> Iterator[Found]:
    total = w1 * d + n1 - w2 * d - n2
    if 0 < n2 < d:
        yield "A29", raw(w1 - w2 - 1, n1, d)
        yield "A30", grouped(w1 * d + n1 - (d - n2) - (w2 + 1) * d, d)
    if n1 > 0 and w1 * d >= w2 * d + n2:
        yield "A31", grouped(w1 * d - (w2 * d + n2) - n1, d)
    yield "A32", grouped(total - 1, d)
    yield "A33", grouped(total + d, d)


def added(w1: int, n1: int, w2: int, n2: int, d: int) -> dict[str, Answer]:
    """Answer w1 n1/d + w2 n2/d by every pattern that applies, right answers by luck among them."""
    rows = chain(_added(w1, n1, w2, n2, d), _fractions_added(w1, n1, d, w2, n2, d))
    return {key: answer for key, answer in rows if answer is not None}


def _added(w1: int, n1: int, w2: int, n2: int, d: int) -> Iterator[Found]:
    w, n = w1 + w2, n1 + n2
    yield "P01", raw(w, n, 2 * d)
    yield "P02", raw(w, 1, 2 * d) if n1 == n2 == 1 else None
    if n >= d:
        yield "P03", raw(w, n - d, d)
        yield "P04", raw(w + 1, n, d)
        yield "P10", raw(w, n, d)
    yield "P05", raw(w + 1, n - 10, d) if n >= 10 and d != 10 else None
    yield "P06", raw(w, n1 * n2, d)
    yield "P07", raw(w, n1 * n2, d * d)
    yield "P08", raw(w, 0, d) if n > 0 else None
    yield "P09", raw(w, abs(n1 - n2), d) if n2 > 0 else None
    yield "P11", raw(0, w + n, d) if w1 >= 1 else None


def unlike_added(w1: int, n1: int, d1: int, w2: int, n2: int, d2: int) -> dict[str, Answer]:
    """Answer w1 n1/d1 + w2 n2/d2 with unlike denominators; the wholes are added by themselves."""
    w, n, larger = w1 + w2, n1 + n2, max(d1, d2)
    common = lcm(d1, d2)
    apart = abs((w1 - w2) * common + n1 * common // d1 - n2 * common // d2)
    found = {
        "B01": raw(w, n, d1 + d2),
        "B03": raw(w, n, lcm(d1, d2)),
        "B04": raw(w, n, larger),
        "B05": raw(w, n1 * n2, d1 + d2),
        "B07": raw(w, n1 + larger - d1 + n2 + larger - d2, larger),
        "B08": raw(w, n1 * d1 + n2 * d2, d1 * d2) if n1 != n2 else None,
        "B09": raw(w, n, d1),
        "B10": raw(w, n, d1 * d2),
        "B11": grouped(apart, common),
        **dict(_fractions_added(w1, n1, d1, w2, n2, d2)),
    }
    return {key: answer for key, answer in found.items() if answer is not None}


def _fractions_added(w1: int, n1: int, d1: int, w2: int, n2: int, d2: int) -> Iterator[Found]:
    """Two fractions without wholes, worked across after one of them is turned over, or with a fact off."""
    if w1 or w2 or not n1 or not n2:
        return
    if n1 != d1:
        yield "B12", raw(0, d1 + n2, n1 + d2)
    yield "B13", raw(0, n1 + n2, d1 + d2 - 1)


def _fractions_subtracted(w1: int, n1: int, d1: int, w2: int, n2: int, d2: int) -> Iterator[Found]:
    if w1 or w2 or not n1 or not n2:
        return
    if n1 not in {d1, d2}:
        yield "B12", raw(0, abs(d1 - n2), abs(n1 - d2))
    under = abs(d1 - d2)
    if n1 != n2 and under:
        yield "B13", raw(0, abs(n1 - n2), under - 1 or under + 1)


def unlike_subtracted(w1: int, n1: int, d1: int, w2: int, n2: int, d2: int) -> dict[str, Answer]:
    """Answer w1 n1/d1 - w2 n2/d2 with unlike denominators; the wholes are taken by themselves.

    Opening a whole goes wrong after the fractions are renamed for the least common denominator.
    """
    w, n = w1 - w2, abs(n1 - n2)
    found = {
        "A12": raw(w, 0, 1) if Fraction(n1, d1) != Fraction(n2, d2) else None,
        "B02": raw(w, n, abs(d1 - d2)),
        "B03": raw(w, n, lcm(d1, d2)),
        "B04": raw(w, n, max(d1, d2)),
        "B06": raw(w, n, d1 + d2),
        "B09": raw(w, n, d1),
        "B10": raw(w, n, d1 * d2),
        **dict(_fractions_subtracted(w1, n1, d1, w2, n2, d2)),
    }
    d = lcm(d1, d2)
    found["A17"] = raw(w1 + w2, n1 * d // d1 + n2 * d // d2, d)
    opening = dict(_opening(w1, n1 * d // d1, w2, n2 * d // d2, d))
    opening.pop("A34", None)
    found.update(opening)
    return {key: answer for key, answer in found.items() if answer is not None}
