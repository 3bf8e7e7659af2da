"""A term of invented nights: pupils learn, pages change, and what is said is held against what is true."""

from dataclasses import replace
from itertools import pairwise

import pytest

from lab.pages import random_page
from lab.pupils import Kind
from lab.rates import USUAL
from lab.term import CLASS_ALONE, NIGHTS, TermNight, courses, day_of, sums_and_differences, term
from lab.term_table import false_a_pupil, late_calibration, noticed_by, said_rightly, shown_too_long

A_FEW = 6


def _night(night: int, **changes: object) -> TermNight:
    one = TermNight(
        "K01",
        night,
        Kind.STEADY,
        frozenset({"A01"}),
        acted=night,
        gone=0,
        likely=True,
        holds=True,
        together=0.95,
        stands=True,
    )
    return replace(one, **changes)  # type: ignore[arg-type]


def test_ideas_appear_stay_and_go() -> None:
    """Each is held without a gap, by the same pupil; before and after the pupil works rightly."""
    found = [one for seed in range(8) for one in courses(USUAL, 25, str(seed)) if one.pupil.ideas]
    for one in found:
        held = [night for night in range(1, NIGHTS + 1) if one.on(night).ideas]
        assert held == list(range(one.appears, min(one.goes, NIGHTS + 1)))
        assert {one.on(night).kind for night in range(1, one.appears)} <= {Kind.SOUND}
    assert any(one.appears == 1 for one in found)
    assert any(one.appears > 1 for one in found)
    assert any(one.goes <= NIGHTS for one in found)
    assert any(one.goes > NIGHTS for one in found)


def test_days_go_on_and_leave_out_weekends_and_a_free_week() -> None:
    """No day twice; between some nights lie four days, and once eleven."""
    days = [day_of(night) for night in range(1, NIGHTS + 1)]
    apart = [(later - earlier).days for earlier, later in pairwise(days)]
    assert set(apart) == {1, 4, 11}
    assert apart.count(11) == 1
    assert {day.weekday() for day in days} == {0, 1, 2, 3}


def test_a_page_of_a_book_has_sums_and_differences_in_turn() -> None:
    """Five of each."""
    page = sums_and_differences(1)
    assert [" + " in text for text in page] == [True, False] * 5


@pytest.fixture(scope="module")
def roads() -> tuple[tuple[TermNight, ...], ...]:
    """The first nights of one class on two pages, by both roads."""
    return term([random_page(8, 1), sums_and_differences(2)], "few 22", nights=A_FEW)


@pytest.mark.more("lab/test_outside.py")
def test_both_roads_read_the_same_nights(roads: tuple[tuple[TermNight, ...], ...]) -> None:
    """The truth is the same, and so is what is said on the first night, which has nothing before it."""
    bare, own = roads
    facts = [[(one.code, one.night, one.truth, one.acted, one.gone) for one in road] for road in (bare, own)]
    assert facts[0] == facts[1]
    assert [one for one in bare if one.night == 1] == [one for one in own if one.night == 1]
    assert bare != own
    again = term([random_page(8, 1), sums_and_differences(2)], "few 22", nights=2, roads=[CLASS_ALONE])
    assert list(again[0]) == [one for one in bare if one.night <= 2]


def test_an_own_history_says_more_rightly(roads: tuple[tuple[TermNight, ...], ...]) -> None:
    """On the nights on which an idea could act."""
    bare, own = map(said_rightly, roads)
    assert bare.of == own.of > 15
    assert own.value > bare.value


def test_what_is_measured() -> None:
    """Counted by hand on a few rows."""
    rows = [
        _night(1, likely=False),
        _night(2),
        _night(3, holds=False),
        _night(4, truth=frozenset(), gone=1, holds=False, likely=False),
        _night(5, truth=frozenset(), gone=2, likely=False, stands=False),
        _night(6, truth=frozenset(), gone=3, likely=False, stands=True),
    ]
    assert (said_rightly(rows).hits, said_rightly(rows).of) == (1, 3)
    assert false_a_pupil(rows) == 1
    assert shown_too_long(rows) == [1]
    assert [noticed_by(rows, by).hits for by in (1, 2, 3)] == [0, 1, 1]
    assert late_calibration(
        [_night(20, together=0.95), _night(21, holds=False, together=0.95)]
    ) == pytest.approx(0.45)
