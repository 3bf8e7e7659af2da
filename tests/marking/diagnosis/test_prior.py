"""What is supposed of a class, what is learnt, and how it is forgotten."""

from collections.abc import Mapping
from datetime import date
from fractions import Fraction

import pytest

from onewhole.marking.diagnosis.hypothesis import Done, Hypothesis, Reliability, hypotheses
from onewhole.marking.diagnosis.prior import (
    AS_PUPILS,
    BILLION,
    NOTHING,
    STEADY_AKIN,
    STEADY_LIKE,
    STEADY_UNLISTED,
    Learnt,
    counted,
    from_class,
    key_of,
    supposed,
)
from onewhole.marking.diagnosis.unlisted import ActsOn
from onewhole.marking.reading.expected import expect
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement
from tests.kit.answers import all_right, by_pattern
from tests.kit.odds import PAGE, known, one, weighed

FOUND = hypotheses(known()[0])
SHARES = dict(zip(FOUND, supposed(FOUND), strict=True))


def _of(size: int, done: Done | None = None, shares: Mapping[Hypothesis, int] = SHARES) -> Fraction:
    """The share supposed of all hypotheses with so many patterns."""
    held = sum(
        share
        for hypothesis, share in shares.items()
        if len(hypothesis.patterns) == size
        and done in {None, hypothesis.done}
        and hypothesis.only is hypothesis.unlisted is None
    )
    return Fraction(held, AS_PUPILS * BILLION)


def test_as_many_pupils_have_a_pattern_as_were_counted() -> None:
    """13 steady in subtracting to 5.5 in adding (Cox 1974, ED 092 407), to 85 without; the rest is ours."""
    one_taking, one_other, none = _of(1, Done.TAKING), _of(1, Done.ADDING_OR_TIMES), _of(0)
    assert round(one_taking / none, 4) == round(Fraction(130, 850), 4)
    assert round(one_other / none, 4) == round(Fraction(55, 850), 4)
    assert abs(sum(SHARES.values()) - AS_PUPILS * BILLION) < len(SHARES)


@pytest.mark.parametrize(
    "typed", ["3/4 ? 5/6", "order 2/3, 1/2, 3/4", "round 4567 to the nearest hundred", "26 in = ? ft ? in"]
)
def test_where_nothing_is_worked_out_as_many_are_supposed_as_in_subtracting(typed: str) -> None:
    """13 to 85 without: our own assumption, because no study counted it; 5.5 were counted for adding."""
    found = hypotheses([expect(Problem("1", read_statement(typed), typed))])
    assert {one.done for one in found if one.patterns} == {Done.OTHER}
    shares = dict(zip(found, supposed(found), strict=True))
    assert round(_of(1, Done.OTHER, shares) / _of(0, None, shares), 4) == round(Fraction(130, 850), 4)


def test_a_few_pupils_have_an_idea_that_is_not_listed() -> None:
    """25 to 850 without an idea; 10 whose idea writes as a pattern on some problems; 6 akin to a pattern."""
    none = sum(share for one, share in SHARES.items() if not one.steady)
    free = sum(share for one, share in SHARES.items() if one.unlisted and not one.like and not one.akin)
    like = sum(share for one, share in SHARES.items() if one.like)
    akin = sum(share for one, share in SHARES.items() if one.akin)
    assert round(Fraction(akin, none), 4) == round(Fraction(STEADY_AKIN, 850), 4)
    assert round(Fraction(free, none), 4) == round(Fraction(STEADY_UNLISTED, 850), 4)
    assert round(Fraction(like, none), 4) == round(Fraction(STEADY_LIKE, 850), 4)


def test_patterns_about_regrouping_are_supposed_more_often() -> None:
    """Three times as often as another of the same sort; the others alike."""
    a01, a02, a12, a13 = (
        SHARES[Hypothesis(Reliability.SOUND, (key,))] for key in ("A01", "A02", "A12", "A13")
    )
    assert a01 == a02
    assert a12 == a13
    assert abs(a01 - 3 * a12) <= 3


