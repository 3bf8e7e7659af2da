"""Numbers multiplied or divided on squared paper: a digit a square, with lines, signs and the bracket."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from onewhole.number.quantity import whole
from onewhole.pictures.columns import DIGITS, FEWEST, MARGIN, POINT, SMALL, SMALL_ROW, SQUARE, sign_of, struck
from onewhole.pictures.scene import Look, Piece, Scene, Stroke, Wedge, Words
from onewhole.pictures.squares import RowSign, WrittenRow, WrittenState
from onewhole.pictures.written_state import written_states
from onewhole.working.working import Working

#: How far the bracket of a division bends, how high an r is, and half a sign of multiplication.
BEND, LETTER, CROSS = Fraction(3, 2), Fraction(3), Fraction(2)


def written(working: Working) -> tuple[Scene, ...]:
    """Draw a product or a quotient in columns, a scene for every line; nothing for any other working.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.products.in_columns import MULTIPLY_IN_COLUMNS
    >>> from onewhole.working.work import work
    >>> scenes = written(work(read_statement("386 x 24"), MULTIPLY_IN_COLUMNS))
    >>> len({(scene.width, scene.height) for scene in scenes})
    1
    """
    states = written_states(working)
    need = _need(states)
    return tuple([_scene(state, need, max(FEWEST, need)) for state in states])


def written_still(working: Working) -> Scene | None:
    """Return what stands in the squares at the end, as narrow as it is; None for any other working."""
    states = written_states(working)
    return _scene(states[-1], _need(states), _need(states)) if states else None


def written_begun(working: Working) -> Scene | None:
    """Draw the squares with the first step done and room for the rest; None for any other working."""
    states = written_states(working)
    first = next((one for one in states if one.rows != states[0].rows), None)
    return None if first is None else _scene(first, _need(states), _need(states))


def _need(states: tuple[WrittenState, ...]) -> int:
    """Return how many squares the widest of some states takes."""
    return max(map(squares_across, states), default=0)


def squares_across(state: WrittenState) -> int:
    """Return how many squares a state takes from left to right, with the remainder."""
    return state.squares + (1 + len(state.remainder_digits) if state.remainder_digits else 0)


def _scene(state: WrittenState, need: int, wide: int) -> Scene:
    """Draw squares that need so much room, in the middle of so much."""
    width = 2 * MARGIN + wide * SQUARE
    height = 2 * MARGIN + sum((SMALL_ROW if row.small else SQUARE) for row in state.rows)
    left = MARGIN + (wide - need) // 2 * SQUARE
    return Scene(width, height, tuple(_pieces(state, left)), state.told)


def _pieces(state: WrittenState, left: Fraction) -> Iterator[Piece]:
    top = MARGIN
    for at, row in enumerate(state.rows):
        yield from _row(row, left, top)
        if state.bracket is not None and at == 1:
            yield from _bracket(left + state.bracket * SQUARE, top)
        if state.remainder_digits and at == 0:
            yield from _remainder(state.remainder_digits, state.after, left + state.squares * SQUARE, top)
        top += SMALL_ROW if row.small else SQUARE


def _row(row: WrittenRow, left: Fraction, top: Fraction) -> Iterator[Piece]:
    high, size = (SMALL_ROW, SMALL) if row.small else (SQUARE, DIGITS)
    y = top + high / 2
    for at, digit in enumerate(row.digits):
        if digit is not None:
            x = left + (at + Fraction(1, 2)) * SQUARE
            yield Piece(f"{row.name}/{at}", Words(x, y, whole(digit), size))
            if row.struck:
                yield struck(f"{row.name}/{at}", x, y, size)
    if row.point is not None:
        yield _point(row.name, left + row.point * SQUARE, top)
    if row.sign is not None:
        yield from _sign(row.name, row.sign, left + (row.sign_at + Fraction(1, 2)) * SQUARE, y)
    if row.rule is not None:
        begin, end = (left + at * SQUARE for at in row.rule)
        yield Piece(f"{row.name}/rule", Stroke(begin, top + high, end, top + high), Look.FILLED)


def _point(name: str, x: Fraction, top: Fraction) -> Piece:
    """Write a point on the line between two squares."""
    point = Wedge(x, top + (SQUARE + DIGITS) / 2, POINT, Fraction(0), Fraction(1))
    return Piece(f"{name}/point", point, Look.FILLED)


def _sign(name: str, sign: RowSign, x: Fraction, y: Fraction) -> Iterator[Piece]:
    if sign is not RowSign.TIMES:
        yield from sign_of(name, x, y, taken=sign is RowSign.MINUS)
        return
    yield Piece(f"{name}/sign", Stroke(x - CROSS, y - CROSS, x + CROSS, y + CROSS), Look.FILLED)
    yield Piece(f"{name}/sign/up", Stroke(x - CROSS, y + CROSS, x + CROSS, y - CROSS), Look.FILLED)


def _bracket(x: Fraction, top: Fraction) -> Iterator[Piece]:
    """Draw a bracket that bends to the right and meets the line over the number."""
    bends = (Fraction(0), BEND * 2 / 3, BEND, BEND * 2 / 3, Fraction(0))
    corners = [(x - BEND + bend, top + at * SQUARE / 4) for at, bend in enumerate(bends)]
    corners[0] = (x - BEND / 2, top)
    for at, ((one, high), (other, low)) in enumerate(pairwise(corners)):
        yield Piece(f"bracket/{at}", Stroke(one, high, other, low), Look.FILLED)
    yield Piece("bracket/end", Stroke(x - BEND / 2, top, x, top), Look.FILLED)


def _remainder(digits: tuple[int, ...], after: int, x: Fraction, top: Fraction) -> Iterator[Piece]:
    """Write r and what is left over behind the quotient."""
    foot, middle = top + (SQUARE + DIGITS) / 2, x + SQUARE / 2
    high = foot - LETTER
    yield Piece("r/down", Stroke(middle - 1, high, middle - 1, foot), Look.FILLED)
    bend = middle + Fraction(1, 2)
    yield Piece("r/arm", Stroke(middle - 1, high + 1, bend, high), Look.FILLED)
    yield Piece("r/end", Stroke(bend, high, middle + 1, high + Fraction(1, 2)), Look.FILLED)
    if after:
        yield _point("r", x + (1 + len(digits) - after) * SQUARE, top)
    for at, digit in enumerate(digits):
        there = x + (at + Fraction(3, 2)) * SQUARE
        yield Piece(f"r/{at}", Words(there, top + SQUARE / 2, whole(digit), DIGITS))
