"""Ones with a flag and sevens, drawn stroke by stroke: fonts and real digits hold too few kinds of them.

A 1 has a stem that stands, and a flag that falls steeply from its top; a 7 has a roof that lies, and a stem
that leans. Both may have more: a foot, a bar, a serif.
"""

from random import Random
from typing import Final

import numpy as np
from PIL import Image, ImageDraw

from tools.ink.material import SIDE, Grey, Measures, fitted

#: The digits that are drawn, and so many of each.
DRAWN: Final = (1, 7)
EACH: Final = 1500
_TALL: Final = 200
_EDGE: Final = 200
_Line = list[tuple[float, float]]


def drawn_digits(seed: int, each: int = EACH) -> tuple[Grey, Measures]:
    """Return pictures and measures as `glyphs_of` does: first the ones, then the sevens, narrow to wide."""
    chance = Random(seed)
    pictures = np.zeros((2 * each, SIDE, SIDE), np.uint8)
    measures = np.zeros((2 * each, 4), np.float32)
    for run, digit in enumerate((one_of, seven_of)):
        made = [_pictured(digit(chance), chance) for _ in range(each)]
        made.sort(key=lambda one: one[1][0] / one[1][1])
        for at, (picture, (wide, high)) in enumerate(made, run * each):
            pictures[at] = picture
            measures[at] = (wide, high, 1, 0.5)
    return pictures, measures


def one_of(chance: Random) -> list[_Line]:
    """Draw a 1 in heights of a digit: its flag falls by 28 to 70 degrees, some have a foot."""
    lean = chance.gauss(0, 0.04)
    bend = chance.gauss(0, 0.02)
    stem = [(lean, 0.0), (lean / 2 + bend, 0.5), (0.0, 1.0)]
    across = chance.uniform(0.1, 0.62)
    down = min(0.75, across * chance.uniform(0.53, 1.6))
    sag = chance.gauss(0, 0.05)
    flag = [(lean - across, down), (lean - across / 2 + sag, down / 2 + sag), (lean, 0.0)]
    strokes = [flag, stem]
    if chance.random() < 0.4:
        left, right = chance.uniform(0.1, 0.35), chance.uniform(0.1, 0.35)
        tilt = chance.gauss(0, 0.03)
        strokes.append([(-left, 1 + tilt), (0.0, 1.0), (right, 1 - tilt)])
    return strokes


def seven_of(chance: Random) -> list[_Line]:
    """Draw a 7: its roof lies nearly level, its stem leans to the left, some have a bar or a serif."""
    wide = chance.uniform(0.34, 0.75)
    rise = wide * chance.gauss(0.02, 0.09)
    wave = chance.gauss(0, 0.03)
    roof = [(0.0, rise), (wide / 2, rise / 2 + wave), (wide, 0.0)]
    foot = wide - max(0.08, chance.gauss(0.36, 0.14)) if chance.random() < 0.85 else wide - 0.04
    bend = chance.uniform(-0.12, 0.06)
    middle = ((wide + foot) / 2 + bend, 0.5)
    strokes = [roof, [(wide, 0.0), middle, (foot, 1.0)]]
    if chance.random() < 0.4:
        half, tilt = chance.uniform(0.12, 0.3), chance.gauss(0, 0.06)
        x, y = middle[0] - bend / 4, chance.uniform(0.42, 0.6)
        strokes.append([(x - half, y + tilt), (x, y), (x + half, y - tilt)])
    if chance.random() < 0.25:
        strokes.append(
            [(0.0, rise), (chance.gauss(0, 0.02), rise + 0.06), (0.0, rise + chance.uniform(0.08, 0.25))]
        )
    return strokes


def _pictured(strokes: list[_Line], chance: Random) -> tuple[Grey, tuple[int, int]]:
    pen = round(_TALL * chance.uniform(0.07, 0.14))
    picture = Image.new("L", (_TALL + 2 * _EDGE, _TALL + 2 * _EDGE), 0)
    draw = ImageDraw.Draw(picture)
    for a, b, c in strokes:
        for step in range(41):
            t = step / 40
            # a curve from a to c that goes through b half way
            x, y = (
                ((1 - t) * (1 - 2 * t) * p + 4 * t * (1 - t) * q + t * (2 * t - 1) * r) * _TALL + _EDGE
                for p, q, r in zip(a, b, c, strict=True)
            )
            draw.ellipse((x - pen / 2, y - pen / 2, x + pen / 2, y + pen / 2), fill=255)
    return fitted(picture.crop(picture.getbbox()))
