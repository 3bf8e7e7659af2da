"""What a way to work is called on the numbers of a problem: it names what is regrouped, filled or counted."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.round_page import ROUND_PAGE
from onewhole.languages.english.words import article, unit_name
from onewhole.number.ladder import Style
from onewhole.number.unit import ONE, Unit
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import quantities
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import AnotherName, Comparison, MissingNumber, Ordering, Question
from onewhole.working.reasons.comparing import (
    AgainstHalf,
    AgainstOne,
    AsManyMissing,
    AsManyPieces,
    CountDecides,
    MoreAndLarger,
    PiecesOfOneSize,
    PlaceDecides,
    WholesDecide,
)
from onewhole.working.reasons.regrouping import OneIsWorth
from onewhole.working.working import Working

#: So many regroupings are named one by one.
NAMED = 2

_IN_PLACES = {
    "units_apart": "Place by place, then regroup",
    "wholes_first": "Take the larger places first, then regroup",
    "from_whole": "Take it from a round number, then add back",
    "make_a_whole": "Make a ten",
}
#: Names that differ from those for mixed numbers.
_ON: Mapping[Style, Mapping[str, str]] = MappingProxyType(
    {
        Style.PLACES: _IN_PLACES,
        Style.DECIMAL: _IN_PLACES
        | {
            "from_whole": "Take it from the whole number, then add back",
            "make_a_whole": "Make a whole number",
            "to_fractions": "Count both in the smallest place",
        },
        Style.MEASURE: {
            "units_apart": "Unit by unit, then regroup",
            "wholes_first": "Take the larger unit first, then regroup",
            "from_whole": "Take it from the larger unit, then add back",
            "make_a_whole": "Fill up the larger unit",
            "to_fractions": "Count both in the smaller unit",
        },
    }
)


#: What decides which of two numbers is more, as the name of a way to compare.
_DECIDES: Mapping[type, str] = MappingProxyType(
    {
        WholesDecide: "Compare the wholes",
        PlaceDecides: "Compare from the largest unit on",
        PiecesOfOneSize: "Compare how many pieces",
        AsManyPieces: "Compare the size of the pieces",
        AgainstOne: "Compare with one whole",
        AgainstHalf: "Compare with one half",
        AsManyMissing: "Compare what is missing to one whole",
        MoreAndLarger: "Compare how many pieces and their size",
        CountDecides: "Compare pieces of one size",
    }
)
#: Numbers of two kinds are worked as those of the first of these.
_FIRST = (Style.MIXED, Style.MEASURE, Style.DECIMAL, Style.PLACES)


def way_of(working: Working, words: ClassWords, key: str | None = None) -> str:
    """Return what the way of a working is called, or another way with this key on its numbers.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> way_of(work(read_statement("304 - 128"), REGROUP_FIRST), ClassWords())
    'Regroup a hundred, then a ten'
    """
    if isinstance(working.statement, Comparison) and key is None:
        return _compared(working)
    if isinstance(working.statement, Ordering | PlotQuestion):
        return ROUND_PAGE.way(working.strategy)
    chosen, style = key or working.strategy, _style(working)
    opened = [line.because.large for line in working.lines if isinstance(line.because, OneIsWorth)]
    if style is Style.MIXED and not (chosen == "regroup_first" and any(unit.mark for unit in opened)):
        return ROUND_PAGE.way(chosen)
    if chosen == "regroup_first":
        return _regrouped([] if key else opened, style, words)
    return _ON[style].get(chosen) or ROUND_PAGE.way(chosen)


def _compared(working: Working) -> str:
    """Name a way to compare by what decides."""
    decides = working.lines[-1].because
    return _DECIDES.get(type(decides), ROUND_PAGE.way(working.strategy))


def _style(working: Working) -> Style:
    """Return how the numbers of a problem are written: as mixed numbers where one of them is."""
    match working.statement:
        case Question(asked) | AnotherName(asked):
            found = quantities(asked)
        case Comparison(left, right):
            found = (*quantities(left), *quantities(right))
        case MissingNumber(rest, gap):
            if not gap.alone:
                return Style.MIXED
            found = quantities(rest)
        case Rounding(number):
            found = (number,)
        case Ordering(parts):
            found = parts
        case AskedInWords():
            found = quantities(working.statement.about)
        case _:
            assert_never(working.statement)
    styles = {number.ladder.style for number in found}
    return next(style for style in _FIRST if style in styles)


def _regrouped(opened: list[Unit], style: Style, words: ClassWords) -> str:
    if not opened:
        return "Regroup first" if style is not Style.MEASURE else "Regroup the larger unit first"
    names = [_a(unit, words) for unit in opened]
    if len(names) > NAMED:
        return f"Regroup {names[0]}, then on to the right"
    return f"Regroup {', then '.join(names)}"


def _a(unit: Unit, words: ClassWords) -> str:
    name = unit_name(unit, 1, words if unit == ONE else None)
    return f"{article(name)} {name}"
