"""Whole cells: an answer, or none, with everything else that may stand in a cell."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import torch

from tools.ink.bank import EVEN, Bank, Hands, Whims, hands
from tools.ink.chance import Array, Chance
from tools.ink.drawing import HIGH, WIDE, draw, no_ink
from tools.ink.labels import (
    ANSWER,
    BESIDE,
    BLANK,
    EMPTY,
    INSIDE,
    NONE,
    NOT,
    OVERWRITTEN,
    PLACES,
    PLAIN,
    REWRITTEN,
    RUBBED,
    SCRIBBLE,
    SHARES,
    SLOTS,
    STRUCK,
    TWO,
    UNIT,
    WORD,
    Vocabulary,
    Writings,
    numbers,
    other_words,
)
from tools.ink.layout import (
    GHOST,
    HAND,
    PRINT,
    Marks,
    Placed,
    Spots,
    Strokes,
    marks_of,
    place,
)
from tools.ink.mess import change_digits, dirt, scribbles, strikes
from tools.ink.photo import Light, photographed
from tools.ink.printed import answer_lines, frames, printed_lines, window_boxes
from tools.ink.rooms import anywhere, corners, outside, shrunk, split_box

#: Forms of numbers: whole, fraction, mixed, decimal, two measures, a dash.
FORMS: Final = (22.0, 22.0, 36.0, 13.0, 6.0, 1.0)
#: Height of a digit, in pixels, that counts as scale 1.
USUAL: Final = 34.0
_HEAT: Final = 18


@dataclass(frozen=True, slots=True)
class Mix:
    """What a batch is made of.

    ``scale`` are the bounds of how large is written, and ``small``, where it is there, those of so many
    hands as ``smaller`` says; ``real`` the share of hands that write real digits;
    ``ruled`` how likely each of two more lines is there; ``pen`` multiplies how thick pens are;
    ``standing`` is the share of answers that stand on the printed line, over it or across it.
    """

    shares: tuple[float, ...] = SHARES
    forms: tuple[float, ...] = FORMS
    real: float = 0.65
    scale: tuple[float, float] = (0.5, 1.15)
    small: tuple[float, float] | None = None
    smaller: float = 0.35
    ruled: float = 0.14
    pen: float = 1.0
    harsh: float = 1.0
    plain: bool = False
    windows: float = 0.1
    standing: float = 0.0
    whims: Whims = EVEN


@dataclass(frozen=True, slots=True)
class Batch:
    """Cells with what is in them; ``heat`` says where which sign stands, at an eighth of the size.

    ``finer`` are the same pictures with more places, ``box`` is where in them a hand wrote (left, top, right,
    bottom) and ``tall`` how high digits are there, both in places of the usual pictures.
    """

    pictures: Array
    finer: Array
    box: Array
    tall: Array
    kind: Array
    writing: Writings
    struck: Array
    what: Array
    heat: Array

    @classmethod
    def joined(cls, several: Sequence["Batch"]) -> "Batch":
        """Put batches together; the finer pictures are left out."""
        whole = {
            name: torch.cat([getattr(one, name) for one in several])
            for name in ("pictures", "box", "tall", "kind", "struck", "what", "heat")
        }
        writing = Writings(
            *(torch.cat([getattr(one.writing, name) for one in several]) for name in Writings.__slots__)
        )
        return cls(finer=whole["pictures"], writing=writing, **whole)

    def at(self, rows: Array) -> "Batch":
        """Return some of the cells."""
        return Batch(
            self.pictures[rows],
            self.finer[rows],
            self.box[rows],
            self.tall[rows],
            self.kind[rows],
            self.writing.at(rows),
            self.struck[rows],
            self.what[rows],
            self.heat[rows],
        )


def compose(
    chance: Chance,
    bank: Bank,
    printed: Bank,
    words: Vocabulary,
    cells: int,
    mix: Mix,
    given: Writings | None = None,
    fine: int = 1,
) -> Batch:
    """Compose a batch of cells; ``given`` are the answers where they are not drawn by chance.

    The finer pictures have `fine` times as many rows and columns.
    """
    device = chance.device
    hand = hands(bank, chance, cells, mix.real, mix.whims)
    what = chance.pick(list(mix.shares), cells)
    writing = given or numbers(chance, cells, words, list(mix.forms), mix.plain)
    height = USUAL * chance.between(*mix.scale, cells)
    if mix.small is not None:
        height = torch.where(
            chance.coin(mix.smaller, cells), USUAL * chance.between(*mix.small, cells), height
        )
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
    again = numbers(chance, cells, words, list(mix.forms), mix.plain)
    beside, across = split_box(chance, room, (what == TWO), writing, again)
    windowed = (
        chance.coin(mix.windows, cells)
        & (what == PLAIN)
        & (writing.unit == 0)
        & (writing.sign == 0)
        & (writing.code[:, 6] < 0)
    )
    split = (what == REWRITTEN) | (what == TWO)
    room = torch.where(split[:, None], beside, room)
    line = answer_lines(chance, cells)
    standing = chance.coin(mix.standing, cells) & ~split & (what != INSIDE) & (line > 64)
    bottom = (line + chance.about(3.5, cells)).clamp(max=HIGH - 1)
    room[:, 3] = torch.where(standing, bottom, room[:, 3])
    small = what == BESIDE
    room = torch.where(small[:, None], shrunk(chance, room), room)
    tall_room = (what == INSIDE)[:, None] * torch.tensor([2.0, 11.0, -2.0, -11.0], device=device)
    room += tall_room
    height = torch.where(small, height.clamp(min=0.7 * USUAL), height)

    def put(
        rows: Array, text: Writings, box: Array, high: Array, layer: int, whose: Hands, of: Bank
    ) -> Placed:
        spots = Spots(rows, box, high, torch.full((len(rows),), layer, device=device))
        placed = place(chance, of, whose, text, spots)
        marks.append(
            marks_of(chance, of, whose, spots, placed, text.code if layer == HAND else text.code * 0 - 1)
        )
        strokes.append(placed.strokes)
        return placed

    answered = (what <= BESIDE) | (what == TWO)
    rows = (answered & ~windowed).nonzero()[:, 0]
    layer = torch.full((len(rows),), HAND, device=device)
    spots = Spots(rows, room[rows], height[rows], layer, standing[rows])
    text = writing.at(rows)
    placed = place(chance, bank, hand, text, spots)
    change_digits(chance, bank, hand, what[rows], text, spots, placed, marks, strokes)
    strokes.append(placed.strokes)

    rows = windowed.nonzero()[:, 0]
    if len(rows):
        boxes = window_boxes(chance, len(rows))
        text = writing.at(rows)
        text = Writings(text.code, text.slots, text.sign, text.unit, text.bar.clamp(max=1))
        spots = Spots(rows, room[rows], height[rows], torch.full((len(rows),), HAND, device=device))
        placed = place(chance, bank, hand, text, spots, boxes)
        marks.append(marks_of(chance, bank, hand, spots, placed, text.code))
        strokes.extend(frames(chance, rows, boxes))

    # a second writing: struck out beside the kept one, a second answer, or the only one and struck
    rows = ((what == REWRITTEN) | (what == TWO) | (what == STRUCK) | (what == SCRIBBLE)).nonzero()[:, 0]
    again = again.at(rows)
    box = torch.where(split[rows, None], across[rows], room[rows])
    second = put(rows, again, box, height[rows] * chance.between(0.85, 1.15, len(rows)), HAND, hand, bank)
    gone = ((what == REWRITTEN) | (what == STRUCK))[rows]
    strokes.extend(strikes(chance, hand, rows[gone], second.box[gone], again.bar[gone] == 1))
    mess = (what == SCRIBBLE)[rows]
    strokes.extend(scribbles(chance, hand, rows[mess], second.box[mess]))
    marks[-1] = _without(marks[-1], what, SCRIBBLE, chance, 0.5)

    rows = (what == WORD).nonzero()[:, 0]
    put(rows, other_words(chance, len(rows), words), room[rows], height[rows] * 0.9, HAND, hand, bank)

    # small working in a corner
    rows = (what == BESIDE).nonzero()[:, 0]
    corner = corners(chance, len(rows))
    for shift in range(2):
        some = rows[chance.coin(1.0 if shift == 0 else 0.5, len(rows))]
        where = corner[torch.isin(rows, some)]
        where = where + torch.tensor([0.0, 14.0, 0.0, 14.0], device=device) * shift
        calm = numbers(chance, len(some), words, [5, 3, 2, 1, 0, 0], plain=True)
        put(some, calm, where, 0.42 * USUAL * chance.between(0.7, 1.1, len(some)), HAND, hand, bank)

    # rubbed out, from the neighbours above and below, printed beside
    rows = (chance.coin(0.06, cells) | (what == RUBBED)).nonzero()[:, 0]
    put(
        rows,
        numbers(chance, len(rows), words, list(mix.forms)),
        anywhere(chance, len(rows)),
        height[rows],
        GHOST,
        hand,
        bank,
    )
    rows = chance.coin(0.05, cells).nonzero()[:, 0]
    put(
        rows,
        numbers(chance, len(rows), words, list(mix.forms)),
        outside(chance, len(rows)),
        height[rows],
        HAND,
        hand,
        bank,
    )
    marks[-1] = Marks(
        *(getattr(marks[-1], name) if name != "sign" else marks[-1].sign * 0 - 1 for name in Marks.__slots__)
    )
    type_ = hands(printed, chance, cells, 0)
    still = Hands(
        type_.real,
        type_.font,
        type_.fonts,
        type_.made,
        type_.uneven,
        type_.bend,
        type_.style,
        type_.free,
        type_.same,
        type_.slant * 0,
        type_.upright * 0,
        type_.stretch * 0 + 1,
        chance.between(1.0, 2.0, cells),
        type_.gap * 0 + 0.12,
        type_.messy * 0,
    )
    rows = chance.coin(0.14, cells).nonzero()[:, 0]
    unit = torch.full((len(rows), PLACES), -1, device=device)
    unit[:, UNIT : UNIT + 7] = words.units[chance.below(len(words.units), len(rows))]
    none = torch.zeros(len(rows), dtype=torch.long, device=device)
    at_end = torch.tensor([200.0, 40.0, 238.0, 90.0], device=device) + chance.between(-12, 2, len(rows), 4)
    type_marks: list[Marks] = []
    spots = Spots(
        rows, at_end, chance.between(10, 17, len(rows)), torch.full((len(rows),), PRINT, device=device)
    )
    text = Writings(unit, none[:, None].expand(-1, len(SLOTS)), none, none, none)
    set_ = place(chance, printed, still, text, spots)
    type_marks.append(marks_of(chance, printed, still, spots, set_, unit * 0 - 1))

    strokes.extend(dirt(chance, cells))
    ink = no_ink(cells, device, fine)
    draw(ink, bank, Marks.joined(marks), Strokes.joined(strokes), fine)
    draw(ink, printed, Marks.joined(type_marks), None, fine)
    ink[:, PRINT] = torch.maximum(ink[:, PRINT], printed_lines(chance, line, mix.ruled, windowed, fine))
    kind = torch.full((cells,), ANSWER, device=device)
    kind = torch.where((what == BLANK) | (what == RUBBED), EMPTY, kind)
    kind = torch.where(what >= SCRIBBLE, NOT, kind)
    struck = ((what == INSIDE) | (what == OVERWRITTEN)) & (writing.slots < NONE).any(1)
    pictures, finer = photographed(chance, ink, Light(mix.harsh), fine)
    heat = _heat(Marks.joined(marks), Strokes.joined(strokes), cells, device)
    box, tall = _written(bank, Marks.joined(marks), Strokes.joined(strokes), cells)
    return Batch(pictures, finer, box, tall, kind, writing, struck, what, heat)


def _written(bank: Bank, marks: Marks, strokes: Strokes, cells: int) -> tuple[Array, Array]:
    """Return the box around what a hand wrote in each cell, and how high its digits are, on average."""
    high = marks.scale * bank.measures[marks.glyph, :2]
    ink, line = marks.layer == HAND, strokes.layer == HAND
    low = torch.cat([(marks.at - high / 2)[ink], strokes.points.amin(1)[line]])
    far = torch.cat([(marks.at + high / 2)[ink], strokes.points.amax(1)[line]])
    cell = torch.cat([marks.cell[ink], strokes.cell[line]])[:, None].expand(-1, 2)
    ends = torch.tensor([WIDE, HIGH], device=low.device, dtype=torch.float32)
    least = ends.expand(cells, 2).clone().scatter_reduce_(0, cell, low.clamp(min=0).minimum(ends), "amin")
    most = torch.zeros_like(least).scatter_reduce_(0, cell, far.clamp(min=0).minimum(ends), "amax")
    digit = ink & (marks.sign >= 0) & (marks.sign < 10)
    sums = torch.zeros(cells, 2, device=low.device)
    one = torch.stack([high[digit, 1], torch.ones_like(high[digit, 1])], 1)
    sums.index_add_(0, marks.cell[digit], one)
    return torch.cat([least, most], 1), sums[:, 0] / sums[:, 1].clamp(min=1)


def _without(marks: Marks, what: Array, kind: int, chance: Chance, share: float) -> Marks:
    """Leave out the glyphs under some of the scribbles."""
    gone = chance.coin(share, len(what)) & (what == kind)
    keep = (~gone[marks.cell]).nonzero()[:, 0]
    return Marks(*(getattr(marks, name)[keep] for name in Marks.__slots__))


def _heat(marks: Marks, strokes: Strokes, cells: int, device: str) -> Array:
    """Return where which sign stands, at an eighth of the size."""
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
