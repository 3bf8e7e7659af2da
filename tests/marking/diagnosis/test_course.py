"""Since when an idea fits, how often, since when it is gone."""

from datetime import date

from onewhole.findings.idea_course import GoneSince, HeldSince, IdeaCourse
from onewhole.marking.diagnosis.course import RECENT_NIGHTS, course
from onewhole.marking.diagnosis.history import PupilNight

FITS = PupilNight({"A01": 950_000}, {"A01": 2})
MISSED = PupilNight({"A01": 800_000}, {"A01": 0})
HIDDEN = PupilNight({"A01": 700_000}, {"B03": 1})
RIGHT = PupilNight({"sound": 900_000}, {"A01": 0})


def _day(at: int) -> date:
    return date(2026, 11, at)


def _course(*nights: PupilNight) -> IdeaCourse | None:
    return course([(_day(at), night) for at, night in enumerate(nights, start=1)], ("A01",))


def test_nights_that_could_not_show_it_are_not_counted() -> None:
    """Shown on two of the three that could, since the first of them."""
    assert _course(HIDDEN, FITS, HIDDEN, MISSED, FITS) == HeldSince(_day(2), 2, 3)
    assert _course(HIDDEN, RIGHT) is None


def test_only_the_last_nights_are_counted() -> None:
    """Of many nights the last five."""
    assert _course(FITS, *[MISSED] * 4, FITS, FITS) == HeldSince(_day(1), 2, RECENT_NIGHTS)


def test_it_goes_and_comes_back() -> None:
    """The night that withdrew it is told; when it is back, since when."""
    assert _course(FITS, HIDDEN, RIGHT, RIGHT) == GoneSince(_day(3))
    assert _course(FITS, RIGHT, HIDDEN, FITS) == HeldSince(_day(4), 1, 1)


def test_of_two_that_are_not_told_apart_either_will_do() -> None:
    """One night fits the one, the next the other."""
    nights = [(_day(1), FITS), (_day(2), PupilNight({"A02": 900_000}, {"A01": 0, "A02": 2}))]
    assert course(nights, ("A01", "A02")) == HeldSince(_day(1), 2, 2)
