"""Skills by weeks, drawn."""

from datetime import date, timedelta
from fractions import Fraction
from itertools import pairwise
from xml.etree.ElementTree import Element, fromstring

from onewhole.marking.diagnosis.interval import interval
from onewhole.writers.skill_weeks import MOST_WEEKS, SkillRow, last_weeks, skill_weeks_picture

MONDAY = date(2026, 11, 23)
SVG = "{http://www.w3.org/2000/svg}"


def _drawn(*rows: SkillRow) -> Element:
    return fromstring(skill_weeks_picture(rows))  # noqa: S314 - our own writing


def test_a_band_is_drawn_where_its_numbers_say() -> None:
    """The box reaches from low to high of a plot 20 mm high, and the counts stand under it."""
    one = interval(3, 4)
    drawn = _drawn(SkillRow("comparing", {MONDAY: one}))
    outline = next(box for box in drawn.iter(f"{SVG}rect") if box.get("fill") == "none")
    top, tall = Fraction(outline.attrib["y"]), Fraction(outline.attrib["height"])
    floor = Fraction(9 + 20)
    assert abs(floor - top - 20 * one.high) < Fraction(1, 500)
    assert abs(tall - 20 * (one.high - one.low)) < Fraction(1, 500)
    assert [words.text for words in drawn.iter(f"{SVG}text")][-2:] == ["23 Nov", "3 of 4"]


def test_title_and_description_say_the_same_in_words() -> None:
    """Each row is a sentence; the drawing names both."""
    weeks = {MONDAY - timedelta(weeks=1): interval(0, 2), MONDAY: interval(5, 5)}
    drawn = _drawn(SkillRow("adding", weeks), SkillRow("comparing", {MONDAY: interval(1, 3)}))
    told = drawn.findtext(f"{SVG}desc")
    assert told == "Adding: week of 16 Nov 0 of 2, week of 23 Nov 5 of 5. Comparing: week of 23 Nov 1 of 3."
    named = {element.get("id") for element in drawn.iter()}
    assert set(drawn.attrib["aria-labelledby"].split()) <= named


def test_the_last_weeks_follow_each_other_without_a_gap() -> None:
    """A week without answers keeps its place; what is older than the last seven weeks is left out."""
    row = SkillRow("adding", {MONDAY - timedelta(weeks=ago): interval(1, 1) for ago in (0, 2, 9)})
    weeks = last_weeks([row])
    assert len(weeks) == MOST_WEEKS
    assert [later - sooner for sooner, later in pairwise(weeks)] == [timedelta(7)] * 6
    gone = SkillRow("gone", {MONDAY - timedelta(weeks=9): interval(1, 1)})
    assert "Gone" not in str(_drawn(row, gone).findtext(f"{SVG}desc"))


def test_nothing_answered_is_no_drawing() -> None:
    """Nothing is drawn of nothing."""
    assert skill_weeks_picture([SkillRow("adding", {})]) == ""
