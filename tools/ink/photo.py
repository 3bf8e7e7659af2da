"""What paper and camera do to the ink of a cell: grey of the pen, shade, blur, noise, compression."""

from dataclasses import dataclass
from math import pi

import torch
from torch.nn import functional

from tools.ink.chance import Array, Chance
from tools.ink.drawing import HIGH, WIDE
from tools.ink.layout import GHOST, HAND, PRINT
from tools.ink.printed import places


@dataclass(frozen=True, slots=True)
class Light:
    """How harsh the pictures are: 1 is what is trained on."""

    harsh: float = 1.0


def photographed(chance: Chance, ink: Array, light: Light, fine: int = 1) -> tuple[Array, Array]:
    """Return the grey pictures (0 to 255, white is 255) of cells whose ink is given, and finer ones.

    These have `fine` times as many rows and columns, as the ink has.
    A coarse camera saw no more for the second than for the first; the first is compressed once more.
    """
    cells = len(ink)
    high, wide = HIGH * fine, WIDE * fine
    ink = _warped(chance, ink, light, fine)
    grain = (
        1
        - chance.between(0, 0.55, cells, 1, 1)
        * chance.coin(0.4, cells, 1, 1)
        * _rough(chance, cells, 2, fine).abs()
    )
    lit = chance.coin(0.6, cells, 1, 1)  # the page was made evenly white before its cells were cut
    paper = torch.where(lit, 245.0, chance.between(150, 252, cells, 1, 1))
    pencil = chance.coin(0.55, cells, 1, 1)
    dark = torch.where(
        pencil, chance.between(0.26, 0.72, cells, 1, 1), chance.between(0.55, 0.95, cells, 1, 1)
    )
    faint = chance.between(0.02, 0.09, cells, 1, 1)
    printed = chance.between(0.2, 0.92, cells, 1, 1)
    hand = (ink[:, HAND] * grain * dark).clamp(0, 1)
    ghost = ink[:, GHOST] * faint + _smudge(chance, ink[:, GHOST], faint, fine)
    picture = paper * (1 - hand) * (1 - ghost.clamp(0, 1)) * (1 - ink[:, PRINT] * printed)
    picture = torch.where(lit, picture, picture * _shade(chance, cells, fine))
    picture = _blurred(picture, chance.between(0.25, 1.15 * light.harsh, cells) * fine, fine)
    picture = _coarse(chance, picture, fine)
    noise = chance.between(0, 6 * light.harsh, cells, 1, 1)
    picture = picture + noise * chance.about(0.7 * fine, cells, high, wide)
    picture = picture + noise * 0.7 * _rough(chance, cells, 3, fine)
    curve = torch.where(lit, 1.0, chance.about(0.12, cells, 1, 1).exp())
    picture = 255 * (picture.clamp(0, 255) / 255) ** curve
    picture = _compressed(chance, picture)
    shown = _inside(chance, cells, fine) | ~lit
    finer = _whole(torch.where(shown, picture, 245.0))
    if fine == 1:
        return finer, finer
    usual = _compressed(chance, functional.avg_pool2d(picture[:, None], fine)[:, 0])
    return _whole(torch.where(shown[:, ::fine, ::fine], usual, 245.0)), finer


def _whole(picture: Array) -> Array:
    return picture.round().clamp(0, 255).to(torch.uint8)


def _inside(chance: Chance, cells: int, fine: int) -> Array:
    """Return where the cut place is: a smaller one stands in the middle of its cell, on white."""
    x = (places(WIDE, fine, chance.device) - WIDE / 2 + 0.5).abs()
    y = (places(HIGH, fine, chance.device) - HIGH / 2 + 0.5).abs()[:, None]
    smaller = chance.coin(0.12, cells, 1, 1)
    wide = torch.where(smaller, chance.between(0.85, 1.0, cells, 1, 1), 1.0) * WIDE / 2
    high = torch.where(smaller, chance.between(0.8, 1.0, cells, 1, 1), 1.0) * HIGH / 2
    return (x < wide) & (y < high)


