"""The words that stand on a line itself, in Spanish: what is asked of a number."""

from fractions import Fraction
from typing import assert_never

from onewhole.languages.spanish.words import called, is_feminine, unit_called
from onewhole.number.unit import DOLLAR, Kind, Unit
from onewhole.sentences.node import Thing
from onewhole.statements.wording import FromEnd, Phrase, ToNearest, Wording

_COINS = {Fraction(1, 10): "décimo de dólar", Fraction(1, 100): "centavo"}
_PHRASES = {
    Phrase.ROUND: "redondea",
    Phrase.ORDER: "ordena",
    Phrase.FACTORS: "factores de",
    Phrase.MULTIPLES: "múltiplos de",
}


def wording_parts(thing: Wording) -> tuple[str, ...]:
    """Write words of a line in parts between which it may be broken, in small letters.

    >>> from onewhole.number.unit import ONE
    >>> wording_parts(ToNearest(ONE)), wording_parts(FromEnd(falling=True))
    (('al número entero', 'más cercano'), ('de mayor', 'a menor'))
    """
    match thing:
        case Phrase():
            return (_PHRASES[thing],)
        case FromEnd(falling):
            return ("de mayor", "a menor") if falling else ("de menor", "a mayor")
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
