"""Statements about which stories are told, for walking every sentence and for Hypothesis."""

from collections import defaultdict
from collections.abc import Iterable
from functools import lru_cache
from itertools import cycle

from hypothesis import strategies as st
from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords, OwnStory
from onewhole.languages.english.words import words_for
from onewhole.notations.text import text
from onewhole.number.digits import in_digits
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.story_asks import asked
from onewhole.problems.story_structure import Structure
from onewhole.sheets.stories import Story, story
from onewhole.statements.expression import value
from onewhole.statements.line_plot import PlotQuestion
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
#: An amount asked for in other pieces.
RENAMED = ("7 2/6 = 6 ?/6", "7 2/6 = 1 ?/6", "3/4 = ?/12", "2 = ?/5", "11/6 = 1 ?/6")
_LOTS = (
    ("2", "3", "9"),
    ("2 1/4", "1/4", "3 3/4"),
    ("1/8", "2/8", "7/8"),
    ("1.5", "0.75", "4"),
    ("3 ft 7 in", "2 ft 8 in", "8 ft 2 in"),
    ("6 lb 1 oz", "12 oz", "9 lb"),
    ("1 h 20 min", "50 min", "3 h"),
    ("2 gal 1 qt", "3 qt", "5 gal"),
    ("3 m 5 cm", "40 cm", "5 m"),
    ("4 kg 50 g", "800 g", "6 kg"),
    ("1 L", "200 mL", "2 L 900 mL"),
    ("$2", "$3.80", "$7.25"),
)
#: One of three addends is missing, in each place.
ONE_OF_THREE = tuple(
    shape.format(a=a, b=b, c=c)
    for (a, b, c), shape in zip(
        _LOTS, cycle(("{a} + ? + {b} = {c}", "? + {a} + {b} = {c}", "{a} + {b} + ? = {c}")), strict=False
    )
)
#: Three numbers and more, put in order from either end.
ORDERED = (
    *(
        f"order {c}, {a}, {b} from {ends}"
        for (a, b, c), ends in zip(_LOTS, cycle(("least to greatest", "greatest to least")), strict=False)
    ),
    "order 5, 3, 8, 1, 9, 2, 7, 4",
    "order 1/2, 2/4, 3/4",
)
#: What is rounded, to a place and to a unit.
ROUNDED = (
    *(
        "round 4567 to the nearest hundred",
        "round 3.46 to the nearest tenth",
        "round 0.46 to the nearest tenth",
    ),
    *("round 2 5/8 to the nearest whole number", "round 5 ft 8 in to the nearest foot"),
    *("round 5 5/8 in to the nearest inch", "round 3 lb 9 oz to the nearest pound"),
    *("round 2 h 35 min to the nearest hour", "round 5 gal 3 qt to the nearest gallon"),
    *("round 3 m 85 cm to the nearest meter", "round 4 kg 650 g to the nearest kilogram"),
    *(
        "round 2 L 450 mL to the nearest liter",
        "round $3.46 to the nearest dollar",
        "round $3.46 to the nearest dime",
    ),
)
#: What is asked for in another form or in other units.
OTHER_NAMES = (
    *("12/18 in simplest form", "11/4 as a mixed number", "2 3/4 as a fraction", "3 as a fraction"),
    *(
        "0.75 as a fraction",
        "3/4 as a decimal",
        "12/18 = ?",
        "11/4 = ?",
        "2 3/4 = ?",
        "2 6/8 = ?",
        "14/8 = ?",
    ),
    *("0.75 = ?", "1.5 = ?", "5 5/8 in as a fraction", "3/4 in as a decimal", "5.2 km as a fraction"),
    *("2.5 lb as a fraction", "2.5 kg as a fraction", "1.5 h as a fraction", "2.5 gal as a fraction"),
    *("2.5 L as a fraction", "$0.75 as a fraction", "3 ft = ? in", "26 in = ? ft ? in", "26 in = ?"),
    *(
        "13 ft = ? yd ? ft",
        "40 oz = ? lb ? oz",
        "95 min = ? h ? min",
        "9 qt = ? gal ? qt",
        "305 cm = ? m ? cm",
    ),
    *("4050 g = ? kg ? g", "5 L = ? mL", "3 h = ?", "2 gal 1 qt = ?"),
)
#: Products: so many times, a part of, and an amount so many times.
PRODUCTS = (
    *(
        f"{factor} x {amount}"
        for factor in ("4", "1 1/2", "3/4")
        for amount in (
            *("36", "2/3", "1 2/5", "2.5", "2 ft 8 in", "3 lb 4 oz", "1 h 20 min", "2 gal 2 qt", "3 m 40 cm"),
            *("4 kg 80 g", "1 L 200 mL", "$3.20", "2 5/8 in"),
        )
    ),
    *("1 x 5", "12 x 1", "2 ft 8 in x 4", "3 lb 4 oz x 4", "1 h 20 min x 3", "2 gal 2 qt x 3"),
)
EACH = ("3 m 40 cm x 2", "4 kg 80 g x 3", "1 L 200 mL x 2", "$3.20 x 4", "2 5/8 in x 3")
#: Times of day.
CLOCK_TIMES = (
    *("9:45 to 11:20", "9:50 a.m. to 2:15 p.m.", "10:40 to 4:40", "9:45 + 1 h 35 min", "11:20 - 45 min"),
    *("1:05 p.m. - 2 h", "11:30 p.m. + 45 min", "12:15 a.m. to 1:00 a.m."),
)
_UNITS = (
    ("6 ft", "2 ft", "1 ft 3 in"),
    ("6 lb", "2 lb", "1 lb 4 oz"),
    ("2 h", "30 min", "20 min"),
    ("6 gal", "2 gal", "1 gal 1 qt"),
    ("6 m", "2 m", "1 m 20 cm"),
    ("6 kg", "2 kg", "500 g"),
    ("6 L", "2 L", "500 mL"),
    ("$6", "$2", "$1.50"),
)
#: Quotients: with a remainder, without one, a fraction, and with units.
DIVIDED = (
    *("87 / 4, groups needed", "87 / 4, full groups", "87 / 4, left over"),
    *("87 / 4", "12 / 4", "1655 / 27", "3 / 4", "1/3 / 4", "2 / 1/3", "7 2/6 / 4", "5.2 / 4", "12 / 1.5"),
    *(
        "7 / 2 1/2",
        "5 ft 2 in / 2",
        "$1 / 3",
        "7 ft / 2 ft",
        "9 lb / 2 lb",
        "2 h 10 min / 30 min",
        "75¢ / 50¢",
    ),
    *("7 gal / 2 gal", "7 m / 2 m", "7 kg / 2 kg", "7 L / 2 L", "4 / 1"),
    *(one for a, b, _ in _UNITS for one in (f"{a} / 2", f"{a} / {b}")),
)
#: What is listed.
LISTED = ("factors of 36", "factors of 23", "multiples of 7 to 50", "multiples of 1 to 12")
_STEPS = (
    *("{a} - {b} - {c}", "{a} - {b} + {c}", "{a} - ({b} + {c})", "{a} - ({b} - {c})", "{b} + 3 x {c}"),
    *("{a} - 2 x {c}", "3 x {a} + {b}", "3 x {a} - {b}", "3 x ({a} + {b})", "3 x ({a} - {b})"),
    *("({a} + {b}) x 4", "({a} - {b}) x 4", "({a} + {b}) / 2", "({a} - {b}) / 2"),
)
_OF_STEPS = (
    ("96", "16", "8"),
    ("7 1/2", "2", "1 1/2"),
    ("5/8", "2/8", "1/8"),
    ("4.5", "1.2", "0.3"),
    _UNITS[0],
)
#: Several steps.
STEPS = (
    *(shape.format(a=a, b=b, c=c) for a, b, c in _OF_STEPS[::2] for shape in _STEPS[::2]),
    *(shape.format(a=a, b=b, c=c) for a, b, c in _OF_STEPS[1::2] for shape in _STEPS[1::2]),
    *("47 + 42 / 6", "47 - 42 / 6", "7 1/2 - 12 / 4", "42 / 6 x 5", "18 / 6 + 4 x (5 - 2)"),
)
_PLOTS = (
    *("1/4: 2, 1/2: 3, 5/8 in: 1", "1/4: 2, 1/2: 3, 5/8: 1", "3: 2, 5: 4, 6: 1", "1/2: 2, 3/4 lb: 3"),
    *("1/2: 1, 3/4 h: 3", "1/4: 2, 1/2 gal: 3", "1: 2, 1 1/2 m: 3", "1/4: 3, 1/2 kg: 2", "1/2: 2, 3/4 L: 1"),
)
_OF_PLOT = (
    "count",
    "count above {a}",
    "count at most {b}",
    "total",
    "total at least {a}",
    "total exactly {b}",
)
#: What is asked of a line plot.
PLOTS = tuple(
    f"plot {plot}; {ask.format(a=plot.split(':')[0], b=plot.split(', ')[1].split(':')[0])}"
    for plot in _PLOTS
    for ask in (*_OF_PLOT, "most", "spread", "share")
)
#: What is told of numbers that are neither added nor taken away.
FURTHER = (*ORDERED, *ROUNDED, *OTHER_NAMES, *PRODUCTS, *EACH, *CLOCK_TIMES)
#: One statement of each kind of unknown for each kind of amount, and for amounts under one.
TOLD = (*_TWO, *THREE, *RENAMED, *ONE_OF_THREE, *FURTHER, *DIVIDED, *LISTED, *STEPS, *PLOTS[::10])

