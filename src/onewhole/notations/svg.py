"""SVG: a scene as a drawing that stands by itself, in a browser and on paper, with its words."""

from collections.abc import Iterable, Iterator, Mapping
from fractions import Fraction
from math import lcm
from typing import assert_never
from xml.etree.ElementTree import Element, SubElement, tostring

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
    Line,
    Point,
    arrowhead,
    cross,
    lettered,
    root,
    thickness,
    turned,
)
from onewhole.notations.sentences.text import text_of
from onewhole.pictures.scene import Box, Hop, Look, Piece, Scene, Stroke, Wedge, Words

NAMESPACE = "http://www.w3.org/2000/svg"


def svg(scene: Scene, words: ClassWords, *, grid: bool = True) -> str:
    """Write a scene as one ``svg`` element: width, height and every coordinate in millimetres.

    Coordinates are rounded by :func:`mm` and nowhere else, and a box is written by its own width and height,
    so equal parts are written equal. The element is an image whose title and label are the scene's words
    (in the language of ``words``). It refers to nothing, in the page or outside it,
    so any number of drawings may stand in one page. ``grid`` draws the squares of the paper.

    >>> strip = Piece("strip", Box(Fraction(5), Fraction(5), Fraction(100, 3), Fraction(10)))
    >>> drawn = svg(Scene(Fraction(180), Fraction(20), (strip,)), ClassWords())
    >>> 'viewBox="0 0 180 20"' in drawn, 'width="33.333"' in drawn
    (True, True)
    """
    width, height = mm(scene.width), mm(scene.height)
    label = text_of(spoken_by(words).working.picture(scene, words))
    page = labelled(scene.width, scene.height, label)
    if grid:
        SubElement(page, "rect", {"width": width, "height": height, "fill": PAPER})
        _path(page, _squares(scene), FAINT, color=GRID)
    draw(page, scene, words)
    return tostring(page, encoding="unicode")


def labelled(width: Fraction, height: Fraction, label: str) -> Element:
    """Return an empty image so wide and high in millimetres, with what it shows as its title and label."""
    page = image(width, height, {"aria-label": label})
    SubElement(page, "title").text = label
    return page


def image(width: Fraction, height: Fraction, more: Mapping[str, str]) -> Element:
    """Return an empty image so wide and high in millimetres, with more attributes."""
    size = {"width": f"{mm(width)}mm", "height": f"{mm(height)}mm"}
    return Element(
        "svg", {"xmlns": NAMESPACE, "viewBox": f"0 0 {mm(width)} {mm(height)}", **size, "role": "img", **more}
    )


def draw(into: Element, scene: Scene, words: ClassWords) -> None:
    """Draw the pieces of a scene into an element that is measured in millimetres."""
    naming = spoken_by(words).working.scene_words(scene, words)
    for piece in scene.pieces:
        _draw(into, piece, naming)


def mm(value: Fraction) -> str:
    """Write millimetres with at most three decimals, half a thousandth upwards: the one place that rounds.

    >>> mm(Fraction(25, 6)), mm(Fraction(-1, 8)), mm(Fraction(12))
    ('4.167', '-0.125', '12')
    """
    return _over(value.numerator, value.denominator)


def _over(above: int, below: int) -> str:
    """Write the millimetres of a fraction, which need not be in lowest terms."""
    thousandths = (2000 * above + below) // (2 * below)
    wholes, rest = divmod(abs(thousandths), 1000)
    written = f"{wholes}.{rest:03}".rstrip("0").rstrip(".")
    return f"-{written}" if thousandths < 0 else written


def _draw(page: Element, piece: Piece, words: ClassWords) -> None:
    look = piece.look
    match piece.shape:
        case Box() as box:
            _area(page, piece, box)
        case Wedge() as wedge:
            _area(page, piece, wedge)
        case Stroke(x, y, to_x, to_y):
            _path(page, _lines([(x, y, to_x, to_y)]), thickness(look), dashed=look is Look.DOTTED)
        case Hop(x, y, to_x, height) as hop:
            bend = f"{mm((x + to_x) / 2)} {mm(y - 2 * height)}"
            way = f"M{mm(x)} {mm(y)}Q{bend} {mm(to_x)} {mm(y)}"
            _path(page, way, thickness(look), dashed=look is Look.DOTTED)
            corners = " ".join(f"{mm(x)},{mm(y)}" for x, y in arrowhead(hop))
            SubElement(page, "polygon", {"points": corners, "fill": INK})
        case Words() as written:
            for part in lettered(written, words):
                _written(page, part)
        case _:
            assert_never(piece.shape)
    if look is Look.STRUCK:
        crossed = _lines(cross(piece.shape))
        if not isinstance(piece.shape, Words):  # what was written stays readable
            _path(page, crossed, UNDER, color=PAPER)
        _path(page, crossed, CROSS)


def _area(page: Element, piece: Piece, shape: Box | Wedge) -> None:
    """Paper, hatching and a pencil line round it; a dotted area is room, with nothing in it."""
    match shape:
        case Box(x, y, width, height):
            place = {"x": mm(x), "y": mm(y), "width": mm(width), "height": mm(height)}
            tag, hatching = "rect", _box_hatching(shape)
        case Wedge():
            tag, place, hatching = "path", {"d": _sector(shape)}, _lines(_wedge_hatching(shape))
        case _:
            assert_never(shape)
    if piece.look in {Look.FILLED, Look.STRUCK}:
        SubElement(page, tag, {**place, "fill": PAPER})
        _path(page, hatching, HATCH)
    fill = "none" if piece.look is not Look.PLAIN else PAPER
    SubElement(page, tag, {**place, "fill": fill, **_pencil(LINE, dashed=piece.look is Look.DOTTED)})


