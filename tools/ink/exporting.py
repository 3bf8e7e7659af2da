"""The trained network as ONNX: the temperatures inside, its numbers stored in sixteen bits."""

from pathlib import Path

import numpy as np
import onnx
import torch
from onnx import TensorProto, helper, numpy_helper
from torch import nn

from tools.ink.chance import Array
from tools.ink.drawing import HIGH, WIDE
from tools.ink.network import SHAPE, Reader


class Told(nn.Module):
    """The network as the program runs it: log-likelihoods in one row a cell, no heat map."""

    def __init__(self, reader: Reader, heats: tuple[float, ...] = (1.0,) * 5) -> None:
        super().__init__()
        self.reader, self.heats = reader, heats

    def forward(self, x: Array) -> Array:
        """Return the row of each cell: digits, sign, unit, kind (all log-likelihoods), struck (0 to 1)."""
        digits, sign, unit, kind, struck, _ = self.reader(x)
        a, b, c, d, e = self.heats
        parts = [(digits / a).log_softmax(2).flatten(1), (sign / b).log_softmax(1), (unit / c).log_softmax(1)]
        return torch.cat([*parts, (kind / d).log_softmax(1), (struck / e).sigmoid()[:, None]], 1)


def export(reader: Reader, heats: tuple[float, ...], into: Path) -> None:
    """Write the network; its larger arrays are kept in sixteen bits and widened when it is loaded."""
    told = Told(reader.eval().cpu().float(), heats).eval()
    torch.onnx.export(
        told,
        (torch.zeros(1, 1, HIGH, WIDE),),
        str(into),
        input_names=["cells"],
        output_names=["told"],
        dynamic_axes={"cells": {0: "n"}, "told": {0: "n"}},
        opset_version=17,
        dynamo=False,
    )
    onnx.save(_halved(onnx.load(into)), into)


def _halved(model: onnx.ModelProto) -> onnx.ModelProto:
    graph = model.graph
    casts: list[onnx.NodeProto] = []
    kept = [_short(one, casts) for one in graph.initializer]
    del graph.initializer[:]
    graph.initializer.extend(kept)
    nodes = [*casts, *graph.node]
    del graph.node[:]
    graph.node.extend(nodes)
    onnx.checker.check_model(model)
    return model


def _short(array: TensorProto, casts: list[onnx.NodeProto]) -> TensorProto:
    values = numpy_helper.to_array(array)
    if values.dtype != np.float32 or values.size < 512:
        return array
    casts.append(helper.make_node("Cast", [f"{array.name}_16"], [array.name], to=TensorProto.FLOAT))
    return numpy_helper.from_array(values.astype(np.float16), f"{array.name}_16")


def export_kept(weights: Path, heats: tuple[float, ...], into: Path) -> None:
    """Export the network whose numbers `train` kept."""
    reader = Reader(*SHAPE)
    reader.take(torch.load(weights, map_location="cpu"))
    export(reader, heats, into)
