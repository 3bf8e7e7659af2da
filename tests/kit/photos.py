"""A simulated photographer: pages of paper as a phone, a scanner or a copier sees them.

Everything follows from a seed. A page is a grey array of a known number of picture elements a millimetre. It
lies bent on a table, a camera looks at it from above, the light is uneven, and a phone makes a file of it.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from io import BytesIO
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image

Grey = NDArray[np.uint8]
Floats = NDArray[np.float32]
Wide = NDArray[np.float64]
Places = tuple[Wide, Wide]
"""How far across and down, of many places."""

#: How far a phone is held over a page, in millimetres.
HELD: Final = 420.0
#: The bent paper is worked out at every so many picture elements.
_COARSE: Final = 16


@dataclass(frozen=True, slots=True)
class Shot:
    """How a picture is taken. ``longest`` are the picture elements of its longer side.

    ``turn`` and ``tilt`` are degrees; ``curl`` is how far the paper bends up, in millimetres; ``light`` how
    much darker the darkest corner is, ``shadow`` how dark a hand's shadow, from 0 to 1; ``blur`` is in
    picture elements, ``noise`` in grey levels; ``quality`` is that of JPEG. ``table`` is how light the table
    is. ``glare`` is a lamp in a clear folder over the paper: where it is across and down, and how large, as
    shares of the picture; the whole folder takes a quarter of the contrast.
    """

    longest: int = 3000
    turn: float = 0.0
    tilt: tuple[float, float] = (0.0, 0.0)
    curl: float = 0.0
    light: float = 0.0
    shadow: float = 0.0
    blur: float = 0.0
    noise: float = 0.0
    quality: int = 85
    margin: float = 0.08
    paper: int = 235
    table: int = 120
    glare: tuple[float, float, float] | None = None


#: The kinds of pictures of the table, from easy to hard.
EASY: Final = Shot(tilt=(3, -4), turn=2, light=0.15, blur=0.6, noise=2)
KINDS: Final = {
    "scan": Shot(longest=3300, turn=0.8, margin=0.01, paper=250, quality=90, noise=1),
    "photo": EASY,
    "tilted": replace(EASY, tilt=(16, 12), turn=-9),
    "curled": replace(EASY, curl=3.0),
    "shadow": replace(EASY, shadow=0.55, light=0.35),
    "blurred": replace(EASY, longest=2400, blur=1.8, noise=5, quality=60),
    "small": replace(EASY, longest=1300, noise=4, quality=70),
    "upside down": replace(EASY, turn=184),
}


def photographed(page: Grey, per_mm: float, shot: Shot, seed: int) -> Grey:
    """Return what is seen of one page that fills most of a picture."""
    high, wide = (round(side / per_mm) for side in page.shape)
    sides = _sides(shot.longest, wide, high, shot.turn)
    return table([page], per_mm, [(0.5, 0.5)], shot, seed, sides, over=1.0)


def table(
    pages: Sequence[Grey],
    per_mm: float,
    places: Sequence[tuple[float, float]],
    shot: Shot,
    seed: int,
    sides: tuple[int, int],
    *,
    over: float,
) -> Grey:
    """Return what is seen of several papers on one table.

    ``places`` are the middles of the papers as shares of the picture's width and height, ``sides`` are the
    picture's width and height, ``over`` is how many pages would stand side by side in it.
    """
    chance = np.random.default_rng(seed)
    wide, high = sides
    seen = _wood(chance, wide, high) + (shot.table - 120)
    for page, (x, y) in zip(pages, places, strict=True):
        turned = replace(shot, turn=shot.turn + float(chance.uniform(-2, 2)))
        _lay(
            seen, page, per_mm, turned, (x * wide, y * high), _size(sides, page, per_mm, turned, over), chance
        )
    return _developed(_lit(seen, shot, chance), shot, chance)


def jpeg(seen: Grey, quality: int = 85) -> bytes:
    """Return a picture as a phone's file."""
    file = BytesIO()
    Image.fromarray(seen).save(file, "JPEG", quality=quality)
    return file.getvalue()


