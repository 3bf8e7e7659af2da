"""Every page of the real writers, on both papers and in both print sizes, in `make walk` on each in each."""

import io
import re
from collections import Counter
from fractions import Fraction
from importlib.resources import files
from itertools import product
from typing import Any

import pikepdf
import pytest

from onewhole.presses.pdf import PressError
from onewhole.writers.printed import Printed
from tests.kit import pdf
from tests.kit.pages import (
    COMBINED,
    EVERY,
    HOME,
    MILLIMETRES,
    PAPERS,
    PRINTS,
    every_page,
    made,
    night,
    plain,
    pressed,
    spoken,
)

# A printer leaves a quarter of an inch blank (common practice, no source).
BLANK = 6.35
FOR_TEACHER = ("workings", "morning", "talks", "keys")

every = pytest.mark.parametrize(
    ("name", "paper", "size"), [(name, *both) for name, both in product(EVERY, COMBINED)]
)


def for_teacher(name: str) -> bool:
    """Whether a page is for the teacher's eyes only and set closer in ordinary print."""
    return name.partition("/")[2] in FOR_TEACHER


def side(name: str, size: str) -> float:
    """The empty paper at each side of a page."""
    return 25.4 if size == "large" else 15 if for_teacher(name) else 18


def least(name: str, size: str) -> int:
    """The smallest size of print on a page in points."""
    return 18 if size == "large" else 10 if for_teacher(name) else 12


@every
def test_page_says_that_it_is_accessible(name: str, paper: str, size: str) -> None:
    """Each page calls itself PDF/UA-1, with its language and its title shown (ISO 14289-1, from memory)."""
    document = pikepdf.open(io.BytesIO(pressed(name, paper, size)))
    assert document.open_metadata()["pdfuaid:part"] == "1"
    assert document.Root.Lang == "en-US"
    assert document.Root.ViewerPreferences.DisplayDocTitle
    assert document.docinfo["/Title"] == every_page(paper, size)[name].data["title"]
    assert document.docinfo["/CreationDate"] == "D:20250306073000Z"


@every
def test_no_tag_is_empty(name: str, paper: str, size: str) -> None:
    """What is named in the tags is there to be read: an empty label of a list is a stop at nothing."""
    assert pdf.empty_tags(pressed(name, paper, size)) == []


@every
def test_every_formula_is_spoken(name: str, paper: str, size: str) -> None:
    """Each formula of the data stands once in the tags, with the words that the data gives it."""
    found = Counter(words for tag, words in pdf.tags(pressed(name, paper, size)) if tag == "/Formula")
    assert found == Counter(spoken(every_page(paper, size)[name].data))


@every
def test_nothing_leaves_the_margins(name: str, paper: str, size: str) -> None:
    """Every sign stands between the side margins, and everything drawn stands on the paper."""
    page, (width, height) = pressed(name, paper, size), MILLIMETRES[paper]
    edge = side(name, size)
    for box in pdf.signs(page):
        assert edge - 0.1 <= box.left <= box.right <= width - edge + 0.1, box
        assert BLANK <= box.top <= box.bottom <= height - BLANK, box
    for box in pdf.drawings(page):
        if name.startswith("marked") and box.width == pytest.approx(7, abs=0.1) == box.height:
            assert box.right < edge - 1 or box.left > width - edge + 1 or box.top > height - 30, box
            continue
        assert edge - 1 <= box.left <= box.right <= width - edge + 1, box
        assert BLANK <= box.top <= box.bottom <= height - BLANK, box
    for found in pdf.sizes(page):
        assert found == pytest.approx((width, height), abs=0.1)


@every
def test_nothing_is_printed_over_anything(name: str, paper: str, size: str) -> None:
    """No sign stands in one of another line; neighbours on a line may be joined, as f and i are."""
    for first, second in pdf.overlapping(pdf.signs(pressed(name, paper, size))):
        high = min(first.bottom, second.bottom) - max(first.top, second.top)
        wide = min(first.right, second.right) - max(first.left, second.left)
        same_line = abs(first.bottom - second.bottom) < 0.1
        assert same_line or min(high, wide) < 0.4, (first, second)


@every
def test_no_text_is_small(name: str, paper: str, size: str) -> None:
    """Large print has no sign under 18 pt, ordinary print none under 12 pt, or 10 pt for the teacher.

    Fraction digits, labels and the name line are signs like any other.

    Source for 18 and 12 pt: the American Printing House for the Blind's guideline for large print.
    """
    assert min(box.points for box in pdf.signs(pressed(name, paper, size))) >= least(name, size) - 0.05


