"""What the answers of one pupil may show, with odds."""

from fractions import Fraction

import pytest

from onewhole.marking.diagnosis.diagnosis import LISTED_FROM, diagnose
from onewhole.marking.diagnosis.evidence import Speaks
from onewhole.marking.diagnosis.prior import Learnt
from onewhole.notations.text import text
from tests.kit.answers import all_right, by_pattern, marked, page, right
from tests.kit.odds import PAGE, one, weighed


def _with(cells: list[str], changes: dict[str, str]) -> list[str]:
    labels = [problem.label for problem in PAGE]
    return [changes.get(label, cell) for label, cell in zip(labels, cells, strict=True)]


@pytest.mark.parametrize(
    "pattern", ["A01", "A02", "A03", "A04", "A05", "A06", "A08", "A09", "A13", "A16", "A19", "A24", "A29"]
)
def test_a_pupil_who_follows_one_pattern_is_found_with_high_odds(pattern: str) -> None:
    """Nine answers or more of one pattern leave no doubt, and nothing speaks against."""
    found = one(by_pattern(pattern, PAGE))
    assert found.confident
    assert pattern in found.patterns
    assert found.together > Fraction(99, 100)
    assert found.labels(Speaks.AGAINST) == ()


def test_one_equal_form_one_blank_and_one_slip_do_not_hide_a_pattern() -> None:
    """A01 throughout, but 3 writes an equal form, 6 is blank and 7 slips: found, with each answer's part."""
    own = by_pattern("A01", PAGE)
    found = one(_with(own, {"3": "20/6", "6": "", "7": "5 2/8"}))
    assert (found.alike, found.confident) == ((("A01",),), True)
    assert own[2] == "3 1/3"
    said = {each.label: (each.speaks, each.exact) for each in found.evidence}
    assert said["3"] == (Speaks.FOR, False)
    assert said["6"] == said["7"] == (Speaks.NEITHER, False)
    assert found.labels(Speaks.FOR) == ("3", "4", "5", "8", "9", "11", "12")
    assert found.labels(Speaks.AGAINST) == ()
    assert [text(each.would_write[0]) for each in found.evidence if each.label == "7"] == ["5 1/8"]


def test_turning_back_to_right_at_times_is_still_found_and_told() -> None:
    """Two right answers of nine speak against A01, are named, and lower the odds."""
    own = by_pattern("A01", PAGE)
    found = one(_with(own, {"7": right(PAGE[6]), "8": right(PAGE[7])}))
    assert (found.alike, found.confident) == ((("A01",),), True)
    assert found.labels(Speaks.AGAINST) == ("7", "8")
    assert found.together < one(own).together


def test_two_patterns_side_by_side_are_found_together() -> None:
    """A01 where there are too few pieces, A10 where there are enough."""
    few, enough = by_pattern("A01", PAGE), by_pattern("A10", PAGE)
    cells = [a10 if a10 != own else a01 for a10, a01, own in zip(enough, few, all_right(PAGE), strict=True)]
    found = one(cells)
    assert (found.alike, found.patterns, found.confident) == ((("A01", "A10"),), ("A01", "A10"), True)


def test_right_answers_are_no_pattern_and_right_by_luck_is_no_praise() -> None:
    """All right on tenths, where A04 is right by luck: no pattern is found, and none is praised away."""
    tenths = ("6 3/10 - 2 7/10", "8 1/10 - 4 6/10", "7 2/10 - 3 9/10")
    cells = [right(problem) for problem in page(tenths)]
    found = one(cells, tenths)
    assert not found.confident
    assert found.odds[0].patterns == ()
    told_apart = one(
        [right(problem) for problem in page(("6 3/8 - 2 7/8", *tenths[1:]))], ("6 3/8 - 2 7/8", *tenths[1:])
    )
    assert "A04" not in {key for each in told_apart.odds for key in each.patterns}


