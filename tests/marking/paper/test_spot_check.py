"""A spot check shows a few sure answers; one wrong among them raises the threshold."""

from hypothesis import given
from hypothesis import strategies as st

from onewhole.marking.paper.ink_reading import SURE
from onewhole.marking.paper.spot_check import SPOT_CHECKED, raised, spot_cells
from onewhole.marking.paper.sureness import Sureness

KEYS = [(f"K{pupil:02}", str(problem)) for pupil in range(1, 26) for problem in range(1, 13)]


def test_ten_are_shown_from_all_over_the_class() -> None:
    """The same each time, others on another night, of several pupils and problems; all where few are."""
    shown = spot_cells(KEYS, 3)
    assert shown == spot_cells(KEYS[::-1], 3)
    assert len(shown) == SPOT_CHECKED == 10
    assert set(shown) != set(spot_cells(KEYS, 4))
    assert len({code for code, _ in shown}) > 4
    assert len({label for _, label in shown}) > 4
    assert sorted(spot_cells(KEYS[:3], 3)) == KEYS[:3]


def test_every_cell_is_shown_as_often_as_any_other() -> None:
    """Over many nights: each of 300 cells about 10 times in 300 nights."""
    counts = dict.fromkeys(KEYS, 0)
    for night in range(300):
        for key in spot_cells(KEYS, night):
            counts[key] += 1
    assert min(counts.values()) >= 1
    assert max(counts.values()) <= 25


@given(st.sampled_from(Sureness), st.lists(st.integers(0, SURE), max_size=4))
def test_one_wrong_raises_the_threshold(now: Sureness, wrong: list[int]) -> None:
    """At the new one none of the wrong ones would have been read; with none wrong nothing changes."""
    after = raised(now, wrong)
    order = list(Sureness)
    if not wrong:
        assert after is now
        return
    assert after is Sureness.EVERY or order.index(after) > order.index(now)
    assert all(doubt >= after.limit for doubt in wrong)
    between = order[order.index(now) + 1 : order.index(after)]
    assert all(any(doubt < one.limit for doubt in wrong) for one in between)


def test_the_settings_go_from_loose_to_strict() -> None:
    """Each promises more than the one before, and allows less doubt; the last reads nothing unseen."""
    limits = [one.limit for one in Sureness]
    assert limits == sorted(limits, reverse=True)
    assert len(set(limits)) == len(limits)
    assert [one.promise for one in Sureness] == [10_000, 5_000, 2_000, 1_000, 0]
    assert Sureness.EVERY.limit == 0
