"""How high digits stand on a phone, measured on the pixels of what the film shows."""

from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from onewhole.languages.class_words import ClassWords
from onewhole.notations.folding import Row
from onewhole.number.quantity import Quantity
from onewhole.pictures.digits import least_digit
from onewhole.pictures.scene import Scene, Words
from onewhole.presses.drawing import draw
from onewhole.presses.sprites import Sprite
from onewhole.statements.expression import Over
from onewhole.walkthroughs.cue import Place, Write

Ink = NDArray[np.bool_]

#: Ink of this strength counts; the bar of a fraction is flatter than this share of the digits beside it.
STRONG, FLAT = 96, 0.4
#: Above and below a bar stand digits of one size, unlike the dot of an i above its stem and an underline.
ALIKE = 1.2


def runs(marks: object) -> Iterator[tuple[int, int]]:
    """Where ink begins and ends along one direction."""
    edges = np.flatnonzero(np.diff(np.concatenate(([0], np.asarray(marks, dtype=np.int8), [0]))))
    yield from zip(edges[::2].tolist(), edges[1::2].tolist(), strict=True)


def glyphs(ink: Ink) -> list[tuple[int, int]]:
    """Of every sign or fraction from left to right: its height, and its smaller part's if it is stacked."""
    found = []
    for left, right in runs(ink.any(axis=0)):
        parts = [end - start for start, end in runs(ink[:, left:right].any(axis=1))]
        rows = np.flatnonzero(ink[:, left:right].any(axis=1))
        whole = int(rows.max() - rows.min() + 1)
        digits = [part for part in parts if part > FLAT * max(parts)]
        stacked = len(parts) == 3 and len(digits) == 2 and parts[1] < min(digits) > max(digits) / ALIKE
        found.append((whole, min(digits) if stacked else 0))
    return found


def line_digit(write: Write, sprite: Sprite) -> int:
    """The height of the smallest digit of a written line, in pixels of the film.

    In a row with fractions it is a part of one of them; else all digits are as high as the highest sign. A
    label begins with a digit.
    """
    ink = sprite.pixels[..., 3] > STRONG
    place, rows = write.place, write.rows
    assert place is not None
    ends = [place.y + place.height * at // len(rows) - sprite.y for at in range(1, len(rows))]
    bands = np.split(ink, [max(end, 0) for end in ends])
    numbered = [has_digits(bits) for bits in rows] or [True]
    found = [glyphs(band) for band, wanted in zip(bands, numbered, strict=True) if wanted]
    smallest = min(min([part for _, part in row if part] or [max(high for high, _ in row)]) for row in found)
    return min(smallest, found[0][0][0]) if write.label else smallest


def has_digits(bits: Row) -> bool:
    """Whether a number stands in a row."""
    return any(
        any(sign.isdigit() for sign in bit) if isinstance(bit, str) else isinstance(bit, Quantity | Over)
        for bit in bits
    )


def picture_digit(scene: Scene, place: Place, words: ClassWords) -> int | None:
    """The height of the smallest digit of a picture in its place, in pixels; None without words."""
    least = least_digit(scene)
    if least is None:
        return None
    written = [piece for piece in scene.pieces if isinstance(piece.shape, Words)]
    alone = [Scene(scene.width, scene.height, (piece,)) for piece in written]
    smallest = next(one for one in alone if least_digit(one) == least)
    image = draw(smallest, words, size=(place.width, place.height))
    found = glyphs(np.asarray(image.getchannel("A")) > STRONG)
    stacked = [part for _, part in found if part]
    return min(stacked) if stacked else found[0][0]
