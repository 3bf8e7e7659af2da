"""The whole course: three runs, each from where the last one ended, on every GPU of the machine."""

from pathlib import Path
from typing import Final

import torch

from tools.ink.cells import Mix
from tools.ink.measuring import collect
from tools.ink.network import SHAPE
from tools.ink.training import Course, Stock, train

#: Seed, seconds on two GPUs, peak of the rate, steps to it, cells a step and GPU, the mix. The first run of
#: the weights that are shipped had an earlier composer: thicker pens, glyphs of fonts not bent.
RUNS: Final = (
    (14, 485, 1.5e-3, 300, 1024, Mix()),
    (29, 480, 1.0e-3, 300, 2048, Mix(scale=(0.6, 1.15), small=(0.42, 0.7))),
    (31, 192, 7.0e-4, 60, 2048, Mix(real=0.56, scale=(0.6, 1.15), small=(0.42, 0.7))),
)
_TESTED: Final = 2048
_SEED: Final = 7


def whole_course(folder: Path) -> None:
    """Train in a folder of material; the network and what it says of test cells go to `out` in it."""
    (folder / "out").mkdir(exist_ok=True)
    ranks = max(1, torch.cuda.device_count())
    if ranks > 1:
        torch.multiprocessing.spawn(_one, (ranks, folder), nprocs=ranks)
    else:
        _one(0, 1, folder)


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
    for seed, seconds, peak, warm, cells, mix in RUNS:
        course = Course(seed, seconds, start, cells, peak, warm, mix, swift=cuda, shape=SHAPE)
        reader = train(stock, device, course, out, rank, ranks)
        if ranks > 1:
            torch.distributed.barrier()
        start = out / "ink.pt"
    if rank == 0 and reader is not None:
        collect(reader, stock, device, _SEED, _TESTED, out, folder)
    if ranks > 1:
        torch.distributed.barrier()
        torch.distributed.destroy_process_group()
