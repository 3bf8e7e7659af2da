"""The skills of a class as a drawing that stands alone: names beside bars, what looks mean, the caution.

It holds counts and no pupil's code, tells itself to those who cannot see it, and needs no colour.
"""

from collections.abc import Sequence
from fractions import Fraction
from textwrap import wrap
from xml.etree.ElementTree import Element, SubElement, tostring

from onewhole.languages.class_words import ClassWords
from onewhole.notations.pencil import INK, PAPER
from onewhole.notations.svg import draw, labelled, mm
from onewhole.pictures.skill_bars import MARGIN, ROW, TALL, SkillCounts, skill_bars

#: Room for the names, and what fits into it, cut off where it is longer.
NAMES, LONGEST = Fraction(62), 30
TOP, LINE = Fraction(14), Fraction(6)
SIZE = Fraction(4)
#: Millimetres to a sign of a line, amply.
SIGN = Fraction(9, 4)
LEGEND = "hatched: there; dotted: not known; empty: not there"


def skills_picture(model: str, skills: Sequence[tuple[str, SkillCounts]], caution: str) -> str:
    """Return an SVG file with a bar a skill.

    >>> drawn = skills_picture("DINA", [("open a <whole>", SkillCounts(18, 5, 2))], "A hint.")
    >>> "open a &lt;whole&gt;: 18 there, 5 not known, 2 not there." in drawn
    True
    """
    bars = skill_bars([counts for _, counts in skills])
    lines = wrap(caution, int((bars.width + NAMES) / SIGN))
    width, foot = NAMES + bars.width, TOP + bars.height
    height = foot + LINE * (len(lines) + 2)
    told = f"{model}, {skills[0][1].pupils:,} pupils. {' '.join(_told(*each) for each in skills)} {caution}"
    page = labelled(width, height, told)
    SubElement(page, "rect", {"width": mm(width), "height": mm(height), "fill": PAPER})
    _write(page, MARGIN, TOP / 2, f"Skills of {skills[0][1].pupils:,} pupils ({model})")
    for at, (name, _) in enumerate(skills):
        short = name if len(name) <= LONGEST else f"{name[: LONGEST - 1]}…"
        _write(page, MARGIN, TOP + MARGIN + ROW * at + TALL / 2, short)
    for at, line in enumerate([LEGEND, *lines], start=1):
        _write(page, MARGIN, foot + LINE * at - SIZE / 2, line)
    place = SubElement(page, "g", {"transform": f"translate({mm(NAMES)} {mm(TOP)})"})
    draw(place, bars, ClassWords())
    return f"{tostring(page, encoding='unicode')}\n"


def _told(name: str, counts: SkillCounts) -> str:
    return f"{name}: {counts.there} there, {counts.not_known} not known, {counts.not_there} not there."


def _write(page: Element, x: Fraction, middle: Fraction, text: str) -> None:
    place = {"x": mm(x), "y": mm(middle + SIZE / 3), "font-size": mm(SIZE), "fill": INK}
    SubElement(page, "text", {**place, "font-family": "Lexend, sans-serif"}).text = text
