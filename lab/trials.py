"""Invented classes write a page, the marking reads it; what was true is kept beside what was said."""

from collections.abc import Sequence
from dataclasses import dataclass

from lab.pupils import Kind, Pupil
from lab.steps import page_of, used
from onewhole.desk.tomorrow.seats import seated
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.reading.class_answers import PupilTexts, read_texts
from onewhole.marking.reading.mark import mark_class
from onewhole.misconceptions.catalogue import by_id
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.reading import read_statement
from onewhole.working.form import ANY_FORM, FormWanted

Ideas = frozenset[str]
NONE: Ideas = frozenset()


@dataclass(frozen=True, slots=True)
class Trial:
    """One pupil on one page.

    ``steady`` says whether the pupil has a steady idea at all; ``truth`` are those that could act on this
    page (a page says nothing of an idea that it cannot show), and ``acts`` counts the problems on which one
    could. ``odds`` is what the diagnosis says of each set of ideas, ``alike`` the sets that it cannot tell
    from its best, with ``together`` the odds that the pupil has one of them (and maybe another beside it),
    and ``likely`` whether the finding says "likely". ``names`` says whether it names any pattern at all, and
    ``unlisted`` are the odds of a steady idea that is not listed. ``sits`` is the group in which the pupil
    works tomorrow.
    """

    kind: Kind
    steady: bool
    truth: Ideas
    acts: int
    odds: tuple[tuple[Ideas, float], ...]
    alike: tuple[Ideas, ...]
    together: float
    likely: bool
    names: bool = False
    unlisted: float = 0.0
    sits: str = ""

    @property
    def none(self) -> float:
        """Return the odds given to no steady idea."""
        return dict(self.odds).get(NONE, 0.0)

    @property
    def certainty(self) -> float:
        """Return the odds given to just the truth: low where the page cannot tell it from another set."""
        return dict(self.odds).get(self.truth, 0.0) if self.truth else 0.0

    @property
    def credit(self) -> float:
        """Return how often the truth is named when one of the sets that fit equally well must be."""
        return 1 / len(self.alike) if self.named else 0.0

    @property
    def named(self) -> bool:
        """Say whether the truth, all of it and no more, is among the sets that the answers fit best."""
        return self.truth in self.alike

    @property
    def holds(self) -> bool:
        """Say whether what is said is true: the pupil has one of the sets that the answers fit best."""
        return any(ideas and ideas <= self.truth for ideas in self.alike)


def problems(typed: Sequence[str]) -> tuple[Problem, ...]:
    """Return problems from typed text, labelled 1, 2, 3.

    >>> [one.label for one in problems(["9 5/8 - 4 6/8", "4 - 1 3/8"])]
    ['1', '2']
    """
    return tuple(Problem(str(at), read_statement(text), text) for at, text in enumerate(typed, start=1))


def trials(
    pupils: Sequence[Pupil], page: Sequence[Problem], seed: str, wanted: FormWanted = ANY_FORM
) -> tuple[Trial, ...]:
    """Let one class write a page, diagnose it and seat it as a teacher's own would be.

    ``wanted`` is what the teacher asks of the form of an answer.
    """
    wrote = (PupilTexts(one.code, tuple(page_of(one, page, seed))) for one in pupils)
    worked = [WorkedProblem(problem, wanted=wanted) for problem in page]
    marks = mark_class(read_texts(wrote, page), wanted, worked)
    found = findings(marks)
    sits = {code: group.name for group in seated(marks.pupils, found).groups for code in group.pupils}
    return tuple(_trial(one, said, page, sits[one.code]) for one, said in zip(pupils, found, strict=True))


def _trial(one: Pupil, found: Finding, page: Sequence[Problem], sits: str) -> Trial:
    truth, acts = truth_on(one, page)
    said = found.diagnosis
    return Trial(
        one.kind,
        bool(one.ideas),
        truth,
        acts,
        tuple((frozenset(each.patterns), float(each.probability)) for each in said.odds),
        tuple(frozenset(patterns) for patterns in said.alike),
        float(said.together),
        found.status is Status.LIKELY,
        bool(found.patterns),
        float(said.unlisted),
        sits,
    )


def truth_on(one: Pupil, page: Sequence[Problem]) -> tuple[Ideas, int]:
    """Return the steady ideas of a pupil that can act on a page, and on how many problems one can."""
    acting = [
        {key for key in one.ideas if by_id(key).slip(problem.statement, problem.told)}
        for problem in page
        if used(one, problem.statement)
    ]
    return frozenset().union(*acting), sum(map(bool, acting))
