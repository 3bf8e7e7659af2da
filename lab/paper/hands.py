"""Hands that write answers on a printed page: real digits of other people, and handwriting fonts."""

import gzip
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from random import Random
from typing import Final, Protocol

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw, ImageFont

Grey = NDArray[np.uint8]
Ink = NDArray[np.float32]
"""How dark a sign is at each place, from 0 to 1."""

#: The real digits that nothing was trained on, and what they are: the idx format.
DIGITS: Final = "t10k-images-idx3-ubyte.gz", "t10k-labels-idx1-ubyte.gz"
_HEAD: Final = 16, 8
#: Signs are kept at this height and made smaller where they are written.
_TALL: Final = 96


class Hand(Protocol):
    """One person's way to write: gives a sign as ink, of any size, cut to its edges."""

    def sign(self, sign: str) -> Ink:
        """Return a digit."""
        ...


@dataclass(frozen=True, slots=True)
class RealHand:
    """Writes each digit as one of a few real ones."""

    folder: Path
    chance: Random
    own: dict[str, list[int]] = field(default_factory=dict)

    def sign(self, sign: str) -> Ink:
        """Return one of this hand's three samples of a digit."""
        pictures, places = _real(self.folder)
        if sign not in self.own:
            self.own[sign] = self.chance.choices(places[int(sign)], k=3)
        small = pictures[self.chance.choice(self.own[sign])].astype(np.float32) / 255
        large = cv2.resize(small, None, fx=8, fy=8, interpolation=cv2.INTER_CUBIC)
        return _cut(np.asarray(1 / (1 + np.exp(-9 * (large - 0.45))), dtype=np.float32))


@dataclass(frozen=True, slots=True)
class FontHand:
    """Writes with a handwriting font, each sign a little turned."""

    font: Path
    chance: Random

    def sign(self, sign: str) -> Ink:
        """Return a digit of the font."""
        drawn = Image.new("L", (4 * _TALL, 4 * _TALL), 0)
        letters = ImageFont.truetype(str(self.font), 2 * _TALL)
        ImageDraw.Draw(drawn).text((2 * _TALL, 2 * _TALL), sign, 255, letters, anchor="mm")
        turned = drawn.rotate(self.chance.uniform(-5, 5), Image.Resampling.BICUBIC)
        return _cut((np.asarray(turned, dtype=np.float32) / 255).astype(np.float32))


