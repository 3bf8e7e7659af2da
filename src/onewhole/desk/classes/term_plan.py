"""The plan of spaced review: which skill comes back on which night of the weeks ahead."""

from collections import Counter
from datetime import date, timedelta

from msgspec import Struct

from onewhole.desk.classes.practised import Practised
from onewhole.desk.keep.pupil_cache import pupil_cache
from onewhole.findings.skill import Skill
from onewhole.languages.english.skills import skill_called
from onewhole.writers.term_picture import TermRow, term_picture, weekday_name

#: A quarter of a school year of 36 weeks is planned ahead, and so many weeks gone by are shown beside it.
AHEAD, BEHIND = 9, 3
#: So many skills come back on one night, at most: two or three problems a page are common practice.
A_NIGHT = 2
#: The weekdays on which a class takes pages home, where it had fewer nights than this: Monday to Thursday.
FEW_NIGHTS, USUAL_WEEKDAYS = 4, frozenset(range(4))
#: Of so many last nights the weekdays are looked at.
LOOKED_AT = 12
#: What stands beside the picture.
PLAN = (
    "Each skill is planned for the first free night on which it is due, two a night at most, and then again "
    "as if it had been practised on that night. Every answer that comes in changes the plan. It knows no "
    "days off, and it sets no page."
)


class Planned(Struct, frozen=True):
    """A skill with the nights planned for it: in words, and as the picture has it."""

    skill: Skill
    row: TermRow

    @property
    def called(self) -> str:
        """Return what the skill is called."""
        return self.row.name

    @property
    def nights(self) -> str:
        """Return the nights planned for it, in words; "" for none."""
        return ", ".join(map(weekday_name, self.row.planned))


class TermPlan(Struct, frozen=True):
    """The weeks shown by their Mondays, a row for each skill, the next due first; ``picture`` is SVG."""

    weeks: tuple[date, ...]
    rows: tuple[Planned, ...]
    picture: str


@pupil_cache(maxsize=8)
def term_plan(known: Practised, today: date) -> TermPlan:
    """Return the plan from a day on; the same once more costs nothing."""
    this_week = today - timedelta(days=today.weekday())
    weeks = tuple(this_week + timedelta(weeks=at) for at in range(-BEHIND, AHEAD))
    planned = _planned(known, today, weeks[-1] + timedelta(days=6))
    on_page = {named: Counter[date]() for named in known.skills}
    for night in known.nights:
        monday = night.day - timedelta(days=night.day.weekday())
        if monday in weeks:
            for named in night.skills:
                on_page[named][monday] += 1
    rows = [
        Planned(named, TermRow(skill_called(named), dict(sorted(on_page[named].items())), planned[named]))
        for named in known.skills
    ]
    rows.sort(key=lambda one: (known.due[one.skill], one.called))
    return TermPlan(weeks, tuple(rows), term_picture([one.row for one in rows], weeks, this_week))


def _planned(known: Practised, today: date, end: date) -> dict[Skill, tuple[date, ...]]:
    """Give every free night the skills that are due by then, those due first first."""
    due = dict(known.due)
    planned: dict[Skill, tuple[date, ...]] = dict.fromkeys(known.skills, ())
    taken = {night.day for night in known.nights}
    weekdays = _weekdays(known)
    left = {named: known.one_skill(named) for named in known.skills}
    for ordinal in range(today.toordinal(), end.toordinal() + 1):
        day = date.fromordinal(ordinal)
        if day in taken or day.weekday() not in weekdays:
            continue
        waiting = sorted((one for one in due if due[one] <= day), key=lambda one: (due[one], one.value))
        for named in waiting[:A_NIGHT]:
            planned[named] += (day,)
            left[named] = left[named].practised_on(day)
            due[named] = left[named].due
    return planned


def _weekdays(known: Practised) -> frozenset[int]:
    nights = [night.day.weekday() for night in known.nights[-LOOKED_AT:]]
    return frozenset(nights) if len(nights) >= FEW_NIGHTS else USUAL_WEEKDAYS
