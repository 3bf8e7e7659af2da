"""A year planned: each week's topic, and which earlier topics come back on which night.

What comes back is spaced by the model of practice (:mod:`onewhole.marking.practice`), as for a class of which
no answer is known yet. A night that is composed looks at what the class has shown instead, where it has
(:mod:`~.year_night`).
"""

from datetime import date, timedelta
from functools import lru_cache

from msgspec import Struct

from onewhole.desk.classes.practised import ClassSkill
from onewhole.presses.traces_at_once import pooled, untouched
from onewhole.sheets.years.nights import YearWeek, weeks_of
from onewhole.sheets.years.topic import TopicPage, YearTopic
from onewhole.sheets.years.year_wishes import YearWishes

#: So many topics come back on a night with a topic of its own: two or three problems a page are common
#: practice. A night without one brings back more.
A_NIGHT, ALL_NIGHT = 2, 4
#: Any day: what is left counts days and no dates.
_BEGINS = date(2001, 1, 1)


class YearNight(Struct, frozen=True):
    """A night: its day, its week, the topic and skill of its page, and the topics that come back on it.

    ``page`` is None where the program composes nothing on the topic and nothing can come back yet. ``of`` is
    the topic whose skill the page is composed of; ``at`` counts the nights of the year from 1.
    """

    at: int
    day: date
    week: YearWeek
    of: YearTopic | None
    page: TopicPage | None
    back: tuple[YearTopic, ...]

    @property
    def own(self) -> bool:
        """Say whether the page is on the topic of its week."""
        return self.of is not None and self.of == self.week.topic


class YearPlan(Struct, frozen=True):
    """A year: what was wished for, its weeks, and its nights in their order."""

    wishes: YearWishes
    weeks: tuple[YearWeek, ...]
    nights: tuple[YearNight, ...]

    def on(self, day: date) -> YearNight | None:
        """Return the night of a day; None where no page goes home."""
        return next((night for night in self.nights if night.day == day), None)

    def next_from(self, day: date) -> YearNight | None:
        """Return the first night from a day on; None after the last one."""
        return next((night for night in self.nights if night.day >= day), None)


@lru_cache(maxsize=8)
def year_plan(wishes: YearWishes) -> YearPlan:
    """Return a year planned; the same once more costs nothing. Raises YearError where it does not fit.

    >>> plan = year_plan(YearWishes(date(2026, 9, 8)))
    >>> night = plan.nights[20]
    >>> night.of.called, [one.called for one in night.back][:1]
    ('taking away in columns, zeros', ['facts; adding and taking away to 1,000'])
    """
    weeks = weeks_of(wishes)
    practised: dict[YearTopic, tuple[int, ...]] = {}
    due: dict[YearTopic, date] = {}
    nights: list[YearNight] = []
    turns: dict[YearTopic, int] = {}
    for week in weeks:
        for day in week.nights:
            waiting = sorted(due, key=lambda one: (due[one], one.week))
            topic = week.topic if week.topic and week.topic.composed else None
            if topic is None:
                topic = next(iter(waiting), None)
                back = tuple(waiting[1:ALL_NIGHT])
            else:
                back = tuple(one for one in waiting if one != topic and due[one] <= day)[:A_NIGHT]
            page = None
            if topic is not None:
                turn = turns[topic] = turns.get(topic, -1) + 1
                page = topic.pages[turn % len(topic.pages)]
            nights.append(YearNight(len(nights) + 1, day, week, topic, page, back))
            for one in (*back, *((topic,) if topic else ())):
                practised[one] = (*practised.get(one, ()), day.toordinal())
                begins = practised[one][0]
                due[one] = day + _gap(tuple(on - begins for on in practised[one]))
    return YearPlan(wishes, weeks, tuple(nights))


@lru_cache(maxsize=4096)
def _gap(days: tuple[int, ...]) -> timedelta:
    """Return how long after the last of some days a skill is due that was practised on them."""
    left = _left(days)
    return left.due - left.last


@lru_cache(maxsize=4096)
def _left(days: tuple[int, ...]) -> ClassSkill:
    """Return what a class of which no answer is known has of a skill that was practised on some days."""
    if not days:
        traces = untouched(1, 1)
        shared = pooled(traces)
        return ClassSkill(traces, shared.shares, shared.by_skill[0], _BEGINS)
    return _left(days[:-1]).practised_on(_BEGINS + timedelta(days=days[-1]))
