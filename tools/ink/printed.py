"""What is printed in a cell: lines, squares, and the three windows."""

import torch

from tools.ink.chance import Array, Chance
from tools.ink.drawing import HIGH, WIDE
from tools.ink.layout import PRINT, Strokes, line_stroke


def places(long: int, fine: int, device: str) -> Array:
    """Return where the middles of places are, in places of the usual size, where `fine` stand for one."""
    return (torch.arange(long * fine, device=device, dtype=torch.float32) + 0.5) / fine - 0.5


def answer_lines(chance: Chance, cells: int) -> Array:
    """Return how far down the answer's line is in each cell."""
    usual, any_ = 80 + chance.about(2.0, cells), chance.between(48, 93, cells)
    return torch.where(chance.coin(0.6, cells), usual, any_)


def printed_lines(chance: Chance, first: Array, ruled: float, windowed: Array, fine: int = 1) -> Array:
    """Return the printed lines of each cell: the answer's, which is given, and ruled ones."""
    cells = len(first)
    y = places(HIGH, fine, chance.device)[:, None]
    x = places(WIDE, fine, chance.device)
    ink = torch.zeros(cells, HIGH * fine, WIDE * fine, device=chance.device)
    step = chance.between(18, 44, cells)
    plans = (
        (chance.coin(0.85, cells) & ~windowed, first, 1.0),
        (chance.coin(ruled, cells), first - step, 0.8),
        (chance.coin(ruled * 0.7, cells), first - 2 * step, 0.8),
        (chance.coin(ruled * 0.5, cells), first + step, 0.8),
    )
    for there, level, dark in plans:
        rows = there.nonzero()[:, 0]
        if not len(rows):
            continue
        slope = chance.about(0.006, len(rows), 1, 1)
        thick = chance.between(0.8, 2.6, len(rows), 1, 1)
        far = (y - level[rows, None, None] - slope * (x - WIDE / 2)).abs()
        start = chance.between(-30, 14, len(rows), 1, 1)
        end = chance.between(190, 290, len(rows), 1, 1)
        line = ((thick / 2 - far) * fine + 0.5).clamp(0, 1) * (x > start) * (x < end)
        dotted = chance.coin(0.08, len(rows), 1, 1)
        line = (
            line
            * torch.where(dotted, ((x % 6) < 3).float(), 1.0)
            * dark
            * chance.between(0.6, 1, len(rows), 1, 1)
        )
        ink[rows] = torch.maximum(ink[rows], line)
    rows = chance.coin(0.03, cells).nonzero()[:, 0]  # squared paper, or the edge of a printed box
    if len(rows):
        every = chance.between(16, 30, len(rows), 1, 1)
        shift = chance.between(0, 16, len(rows), 2, 1, 1)
        near = torch.minimum((y + shift[:, 0]) % every, (x + shift[:, 1]) % every)
        ink[rows] = torch.maximum(
            ink[rows], (near < 1.2).float() * chance.between(0.15, 0.5, len(rows), 1, 1)
        )
    return ink


def window_boxes(chance: Chance, rows: int) -> Array:
    """Return three printed boxes a cell: whole, over, under."""
    wide, narrow = chance.between(56, 82, rows), chance.between(64, 108, rows)
    left = chance.between(6, 30, rows)
    high = chance.between(46, 68, rows)
    y = 48 + chance.about(2, rows)
    apart = chance.between(3, 6, rows)
    low = chance.between(34, 42, rows)
    x = left + wide + chance.between(8, 28, rows)
    x = x.minimum(236 - narrow)
    whole = torch.stack([left, y - high / 2, left + wide, y + high / 2], 1)
    over = torch.stack([x, y - apart - low, x + narrow, y - apart], 1)
    under = torch.stack([x, y + apart, x + narrow, y + apart + low], 1)
    return torch.stack([whole, over, under], 1)


def frames(chance: Chance, cell: Array, boxes: Array) -> list[Strokes]:
    """Draw the printed boxes, and the bar between over and under."""
    layer = torch.full((len(cell),), PRINT, device=chance.device)
    none = layer * 0 - 1
    thick = chance.between(0.8, 2.0, len(cell))
    drawn = []

    def line(start: Array, end: Array) -> None:
        bend = torch.zeros(len(cell), 1, device=chance.device)
        drawn.append(line_stroke(cell, start, end, bend, thick, layer, none))

    for at in range(3):
        left, top, right, bottom = boxes[:, at].unbind(1)
        corners = [
            torch.stack(pair, 1) for pair in ((left, top), (right, top), (right, bottom), (left, bottom))
        ]
        for start, end in zip(corners, corners[1:] + corners[:1], strict=True):
            line(start, end)
    middle = (boxes[:, 1, 3] + boxes[:, 2, 1]) / 2
    line(torch.stack([boxes[:, 1, 0] - 3, middle], 1), torch.stack([boxes[:, 1, 2] + 3, middle], 1))
    return drawn
