"""The problems with which a class comes back to the skills that are due, for a page to be composed."""

from datetime import date, timedelta
from itertools import islice

from onewhole.desk.classes.week import week
from onewhole.store.opening import Store

#: What is due within so many days comes back on a page that is composed today.
SOON_DAYS = 6
#: So many skills come back on one page: two or three problems a page are common practice.
AT_MOST = 2


def problems_due(book: Store, room_number: int, today: date) -> tuple[str, ...]:
    """Return a problem with new numbers for each of the first skills that are due. Raises NotThere."""
    soon = today + timedelta(days=SOON_DAYS)
    dues = (one.problem for one in week(book, room_number, today).due if one.due <= soon)
    return tuple(islice(dues, AT_MOST))
