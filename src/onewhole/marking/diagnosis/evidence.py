"""The evidence problem by problem: what a set of patterns would write beside what was written."""

from collections.abc import Collection, Sequence
from enum import Enum

from msgspec import Struct

from onewhole.marking.diagnosis.chances import Chances, Intention
from onewhole.marking.diagnosis.hypothesis import Hypothesis
from onewhole.marking.diagnosis.reply import RIGHT, Reply, ReplyKind
from onewhole.marking.diagnosis.tables import Replies, Tables
from onewhole.marking.reading.expected import Expected, Ids
from onewhole.marking.reading.mark import ClassMarks, PupilMarks, Verdict
from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Luck
from onewhole.problems.problem import Problem


class Speaks(Enum):
    """What an answer says about a set of patterns."""

    FOR = "for"
    AGAINST = "against"
    NEITHER = "neither"


class Beside(Struct, frozen=True):
    """One problem as evidence.

    ``would_write`` are the answers that the patterns would write; it is empty where they cannot show, and
    then a right answer is no evidence against them. ``luck`` says that there they come out right by luck.
    ``fits`` are the patterns that this answer speaks for, and ``against`` those that it speaks against: of
    sets that cannot be told apart one answer may do both. ``exact`` says that what speaks for them is just
    what they write, or that its first false line is theirs.
    """

    label: str
    verdict: Verdict
    written: str
    would_write: tuple[Outcome, ...]
    speaks: Speaks
    exact: bool = False
    luck: bool = False
    fits: Ids = ()
    against: Ids = ()


def evidence(
    marks: ClassMarks, page: Tables, pupil: PupilMarks, given: Replies, sets: Sequence[Hypothesis]
) -> tuple[Beside, ...]:
    """Compare sets of patterns that the answers cannot distinguish with the answers of one pupil.

    What an answer fits is asked of the table that the odds come from, so that neither can say what the other
    denies.
    """
    found = []
    for at, (asked, mark) in enumerate(zip(marks.expected, pupil.marks, strict=True)):
        acting = [one.acting(asked.shows) for one in sets]
        would = {key: slip.wrote for slip in asked.slips if (key := slip.pattern) in acting}
        here = given[at]
        says = {} if here is None else {key: _speaks(page.chances[at], here, key) for key in would}
        fits = tuple(key for key, said in says.items() if said is Speaks.FOR)
        right = mark.verdict in {Verdict.RIGHT, Verdict.FORM}
        found.append(
            Beside(
                mark.label,
                mark.verdict,
                mark.written.text,
                tuple(dict.fromkeys(would.values())),
                _together(tuple(says.values())),
                any(exactly(asked, here, key) for key in fits),
                not would and right and _lucky(sets, asked.problem),
                fits,
                tuple(key for key, said in says.items() if said is Speaks.AGAINST),
            )
        )
    return tuple(found)


def _speaks(table: Chances, here: Reply, key: Intention) -> Speaks:
    """Say what an answer shows of a pattern; one unit off what it writes may be a slip, and shows nothing."""
    if table.fits(here, key):
        return Speaks.FOR
    if here != RIGHT and here in table.beside[key]:
        return Speaks.NEITHER
    return Speaks.AGAINST


def _together(said: Collection[Speaks]) -> Speaks:
    """Say what an answer shows of sets that cannot be told apart: for them, where it is for one of them."""
    if Speaks.FOR in said:
        return Speaks.FOR
    return Speaks.NEITHER if Speaks.NEITHER in said or not said else Speaks.AGAINST


def exactly(asked: Expected, here: Reply | None, key: Intention) -> bool:
    """Say whether a reply that fits a pattern is just what it writes, and not the same amount otherwise."""
    if here is None or here.sort is not ReplyKind.WRITTEN:
        return here is not None and here.sort is ReplyKind.LINE
    return key in asked.exact.get(here.key, ())


def _lucky(sets: Sequence[Hypothesis], asked: Problem) -> bool:
    keys = {key for one in sets for key in one.patterns}
    return any(by_id(key).meets(asked.statement, asked.told) is Luck.RIGHT for key in keys)
