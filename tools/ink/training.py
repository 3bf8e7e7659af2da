"""Training: cells are composed on the device while the network learns from them."""

import time
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from math import cos, pi
from pathlib import Path
from typing import Any, Final

import numpy as np
import torch
from torch.nn import functional

from onewhole.presses.paper.closer import FINE
from onewhole.presses.paper.ink_text import NOTHING, SLOTS, UNITS
from tools.ink.bank import Bank, bank_of
from tools.ink.cells import Batch, Mix, compose
from tools.ink.chance import Array, Chance
from tools.ink.closer import pictured, somewhere
from tools.ink.flags import EACH, drawn_digits
from tools.ink.kept import evened, shipped
from tools.ink.labels import ANSWER, Vocabulary
from tools.ink.material import Grey, Measures, digits_of, fitted_digits
from tools.ink.network import Reader, prepared

#: The last real digits of the training part are kept to set thresholds on.
KEPT = 8000
_DRAWN_SEED: Final = 17


@dataclass(frozen=True, slots=True)
class Stock:
    """Everything that cells are composed of, on one device."""

    train: Bank
    tune: Bank
    test: Bank
    printed: Bank
    words: Vocabulary

    @classmethod
    def load(cls, folder: Path, device: str, most: int | None = None) -> "Stock":
        """Load digits and fonts from a folder that `gather` filled."""
        held = np.load(folder / "fonts.npz")
        pictures, labels = digits_of(folder, "train")
        test, test_labels = digits_of(folder, "t10k")
        fonts = {
            role: (held[f"{role}_pictures"], held[f"{role}_measures"])
            for role in ("train", "tune", "test", "print")
        }
        if most is not None:
            fonts["train"] = (fonts["train"][0][:5], fonts["train"][1][:5])
        cut = len(pictures) - KEPT

        def real(
            some: np.ndarray, of: np.ndarray, role: str, made: tuple[Grey, Measures] | None = None
        ) -> Bank:
            some, of = some[:most], of[:most]
            chunk = 1024 if device.startswith("cuda") else 64
            return bank_of(fitted_digits(some), of, fonts[role], device, chunk, made)

        drawn = drawn_digits(_DRAWN_SEED, EACH if most is None else min(most, EACH))
        return cls(
            real(pictures[:cut], labels[:cut], "train", drawn),
            real(pictures[cut:], labels[cut:], "tune"),
            real(test, test_labels, "test"),
            real(pictures[:0], labels[:0], "print"),
            Vocabulary.on(device),
        )


def loss_of(told: tuple[Array, ...], batch: Batch) -> tuple[Array, Array]:
    """Return the loss of a batch, and the share of answers that are read whole."""
    digits, sign, unit, kind, struck, heat = (one.float() for one in told)
    answer = (batch.kind == ANSWER).float()
    count = answer.sum().clamp(min=1)
    each = functional.cross_entropy(digits.flatten(0, 1), batch.writing.slots.flatten(), reduction="none")
    slots = (each.view(len(answer), -1).sum(1) * answer).sum() / count
    signs = (functional.cross_entropy(sign, batch.writing.sign, reduction="none") * answer).sum() / count
    units = (functional.cross_entropy(unit, batch.writing.unit, reduction="none") * answer).sum() / count
    kinds = functional.cross_entropy(kind, batch.kind)
    inside = functional.binary_cross_entropy_with_logits(struck, batch.struck.float())
    told_where = (batch.heat >= 0).float()
    there = functional.binary_cross_entropy_with_logits(
        heat, batch.heat.clamp(min=0), told_where, pos_weight=torch.tensor(8.0, device=heat.device)
    )
    right = (digits.argmax(2) == batch.writing.slots).all(1) & (sign.argmax(1) == batch.writing.sign)
    right &= unit.argmax(1) == batch.writing.unit
    loss = slots + signs + units + 2 * kinds + inside + 4 * there
    return loss, (right * answer).sum() / count


#: So many cells are composed at once: composing few takes as long.
_AT_ONCE: Final = 16384
#: So long is the heat map of a network taken from its file learnt alone.
_HEAT_STEPS: Final = 100
#: The clock is asked after so many steps.
_ASKED: Final = 16


@dataclass(frozen=True, slots=True)
class Course:
    """How long and how fast a network learns; ``shape`` are the widths and layers of `Reader`.

    ``slows`` is which part of the way from the fastest to the slowest learning this is, from 0 to 1.
    """

    seed: int
    seconds: float
    start: Path | None = None
    cells: int = 1024
    peak: float = 2e-3
    warm: int = 300
    mix: Mix = field(default_factory=Mix)
    swift: bool = True
    shape: tuple[Any, ...] = ()
    at_once: int = _AT_ONCE
    slows: tuple[float, float] = (0.0, 1.0)
    closer: Mix | None = None


