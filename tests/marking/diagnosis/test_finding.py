"""What the answers of one pupil may show."""

from collections.abc import Mapping
from fractions import Fraction

import pytest
from msgspec.structs import replace

from lab.outside import written
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.evidence import Speaks
from onewhole.marking.diagnosis.finding import CAUTION, finding
from onewhole.notations.text import text
from tests.kit.answers import TWELVE, all_right, by_pattern, found, marked_against, page, right
from tests.kit.odds import known, weighed

PAGE = page()


def _with(changes: dict[str, str]) -> list[str]:
    """A page that is right but for the answers given by label."""
    return [changes.get(problem.label, right(problem)) for problem in PAGE]


def test_all_right_shows_nothing() -> None:
    """No wrong answer, no finding; neither do blanks and unreadable cells make one."""
    for cells in (all_right(PAGE), [""] * 12, ["see me"] * 12):
        finding = found(PAGE, cells)
        assert (finding.status, finding.patterns, finding.wrong) == (Status.NONE, (), ())


@pytest.mark.parametrize(
    "pattern", ["A01", "A02", "A03", "A04", "A06", "A08", "A10", "A13", "A20", "A24", "A29"]
)
def test_a_pupil_who_follows_one_pattern_is_likely_to_be_found(pattern: str) -> None:
    """On a page that shows it twice or more the pattern is among those that fit best."""
    finding = found(PAGE, by_pattern(pattern, PAGE))
    assert finding.status is Status.LIKELY
    assert pattern in finding.patterns
    assert finding.evidence == finding.wrong
    assert finding.against == ()


def test_one_fit_among_right_answers_names_nothing() -> None:
    """One answer that A01 writes, everything else right: it stays a mark in the grid."""
    finding = found(PAGE, _with({"7": "5 1/8"}))
    assert (finding.status, finding.patterns, finding.wrong) == (Status.UNSTEADY, (), ("7",))


def test_two_fits_among_right_answers_are_possible() -> None:
    """What speaks against the pattern is named beside what fits it."""
    four = page(("9 5/8 - 4 6/8", "8 3/8 - 3 6/8", "7 3/5 - 3 4/5", "4 1/3 - 1 2/3"))
    finding = found(four, ["5 1/8", "5 3/8", "3 4/5", "2 2/3"])
    assert (finding.status, finding.patterns) == (Status.POSSIBLE, ("A01",))
    assert (finding.evidence, finding.against) == (("1", "2"), ("3", "4"))


@pytest.mark.parametrize("second", ["4 5/6", "4 3/6", "", "5 1/6", "29/6"])
def test_a_finding_never_names_a_pattern_without_its_evidence(second: str) -> None:
    """2/2 is as much as A30 gives for 4 1/2 - 2 1/2, and just what A16 would write in another form."""
    finding = found(page(("4 1/2 - 2 1/2", "9 1/6 - 4 4/6")), ["2/2", second])
    assert bool(finding.evidence) == (finding.status in {Status.LIKELY, Status.POSSIBLE})
    assert all(one.evidence for one in finding.fittings)


def test_several_patterns_stay_while_nothing_tells_them_apart() -> None:
    """3 4/8 for 5 1/8 - 2 5/8 fits A01 and A02; a second problem keeps the one that fits both."""
    two = page(("5 1/8 - 2 5/8", "9 5/8 - 4 6/8"))
    both = found(two, ["3 4/8", "4 7/8"])
    assert both.patterns == ()
    assert {key for ids in both.diagnosis.alike for key in ids} >= {"A01", "A02"}
    assert found(two, ["3 4/8", "5 1/8"]).patterns == ("A01",)


def test_twins_are_one_problem() -> None:
    """Two answers on problems that are built alike are one fit: possible, not likely."""
    twins = page(("9 5/8 - 4 6/8", "8 4/8 - 3 5/8", "5 4/6 - 2 1/6"))
    finding = found(twins, ["5 1/8", "5 1/8", "3 3/6"])
    assert (finding.status, finding.patterns, finding.evidence) == (Status.POSSIBLE, ("A01",), ("1", "2"))
    apart = page(("9 5/8 - 4 6/8", "8 3/8 - 3 6/8"))
    assert found(apart, ["5 1/8", "5 3/8"]).status is Status.LIKELY


