"""Bring back: when each skill that was practised is due again, by what the class's nights left of it."""

from collections.abc import Iterable, Sequence
from datetime import date, timedelta

from msgspec import Struct

from onewhole.desk.classes.class_records import NightPage
from onewhole.desk.classes.night_summary import NightSummaries
from onewhole.desk.classes.practised import Practised, skills_of
from onewhole.findings.skill import Skill
from onewhole.languages.english.coming_back import due_told, last_told, still_there
from onewhole.languages.english.skills import skill_called
from onewhole.marking.practice.due import LATEST, LEFT, OF, Band
from onewhole.notations.text import text
from onewhole.problems.parallel import parallel
from onewhole.statements.statement import Statement

#: A skill that is due within so many days is told; our own: in time for the pages of this week and the next.
AHEAD_DAYS = 13
#: What stands beside the hints. Source: Pashler and others (2007), as quoted in their official summary; that
#: it shows in a class is not certain (Ebersbach and Barzagar Nazari 2020, abstract).
WHY = "Coming back to a skill after some weeks is advised; how much it helps one class is not certain."
#: How the figures are known, in sentences. What it was measured on: `docs/practice.md`.
HOW = (
    "That coming back is advised: Pashler and others (2007).",
    (
        "Every pupil's right and wrong answers are read night by night: practice gives a skill, days take "
        "it, each night of practice makes it last longer. What one pupil's answers leave open is borrowed "
        "from the pupil's other skills and from the class."
    ),
    (
        "“7 in 10 (5 to 9)” means: asked one problem each, about 7 of 10 pupils would get it right, most "
        "likely between 5 and 9 (in 81 to 97 of 100 cases, on invented classes). Whether a child forgot or "
        "slipped, no count can tell: look at the answers."
    ),
    (
        f"A skill is due when one in {OF} of the right answers that were to be expected after its last night "
        f"would be gone, at the latest after {LATEST // 7} weeks. Both are our own choice; no source gives a "
        "number."
    ),
    "A night still to come counts as practised, and so does one whose answers still have to be read.",
)
assert (LEFT, OF) == (4, 5)  # "one in five would be gone" is what is said


class BringBack(Struct, frozen=True):
    """A skill that comes back: when it was last on a page, how it went, how much is left, when it is due.

    ``right`` of ``read`` are the class's answers of that night that could be read; both 0 where none was.
    ``band`` is what share would be right ``today``, ``problem`` one of the skill with new numbers.
    """

    skill: Skill
    last: date
    page: str
    right: int
    read: int
    band: Band
    due: date
    problem: str
    today: date

    @property
    def called(self) -> str:
        """Return what the skill is called."""
        return skill_called(self.skill)

    @property
    def days(self) -> int:
        """Return how many days ago it was on a page."""
        return (self.today - self.last).days

    @property
    def told(self) -> str:
        """Return how many would still have it, and when it is due."""
        return f"{still_there(self.band.tenths)}; {due_told(self.due, self.today)}"

    @property
    def reason(self) -> str:
        """Return in a sentence when it was last on a page, from what was counted."""
        return last_told(self.days, self.right, self.read)


def bring_back(
    pages: Sequence[NightPage], left: NightSummaries, practised: Practised, today: date
) -> tuple[BringBack, ...]:
    """Return the skills that are due within the next two weeks, those due first first.

    ``pages`` are the nights of a class by day, ``left`` their summaries, ``practised`` what they left.
    """
    taken = {problem.statement for page in pages[-20:] for problem in page.sheet.problems}
    found = []
    for named, page in practised.last.items():
        due = practised.due[named]
        if due > today + timedelta(days=AHEAD_DAYS):
            continue
        places = [at for at, one in enumerate(skills_of(page.kept.typed)) if one is named]
        verdicts = list(_verdicts(left, page.night.number, places))
        right, read = sum(one in "rf" for one in verdicts), sum(one in "rfw" for one in verdicts)
        day, band = page.night.day, practised.one_skill(named).band(max(today, page.night.day))
        new = text(new_problem(page.sheet.problems[places[0]].statement, taken))
        found.append(BringBack(named, day, page.name, right, read, band, due, new, today))
    return tuple(sorted(found, key=lambda one: (one.due, one.band.share, one.skill.value)))


def new_problem(model: Statement, taken: Iterable[Statement]) -> Statement:
    """Return a problem like one with new numbers, none of those ``taken``; the model where none is left."""
    gone = set(taken)
    return next((one for one in parallel(model) if one not in gone), model)


def _verdicts(left: NightSummaries, night: int, places: Sequence[int]) -> Iterable[str]:
    for leave in left.nights:
        if leave.night == night:
            for pupil in leave.pupils.values():
                yield from (pupil.verdicts[at] for at in places)
