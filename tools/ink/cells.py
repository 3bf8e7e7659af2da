"""Whole cells: an answer, or none, with everything else that may stand in a cell."""

from dataclasses import dataclass
from typing import Final

import torch

from tools.ink.bank import Bank, Hands, hands
from tools.ink.chance import Array, Chance
from tools.ink.drawing import HIGH, WIDE, draw
from tools.ink.labels import (
    ANSWER,
    BOTTOM,
    EMPTY,
    LINE,
    NONE,
    NOT,
    PLACES,
    SIGN,
    SLOTS,
    TOP,
    UNIT,
    Vocabulary,
    Writings,
    numbers,
    other_words,
)
from tools.ink.layout import GHOST, HAND, PRINT, Marks, Placed, Spots, Strokes, line_stroke, marks_of, place
from tools.ink.photo import Light, photographed

#: What may be in a cell. The share of each is how often it is trained on.
PLAIN, REWRITTEN, INSIDE, OVERWRITTEN, BESIDE, BLANK, RUBBED, SCRIBBLE, TWO, STRUCK, WORD = range(11)
SHARES: Final = (58.0, 6.0, 3.0, 3.0, 8.0, 4.0, 4.0, 3.5, 4.5, 4.0, 2.5)
NAMES: Final = (
    *("plain", "struck and written anew", "a digit struck inside", "a digit written over", "other working beside"),
    *("empty", "rubbed out", "scribbles", "two answers", "only struck answers", "words"),
)
#: Forms of numbers: whole, fraction, mixed, decimal, two measures, a dash.
FORMS: Final = (22.0, 22.0, 36.0, 13.0, 6.0, 1.0)
#: Height of a digit, in pixels, that counts as scale 1.
USUAL: Final = 34.0
_HEAT: Final = 18


@dataclass(frozen=True, slots=True)
class Mix:
    """What a batch is made of.

    ``scale`` are the bounds of how large is written; ``real`` the share of hands that write real digits;
    ``ruled`` how likely each of two more lines is there; ``pen`` multiplies how thick pens are.
    """

    shares: tuple[float, ...] = SHARES
    forms: tuple[float, ...] = FORMS
    real: float = 0.65
    scale: tuple[float, float] = (0.5, 1.15)
    ruled: float = 0.14
    pen: float = 1.0
    harsh: float = 1.0
    plain: bool = False
    windows: float = 0.1


@dataclass(frozen=True, slots=True)
class Batch:
    """Cells with what is in them; ``heat`` says where which sign stands, at an eighth of the size."""

    pictures: Array
    kind: Array
    writing: Writings
    struck: Array
    what: Array
    heat: Array

    def at(self, rows: Array) -> "Batch":
        """Return some of the cells."""
        return Batch(
            self.pictures[rows],
            self.kind[rows],
            self.writing.at(rows),
            self.struck[rows],
            self.what[rows],
            self.heat[rows],
        )


