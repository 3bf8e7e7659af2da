"""The picture press: a scene as pixels, drawn like the SVG of the same scene and fast enough for a film."""

import math
from collections.abc import Sequence
from fractions import Fraction
from functools import lru_cache
from importlib.resources import files
from itertools import pairwise
from typing import Final, assert_never

import numpy as np
from PIL import Image, ImageChops, ImageDraw, ImageFont

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import spoken_by
from onewhole.notations.pencil import (
    APART,
    CROSS,
    DASH,
    FAINT,
    GAP,
    GRID,
    HALO,
    HATCH,
    INK,
    LINE,
    PAPER,
    SQUARE,
    UNDER,
    Bar,
    Letters,
    arrowhead,
    cross,
    lettered,
    thickness,
)
from onewhole.pictures.scene import Box, Hop, Look, Piece, Scene, Stroke, Wedge, Words

#: Supersampling: everything is drawn so many times as large and then scaled down (anti-aliasing).
FINE: Final = 2
FULL: Final = 255

_FONT: Final = str(files("fontpkg_lexend") / "files" / "Lexend[wght].ttf")

_Point = tuple[float, float]


def draw(scene: Scene, words: ClassWords, *, size: tuple[int, int], grid: bool = False) -> Image.Image:
    """Draw a scene as large as fits into ``size`` (width, height in pixels), in its middle.

    The image is RGBA and clear where nothing is drawn; ``grid`` puts the squared paper behind the scene. It
    shows what :func:`onewhole.notations.svg.svg` writes.

    >>> strip = Piece("strip", Box(Fraction(5), Fraction(5), Fraction(30), Fraction(10)), Look.FILLED)
    >>> image = draw(Scene(Fraction(40), Fraction(20), (strip,)), ClassWords(), size=(80, 60))
    >>> image.mode, image.size, image.getpixel((0, 0))
    ('RGBA', (80, 60), (43, 43, 51, 0))
    """
    pen = _Pen(scene, size)
    naming = spoken_by(words).working.scene_words(scene, words)
    for piece in scene.pieces:
        _piece(pen, piece, naming)
    ink, cover = pen.ink.reduce(FINE), pen.cover.reduce(FINE)
    image = Image.new("RGB", size, INK)
    behind = _squares(scene.width, scene.height, size) if grid else None
    if behind:
        image.paste(behind, mask=behind)
    image.paste(PAPER, mask=cover)
    image.paste(INK, mask=ink)
    shown = ImageChops.lighter(ink, cover)
    image.putalpha(ImageChops.lighter(shown, behind.getchannel("A")) if behind else shown)
    return image


class _Pen:
    """Two masks at FINE times the size: one of ink, one of paper that hides what is behind it."""

    def __init__(self, scene: Scene, size: tuple[int, int]) -> None:
        fine = (size[0] * FINE, size[1] * FINE)
        self.scale = min(fine[0] / float(scene.width), fine[1] / float(scene.height))
        self.left = (fine[0] - self.scale * float(scene.width)) / 2
        self.top = (fine[1] - self.scale * float(scene.height)) / 2
        self.ink = Image.new("L", fine)
        self.cover = Image.new("L", fine)
        self.on_ink = ImageDraw.Draw(self.ink)
        self.on_cover = ImageDraw.Draw(self.cover)

    def at(self, x: Fraction, y: Fraction) -> _Point:
        """The place of a point of the scene on the masks, in pixels."""
        return self.left + float(x) * self.scale, self.top + float(y) * self.scale

    def px(self, length: Fraction) -> float:
        """A length of the scene in pixels of the masks."""
        return float(length) * self.scale

    def thick(self, width: Fraction) -> int:
        """The thickness of a line in whole pixels, one at least."""
        return max(1, round(self.px(width)))

    def line(self, points: Sequence[_Point], width: Fraction, *, dashed: bool = False) -> None:
        """A pencil line through points; only one that is not dashed has round ends."""
        thick = self.thick(width)
        if dashed:
            for dash in _dashes(points, self.px(DASH), self.px(GAP)):
                self.on_ink.line(dash, fill=FULL, width=thick)
            return
        self.on_ink.line(points, fill=FULL, width=thick, joint="curve")
        for end in (points[0], points[-1]):
            _dot(self.on_ink, end, thick, FULL)

    def clear(self, points: Sequence[_Point], width: Fraction) -> None:
        """A line of clean paper over everything."""
        thick = self.thick(width)
        for sheet, fill in ((self.on_ink, 0), (self.on_cover, FULL)):
            sheet.line(points, fill=fill, width=thick)
            for end in points:
                _dot(sheet, end, thick, fill)


def _dot(sheet: ImageDraw.ImageDraw, place: _Point, thick: int, fill: int) -> None:
    if thick > 2:
        half = (thick - 1) / 2
        x, y = place
        sheet.ellipse((x - half, y - half, x + half, y + half), fill=fill)


