"""The page for home: one page, short sentences, the class's words, and a drawing that can be counted."""

import re
from itertools import product
from typing import Any

import pytest

from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Family
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.family_page import family_page
from tests.kit import pdf
from tests.kit.pages import COMBINED, HOME, PAPERS, made, marked, plain, pressed, sheet
from tests.kit.sheets import worked_sheet

#: Longer sentences are hard to read aloud to a tired child; our own.
MOST_WORDS = 16
#: A word of the class's own mathematics is no pattern's family, wherever it stands.
SAID_IN_CLASS = {Family.REGROUPING}


def data_of(typed: str) -> Any:  # noqa: ANN401  # JSON may be anything
    """The data of the page for home of a typed sheet."""
    return family_page(worked_sheet(typed)).data


def sentences(data: Any) -> list[str]:  # noqa: ANN401  # JSON may be anything
    """Every sentence for the family, without the mathematics."""
    texts = [*data["opening"], data["closing"], data.get("wording", ""), *data["asks"]["items"]]
    texts += [step["words"] for step in data.get("example", {}).get("steps", [])]
    return [one for text in texts for one in re.split(r"(?<=[.?:]) ", text) if one]


@pytest.mark.parametrize("paper", PAPERS)
def test_one_page_in_ordinary_print(paper: str) -> None:
    """Room 12's page for home is one page, and two in large print."""
    assert pdf.pages(pressed("room12/family", paper, "ordinary")) == 1
    assert pdf.pages(pressed("room12/family", paper, "large")) == 2


@pytest.mark.parametrize("name", ["room12", "sorts"])
def test_sentences_are_short(name: str) -> None:
    """No sentence on the page for home is longer than 16 words."""
    for one in sentences(family_page(WorkedSheet(sheet(name))).data):
        assert len(one.split()) <= MOST_WORDS, one


def test_the_words_of_the_class() -> None:
    """The whole and the verb are the class's own, and the older word is named once."""
    data = data_of("whole: ribbon\nsay: trade\n\n1. 7 2/6 - 3 5/6")
    assert "Then we trade one ribbon" in data["opening"][1]
    assert data["wording"] == (
        "You may know this as borrowing. In class we say trading: the amount does not change."
    )
    assert data["asks"]["items"][1] == "How many pieces are in one ribbon?"


def test_nothing_is_said_of_regrouping_where_none_is_asked() -> None:
    """A page without regrouping says nothing of it."""
    data = data_of("1. 5 4/6 - 2 1/6")
    assert "wording" not in data
    assert data["opening"] == ["Tonight we take one number from another."]


def test_the_example_is_none_of_tonight() -> None:
    """The worked example is like tonight's problems and is none of them."""
    for name in ("room12", "sorts"):
        data: Any = family_page(WorkedSheet(sheet(name))).data
        asked = {problem.typed for problem in sheet(name).problems}
        math = data["example"]["formula"]["math"]
        plain_text = re.sub(r"frac\((\d+), (\d+)\)", r"\1/\2", math).replace("\N{MINUS SIGN}", "-")
        assert plain_text not in asked


