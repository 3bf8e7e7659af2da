"""The steps of a night's round."""

from datetime import timedelta

import pytest

from onewhole.store.nights import add_night
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere
from onewhole.store.steps import NightStep, keep_step, steps_of
from tests.kit.kept import DAY, NOW, first_round


def test_a_step_keeps_its_first_moment(store: Store) -> None:
    """Taken again later it stays; nights without a step and other classes are not in it."""
    kept = first_round(store)
    add_night(store, kept.class_number, kept.sheet, 1, DAY + timedelta(days=1))
    keep_step(store, kept.night, NightStep.PRINTED, NOW)
    keep_step(store, kept.night, NightStep.PRINTED, NOW + timedelta(hours=1))
    keep_step(store, kept.night, NightStep.SHOWN, NOW - timedelta(hours=1))
    assert steps_of(store, kept.class_number) == {
        kept.night: {NightStep.PRINTED: NOW, NightStep.SHOWN: NOW - timedelta(hours=1)}
    }
    assert steps_of(store, kept.class_number + 1) == {}


def test_a_step_needs_its_night(store: Store) -> None:
    """A night that is not there is told."""
    first_round(store)
    with pytest.raises(NotThere, match="night"):
        keep_step(store, 99, NightStep.PRINTED, NOW)