def compose(
    chance: Chance, bank: Bank, printed: Bank, words: Vocabulary, cells: int, mix: Mix, given: Writings | None = None
) -> Batch:
    """Compose a batch of cells; ``given`` are the answers to be written where they are not drawn by chance."""
    device = chance.device
    hand = hands(bank, chance, cells, mix.real)
    what = chance.pick(list(mix.shares), cells)
    writing = given or numbers(chance, cells, words, list(mix.forms), mix.plain)
    height = USUAL * chance.between(*mix.scale, cells)
    hand.pen.mul_(mix.pen)
    hand.pen.copy_(hand.pen.minimum(0.15 * height + 0.6).clamp(min=1.05))
    marks: list[Marks] = []
    strokes: list[Strokes] = []

    # the boxes that answers stay in
    room = torch.stack(
        [
            chance.between(2, 14, cells),
            chance.between(1, 7, cells),
            WIDE - chance.between(2, 14, cells),
            HIGH - chance.between(1, 7, cells),
        ],
        1,
    )
    beside, across = _split(chance, room)
    windowed = (
        chance.coin(mix.windows, cells)
        & (what == PLAIN)
        & (writing.unit == 0)
        & (writing.sign == 0)
        & (writing.code[:, 6] < 0)
    )
    split = (what == REWRITTEN) | (what == TWO)
    room = torch.where(split[:, None], beside, room)
    small = what == BESIDE
    room = torch.where(small[:, None], _shrunk(chance, room), room)
    tall_room = (what == INSIDE)[:, None] * torch.tensor([2.0, 11.0, -2.0, -11.0], device=device)
    room += tall_room
    height = torch.where(small, height.clamp(min=0.7 * USUAL), height)

    def put(rows: Array, text: Writings, box: Array, high: Array, layer: int, whose: Hands, of: Bank) -> Placed:
        spots = Spots(rows, box, high, torch.full((len(rows),), layer, device=device))
        placed = place(chance, of, whose, text, spots)
        marks.append(marks_of(chance, of, whose, spots, placed, text.code if layer == HAND else text.code * 0 - 1))
        strokes.append(placed.strokes)
        return placed

    answered = (what <= BESIDE) | (what == TWO)
    rows = (answered & ~windowed).nonzero()[:, 0]
    spots = Spots(rows, room[rows], height[rows], torch.full((len(rows),), HAND, device=device))
    text = writing.at(rows)
    placed = place(chance, bank, hand, text, spots)
    _change_digits(chance, bank, hand, what[rows], text, spots, placed, marks, strokes)
    strokes.append(placed.strokes)

    rows = windowed.nonzero()[:, 0]
    if len(rows):
        boxes = _windows(chance, len(rows))
        text = writing.at(rows)
        text = Writings(text.code, text.slots, text.sign, text.unit, text.bar.clamp(max=1))
        spots = Spots(rows, room[rows], height[rows], torch.full((len(rows),), HAND, device=device))
        placed = place(chance, bank, hand, text, spots, boxes)
        marks.append(marks_of(chance, bank, hand, spots, placed, text.code))
        strokes.extend(_frames(chance, rows, boxes))

    # a second writing: struck out beside the kept one, a second answer, or the only one and struck
    rows = ((what == REWRITTEN) | (what == TWO) | (what == STRUCK) | (what == SCRIBBLE)).nonzero()[:, 0]
    again = numbers(chance, len(rows), words, list(mix.forms), mix.plain)
    box = torch.where(split[rows, None], across[rows], room[rows])
    second = put(rows, again, box, height[rows] * chance.between(0.85, 1.15, len(rows)), HAND, hand, bank)
    gone = ((what == REWRITTEN) | (what == STRUCK))[rows]
    strokes.extend(_strikes(chance, hand, rows[gone], second.box[gone]))
    mess = (what == SCRIBBLE)[rows]
    strokes.extend(_scribbles(chance, hand, rows[mess], second.box[mess]))
    marks[-1] = _without(marks[-1], what, SCRIBBLE, chance, 0.5)

    rows = (what == WORD).nonzero()[:, 0]
    put(rows, other_words(chance, len(rows), words), room[rows], height[rows] * 0.9, HAND, hand, bank)

    # small working in a corner
    rows = (what == BESIDE).nonzero()[:, 0]
    corner = _corners(chance, len(rows))
    for shift in range(2):
        some = rows[chance.coin(1.0 if shift == 0 else 0.5, len(rows))]
        where = corner[torch.isin(rows, some)]
        where = where + torch.tensor([0.0, 14.0, 0.0, 14.0], device=device) * shift
        calm = numbers(chance, len(some), words, [5, 3, 2, 1, 0, 0], True)
        put(some, calm, where, 0.42 * USUAL * chance.between(0.7, 1.1, len(some)), HAND, hand, bank)

    # rubbed out, from the neighbours above and below, printed beside
    rows = (chance.coin(0.06, cells) | (what == RUBBED)).nonzero()[:, 0]
    put(rows, numbers(chance, len(rows), words, list(mix.forms)), _anywhere(chance, len(rows)), height[rows], GHOST, hand, bank)
    rows = chance.coin(0.05, cells).nonzero()[:, 0]
    put(rows, numbers(chance, len(rows), words, list(mix.forms)), _outside(chance, len(rows)), height[rows], HAND, hand, bank)
    marks[-1] = Marks(*(getattr(marks[-1], name) if name != "sign" else marks[-1].sign * 0 - 1 for name in Marks.__slots__))
    type_ = hands(printed, chance, cells, 0)
    still = Hands(type_.real, type_.font, type_.style, type_.free, type_.same, type_.slant * 0, type_.upright * 0,
                  type_.stretch * 0 + 1, chance.between(1.0, 2.0, cells), type_.gap * 0 + 0.12, type_.messy * 0)
    rows = chance.coin(0.14, cells).nonzero()[:, 0]
    unit = torch.full((len(rows), PLACES), -1, device=device)
    unit[:, UNIT : UNIT + 7] = words.units[chance.below(len(words.units), len(rows))]
    none = torch.zeros(len(rows), dtype=torch.long, device=device)
    at_end = torch.tensor([200.0, 40.0, 238.0, 90.0], device=device) + chance.between(-12, 2, len(rows), 4)
    type_marks: list[Marks] = []
    spots = Spots(rows, at_end, chance.between(10, 17, len(rows)), torch.full((len(rows),), PRINT, device=device))
    text = Writings(unit, none[:, None].expand(-1, len(SLOTS)), none, none, none)
    set_ = place(chance, printed, still, text, spots)
    type_marks.append(marks_of(chance, printed, still, spots, set_, unit * 0 - 1))

    strokes.extend(_dirt(chance, cells))
    ink = draw(bank, Marks.joined(marks), Strokes.joined(strokes), cells, device)
    ink = torch.maximum(ink, draw(printed, Marks.joined(type_marks), _none(device), cells, device))
    ink[:, PRINT] = torch.maximum(ink[:, PRINT], _lines(chance, cells, mix.ruled, windowed))
    kind = torch.full((cells,), ANSWER, device=device)
    kind = torch.where((what == BLANK) | (what == RUBBED), EMPTY, kind)
    kind = torch.where(what >= SCRIBBLE, NOT, kind)
    struck = ((what == INSIDE) | (what == OVERWRITTEN)) & (writing.slots < NONE).any(1)
    pictures = photographed(chance, ink, Light(mix.harsh))
    heat = _heat(Marks.joined(marks), Strokes.joined(strokes), cells, device)
    return Batch(pictures, kind, writing, struck, what, heat)