def test_what_was_learnt_is_added_in_pupils() -> None:
    """Two thousandths of a thousand are two pupils; keys that this page does not know are passed over."""
    more = dict(zip(FOUND, supposed(FOUND, Learnt({"A01": 2000, "E99": 5}, None)), strict=True))
    for hypothesis, share in more.items():
        added = 2 * BILLION if key_of(hypothesis) == "A01" else 0
        assert share - SHARES[hypothesis] == added


def test_a_pupils_own_answers_do_not_change_what_is_supposed_of_the_pupil() -> None:
    """Alone in a class a pupil is weighed by what is supposed; beside others, by them."""
    rows = weighed({"K01": by_pattern("A01", PAGE), "K02": all_right(PAGE)})
    page = rows.page
    likely = [(1, *[0] * (len(page.hypotheses) - 1)), (0, 1, *[0] * (len(page.hypotheses) - 2))]
    first, second = from_class(page.hypotheses, likely)
    base = supposed(page.hypotheses)
    assert first == (base[0], base[1] + BILLION, *base[2:])
    assert second == (base[0] + BILLION, *base[1:])
    assert from_class(page.hypotheses, likely[:1]) == (base,)


def test_one_pupil_of_four_alike_is_surer_than_alone() -> None:
    """The class teaches what goes round in it: a weak case gets stronger beside three clear ones."""
    weak = [*by_pattern("A04", PAGE)[:4], *[""] * 8]
    clear = {f"K{at}": by_pattern("A04", PAGE) for at in range(3)}
    beside, alone = weighed({"K9": weak} | clear).diagnoses[0], one(weak)
    assert beside.alike == alone.alike == (("A04",),)
    assert beside.together > alone.together


def test_a_pupil_without_answers_teaches_nothing() -> None:
    """Neither the others of the class nor the notebook."""
    rows = {"K01": by_pattern("A01", PAGE)}
    assert weighed(rows | {"K02": [""] * 12}).diagnoses[0] == weighed(rows).diagnoses[0]
    assert weighed(rows | {"K02": [""] * 12}).counts == weighed(rows).counts
    assert weighed({"K02": ["?"] * 12}).counts == {}


def test_a_night_counts_its_pupils() -> None:
    """The odds of all pupils added up are as many pupils, but for rounding down."""
    counts = weighed({f"K{at}": by_pattern("A01", PAGE) for at in range(5)}).counts
    assert 4900 < sum(counts.values()) <= 5000
    assert counts["A01"] > 4900
    assert counted((), (), ()) == {}


@pytest.mark.parametrize(("days", "left"), [(0, 2000), (7, 1500), (14, 1000), (28, 500), (365, 0)])
def test_half_is_forgotten_every_fortnight(days: int, left: int) -> None:
    """In even steps between; a day that lies before forgets nothing; nothing is left after a year."""
    learnt = Learnt({"A01": 2000}, date(2026, 1, 1))
    assert learnt.by(date.fromordinal(date(2026, 1, 1).toordinal() + days)).counts.get("A01", 0) == left
    assert learnt.by(date(2025, 12, 1)) == learnt
    assert NOTHING.by(date(2026, 1, 1)) == NOTHING


def test_nights_are_added_after_forgetting() -> None:
    """In whatever order their keys come."""
    first = NOTHING.and_night({"A01": 4}, date(2026, 1, 1))
    assert first == Learnt({"A01": 4}, date(2026, 1, 1))
    again = first.and_night({"A01": 1, "sound": 7}, date(2026, 1, 15))
    assert again == Learnt({"A01": 3, "sound": 7}, date(2026, 1, 15))


def test_evidence_is_kept_under_plain_names() -> None:
    """Ids in their order, or the word for the reliability."""
    assert [key_of(each) for each in FOUND[:3]] == ["sound", "shaky", "scattered"]
    assert key_of(Hypothesis(Reliability.SOUND, ("A20", "A01"))) == "A01 A20"
    akin = Hypothesis(Reliability.SOUND, unlisted=ActsOn.EVERYWHERE, akin="A01")
    assert key_of(akin) == "unlisted-akin-A01"
    assert len({key_of(each) for each in FOUND}) == len(FOUND)
