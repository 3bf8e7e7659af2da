"""The spot check: a few answers of a class that were read for sure are shown, and a wrong one has a price."""

from collections.abc import Callable, Collection, Iterable
from hashlib import sha256

from onewhole.marking.paper.sureness import Sureness

#: So many answers of a night are shown that were read for sure; the choice is ours, no source.
SPOT_CHECKED = 10

Key = tuple[str, str]
"""A cell: the pupil's code and the problem's label."""


def spot_cells(read: Iterable[Key], night: int, most: int = SPOT_CHECKED) -> tuple[Key, ...]:
    """Return the cells that a spot check shows, of those that are read for sure.

    They are spread as if drawn by lot, and the same each time: by a digest of night, pupil and problem.

    >>> spot_cells([("K01", "1"), ("K02", "1"), ("K03", "1")], night=7, most=2)
    (('K01', '1'), ('K03', '1'))
    """
    return tuple(sorted(read, key=lambda key: (sha256(f"{night} {key}".encode()).digest(), key))[:most])


def raised(
    now: Sureness, wrong: Collection[int], limit: Callable[[Sureness], int] = lambda one: one.limit
) -> Sureness:
    """Return the setting after a spot check; ``wrong`` are the doubts of the readings found wrong in it.

    With none wrong it stays. Else it is the first one above at which none of these would have been read:
    where even the strictest would have read one, every cell is shown from now on. ``limit`` is the doubt that
    a setting allows in this class.

    >>> raised(Sureness.USUAL, []), raised(Sureness.USUAL, [9_000]), raised(Sureness.USUAL, [0])
    (<Sureness.USUAL: 'usual'>, <Sureness.MORE: 'more'>, <Sureness.EVERY: 'every'>)
    """
    if not wrong:
        return now
    order = list(Sureness)
    above = order[order.index(now) + 1 :]
    return next((one for one in above if limit(one) <= min(wrong)), Sureness.EVERY)