def _batches(chance: Chance, stock: Stock, course: Course) -> Iterator[tuple[Array, Batch]]:
    """Compose cells without end, and give them in batches of `cells`."""
    at_all = 0
    while True:
        harsh = (1.0, 1.0, 1.4)[at_all % 3]
        at_all += 1
        with torch.no_grad():
            mix = replace(course.mix, harsh=course.mix.harsh * harsh)
            whole = compose(chance, stock.train, stock.printed, stock.words, course.at_once, mix)
            if course.closer is not None:
                mix = replace(course.closer, harsh=course.closer.harsh * harsh)
                whole = Batch.joined([whole, *_twice(chance, stock, course.at_once // 2, mix)])
            x = prepared(whole.pictures).contiguous(memory_format=torch.channels_last)
            order = torch.arange(len(x), device=chance.device)
            if course.closer is not None:
                order = torch.argsort(chance.between(0, 1, len(x)))
        for rows in order.split(course.cells):
            yield x[rows], whole.at(rows)


def _twice(chance: Chance, stock: Stock, cells: int, mix: Mix) -> Iterator[Batch]:
    """Compose cells that are looked at twice: as they are, and closely, where no heat map tells of signs."""
    usual = compose(chance, stock.train, stock.printed, stock.words, cells, mix, fine=FINE)
    near = pictured(usual.finer, somewhere(chance, usual))
    yield usual
    yield replace(usual, pictures=near, heat=torch.full_like(usual.heat, -1))


def train(stock: Stock, device: str, course: Course, out: Path, rank: int = 0, ranks: int = 1) -> Reader:
    """Train for so many seconds and return the mean of the last networks; checkpoints go to a folder.

    Several processes, one a device, each compose cells of their own and share what they learn from them.
    """
    torch.manual_seed(course.seed)
    torch.backends.cuda.matmul.allow_tf32 = True
    torch.backends.cudnn.allow_tf32 = True
    torch.backends.cudnn.benchmark = True
    cuda = device.startswith("cuda")
    chance = Chance(course.seed * 1000 + rank, device)
    reader = Reader(*course.shape).to(device)
    if course.start is not None and course.start.suffix == ".onnx":
        reader = _taken_up(course, stock, chance).to(device)
    elif course.start is not None:
        reader.take(torch.load(course.start, map_location=device))
    mean = Reader(*course.shape)
    mean.to(device)
    mean.load_state_dict(reader.state_dict())
    if cuda:
        reader = reader.to(memory_format=torch.channels_last)
    called = torch.compile(reader) if course.swift else reader
    numbers = list(reader.parameters())
    groups = [
        {"params": [one for one in numbers if one.ndim > 1], "weight_decay": 0.02},
        {"params": [one for one in numbers if one.ndim <= 1], "weight_decay": 0.0},
    ]
    steps_of = torch.optim.AdamW(groups, lr=course.peak, betas=(0.9, 0.98), fused=cuda)
    held = [one for one in mean.state_dict().values() if one.is_floating_point()]
    new = [one for one in reader.state_dict().values() if one.is_floating_point()]
    began, said, step, spent = time.monotonic(), time.monotonic(), 0, 0.0
    for x, batch in _batches(chance, stock, course):
        if step % _ASKED == 0:  # the processes end together
            share = torch.tensor((time.monotonic() - began) / course.seconds, device=device)
            if ranks > 1:
                torch.distributed.broadcast(share, 0)
            spent = share.item()
        if spent >= 1:
            break
        way = course.slows[0] + spent * (course.slows[1] - course.slows[0])
        rate = course.peak * min(1.0, (step + 1) / course.warm) * (0.01 + 0.99 * (0.5 + 0.5 * cos(pi * way)))
        for group in steps_of.param_groups:
            group["lr"] = rate
        with torch.autocast(device.split(":", maxsplit=1)[0], torch.bfloat16, enabled=cuda):
            told = called(x)
        loss, right = loss_of(told, batch)
        steps_of.zero_grad(set_to_none=True)
        loss.backward()
        if ranks > 1:
            _shared([one.grad for one in numbers], ranks)
        torch.nn.utils.clip_grad_norm_(numbers, 2.0)
        steps_of.step()
        with torch.no_grad():
            torch._foreach_lerp_(held, new, 1 - min(0.999, (step + 1) / (step + 20)))
        step += 1
        if rank == 0 and (time.monotonic() - said > 15 or step in {1, 5, 20}):
            said = time.monotonic()
            seen = step * course.cells * ranks / 1e6
            print(
                f"{said - began:6.0f} s  step {step}  {seen:.2f} M cells  loss {loss.item():.3f}"
                f"  read {right.item():.3f}  rate {rate:.1e}",
                flush=True,
            )
            torch.save(mean.state_dict(), out / "ink.pt")
    if rank == 0:
        torch.save(mean.state_dict(), out / "ink.pt")
        print(f"trained on {step * course.cells * ranks} cells in {step} steps", flush=True)
    mean.eval()
    return mean


def _taken_up(course: Course, stock: Stock, chance: Chance) -> Reader:
    """Return the network that is shipped, ready to learn more; its heat map is learnt first, and alone."""
    assert course.start is not None
    reader: Reader = shipped(course.start).to(chance.device)
    steps_of = torch.optim.AdamW(reader.heat.parameters(), lr=5e-3)
    for at, (x, batch) in enumerate(_batches(chance, stock, course)):
        if at == 0:
            evened(reader, x)
        if at == _HEAT_STEPS:
            break
        with torch.no_grad():
            seen = reader.seen(x)
        loss, _ = loss_of((*_nothing(batch), reader.heat(seen)), batch)
        steps_of.zero_grad(set_to_none=True)
        loss.backward()
        steps_of.step()
    reader.train()
    return reader


def _nothing(batch: Batch) -> tuple[Array, ...]:
    """Return answers that say nothing, so that only the heat map is learnt."""
    cells, device = len(batch.kind), batch.kind.device
    shapes = ((SLOTS, NOTHING + 1), (2,), (len(UNITS),), (3,), ())
    return tuple(torch.zeros(cells, *shape, device=device) for shape in shapes)


def _shared(grads: list[Array], ranks: int) -> None:
    """Give each process the mean of all."""
    flat = torch.cat([grad.flatten() for grad in grads])
    torch.distributed.all_reduce(flat)
    flat /= ranks
    at = 0
    for grad in grads:
        grad.copy_(flat[at : at + grad.numel()].view_as(grad))
        at += grad.numel()
