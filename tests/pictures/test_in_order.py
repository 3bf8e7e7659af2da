"""Numbers that are put in order: at the end the least stands on top, or the greatest."""

import pytest

from onewhole.pictures.choosing import chosen
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.quantity_state import quantity_states
from onewhole.pictures.scene import Box
from onewhole.pictures.strips import strips
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from onewhole.working.working import Working


def worked(typed: str) -> Working:
    """Put numbers in order."""
    return work(read_statement(typed), REGROUP_FIRST)


@pytest.mark.parametrize(
    ("typed", "seats"),
    [
        ("order 2/3, 1/2, 3/4", (1, 0, 2)),
        ("order 2/3, 1/2, 3/4 from greatest", (1, 2, 0)),
        ("order 3/4, 1/2, 2/4", (2, 0, 1)),
        ("order 2 1/2, 2 3/4, 1 1/8", (1, 2, 0)),
        ("order 5 ft, 4 ft 11 in, 61 in", (1, 0, 2)),
    ],
)
def test_each_number_has_its_seat_in_the_last_scene(typed: str, seats: tuple[int, ...]) -> None:
    """Where it stands in the order; before that they stand as they come."""
    states = quantity_states(worked(typed))
    assert [state.seats for state in states[:-1]] == [()] * (len(states) - 1)
    assert states[-1].seats == seats
    assert len(states[-1].compared) == len(seats)


def test_the_strips_change_places() -> None:
    """A strip that moves keeps its name, its size and its place from the left."""
    scenes = strips(worked("order 2/3, 1/2, 3/4")).scenes
    first, last = ({p.name: p.shape for p in scene.pieces} for scene in (scenes[0], scenes[-1]))
    moved = [name for name in first if first[name] != last[name] and "part" in name and "words" not in name]
    assert moved
    for name in moved:
        before, after = first[name], last[name]
        assert isinstance(before, Box)
        assert isinstance(after, Box)
        assert (before.x, before.width, before.height) == (after.x, after.width, after.height)
    tops = {name: shape.y for name, shape in last.items() if isinstance(shape, Box)}
    assert tops["number-2-whole-1-part-1"] < tops["whole-1-part-1"] < tops["number-3-whole-1-part-1"]


@pytest.mark.parametrize(
    ("typed", "kind"),
    [
        ("order 2/3, 1/2, 3/4", PictureKind.STRIPS),
        ("order 0.5, 0.45", PictureKind.LINE),
        ("order 345, 354", PictureKind.LINE),
        ("order 5 ft, 4 ft 11 in, 61 in", PictureKind.LINE),
        ("order 3/5, 2/3, 7/10, 1/2", PictureKind.LINE),
        ("order 10/12, 5/8, 7/12, 1/3, 2/3 from greatest to least", PictureKind.LINE),
    ],
)
def test_which_picture_suits(typed: str, kind: PictureKind) -> None:
    """Strips where the pieces can be counted, else one number line with all numbers on it."""
    assert chosen(worked(typed)) is kind