def _dashes(points: Sequence[_Point], dash: float, gap: float) -> list[tuple[_Point, _Point]]:
    """Cut a line through points into dashes, counted along it from its start."""
    found = []
    done = 0.0
    for (x, y), (to_x, to_y) in pairwise(points):
        length = math.hypot(to_x - x, to_y - y)
        if not length:
            continue
        over = math.floor(done / (dash + gap)) * (dash + gap)
        while over < done + length:
            low, high = max(over - done, 0.0), min(over + dash - done, length)
            if low < high:
                a, b = low / length, high / length
                found.append(
                    ((x + (to_x - x) * a, y + (to_y - y) * a), (x + (to_x - x) * b, y + (to_y - y) * b))
                )
            over += dash + gap
        done += length
    return found


def _piece(pen: _Pen, piece: Piece, words: ClassWords) -> None:
    dashed = piece.look is Look.DOTTED
    match piece.shape:
        case Box() as box:
            _box(pen, box, piece.look)
        case Wedge() as wedge:
            _wedge(pen, wedge, piece.look)
        case Stroke(x, y, to_x, to_y):
            pen.line([pen.at(x, y), pen.at(to_x, to_y)], thickness(piece.look), dashed=dashed)
        case Hop() as hop:
            _hop(pen, hop, piece.look)
        case Words() as written:
            for part in lettered(written, words):
                _written(pen, part)
        case _:
            assert_never(piece.shape)
    if piece.look is Look.STRUCK:
        lines = [(pen.at(x, y), pen.at(to_x, to_y)) for x, y, to_x, to_y in cross(piece.shape)]
        for line in () if isinstance(piece.shape, Words) else lines:
            pen.clear(line, UNDER)
        for line in lines:
            pen.line(line, CROSS)


def _box(pen: _Pen, box: Box, look: Look) -> None:
    left, top = pen.at(box.x, box.y)
    right, bottom = pen.at(box.x + box.width, box.y + box.height)
    if look is Look.DOTTED:
        corners = [(left, top), (right, top), (right, bottom), (left, bottom), (left, top)]
        pen.line(corners, LINE, dashed=True)
        return
    inner = (round(left), round(top), round(right), round(bottom))
    if inner[2] > inner[0] and inner[3] > inner[1]:
        pen.on_cover.rectangle(inner, fill=FULL)
        if look is Look.PLAIN:
            pen.on_ink.rectangle(inner, fill=0)
        else:
            middle, tile = _hatching(pen.scale, max(pen.ink.size))
            width, height = inner[2] - inner[0], inner[3] - inner[1]
            pen.ink.paste(tile.crop((middle, middle, middle + width, middle + height)), inner[:2])
    thick = pen.thick(LINE)
    out = thick / 2
    edge = (round(left - out), round(top - out), round(right + out) - 1, round(bottom + out) - 1)
    if edge[2] >= edge[0] and edge[3] >= edge[1]:
        pen.on_ink.rectangle(edge, outline=FULL, width=thick)


def _wedge(pen: _Pen, wedge: Wedge, look: Look) -> None:
    if look is Look.DOTTED:
        steps = 8 + math.ceil(pen.px(wedge.radius) * float(wedge.sweep))
        pen.line(_rim(pen, wedge, steps), LINE, dashed=True)
        return
    x, y = pen.at(wedge.x, wedge.y)
    radius, half = pen.px(wedge.radius), pen.thick(LINE) / 2
    start = 360 * float(wedge.start) - 90
    end = start + 360 * float(wedge.sweep)
    inner, outer = _round(x, y, radius), _round(x, y, radius + half)
    pen.on_cover.pieslice(inner, start, end, fill=FULL)
    if look is Look.PLAIN:
        pen.on_ink.pieslice(inner, start, end, fill=0)
    else:
        middle, tile = _hatching(pen.scale, max(pen.ink.size))
        left, top, width, height = inner[0], inner[1], inner[2] - inner[0] + 1, inner[3] - inner[1] + 1
        mask = Image.new("1", (width, height))
        ImageDraw.Draw(mask).pieslice((0, 0, width - 1, height - 1), start, end, fill=1)
        corner = (middle + left - round(x), middle + top - round(y))
        around = (*corner, corner[0] + width, corner[1] + height)
        pen.ink.paste(tile.crop(around), (left, top), mask)
    pen.on_ink.arc(outer, start, end, fill=FULL, width=pen.thick(LINE))
    if wedge.sweep < 1:
        centre, begin, last, _ = _rim(pen, wedge, 1)
        pen.line([begin, centre, last], LINE)


def _round(x: float, y: float, radius: float) -> tuple[int, int, int, int]:
    """The box round a circle, for Pillow, which draws on its right and bottom edge too."""
    return round(x - radius), round(y - radius), round(x + radius) - 1, round(y + radius) - 1


