from xml.etree.ElementTree import Element, fromstring

from onewhole.pictures.skill_bars import SkillCounts
from onewhole.writers.skills_picture import LEGEND, skills_picture

CLASS = [("cut & count", SkillCounts(3, 1, 0)), ("x" * 50, SkillCounts(0, 1, 3))]
SVG = "{http://www.w3.org/2000/svg}"


def drawn() -> Element:
    """The drawing of a class of four."""
    return fromstring(skills_picture("DINA", CLASS, "A hint."))  # noqa: S314 - our own text


def test_it_tells_itself_and_what_its_looks_mean() -> None:
    """Its label has every count and the caution; names stand beside the bars, and below what looks mean."""
    label = drawn().attrib["aria-label"]
    assert "cut & count: 3 there, 1 not known, 0 not there." in label
    assert label.endswith("0 there, 1 not known, 3 not there. A hint.")
    assert drawn().attrib["role"] == "img"
    written = [text.text for text in drawn().findall(f"{SVG}text")]
    assert written == ["Skills of 4 pupils (DINA)", "cut & count", f"{'x' * 29}…", LEGEND, "A hint."]


def test_it_needs_no_colour() -> None:
    """Ink and paper are its only colours."""
    colors = {one.attrib.get(name) for one in drawn().iter() for name in ("fill", "stroke")}
    assert colors <= {None, "none", "#2b2b33", "#ffffff"}
