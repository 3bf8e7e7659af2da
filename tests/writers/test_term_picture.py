"""The weeks ahead, drawn."""

from datetime import date, timedelta
from fractions import Fraction
from xml.etree.ElementTree import Element, fromstring

from onewhole.writers.term_picture import TermRow, term_picture

MONDAY = date(2026, 11, 23)
WEEKS = tuple(MONDAY + timedelta(weeks=at) for at in range(-1, 2))
SVG = "{http://www.w3.org/2000/svg}"
ROWS = (
    TermRow("adding", {MONDAY: 3}, (MONDAY + timedelta(days=7), MONDAY + timedelta(days=10))),
    TermRow("comparing", {}, ()),
)


def _drawn() -> Element:
    return fromstring(term_picture(ROWS, WEEKS, MONDAY))  # noqa: S314 - our own writing


def _over(drawn: Element, said: str) -> Element:
    """Return the innermost box under some words: the last that holds their place."""
    at = next(one for one in drawn.iter(f"{SVG}text") if one.text == said)
    x, y = Fraction(at.attrib["x"]), Fraction(at.attrib["y"])
    boxes = [
        box
        for box in drawn.iter(f"{SVG}rect")
        if 0 <= x - Fraction(box.get("x", "0")) <= Fraction(box.attrib["width"])
        and 0 <= y - Fraction(box.get("y", "0")) <= Fraction(box.attrib["height"])
    ]
    return boxes[-1]


def test_nights_are_told_by_words_in_their_boxes() -> None:
    """On a page: how many; planned: the weekdays, in the next week's column; all in ink on paper."""
    drawn = _drawn()
    gone, planned = _over(drawn, "3"), _over(drawn, "Mo Th")
    assert Fraction(planned.attrib["x"]) - Fraction(gone.attrib["x"]) == Fraction(52, 5)
    assert Fraction(planned.attrib["y"]) > Fraction(gone.attrib["y"])
    assert {one.get("stroke") for one in drawn.iter(f"{SVG}rect")} == {None, "#2b2b33"}


def test_title_and_description_say_the_same_in_words() -> None:
    """Each row is a sentence; the drawing names both."""
    drawn = _drawn()
    assert drawn.findtext(f"{SVG}desc") == (
        "Adding: on a page in the week of 23 Nov; planned for Monday 30 Nov, Thursday 3 Dec. "
        "Comparing: nothing planned."
    )
    assert set(drawn.attrib["aria-labelledby"].split()) <= {element.get("id") for element in drawn.iter()}


def test_words_are_in_the_drawing_and_it_grows_with_rows() -> None:
    """Nothing is cut off to the right or below; nothing is drawn without a skill."""
    drawn = _drawn()
    width, height = map(Fraction, drawn.attrib["viewBox"].split()[2:])
    for one in drawn.iter(f"{SVG}text"):
        assert 0 < Fraction(one.attrib["x"]) < width
        assert 0 < Fraction(one.attrib["y"]) < height
    assert term_picture((), WEEKS, MONDAY) == ""
