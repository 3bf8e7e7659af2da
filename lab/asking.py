"""What asking one or two problems more settles: of the cases that a page leaves open, and how often rightly.

After the page, the pupils whose case is open write the problems of `ask next`, and in another run as many
blind ones, parallel to a problem of the page drawn by lot. A case counts as settled when a pattern is likely
(two exact fits, one of them asked, at the odds that are asked for), when a steady idea that is not listed
reaches those odds, or when no steady idea does and what was asked came out right. Settling by the odds alone
is told beside it.
"""

from collections.abc import Callable, Iterable, Sequence
from concurrent.futures import Executor
from dataclasses import dataclass, replace
from functools import partial
from itertools import islice
from random import Random

from lab.measures import Share
from lab.nights import CLASS, Night
from lab.outside import written
from lab.pages import composed, room12
from lab.pupils import Kind, Pupil, school_class
from lab.rates import USUAL
from lab.steps import Pen, cell, page_of
from lab.table import Part, held, percent
from lab.trials import NONE, Ideas, problems, truth_on
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.ask_next import ask_next
from onewhole.marking.diagnosis.diagnosis import weigh
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.asked import AskedAnswer, asked_problem, with_asked
from onewhole.marking.reading.class_answers import PupilTexts, read_texts
from onewhole.marking.reading.mark import ClassMarks, Verdict, mark_class
from onewhole.notations.text import text
from onewhole.problems.parallel import parallel
from onewhole.statements.statement import Statement

#: A class as usual, with some pupils whose steady idea no pattern describes.
OUTSIDE = replace(USUAL, outside=0.08)
WRONGLY = 0.05
CONFIDENT = 0.9
PROBLEMS, PAGES = 12, 4
#: A blind question is one of so many problems like one of the page.
PARALLELS = 6


@dataclass(frozen=True, slots=True)
class Settled:
    """What is said once an open case is settled: sets of ideas (none: no steady one), or one not listed."""

    sets: tuple[Ideas, ...]
    unlisted: bool = False


@dataclass(frozen=True, slots=True)
class OpenCase:
    """A pupil whose case the page left open: the truth, and what settled it, by each way of asking."""

    kind: Kind
    truth: Ideas
    outside: bool
    asked: Settled | None
    blind: Settled | None
    asked_by_odds: Settled | None
    blind_by_odds: Settled | None

    def rightly(self, said: Settled) -> bool:
        """Say whether what was said is true."""
        if said.unlisted:
            return self.outside
        if NONE in said.sets:
            return not self.truth and not self.outside
        return any(ideas <= self.truth for ideas in said.sets)


Way = Callable[[OpenCase], Settled | None]


def cases(night: Night, which: int) -> tuple[OpenCase, ...]:
    """Let one class write its page, then what those are asked whose case is open, and as many blind ones."""
    seed = f"{night.seed} {which}"
    page = problems(night.pages[which % len(night.pages)])
    pupils = school_class(night.rates, CLASS, seed)
    marks = mark_class(read_texts([PupilTexts(one.code, page_of(one, page, seed)) for one in pupils], page))
    weighed = weigh(marks)
    found = findings(marks, weighed.diagnoses)
    told = [
        tuple([each.statement for each in ask]) for ask in ask_next(weighed, marks.expected, findings=found)
    ]
    chosen = dict(zip(pupils, told, strict=True))
    chance = Random(f"blind {seed}")
    blind = {
        one: tuple(_blind([each.statement for each in page], chance) for _ in ask)
        for one, ask in chosen.items()
    }
    after = [_after(marks, ask, f"{seed} {name}") for name, ask in (("asked", chosen), ("blind", blind))]
    return tuple(
        OpenCase(
            one.kind,
            truth_on(one, page)[0],
            any(one.outside and written(one.outside, each.statement) for each in page),
            _twice(asked),
            _twice(other),
            _by_odds(asked),
            _by_odds(other),
        )
        for one, asked, other in zip(pupils, *after, strict=True)
        if chosen[one]
    )