def _none(device: str) -> Strokes:
    empty = torch.zeros(0, dtype=torch.long, device=device)
    return Strokes(empty, torch.zeros(0, 4, 2, device=device), empty.float(), empty, empty)


def _split(chance: Chance, room: Array) -> tuple[Array, Array]:
    """Return two parts of a box, side by side or one above the other, in either order."""
    rows = len(room)
    left, top, right, bottom = room.unbind(1)
    x = left + (right - left) * chance.between(0.4, 0.6, rows)
    y = top + (bottom - top) * chance.between(0.42, 0.58, rows)
    space = chance.between(2, 8, rows)
    upright = chance.coin(0.25, rows)[:, None]
    first = torch.where(upright, torch.stack([left, top, right, y - space / 2], 1), torch.stack([left, top, x - space, bottom], 1))
    second = torch.where(upright, torch.stack([left, y + space / 2, right, bottom], 1), torch.stack([x + space, top, right, bottom], 1))
    turned = chance.coin(0.5, rows)[:, None]
    return torch.where(turned, second, first), torch.where(turned, first, second)


def _shrunk(chance: Chance, room: Array) -> Array:
    """Leave the left part of a box."""
    room = room.clone()
    room[:, 2] -= chance.between(50, 80, len(room))
    return room


def _corners(chance: Chance, rows: int) -> Array:
    x = chance.between(170, 195, rows)
    y = torch.where(chance.coin(0.5, rows), chance.between(1, 12, rows), chance.between(45, 60, rows))
    return torch.stack([x, y, x + chance.between(38, 46, rows), y + chance.between(18, 26, rows)], 1).clamp(max=239)


def _anywhere(chance: Chance, rows: int) -> Array:
    x, y = chance.between(0, 60, rows), chance.between(0, 10, rows)
    return torch.stack([x, y, x + 170, y + 84], 1)


