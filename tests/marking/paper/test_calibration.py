"""The threshold learnt from what a teacher confirmed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.marking.paper.calibration import EDGES, FEWEST, Calibration, DoubtBand, Looked
from onewhole.marking.paper.ink_reading import SURE
from onewhole.marking.paper.sureness import Sureness

COUNTS = st.tuples(*[st.integers(0, 2000)] * 3).map(lambda three: DoubtBand(*sorted(three, reverse=True)))
LEARNT = st.lists(COUNTS, min_size=len(EDGES), max_size=len(EDGES)).map(lambda row: Calibration(tuple(row)))


@given(LEARNT)
def test_a_stricter_setting_never_allows_more(learnt: Calibration) -> None:
    """Whatever was counted; the strictest one always reads nothing unseen."""
    limits = [learnt.limit(one) for one in Sureness]
    assert limits == sorted(limits, reverse=True)
    assert learnt.limit(Sureness.EVERY) == 0


def test_a_few_looks_teach_nothing() -> None:
    """Below so many cells the usual threshold stands, whatever was wrong in them."""
    looked = [Looked(100, wrong=True)] * (FEWEST - 1)
    learnt = Calibration().with_cells([100] * (FEWEST - 1), looked)
    assert [learnt.limit(one) for one in Sureness] == [one.limit for one in Sureness]
    assert learnt.with_cells([100], [Looked(100, wrong=True)]).limit(Sureness.FEW) == 0


def test_ink_that_reads_well_is_shown_less() -> None:
    """With no wrong one among many at middling doubt, more of it stands unseen."""
    came = [100] * 3000 + [40_000] * 300
    learnt = Calibration().with_cells(came, [Looked(40_000, wrong=False)] * 300)
    assert learnt.limit(Sureness.USUAL) > Sureness.USUAL.limit


def test_ink_that_reads_badly_is_shown_more() -> None:
    """With one wrong in ten among what seemed sure, hardly anything stands unseen."""
    looked = [Looked(2_000, wrong=at % 10 == 0) for at in range(400)]
    learnt = Calibration().with_cells([2_000] * 1000, looked)
    assert learnt.limit(Sureness.FEW) < Sureness.FEW.limit


@given(st.lists(st.integers(0, SURE), max_size=30), st.lists(st.integers(0, SURE), max_size=30))
def test_cells_are_counted_once_and_lose_nothing(first: list[int], second: list[int]) -> None:
    """In two steps as in one; a cell that was looked at has come."""
    looks = [Looked(doubt, wrong=doubt % 2 == 0) for doubt in first]
    once = Calibration().with_cells([*first, *second], looks)
    assert Calibration().with_cells(first, looks).with_cells(second, []) == once
    assert sum(band.came for band in once.bands) == len(first) + len(second)
    assert sum(band.looked_at for band in once.bands) == len(first)


def test_counts_that_cannot_be_are_refused() -> None:
    """More wrong than looked at, more looked at than came, another number of bands."""
    for counts in ((1, 2, 0), (2, 1, 2), (1, 1, -1)):
        with pytest.raises(ValueError, match="cannot be wrong"):
            DoubtBand(*counts)
    with pytest.raises(ValueError, match="bands"):
        Calibration(())
