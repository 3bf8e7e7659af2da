"""Which sets of patterns fit best, and which cannot be told apart."""

from fractions import Fraction

from onewhole.marking.diagnosis.hypothesis import Hypothesis, Reliability
from onewhole.marking.diagnosis.likeliest_sets import (
    TOLD_APART,
    TOLD_APART_BY_NIGHTS,
    holding,
    likeliest_sets,
)
from onewhole.marking.diagnosis.tables import replies
from tests.kit.answers import by_pattern, marked_against
from tests.kit.odds import PAGE, known, one

ASKED, READY = known()


def _place(*ids: str) -> int:
    return next(at for at, each in enumerate(READY.hypotheses) if each.ids == ids)


def _best(
    cells: list[str], shares: dict[tuple[str, ...], int], confident: str = "0.9", apart: int = TOLD_APART
) -> list[tuple[str, ...]]:
    """The best sets when each named set has so much weight, and no pattern the rest of a thousand."""
    weights = [0] * len(READY.hypotheses)
    weights[0] = 1000 - sum(shares.values())
    for ids, share in shares.items():
        weights[_place(*ids)] = share
    marks = marked_against(ASKED, {"K01": cells})
    given = replies(marks, marks.pupils[0])
    found = likeliest_sets(READY, given, weights, Fraction(confident), apart)
    return sorted(each.ids for each in found)


CELLS = by_pattern("A01", PAGE)


def test_a_set_is_held_by_every_set_with_all_its_patterns() -> None:
    """A01 by A01 and by A01 with A10; a pair only by itself; reliabilities hold nothing."""
    named = {("A01",), ("A01", "A10"), ("A10",)}
    weights = [5 if each.ids in named and each.only is None else 0 for each in READY.hypotheses]
    single, pair = (Hypothesis(Reliability.SOUND, ids) for ids in (("A01",), ("A10", "A01")))
    assert holding(READY.hypotheses, (single,), weights) == 10
    assert holding(READY.hypotheses, (pair,), weights) == 5
    assert holding(READY.hypotheses, (), weights) == 0


def test_the_heaviest_is_best() -> None:
    """Where nothing reaches the odds asked for."""
    assert _best(CELLS, {("A01",): 300, ("A02",): 200}) == [("A01",)]
    assert _best(CELLS, {("A01",): 200, ("A02",): 300}) == [("A02",)]


def test_two_patterns_that_reach_the_odds_come_before_one() -> None:
    """A pair at 95 is told as a pair, though one of its patterns is surer still."""
    assert _best(CELLS, {("A01",): 30, ("A01", "A10"): 950}) == [("A01", "A10")]


def test_one_pattern_that_is_sure_in_any_company_is_found() -> None:
    """A01 alone has little, and A01 with this or that has all: A01 is sure, the company is not."""
    shares = {("A01",): 5, ("A01", "A10"): 330, ("A01", "P03"): 330, ("A01", "P04"): 330}
    assert _best(CELLS, shares) == [("A01",)]


def test_sets_that_the_same_answers_speak_for_are_alike() -> None:
    """A12 and A26 fit the very same answers; ten times as likely is told apart."""
    both = by_pattern("A12", PAGE)
    assert _best(both, {("A12",): 500, ("A26",): 480}) == [("A12",), ("A26",)]
    assert _best(both, {("A12",): 900, ("A26",): 80}) == [("A12",)]


def test_nothing_is_best_where_all_is_unlikely() -> None:
    """Less than one in a thousand is not looked at."""
    assert _best(CELLS, {}) == []


def test_only_the_least_of_a_bunch_is_kept() -> None:
    """Answers to differences alone cannot tell A01 from A01 with a pattern of sums: A01 is what is said."""
    cells = [*CELLS[:9], "", *CELLS[10:]]
    assert one(cells).alike == (("A01",),)


def test_earlier_nights_alone_tell_sets_apart_later() -> None:
    """What tonight's answers cannot tell apart needs a hundred times the odds, and not ten."""
    cells = by_pattern("A12", PAGE)
    shares: dict[tuple[str, ...], int] = {("A12",): 900, ("A26",): 30}
    assert _best(cells, shares) == [("A12",)]
    assert _best(cells, shares, apart=TOLD_APART_BY_NIGHTS) == [("A12",), ("A26",)]
