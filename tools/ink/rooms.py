"""The boxes of a cell that writings stay in."""

import torch

from tools.ink.chance import Array, Chance
from tools.ink.labels import Writings


def split_box(
    chance: Chance, room: Array, two: Array, first: Writings, second: Writings
) -> tuple[Array, Array]:
    """Return two parts of a box, side by side or one above the other, in either order.

    Two answers never stand so that they could be one: a whole beside a fraction, or a whole over a whole.
    """
    rows = len(room)
    left, top, right, bottom = room.unbind(1)
    x = left + (right - left) * chance.between(0.4, 0.6, rows)
    y = top + (bottom - top) * chance.between(0.42, 0.58, rows)
    space = torch.where(two, chance.between(14, 40, rows), chance.between(2, 8, rows))
    bare = [one.bar == 0 for one in (first, second)]
    upright = chance.coin(0.25, rows) | (two & (bare[0] != bare[1]))
    upright = (upright & ~(two & bare[0] & bare[1]))[:, None]
    tight = torch.where(two, chance.between(3, 9, rows), space)
    over = torch.stack([left, top, right, y - tight / 2], 1)
    under = torch.stack([left, y + tight / 2, right, bottom], 1)
    before = torch.stack([left, top, x - space / 2, bottom], 1)
    behind = torch.stack([x + space / 2, top, right, bottom], 1)
    one, other = torch.where(upright, over, before), torch.where(upright, under, behind)
    turned = chance.coin(0.5, rows)[:, None]
    return torch.where(turned, other, one), torch.where(turned, one, other)


def shrunk(chance: Chance, room: Array) -> Array:
    """Leave the left part of a box."""
    room = room.clone()
    room[:, 2] -= chance.between(50, 80, len(room))
    return room


def corners(chance: Chance, rows: int) -> Array:
    """Return small boxes in a right corner."""
    x = chance.between(170, 195, rows)
    y = torch.where(chance.coin(0.5, rows), chance.between(1, 12, rows), chance.between(45, 60, rows))
    return torch.stack([x, y, x + chance.between(38, 46, rows), y + chance.between(18, 26, rows)], 1).clamp(
        max=239
    )


def anywhere(chance: Chance, rows: int) -> Array:
    """Return boxes that fill most of a cell."""
    x, y = chance.between(0, 60, rows), chance.between(0, 10, rows)
    return torch.stack([x, y, x + 170, y + 84], 1)


def outside(chance: Chance, rows: int) -> Array:
    """Boxes mostly above or below the cell: what a neighbour wrote over the edge."""
    y = torch.where(chance.coin(0.5, rows), chance.between(-44, -36, rows), chance.between(88, 94, rows))
    x = chance.between(0, 80, rows)
    return torch.stack([x, y, x + 160, y + 42], 1)