def _pencil(thick: Fraction, color: str = INK, *, dashed: bool = False) -> dict[str, str]:
    """How a line is drawn."""
    line = {"stroke": color, "stroke-width": mm(thick), "stroke-linejoin": "round"}
    if dashed:
        return {**line, "stroke-dasharray": f"{mm(DASH)} {mm(GAP)}"}
    return {**line, "stroke-linecap": "round"}


def _path(page: Element, way: str, thick: Fraction, color: str = INK, *, dashed: bool = False) -> None:
    if way:
        SubElement(page, "path", {"d": way, "fill": "none", **_pencil(thick, color, dashed=dashed)})


def _lines(lines: Iterable[Line]) -> str:
    return "".join(f"M{mm(x)} {mm(y)}L{mm(to_x)} {mm(to_y)}" for x, y, to_x, to_y in lines)


def _squares(scene: Scene) -> str:
    across = (f"M{mm(at * SQUARE)} 0V{mm(scene.height)}" for at in range(int(scene.width / SQUARE) + 1))
    down = (f"M0 {mm(at * SQUARE)}H{mm(scene.width)}" for at in range(int(scene.height / SQUARE) + 1))
    return "".join([*across, *down])


def _box_hatching(box: Box) -> str:
    """Lines that rise to the right, where across plus down from the corner is a multiple of APART.

    There are thousands on a page: they are counted in whole numbers over one denominator.
    """
    sizes = (box.x, box.y, box.width, box.height, APART)
    below = lcm(*(size.denominator for size in sizes))
    x, y, width, height, apart = (size.numerator * (below // size.denominator) for size in sizes)
    lines = ((at, max(at - height, 0), min(at, width)) for at in range(apart, width + height, apart))
    return "".join(
        f"M{_over(x + low, below)} {_over(y + at - low, below)}"
        f"L{_over(x + high, below)} {_over(y + at - high, below)}"
        for at, low, high in lines
    )


def _wedge_hatching(wedge: Wedge) -> Iterator[Line]:
    """The same lines, counted from the centre."""
    parts = _bounds(wedge)
    reach = int(wedge.radius * 3 / 2 / APART)
    for at in range(-reach, reach + 1):
        for bounds in parts:
            if line := _chord(wedge, at * APART, bounds):
                yield line


def _bounds(wedge: Wedge) -> list[tuple[Point, ...]]:
    """The sides of a wedge, in two halves where it is more than half a turn: (a, b) as `_chord` takes it."""
    if wedge.sweep >= 1:
        return [()]
    halves = 2 if wedge.sweep > Fraction(1, 2) else 1
    found: list[tuple[Point, ...]] = []
    for half in range(halves):
        begin = wedge.start + half * wedge.sweep / halves
        sine, cosine = turned(begin)
        end_sine, end_cosine = turned(begin + wedge.sweep / halves)
        found.append(((cosine, sine), (-end_cosine, -end_sine)))
    return found


def _chord(wedge: Wedge, at: Fraction, bounds: tuple[Point, ...]) -> Line | None:
    """The part of the line across + down = at within the disc and on the right side of every bound.

    A point of the line is (at/2 + t, at/2 - t). A bound (a, b) holds where a * across + b * down >= 0.
    """
    inside = wedge.radius**2 / 2 - at * at / 4
    if inside <= 0:
        return None
    high = root(inside)
    low = -high
    for a, b in bounds:
        slope, start = a - b, (a + b) * at / 2
        if slope > 0:
            low = max(low, -start / slope)
        elif slope < 0:
            high = min(high, -start / slope)
        elif start < 0:
            return None
    if low >= high:
        return None
    x, y = wedge.x + at / 2, wedge.y + at / 2
    return x + low, y - low, x + high, y - high


def _sector(wedge: Wedge) -> str:
    """The outline of a wedge; a whole turn is two half circles without a line to the centre."""
    x, y, radius = wedge.x, wedge.y, mm(wedge.radius)
    if wedge.sweep >= 1:
        top, bottom = mm(y - wedge.radius), mm(y + wedge.radius)
        arc = f"A{radius} {radius} 0 0 1 {mm(x)}"
        return f"M{mm(x)} {top}{arc} {bottom}{arc} {top}Z"
    ends = []
    for turns in (wedge.start, wedge.start + wedge.sweep):
        sine, cosine = turned(turns)
        ends.append(f"{mm(x + wedge.radius * sine)} {mm(y - wedge.radius * cosine)}")
    large = int(wedge.sweep > Fraction(1, 2))
    return f"M{mm(x)} {mm(y)}L{ends[0]}A{radius} {radius} 0 {large} 1 {ends[1]}Z"


def _written(page: Element, part: Letters | Bar) -> None:
    match part:
        case Bar(x, to_x, y, thick):
            _path(page, _lines([(x, y, to_x, y)]), thick)
        case Letters(x, y, size, text):
            SubElement(
                page,
                "text",
                {
                    "x": mm(x),
                    "y": mm(y),
                    "font-size": mm(size),
                    "font-family": "Lexend, sans-serif",
                    "text-anchor": "middle",
                    "fill": INK,
                    "stroke": PAPER,
                    "stroke-width": mm(2 * HALO),
                    "stroke-linejoin": "round",
                    "paint-order": "stroke",
                },
            ).text = text
        case _:
            assert_never(part)
