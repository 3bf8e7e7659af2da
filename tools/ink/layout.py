"""Where every glyph and stroke of a writing stands in its cell."""

from dataclasses import dataclass

import torch

from tools.ink.bank import Bank, Hands
from tools.ink.chance import Array, Chance
from tools.ink.labels import (
    BOTTOM,
    FRACTION,
    LINE,
    PLACES,
    POINT,
    SECOND,
    SIGN,
    TOP,
    UNIT,
    UNIT_2,
    WHOLE,
    Writings,
)

#: Layers of ink in a cell: the answer's, what was rubbed out, what is printed.
HAND, GHOST, PRINT = 0, 1, 2
_DIGITS = (*range(WHOLE, WHOLE + 4), 7, 8, 9, SECOND, SECOND + 1, *range(TOP, PLACES))


@dataclass(frozen=True, slots=True)
class Marks:
    """Glyphs to be drawn, a row each: where, how large, how slanted, with what pen, on which layer."""

    cell: Array
    glyph: Array
    at: Array
    scale: Array
    slant: Array
    turn: Array
    pen: Array
    layer: Array
    sign: Array
    wave: Array

    @classmethod
    def joined(cls, several: list["Marks"]) -> "Marks":
        """Put lists of glyphs together."""
        return cls(*(torch.cat([getattr(one, name) for one in several]) for name in cls.__slots__))


@dataclass(frozen=True, slots=True)
class Strokes:
    """Curves to be drawn, a row each: cell, four control points, pen, layer, sign (-1 for none)."""

    cell: Array
    points: Array
    pen: Array
    layer: Array
    sign: Array

    @classmethod
    def joined(cls, several: list["Strokes"]) -> "Strokes":
        """Put lists of curves together."""
        return cls(*(torch.cat([getattr(one, name) for one in several]) for name in cls.__slots__))


@dataclass(frozen=True, slots=True)
class Spots:
    """Where writings go: cell, the box that they stay in (left, top, right, bottom), digit height, layer.

    ``low`` says which of them stand at the bottom of their box, where some do.
    """

    cell: Array
    box: Array
    height: Array
    layer: Array
    low: Array | None = None


@dataclass(frozen=True, slots=True)
class Placed:
    """Writings in their places: the glyph of each place with its middle and size, and the box around all."""

    glyph: Array
    there: Array
    middle: Array
    size: Array
    box: Array
    strokes: Strokes
    scale: Array


def line_stroke(
    cell: Array, start: Array, end: Array, bend: Array, pen: Array, layer: Array, sign: Array
) -> Strokes:
    """Return a curve from start to end that bends a little."""
    along = end - start
    across = torch.stack([-along[:, 1], along[:, 0]], 1) * bend
    points = torch.stack(
        [start, start + along / 3 + across[:, :], start + along * 2 / 3 + across[:, :], end], 1
    )
    return Strokes(cell, points, pen, layer, sign)


