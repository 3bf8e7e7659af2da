"""All glyphs on the device, each as a field that tells how deep inside its stroke a place lies."""

from dataclasses import dataclass
from typing import Final

import numpy as np
import torch

from tools.ink.chance import Array, Chance
from tools.ink.flags import DRAWN
from tools.ink.material import SIDE, SIGNS, Grey, Measures

_FAR = 1e4
_INSIDE = 115
#: What a field says of a place far outside the stroke.
OUT = -6.0
#: Signs below this are digits.
NONE: Final = 10


@dataclass(frozen=True, slots=True)
class Bank:
    """Glyphs: first real digits in ten runs, one a digit, then fonts, all signs each.

    ``fields`` are 1 in the middle of a stroke, 0 at its edge and negative outside it, so that a pen of any
    width follows the same stroke. ``measures`` are width and height in the picture, height and middle in
    digits (see `glyphs_of`), half the stroke's width in the picture, and the slant. ``starts`` and ``counts``
    are those of the ten runs; the glyphs of a font start at ``fonts``, those of `drawn_digits` at ``made``,
    ``made_each`` of each of its digits.
    """

    fields: Array
    measures: Array
    starts: Array
    counts: Array
    fonts: Array
    made: Array
    made_each: int

    def real(self, digit: Array, style: Array) -> Array:
        """Return the glyph of a digit at a place (0 to 1) among those, in order of width."""
        return self.starts[digit] + (style * self.counts[digit]).long().clamp(min=0).minimum(
            self.counts[digit] - 1
        )

    def drawn(self, font: Array, sign: Array) -> Array:
        """Return the glyph of a sign in a font."""
        return self.fonts[font] + sign

    def glyph(self, hand: "Hands", cell: Array, sign: Array, style: Array, digit: Array) -> Array:
        """Return the glyphs of signs that hands of cells write, a row each; ``digit`` says where one is."""
        worth = sign.clamp(max=9)
        digit = digit & (sign < NONE)
        font = torch.where(sign < NONE, hand.fonts[cell].gather(1, worth), hand.font[cell][:, None])
        glyph = torch.where(hand.real[cell][:, None] & digit, self.real(worth, style), self.drawn(font, sign))
        made = self.made[worth] + (style * self.made_each).long()
        return torch.where(hand.made[cell].gather(1, worth) & digit, made, glyph)


def bank_of(
    digits: tuple[Grey, Measures],
    labels: Array,
    fonts: tuple[Grey, Measures],
    device: str,
    chunk: int = 512,
    made: tuple[Grey, Measures] | None = None,
) -> Bank:
    """Put real digits, the glyphs of fonts and drawn digits on a device."""
    pictures, measures = digits
    order = np.lexsort((measures[:, 0] / measures[:, 1], labels))
    counts = np.bincount(labels, minlength=10)
    more_pictures, more_measures = made or (pictures[:0], measures[:0])
    each = len(more_pictures) // len(DRAWN)
    all_pictures = np.concatenate([pictures[order], fonts[0].reshape(-1, SIDE, SIDE), more_pictures])
    all_measures = np.concatenate([measures[order], fonts[1].reshape(-1, 4), more_measures])
    starts = np.zeros(NONE, np.int64)
    starts[list(DRAWN)] = len(all_pictures) - each * np.arange(len(DRAWN), 0, -1)
    fields, more = zip(
        *(
            _fields(torch.from_numpy(np.array(all_pictures[at : at + chunk])).to(device))
            for at in range(0, len(all_pictures), chunk)
        ),
        strict=True,
    )
    slants = torch.cat(more)
    slants[len(pictures) :, 1] = 0  # a font's own slant is its hand
    return Bank(
        torch.cat(fields),
        torch.cat([torch.from_numpy(all_measures).to(device), slants], 1),
        torch.from_numpy(np.concatenate([[0], counts.cumsum()[:-1]])).to(device),
        torch.from_numpy(counts).to(device),
        len(pictures) + torch.arange(len(fonts[0]), device=device) * len(SIGNS),
        torch.from_numpy(starts).to(device),
        each,
    )


