from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.findings.wished_skill import LIKE, WishedSkill
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family
from onewhole.sheets.learning import Doubt, doubts, learnt, most, name_of, settles, watched, worth
from onewhole.sheets.wishes import OpenQuestion, Wishes
from onewhole.statements.reading import read_statement

SMALL = (Doubt((), ("A01",), 6), Doubt(("A01",), ("A02",), 2), Doubt(("A01", "A10"), ("A10",), 1))


@pytest.mark.parametrize(
    "skill", [*sorted(LIKE, key=lambda skill: skill.value), WishedSkill.TENTHS, WishedSkill.COMPARE_WHOLE]
)
def test_fact_slips_and_forms_are_not_watched(skill: WishedSkill) -> None:
    """A page looks for ideas."""
    found = watched(Wishes(skill=skill))
    assert found
    for key in found:
        assert by_id(key).family is not Family.FACT
        assert not by_id(key).of_form
    assert ("A01" in found) == (skill in {WishedSkill.SUBTRACT, WishedSkill.BOTH})
    assert ("P01" in found) == (skill in {WishedSkill.ADD, WishedSkill.BOTH})


@pytest.mark.parametrize(
    ("typed", "bits"),
    [
        ("9 5/8 - 4 6/8", 0b111),
        ("5 1/8 - 2 5/8", 0b101),
        ("5 4/6 - 2 1/6", 0b000),
        ("52 - 27", 0b000),
    ],
)
def test_which_doubts_a_problem_settles(typed: str, bits: int) -> None:
    """9 5/8 - 4 6/8 tells A01 from A02 and 5 1/8 - 2 5/8 cannot; without regrouping neither shows."""
    assert settles(read_statement(typed), SMALL) == bits


def test_two_sets_are_told_apart_only_if_no_answer_is_shared() -> None:
    """A set of two may be written either way."""
    doubt = Doubt(("A01", "A02"), ("A01",), 1)
    assert not doubt.settled({"A01": "5 1/8", "A02": "5 7/8"}, "4 7/8")
    assert Doubt(("A01", "A02"), ("A04",), 1).settled(
        {"A01": "5 1/8", "A02": "5 7/8", "A04": "4 9/8"}, "4 7/8"
    )


def test_each_further_telling_is_worth_half() -> None:
    """Down to nothing, so that a page does not ask one thing for ever."""
    steps = [worth(times + 1) - worth(times) for times in range(8)]
    assert steps == [32, 16, 8, 4, 2, 1, 0, 0]


@given(st.lists(st.integers(0, 7), max_size=8))
def test_what_is_learnt(tells: list[int]) -> None:
    """It is the sum over doubts, no order matters, one more problem never costs, and there is a most."""
    found = learnt(SMALL, tells)
    by_hand = sum(
        doubt.weight * worth(sum(bits >> at & 1 for bits in tells)) for at, doubt in enumerate(SMALL)
    )
    assert found == by_hand == learnt(SMALL, reversed(tells))
    assert found <= learnt(SMALL, [*tells, 7]) <= most(SMALL)


def test_what_is_asked_counts_three_times_the_rest() -> None:
    """And what is asked among the patterns watched for is added to its own weight."""
    asked = (OpenQuestion(("A01",), ("A02",), 750), OpenQuestion(("A01", "A10"), (), 250))
    plain, found = doubts(Wishes()), doubts(Wishes(questions=asked))
    base = 100 * sum(one.weight for one in plain)
    total = sum(one.weight for one in found)
    assert abs(Fraction(total, base) - 4) < Fraction(1, 1000)
    weights = {(one.first, one.second): one.weight for one in found}
    assert weights[("A01",), ("A02",)] == 200 + 3 * base * 3 // 4
    assert weights[(), ("A01", "A10")] == 3 * base // 4


def test_what_no_problem_settles_takes_no_weight() -> None:
    """A12 and A26 write the same on every such problem: the other question then counts for both."""
    asked = (OpenQuestion(("A12",), ("A26",), 900), OpenQuestion(("A01",), ("A02",), 100))
    wishes = Wishes(questions=asked)
    every = doubts(wishes)
    place = [(one.first, one.second) for one in every].index((("A12",), ("A26",)))
    found = doubts(wishes, tellable=(1 << len(every)) - 1 - (1 << place))
    assert [(one.first, one.second) for one in found] == [(one.first, one.second) for one in every]
    weights = {(one.first, one.second): one.weight for one in found}
    assert weights[("A12",), ("A26",)] == 100
    assert weights[("A01",), ("A02",)] > 100 * sum(one.weight for one in doubts(Wishes()))


def test_sets_have_names() -> None:
    """No pattern, one, or two together."""
    assert [name_of(side) for side in ((), ("A01",), ("A01", "A10"))] == ["no pattern", "A01", "A01 with A10"]