#: With every unit in every shape of several steps, to reach every sentence.
EVERY = (
    *TOLD,
    *PLOTS,
    *(shape.format(a=a, b=b, c=c) for a, b, c in (*_OF_STEPS, *_UNITS) for shape in _STEPS),
)

TRAIL = replace(words_for("trail mile"), story=OwnStory("the trail club", "walks"))
#: More seeds than there are ways to tell one statement.
SEEDS = 12
WORDS = (
    words_for("strip of kite paper"),
    words_for("strip"),
    words_for("orange"),
    TRAIL,
)


@lru_cache(maxsize=8192)
def every(typed: str, words: ClassWords | None = None) -> tuple[Story, ...]:
    """All the stories that can be told about a statement: seeds go through them and begin again."""
    found: list[Story] = []
    for seed in range(SEEDS):
        told = story(read_statement(typed), seed=seed, words=words)
        if told in found:
            break
        found.append(told)
    return tuple(found)


def to_be_told(statement: Statement) -> tuple[Quantity, ...]:
    """The numbers that a story tells, in their order: those of a line plot stay on the plot."""
    if isinstance(statement, PlotQuestion):
        return (statement.among.value,) if statement.among else ()
    return asked(statement).numbers


def grouped(stories: Iterable[Story]) -> dict[Structure, set[str]]:
    """The words of stories by how they are built."""
    found: dict[Structure, set[str]] = defaultdict(set)
    for one in stories:
        found[one.structure].add(one.words)
    return found


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
