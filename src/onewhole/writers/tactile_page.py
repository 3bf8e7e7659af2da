"""The amounts of a problem as raised lines, with braille: a page for swell paper or an embosser of pictures.

Sizes of braille: Marburg Medium, 2.5 mm between dots, 6.0 mm between cells, 10 mm between lines, dots 1.5 mm
wide (from memory; within ISO 17049). Lines: BANA and CBA, *Guidelines and Standards for Tactile Graphics*
(2010), from memory: lines at least 1 mm thick and kinds of lines that a finger tells apart, nothing nearer
than 3 mm, no meaning in colour, words in braille outside the picture.
"""

from collections.abc import Iterable, Iterator
from fractions import Fraction
from xml.etree.ElementTree import Element, SubElement, tostring

from msgspec import Struct

from onewhole.languages.table import spoken_by
from onewhole.notations.braille.cells import raised
from onewhole.notations.braille.chunks import Chunk, filled
from onewhole.notations.braille.literary import literary
from onewhole.notations.braille.running import formula, running
from onewhole.notations.sentences.text import text_of
from onewhole.notations.svg import labelled, mm
from onewhole.notations.text import printed
from onewhole.pictures.amounts import amounts
from onewhole.pictures.bar_description import SidesAndArea
from onewhole.pictures.scene import Box, Look, Scene
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.header import Header, Paper
from onewhole.sheets.story_pictures import story_picture
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.frame import frame
from onewhole.writers.printed import Json, Printed

DOT_APART, CELL_APART, LINE_APART = Fraction(5, 2), Fraction(6), Fraction(10)
DOT_RADIUS = Fraction(3, 4)
#: The line round what is there, and the dots round room where nothing is, so far apart.
LINE, DOTS_APART = Fraction(1), Fraction(7, 2)
#: What is smaller is no shape for a finger.
LEAST_FELT = Fraction(3, 2)
#: Where nothing is, and what is asked for.
ROOM = frozenset({Look.DOTTED, Look.FILLED})
#: Strips are drawn so much higher than on paper for the eye, so that a finger finds the gaps between them.
HIGHER = Fraction(3, 2)
#: Empty paper at the sides, and between words and picture.
SIDE, BETWEEN = Fraction(15), Fraction(12)
_PAPERS = {
    Paper.LETTER: (Fraction(2159, 10), Fraction(2794, 10)),
    Paper.A4: (Fraction(210), Fraction(297)),
}
_INK = "#000"


class TactilePage(Struct, frozen=True):
    """The picture of one problem: the problem's label, the page as an SVG in millimetres, and its words."""

    label: str
    svg: str
    alt: str


def tactile_pages(worked: WorkedSheet) -> tuple[TactilePage, ...]:
    """Return a page for each problem whose amounts are drawn as strips, or whose story has bars.

    Raises NoBrailleError.
    """
    drawn = ((entry, _drawn(entry, worked.header)) for entry in worked.problems)
    return tuple(_page(entry, scene, worked.header) for entry, scene in drawn if scene)


def _drawn(entry: WorkedProblem, header: Header) -> Scene | None:
    """Return the bars of a story with a blank, where they are to be shown, or else the amounts."""
    if header.story_bars and (bars := story_picture(entry, header)):
        return bars.blank
    return amounts(entry.working) if entry.working else None


def tactile_paper(worked: WorkedSheet) -> Printed | None:
    """Return these pages as one file for the press; None where nothing is drawn. Raises NoBrailleError."""
    pages: list[Json] = [{"svg": one.svg, "alt": one.alt} for one in tactile_pages(worked)]
    return Printed("tactile", frame(worked.header) | {"pages": pages}) if pages else None


def _page(entry: WorkedProblem, scene: Scene, header: Header) -> TactilePage:
    language = spoken_by(header.words)
    width, height = _PAPERS[header.paper]
    described = language.working.picture(scene, header.words)
    alt = f"{entry.label}. {printed(entry.statement, language)}. {text_of(described)}"
    page = labelled(width, height, alt)
    cells = int((width - 2 * SIDE) / CELL_APART)
    asked = (Chunk(literary(f"{entry.label}.")), *formula(entry.statement, language))
    below = _brailled(page, filled(asked, cells), SIDE)
    under = tuple(filled(running(described, language), cells, 0, 0))
    below += BETWEEN - LINE_APART
    across = min(Fraction(1), (width - 2 * SIDE) / scene.width)
    room = height - below - SIDE - BETWEEN - LINE_APART * len(under)
    # The sides of a rectangle are felt beside each other, so both have one scale.
    sides = any(isinstance(one, SidesAndArea) for one in scene.descriptions)
    down = min(across if sides else HIGHER * across, room / scene.height)
    for piece in scene.pieces:
        if isinstance(piece.shape, Box):
            x, y, wide, high = piece.shape.x, piece.shape.y, piece.shape.width, piece.shape.height
            box = Box(SIDE + across * x, below + down * y, across * wide, down * high)
            if min(box.width, box.height) >= LEAST_FELT:
                _outlined(page, box, room=piece.look in ROOM)
    _brailled(page, under, below + down * scene.height + BETWEEN)
    return TactilePage(entry.label, tostring(page, encoding="unicode"), alt)


def _brailled(page: Element, lines: Iterable[str], top: Fraction) -> Fraction:
    """Write lines of cells as dots; return where the next line would begin."""
    for line in lines:
        for at, cell in enumerate(line):
            for x, y in _dots(cell):
                where = {"cx": mm(SIDE + CELL_APART * at + x), "cy": mm(top + y)}
                SubElement(page, "circle", {**where, "r": mm(DOT_RADIUS), "fill": _INK})
        top += LINE_APART
    return top


def _dots(cell: str) -> Iterator[tuple[Fraction, Fraction]]:
    """Yield where the raised dots of a cell stand: three down each of two columns."""
    for dot in raised(cell):
        across, down = divmod(dot - 1, 3)
        yield across * DOT_APART, down * DOT_APART


def _outlined(page: Element, box: Box, *, room: bool) -> None:
    """Draw a box as raised lines; ``room`` where nothing is has dots above, below and at its right end."""
    line = {"fill": "none", "stroke": _INK, "stroke-width": mm(LINE)}
    left, top, right, bottom = mm(box.x), mm(box.y), mm(box.x + box.width), mm(box.y + box.height)
    if not room:
        place = {"x": left, "y": top, "width": mm(box.width), "height": mm(box.height)}
        SubElement(page, "rect", place | line | {"stroke-linejoin": "round"})
        return
    dots = {"stroke-linecap": "round", "stroke-dasharray": f"0 {mm(DOTS_APART)}"}
    way = f"M{right} {top}H{left}M{right} {bottom}H{left}M{right} {top}V{bottom}"
    SubElement(page, "path", {"d": way} | line | dots)