def _rough(chance: Chance, cells: int, size: int, fine: int) -> Array:
    small = chance.about(1, cells, 1, HIGH // size, WIDE // size)
    into = (HIGH * fine, WIDE * fine)
    return functional.interpolate(small, into, mode="bilinear", align_corners=False)[:, 0]


def _warped(chance: Chance, ink: Array, light: Light, fine: int) -> Array:
    """Bend the paper by up to some pixels, smoothly."""
    cells = len(ink)
    bend = chance.about(1, cells, 2, 3, 5) * chance.between(0, 1.6 * light.harsh, cells, 1, 1, 1)
    bend = functional.interpolate(bend, (HIGH * fine, WIDE * fine), mode="bicubic", align_corners=True)
    y, x = (places(long, fine, chance.device) for long in (HIGH, WIDE))
    grid = torch.stack(
        [(x + bend[:, 0] + 0.5) * 2 / WIDE - 1, (y[:, None] + bend[:, 1] + 0.5) * 2 / HIGH - 1], 3
    )
    return functional.grid_sample(ink, grid, align_corners=False, padding_mode="border")


def _smudge(chance: Chance, ghost: Array, faint: Array, fine: int) -> Array:
    """Where something was rubbed out, the paper is a little darker around it."""
    usual = functional.avg_pool2d(ghost[:, None], fine)
    wide = functional.avg_pool2d(usual, 13, 1, 6, count_include_pad=False)
    wide = functional.interpolate(wide, scale_factor=fine, mode="nearest")[:, 0]
    return wide * faint * chance.between(0, 0.8, len(ghost), 1, 1)


def _shade(chance: Chance, cells: int, fine: int) -> Array:
    """Return light that falls unevenly, with the edge of a shadow in some cells."""
    x = torch.linspace(-1, 1, WIDE * fine, device=chance.device)
    y = torch.linspace(-0.4, 0.4, HIGH * fine, device=chance.device)[:, None]
    turn = chance.between(0, 2 * pi, cells, 1, 1)
    along = x * turn.cos() + y * turn.sin()
    slope = 1 + chance.about(0.07, cells, 1, 1) * along
    edge = torch.sigmoid(
        (along - chance.between(-0.8, 0.8, cells, 1, 1)) * chance.between(3, 40, cells, 1, 1)
    )
    deep = chance.between(0, 0.45, cells, 1, 1) * chance.coin(0.2, cells, 1, 1)
    return slope * (1 - deep * edge)


def _blurred(picture: Array, spread: Array, fine: int) -> Array:
    far = 3 * fine
    line = torch.arange(-far, far + 1, device=picture.device, dtype=torch.float32)
    weight = (-(line**2) / (2 * spread[:, None].clamp(min=0.05) ** 2)).exp()
    weight = weight / weight.sum(1, keepdim=True)
    for axis in (1, 2):
        padding = (0, 0, far, far) if axis == 1 else (far, far, 0, 0)
        wide = functional.pad(picture[:, None], padding, mode="replicate")[:, 0]
        span = picture.shape[axis]
        picture = sum(weight[:, at, None, None] * wide.narrow(axis, at, span) for at in range(2 * far + 1))
    return picture


def _coarse(chance: Chance, picture: Array, fine: int) -> Array:
    """Some pictures come from a camera that saw half or two thirds of the points."""
    which = chance.pick([0.7, 0.18, 0.12], len(picture))
    for kind, size in ((1, (HIGH * 2 // 3, WIDE * 2 // 3)), (2, (HIGH // 2, WIDE // 2))):
        rows = (which == kind).nonzero()[:, 0]
        small = functional.interpolate(picture[rows, None], size, mode="area")
        into = (HIGH * fine, WIDE * fine)
        picture[rows] = functional.interpolate(small, into, mode="bicubic", align_corners=False)[:, 0]
    return picture


def _compressed(chance: Chance, picture: Array) -> Array:
    """Round the waves of 8 x 8 blocks, as JPEG does, in half of the pictures."""
    at = torch.arange(8, device=chance.device, dtype=torch.float32)
    waves = (pi / 8 * (at + 0.5) * at[:, None]).cos() * torch.where(at == 0, (1 / 8) ** 0.5, 0.5)[:, None]
    step = chance.between(1.5, 9, len(picture), 1, 1, 1, 1) * (1 + 0.45 * (at + at[:, None]))
    rows = chance.coin(0.5, len(picture)).nonzero()[:, 0]
    high, wide = picture.shape[1:]
    blocks = picture[rows].view(-1, high // 8, 8, wide // 8, 8).transpose(2, 3)
    step = step[rows]
    blocks = waves.T @ ((waves @ blocks @ waves.T / step).round() * step) @ waves
    picture[rows] = blocks.transpose(2, 3).reshape(-1, high, wide)
    return picture
