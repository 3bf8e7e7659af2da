"""The words that stand on a line itself: what is asked of a number."""

from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType
from typing import assert_never

from onewhole.languages.english.words import unit_called, unit_name
from onewhole.number.unit import DOLLAR, Kind, Unit
from onewhole.statements.line_plot import Bound, PlotAsk
from onewhole.statements.wording import FactorWords, FromEnd, GroupWords, OfPlot, Phrase, ToNearest, Wording

_COINS = {Fraction(1, 10): "dime", Fraction(1, 100): "cent"}

#: What is asked of a line plot: of all its measurements, or of those beside a value, which is written behind.
_OF_PLOT = {
    (PlotAsk.COUNT, False): ("find how many", "there are in all"),
    (PlotAsk.COUNT, True): ("find how many", "are"),
    (PlotAsk.TOTAL, False): ("find the total", "of all"),
    (PlotAsk.TOTAL, True): ("find the total", "of those that are"),
    (PlotAsk.SHARE, False): ("find how much", "each has", "if the total", "is shared equally"),
    (PlotAsk.MOST, False): ("find the", "most common value"),
    (PlotAsk.SPREAD, False): ("find the difference", "of the greatest", "and the least"),
}
_BOUNDS: Mapping[Bound | None, tuple[str, ...]] = MappingProxyType(
    {
        None: (),
        Bound.EXACTLY: (),
        Bound.MORE: ("more than",),
        Bound.LESS: ("less than",),
        Bound.AT_LEAST: ("at least",),
        Bound.AT_MOST: ("at most",),
    }
)


def wording(thing: Wording) -> str:
    """Write words of a line, in small letters and without numbers, so that they are read back.

    >>> from onewhole.number.ladder import places
    >>> from onewhole.number.unit import ONE
    >>> wording(ToNearest(places(3).units[0])), wording(ToNearest(ONE))
    ('to the nearest hundred', 'to the nearest whole number')
    """
    return " ".join(wording_parts(thing))


def wording_parts(thing: Wording) -> tuple[str, ...]:
    """Write the same words in parts between which a line may be broken.

    >>> from onewhole.number.unit import ONE
    >>> wording_parts(ToNearest(ONE))
    ('to the nearest', 'whole number')
    """
    match thing:
        case Phrase() | FactorWords() | GroupWords():
            return (thing.value,)
        case FromEnd(falling):
            return ("from greatest", "to least") if falling else ("from least", "to greatest")
        case OfPlot(asks, bound):
            return (*_OF_PLOT[asks, bound is not None], *_BOUNDS[bound])
        case ToNearest(unit):
            return "to the nearest", rung_called(unit, 1)
        case _:
            assert_never(thing)


def rung_called(unit: Unit, count: int = 2) -> str:
    """Name what is rounded to: hundreds, feet; whole numbers, and of a number with a unit that unit.

    >>> from onewhole.number.ladder import places
    >>> from onewhole.number.unit import ONE
    >>> rung_called(ONE), rung_called(places(1, "$").units[0], 1)
    ('whole numbers', 'dollar')
    """
    if unit.kind is not Kind.NUMBER:
        return unit_name(unit, count)
    if unit.mark and unit.size == 1:
        return unit_called(unit.mark, count)
    if unit.mark == DOLLAR and unit.size in _COINS:
        return f"{_COINS[unit.size]}{'s' * (count != 1)}"
    return f"whole number{'s' * (count != 1)}" if unit.size == 1 else unit_name(unit, count)
