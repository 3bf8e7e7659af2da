"""Statements about which stories are told, for walking every sentence and for Hypothesis."""

from dataclasses import replace

from hypothesis import strategies as st

from onewhole.languages.english.own_story import OwnStory
from onewhole.languages.english.words import ClassWords
from onewhole.notations.text import text
from onewhole.number.digits import in_digits
from onewhole.number.ladder import Style
from onewhole.number.unit import Kind
from onewhole.statements.expression import value
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement
from tests.kit.numbers import amounts_of

_TWO = tuple(
    shape.format(a=large, b=small)
    for large, small in (
        ("5 1/3", "2 2/3"),
        ("5/6", "1/6"),
        ("2", "1"),
        ("304", "128"),
        ("5.2", "0.7"),
        ("1", "3/8"),
        ("5 ft 2 in", "1 ft 1 in"),
        ("6 lb 1 oz", "3 lb 12 oz"),
        ("2 h 5 min", "1 h 50 min"),
        ("2 gal 1 qt", "1 gal 3 qt"),
        ("3 m 5 cm", "1 m 80 cm"),
        ("4 kg 50 g", "1 kg 975 g"),
        ("5 L 200 mL", "2 L 900 mL"),
        ("$5.25", "$3.80"),
    )
    for shape in (
        "{a} - {b}",
        "{a} + {b}",
        "{b} + {a}",
        "{a} ? {b}",
        "{b} ? {a}",
        "{a} - ? = {b}",
        "{b} + ? = {a}",
        "? - {a} = {b}",
        "? + {b} = {a}",
    )
)
#: Three numbers, added, or the last of them taken away.
THREE = tuple(
    f"{a} + {b} {sign} {c}"
    for a, b, c in (
        ("5 1/6", "2 3/6", "1 5/6"),
        ("3/8", "4/8", "1/8"),
        ("345", "128", "67"),
        ("4.5", "2.75", "0.8"),
        ("3 ft 7 in", "2 ft 8 in", "1 ft 11 in"),
        ("6 lb 1 oz", "3 lb 12 oz", "9 oz"),
        ("1 h 20 min", "50 min", "25 min"),
        ("2 gal 1 qt", "1 gal 3 qt", "3 qt"),
        ("3 m 5 cm", "1 m 80 cm", "40 cm"),
        ("4 kg 50 g", "1 kg 975 g", "800 g"),
        ("5 L 200 mL", "2 L 900 mL", "1 L"),
        ("$5.25", "$3.80", "$2"),
    )
    for sign in "+-"
)
#: One statement of each kind of unknown for each kind of amount, and for amounts under one.
TOLD = (*_TWO, *THREE, "7 2/6 = 6 ?/6", "7 2/6 = 1 ?/6", "3/4 = ?/12", "2 = ?/5", "11/6 = 1 ?/6")

TRAIL = replace(ClassWords.for_whole("trail mile"), story=OwnStory("the trail club", "walks"))
WORDS = (
    ClassWords.for_whole("strip of kite paper"),
    ClassWords.for_whole("strip"),
    ClassWords.for_whole("orange"),
    TRAIL,
)

_SHAPES = (
    "{a} - {b}",
    "{a} + {b}",
    "{a} ? {b}",
    "{a} - ? = {b}",
    "{b} + ? = {a}",
    "? - {a} = {b}",
    "? + {b} = {a}",
)


@st.composite
def tellable(draw: st.DrawFn) -> Statement:
    """Any statement about two amounts of one kind that a story can be told about."""
    amounts = amounts_of(draw(st.sampled_from(tuple(Kind)))).filter(
        lambda one: one.value > 0 and (one.ladder.style in {Style.MIXED, Style.MEASURE} or in_digits(one))
    )
    high, low = sorted((draw(amounts), draw(amounts)), key=value, reverse=True)
    return read_statement(draw(st.sampled_from(_SHAPES)).format(a=text(high), b=text(low)))
