"""The problems with which a class comes back to the skills that are due, for a page to be composed."""

from datetime import date, timedelta
from itertools import islice

from onewhole.desk.classes.bring_back import bring_back
from onewhole.desk.classes.class_records import night_pages, room
from onewhole.desk.classes.marked_nights import night_summaries
from onewhole.desk.classes.practised import practised
from onewhole.desk.classes.rosters import in_class_on, rosters
from onewhole.store.opening import Store

#: What is due within so many days comes back on a page that is composed today.
SOON_DAYS = 6
#: So many skills come back on one page: two or three problems a page are common practice.
AT_MOST = 2


def problems_due(book: Store, room_number: int, today: date) -> tuple[str, ...]:
    """Return a problem with new numbers for each of the first skills that are due. Raises NotThere."""
    with book.snapshot() as seen:
        room(seen, room_number)
        pages, left = night_pages(seen, room_number), night_summaries(seen, room_number)
        known = practised(pages, left, in_class_on(seen, room_number, today), rosters(seen, room_number))
    soon = today + timedelta(days=SOON_DAYS)
    dues = (one.problem for one in bring_back(pages, left, known, today) if one.due <= soon)
    return tuple(islice(dues, AT_MOST))
