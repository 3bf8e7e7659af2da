"""A pupil's own history."""

from datetime import date, timedelta
from itertools import pairwise

import pytest

from onewhole.marking.diagnosis.chances import MILLION
from onewhole.marking.diagnosis.history import (
    IDEA_STAYS,
    NAMED_FROM,
    Histories,
    History,
    Named,
    PupilNight,
    forecast,
)
from onewhole.marking.diagnosis.hypothesis import NO_PATTERN, Hypothesis, Reliability

DAY = date(2026, 11, 24)
A01 = Hypothesis(Reliability.SOUND, ("A01",))
WAYS = (*NO_PATTERN, A01)
BASE = (60, 20, 15, 5)


def _after(history: History, days: int, likely: tuple[int, ...] = (1, 1, 1, 1)) -> History:
    return forecast(history, Named.of(WAYS), BASE, history.on + timedelta(days=days)).after(likely)


def _held(history: History, pattern: str) -> int:
    """Return the share, in millionths, of the sets of ideas that contain a pattern."""
    found = sum(share for key, share in history.shares.items() if pattern in key.split())
    return found * MILLION // history.whole


def test_a_new_pupil_follows_the_class() -> None:
    """The odds are those that the class gives, exactly."""
    priors = Histories(DAY).forecast(Named.of(WAYS), "K01", BASE).priors()
    assert [one * sum(BASE) for one in priors] == [share * sum(priors) for share in BASE]


def test_what_is_there_fades_into_the_class_day_by_day() -> None:
    """Nearer to the class's share with each day, and never below it."""
    held = [_held(_after(History(DAY, {"A01": MILLION}), days), "A01") for days in (1, 2, 7, 30, 140)]
    assert all(later < earlier for earlier, later in pairwise(held))
    assert held[0] > IDEA_STAYS
    assert MILLION * BASE[3] // sum(BASE) <= held[-1] < 70_000


def test_a_second_page_of_one_day_is_a_night_later() -> None:
    """Something else can be true of it."""
    assert (
        _after(History(DAY, {"A01": MILLION}), 0).shares == _after(History(DAY, {"A01": MILLION}), 1).shares
    )


def test_an_idea_that_the_page_hides_keeps_its_share() -> None:
    """Whatever was written on such a page: only days take from it, and it comes back with the next page."""
    history = History(DAY, {"A01": 900_000, "sound": 100_000})
    before = forecast(history, Named.of(NO_PATTERN), BASE[:3], DAY + timedelta(days=1))
    stays = 900_000 * IDEA_STAYS // MILLION
    assert _held(before.after((1, 1, 1)), "A01") == stays
    assert abs(_held(before.after((1, 3, 9)), "A01") - stays) < 20_000


def test_answers_release_within_a_night() -> None:
    """A handful of right answers weighs more than what was there."""
    assert _held(_after(History(DAY, {"A01": MILLION}), 1, (1000, 10, 10, 1)), "A01") < MILLION // 2


def test_small_shares_are_not_kept_by_name() -> None:
    """They go to the rest, which follows the class."""
    kept = History(DAY, {"A01": NAMED_FROM - 1, "A02": NAMED_FROM, "sound": 900_000}).rounded()
    assert kept.shares == {"A02": NAMED_FROM, "sound": 900_000}


def test_a_pattern_that_is_not_in_the_catalogue_any_more_only_fades() -> None:
    """A notebook of an earlier release may name one."""
    found = _after(History(DAY, {"Z99": MILLION}), 1)
    assert _held(found, "Z99") == IDEA_STAYS


def test_shares_that_cannot_be_are_refused() -> None:
    """Together they are no more than the whole."""
    for shares in ({"A01": MILLION, "sound": 1}, {"A01": -1}):
        with pytest.raises(ValueError, match="parts of one whole"):
            History(DAY, shares)
        with pytest.raises(ValueError, match="parts of one whole"):
            PupilNight(shares)


def test_a_finding_is_withdrawn_by_answers_and_not_by_days() -> None:
    """Less than half is left on a night that could show it, and less than half of what there was."""
    found, left = PupilNight({"A01": 960_000}, {"A01": 2}), {"A01": 470_000, "sound": 500_000}
    assert PupilNight(left, {"A01": 0}).withdraws(("A01",), found)
    assert not PupilNight(left, {"B03": 0}).withdraws(("A01",), found)
    assert not PupilNight(left, {"A01": 0}).withdraws(("A01",), PupilNight({"A01": 900_000}))
    assert PupilNight({"A01": 499_999}, {"A01": 0}).withdraws(("A01",), None)
    assert not PupilNight({"A01 B03": MILLION}, {"B03": 0}).withdraws(("B03",), None)
    assert not PupilNight().withdraws(("A01",), found)
