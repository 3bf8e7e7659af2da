"""In-between scenes: what is shown while one scene changes into the next."""

from fractions import Fraction
from typing import Any, assert_never

from msgspec.structs import replace

from onewhole.pictures.scene import Box, Hop, Piece, Scene, Shape, Stroke, Wedge, Words

HALF = Fraction(1, 2)


def tween(before: Scene, after: Scene, share: Fraction) -> Scene:
    """Return the scene that stands when a share of the change, from 0 to 1, is done.

    A piece of the same name and kind of shape moves and changes its size evenly, exactly; its look and what
    is written in it change half way. A new piece grows: a box from its left edge, a wedge by its sweep, a
    stroke and a hop from their start; new text appears half way. A removed piece disappears half way. Share 0
    is ``before`` and share 1 is ``after``, piece by piece.

    Raises ValueError for a share below 0 or above 1, and for scenes of two sizes.

    >>> strip = Piece("strip", Box(Fraction(0), Fraction(0), Fraction(60), Fraction(10)))
    >>> empty = Scene(Fraction(90), Fraction(20), ())
    >>> tween(empty, Scene(Fraction(90), Fraction(20), (strip,)), Fraction(1, 3)).pieces[0].shape
    Box(x=Fraction(0, 1), y=Fraction(0, 1), width=Fraction(20, 1), height=Fraction(10, 1))
    """
    if not 0 <= share <= 1:
        msg = f"a share of a change is from 0 to 1, not {share}"
        raise ValueError(msg)
    if (before.width, before.height) != (after.width, after.height):
        msg = "one scene cannot change into another of another size"
        raise ValueError(msg)
    if share in {0, 1} or before.pieces == after.pieces:
        return after if share == 1 else before
    early = share < HALF
    old = {piece.name: piece for piece in before.pieces}
    new = {piece.name: piece for piece in after.pieces}
    if early:
        stay = [_on_the_way(piece, new.get(piece.name), share) for piece in before.pieces]
        come = [grown for piece in after.pieces if piece.name not in old for grown in _grown(piece, share)]
        return replace(before, pieces=(*stay, *come))
    pieces: list[Piece] = []
    for piece in after.pieces:
        was = old.get(piece.name)
        if was is not None and type(was.shape) is type(piece.shape):
            pieces.append(replace(piece, shape=_moved(was.shape, piece.shape, share)))
        else:
            pieces.extend(_grown(piece, share))
    return replace(after, pieces=tuple(pieces))


def _on_the_way(piece: Piece, later: Piece | None, share: Fraction) -> Piece:
    """A piece in the first half of the change: moved where its kind of shape stays, unchanged otherwise."""
    if later is None or type(later.shape) is not type(piece.shape):
        return piece
    return replace(piece, shape=_moved(piece.shape, later.shape, share, written=piece.shape))


def _moved(before: Shape, after: Shape, share: Fraction, written: Shape | None = None) -> Shape:
    """A shape part of the way; ``written`` gives the text that is shown (``after`` where left out)."""
    if before == after:
        return after
    if type(before) is not type(after):
        msg = "a shape cannot change into another kind"
        raise TypeError(msg)
    now: dict[str, Any] = {}
    for name in after.__struct_fields__:
        start, end = getattr(before, name), getattr(after, name)
        now[name] = start + (end - start) * share if isinstance(end, Fraction) else end
    if isinstance(written, Words):
        now["caption"] = written.caption
    return replace(after, **now)


def _grown(piece: Piece, share: Fraction) -> tuple[Piece, ...]:
    """A new piece, partly drawn; its text only from half way on."""
    match piece.shape:
        case Box() as box:
            shape: Shape = replace(box, width=box.width * share)
        case Wedge() as wedge:
            shape = replace(wedge, sweep=wedge.sweep * share)
        case Stroke(x, y, to_x, to_y) as stroke:
            shape = replace(stroke, to_x=x + (to_x - x) * share, to_y=y + (to_y - y) * share)
        case Hop(x, _, to_x, height) as hop:
            shape = replace(hop, to_x=x + (to_x - x) * share, height=height * share)
        case Words():
            return (piece,) if share >= HALF else ()
        case _:
            assert_never(piece.shape)
    return (replace(piece, shape=shape),)
