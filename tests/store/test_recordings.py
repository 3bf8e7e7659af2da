"""The teacher's own voice is kept byte for byte, part by part."""

import pytest
from msgspec.structs import replace

from onewhole.store.opening import Store
from onewhole.store.recordings import (
    KeptRecording,
    forget_recording,
    keep_recording,
    recorded_labels,
    recordings_of,
)
from onewhole.store.refusals import NotStorable, NotThere
from tests.kit.kept import NOW, first_round

SOUND = bytes(range(256)) * 40


def test_a_part_is_kept_replaced_and_forgotten(store: Store) -> None:
    """Sound and cues as they were; one part recorded again leaves the others alone."""
    night = first_round(store).night
    first = KeptRecording(night, "1", "audio/mp4", SOUND, (0, 1200, 1200, 5300), NOW)
    opening = KeptRecording(night, "opening", "audio/webm", b"", (), NOW)
    again = replace(first, sound=SOUND[:100], cues=(40,))
    keep_recording(store, first)
    keep_recording(store, opening)
    assert recordings_of(store, night) == (first, opening)
    assert recorded_labels(store, night) == {"1": 10_240, "opening": 0}
    keep_recording(store, again)
    assert recordings_of(store, night) == (again, opening)
    forget_recording(store, night, "1")
    assert recordings_of(store, night) == (opening,)
    assert recordings_of(store, night + 1) == ()


def test_what_cannot_be_is_told(store: Store) -> None:
    """A night or a part that is not there, a board that steps backwards, a time below 0."""
    night = first_round(store).night
    fine = KeptRecording(night, "1", "audio/webm", SOUND, (), NOW)
    with pytest.raises(NotThere, match="night"):
        keep_recording(store, replace(fine, night=99))
    with pytest.raises(NotThere, match="recording"):
        forget_recording(store, night, "1")
    for cues in ((5, 4), (-1,)):
        with pytest.raises(NotStorable, match="backwards"):
            replace(fine, cues=cues)
    assert recorded_labels(store, night) == {}
