"""The network that reads a cell: a grey picture in, the likeliest readings out.

What it was trained on, what it is worth and how it is made again is told in ``docs/reading-model.md``.
"""

from collections.abc import Sequence
from functools import cache
from importlib.resources import files
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from onewhole.errors import Fault
from onewhole.marking.paper.ink_reading import MOST_READINGS, SURE, InkReading
from onewhole.presses.paper.closer import FINE, closer, written
from onewhole.presses.paper.ink_text import NOTHING, SLOTS, UNITS, Slots

#: A cell: rows and columns of grey, 255 is white; four places a millimetre.
HIGH: Final = 96
WIDE: Final = 240
#: One row of the network's answer: digit slots, minus, unit, kind of cell (all log-likelihoods), struck.
_DIGITS: Final = SLOTS * (NOTHING + 1)
_SIGN: Final = _DIGITS
_UNIT: Final = _SIGN + 2
_KIND: Final = _UNIT + len(UNITS)
_STRUCK: Final = _KIND + 3
_EMPTY, _ANSWER, _NOT = range(3)
#: So many ways to fill the slots are followed, and so many values of each slot.
_FOLLOWED: Final = 24
_EACH: Final = 4
#: A value of a slot that is so much less likely than the best (as logarithm) is not followed.
_HOPELESS: Final = 14

#: A second look is taken at what is so surely an answer, where its text is in doubt by more than this.
_AN_ANSWER: Final = 0.9
_CLEAR: Final = 0.002
#: How much each look counts, in logarithms; together more than one, as far as two say more than one. The sum
#: was set on cells that tune; how it is divided is our own.
_FIRST: Final = 0.46
_SECOND: Final = 0.69

Grey = NDArray[np.uint8]
Told = NDArray[np.float32]


def read_ink(crops: Sequence[Grey], finer: Sequence[Grey | None] = ()) -> tuple[InkReading, ...]:
    """Read cells, each 96 rows of 240 grey places (uint8, 255 is white).

    ``finer`` are the same cells with twice as many rows and columns, where there are such: an answer that is
    in doubt, and small, is looked at again in them, closely. What is said of a cell does not depend on the
    cells beside it. Raises Fault for a picture of another shape or kind.

    >>> (blank,) = read_ink([np.full((96, 240), 250, np.uint8)])
    >>> blank.empty > 900_000
    True
    """
    pairs = zip(crops, finer or (None,) * len(crops), strict=True)
    return tuple(reading_of(_told_closely(*pair)) for pair in pairs)


def _told_closely(crop: Grey, finer: Grey | None) -> Told:
    """Return what the network says of a cell, and of its finer picture where that is worth a look."""
    told = _told(crop)
    if finer is None:
        return told
    if finer.shape != (HIGH * FINE, WIDE * FINE) or finer.dtype != np.uint8:
        msg = f"a finer cell is {HIGH * FINE} x {WIDE * FINE} of uint8, not {finer.shape} of {finer.dtype}"
        raise Fault(msg)
    part = written(crop) if looked_at_again(told) else None
    return told if part is None else of_both(told, _told(closer(finer, part)))


def looked_at_again(told: Told) -> bool:
    """Say whether one row of the network tells of an answer that is in doubt."""
    kind = np.exp(told[_KIND:_STRUCK])
    sure = told[:_DIGITS].reshape(SLOTS, -1).max(1).sum() + told[_SIGN:_UNIT].max() + told[_UNIT:_KIND].max()
    return bool(kind[_ANSWER] > _AN_ANSWER and np.exp(sure) * kind[_ANSWER] < 1 - _CLEAR)


def of_both(first: Told, second: Told) -> Told:
    """Return the row of two looks at a cell: the kind is that of the first, signs are what both say."""
    told = _FIRST * first + _SECOND * second
    for part in (told[:_DIGITS].reshape(SLOTS, -1), told[_SIGN:_UNIT], told[_UNIT:_KIND]):
        np.subtract(part, np.log(np.exp(part).sum(-1, keepdims=True)), out=part)
    told[_KIND:_STRUCK] = first[_KIND:_STRUCK]
    told[_STRUCK] = max(first[_STRUCK], second[_STRUCK])
    return told


@cache
def _network() -> cv2.dnn.Net:
    """Load the network; the engine is named: OpenCV's older one cannot run it."""
    held = np.frombuffer(files(__package__).joinpath("ink.onnx").read_bytes(), np.uint8)
    return cv2.dnn.readNetFromONNX(held, cv2.dnn.ENGINE_NEW)


def _told(crop: Grey) -> Told:
    if crop.shape != (HIGH, WIDE) or crop.dtype != np.uint8:
        msg = f"a cell is {HIGH} x {WIDE} of uint8, not {crop.shape} of {crop.dtype}"
        raise Fault(msg)
    network = _network()
    network.setInput(_prepared(crop))
    told: Told = network.forward()[0].copy()
    return told


def _prepared(crop: Grey) -> Told:
    """Return how much darker than its paper each place is; paper is the middle of every fourth place."""
    paper = np.sort(crop[::4, ::4], axis=None)[720]
    dark: Told = (np.float32(paper) - crop.astype(np.float32)) / np.float32(96)
    return np.clip(dark, -1, 2.5)[None, None]


def reading_of(told: Told) -> InkReading:
    """Return the reading that one row of the network tells."""
    kind = np.exp(told[_KIND:_STRUCK].astype(np.float64))
    ways = _ways(told)
    parts: dict[str, float] = {}
    for slots, likely in ways:
        if text := slots.text:
            parts[text] = parts.get(text, 0.0) + likely * kind[_ANSWER]
    best = sorted(parts.items(), key=lambda one: -one[1])[:MOST_READINGS]
    readings = tuple((text, part) for text, likely in best if (part := int(likely * SURE * _ROOM)) > 0)
    first = next((slots for slots, _ in ways if readings and slots.text == readings[0][0]), None)
    return InkReading(
        readings,
        empty=int(kind[_EMPTY] * SURE * _ROOM),
        not_an_answer=int(kind[_NOT] * SURE * _ROOM),
        struck=int(np.clip(told[_STRUCK], 0, 1) * SURE),
        decimal=first is not None and "." in first.text,
        unit=first is not None and first.unit != "",
    )


#: Likelihoods are rounded down, and a little more, so that all together are never more than certain.
_ROOM: Final = 1 - 1e-6


def _ways(told: Told) -> list[tuple[Slots, float]]:
    """Return the likeliest ways to fill all slots together, best first, each with its likelihood."""
    slots = [told[_SIGN:_UNIT], told[_UNIT:_KIND], *told[:_DIGITS].reshape(SLOTS, NOTHING + 1)]
    found: list[tuple[float, tuple[int, ...]]] = [(0.0, ())]
    for slot in slots:
        order = np.argsort(-slot, kind="stable")[:_EACH]
        values = [(float(slot[at]), int(at)) for at in order if slot[at] > slot[order[0]] - _HOPELESS]
        longer = [(likely + more, (*way, value)) for likely, way in found for more, value in values]
        found = sorted(longer, key=lambda one: -one[0])[:_FOLLOWED]
    return [(Slots(way[0] == 1, way[2:], UNITS[way[1]]), float(np.exp(likely))) for likely, way in found]