def scanned(pages: Sequence[Grey], *, bitonal: bool = False) -> bytes:
    """Return a scanner's PDF of pages; ``bitonal`` where a copier made them black and white."""
    pictures = [
        Image.fromarray(np.where(page < 140, 0, 255).astype(np.uint8) if bitonal else page) for page in pages
    ]
    if bitonal:
        pictures = [one.convert("1") for one in pictures]
    file = BytesIO()
    pictures[0].save(file, "PDF", save_all=True, append_images=pictures[1:], resolution=300)
    return file.getvalue()


def _sides(longest: int, wide: float, high: float, turn: float) -> tuple[int, int]:
    """Return the sides of a picture of 4 to 3, held as the page lies."""
    across = abs(turn) % 180 > 45 and abs(turn) % 180 < 135
    upright = (high >= wide) is not across
    short = longest * 3 // 4
    return (short, longest) if upright else (longest, short)


def _size(sides: tuple[int, int], page: Grey, per_mm: float, shot: Shot, over: float) -> float:
    """Return how many picture elements a millimetre has, so that the page fits with a margin."""
    angle = np.deg2rad(shot.turn)
    high, wide = (side / per_mm for side in page.shape)
    across = abs(wide * np.cos(angle)) + abs(high * np.sin(angle))
    down = abs(wide * np.sin(angle)) + abs(high * np.cos(angle))
    lean = 1 - 0.004 * (abs(shot.tilt[0]) + abs(shot.tilt[1]))
    return float(min(sides[0] / across, sides[1] / down) * (1 - 2 * shot.margin) * lean / over)


