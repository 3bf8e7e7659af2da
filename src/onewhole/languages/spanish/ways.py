"""What a way to work is called in Spanish: it names what is regrouped, filled or counted."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import thing, to_regroup
from onewhole.languages.spanish.round_page import ROUND_PAGE
from onewhole.languages.spanish.words import called, is_feminine
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
    "units_apart": "Lugar por lugar, y luego reagrupar",
    "wholes_first": "Quitar primero los lugares más grandes, y luego reagrupar",
    "from_whole": "Quitar de un número redondo, y luego sumar de regreso",
    "make_a_whole": "Formar una decena",
}
#: Names that differ from those for mixed numbers.
_ON: Mapping[Style, Mapping[str, str]] = MappingProxyType(
    {
        Style.PLACES: _IN_PLACES,
        Style.DECIMAL: _IN_PLACES
        | {
            "from_whole": "Quitar del número entero, y luego sumar de regreso",
            "make_a_whole": "Formar un número entero",
            "to_fractions": "Contar los dos en el lugar más pequeño",
        },
        Style.MEASURE: {
            "units_apart": "Unidad por unidad, y luego reagrupar",
            "wholes_first": "Quitar primero la unidad más grande, y luego reagrupar",
            "from_whole": "Quitar de la unidad más grande, y luego sumar de regreso",
            "make_a_whole": "Completar la unidad más grande",
            "to_fractions": "Contar los dos en la unidad más pequeña",
        },
    }
)

#: What decides which of two numbers is more, as the name of a way to compare.
_DECIDES: Mapping[type, str] = MappingProxyType(
    {
        WholesDecide: "Comparar los enteros",
        PlaceDecides: "Comparar desde la unidad más grande",
        PiecesOfOneSize: "Comparar cuántas partes hay",
        AsManyPieces: "Comparar el tamaño de las partes",
        AgainstOne: "Comparar con un entero",
        AgainstHalf: "Comparar con un medio",
        AsManyMissing: "Comparar lo que falta para un entero",
        MoreAndLarger: "Comparar cuántas partes hay y su tamaño",
        CountDecides: "Comparar partes del mismo tamaño",
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
    'Reagrupar una centena, luego una decena'
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
    verb = to_regroup(words).capitalize()
    if not opened:
        return f"{verb} primero" if style is not Style.MEASURE else f"{verb} primero la unidad más grande"
    names = [_a(unit, words) for unit in opened]
    if len(names) > NAMED:
        return f"{verb} {names[0]}, y seguir hacia la derecha"
    return f"{verb} {', luego '.join(names)}"


def _a(unit: Unit, words: ClassWords) -> str:
    one = thing(unit, words if unit == ONE else None)
    return f"{'una' if is_feminine(one) else 'un'} {called(one, 1)}"
