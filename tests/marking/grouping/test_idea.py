"""Which one idea a pupil's answers are taken to fit."""

from fractions import Fraction

from msgspec.structs import replace

from onewhole.findings.status import Status
from onewhole.marking.diagnosis.diagnosis import Supposed
from onewhole.marking.diagnosis.finding import Finding, Fitting
from onewhole.marking.grouping.idea import fitted, may_sit_with, share_of, shared_ideas
from onewhole.misconceptions.pattern import Family
from tests.kit.answers import all_right, by_pattern
from tests.kit.odds import PAGE, finding_of

LIKELY = finding_of(by_pattern("A01", PAGE))


def _of(pupil: str, *patterns: str, status: Status = Status.LIKELY) -> Finding:
    fittings = tuple(Fitting(pattern, ("1", "2"), ()) for pattern in patterns)
    return replace(LIKELY, pupil=pupil, status=status, fittings=fittings)


def test_the_idea_that_most_share_comes_first() -> None:
    """Of two that the answers do not tell apart, the one that others have too; of equal ones the first id."""
    found = [_of("K01", "A02", "A21"), _of("K02", "A21"), _of("K03", "A21", "A30"), _of("K04", "A12", "A18")]
    assert shared_ideas(found) == {"K01": "A21", "K02": "A21", "K03": "A21", "K04": "A12"}
    assert shared_ideas(found[::-1]) == shared_ideas(found)


def test_an_idea_that_no_answer_fits_leads_nobody() -> None:
    """A pattern that only comes with another one, and a finding that is not likely."""
    both = replace(_of("K01", "A02"), fittings=(Fitting("A01", (), ()), Fitting("A02", ("1",), ())))
    assert fitted(both) == ("A02",)
    assert shared_ideas([both, _of("K02", "A01", status=Status.POSSIBLE)]) == {"K01": "A02"}


def test_a_family_that_is_likelier_than_not_may_be_sat_with() -> None:
    """At least half of the odds, the likeliest first; nobody of whom nothing is known."""
    odds = (
        Supposed(("A01",), Fraction(5, 10)),
        Supposed(("A01", "A02"), Fraction(1, 10)),
        Supposed(("A02",), Fraction(4, 10)),
    )
    open_one = replace(LIKELY, diagnosis=replace(LIKELY.diagnosis, odds=odds))
    assert share_of(open_one.diagnosis, (Family.NUMERATOR,)) == Fraction(6, 10)
    assert may_sit_with(open_one) == (Family.NUMERATOR, Family.REGROUPING)
    assert may_sit_with(finding_of(all_right(PAGE))) == ()
