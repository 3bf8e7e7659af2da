"""How an idea went over the nights of one pupil: since when it fits, how often, since when it is gone."""

from collections.abc import Collection, Sequence
from datetime import date

from onewhole.findings.idea_course import GoneSince, HeldSince, IdeaCourse
from onewhole.marking.diagnosis.history import PupilNight

#: So many of the last nights that could show an idea are told of, and their exact fits count beside
#: tonight's; our own.
RECENT_NIGHTS = 5


def course(nights: Sequence[tuple[date, PupilNight]], patterns: Collection[str]) -> IdeaCourse | None:
    """Return how some patterns, of which one is held, went over the nights of a pupil, the earliest first.

    None where no answer was ever just what one of them writes.

    >>> fits, not_any_more = (
    ...     PupilNight({"A01": 950_000}, {"A01": 2}),
    ...     PupilNight({"sound": 900_000}, {"A01": 0}),
    ... )
    >>> course([(date(2026, 11, 3), fits), (date(2026, 11, 4), not_any_more)], ("A01",))
    GoneSince(on=datetime.date(2026, 11, 4))
    """
    since: date | None = None
    gone: date | None = None
    best = PupilNight()
    fitted: list[bool] = []
    for on, night in nights:
        could = [night.fits[key] for key in patterns if key in night.fits]
        if any(could) and since is None:
            since, gone, best, fitted = on, None, night, []
        if since is not None and not any(could) and night.withdraws(patterns, best):
            since, gone = None, on
        best = max(best, night, key=lambda one: one.held(patterns))
        fitted += [any(could)] if could else []
    last = fitted[-RECENT_NIGHTS:]
    if since is not None:
        return HeldSince(since, sum(last), len(last))
    return GoneSince(gone) if gone is not None else None
