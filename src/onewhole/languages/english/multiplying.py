"""Taking a number so many times, part by part, and multiplying fractions."""

from collections.abc import Sequence
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.jumping import JUMP
from onewhole.languages.english.making import Nodes, a_single, bare, listed, some, told, units
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
    '4 times 2 thirds is 8 thirds.'
    """
    match reason:
        case TurnedRound(left, right):
            return told(_product(left, right), "is as much as", _product(right, left))
        case EachUnitTimes(times, taken):
            return told("take", listed([("the", units(unit, words), bare(times), "times") for unit in taken]))
        case UnitTimes(times, count, unit):
            return told(_unit_times(times, count, unit, words))
        case UnitsTimes(times, counts):
            return _one_by_one([_unit_times(times, count, unit, words) for count, unit in counts])
        case EqualParts(times, number):
            return told("that is", Counted(times, JUMP), "of", Said(number))
        case SplitToMultiply(splits, other):
            parts = [(Said(number), "into", *_row(pieces)) for number, pieces in splits]
            by = ("multiply each part by", "each part" if other is None else Said(other))
            return _one_by_one([("split", *part) for part in parts]) + told(by)
        case PartsMultiplied(products):
            return _one_by_one([(*_product(one, other), "is", Said(made)) for one, other, made in products])
        case KnownProduct(left, right):
            return told(bare(left), "times", bare(right), "is", bare(left * right))
        case PlacesMultiplied(left, one, right, other, made):
            return told(_of(left, one), "times", _of(right, other), "is", some(left * right, made))
        case OneFractionEach(written):
            first, *more = [(Said(old), "is", Said(new)) for old, new in written]
            return told("as one fraction", Seam(","), first) + _one_by_one(more)
        case TopsAndBottoms(first, second):
            multiply = told("multiply the numerators", Seam(", and"), "multiply the denominators")
            cut = ("a whole in", bare(first), "parts", Seam(","), "each cut into", bare(second))
            return multiply + told(cut, Seam(","), "has", bare(first * second), "parts")
        case SharesTaken(part, times):
            shared = told(a_single(part), "of it is one of", bare(reason.shares), "equal shares")
            return shared + (told("take", bare(times), "of them") if times > 1 else ())
        case _:
            assert_never(reason)


def _one_by_one(parts: Sequence[Nodes]) -> Sentences:
    """Say each in a sentence of its own."""
    return tuple([sentence for part in parts for sentence in told(part)])


def _product(left: Quantity, right: Quantity) -> Nodes:
    return Said(left), "times", Said(right)


def _row(parts: tuple[Quantity, ...]) -> Nodes:
    return listed([(Said(part),) for part in parts])


def _unit_times(times: int, count: int, unit: Unit, words: ClassWords) -> Nodes:
    return bare(times), "times", some(count, unit, words), "is", some(times * count, unit, words)


def _of(count: int, unit: Unit) -> Nodes:
    """Count a place; ones are a bare number: 6 times 7 hundreds."""
    return (bare(count),) if unit == ONE else (some(count, unit),)
