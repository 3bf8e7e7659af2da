"""A closer look, as `onewhole.presses.paper.closer` takes it: part of a finer picture, as large as a cell."""

from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from typing import Final

import torch
from torch.nn import functional

from onewhole.presses.paper.closer import FINE, CloserPart, written
from tools.ink.cells import Batch
from tools.ink.chance import Array, Chance
from tools.ink.drawing import HIGH, WIDE

#: How high digits are brought, in places, where one learns; and the most that anything is made larger.
_TALL: Final = (25.0, 42.0)
_MOST: Final = 2.2


def somewhere(chance: Chance, batch: Batch) -> Array:
    """Draw what is looked at of each cell of a batch: left, top and how many times larger, a row each."""
    cells = len(batch.box)
    size = batch.box[:, 2:] - batch.box[:, :2]
    room = torch.tensor([WIDE, HIGH], device=size.device)
    most = (room / (size + chance.between(2, 14, cells, 1)).clamp(min=1)).amin(1).clamp(max=_MOST)
    zoom = (chance.between(*_TALL, cells) / batch.tall.clamp(min=5)).minimum(most).clamp(min=1)
    part = room / zoom[:, None]
    middle = (batch.box[:, :2] + batch.box[:, 2:]) / 2 + chance.about(2.0, cells, 2)
    corner = (middle - part / 2).clamp(min=0).minimum(room - part)
    return torch.cat([corner, zoom[:, None]], 1)


def pictured(finer: Array, part: Array) -> Array:
    """Return parts of finer pictures as cells; ``part`` are left, top and how many times larger."""
    left, top, zoom = (one[:, None] for one in part.unbind(1))
    step = FINE / zoom / 2
    x, y = (torch.arange(2 * long, device=finer.device) + 0.5 for long in (WIDE, HIGH))
    across = (left * FINE + x * step) * 2 / finer.shape[2] - 1
    down = (top * FINE + y * step) * 2 / finer.shape[1] - 1
    grid = torch.stack(
        [across[:, None].expand(-1, 2 * HIGH, -1), down[..., None].expand(-1, -1, 2 * WIDE)], 3
    )
    seen = functional.grid_sample(finer[:, None].float(), grid, align_corners=False, padding_mode="border")
    return functional.avg_pool2d(seen, 2)[:, 0].round().clamp(0, 255).to(torch.uint8)


def parts_of(pictures: Array) -> Sequence[CloserPart | None]:
    """Return what the program would look at closely of each cell."""
    with ThreadPoolExecutor() as workers:
        return list(workers.map(written, pictures.cpu().numpy()))
