"""Times of day as a clock shows them: 9:45, 2:15 p.m. They are counted in hours and minutes from midnight.

A clock time is no duration: two of them have a time between them, and a duration leads from one to another.
Source: *Common Core State Standards for Mathematics* (2010), 3.MD.A.1, 4.MD.A.2; a.m. and p.m. from 2.MD.C.7.
"""

from fractions import Fraction

from onewhole.number.ladder import Ladder, Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import CLOCK, HALVES, Kind, Unit

HOUR = 60
#: Minutes from one time on the clock's face to the same time again, and from midnight to midnight.
ROUND, DAY = 12 * HOUR, 24 * HOUR


def _face(mark: str) -> Ladder:
    return Ladder(Style.MEASURE, (Unit(Fraction(HOUR), Kind.TIME, mark), Unit(Fraction(1), Kind.TIME, mark)))


TWELVE, HALF_DAYS = _face(CLOCK), _face(HALVES)


def clock(minutes: int, *, halves: bool = False) -> Quantity:
    """Return a time of day, so many minutes after midnight; ``halves`` says a.m. or p.m. with it.

    >>> clock(9 * 60 + 45).counts
    (9, 45)
    """
    return Quantity(HALF_DAYS if halves else TWELVE, divmod(minutes, HOUR))


def on_clock(duration: Quantity, like: Quantity) -> Quantity:
    """Return the time of day that comes so long after midnight, written as another time of day is."""
    return clock(int(duration.value), halves=like.ladder == HALF_DAYS)


def shown(time: Quantity) -> tuple[int, int, str]:
    """Return what a clock shows: the hour from 1 to 12, the minutes, and a.m. or p.m. where that is said.

    >>> shown(clock(13 * 60 + 5)), shown(clock(5, halves=True))
    ((1, 5, ''), (12, 5, 'a.m.'))
    """
    hours, minutes = divmod(time.parts, HOUR)
    half = ("a.m.", "p.m.")[hours % 24 >= 12] if time.ladder == HALF_DAYS else ""
    return (hours - 1) % 12 + 1, minutes, half


def face_minutes(time: Quantity) -> int:
    """Return how long after midnight a time of day is first shown as it is: 1:05 for 13:05.

    >>> face_minutes(clock(13 * 60 + 5)), face_minutes(clock(5))
    (65, 725)
    """
    if time.ladder == HALF_DAYS:
        return time.parts % DAY
    hour, minutes, _ = shown(time)
    return hour * HOUR + minutes


def later_same_face(minutes: int, least: int, *, halves: bool) -> int:
    """Return the first time that shows the same and is not before another: 1:15 after 11:40 is 13:15."""
    again = DAY if halves else ROUND
    return minutes + -(-(least - minutes) // again) * again if minutes < least else minutes
