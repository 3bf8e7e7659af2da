"""What one pupil's nights with one skill left: the trace of practice, and what it says of a later day."""

from datetime import date

from msgspec import Struct

from onewhole.marking.practice.course import COURSES
from onewhole.marking.practice.due import Band, due_day, pupil_band
from onewhole.marking.practice.halving import MILLION, left_after


class Trace(Struct, frozen=True):
    """For every course the chance, per million, that the skill was there after the last night, and its share.

    ``day`` is that night's, ``nights`` counts them. ``shares`` say how likely each course is, by this pupil's
    answers and what they borrow from the class. Raises ValueError where there is no night, or not one number
    for each course.

    >>> sure = Trace(date(2026, 9, 1), 3, (1_000_000,) * len(COURSES), (1,) * len(COURSES))
    >>> sure.band(date(2026, 9, 1)).share > sure.band(date(2026, 9, 15)).share
    True
    """

    day: date
    nights: int
    knows: tuple[int, ...]
    shares: tuple[int, ...]

    def __post_init__(self) -> None:
        """Refuse what is no trace."""
        if self.nights < 1 or {len(self.knows), len(self.shares)} != {len(COURSES)}:
            msg = "a trace has a night, and a chance and a share for each course"
            raise ValueError(msg)

    @property
    def due(self) -> date:
        """Return the day on which the pupil is due to come back to the skill."""
        return due_day(lambda day: self.band(day).share, self.day)

    def band(self, day: date) -> Band:
        """Return how likely a right answer is on a day, not before the last night, with its band."""
        days = (day - self.day).days
        return pupil_band(
            [
                course.right(known * left_after(course.steps(days, self.nights)) // MILLION)
                for course, known in zip(COURSES, self.knows, strict=True)
            ],
            self.shares,
        )