def _fields(pictures: Array) -> tuple[Array, Array]:
    ink = pictures > _INSIDE
    inside, outside = _distance(~ink), _distance(ink)
    depth = (inside - 0.5).clamp(min=0.3)
    ridge = torch.nn.functional.max_pool2d(depth[:, None], 9, 1, 4)[:, 0]
    weight = ink.float()
    area = weight.sum((1, 2)).clamp(min=1)
    half = (ridge * weight).sum((1, 2)) / area
    local = ridge.minimum(1.5 * half[:, None, None]).clamp(min=1)
    field = torch.where(
        ink, (depth / local).clamp(max=1), -(outside - 0.5) / half.clamp(min=1)[:, None, None]
    )
    line = torch.arange(SIDE, device=pictures.device, dtype=torch.float32) - SIDE / 2
    x, y = (weight * line).sum((1, 2)) / area, (weight * line[:, None]).sum((1, 2)) / area
    away, down = line[None, None] - x[:, None, None], line[None, :, None] - y[:, None, None]
    slant = -(weight * away * down).sum((1, 2)) / (weight * down * down).sum((1, 2)).clamp(min=1)
    return field.clamp(OUT, 1).half(), torch.stack([half.clamp(min=1), slant.clamp(-0.5, 0.5)], 1)


def _distance(to: Array) -> Array:
    """Return how far each place is from the nearest one of a mask."""
    line = torch.arange(SIDE, device=to.device, dtype=torch.float32)
    apart = (line[:, None] - line) ** 2
    squared = torch.where(to, 0.0, _FAR)
    for _ in range(2):
        squared = (squared[:, :, None, :] + apart).amin(3).transpose(1, 2)
    return squared.sqrt()


@dataclass(frozen=True, slots=True)
class Whims:
    """How often hands are less even than one pen and one font; the figures' cells have none of it.

    ``made`` is the share of hands with drawn ones, and that with drawn sevens; ``fonts`` the share of hands
    that take each digit from another font; ``uneven`` the share whose pen is thicker in one digit than in the
    next; ``bend`` how far real digits are bent, in their width and height.
    """

    made: float = 0.0
    fonts: float = 0.0
    uneven: float = 0.0
    bend: float = 0.0


#: A hand of one pen and one font.
EVEN: Final = Whims()


def hands(bank: Bank, chance: Chance, cells: int, real: float, whims: Whims = EVEN) -> "Hands":
    """Draw one hand for each cell; so many of them write real digits, the others those of a font."""
    count = len(bank.fonts)
    font = chance.below(count, cells)
    mixed = chance.coin(whims.fonts, cells, 1)
    made = chance.coin(whims.made, cells, NONE)
    made[:, [at for at in range(NONE) if at not in DRAWN]] = False
    return Hands(
        real=chance.coin(real, cells),
        font=font,
        fonts=torch.where(mixed, chance.below(count, cells, NONE), font[:, None]),
        made=made & (bank.made_each > 0),
        uneven=torch.where(chance.coin(whims.uneven, cells), chance.between(0.05, 0.5, cells), 0.0),
        bend=whims.bend * chance.between(0, 1.5, cells),
        style=(chance.between(0, 1, cells, 1) + chance.about(0.1, cells, 10)).clamp(0, 0.999),
        free=chance.coin(0.3, cells),
        same=chance.coin(0.6, cells),
        slant=chance.about(0.16, cells).clamp(-0.45, 0.5),
        upright=chance.between(0.4, 1, cells),
        stretch=(chance.about(0.13, cells)).exp().clamp(0.72, 1.35),
        pen=chance.between(0.1, 1.4, cells).exp(),
        gap=torch.where(
            chance.coin(0.25, cells), chance.between(-0.12, 0.06, cells), chance.between(0.04, 0.4, cells)
        ),
        messy=chance.between(0.3, 1.3, cells),
    )


@dataclass(frozen=True, slots=True)
class Hands:
    """How the writer of each cell writes, so that one cell comes from one hand."""

    real: Array
    font: Array
    fonts: Array
    made: Array
    uneven: Array
    bend: Array
    style: Array
    free: Array
    same: Array
    slant: Array
    upright: Array
    stretch: Array
    pen: Array
    gap: Array
    messy: Array
