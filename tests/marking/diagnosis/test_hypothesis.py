"""What may lie behind one pupil's answers."""

import pytest

from onewhole.marking.diagnosis.hypothesis import NO_PATTERN, Done, Hypothesis, Reliability, hypotheses
from onewhole.marking.diagnosis.unlisted import ActsOn
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family
from tests.kit.odds import known

ASKED = known()[0]
FOUND = hypotheses(ASKED)
SINGLES = {one.patterns[0] for one in FOUND if len(one.patterns) == 1}
SETS = {frozenset(one.patterns) for one in FOUND}


def test_no_pattern_comes_in_three_reliabilities() -> None:
    """Sound, shaky and scattered pupils have no steady pattern."""
    assert FOUND[:3] == NO_PATTERN
    assert [one.reliability for one in NO_PATTERN] == list(Reliability)
    assert not any(one.steady for one in NO_PATTERN)


def test_only_patterns_that_can_show_on_the_page_and_no_slips() -> None:
    """Twelve problems with like denominators show nothing of columns, decimals or unlike denominators."""
    shown = {key for asked in ASKED for key in asked.shows}
    singles = {one.patterns[0] for one in FOUND if len(one.patterns) == 1}
    assert singles == {key for key in shown if by_id(key).family is not Family.FACT}
    assert {key[0] for key in singles} == {"A", "P"}


@pytest.mark.parametrize("pair", [("A01", "A10"), ("A01", "P03"), ("A20", "A01"), ("A10", "A12")])
def test_two_live_together_when_it_is_plain_which_acts(pair: tuple[str, str]) -> None:
    """With and without regrouping; a difference and a sum; a narrower kind within a wider one."""
    assert frozenset(pair) in SETS


@pytest.mark.parametrize("pair", [("A01", "A02"), ("A01", "A04"), ("A09", "A12"), ("A20", "A21")])
def test_two_that_show_on_the_same_kinds_make_no_pair(pair: tuple[str, str]) -> None:
    """Nobody takes the smaller from the larger and opens a whole on one problem."""
    assert frozenset(pair) not in SETS


def test_the_one_for_the_narrower_kind_acts_where_both_show() -> None:
    """A20 is about a whole number first; A01 keeps the rest."""
    pair = next(one for one in FOUND if set(one.patterns) == {"A01", "A20"})
    acting = [pair.acting(asked.shows) for asked in ASKED]
    assert (acting[4], acting[6], acting[1]) == ("A20", "A01", None)
    assert pair.ids == ("A01", "A20")


def test_what_is_done_where_a_pattern_shows() -> None:
    """Patterns of the sum on the page, and those of the differences."""
    done = {one.patterns[0]: one.done for one in FOUND if len(one.patterns) == 1}
    assert (done["A01"], done["P03"]) == (Done.TAKING, Done.ADDING_OR_TIMES)


def test_an_idea_akin_to_a_pattern_is_supposed_where_that_one_shows_twice() -> None:
    """The page has one sum: nobody can tell whether what stands there is steady."""
    akin = {one.akin for one in FOUND if one.akin}
    shown = [key for asked in ASKED for key in asked.shows]
    assert akin == {key for key in SINGLES if shown.count(key) >= 2}
    assert "A01" in akin
    assert "P01" in SINGLES - akin


@pytest.mark.parametrize(("unlisted", "like"), [(None, ""), (ActsOn.OPENING, "A01")])
def test_an_idea_akin_to_a_pattern_is_not_listed_and_not_like_one(unlisted: ActsOn | None, like: str) -> None:
    """It is one idea, and none of the catalogue."""
    with pytest.raises(ValueError, match="one or two patterns or an unlisted idea on a sound one"):
        Hypothesis(Reliability.SOUND, unlisted=unlisted, like=like, akin="A01")


def test_a_page_without_problems_has_reliabilities_alone() -> None:
    """Nothing can be told from nothing."""
    assert hypotheses(()) == NO_PATTERN


@pytest.mark.parametrize(
    ("reliability", "patterns"), [(Reliability.SHAKY, ("A01",)), (Reliability.SOUND, ("A01", "A10", "P03"))]
)
def test_what_cannot_be_supposed_is_refused(reliability: Reliability, patterns: tuple[str, ...]) -> None:
    """Three patterns at once, and a pattern on any but a sound reliability."""
    with pytest.raises(ValueError, match="one or two patterns or an unlisted idea on a sound one"):
        Hypothesis(reliability, patterns)