def place(
    chance: Chance, bank: Bank, hand: Hands, writing: Writings, spots: Spots, windows: Array | None = None
) -> Placed:
    """Lay writings into their spots.

    ``windows`` are printed boxes for whole, over and under (rows x 3 x 4), given only for writings that fill
    them.
    """
    code, cell, rows = writing.code, spots.cell, len(spots.cell)
    there = code >= 0
    safe = code.clamp(min=0)
    messy = hand.messy[cell][:, None]
    digit = torch.zeros(PLACES, dtype=torch.bool, device=chance.device)
    digit[list(_DIGITS)] = True
    fixed = hand.style[cell].gather(1, safe.clamp(max=9))
    loose = (hand.style[cell][:, :1] + chance.about(0.12, rows, PLACES)).clamp(0, 0.999)
    loose = torch.where(hand.free[cell][:, None], chance.between(0, 0.999, rows, PLACES), loose)
    style = torch.where(hand.same[cell][:, None], fixed, loose)
    glyph = bank.glyph(hand, cell, safe, style, digit)
    measures = bank.measures[glyph]
    there &= measures[..., 0] > 0

    high = spots.height
    part = torch.where(
        chance.coin(0.35, rows), chance.between(0.85, 1.02, rows), chance.between(0.6, 0.9, rows)
    )
    part = torch.where(writing.bar == 2, chance.between(0.75, 1.02, rows), part)
    size_of = torch.ones(rows, PLACES, device=chance.device) * high[:, None]
    size_of[:, TOP:] = (high * part)[:, None]
    size_of[:, UNIT : UNIT + 7] *= chance.between(0.75, 1.05, rows, 1)
    size_of[:, UNIT_2 : UNIT_2 + 7] *= chance.between(0.75, 1.05, rows, 1)
    tall = measures[..., 2] * size_of * (1 + 0.06 * messy * chance.about(1, rows, PLACES)).clamp(0.75, 1.3)
    scale = tall / measures[..., 1].clamp(min=1)
    wide = measures[..., 0] * scale * hand.stretch[cell][:, None]
    stroke_like = torch.zeros(PLACES, dtype=torch.bool, device=chance.device)
    stroke_like[[SIGN, POINT, FRACTION]] = True
    wide = torch.where(stroke_like, 0, wide)
    wide[:, SIGN] = high * chance.between(0.32, 0.7, rows)
    wide[:, POINT] = high * 0.08
    gap = (hand.gap[cell][:, None] + 0.05 * messy * chance.about(1, rows, PLACES)) * size_of

    # the parts of a fraction, each a run of its own
    runs = {}
    for start in (TOP, BOTTOM):
        runs[start] = _run(there[:, start : start + 3], wide[:, start : start + 3], gap[:, start : start + 3])
    slash_room = high * part * chance.between(0.3, 0.6, rows)
    over, under = runs[TOP][1], runs[BOTTOM][1]
    fraction = torch.where(
        writing.bar == 2, over + under + slash_room, torch.maximum(over, under) + 0.1 * high
    )
    line_there = there[:, :LINE].clone()
    line_there[:, FRACTION] = writing.bar > 0
    line_wide = wide[:, :LINE].clone()
    line_wide[:, FRACTION] = fraction
    line_gap = gap[:, :LINE].clone()
    after_whole = chance.between(0.1, 0.7, rows) + torch.where(writing.bar == 2, 0.35, 0.0)
    line_gap[:, FRACTION] = high * after_whole
    line_gap[:, UNIT] = high * chance.between(0.08, 0.6, rows)
    line_gap[:, SECOND] = high * chance.between(0.2, 0.7, rows)
    line_gap[:, UNIT_2] = high * chance.between(0.05, 0.5, rows)
    line_gap[:, POINT] = high * chance.between(0.0, 0.16, rows)
    line_gap[:, POINT + 1] = high * chance.between(0.04, 0.22, rows)
    line_gap[:, WHOLE] = high * chance.between(0.08, 0.35, rows)
    x, _ = _run(line_there, line_wide, line_gap)
    middle = torch.zeros(rows, PLACES, 2, device=chance.device)
    middle[:, :LINE, 0] = x
    middle[:, :, 1] = -measures[..., 3] * size_of + 0.05 * messy * chance.about(1, rows, PLACES) * size_of

    small = high * part
    centre = middle[:, FRACTION, 0]
    bar_y = -high * (0.5 + chance.about(0.1, rows))
    lean = chance.about(0.12, rows, 2) * small[:, None]
    apart = chance.between(0.08, 0.36, rows, 2) * small[:, None] + hand.pen[cell][:, None] / 2
    raised = (
        torch.where(chance.coin(0.5, rows), 0.0, 1.0)[:, None]
        * chance.between(0, 0.4, rows, 2)
        * small[:, None]
    )
    slash = (writing.bar == 2)[:, None]
    for start, side in ((TOP, 0), (BOTTOM, 1)):
        span = slice(start, start + 3)
        run_x, run_wide = runs[start]
        at_slash = centre - fraction / 2 + run_wide / 2 if side == 0 else centre + fraction / 2 - run_wide / 2
        run_centre = torch.where(slash[:, 0], at_slash, centre + lean[:, side])
        middle[:, span, 0] = run_x - run_wide[:, None] / 2 + run_centre[:, None]
        stacked = bar_y - apart[:, 0] - small if side == 0 else bar_y + apart[:, 1]
        inline = -raised[:, 0] if side == 0 else raised[:, 1]
        base = torch.where(slash[:, 0], inline, stacked + small)
        middle[:, span, 1] += base[:, None]
    shown = there.clone()
    shown[:, [SIGN, POINT, FRACTION]] = False
    size = torch.stack([wide, tall], 2)
    if windows is not None:
        middle, size, scale = _in_windows(chance, middle, size, scale, shown, windows)
        fit = torch.ones(rows, device=chance.device)
        moved = torch.zeros(rows, 2, device=chance.device)
    else:
        fit, moved = _fitted(chance, middle, size, shown, line_there, line_wide, spots)
        middle = middle * fit[:, None, None] + moved[:, None]
        size, scale = size * fit[:, None, None], scale * fit[:, None]
    box = _box(middle, size, shown)
    strokes = _strokes(
        chance,
        hand,
        writing,
        spots,
        {
            "fit": fit,
            "moved": moved,
            "bar": torch.stack([centre, bar_y], 1),
            "fraction": fraction,
            "small": small,
            "slash": torch.stack([centre - fraction / 2 + over + slash_room / 2, -small / 2], 1),
            "sign": x[:, SIGN],
            "sign_wide": wide[:, SIGN],
            "point": x[:, POINT],
            "high": high,
        },
        windows is not None,
    )
    return Placed(glyph, shown, middle, size, box, strokes, scale)