def _outside(chance: Chance, rows: int) -> Array:
    """Boxes mostly above or below the cell: what a neighbour wrote over the edge."""
    y = torch.where(chance.coin(0.5, rows), chance.between(-44, -36, rows), chance.between(88, 94, rows))
    x = chance.between(0, 80, rows)
    return torch.stack([x, y, x + 160, y + 42], 1)


def _without(marks: Marks, what: Array, kind: int, chance: Chance, share: float) -> Marks:
    """Leave out the glyphs under some of the scribbles."""
    gone = chance.coin(share, len(what)) & (what == kind)
    keep = (~gone[marks.cell]).nonzero()[:, 0]
    return Marks(*(getattr(marks, name)[keep] for name in Marks.__slots__))


def _change_digits(
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
    step = torch.stack([chance.about(0.15, len(up)) * size[:, 0], up * size[:, 1] * chance.between(0.85, 1.05, len(up))], 1)
    moved[rows, chosen] += torch.where(struck[:, None], step, 0)
    scale[rows, chosen] *= torch.where(struck, chance.between(0.65, 0.85, len(up)), 1.0)
    now = Placed(placed.glyph, placed.there, moved, placed.size, placed.box, placed.strokes, scale)
    marks.append(marks_of(chance, bank, hand, spots, now, text.code))
    at = changed.nonzero()[:, 0]
    place_ = chosen[at]
    old = (text.code[at, place_] + 1 + chance.below(9, len(at))) % 10
    cell = spots.cell[at]
    glyph = torch.where(hand.real[cell], bank.real(old, hand.style[cell, old]), bank.drawn(hand.font[cell], old))
    was = bank.measures[placed.glyph[at, place_], 1].clamp(min=1)
    down = placed.scale[at, place_] * was / bank.measures[glyph, 1].clamp(min=1)
    marks.append(
        Marks(
            cell,
            glyph,
            placed.middle[at, place_] + chance.about(1.0, len(at), 2),
            torch.stack([down * hand.stretch[cell], down], 1),
            hand.slant[cell] - torch.where(hand.real[cell], hand.upright[cell], 1.0) * bank.measures[glyph, 5],
            chance.about(0.05, len(at)),
            hand.pen[cell] * chance.between(0.7, 1.0, len(at)),
            spots.layer[at],
            old * 0 - 1,
        )
    )
    gone = struck[at]
    middle, half = placed.middle[at, place_][gone], placed.size[at, place_][gone] / 2
    strokes.extend(_strikes(chance, hand, cell[gone], torch.cat([middle - half, middle + half], 1), few=True))


def _strikes(chance: Chance, hand: Hands, cell: Array, box: Array, *, few: bool = False) -> list[Strokes]:
    """Cross out what is in a box: one to four lines, level, slanted or crossed, or a zigzag."""
    rows = len(cell)
    layer = torch.full((rows,), HAND, device=chance.device)
    middle, half = (box[:, :2] + box[:, 2:]) / 2, ((box[:, 2:] - box[:, :2]) / 2).clamp(min=3)
    count = 1 + chance.pick([0.5, 0.3, 0.2] if few else [0.3, 0.3, 0.25, 0.15], rows)
    style = chance.pick([0.45, 0.3, 0.25], rows)  # level, slanted, zigzag
    drawn = []
    for at in range(4):
        level = torch.stack([torch.full((rows,), -1.1, device=chance.device), chance.between(-0.5, 0.5, rows)], 1)
        ends = torch.stack([torch.full((rows,), 1.1, device=chance.device), level[:, 1] + chance.about(0.2, rows)], 1)
        way = 1.0 if at % 2 == 0 else -1.0
        slanted = torch.stack([chance.between(-1.1, -0.6, rows), way * chance.between(0.6, 1.1, rows)], 1)
        other = torch.stack([chance.between(0.6, 1.1, rows), -way * chance.between(0.6, 1.1, rows)], 1)
        zig = torch.stack([torch.full((rows,), -1.05 + 0.5 * at, device=chance.device), way * chance.between(0.5, 1, rows)], 1)
        zag = torch.stack([torch.full((rows,), -0.55 + 0.5 * at, device=chance.device), -way * chance.between(0.5, 1, rows)], 1)
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


def _scribbles(chance: Chance, hand: Hands, cell: Array, box: Array) -> list[Strokes]:
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


def _dirt(chance: Chance, cells: int) -> list[Strokes]:
    """Specks and short lines that mean nothing."""
    drawn = []
    for share, long, thick in ((0.12, 0.8, 1.1), (0.06, 0.8, 1.0), (0.04, 14.0, 1.1)):
        rows = chance.coin(share, cells).nonzero()[:, 0]
        start = torch.stack([chance.between(0, WIDE, len(rows)), chance.between(0, HIGH, len(rows))], 1)
        end = start + chance.about(long, len(rows), 2)
        layer = torch.where(chance.coin(0.5, len(rows)), GHOST, PRINT)
        none = torch.full((len(rows),), -1, device=chance.device)
        drawn.append(line_stroke(rows, start, end, chance.about(0.2, len(rows), 1), none * 0.0 + thick, layer, none))
    return drawn


def _lines(chance: Chance, cells: int, ruled: float, windowed: Array) -> Array:
    """Return the printed lines of each cell: the answer's, and ruled ones."""
    y = torch.arange(HIGH, device=chance.device, dtype=torch.float32)[:, None]
    x = torch.arange(WIDE, device=chance.device, dtype=torch.float32)
    ink = torch.zeros(cells, HIGH, WIDE, device=chance.device)
    first = torch.where(chance.coin(0.6, cells), 80 + chance.about(2.0, cells), chance.between(48, 93, cells))
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
        line = (thick / 2 + 0.5 - far).clamp(0, 1) * (x > start) * (x < end)
        dotted = chance.coin(0.08, len(rows), 1, 1)
        line = line * torch.where(dotted, ((x % 6) < 3).float(), 1.0) * dark * chance.between(0.6, 1, len(rows), 1, 1)
        ink[rows] = torch.maximum(ink[rows], line)
    rows = chance.coin(0.03, cells).nonzero()[:, 0]  # squared paper, or the edge of a printed box
    if len(rows):
        every = chance.between(16, 30, len(rows), 1, 1)
        shift = chance.between(0, 16, len(rows), 2, 1, 1)
        near = torch.minimum((y + shift[:, 0]) % every, (x + shift[:, 1]) % every)
        ink[rows] = torch.maximum(ink[rows], (near < 1.2).float() * chance.between(0.15, 0.5, len(rows), 1, 1))
    return ink


def _windows(chance: Chance, rows: int) -> Array:
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


def _frames(chance: Chance, cell: Array, boxes: Array) -> list[Strokes]:
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
        corners = [torch.stack(pair, 1) for pair in ((left, top), (right, top), (right, bottom), (left, bottom))]
        for start, end in zip(corners, corners[1:] + corners[:1], strict=True):
            line(start, end)
    middle = (boxes[:, 1, 3] + boxes[:, 2, 1]) / 2
    line(torch.stack([boxes[:, 1, 0] - 3, middle], 1), torch.stack([boxes[:, 1, 2] + 3, middle], 1))
    return drawn


def _heat(marks: Marks, strokes: Strokes, cells: int, device: str) -> Array:
    """Return where which sign stands: ten digits, bar, slash, minus, point, strike, letters, at an eighth of the size."""
    high, wide = HIGH // 8, WIDE // 8
    sign = torch.where(marks.sign >= 10, 15, marks.sign)
    middle = strokes.points.mean(1)
    cell = torch.cat([marks.cell, strokes.cell])
    sign = torch.cat([sign, torch.where((strokes.layer == HAND), strokes.sign, -1)])
    at = (torch.cat([marks.at, middle]) / 8).floor().long()
    inside = (sign >= 0) & (at[:, 0] >= 0) & (at[:, 0] < wide) & (at[:, 1] >= 0) & (at[:, 1] < high)
    flat = ((cell * _HEAT + sign.clamp(min=0)) * high + at[:, 1]) * wide + at[:, 0]
    heat = torch.zeros(cells * _HEAT * high * wide, device=device)
    heat[flat[inside]] = 1.0
    return heat.view(cells, _HEAT, high, wide)
