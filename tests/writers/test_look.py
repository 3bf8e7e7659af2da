"""Every page kind, on both papers and in both print sizes, from the sample data beside this file."""

import datetime as dt
import io
import json
import re
from collections import Counter
from collections.abc import Iterator
from fractions import Fraction
from functools import cache
from importlib.resources import files
from itertools import product
from pathlib import Path
from typing import Any

import pikepdf
import pypdfium2  # type: ignore[import-untyped]
import pypdfium2.raw as pdfium  # type: ignore[import-untyped]
import pytest

from onewhole.presses.pdf import PressError, press

PAGES = Path(__file__).parent / "pages"
KINDS = ("pupil", "practice", "key", "workings", "family", "morning")
PAPERS = {"letter": (612.0, 792.0), "a4": (595.28, 841.89)}
# A printer leaves a quarter of an inch blank (common practice, no source).
BLANK = 6.35
SIDES = {"ordinary": 18.0, "large": 25.4}
WHEN = dt.datetime(2025, 3, 6, 7, 30, tzinfo=dt.UTC)

every_page = pytest.mark.parametrize(("kind", "paper", "size"), tuple(product(KINDS, PAPERS, SIDES)))


def sample(kind: str) -> dict[str, Any]:
    """The sample data of one page kind."""
    loaded: dict[str, Any] = json.loads((PAGES / f"{kind}.json").read_text(encoding="utf-8"))
    return loaded


def pressed(kind: str, data: dict[str, Any]) -> bytes:
    """The page of this kind with this data."""
    source = f'#import "/look.typ": {kind}\n#{kind}(json(bytes(sys.inputs.data)))'
    return press(source, data=json.dumps(data).encode(), when=WHEN)


@cache
def printed(kind: str, paper: str, size: str) -> bytes:
    """The sample page on this paper in this print size."""
    return pressed(kind, sample(kind) | {"paper": paper, "print": size})


def millimetres(points: float) -> float:
    """The same length in millimetres."""
    return points * 25.4 / 72


def characters(made: bytes) -> Iterator[tuple[int, str, float, tuple[float, float, float, float]]]:
    """Every printed character: its page from 0, the character, its size in points and its box in points."""
    for number, page in enumerate(pypdfium2.PdfDocument(made)):
        text = page.get_textpage()
        for index in range(text.count_chars()):
            sign = chr(pdfium.FPDFText_GetUnicode(text, index))
            matrix = pdfium.FS_MATRIX()
            pdfium.FPDFText_GetMatrix(text, index, matrix)
            size = pdfium.FPDFText_GetFontSize(text, index) * abs(matrix.d)
            if not sign.isspace():
                yield number, sign, size, text.get_charbox(index)


def drawings(page: pypdfium2.PdfPage) -> list[tuple[float, float, float, float]]:
    """The bounds of every drawn path on a page, in points: left, bottom, right, top."""
    return [item.get_bounds() for item in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_PATH])]


def tags(made: bytes) -> list[tuple[str, str]]:
    """Every tag of the PDF in reading order, with its spoken words."""
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


def spoken(data: Any) -> list[str]:  # noqa: ANN401  # JSON may be anything
    """The spoken words of every formula in the data."""
    if isinstance(data, list):
        return [words for part in data for words in spoken(part)]
    if not isinstance(data, dict):
        return []
    if set(data) == {"math", "alt"}:
        return [data["alt"]]
    return spoken(list(data.values()))


@every_page
def test_page_says_that_it_is_accessible(kind: str, paper: str, size: str) -> None:
    """Each page calls itself PDF/UA-1, with its language and its title shown (ISO 14289-1, from memory)."""
    document = pikepdf.open(io.BytesIO(printed(kind, paper, size)))
    assert document.open_metadata()["pdfuaid:part"] == "1"
    assert document.Root.Lang == "en"
    assert document.Root.ViewerPreferences.DisplayDocTitle
    assert document.docinfo["/Title"] == sample(kind)["title"]
    assert document.docinfo["/CreationDate"] == "D:20250306073000Z"


@every_page
def test_every_formula_is_spoken(kind: str, paper: str, size: str) -> None:
    """Each formula of the data stands once in the tags, with the words that the data gives it."""
    found = Counter(words for tag, words in tags(printed(kind, paper, size)) if tag == "/Formula")
    assert found == Counter(spoken(sample(kind)))


def test_the_strips_are_described() -> None:
    """The strips on the family page are one figure with the words that the data gives it."""
    figures = [words for tag, words in tags(printed("family", "letter", "ordinary")) if tag == "/Figure"]
    assert figures == [sample("family")["example"]["strips"]["alt"]]


def test_the_key_is_a_table_with_heads() -> None:
    """The answer key is one table: a row of heads, then a row for each problem."""
    found = Counter(tag for tag, _ in tags(printed("key", "letter", "ordinary")))
    rows = len(sample("key")["answers"])
    assert (found["/Table"], found["/TH"], found["/TR"], found["/TD"]) == (1, 5, rows + 1, 5 * rows)


