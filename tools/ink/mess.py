"""What hands do beside writing: crossing out, scrawling, writing over a digit; and dirt."""

import torch

from tools.ink.bank import Bank, Hands
from tools.ink.chance import Array, Chance
from tools.ink.drawing import HIGH, WIDE
from tools.ink.labels import BOTTOM, INSIDE, LINE, OVERWRITTEN, PLACES, SLOTS, Writings
from tools.ink.layout import GHOST, HAND, PRINT, Marks, Placed, Spots, Strokes, line_stroke, marks_of, waves


def change_digits(
    chance: Chance,
    bank: Bank,
    hand: Hands,
    what: Array,
    text: Writings,
    spots: Spots,
    placed: Placed,
    marks: list[Marks],
    strokes: list[Strokes],
) -> None:
    """Write the answers; in some of them one digit is struck and written anew, or another one under it."""
    device = chance.device
    slots = torch.zeros(PLACES, dtype=torch.bool, device=device)
    slots[list(SLOTS)] = True
    can = placed.there & slots & (text.code < 10)
    chosen = torch.where(can, chance.between(0.1, 1, *can.shape), 0).argmax(1)
    rows = torch.arange(len(what), device=device)
    changed = ((what == INSIDE) | (what == OVERWRITTEN)) & can.any(1)
    moved = placed.middle.clone()
    scale = placed.scale.clone()
    struck = changed & (what == INSIDE)
    size = placed.size[rows, chosen]
    up = torch.where((chosen >= BOTTOM) & (chosen < BOTTOM + 3), 1.0, -1.0)
    up = torch.where((chosen < LINE) & chance.coin(0.3, len(up)), -up, up)
    step = torch.stack(
        [chance.about(0.15, len(up)) * size[:, 0], up * size[:, 1] * chance.between(0.85, 1.05, len(up))], 1
    )
    moved[rows, chosen] += torch.where(struck[:, None], step, 0)
    scale[rows, chosen] *= torch.where(struck, chance.between(0.65, 0.85, len(up)), 1.0)
    now = Placed(placed.glyph, placed.there, moved, placed.size, placed.box, placed.strokes, scale)
    marks.append(marks_of(chance, bank, hand, spots, now, text.code))
    at = changed.nonzero()[:, 0]
    place_ = chosen[at]
    old = (text.code[at, place_] + 1 + chance.below(9, len(at))) % 10
    cell = spots.cell[at]
    style = hand.style[cell, old][:, None]
    glyph = bank.glyph(hand, cell, old[:, None], style, (old >= 0)[:, None])[:, 0]
    was = bank.measures[placed.glyph[at, place_], 1].clamp(min=1)
    down = placed.scale[at, place_] * was / bank.measures[glyph, 1].clamp(min=1)
    marks.append(
        Marks(
            cell,
            glyph,
            placed.middle[at, place_] + chance.about(1.0, len(at), 2),
            torch.stack([down * hand.stretch[cell], down], 1),
            hand.slant[cell]
            - torch.where(hand.real[cell], hand.upright[cell], 1.0) * bank.measures[glyph, 5],
            chance.about(0.05, len(at)),
            hand.pen[cell] * chance.between(0.7, 1.0, len(at)),
            spots.layer[at],
            old * 0 - 1,
            waves(chance, hand, bank, cell, glyph),
        )
    )
    gone = struck[at]
    middle, half = placed.middle[at, place_][gone], placed.size[at, place_][gone] / 2
    strokes.extend(strikes(chance, hand, cell[gone], torch.cat([middle - half, middle + half], 1), few=True))


