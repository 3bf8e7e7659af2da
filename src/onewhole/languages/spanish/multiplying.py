"""Taking a number so many times, part by part, and multiplying fractions, in Spanish."""

from collections.abc import Sequence
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.jumping import JUMP
from onewhole.languages.spanish.making import Nodes, a_single, bare, listed, some, the, told
from onewhole.number.quantity import Quantity
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Counted, Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.multiplying import (
    EachUnitTimes,
    EqualParts,
    KnownProduct,
    Multiplying,
    OneFractionEach,
    PartsMultiplied,
    PlacesMultiplied,
    SharesTaken,
    SplitToMultiply,
    TopsAndBottoms,
    TurnedRound,
    UnitsTimes,
    UnitTimes,
)


def multiplying(reason: Multiplying, words: ClassWords) -> Sentences:
    """Say how often a number is taken, what its parts make, or how fractions are multiplied.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(multiplying(UnitTimes(4, 2, mixed(3).units[1]), ClassWords()))
    '4 por 2 tercios son 8 tercios.'
    """
    match reason:
        case TurnedRound(left, right):
            return told(_product(left, right), "es lo mismo que", _product(right, left))
        case EachUnitTimes(times, taken):
            parts = [(*the(unit, words), "por", bare(times)) for unit in taken]
            return told("multiplicamos", listed(parts))
        case UnitTimes(times, count, unit):
            return told(_unit_times(times, count, unit, words))
        case UnitsTimes(times, counts):
            return _one_by_one([_unit_times(times, count, unit, words) for count, unit in counts])
        case EqualParts(times, number):
            return told("damos", Counted(times, JUMP), "de", Said(number))
        case SplitToMultiply(splits, other):
            by = ("multiplicamos cada parte por", "cada parte" if other is None else Said(other))
            split = [("separamos", Said(number), "en", *_row(pieces)) for number, pieces in splits]
            return _one_by_one(split) + told(by)
        case PartsMultiplied(products):
            return _one_by_one([(*_product(one, other), "es", Said(made)) for one, other, made in products])
        case KnownProduct(left, right):
            return told(bare(left), "por", bare(right), "es", bare(left * right))
        case PlacesMultiplied(left, one, right, other, made):
            return told(_of(left, one), "por", _of(right, other), "es", some(left * right, made))
        case OneFractionEach(written):
            first, *more = [(Said(old), "es", Said(new)) for old, new in written]
            return told("como una sola fracción", Seam(","), first) + _one_by_one(more)
        case TopsAndBottoms(first, second):
            multiply = told("multiplicamos los numeradores", Seam(", y"), "multiplicamos los denominadores")
            cut = ("un entero en", bare(first), "partes", Seam(","), "cada una cortada en", bare(second))
            return multiply + told(cut, Seam(","), "tiene", bare(first * second), "partes")
        case SharesTaken(part, times):
            shared = told(a_single(part), "es una de", bare(reason.shares), "partes iguales")
            return shared + (told("tomamos", bare(times), "de esas partes") if times > 1 else ())
        case _:
            assert_never(reason)


def _one_by_one(parts: Sequence[Nodes]) -> Sentences:
    """Say each in a sentence of its own."""
    return tuple([sentence for part in parts for sentence in told(part)])


def _product(left: Quantity, right: Quantity) -> Nodes:
    return Said(left), "por", Said(right)


def _row(parts: tuple[Quantity, ...]) -> Nodes:
    return listed([(Said(part),) for part in parts])


def _unit_times(times: int, count: int, unit: Unit, words: ClassWords) -> Nodes:
    made = times * count
    return bare(times), "por", some(count, unit, words), "es" if made == 1 else "son", some(made, unit, words)


def _of(count: int, unit: Unit) -> Nodes:
    """Count a place; ones are a bare number: 6 por 7 centenas."""
    return (bare(count),) if unit == ONE else (some(count, unit),)