def _rim(pen: _Pen, wedge: Wedge, steps: int) -> list[_Point]:
    """Points of a wedge's outline, the arc in so many steps; a whole turn has no line to its centre."""
    x, y = pen.at(wedge.x, wedge.y)
    radius, start, sweep = pen.px(wedge.radius), float(wedge.start), float(wedge.sweep)
    angles = [math.tau * (start + sweep * step / steps) for step in range(steps + 1)]
    arc = [(x + radius * math.sin(angle), y - radius * math.cos(angle)) for angle in angles]
    return arc if sweep >= 1 else [(x, y), *arc, (x, y)]


def _hop(pen: _Pen, hop: Hop, look: Look) -> None:
    """A hop, drawn finer still and then laid over the ink: Pillow puts every corner on a whole pixel."""
    thick, finer = pen.px(thickness(look)), 4
    (x, y), (to_x, _) = pen.at(hop.x, hop.y), pen.at(hop.to_x, hop.y)
    height, reach = pen.px(hop.height), math.ceil(3 * thick) + 2
    left, top = math.floor(min(x, to_x)) - reach, math.floor(y - height) - reach
    size = math.ceil(abs(to_x - x)) + 2 * reach, math.ceil(height) + 2 * reach
    large = Image.new("L", (size[0] * finer, size[1] * finer))
    sheet = ImageDraw.Draw(large)
    steps = max(8, math.ceil((abs(to_x - x) + 2 * height) / 8))
    shares = [step / steps for step in range(steps + 1)]
    points = [
        ((x + (to_x - x) * share - left) * finer, (y - 4 * height * share * (1 - share) - top) * finer)
        for share in shares
    ]
    width = max(1, round(thick * finer))
    if look is Look.DOTTED:
        for dash in _dashes(points, pen.px(DASH) * finer, pen.px(GAP) * finer):
            sheet.line(dash, fill=FULL, width=width)
    else:
        sheet.line(points, fill=FULL, width=width, joint="curve")
        _dot(sheet, points[0], width, FULL)
    corners = [pen.at(*corner) for corner in arrowhead(hop)]
    sheet.polygon([((at_x - left) * finer, (at_y - top) * finer) for at_x, at_y in corners], fill=FULL)
    small = large.reduce(finer)
    pen.ink.paste(FULL, (left, top), small)


def _written(pen: _Pen, part: Letters | Bar) -> None:
    match part:
        case Bar(x, to_x, y, thick):
            pen.line([pen.at(x, y), pen.at(to_x, y)], thick)
        case Letters(x, y, size, text):
            font = _font(round(pen.px(size) * 4))
            place, halo = pen.at(x, y), pen.thick(HALO)
            pen.on_ink.text(place, text, fill=0, font=font, anchor="ms", stroke_width=halo)
            pen.on_cover.text(place, text, fill=FULL, font=font, anchor="ms", stroke_width=halo)
            pen.on_ink.text(place, text, fill=FULL, font=font, anchor="ms")
        case _:
            assert_never(part)


@lru_cache(maxsize=64)
def _font(quarters: int) -> ImageFont.FreeTypeFont:
    """The font at a size in quarter pixels."""
    return ImageFont.truetype(_FONT, max(quarters / 4, 1))


@lru_cache(maxsize=4)
def _hatching(scale: float, reach: int) -> tuple[int, Image.Image]:
    """The hatching of the ink mask, and its middle: one line goes through (middle, middle)."""
    apart, width = float(APART) * scale, float(HATCH) * scale * math.sqrt(2)
    side = 2 * reach
    away = (np.arange(2 * side) - side) % apart  # across plus down, from the line before
    away = np.minimum(away, apart - away)
    inked = np.clip((width + 1) / 2 - away, 0, 1) * FULL
    rows = np.lib.stride_tricks.sliding_window_view(inked.round().astype(np.uint8), side)[:side]
    tile = Image.fromarray(np.ascontiguousarray(rows))
    return reach, tile


@lru_cache(maxsize=4)
def _squares(width: Fraction, height: Fraction, size: tuple[int, int]) -> Image.Image:
    """Squared paper under a scene of a width and height, RGBA."""
    pen = _Pen(Scene(width, height, ()), size)
    sheet = Image.new("RGB", pen.ink.size, PAPER)
    on_sheet = ImageDraw.Draw(sheet)
    left, top = pen.at(Fraction(0), Fraction(0))
    right, bottom = pen.at(width, height)
    pen.on_cover.rectangle((round(left), round(top), round(right) - 1, round(bottom) - 1), fill=FULL)
    thick = pen.thick(FAINT)
    for at in range(int(width / SQUARE) + 1):
        x = pen.at(at * SQUARE, Fraction(0))[0]
        on_sheet.line((x, top, x, bottom), fill=GRID, width=thick)
    for at in range(int(height / SQUARE) + 1):
        y = pen.at(Fraction(0), at * SQUARE)[1]
        on_sheet.line((left, y, right, y), fill=GRID, width=thick)
    sheet.putalpha(pen.cover)
    return sheet.reduce(FINE)
