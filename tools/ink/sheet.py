"""A small sheet of cells from held-out fonts, for the project's own tests."""

import json
from dataclasses import replace
from pathlib import Path
from typing import Final

import torch
from PIL import Image

from onewhole.presses.paper.ink_text import UNITS, Slots
from tools.ink.cells import Mix, compose
from tools.ink.chance import Chance
from tools.ink.drawing import HIGH, WIDE
from tools.ink.measuring import variants
from tools.ink.training import Stock

#: So many cells of each kind, in rows of so many; grey in so many steps, which keeps the file small.
KINDS: Final = {
    "fonts": 48,
    "windows": 12,
    "decimals": 6,
    "with units": 6,
    "a digit struck inside": 6,
    "empty": 6,
    "rubbed out": 6,
    "scribbles": 6,
    "two answers": 6,
    "only struck answers": 6,
    "words": 6,
}
ACROSS: Final = 6
_STEP: Final = 16


def sheet(stock: Stock, device: str, seed: int, folder: Path) -> None:
    """Write `cells.png` and `cells.json` into a folder."""
    pictures, known = [], []
    for at, (name, count) in enumerate(KINDS.items()):
        mix: Mix = replace(variants()[name][1], real=0.0)
        with torch.no_grad():
            batch = compose(Chance(seed + at, device), stock.test, stock.printed, stock.words, count, mix)
        pictures += [picture.cpu() for picture in batch.pictures]
        w = batch.writing
        for row in range(count):
            told = Slots(bool(w.sign[row]), tuple(w.slots[row].tolist()), UNITS[int(w.unit[row])])
            known.append({"what": name, "text": told.text if int(batch.kind[row]) == 1 else ""})
    grey = torch.stack(pictures).float().div(_STEP).round().mul(_STEP).clamp(max=255).to(torch.uint8)
    rows = grey.view(-1, ACROSS, HIGH, WIDE).transpose(1, 2).reshape(-1, ACROSS * WIDE)
    Image.fromarray(rows.numpy()).quantize(_STEP + 1).save(folder / "cells.png", optimize=True)
    (folder / "cells.json").write_text(json.dumps(known, indent=0) + "\n")