@every_page
def test_same_data_same_bytes(kind: str, paper: str, size: str) -> None:
    """A page printed again is the same file, byte for byte."""
    assert pressed(kind, sample(kind) | {"paper": paper, "print": size}) == printed(kind, paper, size)


@every_page
def test_nothing_leaves_the_margins(kind: str, paper: str, size: str) -> None:
    """Every character stands between the side margins, and everything drawn stands on the paper."""
    made = printed(kind, paper, size)
    width, height = PAPERS[paper]
    side = SIDES[size]
    for number, sign, _, (left, bottom, right, top) in characters(made):
        where = f"{sign!r} on page {number + 1}"
        assert side - 0.1 <= millimetres(left), where
        assert millimetres(right) <= millimetres(width) - side + 0.1, where
        assert BLANK <= millimetres(bottom) <= millimetres(top) <= millimetres(height) - BLANK, where
    for page in pypdfium2.PdfDocument(made):
        assert page.get_size() == pytest.approx((width, height), abs=0.1)
        for left, bottom, right, top in drawings(page):
            assert side - 1 <= millimetres(left)
            assert millimetres(right) <= millimetres(width) - side + 1
            assert BLANK <= millimetres(bottom) <= millimetres(top) <= millimetres(height) - BLANK


@every_page
def test_no_text_is_small(kind: str, paper: str, size: str) -> None:
    """Ordinary print has no sign under 12 pt and large print none under 18 pt.

    Fraction digits, labels and the name line are signs like any other.

    Source for 18 and 12 pt: the American Printing House for the Blind's guideline for large print.
    """
    least = {"ordinary": 12, "large": 18}[size]
    assert min(points for _, _, points, _ in characters(printed(kind, paper, size))) >= least - 0.05


@pytest.mark.parametrize("size", SIDES)
def test_fraction_digits_are_nearly_as_large(size: str) -> None:
    """Digits of a fraction are at least 80% of the whole number beside them (our rule, no source)."""
    line = {"math": "7 frac(2, 6)", "alt": "seven and two sixths"}
    row = {"label": "a", "formula": line, "answer": line}
    made = pressed("key", {"title": "K", "answers": [row], "print": size})
    sizes = {sign: points for _, sign, points, _ in characters(made) if sign in "726"}
    assert sizes["2"] == sizes["6"] >= 0.8 * sizes["7"]


@every_page
def test_only_the_fonts_of_the_package(kind: str, paper: str, size: str) -> None:
    """Words and digits are set in Lexend and Atkinson Hyperlegible, and in nothing else."""
    with pikepdf.open(io.BytesIO(printed(kind, paper, size))) as document:
        found = [item for item in document.objects if isinstance(item, pikepdf.Dictionary)]
        fonts = {str(item.BaseFont) for item in found if "/BaseFont" in item}
    assert {re.split(r"[+-]", name)[1] for name in fonts} == {"Lexend", "AtkinsonHyperlegible"}


@pytest.mark.parametrize(("kind", "paper", "size"), tuple(product(("pupil", "practice"), PAPERS, SIDES)))
def test_each_problem_keeps_its_room(kind: str, paper: str, size: str) -> None:
    """Every problem has a room no smaller than the data says, and its answer line on the same page."""
    document = pypdfium2.PdfDocument(printed(kind, paper, size))
    wanted = [item["room"] for item in sample(kind)["items"] if item["kind"] == "problem"]
    drawn = []
    for page in document:
        boxes = [(millimetres(r - l), millimetres(t - b)) for l, b, r, t in drawings(page)]  # noqa: E741
        rooms = [(wide, high) for wide, high in boxes if wide >= 79 and high >= 17]
        pictures = page.get_textpage().get_text_range().count("Draw the strips here.")
        assert len(rooms) - pictures == page.get_textpage().get_text_range().count("Answer")
        drawn += rooms
    for room in wanted:
        fit = next(
            (it for it in drawn if it[0] >= room["width_mm"] - 0.1 and it[1] >= room["height_mm"] - 0.1), None
        )
        assert fit is not None, room
        drawn.remove(fit)


@pytest.mark.parametrize(("paper", "size"), tuple(product(PAPERS, SIDES)))
def test_an_instruction_is_never_left_alone(paper: str, size: str) -> None:
    """An instruction stands on the page of the problem that follows it."""
    pages = [
        re.sub(r"\s+", " ", page.get_textpage().get_text_range())
        for page in pypdfium2.PdfDocument(printed("pupil", paper, size))
    ]
    for item in sample("pupil")["items"]:
        if item["kind"] == "instruction":
            (after,) = (text.split(item["words"])[1] for text in pages if item["words"] in text)
            assert "Answer" in after


def test_later_pages_say_where_they_belong() -> None:
    """The second page of a pupil's paper has the title, a name line and its number."""
    document = pypdfium2.PdfDocument(printed("pupil", "letter", "ordinary"))
    text = document[1].get_textpage().get_text_range()
    assert text.startswith("One whole, many pieces")
    assert "Name" in text
    assert "page 2 of 2" in text


