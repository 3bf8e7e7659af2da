"""Bring back: skills that were practised weeks ago and on no page since, each with a problem to add."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from functools import lru_cache

from onewhole.desk.classes.class_records import NightPage, sheet_typed
from onewhole.desk.classes.night_summary import NightSummaries
from onewhole.findings.skill import Skill
from onewhole.languages.english.skills import skill_called
from onewhole.notations.text import text
from onewhole.problems.parallel import parallel
from onewhole.problems.skill import skill

#: A skill is due when it was on no page for so many days; our own: "weeks" at their shortest.
DUE_AFTER_DAYS = 14
#: What stands beside the hints. Source: Pashler and others (2007), as quoted in their official summary; that
#: it shows in a class is not certain (Ebersbach and Barzagar Nazari 2020, abstract).
WHY = (
    "Coming back to a skill after some weeks is advised (Pashler and others 2007); how much it helps one "
    "class is not certain."
)


@dataclass(frozen=True, slots=True)
class BringBack:
    """A skill that is due: when it was last on a page, how it went then, and a problem with new numbers.

    ``right`` of ``read`` are the class's answers of that night that could be read; both 0 where none was.
    """

    skill: Skill
    last: date
    days: int
    page: str
    right: int
    read: int
    problem: str

    @property
    def called(self) -> str:
        """Return what the skill is called."""
        return skill_called(self.skill)

    @property
    def reason(self) -> str:
        """Return in a sentence why it is due, from what was counted."""
        went = f"; {self.right} of {self.read} answers were right then" if self.read else ""
        return f"Last on a page {self.days} days ago{went}."


def bring_back(pages: Sequence[NightPage], left: NightSummaries, today: date) -> tuple[BringBack, ...]:
    """Return the skills that are due, the longest ago first.

    ``pages`` are the nights of a class by day, ``left`` their summaries. A night still to come counts as
    practised: what is planned already is not due.
    """
    last: dict[Skill, NightPage] = {}
    for page in pages:
        for one in skills_of(page.kept.typed):
            last[one] = page
    taken = {problem.statement for page in pages[-20:] for problem in page.sheet.problems}
    found = []
    for named, page in last.items():
        days = (today - page.night.day).days
        if days < DUE_AFTER_DAYS:
            continue
        places = [at for at, one in enumerate(skills_of(page.kept.typed)) if one is named]
        verdicts = list(_verdicts(left, page.night.number, places))
        right, read = sum(one in "rf" for one in verdicts), sum(one in "rfw" for one in verdicts)
        model = page.sheet.problems[places[0]].statement
        new = next((one for one in parallel(model) if one not in taken), model)
        found.append(BringBack(named, page.night.day, days, page.name, right, read, text(new)))
    return tuple(sorted(found, key=lambda one: (one.last, one.skill.value)))


@lru_cache(maxsize=512)
def skills_of(typed: str) -> tuple[Skill, ...]:
    r"""Return the skill of each problem of a typed sheet; a text read before costs nothing.

    >>> [one.name for one in skills_of("1. 2/8 + 3/8\n2. 52 - 27")]
    ['ADD', 'WHOLE_NUMBERS_REGROUPED']
    """
    return tuple(skill(problem.statement) for problem in sheet_typed(typed).problems)


def _verdicts(left: NightSummaries, night: int, places: Sequence[int]) -> Iterable[str]:
    for leave in left.nights:
        if leave.night == night:
            for pupil in leave.pupils.values():
                yield from (pupil.verdicts[at] for at in places)
