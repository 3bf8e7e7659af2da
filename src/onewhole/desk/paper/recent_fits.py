"""How many answers of a pupil's recent nights were just what a pattern writes, as far as these are marked."""

from collections import defaultdict
from collections.abc import Mapping

from onewhole.desk.classes.class_records import NightPage
from onewhole.desk.classes.marked_nights import cached_summaries
from onewhole.marking.diagnosis.course import RECENT_NIGHTS
from onewhole.store.opening import Store


def recent_fits(book: Store, page: NightPage) -> Mapping[str, Mapping[str, int]]:
    """Return by pupil and pattern how many answers of recent nights were exact fits; it marks no night.

    The same as :meth:`onewhole.marking.diagnosis.notebook.Notebook.recent_fits` tells of the nights before.
    """
    mine = page.night.day, page.night.number
    nights = [
        one for one, stale in cached_summaries(book, page.night.class_number).values() if one and not stale
    ]
    before = [one for one in nights if (one.day, one.night) < mine and page.night.day <= one.until]
    seen: dict[str, dict[str, list[int]]] = defaultdict(lambda: defaultdict(list))
    for one in sorted(before, key=lambda one: (one.day, one.night)):
        for code in one.pupils:
            for pattern, count in one.left(code).fits.items():
                seen[code][pattern].append(count)
    return {
        code: {pattern: sum(counts[-RECENT_NIGHTS:]) for pattern, counts in fits.items()}
        for code, fits in seen.items()
    }