def _run(there: Array, wide: Array, gap: Array) -> tuple[Array, Array]:
    """Return the middles of what stands in a row, and the whole width."""
    gap = torch.where(there & (there.cumsum(1) > 1), gap, 0)
    taken = torch.where(there, wide, 0)
    ends = (taken + gap).cumsum(1)
    return ends - taken / 2, ends[:, -1]


def _box(middle: Array, size: Array, there: Array) -> Array:
    far = torch.where(there, 0.0, 1e4)[..., None]
    low = (middle - size / 2 + far).amin(1)
    high = (middle + size / 2 - far).amax(1)
    return torch.cat([low, high.maximum(low + 1)], 1)


def _fitted(
    chance: Chance,
    middle: Array,
    size: Array,
    there: Array,
    line_there: Array,
    line_wide: Array,
    spots: Spots,
) -> tuple[Array, Array]:
    """Return by how much writings shrink to fit their box, and how far they move into it."""
    room = spots.box
    low, high = _box(middle, size, there).split(2, 1)
    edges = torch.where(line_there, middle[:, :LINE, 0] - line_wide / 2, 1e4).amin(1)
    low = torch.stack([low[:, 0].minimum(edges), low[:, 1]], 1)
    high = torch.where(low > 5e3, 1.0, high)
    ends = torch.where(line_there, middle[:, :LINE, 0] + line_wide / 2, -1e4).amax(1)
    high = torch.stack([high[:, 0].maximum(ends), high[:, 1]], 1)
    low = torch.where(low > 5e3, 0.0, low)
    dash = (high - low)[:, 1] <= 1.5
    low[:, 1] = torch.where(dash, -15.0, low[:, 1])
    high[:, 1] = torch.where(dash, 0.0, high[:, 1])
    space = room[:, 2:] - room[:, :2]
    fit = (space / (high - low).clamp(min=1)).amin(1).clamp(max=1)
    free = space - (high - low) * fit[:, None]
    where = chance.between(0, 1, len(fit), 2)
    where = torch.where(chance.coin(0.5, len(fit), 1), 0.5 + (where - 0.5) * 0.4, where)
    if spots.low is not None:
        where[:, 1] = torch.where(spots.low, 1.0, where[:, 1])
    return fit, room[:, :2] + free.clamp(min=0) * where - low * fit[:, None]


def _in_windows(
    chance: Chance, middle: Array, size: Array, scale: Array, there: Array, windows: Array
) -> tuple[Array, Array, Array]:
    """Move the three runs of a number into their printed boxes, shrunk where they do not fit."""
    middle, size, scale = middle.clone(), size.clone(), scale.clone()
    shrunk = torch.ones(len(middle), device=chance.device)
    spans = (slice(0, LINE), slice(TOP, TOP + 3), slice(BOTTOM, BOTTOM + 3))
    boxes = [_box(middle[:, span], size[:, span], there[:, span]) for span in spans]
    for at, box in enumerate(boxes):
        space = (windows[:, at, 2:] - windows[:, at, :2]) * 0.98
        fits = (space / (box[:, 2:] - box[:, :2]).clamp(min=1)).amin(1).clamp(max=1)
        shrunk = torch.where(there[:, spans[at]].any(1), shrunk.minimum(fits), shrunk)
    for at, (span, box) in enumerate(zip(spans, boxes, strict=True)):
        space = (windows[:, at, 2:] - windows[:, at, :2] - (box[:, 2:] - box[:, :2]) * shrunk[:, None]).clamp(
            min=0
        )
        target = (windows[:, at, 2:] + windows[:, at, :2]) / 2 + space * chance.between(
            -0.45, 0.45, len(middle), 2
        )
        now = (box[:, 2:] + box[:, :2]) / 2
        middle[:, span] = (middle[:, span] - now[:, None]) * shrunk[:, None, None] + target[:, None]
    return middle, size * shrunk[:, None, None], scale * shrunk[:, None]