def test_the_same_amount_fits_but_two_exact_answers_make_it_likely() -> None:
    """Renamed answers are evidence; at least two exactly as the pattern writes them make it likely."""
    three = page(("9 5/8 - 4 6/8", "7 1/8 - 2 5/8", "8 1/8 - 3 3/8"))
    assert found(three, ["4 1/4", "4 6/16", "4 10/16"]).status is Status.POSSIBLE
    exact = found(three, ["4 1/4", "4 3/8", "4 5/8"])
    assert (exact.status, exact.patterns, exact.evidence) == (Status.LIKELY, ("A06",), ("1", "2", "3"))


def test_as_many_against_as_for_is_not_likely() -> None:
    """Two fits and two right answers on problems that show the pattern: possible only."""
    four = page(("9 5/8 - 4 6/8", "8 3/8 - 3 6/8", "7 3/5 - 3 4/5", "4 1/3 - 1 2/3"))
    finding = found(four, ["5 1/8", "5 3/8", "3 4/5", "2 2/3"])
    assert (finding.status, finding.evidence, finding.against) == (Status.POSSIBLE, ("1", "2"), ("3", "4"))
    assert found(four, ["5 1/8", "5 3/8", "3 4/5", ""]).status is Status.LIKELY


def test_a_right_answer_that_cannot_show_a_pattern_is_no_evidence() -> None:
    """Problems 1, 2 and 10 need no regrouping in a difference: they do not speak against A01."""
    finding = found(PAGE, by_pattern("A01", PAGE))
    assert finding.against == ()


def test_different_errors_are_no_steady_pattern() -> None:
    """Wrong answers that fit nothing, or each something else."""
    assert found(PAGE, _with({"3": "9 9/7", "7": "1 1/7"})).status is Status.UNSTEADY
    scattered = found(PAGE, _with({"3": "3 1/3", "4": "5 3/4", "6": "3 9/5", "7": "4 2/8", "8": "9 9/7"}))
    assert (scattered.status, scattered.patterns) == (Status.UNSTEADY, ())


def test_fact_slips_are_slips_and_never_a_pattern() -> None:
    """One piece beside right in two places: nothing is found, both labels are kept as slips."""
    finding = found(PAGE, _with({"2": "3 4/8", "10": "4 3/5"}))
    assert (finding.status, finding.patterns, finding.slips) == (Status.NONE, (), ("2", "10"))


def test_a_pattern_with_a_slip_counts_neither_way() -> None:
    """5 6/8 for 7 1/8 - 2 6/8 is A01 and one piece too many: no fit, and nothing that speaks against A01."""
    three = page(("9 5/8 - 4 6/8", "8 3/8 - 3 6/8", "7 1/8 - 2 6/8"))
    finding = found(three, ["5 1/8", "5 3/8", "5 6/8"])
    assert (finding.status, finding.patterns) == (Status.LIKELY, ("A01",))
    assert (finding.evidence, finding.against) == (("1", "2"), ())


def test_the_caution_stands_ready() -> None:
    """The sentence that goes beside every finding."""
    assert CAUTION == "A pattern found in a few answers is a hint for a talk with the child, never a label."


def test_the_page_is_the_one_of_the_kit() -> None:
    """Twelve problems, so that the labels above mean what they say."""
    assert len(TWELVE) == len(PAGE) == 12


def test_two_wrong_answers_that_speak_against_each_other_are_unsteady() -> None:
    """One fits A06; the other could have shown it, and does not: there is nothing to suggest."""
    finding = found(PAGE, _with({"7": "4 2/8", "12": "9 1/7"}))
    assert (finding.status, finding.patterns) == (Status.UNSTEADY, ())


LARGER = ["3 4/6", "3 7/8", "3 2/3", "3 2/4", "4 3/8", "4 4/5", "5 6/8", "4 4/6", "4 3/4", "3 4/5"]


