"""A pupil's nights with one skill, read into what is still there: the trace that practice left."""

from dataclasses import dataclass
from datetime import date

from onewhole.marking.practice.course import COURSES, START, telling
from onewhole.marking.practice.halving import MILLION, left_after

#: Weights of courses are kept between 1 and about twice this; only how they compare counts.
HEAVY = MILLION * MILLION


@dataclass(frozen=True, slots=True)
class Trace:
    """For every course the chance, per million, that the skill was there after the last night, and its weight.

    ``day`` is that night's, None before the first; ``nights`` counts them. ``weights`` say how well each
    course foretold the answers. No course is ever ruled out.
    """

    day: date | None
    nights: int
    knows: tuple[int, ...]
    weights: tuple[int, ...]

    def on(self, day: date) -> tuple[int, ...]:
        """Return for every course the chance that the skill is still there on a day, not before the last."""
        if self.day is None:
            return self.knows
        days = (day - self.day).days
        return tuple(
            known * left_after(course.steps(days, self.nights)) // MILLION
            for course, known in zip(COURSES, self.knows, strict=True)
        )

    def after(self, day: date, right: int, wrong: int) -> "Trace":
        """Return the trace after a night of practice with so many right and wrong answers.

        Both are 0 where the answers are not known: practised it was. A night on which the pupil wrote nothing
        of this skill is no night of practice.

        >>> from datetime import date
        >>> before, after = NEW, NEW.after(date(2026, 9, 1), 4, 0)
        >>> before.knows[0] < after.knows[0], after.nights
        (True, 1)
        """
        knows, weights = [], []
        for course, known, weight, (there, absent) in zip(
            COURSES, self.on(day), self.weights, telling(right, wrong), strict=True
        ):
            has, has_not = known * there, (MILLION - known) * absent
            knew = has * MILLION // (has + has_not)
            knows.append(knew + (MILLION - knew) * course.learns // MILLION)
            weights.append(weight * max(1, (has + has_not) // MILLION))
        lighter = max(1, max(weights) // HEAVY)
        return Trace(day, self.nights + 1, tuple(knows), tuple(max(1, one // lighter) for one in weights))


#: A pupil and a skill before the first night.
NEW = Trace(None, 0, (START,) * len(COURSES), (HEAVY,) * len(COURSES))
