"""The numbers of the network that is shipped, taken back from its file, so that training can go on."""

from pathlib import Path
from typing import Any, Final

import onnx
import torch
from onnx import numpy_helper
from torch import nn

from tools.ink.chance import Array
from tools.ink.network import SHAPE, Reader

_CAST: Final = "_16"
_SMALL: Final = 1e-5


def shipped(path: Path) -> Reader:
    """Return the network of a file that `export` wrote, without its heat map, which the file lacks.

    What evened out the layers was drawn into their numbers when it was exported; here that is undone with
    layers that change nothing until `evened` gives them what they need to learn.
    """
    graph = onnx.load(path).graph
    held = {one.name.removesuffix(_CAST): numpy_helper.to_array(one) for one in graph.initializer}
    reader = Reader(*SHAPE)
    numbers = reader.state_dict()
    for name, values in held.items():
        if name.startswith("reader."):
            _take(numbers, name.removeprefix("reader."), values)
    for node in graph.node:
        where = [part for part in node.name.split("/")[2:-1] if part]
        name = ".".join(part for at, part in enumerate(where) if not _doubled(where, at))
        if node.op_type == "Conv":
            _take(numbers, f"{name}.weight", held[node.input[1]])
            norm = _norm_of(name)
            _take(numbers, f"{norm}.bias", held[node.input[2]])
            numbers[f"{norm}.weight"].fill_(1)
            numbers[f"{norm}.running_mean"].fill_(0)
            numbers[f"{norm}.running_var"].fill_(1 - _SMALL)
        elif node.op_type == "MatMul" and node.input[1] in held:
            _take(numbers, f"{name}.weight", held[node.input[1]].T)
    reader.load_state_dict(numbers)
    reader.eval()
    return reader


def _doubled(where: list[str], at: int) -> bool:
    """Say whether a part of a name is told again by the next one: `finer/finer.0`."""
    return at + 1 < len(where) and where[at + 1].startswith(where[at] + ".")


def _norm_of(convolution: str) -> str:
    head, _, last = convolution.rpartition(".")
    if last in {"first", "second"}:
        return f"{head}.norm_{1 if last == 'first' else 2}"
    return f"{head}.{int(last) + 1}"


def _take(numbers: dict[str, Array], name: str, values: Any) -> None:  # noqa: ANN401 - arrays of any kind
    assert numbers[name].shape == values.shape, (name, numbers[name].shape, values.shape)
    numbers[name].copy_(torch.from_numpy(values.copy()).float())


def evened(reader: Reader, cells: Array) -> None:
    """Give layers that even out the mean and spread of what comes to them, so that they say the same.

    ``cells`` are prepared ones, as many as a batch has; the network's answers stay as they are.
    """

    def before(norm: nn.BatchNorm2d, given: tuple[Array]) -> None:
        spread, mean = torch.var_mean(given[0].float(), (0, 2, 3), correction=0)
        slope = norm.weight / (norm.running_var + norm.eps).sqrt()
        norm.bias += (mean - norm.running_mean) * slope
        norm.weight.copy_(slope * (spread + norm.eps).sqrt())
        norm.running_mean.copy_(mean)
        norm.running_var.copy_(spread)

    norms = [one for one in reader.modules() if isinstance(one, nn.BatchNorm2d)]
    hooks = [one.register_forward_pre_hook(before) for one in norms]
    with torch.no_grad():
        reader(cells)
    for hook in hooks:
        hook.remove()
