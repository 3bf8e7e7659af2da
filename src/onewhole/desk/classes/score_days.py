"""The days of which scores are told: those that were typed, else three weeks up to today."""

from datetime import date, timedelta

from onewhole.desk.classes.week import SHOWN, monday
from onewhole.errors import InputError


def score_days(first: date | None, last: date | None, today: date) -> tuple[date, date]:
    """Return the first and the last day of which scores are told; None stands for one that was not typed.

    A last day to come does not move the first one: nothing was handed in on the weeks between. Raises
    InputError for a last day before the first.

    >>> [day.isoformat() for day in score_days(None, None, date(2026, 11, 25))]
    ['2026-11-09', '2026-11-25']
    >>> score_days(None, date(2027, 6, 30), date(2026, 11, 25))[0].isoformat()
    '2026-11-09'
    """
    until = last or today
    begins = first or monday(min(until, today)) - timedelta(weeks=SHOWN - 1)
    if until < begins:
        raise InputError("The last day is before the first", remedy="Change one of the two days.")
    return begins, until
