"""All that is told about one pupil."""

from collections.abc import Sequence
from datetime import date
from fractions import Fraction

from onewhole.findings.simple_rule import PartMade, SimpleRule
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.evidence import Speaks
from onewhole.marking.diagnosis.finding import POSSIBLE_FROM, findings
from onewhole.marking.diagnosis.notebook import KeptFinding, Notebook, NotebookNight
from onewhole.marking.diagnosis.report import Report, report
from onewhole.marking.reading.asked import asked_problem
from tests.kit.answers import TWELVE, all_right, by_pattern, marked_against, right
from tests.kit.odds import PAGE, known, weighed


def _report(cells: Sequence[str], typed: tuple[str, ...] = TWELVE) -> Report:
    marks = marked_against(known(typed)[0], {"K00": [""] * len(typed), "K01": cells})
    read = weighed({"K00": [""] * len(typed), "K01": cells}, typed)
    return report(marks, read, findings(marks, read.diagnoses)[1])


def test_a_likely_pattern_with_all_its_evidence() -> None:
    """One row a problem, the odds, nothing else possible beside it."""
    found = _report(by_pattern("A04", PAGE))
    assert (found.pupil, found.finding.status, found.sets) == ("K01", Status.LIKELY, (("A04",),))
    assert found.odds > Fraction(99, 100) > Fraction(1, 100) > found.none
    assert [row.mark.label for row in found.rows] == [problem.label for problem in PAGE]
    assert [row.beside.speaks for row in found.rows].count(Speaks.FOR) == 9
    assert found.answered


def test_what_else_stays_possible_is_named() -> None:
    """A second pattern on one problem more: possible beside the first, and not the first again."""
    few = by_pattern("A01", PAGE)
    found = _report([*few[:4], by_pattern("A20", PAGE)[4], *few[5:8], by_pattern("A21", PAGE)[8], *few[9:]])
    assert found.sets == (("A01",),)
    assert all(one.probability >= POSSIBLE_FROM and "A01" not in one.patterns for one in found.others)


def test_one_fit_among_right_answers_names_nothing() -> None:
    """The odds are small: no pattern is named, neither as found nor as what else may be."""
    found = _report([*all_right(PAGE)[:6], "5 1/8", *all_right(PAGE)[7:]])
    assert (found.finding.status, found.sets, found.others) == (Status.UNSTEADY, (), ())
    assert found.odds == 0
    assert found.rows[6].mark.fits == ("A01",)
    assert {row.beside.speaks for row in found.rows} == {Speaks.NEITHER}


def test_no_pattern_has_no_sets() -> None:
    """Scattered answers, all right, and nothing written."""
    scattered = _report(["1 1/7", "9 1/7", *[right(problem) for problem in PAGE[2:]]])
    assert (scattered.finding.status, scattered.sets) == (Status.UNSTEADY, ())
    assert scattered.odds == 0
    assert _report(all_right(PAGE)).sets == ()
    nothing = _report([""] * 12)
    assert (nothing.answered, nothing.sets) == (False, ())
    assert nothing.none == 0


def test_what_is_asked_and_what_was_found_before_are_handed_on() -> None:
    """As they are given."""
    marks = marked_against(known()[0], {"K01": all_right(PAGE)})
    read = weighed({"K01": all_right(PAGE)})
    [found] = findings(marks, read.diagnoses)
    ask = (asked_problem("9 5/8 - 6 6/8"),)
    kept, day = KeptFinding("K01", ("A01",)), date(2026, 11, 10)
    night = NotebookNight(day, "Kites", {}, {}, (kept,))
    told = report(marks, read, found, ask, (Notebook((night,)), day))
    assert (told.ask, told.earlier, told.withdrawn) == (ask, ((night, kept),), ())


def test_a_steady_idea_that_is_not_listed_is_told_with_its_rule() -> None:
    """Nothing is named beside it, and the rule is one that writes all the wrong answers."""
    larger = "3 4/6, 3 7/8, 3 2/3, 3 2/4, 4 3/8, 4 4/5, 5 6/8, 4 4/6, 4 3/4, 3 4/5, 3 5/12, 5 9/12"
    found = _report(larger.split(", "))
    assert (found.finding.status, found.sets, found.others) == (Status.UNLISTED, (), ())
    assert found.rule == SimpleRule(PartMade.WORKED, PartMade.LARGER, PartMade.FIRST)
    assert found.unlisted > Fraction(9, 10) > found.none
    assert _report(by_pattern("A04", PAGE)).rule is None
