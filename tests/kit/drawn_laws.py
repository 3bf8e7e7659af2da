"""What holds for every picture of wholes and parts, whatever its shape."""

from fractions import Fraction

from onewhole.pictures.picture import Picture
from onewhole.pictures.quantity_state import quantity_states, whole_unit
from onewhole.pictures.scene import Look, Piece, Scene
from onewhole.statements.expression import value
from onewhole.working.line import WholeLine
from onewhole.working.working import Working
from tests.kit.drawn import amount, inside, size

LIVE = (Look.FILLED, Look.STRUCK)


def check(working: Working, picture: Picture, whole: Fraction) -> None:
    """Check a picture whose wholes have a size of ``whole``."""
    assert len(picture.scenes) == len(working.lines)
    for scene in picture.scenes:
        assert inside(scene)
        assert scene.descriptions
    _check_counts(working, picture, whole)
    for before, after in zip(picture.scenes, picture.scenes[1:], strict=False):
        _check_names(before, after, whole)


def whole_size(picture: Picture, working: Working) -> Fraction:
    """Return the size of one whole: what lies on the first scene, against the amount it stands for."""
    shown = quantity_states(working)[0]
    return amount(picture.scenes[0], *LIVE) / shown.amount


def _check_counts(working: Working, picture: Picture, whole: Fraction) -> None:
    """What is there, less what is struck, less what still waits, is the value of the line."""
    unit = whole_unit(working)
    for line, state, scene in zip(working.lines, quantity_states(working), picture.scenes, strict=True):
        shown, struck = amount(scene, *LIVE) / whole, amount(scene, Look.STRUCK) / whole
        assert shown == state.amount
        assert struck == state.struck.amount
        parts = [piece for piece in scene.pieces if piece.look in LIVE and size(piece) != whole]
        assert len(parts) == sum(heap.pieces for heap in state.heaps)
        if not isinstance(line.says, WholeLine):
            again = state.heaps[0].amount if state.renamed else 0
            assert (shown - again - struck - state.waiting.amount) * unit.size == value(line.says)


def _check_names(before: Scene, after: Scene, whole: Fraction) -> None:
    """A piece that keeps its name keeps its size: it moves or is struck, and does not turn into another."""
    sizes = {piece.name: size(piece) for piece in _live(before)}
    for piece in _live(after):
        assert sizes.get(piece.name, size(piece)) == size(piece)
    kept = sum(piece.name in sizes for piece in _live(after))
    if whole and _amounts(before) == _amounts(after):
        assert kept == len(sizes)


def _live(scene: Scene) -> list[Piece]:
    return [piece for piece in scene.pieces if piece.look in LIVE]


def _amounts(scene: Scene) -> list[Fraction]:
    return sorted(found for piece in _live(scene) if (found := size(piece)))