@pytest.mark.parametrize(("paper", "size"), COMBINED)
def test_the_drawing_holds_the_numbers_that_are_told(paper: str, size: str) -> None:
    """Strips, pieces and crosses counted in the PDF are those of the words for a screen reader."""
    page = pressed("room12/family", paper, size)
    data: Any = family_page(WorkedSheet(sheet("room12", paper, size))).data
    alt = data["example"]["drawing"]["alt"]
    assert [words for tag, words in pdf.tags(page) if tag == "/Figure"] == [alt]
    wholes, parts, gone, parts_gone = map(int, re.findall(r"\d+", alt)[:4])
    assert alt.startswith("Shown: ")
    assert "Crossed out: " in alt
    whole, part, crossed = set(), set(), set()
    drawn = pdf.drawings(page)
    tall = [box for box in drawn if TALL - 0.5 < box.height < TALL + 1]
    widest = max(box.width for box in tall)
    for frame in tall:
        at = (round((frame.left + frame.right) / 8), round((frame.top + frame.bottom) / 8))
        if frame.width > widest - 0.6:
            whole.add(at)
        elif abs(frame.width - widest / FIFTHS) < 0.8:
            part.add(at)
        if any(_crosses(box, frame) for box in drawn):
            crossed.add(at)
    assert len(whole) == wholes
    assert len(part) == -(-parts // FIFTHS) * FIFTHS
    assert len(crossed & whole) == gone
    assert len(crossed & part) == parts_gone


#: How high a strip is drawn, in millimetres, and the pieces of the example's strips.
TALL, FIFTHS = 14 * 130 / 180, 5


def _crosses(stroke: pdf.Box, frame: pdf.Box) -> bool:
    """Whether a stroke runs from corner to corner of a frame; the white one under it is drawn wider."""
    return stroke.inside(frame) and stroke.height < frame.height - 0.5 and stroke.width > frame.width - 3


@pytest.mark.parametrize(("name", "paper"), list(product(HOME, PAPERS)))
@pytest.mark.parametrize("night", ["room12", "sorts"])
def test_nothing_that_goes_home_names_a_pattern(name: str, paper: str, night: str) -> None:
    """No pattern's name or id, no family of patterns and no hint of marking is on it, to see or to hear."""
    page = pressed(f"{night}/{name}", paper, "ordinary")
    said = plain(" ".join((*pdf.words(page), *(words for _, words in pdf.tags(page))))).lower()
    words = set(re.findall(r"[\w-]+", said))
    for pattern in patterns():
        assert pattern.name.lower() not in said
        assert pattern.id.lower() not in words
    for family in set(Family) - SAID_IN_CLASS:
        assert family.value not in said
    assert CAUTION.lower() not in said
    assert not words & {pupil.pupil.lower() for pupil in marked().marks.pupils}


def test_a_sheet_without_a_parallel_problem_has_no_example() -> None:
    """Where no other problem of the same structure is found, the page has none, and still prints."""
    data = data_of("1. 1/2 + 1/2")
    assert "example" not in data
    assert pdf.pages(made(family_page(worked_sheet("1. 1/2 + 1/2")))) == 1


#: A page of each topic, a word that its questions must have, and words of other topics that they must not.
TOPICS = {
    "304 - 128": ("each place", {"pieces", "fractions", "unit"}),
    "52 + 29": ("ten or more", {"pieces", "take away", "borrowing"}),
    "7 2/6 - 3 5/6": ("take away", {"place", "ten", "smaller unit"}),
    "2 4/5 + 1 3/5": ("fill one", {"take away", "borrowing", "place"}),
    "1/2 + 1/3": ("size of piece", {"take away", "borrowing", "place"}),
    "5.2 - 2.7": ("each place", {"pieces", "fractions"}),
    "5 ft 2 in - 2 ft 7 in": ("smaller unit", {"pieces", "place"}),
    "5/6 ? 7/8": ("same size", {"take away", "borrowing", "guess"}),
    "7 1/3 = 6 ?/3": ("both sides", {"take away", "borrowing", "place"}),
    "4 x 2/3": ("How many groups", {"take away", "borrowing", "many times"}),
}


@pytest.mark.parametrize("typed", TOPICS)
def test_the_questions_are_about_what_is_asked(typed: str) -> None:
    """Each question fits the page, and no sentence speaks of another operation or of other units."""
    has, never = TOPICS[typed]
    data = data_of(f"1. {typed}")
    said = " ".join((*data["asks"]["items"], data.get("wording", ""), data["opening"][0]))
    assert has in said
    assert not [word for word in never if word in said], said


def test_the_older_word_is_that_of_the_operation() -> None:
    """Who only adds carries; who takes away borrows; who looks for a number does neither."""
    assert data_of("1. 2 4/5 + 1 3/5")["wording"].startswith("You may know this as carrying.")
    assert data_of("1. 7 2/6 - 3 5/6")["wording"].startswith("You may know this as borrowing.")
    assert data_of("1. 7 1/3 = 6 ?/3")["wording"].startswith("In class")


def test_the_numbers_of_a_bar_can_be_read_at_home() -> None:
    """The bar of a missing number is large enough: no sign under 12 points (see test_look)."""
    page = family_page(worked_sheet("1. 9 - ? = 3 1/2"))
    data: Any = page.data
    assert "across" in data["example"]["drawing"]
    assert min(box.points for box in pdf.signs(made(page))) >= 11.95


@pytest.mark.parametrize(
    "typed",
    [
        "304 - 128",
        "5.2 - 2.75",
        "5 5/8 in - 2 7/8 in",
        "5 1/6 + 2 3/6 - 1 5/6",
        "2 yd 1 ft 3 in - 1 yd 2 ft 8 in",
        "? + 128 = 304",
    ],
)
def test_what_runs_over_by_a_few_lines_is_set_closer_and_takes_one_page(typed: str) -> None:
    """The questions and the last words stand with the rest, and no digit of a picture is smaller for it."""
    page = made(family_page(worked_sheet(f"1. {typed}\n2. {typed}")))
    (only,) = pdf.words(page)
    assert "Good questions" in only
    assert "Listening helps" in only
    assert min(box.points for box in pdf.signs(page)) > 10


def test_what_is_longer_than_a_page_begins_on_its_first() -> None:
    """A million less something has twelve steps on the first page; the questions follow together."""
    first, second = pdf.words(made(family_page(worked_sheet("1. 1000000 - 345678"))))
    assert "How we do it in class" in first
    assert "Good questions" in second
    assert "Listening helps" in second


def test_a_missing_number_is_shown_in_parts_and_in_columns() -> None:
    """The bar says why it is taken away, the columns how; both are told in words."""
    data: Any = data_of("1. ? + 128 = 304")
    assert "across" in data["example"]["drawing"]
    assert data["example"]["columns"]["alt"].startswith("In columns:")
    assert "columns" not in data_of("1. 9 - ? = 3 1/2")["example"]
