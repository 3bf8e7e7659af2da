"""Good questions for home, in Spanish, as one asks a child. Common practice, no source."""

from fractions import Fraction
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import a_single, agree, asked, thing, units
from onewhole.number.ladder import TEN
from onewhole.number.unit import ONE, Unit
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation
from onewhole.sentences.sentence import Sentences

_TEN, _TENTH = Unit(Fraction(TEN)), Unit(Fraction(1, TEN))


def operation_asked(one: About, words: ClassWords) -> Sentences:
    """Ask about what is done in a problem.

    >>> from onewhole.notations.sentences.text import text_of
    >>> tira = ClassWords("tira", "tiras", feminine=True)
    >>> text_of(operation_asked(About(Operation.ADD, Units.PIECES), tira))
    '¿Las partes llenan una tira o más?'
    """
    match one.operation:
        case Operation.SUBTRACT:
            return _taking(one.units)
        case Operation.ADD:
            return _adding(one.units, words)
        case Operation.COMPARE:
            return _comparing(one.units)
        case Operation.MULTIPLY:
            return asked("cuántos grupos hay y cuánto tiene cada uno")
        case Operation.DIVIDE:
            return asked("qué repartimos primero y qué hacemos con lo que sobra")
        case Operation.RENAME:
            return asked("de qué otra forma puedes escribir la misma cantidad")
        case Operation.FIND:
            return asked("qué número hace que los dos lados sean iguales")
        case Operation.ORDER:
            return asked("qué número es el menor y cómo lo ves")
        case Operation.READ:
            return asked("qué representa cada marca y de qué marcas se trata")
        case Operation.ROUND:
            return asked("entre qué dos números está y de cuál está más cerca")
        case _:
            assert_never(one.operation)


def guess_asked() -> Sentences:
    """Ask whether an answer can be right."""
    return asked("se parece tu respuesta a lo que pensaste primero")


def _taking(found: Units) -> Sentences:
    match found:
        case Units.PIECES:
            return asked("hay suficientes partes para quitar")
        case Units.UNLIKE:
            return asked("qué tamaño de parte sirve para todas las fracciones")
        case Units.PLACES | Units.DECIMALS:
            return asked("hay suficiente en cada lugar para quitar")
        case Units.MEASURES:
            return asked("hay suficientes de la unidad más pequeña para quitar")
        case _:
            assert_never(found)


def _adding(found: Units, words: ClassWords) -> Sentences:
    match found:
        case Units.PIECES:
            return asked("las partes llenan", a_single(ONE, words), "o más")
        case Units.UNLIKE:
            return asked("qué tamaño de parte sirve para todas las fracciones")
        case Units.PLACES | Units.DECIMALS:
            return asked("hay diez o más en algún lugar")
        case Units.MEASURES:
            return asked("las unidades pequeñas forman una más grande")
        case _:
            assert_never(found)


def _comparing(found: Units) -> Sentences:
    match found:
        case Units.PIECES | Units.UNLIKE:
            return asked("las partes son del mismo tamaño")
        case Units.PLACES | Units.DECIMALS:
            return asked("qué lugar miras primero")
        case Units.MEASURES:
            return asked("qué unidad miras primero")
        case _:
            assert_never(found)


def unit_asked(one: About, words: ClassWords) -> Sentences:
    """Ask about the units of a problem; nothing where there is nothing to ask."""
    match one.units:
        case Units.PIECES | Units.UNLIKE:
            return asked("cuántas partes tiene", a_single(ONE, words))
        case Units.PLACES if one.operation in {Operation.MULTIPLY, Operation.DIVIDE}:
            return ()
        case Units.PLACES:
            return asked(agree("cuántas", "cuántos", thing(ONE, None)), units(ONE), "tiene", a_single(_TEN))
        case Units.DECIMALS:
            return asked("cuántos", units(_TENTH), "forman un entero")
        case Units.MEASURES:
            return asked("cuántas de la unidad pequeña forman una de la grande")
        case _:
            assert_never(one.units)
