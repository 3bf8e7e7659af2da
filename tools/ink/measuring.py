"""What the network says of cells that it was never trained on, kept so that figures can be made of it."""

from dataclasses import replace
from pathlib import Path
from typing import Any, Final

import numpy as np
import torch

from onewhole.presses.paper.closer import FINE
from onewhole.presses.paper.ink import looked_at_again
from tools.ink.cells import Batch, Mix, compose
from tools.ink.chance import Array, Chance
from tools.ink.closer import parts_of, pictured
from tools.ink.exporting import Told
from tools.ink.labels import BLANK, NAMES, PLACES, PLAIN, SIGN, TOP, WHOLE, Writings, slotted
from tools.ink.material import PARTS
from tools.ink.network import Reader, prepared
from tools.ink.training import Stock

_FREE = tuple(
    {"plain": 88.0, "struck and written anew": 6.0, "other working beside": 6.0}.get(name, 0.0)
    for name in NAMES
)
#: The lists of answers that cells are written from.
MIXES: Final = ("class", "quarters", "tuning")
_NUMBERS = (24.0, 24.0, 52.0, 0.0, 0.0, 0.0)


#: Cells without an answer, as many of each kind.
_NONE = tuple(float(at >= BLANK) for at in range(len(NAMES)))
#: The kinds of cells of which twice as many are read.
_MANY: Final = {"tune", "real", "fonts", "scale 0.6", "two answers", "only struck answers"}


def only(name: str) -> tuple[float, ...]:
    """Return the shares of cells of one kind alone."""
    return tuple(float(one == name) for one in NAMES)


def variants() -> dict[str, tuple[str, Mix, str]]:
    """Return the kinds of cells that the figures are about: whose material, the mix, whose answers."""
    free = Mix(shares=_FREE, forms=_NUMBERS, plain=True, windows=0.0, scale=(0.6, 1.1))
    real, drawn = replace(free, real=1.0), replace(free, real=0.0)
    usual = replace(real, scale=(0.8, 1.1), ruled=0.0)
    every = Mix(windows=0.0, scale=(0.6, 1.1))
    return {
        "tune": ("tune", free, "tuning"),
        "tune, all kinds": ("tune", every, ""),
        "real": ("test", real, "quarters"),
        "fonts": ("test", drawn, "quarters"),
        "harsh thin": ("test", replace(real, pen=0.6, harsh=1.5), "quarters"),
        "usual size, one line": ("test", usual, "quarters"),
        "scale 0.6": ("test", replace(usual, scale=(0.6, 0.6)), "quarters"),
        "scale 0.5": ("test", replace(usual, scale=(0.5, 0.5)), "quarters"),
        "two more lines": ("test", replace(usual, ruled=3.0), "quarters"),
        "windows": ("test", replace(real, windows=2.0, shares=only("plain")), "quarters"),
        "any digits": ("test", real, ""),
        "tune, no answer": ("tune", replace(every, shares=_NONE), ""),
        "class, real": ("test", real, "class"),
        "class, fonts": ("test", drawn, "class"),
        "decimals": (
            "test",
            replace(every, shares=_FREE, forms=(0.0, 0.0, 0.0, 1.0, 0.0, 0.0), plain=True),
            "",
        ),
        "with units": ("test", replace(every, shares=_FREE), ""),
        **{name: ("test", replace(every, shares=only(name)), "") for name in NAMES if name != NAMES[PLAIN]},
    }


def told_of(reader: Reader, pictures: Array) -> Array:
    """Return the network's row for each cell, all temperatures 1, as floats of sixteen bits."""
    said = Told(reader)
    with torch.no_grad():
        return torch.cat([said(prepared(some)).clamp(min=-14) for some in pictures.split(1024)]).half()


def collect(
    reader: Reader, stock: Stock, device: str, seed: int, cells: int, out: Path, answers: Path
) -> None:
    """Compose cells of every variant, read them, and keep what was said and what is so."""
    kept: dict[str, Any] = {}
    given = {mix: np.load(answers / f"{mix}.npz") for mix in MIXES}
    for at, (name, (role, how, mix)) in enumerate(variants().items()):
        count = 4 * cells if "," in name or name in _MANY else 2 * cells
        code = _codes(given[mix]["slots"][:count], given[mix]["sign"][:count], device) if mix else None
        count = count if code is None else len(code)
        _keep(kept, name, reader, stock, device, seed + at, count, role, how, code)
    for part in range(PARTS):
        some = list(kept)[part::PARTS]
        np.savez_compressed(out / f"told_{part}.npz", **{name: kept[name] for name in some})


def _codes(slots: np.ndarray, sign: np.ndarray, device: str) -> Array:
    code = torch.full((len(slots), PLACES), -1, device=device)
    held = torch.from_numpy(np.where(slots > 9, -1, slots)).to(device)
    code[:, WHOLE : WHOLE + 4] = held[:, :4]
    code[:, TOP : TOP + 6] = held[:, 4:10]
    code[:, SIGN] = torch.where(torch.from_numpy(sign).to(device) > 0, 1, -1)
    return code


def _keep(
    kept: dict[str, np.ndarray],
    name: str,
    reader: Reader,
    stock: Stock,
    device: str,
    seed: int,
    count: int,
    role: str,
    mix: Mix,
    code: Array | None,
) -> None:
    chance = Chance(seed, device)
    bank = stock.tune if role == "tune" else stock.test
    rows: list[tuple[Array, ...]] = []
    for start in range(0, count, 2048):
        many = min(2048, count - start)
        given = None
        if code is not None:
            part = code[start : start + many]
            bar = torch.where(part[:, TOP] >= 0, 1 + chance.coin(0.3, many).long(), 0)
            given = slotted(part, torch.zeros(many, dtype=torch.long, device=device), bar)
        with torch.no_grad():
            batch = compose(chance, bank, stock.printed, stock.words, many, mix, given, FINE)
        w: Writings = batch.writing
        first = told_of(reader, batch.pictures)
        near, second = _looked_at_again(reader, batch, first)
        rows.append((first, near, second, w.slots, w.sign, w.unit, batch.kind, batch.struck))
        if start == 0:
            kept[f"{name}|pictures"] = batch.pictures[:12].cpu().numpy()
    parts = ("told", "near", "told again", "slots", "sign", "unit", "kind", "struck")
    for part, values in zip(parts, zip(*rows, strict=True), strict=True):
        whole = torch.cat(list(values)).cpu().numpy()
        kept[f"{name}|{part}"] = whole if part.startswith("told") else whole.astype(np.uint8)


def _looked_at_again(reader: Reader, batch: Batch, first: Array) -> tuple[Array, Array]:
    """Return which cells the program would look at closely, and what the network says of these then."""
    parts = parts_of(batch.pictures)
    doubted = [looked_at_again(row) for row in first.float().cpu().numpy()]
    near = torch.tensor([part is not None and doubt for part, doubt in zip(parts, doubted, strict=True)])
    near = near.to(first.device)
    looked = [part for part, is_near in zip(parts, near.tolist(), strict=True) if part and is_near]
    at = torch.tensor([(one.left, one.top, one.zoom) for one in looked], device=first.device)
    if not looked:
        return near, first[:0]
    return near, told_of(reader, pictured(batch.finer[near], at))
