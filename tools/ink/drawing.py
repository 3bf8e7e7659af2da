"""Glyphs and strokes drawn into the cells of a batch, at once."""

import torch

from tools.ink.bank import OUT, Bank
from tools.ink.chance import Array
from tools.ink.layout import Marks, Strokes
from tools.ink.material import SIDE

HIGH, WIDE, LAYERS = 96, 240, 3
#: The side of the patch that holds a glyph, and that of the patch that holds a place of a stroke.
_PATCH, _DOT = 56, 9
_STEPS = (40, 160)
#: So many glyphs are drawn at once.
_AT_ONCE = 65536
_STROKES = 1 << 17


def no_ink(cells: int, device: str, fine: int = 1) -> Array:
    """Return cells without ink: cells x layers x 96 x 240, or `fine` times as many places."""
    return torch.zeros(cells, LAYERS, HIGH * fine, WIDE * fine, device=device)


def draw(ink: Array, bank: Bank, marks: Marks, strokes: Strokes | None = None, fine: int = 1) -> None:
    """Darken the ink of cells (cells x layers x 96 x 240, from 0 to 1) where glyphs and strokes are.

    The ink may have `fine` times as many rows and columns; glyphs and strokes are told in the usual ones.
    """
    ink = ink.view(-1)
    sizes = (bank.measures[marks.glyph, :2] * marks.scale).unbind(1)
    reach = (sizes[0] + marks.slant.abs() * sizes[1]).maximum(sizes[1]) + marks.pen
    small = reach * fine < _PATCH - 6 if fine > 1 else reach < torch.inf
    for which, patch in ((small, _PATCH), (~small, _PATCH * fine)):
        for some in which.nonzero()[:, 0].split(_AT_ONCE * _PATCH**2 // patch**2):
            marked = Marks(*(getattr(marks, name)[some] for name in Marks.__slots__))
            _glyphs(ink, bank, marked, fine, patch)
    if strokes is None:
        return
    lengths = (strokes.points[:, 1:] - strokes.points[:, :-1]).norm(dim=2).sum(1) * fine
    short = lengths < _STEPS[0] * 1.2
    thin = strokes.pen * fine < _DOT - 3 if fine > 1 else strokes.pen < torch.inf
    for dot, thick in ((_DOT, thin), (2 * _DOT - 1, ~thin)):
        for which, steps in ((short, _STEPS[0]), (~short, _STEPS[1])):
            for some in (which & thick).nonzero()[:, 0].split(_STROKES):
                lines = Strokes(*(getattr(strokes, name)[some] for name in Strokes.__slots__))
                _curves(ink, lines, steps, fine, dot)


def _put(ink: Array, place: Array, x: Array, y: Array, value: Array, fine: int) -> None:
    """Darken places: a place of the batch for each cell and layer, columns, rows and how dark."""
    high, wide = HIGH * fine, WIDE * fine
    inside = ((x >= 0) & (x < wide) & (y >= 0) & (y < high) & (value > 0.02)).view(-1).nonzero()[:, 0]
    flat = ((place * (high * wide)) + y * wide + x).view(-1)[inside]
    ink.scatter_reduce_(0, flat, value.view(-1)[inside], "amax")


def _glyphs(ink: Array, bank: Bank, marks: Marks, fine: int, patch: int) -> None:
    device = ink.device
    at, scale, pen = marks.at * fine, marks.scale * fine, marks.pen * fine
    line = torch.arange(patch, device=device, dtype=torch.float32) - patch // 2
    corner = at.floor()
    part = at - corner
    away = line[None, None, :] - part[:, 0, None, None]
    down = line[None, :, None] - part[:, 1, None, None]
    turn = marks.turn[:, None, None]
    across, along = away + turn * down, down - turn * away
    v = along / scale[:, 1, None, None]
    u = (across + marks.slant[:, None, None] * along) / scale[:, 0, None, None]
    u, v = _shaky(marks, u, v)
    fields = bank.fields[marks.glyph].float()[:, None]
    grid = torch.stack([u, v], 3) / (SIDE / 2)
    depth = torch.nn.functional.grid_sample(fields - OUT, grid, align_corners=False)[:, 0] + OUT
    half = bank.measures[marks.glyph, 4] * (scale[:, 0] * scale[:, 1]).sqrt()
    edge = (1 - pen / (2 * half)).clamp(-2.5, 0.76)
    value = torch.sigmoid((depth - edge[:, None, None]) * (3.2 * half.clamp(min=0.9))[:, None, None])
    value = torch.where((u.abs() < SIDE / 2) & (v.abs() < SIDE / 2), value, 0)
    x = (corner[:, 0, None, None] + line[None, None, :]).long().expand_as(value)
    y = (corner[:, 1, None, None] + line[None, :, None]).long().expand_as(value)
    _put(ink, (marks.cell * LAYERS + marks.layer)[:, None, None].expand_as(value), x, y, value, fine)


def _shaky(marks: Marks, u: Array, v: Array) -> tuple[Array, Array]:
    """Bend each glyph by two slow waves, as no hand draws a sign twice alike."""
    wave = marks.wave[..., None, None]
    u = u + wave[:, 0] * (v * wave[:, 1] + wave[:, 2]).sin()
    return u, v + wave[:, 3] * (u * wave[:, 4] + wave[:, 5]).sin()


def _curves(ink: Array, strokes: Strokes, steps: int, fine: int, dot: int) -> None:
    device = ink.device
    t = torch.linspace(0, 1, steps, device=device)[:, None]
    a, b, c, d = (one[:, None] * fine for one in strokes.points.unbind(1))
    spots = a * (1 - t) ** 3 + 3 * b * t * (1 - t) ** 2 + 3 * c * t**2 * (1 - t) + d * t**3
    line = torch.arange(dot, device=device) - dot // 2
    corner = spots.floor()
    away = (line[None, None, None, :] + corner[..., 0, None, None]) - spots[..., 0, None, None]
    down = (line[None, None, :, None] + corner[..., 1, None, None]) - spots[..., 1, None, None]
    far = (away**2 + down**2).sqrt()
    value = (strokes.pen[:, None, None, None] * fine / 2 + 0.5 - far).clamp(0, 1)
    x = (corner[..., 0, None, None] + line[None, None, None, :]).long().expand_as(value)
    y = (corner[..., 1, None, None] + line[None, None, :, None]).long().expand_as(value)
    _put(
        ink, (strokes.cell * LAYERS + strokes.layer)[:, None, None, None].expand_as(value), x, y, value, fine
    )