@dataclass(frozen=True, slots=True)
class Pen:
    """How a hand writes here: ``tall`` is a digit's height in millimetres, ``dark`` its ink, 0 to 1."""

    hand: Hand
    chance: Random
    per_mm: int
    tall: float = 8.5
    dark: float = 0.75

    def write(
        self, place: Grey, text: str, *, windows: tuple[tuple[float, float, float, float], ...] = ()
    ) -> None:
        """Write an answer into its place; ``windows`` are the boxes of whole, over and under, in millimetres.

        Without them it stands over the line, wherever the hand begins.
        """
        whole, over, under = parts(text)
        if windows:
            for run, box in zip((whole, over, under), windows, strict=True):
                self._run(place, run, box)
            return
        high, wide = (side / self.per_mm for side in place.shape)
        small = self.tall * self.chance.uniform(0.75, 0.95)
        width = 0.62 * self.tall * len(whole) + (2 + 0.62 * small * max(len(over), len(under)) if over else 0)
        left = self.chance.uniform(1.5, max(1.6, wide - width - 4))
        middle = high * 0.42 + self.chance.uniform(-1.2, 1.2)
        if whole:
            ends = left + 0.62 * self.tall * len(whole)
            self._run(place, whole, (left, middle - self.tall / 2, ends, middle + self.tall / 2))
            left = ends + self.chance.uniform(1.0, 2.5)
        if over:
            ends = left + 0.62 * small * max(len(over), len(under)) + 1
            half = 0.5 + self.chance.uniform(0.2, 0.8)
            self._run(place, over, (left, middle - half - small, ends, middle - half))
            self._run(place, under, (left, middle + half, ends, min(high - 0.2, middle + half + small)))
            self._line(place, left - 0.5, ends + 0.5, middle)

    def _run(self, place: Grey, signs: str, box: tuple[float, float, float, float]) -> None:
        """Write signs side by side into a box, no taller than the hand writes."""
        if not signs:
            return
        left, top, right, low = box
        tall = min(self.tall, (low - top) * 0.86) * self.chance.uniform(0.92, 1.0)
        drawn = [self._minus() if sign == "-" else self.hand.sign(sign) for sign in signs]
        wide = [tall * one.shape[1] / one.shape[0] for one in drawn]
        gap = tall * 0.14
        fit = min(1.0, (right - left) * 0.96 / (sum(wide) + gap * (len(wide) - 1)))
        tall, gap = tall * fit, gap * fit
        x = (
            left
            + (right - left - fit * sum(wide) - gap * (len(wide) - 1)) / 2
            + self.chance.uniform(-0.4, 0.4)
        )
        for one, width in zip(drawn, wide, strict=True):
            y = (top + low - tall) / 2 + self.chance.uniform(-0.3, 0.3)
            self._put(place, one, (x, y), (width * fit, tall))
            x += width * fit + gap

    def _minus(self) -> Ink:
        found = np.zeros((_TALL, _TALL // 2), np.float32)
        found[_TALL * 46 // 100 : _TALL * 54 // 100] = 1
        return found

    def _line(self, place: Grey, left: float, right: float, at: float) -> None:
        ink = np.zeros(place.shape, np.uint8)
        ends = [
            (round(x * self.per_mm), round((at + self.chance.uniform(-0.4, 0.4)) * self.per_mm))
            for x in (left, right)
        ]
        cv2.line(ink, ends[0], ends[1], 255, max(2, round(0.6 * self.per_mm)), cv2.LINE_AA)
        self._darken(place, (ink / 255).astype(np.float32), 0, 0)

    def _put(self, place: Grey, ink: Ink, at: tuple[float, float], sides: tuple[float, float]) -> None:
        x, y = at
        size = [max(2, round(side * self.per_mm)) for side in sides]
        made = np.asarray(cv2.resize(ink, size, interpolation=cv2.INTER_AREA), dtype=np.float32)
        self._darken(place, made, round(x * self.per_mm), round(y * self.per_mm))

    def _darken(self, place: Grey, ink: Ink, x: int, y: int) -> None:
        """Put ink on paper; what leaves the place is lost."""
        high, wide = place.shape
        first_x, first_y = max(0, x), max(0, y)
        last_x, last_y = min(wide, x + ink.shape[1]), min(high, y + ink.shape[0])
        if first_x >= last_x or first_y >= last_y:
            return
        part = ink[first_y - y : last_y - y, first_x - x : last_x - x]
        under = place[first_y:last_y, first_x:last_x]
        under[:] = np.rint(under * (1 - self.dark * part)).astype(np.uint8)


def parts(text: str) -> tuple[str, str, str]:
    """Return the whole, the number over the line and the one under it, as they are typed.

    >>> parts("7 2/6"), parts("11/6"), parts("-3"), parts("")
    (('7', '2', '6'), ('', '11', '6'), ('-3', '', ''), ('', '', ''))
    """
    *wholes, last = text.split(" ") if text else [""]
    over, slash, under = last.partition("/")
    return (" ".join(wholes), over, under) if slash else (text, "", "")


def can_be_written(text: str) -> bool:
    """Say whether a hand here knows every sign of a text.

    >>> can_be_written("7 2/6"), can_be_written("2 ft")
    (True, False)
    """
    return set(text) <= set("0123456789 /-") and all(" " not in part for part in parts(text))


@cache
def _real(folder: Path) -> tuple[NDArray[np.uint8], dict[int, list[int]]]:
    found = []
    for name, head in zip(DIGITS, _HEAD, strict=True):
        with gzip.open(folder / name) as file:
            found.append(np.frombuffer(file.read()[head:], np.uint8))
    pictures, labels = found
    places = {digit: [int(at) for at in np.flatnonzero(labels == digit)] for digit in range(10)}
    return pictures.reshape(-1, 28, 28), places


def _cut(ink: Ink) -> Ink:
    """Return a sign without the empty paper round it."""
    rows, columns = np.flatnonzero(ink.max(axis=1) > 0.3), np.flatnonzero(ink.max(axis=0) > 0.3)
    return ink[rows[0] : rows[-1] + 1, columns[0] : columns[-1] + 1]