def test_on_a_page_of_traps_a_lucky_pattern_keeps_its_odds() -> None:
    """One problem in eighths shows A04 in full; right answers in tenths beside it do not speak against it."""
    mixed = ("9 5/8 - 4 6/8", "7 1/6 - 3 5/6", "6 3/10 - 2 7/10", "8 1/10 - 4 6/10")
    found = one(by_pattern("A04", page(mixed)), mixed)
    assert (found.alike, found.confident) == ((("A04",),), True)
    assert [each.luck for each in found.evidence] == [False, False, True, True]
    assert found.labels(Speaks.AGAINST) == ()
    assert found.labels(Speaks.NEITHER) == ("3", "4")


@pytest.mark.parametrize("cells", [[""] * 12, ["?!"] * 12, ["-", "see me"] * 6])
def test_of_a_pupil_without_answers_nothing_is_said(cells: list[str]) -> None:
    """No odds, no sets, no confidence."""
    found = one(cells)
    assert (found.odds, found.alike, found.patterns) == ((), (), ())
    assert found.together == 0
    assert not found.confident
    assert {each.speaks for each in found.evidence} == {Speaks.NEITHER}


def test_scattered_answers_are_no_steady_pattern() -> None:
    """Each wrong in its own way: no set of patterns reaches even one in ten."""
    keys = ("A01", "A24", "A13", "A17", "A07", "A15") * 2
    rows = [by_pattern(key, PAGE)[at] for at, key in enumerate(keys)]
    found = one(rows)
    assert found.odds[0].patterns == ()
    assert found.odds[0].probability > Fraction(9, 10)
    assert not found.confident


def test_odds_are_listed_from_one_in_two_hundred_the_likeliest_first() -> None:
    """Never more than one together; sets of the same odds in the order of their ids."""
    for cells in (by_pattern("A12", PAGE), all_right(PAGE), [*by_pattern("A02", PAGE)[:3], *[""] * 9]):
        listed = one(cells).odds
        shares = [each.probability for each in listed]
        assert shares == sorted(shares, reverse=True)
        assert all(each.probability >= LISTED_FROM for each in listed if each.patterns)
        assert () in [each.patterns for each in listed]
        assert Fraction(9, 10) < sum(shares) <= 1


def test_the_confidence_asked_for_decides_what_is_said() -> None:
    """The same odds are enough for one teacher and not for another."""
    cells = [*by_pattern("A01", PAGE)[:4], *[""] * 8]
    marks = marked(PAGE, {"K01": cells})
    [found] = diagnose(marks)
    odds = found.together
    assert diagnose(marks, confident=odds)[0].confident
    assert not diagnose(marks, confident=odds + Fraction(1, 10**6))[0].confident


def test_what_the_class_has_shown_before_counts() -> None:
    """Two answers fit A01 or A02; where A02 went round lately, A02 is likelier."""
    two = ("5 1/8 - 2 5/8", "7 1/4 - 3 3/4")
    marks = marked(page(two), {"K01": ["3 4/8", "4 2/4"]})
    even = diagnose(marks)[0].odds
    assert [each.patterns for each in even[:2]] == [("A01",), ("A02",)]
    assert even[0].probability == even[1].probability
    tilted = diagnose(marks, Learnt({"A02": 4000}))[0].odds
    assert tilted[0].patterns == ("A02",)
    assert tilted[0].probability > 10 * tilted[1].probability


def test_typed_lines_tell_apart_what_the_answer_does_not() -> None:
    """3 4/8 for 5 1/8 - 2 5/8 fits A01 and A02; the first false line is A02's."""
    two = ("5 1/8 - 2 5/8", "7 1/4 - 3 3/4")
    bare, lines = one(["3 4/8", "4 2/4"], two), one(["5 9/8 - 2 5/8 = 3 4/8", "4 2/4"], two)
    assert bare.alike == (("A01",), ("A02",))
    assert (lines.alike, lines.confident) == ((("A02",),), True)
    assert lines.evidence[0].exact


def test_a_class_is_weighed_pupil_by_pupil() -> None:
    """Replies, weights and diagnoses in the order of the pupils."""
    rows = {"K02": all_right(PAGE), "K01": by_pattern("A04", PAGE)}
    found = weighed(rows)
    assert [each.pupil for each in found.diagnoses] == ["K02", "K01"]
    assert len(found.replies) == len(found.weights) == 2
    assert found.confident == Fraction(9, 10)
