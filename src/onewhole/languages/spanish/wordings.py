"""The words that stand on a line itself, in Spanish: what is asked of a number."""

from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType
from typing import assert_never

from onewhole.languages.spanish.words import called, is_feminine, unit_called
from onewhole.number.unit import DOLLAR, Kind, Unit
from onewhole.sentences.node import Thing
from onewhole.statements.line_plot import Bound, PlotAsk
from onewhole.statements.wording import FactorWords, FromEnd, GroupWords, OfPlot, Phrase, ToNearest, Wording

_COINS = {Fraction(1, 10): "décimo de dólar", Fraction(1, 100): "centavo"}
_PHRASES = {
    Phrase.ROUND: "redondea",
    Phrase.ORDER: "ordena",
    Phrase.FACTORS: "factores de",
    Phrase.MULTIPLES: "múltiplos de",
    Phrase.PRIME_OR_COMPOSITE: "primo o compuesto:",
    Phrase.MULTIPLE_OF: "múltiplo de",
    Phrase.GROUPS_NEEDED: "grupos necesarios:",
    Phrase.GROUPS_FULL: "grupos completos:",
    Phrase.GROUPS_LEFT: "sobran:",
    Phrase.FACTOR_OF: "factor de",
}
_OF_FACTORS = {
    FactorWords.OR_NOT: "o no:",
    FactorWords.IS_PRIME: "es primo",
    FactorWords.IS_COMPOSITE: "es compuesto",
    FactorWords.IS_NEITHER: "no es ni primo ni compuesto",
    FactorWords.IS_MULTIPLE_OF: "es múltiplo de",
    FactorWords.NO_MULTIPLE_OF: "no es múltiplo de",
    FactorWords.IS_FACTOR_OF: "es factor de",
    FactorWords.NO_FACTOR_OF: "no es factor de",
    FactorWords.PRIME: "primo",
    FactorWords.COMPOSITE: "compuesto",
    FactorWords.NEITHER: "ni primo ni compuesto",
    FactorWords.YES: "sí",
    FactorWords.NO: "no",
}
_OF_GROUPS = {
    GroupWords.NEEDED: "grupos necesarios",
    GroupWords.FULL: "grupos completos",
    GroupWords.LEFT: "cuántos sobran",
}

#: What is asked of a line plot: of all its measurements, or of those beside a value, which is written behind.
_OF_PLOT = {
    (PlotAsk.COUNT, False): ("halla cuántos", "hay en total"),
    (PlotAsk.COUNT, True): ("halla cuántos", "miden"),
    (PlotAsk.TOTAL, False): ("halla el total", "de todos"),
    (PlotAsk.TOTAL, True): ("halla el total", "de los que miden"),
    (PlotAsk.SHARE, False): ("halla cuánto", "tiene cada uno", "si el total", "se reparte por igual"),
    (PlotAsk.MOST, False): ("halla el valor", "más frecuente"),
    (PlotAsk.SPREAD, False): ("halla la diferencia", "entre el mayor", "y el menor"),
}
_BOUNDS: Mapping[Bound | None, tuple[str, ...]] = MappingProxyType(
    {
        None: (),
        Bound.EXACTLY: (),
        Bound.MORE: ("más de",),
        Bound.LESS: ("menos de",),
        Bound.AT_LEAST: ("al menos",),
        Bound.AT_MOST: ("como máximo",),
    }
)


def wording_parts(thing: Wording) -> tuple[str, ...]:
    """Write words of a line in parts between which it may be broken, in small letters.

    >>> from onewhole.number.unit import ONE
    >>> wording_parts(ToNearest(ONE)), wording_parts(FromEnd(falling=True))
    (('al número entero', 'más cercano'), ('de mayor', 'a menor'))
    """
    match thing:
        case Phrase():
            return (_PHRASES[thing],)
        case FactorWords():
            return (_OF_FACTORS[thing],)
        case GroupWords():
            return (_OF_GROUPS[thing],)
        case FromEnd(falling):
            return ("de mayor", "a menor") if falling else ("de menor", "a mayor")
        case OfPlot(asks, bound):
            return (*_OF_PLOT[asks, bound is not None], *_BOUNDS[bound])
        case ToNearest(unit):
            rung = rung_of(unit)
            if is_feminine(rung):
                return f"a la {called(rung, 1)}", "más cercana"
            return f"al {called(rung, 1)}", "más cercano"
        case _:
            assert_never(thing)


def rung_of(unit: Unit) -> Unit | Thing:
    """Return what is rounded to: hundreds, feet; whole numbers, and of a number with a unit that unit.

    >>> from onewhole.number.unit import ONE
    >>> rung_of(ONE).one
    'número entero'
    """
    if unit.kind is not Kind.NUMBER:
        return unit
    if unit.mark and unit.size == 1:
        feminine = is_feminine(unit)
        return Thing(unit_called(unit.mark, 1), unit_called(unit.mark), None, feminine=feminine)
    if unit.mark == DOLLAR and unit.size in _COINS:
        head, of, rest = _COINS[unit.size].partition(" ")
        return Thing(f"{head}{of}{rest}", f"{head}s{of}{rest}", None)
    return Thing("número entero", "números enteros", None) if unit.size == 1 else unit