@pytest.mark.parametrize("size", PRINTS)
def test_fraction_digits_are_nearly_as_large(size: str) -> None:
    """Digits of a fraction are at least 80% of the whole number beside them (our rule, no source)."""
    line = {"math": "7 frac(2, 6)", "alt": "seven and two sixths"}
    row = {"label": "a", "formula": line, "answer": line}
    over = {"label": "No.", "problem": "Problem", "answer": "Answer"}
    page = made(Printed("key", {"title": "K", "heads": over, "answers": [row], "print": size}))
    sizes = {box.sign: box.points for box in pdf.signs(page) if box.sign in "726"}
    assert sizes["2"] == sizes["6"] >= 0.8 * sizes["7"]


@every
def test_only_the_fonts_of_the_package(name: str, paper: str, size: str) -> None:
    """Words and digits are set in Lexend and Atkinson Hyperlegible, and in nothing else."""
    found = {font.partition("-")[0] for font in pdf.fonts(pressed(name, paper, size))}
    assert found == {"Lexend", "AtkinsonHyperlegible"}


def test_every_kind_of_page_is_looked_at() -> None:
    """What is made and what is looked at have the same names."""
    assert tuple(every_page("letter", "ordinary")) == EVERY


@pytest.mark.parametrize("name", EVERY)
def test_same_data_same_bytes(name: str) -> None:
    """A page printed again is the same file, byte for byte."""
    assert made(every_page("a4", "large")[name]) == pressed(name, "a4", "large")


@pytest.mark.parametrize(("paper", "size"), COMBINED)
def test_an_instruction_is_never_left_alone(paper: str, size: str) -> None:
    """An instruction stands on the page of the problem that follows it."""
    pages = [plain(text) for text in pdf.words(pressed("sorts/pupil", paper, size))]
    data: Any = night("sorts", paper, size)["pupil"].data
    for item, after in zip(data["items"], data["items"][1:], strict=False):
        if item["kind"] == "instruction":
            (rest,) = (text.split(item["words"])[1] for text in pages if item["words"] in text)
            assert after["label"] in rest


def test_later_pages_say_where_they_belong() -> None:
    """The second page of a pupil's paper has the title, a name line and its number."""
    later = pdf.words(pressed("room12/pupil", "letter", "ordinary"))[1]
    assert later.startswith("Kite tails, night one")
    assert "Name" in later
    assert "page 2 of 2" in later


def test_a_long_title_stays_on_one_line_later() -> None:
    """A title that is too long for the head of a later page ends in three dots there."""
    page = night("room12", "letter", "ordinary")["pupil"]
    title = {"title": "Kites and strips and pieces and wholes " * 3}
    later = pdf.words(made(Printed("pupil", page.data | title)))[1]
    assert later.splitlines()[0].startswith("Kites and strips")
    assert "…" in later.splitlines()[0]


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", HOME)
def test_a_straight_apostrophe_is_printed_round(name: str, paper: str) -> None:
    """A typed straight apostrophe is printed as a round one, in the title too."""
    page = night("room12", paper, "ordinary")[name]
    text = pdf.words(made(Printed(name, page.data | {"title": "Room 12's page"})))[0]
    assert "Room 12’s page" in text


SIGNS = (
    "7 frac(2, 6) = 6 frac(hole, 6)",
    "3 frac(1, 2) ring frac(7, 2)",
    "8 - 3 = blank",
    'renamed(5, 4) "ft" renamed(2, 14) "in" - 2 "ft" 7 "in"',
    "frac(struck(3), 4) + (6 - 3) + (frac(8, 6) - frac(5, 6))",
    "marked(3 frac(7, 24)) <= 5.25 times 4 div 2 >= 1",
)


@pytest.mark.parametrize("math", SIGNS)
@pytest.mark.parametrize("size", PRINTS)
def test_every_sign_prints(math: str, size: str) -> None:
    """Holes, rings, blanks, crossed-out, renamed and framed numbers are spoken and are not small."""
    line = {"math": math, "alt": "the sign under test"}
    problem = {"label": "a", "formula": line, "strategy": "S", "lines": [{"formula": line, "because": "B"}]}
    page = made(Printed("workings", {"title": "W", "problems": [problem], "print": size}))
    assert min(box.points for box in pdf.signs(page)) >= {"ordinary": 10, "large": 18}[size] - 0.05
    assert sum(words == "the sign under test" for _, words in pdf.tags(page)) == 2


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
        "problem 2a) needs 284 mm of height and the paper has 243 mm",
        "Make the problem shorter or leave it less room.",
    ),
    ("key", {"title": "Kites 🪁"}, "No font here has the sign 🪁", "Take it out, or write it in letters."),
)


@pytest.mark.parametrize(("kind", "change", "what", "remedy"), REFUSED)
def test_refusals(kind: str, change: dict[str, Any], what: str, remedy: str) -> None:
    """Data that no page can show is refused with what is wrong and what to do next."""
    with pytest.raises(PressError) as caught:
        made(Printed(kind, night("room12", "letter", "ordinary")[kind].data | change))
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