def _wood(chance: np.random.Generator, wide: int, high: int) -> Floats:
    """Return a table: streaks of brown along its length."""
    streaks = cv2.GaussianBlur(chance.normal(0, 28, (64, wide // 16 + 1)).astype(np.float32), (0, 0), 1.2)
    found: Floats = (120 + cv2.resize(streaks, (wide, high))).astype(np.float32)
    return found


def _lay(
    seen: Floats,
    page: Grey,
    per_mm: float,
    shot: Shot,
    middle: tuple[float, float],
    size: float,
    chance: np.random.Generator,
) -> None:
    """Put a page on the table where the camera sees it."""
    high, wide = (side / per_mm for side in page.shape)
    rows, columns = seen.shape
    to_page: Wide = np.linalg.inv(_flat(shot, middle, size)).astype(np.float64)
    x, y = np.meshgrid(
        np.arange(0, columns + _COARSE, _COARSE, dtype=np.float64),
        np.arange(0, rows + _COARSE, _COARSE, dtype=np.float64),
    )
    goal = _through(to_page, x, y)
    at = goal
    phase = float(chance.uniform(0, 0.6))
    for _ in range(4 if shot.curl else 0):
        seen_at = _projected(shot, middle, size, at, _bent(at, wide, high, shot.curl, phase))
        off = _through(to_page, *seen_at)
        at = (at[0] + goal[0] - off[0], at[1] + goal[1] - off[1])
    across, down = (
        cv2.resize(((one + side / 2) * per_mm - 0.5).astype(np.float32), None, fx=_COARSE, fy=_COARSE)
        for one, side in zip(at, (wide, high), strict=True)
    )
    # cv2.resize puts the first value in the middle of the first block
    shift = _COARSE // 2
    across, down = (one[shift : shift + rows, shift : shift + columns] for one in (across, down))
    fine = size / per_mm
    grey = page if fine >= 1 else cv2.GaussianBlur(page, (0, 0), 0.45 / fine)
    drawn = cv2.remap(grey, across, down, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE).astype(
        np.float32
    )
    inside = (across >= 0) & (down >= 0) & (across < page.shape[1]) & (down < page.shape[0])
    soft = cv2.GaussianBlur(inside.astype(np.float32), (0, 0), 0.7)
    seen *= 1 - soft
    seen += soft * drawn.astype(np.float32) * (shot.paper / 255)


def _bent(at: Places, wide: float, high: float, curl: float, phase: float) -> Wide:
    """Return how far the paper stands up: a wave across with an edge that rises."""
    along = at[0] / wide + 0.25 * at[1] / high
    found: Wide = curl * (0.5 + 0.5 * np.cos(2 * np.pi * (along + phase)))
    return found


def _projected(
    shot: Shot,
    middle: tuple[float, float],
    size: float,
    at: Places,
    up: Wide,
) -> Places:
    """Return where the camera sees places of the page (millimetres from its middle) that stand up so far."""
    turned = _turned(shot)
    points = np.stack([*at, -up], axis=0)
    x, y, z = np.einsum("ij,j...->i...", turned, points)
    far = HELD / (HELD + z)
    return middle[0] + size * x * far, middle[1] + size * y * far


def _turned(shot: Shot) -> Wide:
    turn, lean, roll = (np.deg2rad(angle) for angle in (shot.turn, *shot.tilt))
    about_z = np.array([[np.cos(turn), -np.sin(turn), 0], [np.sin(turn), np.cos(turn), 0], [0, 0, 1]])
    about_x = np.array([[1, 0, 0], [0, np.cos(lean), -np.sin(lean)], [0, np.sin(lean), np.cos(lean)]])
    about_y = np.array([[np.cos(roll), 0, np.sin(roll)], [0, 1, 0], [-np.sin(roll), 0, np.cos(roll)]])
    found: Wide = about_x @ about_y @ about_z
    return found


def _flat(shot: Shot, middle: tuple[float, float], size: float) -> Wide:
    """Return how a flat page is seen: millimetres from its middle to picture elements."""
    turned = _turned(shot)
    lens = np.array([[size * HELD, 0, middle[0]], [0, size * HELD, middle[1]], [0, 0, 1]])
    move = np.column_stack([turned[:, 0], turned[:, 1], [0, 0, HELD]])
    found: Wide = lens @ move
    return found


def _through(matrix: Wide, x: Wide, y: Wide) -> Places:
    u, v, w = np.einsum("ij,j...->i...", matrix, np.stack([x, y, np.ones_like(x)], axis=0))
    return u / w, v / w


def _lit(seen: Floats, shot: Shot, chance: np.random.Generator) -> Floats:
    """Return the table in light that falls from one side, with the shadow of a hand."""
    high, wide = seen.shape
    y, x = np.mgrid[0:1:65j, 0:1:65j].astype(np.float32)
    angle = chance.uniform(0, 2 * np.pi)
    light = 1 - shot.light * np.clip(0.5 + (x - 0.5) * np.cos(angle) + (y - 0.5) * np.sin(angle), 0, 1)
    if shot.shadow:
        hand = np.zeros((65, 65), np.float32)
        middle = (int(chance.uniform(15, 50)), int(chance.uniform(15, 50)))
        cv2.ellipse(hand, middle, (26, 11), float(chance.uniform(0, 180)), 0, 360, 1.0, -1)
        light *= 1 - shot.shadow * cv2.GaussianBlur(hand, (0, 0), 1.5)
    found: Floats = (seen * cv2.resize(light.astype(np.float32), (wide, high))).astype(np.float32)
    if shot.glare:
        across, down, size = shot.glare
        lamp = 500 * np.exp(-1.5 * (((x - across) / size) ** 2 + ((y - down) / size) ** 2))
        found = 0.75 * found + 64 + cv2.resize(lamp.astype(np.float32), (wide, high))
    return found


def _developed(seen: Floats, shot: Shot, chance: np.random.Generator) -> Grey:
    """Return what the camera makes of the light: blurred, with noise, in whole numbers."""
    if shot.blur:
        seen = cv2.GaussianBlur(seen, (0, 0), shot.blur).astype(np.float32)
    if shot.noise:
        seen = seen + shot.noise * chance.standard_normal(seen.shape, dtype=np.float32)
    return np.clip(np.rint(seen), 0, 255).astype(np.uint8)