def strikes(
    chance: Chance, hand: Hands, cell: Array, box: Array, barred: Array | None = None, *, few: bool = False
) -> list[Strokes]:
    """Cross out what is in a box: one to four lines, level, slanted or crossed, or a zigzag.

    What has a bar of its own (``barred``) is crossed out by more than one level line.
    """
    rows = len(cell)
    layer = torch.full((rows,), HAND, device=chance.device)
    middle, half = (box[:, :2] + box[:, 2:]) / 2, ((box[:, 2:] - box[:, :2]) / 2).clamp(min=3)
    count = 1 + chance.pick([0.5, 0.3, 0.2] if few else [0.3, 0.3, 0.25, 0.15], rows)
    if barred is not None:
        count = torch.where(barred, count.clamp(min=2), count)
    style = chance.pick([0.45, 0.3, 0.25], rows)  # level, slanted, zigzag
    drawn = []
    for at in range(4):
        level = torch.stack(
            [torch.full((rows,), -1.1, device=chance.device), chance.between(-0.5, 0.5, rows)], 1
        )
        ends = torch.stack(
            [torch.full((rows,), 1.1, device=chance.device), level[:, 1] + chance.about(0.2, rows)], 1
        )
        way = 1.0 if at % 2 == 0 else -1.0
        slanted = torch.stack([chance.between(-1.1, -0.6, rows), way * chance.between(0.6, 1.1, rows)], 1)
        other = torch.stack([chance.between(0.6, 1.1, rows), -way * chance.between(0.6, 1.1, rows)], 1)
        zig = torch.stack(
            [torch.full((rows,), -1.05 + 0.5 * at, device=chance.device), way * chance.between(0.5, 1, rows)],
            1,
        )
        zag = torch.stack(
            [
                torch.full((rows,), -0.55 + 0.5 * at, device=chance.device),
                -way * chance.between(0.5, 1, rows),
            ],
            1,
        )
        start = torch.where((style == 0)[:, None], level, torch.where((style == 1)[:, None], slanted, zig))
        end = torch.where((style == 0)[:, None], ends, torch.where((style == 1)[:, None], other, zag))
        some = ((at < count) | (style == 2)).nonzero()[:, 0]
        drawn.append(
            line_stroke(
                cell[some],
                (middle + start * half)[some],
                (middle + end * half)[some],
                chance.about(0.06, len(some), 1),
                hand.pen[cell[some]] * chance.between(0.8, 1.2, len(some)),
                layer[some],
                torch.full((len(some),), 14, device=chance.device),
            )
        )
    return drawn


def scribbles(chance: Chance, hand: Hands, cell: Array, box: Array) -> list[Strokes]:
    """Scrawl over a box: a chain of wild curves."""
    rows = len(cell)
    layer = torch.full((rows,), HAND, device=chance.device)
    middle, half = (box[:, :2] + box[:, 2:]) / 2, ((box[:, 2:] - box[:, :2]) / 2).clamp(min=8)
    half = half * chance.between(0.6, 1.2, rows, 1)
    count = 3 + chance.below(8, rows)
    calm = chance.coin(0.5, rows)[:, None]
    drawn = []
    last = middle + half * chance.between(-1, 1, rows, 2)
    way = chance.about(0.5, rows, 2) * half
    for at in range(10):
        swing = torch.tensor([1.0 if at % 2 else -1.0, 0.0], device=chance.device) * half
        wild = middle + half * chance.between(-1.1, 1.1, rows, 2)
        hatch = middle + swing + torch.stack([chance.about(0.1, rows), chance.between(-1, 1, rows)], 1) * half
        end = torch.where(calm, hatch, wild)
        turn = chance.about(0.6, rows, 2) * half
        points = torch.stack([last, last + way, end - turn, end], 1)
        some = (at < count).nonzero()[:, 0]
        sign = torch.full((len(some),), 14, device=chance.device)
        drawn.append(Strokes(cell[some], points[some], hand.pen[cell[some]], layer[some], sign))
        last, way = end, turn
    return drawn


def dirt(chance: Chance, cells: int) -> list[Strokes]:
    """Specks and short lines that mean nothing."""
    drawn = []
    for share, long, thick in ((0.12, 0.8, 1.1), (0.06, 0.8, 1.0), (0.04, 6.0, 1.1)):
        rows = chance.coin(share, cells).nonzero()[:, 0]
        start = torch.stack([chance.between(0, WIDE, len(rows)), chance.between(0, HIGH, len(rows))], 1)
        end = start + chance.about(long, len(rows), 2)
        layer = torch.where(chance.coin(0.5, len(rows)), GHOST, PRINT)
        none = torch.full((len(rows),), -1, device=chance.device)
        drawn.append(
            line_stroke(rows, start, end, chance.about(0.2, len(rows), 1), none * 0.0 + thick, layer, none)
        )
    return drawn
