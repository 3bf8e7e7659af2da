"""Problems that tell errors apart and problems that cannot: published facts, and the audit says the same."""

from itertools import permutations

import pytest

from onewhole.marking.diagnosis.ask_next import ask_next
from onewhole.sheets.audit import audit
from tests.kit.answers import by_pattern, page
from tests.kit.odds import finding_of, known, one, weighed
from tests.kit.sheets import worked_sheet

#: Smaller from larger, and a trade that is not paid for: two published errors in column subtraction.
#: Source: Brown and Burton (1978), as restated with examples in an open program; the article was not opened.
SMALLER_FROM_LARGER, NOT_PAID = "E01", "E02"


def _not_told_apart(typed: str) -> set[frozenset[str]]:
    """The pairs of patterns that the audit says a page of one problem cannot tell apart."""
    found = audit(worked_sheet(f"1. {typed}"))
    groups = found.page.alike
    return {frozenset(pair) for group in groups for pair in permutations(group, 2)}


def test_143_less_28_fits_two_published_errors_at_once_and_703_less_245_separates_them() -> None:
    """125 under both; 542 and 568 (Brown and Burton 1978, as restated)."""
    wrote = {key: by_pattern(key, page(("143 - 28", "703 - 245"))) for key in (SMALLER_FROM_LARGER, NOT_PAID)}
    assert wrote == {SMALLER_FROM_LARGER: ["125", "542"], NOT_PAID: ["125", "568"]}


def test_diagnosis_says_that_125_fits_both_and_what_would_tell() -> None:
    """The odds are even, both are named, and 703 - 245 is what to ask; each answer to it settles it.

    E31 writes as the second does where no 0 is on the way.
    """
    typed = ("143 - 28", "152 - 37")
    found = one(["125", "125"], typed)
    assert found.alike == ((SMALLER_FROM_LARGER,), (NOT_PAID,), ("E31",))
    even = {each.patterns: each.probability for each in found.odds}
    assert even[SMALLER_FROM_LARGER,] == even[NOT_PAID,]
    [asked] = ask_next(weighed({"K01": ["125", "125"]}, typed), known(typed)[0])
    assert asked[0].typed == "703 - 245"
    for key in (SMALLER_FROM_LARGER, NOT_PAID):
        [answer] = by_pattern(key, page(("703 - 245",)))
        settled = one(["125", "125", answer], (*typed, "703 - 245"))
        assert (settled.alike, settled.confident) == (((key,),), True)


def test_audit_says_the_same_of_columns() -> None:
    """A page of 143 - 28 cannot tell the two apart; a page of 703 - 245 can."""
    pair = frozenset((SMALLER_FROM_LARGER, NOT_PAID))
    assert pair in _not_told_apart("143 - 28")
    assert pair not in _not_told_apart("703 - 245")


@pytest.mark.parametrize(("typed", "apart"), [("9 5/8 - 4 6/8", True), ("5 1/8 - 2 5/8", False)])
def test_the_number_rule_of_the_collection(typed: str, apart: bool) -> None:
    """n2 - n1 = d/2 hides whether a whole was opened. Source: the collection's own rule, computed."""
    assert (frozenset(("A01", "A02")) not in _not_told_apart(typed)) is apart
    both = {key: by_pattern(key, page((typed,)))[0] for key in ("A01", "A02")}
    assert (both["A01"] != both["A02"]) is apart
    found = one([both["A01"]], (typed,))
    assert ("A01",) in found.alike
    assert (("A02",) in found.alike) is not apart


def test_one_answer_to_a_telling_problem_is_still_only_possible() -> None:
    """Two fits on differently built problems make it likely, whatever the odds."""
    assert finding_of(["5 1/8"], ("9 5/8 - 4 6/8",)).status.value == "possible"