def test_a_steady_idea_that_is_not_listed_is_said_to_be_one() -> None:
    """The larger number of pieces on every problem: no pattern is named."""
    finding = found(PAGE, [*LARGER, "3 5/12", "5 9/12"])
    assert (finding.status, finding.patterns) == (Status.UNLISTED, ())
    assert finding.diagnosis.unlisted > Fraction(9, 10)


def test_right_answers_where_it_should_act_speak_against_an_idea_that_is_not_listed() -> None:
    """The same on the first three problems, and all right after them."""
    some = found(PAGE, [*LARGER[:3], *all_right(PAGE)[3:]])
    assert some.status is Status.UNSTEADY
    assert some.diagnosis.unlisted < Fraction(1, 4)


def test_what_others_write_beside_a_pattern_on_some_problems_only_is_not_likely() -> None:
    """A16 where a whole must be opened, and right where not: more likely an idea of the child's own."""
    cells = by_pattern("A16", PAGE)
    finding = found(PAGE, [*all_right(PAGE)[:2], *cells[2:9], right(PAGE[9]), *cells[10:]])
    assert finding.status is Status.UNLISTED
    assert finding.diagnosis.together < Fraction(1, 4) < Fraction(3, 4) < finding.diagnosis.unlisted
    assert found(PAGE, cells).status is Status.LIKELY


@pytest.mark.parametrize(
    ("beside", "status"),
    [(0, Status.LIKELY), (1, Status.LIKELY), (2, Status.LIKELY), (6, Status.UNLISTED), (9, Status.UNLISTED)],
)
def test_what_lies_beside_a_pattern_time_after_time_is_no_slip(beside: int, status: Status) -> None:
    """One piece more than A01 writes: twice it is a slip beside seven fits, six times an idea of its own."""
    rule = "takes pieces apart and writes one piece too many where there are too few"
    cells = by_pattern("A01", PAGE)
    near = {at: wrote for at, problem in enumerate(PAGE) if (wrote := written(rule, problem.statement))}
    for at in list(near)[:beside]:
        cells[at] = text(near[at])
    finding = found(PAGE, cells)
    assert finding.status is status
    assert finding.patterns == (("A01",) if status is Status.LIKELY else ())
    assert (finding.diagnosis.together > Fraction(9, 10)) == (status is Status.LIKELY)


def _beside(count: int, recent: Mapping[str, int]) -> tuple[Status, int, int]:
    """The status of a pupil whose first answers fit A01 and whose others are right, were the odds high."""
    asked, _ = known()
    rows = {"K01": [*by_pattern("A01", PAGE)[:count], *all_right(PAGE)[count:]]}
    sure = replace(weighed(rows).diagnoses[0], confident=True)
    said = finding(asked, marked_against(asked, rows).pupils[0], sure, recent)
    return said.status, sure.speaking(Speaks.FOR), sure.speaking(Speaks.AGAINST)


def test_with_fits_of_recent_nights_more_of_tonight_may_speak_against() -> None:
    """Up to twice as many as speak for it; fits of another pattern do not count."""
    assert _beside(5, {}) == (Status.POSSIBLE, 3, 6)
    assert _beside(5, {"A02": 4}) == (Status.POSSIBLE, 3, 6)
    assert _beside(5, {"A01": 1}) == (Status.LIKELY, 3, 6)
    assert _beside(4, {"A01": 4}) == (Status.POSSIBLE, 2, 7)


def test_one_fit_tonight_is_enough_with_one_of_a_recent_night() -> None:
    """Where each night alone has one."""
    typed, rows = ("9 5/8 - 4 6/8", "6 7/8 - 3 2/8"), {"K01": ["5 1/8", "3 5/8"]}
    asked, _ = known(typed)
    [pupil] = marked_against(asked, rows).pupils
    sure = replace(weighed(rows, typed).diagnoses[0], confident=True)
    assert finding(asked, pupil, sure).status is Status.POSSIBLE
    assert finding(asked, pupil, sure, dict.fromkeys(sure.patterns, 1)).status is Status.LIKELY