def test_a_long_title_stays_on_one_line_later() -> None:
    """A title that is too long for the head of a later page ends in three dots there."""
    made = pressed("pupil", sample("pupil") | {"title": "Kites and strips and pieces and wholes " * 3})
    later = pypdfium2.PdfDocument(made)[1].get_textpage().get_text_range()
    assert later.splitlines()[0].startswith("Kites and strips")
    assert "…" in later.splitlines()[0]


SIGNS = (
    "7 frac(2, 6) = 6 frac(hole, 6)",
    "3 frac(1, 2) ring frac(7, 2)",
    "8 - 3 = blank",
    'renamed(5, 4) "ft" renamed(2, 14) "in" - 2 "ft" 7 "in"',
    "frac(struck(3), 4) + (6 - 3) + (frac(8, 6) - frac(5, 6))",
    "marked(3 frac(7, 24)) <= 5.25 times 4 div 2 >= 1",
)


@pytest.mark.parametrize("math", SIGNS)
@pytest.mark.parametrize("size", SIDES)
def test_every_sign_prints(math: str, size: str) -> None:
    """Holes, rings, blanks, crossed-out, renamed and framed numbers are spoken and are not small."""
    line = {"math": math, "alt": "the sign under test"}
    problem = {"label": "a", "formula": line, "strategy": "S", "lines": [{"formula": line, "because": "B"}]}
    made = pressed("workings", {"title": "W", "problems": [problem], "print": size})
    assert min(points for _, _, points, _ in characters(made)) >= {"ordinary": 12, "large": 18}[size] - 0.05
    assert sum(words == "the sign under test" for _, words in tags(made)) == 2


def test_apostrophes_are_printed_round() -> None:
    """A typed straight apostrophe is printed as a round one, in the words and in the title."""
    made = pressed("family", {"title": "Room 12's page", "opening": ["It's a kite."]})
    text = pypdfium2.PdfDocument(made)[0].get_textpage().get_text_range()
    assert "Room 12’s page" in text
    assert "It’s a kite." in text


REFUSED = (
    ("pupil", {"paper": "a5"}, 'paper is "a5"', "Use letter or a4."),
    ("pupil", {"print": "huge"}, 'print is "huge"', "Use ordinary or large."),
    ("pupil", {"columns": 3}, "columns is 3", "Use 1 or 2."),
    ("pupil", {"kite": "dragon"}, 'kite is "dragon"', "Use diamond, delta, box, sled, hexagon or house."),
    (
        "pupil",
        {"items": [{"kind": "problem", "label": "2a)", "room": {"width_mm": 400, "height_mm": 9}}]},
        "problem 2a) needs 400 mm of width and the paper has 180 mm",
        "Make the problem shorter or leave it less room.",
    ),
    (
        "pupil",
        {"items": [{"kind": "problem", "label": "2a)", "room": {"width_mm": 80, "height_mm": 270}}]},
        "problem 2a) needs 315 mm of height and the paper has 239 mm",
        "Make the problem shorter or leave it less room.",
    ),
    ("key", {"title": "Kites 🪁"}, "No font here has the sign 🪁", "Take it out, or write it in letters."),
)


@pytest.mark.parametrize(("kind", "change", "what", "remedy"), REFUSED)
def test_refusals(kind: str, change: dict[str, Any], what: str, remedy: str) -> None:
    """Data that no page can show is refused with what is wrong and what to do next."""
    with pytest.raises(PressError) as caught:
        pressed(kind, sample(kind) | change)
    assert what in caught.value.what
    assert caught.value.remedy == remedy


def test_inks_are_dark_enough() -> None:
    """Every ink for text and lines has at least 4.5:1 on white (WCAG 2.2, criteria 1.4.3 and 1.4.11)."""
    source = (files("onewhole") / "writers" / "look" / "ink.typ").read_text(encoding="utf-8")
    inks = dict(re.findall(r'#let (\w+) = rgb\("#(\w{6})"\)', source))
    assert set(inks) == {"ink", "soft", "rule", "accent", "squares"}
    for name in ("ink", "soft", "rule", "accent"):
        assert contrast_on_white(inks[name]) >= 4.5, name


def contrast_on_white(colour: str) -> float:
    """The contrast of a colour on white, as WCAG 2.2 defines it."""
    shares = [float(Fraction(int(colour[at : at + 2], 16), 255)) for at in (0, 2, 4)]
    light = [share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4 for share in shares]
    return 1.05 / (0.2126 * light[0] + 0.7152 * light[1] + 0.0722 * light[2] + 0.05)


def test_contrast_check_values() -> None:
    """The measure itself: #767676 passes 4.5 on white and #777777 does not (common practice, no source)."""
    assert contrast_on_white("767676") >= 4.5 > contrast_on_white("777777")