def _strokes(
    chance: Chance, hand: Hands, writing: Writings, spots: Spots, known: dict[str, Array], windowed: bool
) -> Strokes:
    """Return the bar or slash, the minus and the point of each writing."""
    rows, cell = len(spots.cell), spots.cell
    fit, moved, high = known["fit"][:, None], known["moved"], known["high"]
    pen = hand.pen[cell]
    made = []

    def add(
        rows_in: Array, start: Array, end: Array, sign: int, *, bend: float = 0.05, thick: Array | None = None
    ) -> None:
        which = rows_in.nonzero()[:, 0]
        line = line_stroke(
            cell[which],
            (start * fit + moved)[which],
            (end * fit + moved)[which],
            chance.about(bend, len(which), 1),
            (pen if thick is None else thick)[which],
            spots.layer[which],
            torch.full((len(which),), sign, device=chance.device),
        )
        made.append(line)

    turned = chance.about(0.07, rows)
    half = known["fraction"] * chance.between(0.45, 0.72, rows)
    along = torch.stack([torch.ones_like(turned), turned], 1) * half[:, None]
    shift = (
        chance.about(0.08, rows, 2) * known["small"][:, None] * torch.tensor([1.0, 0.3], device=chance.device)
    )
    if not windowed:
        add(writing.bar == 1, known["bar"] + shift - along, known["bar"] + shift + along, 10)
    steep = known["small"] * chance.between(0.5, 0.85, rows)
    leaning = steep * chance.between(0.25, 0.8, rows)
    slash = torch.stack([leaning, -steep], 1)
    add(writing.bar == 2, known["slash"] - slash, known["slash"] + slash, 11)
    level = -high * chance.between(0.35, 0.6, rows)
    half = known["sign_wide"] / 2
    left = torch.stack([known["sign"] - half, level + chance.about(0.04, rows) * high], 1)
    right = torch.stack([known["sign"] + half, level + chance.about(0.04, rows) * high], 1)
    add(writing.sign > 0, left, right, 12)
    spot = torch.stack([known["point"], chance.about(0.03, rows) * high - 0.02 * high], 1)
    tail = (
        chance.between(0.0, 0.07, rows)[:, None]
        * high[:, None]
        * torch.tensor([-0.3, 1.0], device=chance.device)
    )
    thick = (pen * chance.between(0.95, 1.7, rows)).clamp(min=1.6)
    add(writing.code[:, POINT] >= 0, spot, spot + tail, 13, thick=thick)
    return Strokes.joined(made)


def marks_of(chance: Chance, bank: Bank, hand: Hands, spots: Spots, placed: Placed, code: Array) -> Marks:
    """Return the glyphs of placed writings as a list."""
    row, at = placed.there.nonzero(as_tuple=True)
    cell = spots.cell[row]
    glyph = placed.glyph[row, at]
    down = placed.scale[row, at]
    slant = hand.slant[cell] + 0.04 * hand.messy[cell] * chance.about(1, len(row))
    slant = slant - torch.where(hand.real[cell], hand.upright[cell], 1.0) * bank.measures[glyph, 5]
    uneven = hand.uneven[cell]
    pen = hand.pen[cell] * (uneven * chance.about(1, len(row))).exp()
    most = 0.28 * placed.size[row, at, 1] + 1
    pen = torch.where(uneven > 0, pen.minimum(most).clamp(min=1.05), pen)
    return Marks(
        cell,
        glyph,
        placed.middle[row, at],
        torch.stack([down * hand.stretch[cell], down], 1),
        slant.clamp(-0.6, 0.6),
        0.05 * hand.messy[cell] * chance.about(1, len(row)),
        pen,
        spots.layer[row],
        code[row, at],
        waves(chance, hand, bank, cell, glyph),
    )


def waves(chance: Chance, hand: Hands, bank: Bank, cell: Array, glyph: Array) -> Array:
    """Draw how glyphs are bent: how far, how fast and from where, across and down.

    Real digits are left as they are where hands have no whims: no two of them are alike.
    """
    rows = len(cell)
    most = torch.where(hand.real[cell], hand.bend[cell], 0.03)
    far = chance.about(1, rows, 2) * (most * hand.messy[cell])[:, None] * bank.measures[glyph, :2]
    fast = chance.between(0.05, 0.13, rows, 2)
    start = chance.between(0, 6.28, rows, 2)
    return torch.stack([far[:, 0], fast[:, 0], start[:, 0], far[:, 1], fast[:, 1], start[:, 1]], 1)
