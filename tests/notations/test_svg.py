"""A scene as SVG: well formed, exact, in words, and readable by the page press."""

import datetime as dt
from fractions import Fraction
from xml.etree.ElementTree import Element, fromstring

import pytest

from onewhole.languages.english.pictured import pictured
from onewhole.languages.english.words import words_for
from onewhole.notations.sentences.text import text_of
from onewhole.notations.svg import mm, svg
from onewhole.pictures.scene import Look, Piece, Scene, Stroke, Wedge
from onewhole.presses.pdf import press
from tests.kit.scenes import box, discs, number_line, strips

WORDS = words_for("strip of kite paper")
SVG = "{http://www.w3.org/2000/svg}"
SCENES = [strips(), discs(), number_line()]


def _read(scene: Scene, *, grid: bool = True) -> Element:
    return fromstring(svg(scene, WORDS, grid=grid))  # noqa: S314  # our own text


@pytest.mark.parametrize("scene", SCENES)
def test_it_is_an_image_with_words(scene: Scene) -> None:
    """Its role, label and title say what the scene tells; its size is in millimetres."""
    page = _read(scene)
    assert page.tag == f"{SVG}svg"
    assert page.get("role") == "img"
    assert page.get("aria-label") == text_of(pictured(scene, WORDS)) == page.findtext(f"{SVG}title")
    assert page.get("viewBox") == f"0 0 {scene.width} {scene.height}"
    assert page.get("width") == f"{scene.width}mm"


@pytest.mark.parametrize("scene", SCENES)
def test_many_may_stand_in_one_page(scene: Scene) -> None:
    """No element has an id and none refers to one, so two drawings cannot clash."""
    names = {name for element in _read(scene).iter() for name in element.keys()}  # noqa: SIM118  # an element
    assert not names & {"id", "href", "clip-path", "mask"}
    assert "url(" not in svg(scene, WORDS)


@pytest.mark.parametrize("parts", range(1, 25))
def test_equal_parts_are_written_equal(parts: int) -> None:
    """Equal boxes have one written width, and each starts where it should, to 0.01 mm."""
    width = Fraction(170, parts)
    cells = tuple(box(f"{at}", 5 + at * width, 5, width, Look.FILLED) for at in range(parts))
    drawn = _read(Scene(Fraction(180), Fraction(20), cells), grid=False).findall(f"{SVG}rect")
    assert {rect.get("width") for rect in drawn} == {mm(width)}
    lefts = sorted({Fraction(rect.get("x", "")) for rect in drawn})
    assert len(lefts) == parts
    assert all(abs(left - 5 - at * width) < Fraction(1, 100) for at, left in enumerate(lefts))


@pytest.mark.parametrize(
    ("value", "written"),
    [
        (Fraction(0), "0"),
        (Fraction(5, 2), "2.5"),
        (Fraction(2, 3), "0.667"),
        (Fraction(-2, 3), "-0.667"),
        (Fraction(1, 2000), "0.001"),
        (Fraction(-1, 3000), "0"),
        (Fraction(1999999, 1000000), "2"),
        (Fraction(12007, 1000), "12.007"),
    ],
)
def test_rounding(value: Fraction, written: str) -> None:
    """Three decimals at most, half a thousandth upwards, never -0."""
    assert mm(value) == written


@pytest.mark.parametrize("look", Look)
def test_looks_differ_without_colour(look: Look) -> None:
    """Hatching, a cross and dashes tell the looks apart; ink has one colour."""
    page = _read(Scene(Fraction(90), Fraction(30), (box("strip", 5, 5, 60, look),)), grid=False)
    widths = [element.get("stroke-width") for element in page.iter() if element.get("stroke") == "#2b2b33"]
    assert ("0.25" in widths) == (look in {Look.FILLED, Look.STRUCK})
    assert ("0.8" in widths) == (look is Look.STRUCK)
    dashed = any(element.get("stroke-dasharray") for element in page.iter())
    assert dashed == (look is Look.DOTTED)


@pytest.mark.parametrize(
    "sweep", [Fraction(1, 12), Fraction(1, 3), Fraction(1, 2), Fraction(2, 3), Fraction(1)]
)
def test_hatching_stays_in_its_wedge(sweep: Fraction) -> None:
    """No hatching line ends outside the disc, and together they are as long as the wedge's area asks."""
    wedge = Wedge(Fraction(20), Fraction(20), Fraction(15), Fraction(1, 7), sweep)
    page = _read(Scene(Fraction(40), Fraction(40), (Piece("part", wedge, Look.FILLED),)), grid=False)
    (hatching,) = (path.get("d", "") for path in page.iter() if path.get("stroke-width") == "0.25")
    lines = [
        [tuple(map(Fraction, point.split())) for point in line.split("L")] for line in hatching.split("M")[1:]
    ]
    assert lines
    for x, y in (point for line in lines for point in line):
        assert (x - 20) ** 2 + (y - 20) ** 2 <= Fraction(15005, 1000) ** 2
    across = sum(to[0] - start[0] for start, to in lines)
    area = across * Fraction(9, 5)  # a line stands for a band: its width across times APART
    assert abs(area / (Fraction(355, 113) * 225 * sweep) - 1) < Fraction(1, 10)


def test_squares_are_left_out_where_asked() -> None:
    """The squared paper is there unless it is not wanted."""
    scene = Scene(Fraction(20), Fraction(10), (Piece("a", Stroke(*map(Fraction, (1, 1, 9, 9)))),))
    assert len(_read(scene).findall(f"{SVG}path")) == 2
    assert len(_read(scene, grid=False).findall(f"{SVG}path")) == 1


@pytest.mark.parametrize("scene", SCENES)
def test_the_page_press_reads_it(scene: Scene) -> None:
    """Typst takes the drawing as an image with its words as the image's."""
    title = "#set document(title: [Kites])"
    source = f'{title}\n#image(bytes(sys.inputs.data), format: "svg", alt: "Strips", width: 9cm)'
    when = dt.datetime(2025, 3, 6, tzinfo=dt.UTC)
    pdf = press(source, data=svg(scene, WORDS).encode(), when=when)
    assert pdf.startswith(b"%PDF")
    assert len(pdf) > len(press(title, when=when)) + 1000
