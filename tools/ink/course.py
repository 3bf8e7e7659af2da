"""The whole course: six runs, each from where the last one ended, on every GPU of the machine."""

from dataclasses import replace
from pathlib import Path
from typing import Final

import torch

from tools.ink.bank import Whims
from tools.ink.cells import Mix
from tools.ink.measuring import collect
from tools.ink.network import SHAPE, Reader
from tools.ink.training import Course, Stock, train

_SMALLER: Final = Mix(scale=(0.6, 1.15), small=(0.42, 0.7))
#: Hands that are less even, ones with flags, more small writing, and answers that stand on the line.
_UNEVEN: Final = Mix(
    forms=(22.0, 23.0, 41.0, 9.5, 3.5, 1.0),
    real=0.58,
    scale=(0.55, 1.15),
    small=(0.45, 0.75),
    smaller=0.5,
    windows=0.14,
    standing=0.25,
    whims=Whims(made=0.2, fonts=0.3, uneven=0.4, bend=0.01),
)
_MANY: Final = 32768
#: The runs of the weights that are shipped: the first three on two GPUs and without the later blocks, which
#: change nothing before they have learnt; the others on one, slower and slower from the first of them to the
#: last. The very first had an earlier composer: thicker pens, glyphs of fonts not bent.
RUNS: Final = (
    Course(14, 485, cells=1024, peak=1.5e-3, warm=300),
    Course(29, 480, cells=2048, peak=1.0e-3, warm=300, mix=_SMALLER),
    Course(31, 192, cells=2048, peak=7.0e-4, warm=60, mix=replace(_SMALLER, real=0.56)),
    *(
        Course(
            seed, seconds, cells=2048, peak=1.2e-3, warm=100, mix=_UNEVEN, at_once=_MANY, slows=(start, end)
        )
        for seed, seconds, start, end in (
            (51, 538, 0.0, 0.367),
            (52, 562, 0.367, 0.76),
            (53, 330, 0.76, 1.0),
        )
    ),
)
#: The run that goes on from the weights that were shipped before it: half of its pictures are of small
#: writing, each once as it is and once looked at closely; more of what is no answer.
_NO_ANSWERS: Final = (50.0, 7.0, 3.0, 5.0, 7.0, 4.0, 4.0, 4.5, 7.0, 9.0, 3.5)
_ON: Final = replace(_UNEVEN, shares=_NO_ANSWERS, smaller=0.35)
_NEAR: Final = replace(_UNEVEN, shares=_NO_ANSWERS, scale=(0.42, 0.8), small=None)
MORE: Final = Course(61, 960, cells=2048, peak=6.0e-4, warm=200, mix=_ON, at_once=16384, closer=_NEAR)
_TESTED: Final = 4096
_SEED: Final = 7


def whole_course(folder: Path) -> None:
    """Train in a folder of material; the network and what it says of test cells go to `out` in it."""
    (folder / "out").mkdir(exist_ok=True)
    ranks = max(1, torch.cuda.device_count())
    if ranks > 1:
        torch.multiprocessing.spawn(_one, (ranks, folder), nprocs=ranks)
    else:
        _one(0, 1, folder)


def go_on(weights: Path, folder: Path) -> None:
    """Train on from the weights that are shipped, on one device."""
    (folder / "out").mkdir(exist_ok=True)
    device = "cuda:0" if torch.cuda.is_available() else "cpu"
    stock = Stock.load(folder, device)
    course = replace(MORE, start=weights, swift=device != "cpu", shape=SHAPE)
    reader = train(stock, device, course, folder / "out")
    collect(reader, stock, device, _SEED, _TESTED, folder / "out", folder)


def measure(weights: Path, folder: Path, seed: int) -> None:
    """Let a trained network (`ink.pt`) read cells of a new seed, and keep what it says of them in `out`."""
    (folder / "out").mkdir(exist_ok=True)
    device = "cuda:0" if torch.cuda.is_available() else "cpu"
    reader = Reader(*SHAPE).to(device)
    reader.take(torch.load(weights, map_location=device))
    reader.eval()
    collect(reader, Stock.load(folder, device), device, seed, _TESTED, folder / "out", folder)


def _one(rank: int, ranks: int, folder: Path) -> None:
    out = folder / "out"
    cuda = torch.cuda.is_available()
    device = f"cuda:{rank}" if cuda else "cpu"
    if ranks > 1:
        torch.cuda.set_device(rank)
        meeting = f"file://{(out / 'meeting').resolve()}"
        torch.distributed.init_process_group("nccl", init_method=meeting, rank=rank, world_size=ranks)
    stock = Stock.load(folder, device)
    reader, start = None, None
    for run in RUNS:
        course = replace(run, start=start, swift=cuda, shape=SHAPE)
        reader = train(stock, device, course, out, rank, ranks)
        if ranks > 1:
            torch.distributed.barrier()
        start = out / "ink.pt"
    if rank == 0 and reader is not None:
        collect(reader, stock, device, _SEED, _TESTED, out, folder)
    if ranks > 1:
        torch.distributed.barrier()
        torch.distributed.destroy_process_group()
