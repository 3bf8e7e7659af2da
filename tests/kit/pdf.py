"""What stands in a PDF: signs, lines and frames, and tags. Lengths are millimetres from the top left."""

import io
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import Any

import pikepdf
import pypdfium2
import pypdfium2.raw as pdfium

MM = 25.4 / 72


@dataclass(frozen=True)
class Box:
    """A piece of a page: its page from 0, where it begins and ends, and its sign where it is one."""

    page: int
    left: float
    top: float
    right: float
    bottom: float
    sign: str = ""
    points: float = 0

    @property
    def width(self) -> float:
        """How wide it is."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """How high it is."""
        return self.bottom - self.top

    def meets(self, other: "Box") -> bool:
        """Whether the two overlap."""
        across = self.left < other.right and other.left < self.right
        return self.page == other.page and across and self.top < other.bottom and other.top < self.bottom

    def inside(self, other: "Box") -> bool:
        """Whether it lies in the other, up to a tenth of a millimetre."""
        across = other.left - 0.1 <= self.left and self.right <= other.right + 0.1
        return (
            self.page == other.page and across and other.top <= self.top + 0.1 and self.bottom <= other.bottom
        )


def pages(made: bytes) -> int:
    """How many pages there are."""
    return len(pypdfium2.PdfDocument(made))


def sizes(made: bytes) -> list[tuple[float, float]]:
    """The width and height of every page."""
    return [
        (width * MM, height * MM)
        for width, height in (page.get_size() for page in pypdfium2.PdfDocument(made))
    ]


@cache
def signs(made: bytes) -> tuple[Box, ...]:
    """Every printed sign, each page from its beginning in the order that it was set."""
    return tuple(_signs(made))


def _signs(made: bytes) -> Iterator[Box]:
    for number, page in enumerate(pypdfium2.PdfDocument(made)):
        text, high = page.get_textpage(), page.get_size()[1]
        for index in range(text.count_chars()):
            sign = chr(pdfium.FPDFText_GetUnicode(text, index))
            if sign.isspace():
                continue
            matrix = pdfium.FS_MATRIX()
            pdfium.FPDFText_GetMatrix(text, index, matrix)
            points = pdfium.FPDFText_GetFontSize(text, index) * abs(matrix.d)
            left, bottom, right, top = text.get_charbox(index)
            yield Box(number, left * MM, (high - top) * MM, right * MM, (high - bottom) * MM, sign, points)


@cache
def drawings(made: bytes) -> tuple[Box, ...]:
    """The bounds of everything that is drawn."""
    found = []
    for number, page in enumerate(pypdfium2.PdfDocument(made)):
        high = page.get_size()[1]
        for item in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_PATH]):
            left, bottom, right, top = item.get_bounds()
            found.append(Box(number, left * MM, (high - top) * MM, right * MM, (high - bottom) * MM))
    return tuple(found)


def words(made: bytes) -> list[str]:
    """The text of every page."""
    return [page.get_textpage().get_text_range() for page in pypdfium2.PdfDocument(made)]


def tags(made: bytes) -> list[tuple[str, str]]:
    """Every tag in reading order, with its spoken words."""
    found: list[tuple[str, str]] = []

    def walk(node: Any) -> None:  # noqa: ANN401  # a PDF node may be anything
        if isinstance(node, pikepdf.Array):
            for child in node:
                walk(child)
        elif isinstance(node, pikepdf.Dictionary) and "/S" in node:
            found.append((str(node.S), str(node.get("/Alt", ""))))
            walk(node.get("/K"))

    with pikepdf.open(io.BytesIO(made)) as document:
        walk(document.Root.StructTreeRoot.K)
    return found


def empty_tags(made: bytes) -> list[str]:
    """Every tag that holds nothing: no text, no drawing and no other tag.

    A cell of a table may be empty; a Div only groups and is not read out (PDF 1.7, 14.8.4.2, from memory).
    """
    found: list[str] = []

    def walk(node: Any) -> None:  # noqa: ANN401  # a PDF node may be anything
        if isinstance(node, pikepdf.Array):
            for child in node:
                walk(child)
        elif isinstance(node, pikepdf.Dictionary) and "/S" in node:
            inside = node.get("/K")
            if inside is None or (isinstance(inside, pikepdf.Array) and not len(inside)):
                found.append(str(node.S))
            else:
                walk(inside)

    with pikepdf.open(io.BytesIO(made)) as document:
        walk(document.Root.StructTreeRoot.K)
    return [tag for tag in found if tag not in {"/Div", "/TD", "/TH"}]


def fonts(made: bytes) -> set[str]:
    """The names of the fonts, without the mark of a part of one."""
    with pikepdf.open(io.BytesIO(made)) as document:
        found = [item for item in document.objects if isinstance(item, pikepdf.Dictionary)]
        return {str(item.BaseFont).rpartition("+")[2] for item in found if "/BaseFont" in item}


def overlapping(boxes: tuple[Box, ...]) -> list[tuple[Box, Box]]:
    """Every two boxes that meet, found in rows from the top."""
    rows: dict[tuple[int, int], list[Box]] = {}
    for box in boxes:
        for row in range(int(box.top // 5), int(box.bottom // 5) + 1):
            rows.setdefault((box.page, row), []).append(box)
    pairs = ((first, second) for row in rows.values() for at, first in enumerate(row) for second in row[:at])
    return [(first, second) for first, second in pairs if first.meets(second)]
