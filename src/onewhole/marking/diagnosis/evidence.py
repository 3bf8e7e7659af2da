"""The evidence problem by problem: what a set of patterns would write beside what was written."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from enum import Enum

from onewhole.marking.diagnosis.chances import Chances
from onewhole.marking.diagnosis.hypothesis import Hypothesis
from onewhole.marking.diagnosis.reply import RIGHT, Reply, ReplyKind
from onewhole.marking.diagnosis.tables import Replies, Tables
from onewhole.marking.reading.mark import ClassMarks, PupilMarks, Verdict
from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import luck
from onewhole.statements.statement import Statement


class Speaks(Enum):
    """What an answer says about a set of patterns."""

    FOR = "for"
    AGAINST = "against"
    NEITHER = "neither"


@dataclass(frozen=True, slots=True)
class Beside:
    """One problem as evidence.

    ``would_write`` are the answers that the patterns would write; it is empty where they cannot show, and
    then a right answer is no evidence against them. ``luck`` says that there they come out right by luck.
    ``exact`` says that what speaks for them is just what they write, or that its first false line is
    theirs.
    """

    label: str
    verdict: Verdict
    written: str
    would_write: tuple[Outcome, ...]
    speaks: Speaks
    exact: bool = False
    luck: bool = False


def evidence(
    marks: ClassMarks, page: Tables, pupil: PupilMarks, given: Replies, sets: Sequence[Hypothesis]
) -> tuple[Beside, ...]:
    """Compare sets of patterns that the answers cannot distinguish with the answers of one pupil."""
    found = []
    for at, (asked, mark) in enumerate(zip(marks.expected, pupil.marks, strict=True)):
        acting = [one.acting(asked.shows) for one in sets]
        would = {key: slip.wrote for slip in asked.slips if (key := slip.pattern) in acting}
        here = given[at]
        speaks = Speaks.NEITHER
        if would and here is not None:
            speaks = _speaks(page.chances[at], here, would)
        lucky = (
            not would
            and mark.verdict in {Verdict.RIGHT, Verdict.FORM}
            and _lucky(sets, asked.problem.statement)
        )
        exact = speaks is Speaks.FOR and here is not None and here.sort in {ReplyKind.WRITTEN, ReplyKind.LINE}
        outcomes = tuple(dict.fromkeys(would.values()))
        found.append(Beside(mark.label, mark.verdict, mark.written.text, outcomes, speaks, exact, lucky))
    return tuple(found)


def _speaks(table: Chances, here: Reply, patterns: Collection[str]) -> Speaks:
    """Say what an answer shows; one unit off what a pattern writes may be a slip, and shows nothing."""
    if any(table.fits(here, key) for key in patterns):
        return Speaks.FOR
    if here != RIGHT and any(here in table.beside[key] for key in patterns):
        return Speaks.NEITHER
    return Speaks.AGAINST


def _lucky(sets: Sequence[Hypothesis], statement: Statement) -> bool:
    return any(luck(by_id(key), statement) for key in {key for one in sets for key in one.patterns})