def _blind(page: Sequence[Statement], chance: Random) -> Statement:
    """Return a problem parallel to one of the page drawn by lot; that one itself for want of others."""
    drawn = chance.choice(page)
    return chance.choice([*islice(parallel(drawn), PARALLELS)] or [drawn])


def _after(marks: ClassMarks, asked: dict[Pupil, tuple[Statement, ...]], seed: str) -> tuple[Finding, ...]:
    rows = [
        AskedAnswer(one.code, asked_problem(text(each)), read_written(cell(pen, each) or "-"))
        for one, ask in asked.items()
        for pen in [Pen(one, Random(f"{seed} {one.code}"))]
        for each in ask
    ]
    told = with_asked(marks, rows)
    return findings(told, weigh(told).diagnoses)


def _twice(found: Finding) -> Settled | None:
    """Tell what is settled by the rule for "likely", and by what was answered.

    A pattern must be likely and fit an answer of the talk exactly; that there is no steady idea is settled
    only where what was asked came out right.
    """
    asked = found.diagnosis.asked
    if found.status is Status.LIKELY:
        fits = any(one.exact for one in asked)
        return Settled(tuple(map(frozenset, found.diagnosis.alike))) if fits else None
    if float(found.diagnosis.unlisted) >= CONFIDENT:
        return Settled((), unlisted=True)
    right = all(one.verdict in {Verdict.RIGHT, Verdict.FORM} for one in asked)
    return Settled((NONE,)) if right and _none(found) >= CONFIDENT else None


def _by_odds(found: Finding) -> Settled | None:
    """Tell what is settled by the odds alone."""
    if found.diagnosis.confident:
        return Settled(tuple(map(frozenset, found.diagnosis.alike)))
    return Settled((NONE,)) if _none(found) >= CONFIDENT else None


def _none(found: Finding) -> float:
    return next((float(one.probability) for one in found.diagnosis.odds if not one.patterns), 0.0)


def asking(classes: int, pool: Executor | None) -> Part:
    """Measure a composed page and the example's own: what asking settles, rightly and wrongly."""
    pages = {
        f"composed, {PROBLEMS} problems": tuple(composed(PROBLEMS, seed) for seed in range(1, PAGES + 1)),
        "the example's own page": (room12(),),
    }
    rows = []
    for words, typed in pages.items():
        work = partial(cases, Night(typed, classes, OUTSIDE, "asking"))
        found: Iterable[Sequence[OpenCase]] = (pool.map if pool else map)(work, range(classes))
        each = [case for one in found for case in one]
        for way, settled in WAYS.items():
            rows.append((f"{words}: {way}", str(len(each)), *_told(each, settled, way in GOALS)))
    note = (
        "Of the pupils whose case the page leaves open; 8 in 100 of each class hold a steady idea that no "
        "pattern describes. Settled: two exact fits, one of them asked; or a steady idea that is not listed; "
        "or none, where what was asked came out right; at the odds asked for. None is settled before."
    )
    heads = ("page, and what is asked", "open", "settled", "rightly", "wrongly", f"goal: under {WRONGLY:.0%}")
    return Part("What asking settles", note, heads, tuple(rows))


def _told(each: Sequence[OpenCase], settled: Way, goal: bool) -> tuple[str, ...]:
    def of(holds: Callable[[OpenCase, Settled], bool]) -> Share:
        found = [(said := settled(one)) is not None and holds(one, said) for one in each]
        return Share(sum(found), len(found))

    wrongly = of(lambda one, said: not one.rightly(said))
    return (
        percent(of(lambda _one, _said: True)),
        percent(of(OpenCase.rightly)),
        percent(wrongly),
        held(wrongly.value < WRONGLY) if goal else "",
    )


WAYS: dict[str, Way] = {
    "asked next": lambda one: one.asked,
    "as many blind questions": lambda one: one.blind,
    "asked next, by the odds alone": lambda one: one.asked_by_odds,
    "blind, by the odds alone": lambda one: one.blind_by_odds,
}
GOALS = frozenset({"asked next"})
