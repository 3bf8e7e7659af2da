"""Working in columns, in Spanish: what is regrouped, taken away and added, column by column."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import (
    SO,
    Nodes,
    a_single,
    agree,
    bare,
    regroups,
    some,
    the,
    to_regroup,
    told,
    units,
)
from onewhole.number.ladder import TEN
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Seam, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.columns import (
    ColumnAdded,
    ColumnOpened,
    ColumnTaken,
    DigitBroughtDown,
    DigitMultiplied,
    DigitsLaid,
    Divided,
    DivisionEnds,
    InColumns,
    Multiplied,
    ProductPoint,
    QuotientDigit,
    ZerosWritten,
)

ZERO, DIGIT = Thing("cero", "ceros"), Thing("cifra", "cifras", feminine=True)


def in_columns(reason: InColumns, words: ClassWords) -> Sentences:
    """Say what is done in a column, and what is written for it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import places
    >>> tens, ones = places(2).units
    >>> print(text_of(in_columns(ColumnAdded(ones, tens, (4, 6, 7), 0, outermost=False), ClassWords())))
    En las unidades, 4 y 6 y 7 son 17. 17 unidades son 1 decena y 7 unidades. Escribimos 7 abajo y 1 arriba de
    las decenas.
    """
    match reason:
        case ColumnOpened():
            return _opened(reason, words)
        case ColumnTaken():
            return _taken(reason)
        case ColumnAdded():
            return _added(reason)
        case DigitsLaid() | DigitMultiplied() | ZerosWritten() | ProductPoint():
            return _multiplied(reason)
        case QuotientDigit() | DigitBroughtDown() | DivisionEnds():
            return _divided(reason)
        case _:
            assert_never(reason)


def _opened(reason: ColumnOpened, words: ClassWords) -> Sentences:
    """Say why one is regrouped, and what stands in both columns then.

    Between the column that has too few and the one that gives stand no zeros, one, or several.
    """
    act = regroups(words, a_unit(reason.large))
    now: Nodes = ("ahora", "hay")
    if reason.left:
        now = (*now, *_standing(reason.left, reason.large), "y")
    now = (*now, *_standing(reason.now, reason.small))
    if not reason.begins:
        return told(act) + told(now)
    short = reason.short
    lacking: Nodes = ("no hay suficientes", units(short), "para quitar", some(reason.need, short))
    if reason.small == short:
        return told(lacking, SO, act) + told(now)
    if reason.small.size == TEN * short.size:
        none: Nodes = ("no hay", units(reason.small), "para", to_regroup(words))
    else:
        none = ("solo hay ceros hasta", *the(reason.large))
    return told(lacking) + told(none, SO, "primero", act) + told(now)


def _standing(count: int, unit: Unit) -> Nodes:
    """Say how many stand in a column: 10 en las decenas."""
    return (bare(count), "en", *the(unit))


def a_unit(unit: Unit) -> Nodes:
    """Name one of a column's unit: una decena, una de las unidades.

    >>> from onewhole.number.unit import ONE
    >>> a_unit(ONE)[0]
    'una de las'
    """
    if unit.size == 1:
        return (agree("una de las", "uno de los", unit), units(unit))
    return (a_single(unit),)


def _taken(reason: ColumnTaken) -> Sentences:
    left = reason.have - reason.gone
    column: Nodes = ("en", *the(reason.unit))
    if reason.blank:
        return told(column, "no se quita nada", SO, "escribimos", bare(left))
    return told(column, ",", bare(reason.have), "menos", bare(reason.gone), "es", bare(left))


def _added(reason: ColumnAdded) -> Sentences:
    column: Nodes = ("en", *the(reason.unit))
    digits: list[Nodes] = [(bare(digit),) for digit in reason.digits]
    if reason.carried:
        digits.append(("el", bare(reason.carried), "de arriba"))
    if len(digits) == 1:
        return told(column, ", solo está", digits[0], SO, "escribimos", bare(reason.total))
    first, *others = digits
    joined = [("y", *other) for other in others]
    made = told(column, ",", first, *joined, "son", bare(reason.total))
    if reason.total < TEN:
        return made
    return made + _written(reason, above=("arriba de", *the(reason.large)))


def _written(reason: ColumnAdded | DigitMultiplied, above: Nodes) -> Sentences:
    """Say what is written of ten or more: all of it where no digit follows, else one below and one above."""
    if reason.outermost:
        return told("a la izquierda no hay nada", SO, "escribimos", bare(reason.total))
    up, stays = divmod(reason.total, TEN)
    parts: Nodes = (some(up, reason.large),)
    if stays:
        parts = (*parts, "y", some(stays, reason.unit))
    worth = told(some(reason.total, reason.unit), "son", parts)
    return worth + told("escribimos", bare(stays), "abajo y", bare(up), above)


def _multiplied(reason: Multiplied) -> Sentences:
    match reason:
        case DigitsLaid():
            under = told("escribimos las últimas cifras una debajo de la otra")
            return under + told("el punto se pone al final")
        case DigitMultiplied():
            return _digit_multiplied(reason)
        case ZerosWritten(digit, unit, zeros, row):
            begun = "ahora multiplicamos por" if row else "multiplicamos por"
            return told(begun, some(digit, unit)) + told("primero escribimos", Counted(zeros, ZERO), "abajo")
        case ProductPoint(first, second):
            places = Counted(first + second, DIGIT)
            both = told("los dos números tienen juntos", places, "después del punto")
            return both + told("por eso la respuesta tiene", places, "después del punto")
        case _:
            assert_never(reason)


def _digit_multiplied(reason: DigitMultiplied) -> Sentences:
    fact = bare(reason.times * reason.digit)
    product: Nodes = (bare(reason.times), "por", bare(reason.digit), "es", fact)
    if reason.carried:
        product = (*product, Seam(", y"), "con el", bare(reason.carried), "de arriba son", bare(reason.total))
    made = told(product)
    if reason.total < TEN:
        return made + told("escribimos", bare(reason.total), "abajo")
    return made + _written(reason, above=("arriba de la cifra que sigue",))


def _divided(reason: Divided) -> Sentences:
    match reason:
        case QuotientDigit(unit, have, by, 0):
            over: Nodes = ("escribimos", bare(0), "arriba de", *the(unit))
            return told(bare(have), "es menos que", bare(by), SO, over)
        case QuotientDigit(unit, have, by, digit, begins):
            first = told("empezamos con", some(have, unit)) if begins else ()
            fits = (bare(digit), "por", bare(by), "es", bare(reason.product))
            too_much = (bare(digit + 1), "por", bare(by), "es más que", bare(have))
            below = (bare(reason.product), "abajo")
            return (
                first
                + told(fits, Seam(", y"), too_much)
                + told("escribimos", bare(digit), "arriba de", the(unit), "y", below)
            )
        case DigitBroughtDown(unit, _, _, down, now, point):
            pointed = told("ponemos el punto arriba") if point else ()
            down_to = told("bajamos el", bare(down)) + told("ahora hay", some(now, unit))
            return _left(reason) + pointed + down_to
        case DivisionEnds(_, _, by):
            if not reason.left:
                return _left(reason) + told("no sobra nada")
            over = (bare(reason.left), "es menos que", bare(by))
            return _left(reason) + told(over, SO, "es el residuo")
        case _:
            assert_never(reason)


def _left(reason: DigitBroughtDown | DivisionEnds) -> Sentences:
    """Say what is left when the product is taken away; nothing where nothing is taken."""
    if reason.taken is None:
        return ()
    return told(bare(reason.have), "menos", bare(reason.taken), "es", bare(reason.left))
