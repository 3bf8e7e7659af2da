"""Working in columns: what is regrouped, taken away and added, column by column.

The word for what goes to the next column is left to the class: it is written "above" it.
"""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import Nodes, a_single, bare, some, told, units
from onewhole.number.ladder import TEN
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Seam, Thing, Typed
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

ZERO, DIGIT = Thing("zero", "zeros"), Thing("digit", "digits")


def in_columns(reason: InColumns, words: ClassWords) -> Sentences:
    """Say what is done in a column, and what is written for it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import places
    >>> tens, ones = places(2).units
    >>> text_of(in_columns(ColumnAdded(ones, tens, (4, 6, 7), 0, outermost=False), ClassWords()))
    'In the ones, 4 and 6 and 7 make 17. 17 ones are 1 ten and 7 ones. Write 7 below and 1 above the tens.'
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
    act = (Typed(words.regroup), *a_unit(reason.large))
    now: Nodes = ("there are", *_standing(reason.now, reason.small))
    if reason.left:
        there = "there is" if reason.left == 1 else "there are"
        now = (there, *_standing(reason.left, reason.large), "and", *_standing(reason.now, reason.small))
    if not reason.begins:
        return told(act) + told("now", now)
    lacking: Nodes = (
        "there are not enough",
        units(reason.short),
        "to take",
        some(reason.need, reason.short),
    )
    if reason.small == reason.short:
        return told(lacking, Seam(", so", "so"), act) + told("now", now)
    if reason.small.size == TEN * reason.short.size:
        none: Nodes = ("there are no", units(reason.small), "to", Typed(words.regroup))
    else:
        none = ("there are only zeros up to the", units(reason.large))
    return told(lacking) + told(none, Seam(", so", "so"), act, "first") + told("now", now)


def _standing(count: int, unit: Unit) -> Nodes:
    """Say how many stand in a column: 10 in the thousands, which the ear does not take for ten thousands."""
    return (bare(count), "in the", units(unit))


def a_unit(unit: Unit) -> Nodes:
    """Name one of a column's unit: one ten, one of the ones.

    >>> from onewhole.number.unit import ONE
    >>> a_unit(ONE)[0]
    'one of the'
    """
    return ("one of the", units(unit)) if unit.size == 1 else (a_single(unit),)


def _taken(reason: ColumnTaken) -> Sentences:
    left = reason.have - reason.gone
    column: Nodes = ("in the", units(reason.unit), ",")
    if reason.blank:
        return told(column, "nothing is taken away", Seam(", so", "so"), "write", bare(left))
    return told(column, bare(reason.have), "take away", bare(reason.gone), "leaves", bare(left))


def _added(reason: ColumnAdded) -> Sentences:
    column: Nodes = ("in the", units(reason.unit), ",")
    digits: list[Nodes] = [(bare(digit),) for digit in reason.digits]
    if reason.carried:
        digits.append(("the", bare(reason.carried), "above"))
    if len(digits) == 1:
        return told(column, "nothing is added to", digits[0], Seam(", so", "so"), "write", bare(reason.total))
    first, *others = digits
    joined = [("and", *other) for other in others]
    made = told(column, first, *joined, "make", bare(reason.total))
    if reason.total < TEN:
        return made
    return made + _written(reason, above=("above the", units(reason.large)))


def _written(reason: ColumnAdded | DigitMultiplied, above: Nodes) -> Sentences:
    """Say what is written of ten or more: all of it where no digit follows, else one below and one above."""
    if reason.outermost:
        return told("nothing stands to the left", Seam(", so", "so"), "write", bare(reason.total))
    up, stays = divmod(reason.total, TEN)
    parts: Nodes = (some(up, reason.large),)
    if stays:
        parts = (*parts, "and", some(stays, reason.unit))
    worth = told(some(reason.total, reason.unit), "are", parts)
    return worth + told("write", bare(stays), "below and", bare(up), above)


def _multiplied(reason: Multiplied) -> Sentences:
    match reason:
        case DigitsLaid():
            return told("write the last digits under each other") + told("the point comes at the end")
        case DigitMultiplied():
            return _digit_multiplied(reason)
        case ZerosWritten(digit, unit, zeros, row):
            begun = ("next", Seam(","), "multiply by") if row else ("multiply by",)
            return told(*begun, some(digit, unit)) + told("first write", Counted(zeros, ZERO), "below")
        case ProductPoint(first, second):
            places = Counted(first + second, DIGIT)
            both = told("the two numbers together have", places, "after the point")
            return both + told("so the answer has", places, "after the point")
        case _:
            assert_never(reason)


def _digit_multiplied(reason: DigitMultiplied) -> Sentences:
    product: Nodes = (
        bare(reason.times),
        "times",
        bare(reason.digit),
        "is",
        bare(reason.times * reason.digit),
    )
    if reason.carried:
        product = (*product, Seam(", and"), "the", bare(reason.carried), "above make", bare(reason.total))
    made = told(product)
    if reason.total < TEN:
        return made + told("write", bare(reason.total), "below")
    return made + _written(reason, above=("above the next digit",))


def _divided(reason: Divided) -> Sentences:
    match reason:
        case QuotientDigit(unit, have, by, 0):
            over: Nodes = ("write", bare(0), "over the", units(unit))
            return told(bare(have), "is less than", bare(by), Seam(", so", "so"), over)
        case QuotientDigit(unit, have, by, digit, begins):
            first = told("begin with", some(have, unit)) if begins else ()
            fits = (bare(digit), "times", bare(by), "is", bare(reason.product))
            too_much = (bare(digit + 1), "times", bare(by), "is more than", bare(have))
            below = (bare(reason.product), "below")
            return (
                first
                + told(fits, Seam(", and"), too_much)
                + told("write", bare(digit), "over the", units(unit), "and", below)
            )
        case DigitBroughtDown(unit, _, _, down, now, point):
            there = "there is" if now == 1 else "there are"
            pointed = told("write the point above") if point else ()
            down_to = told("bring down the", bare(down)) + told("now", there, some(now, unit))
            return _left(reason) + pointed + down_to
        case DivisionEnds(_, _, by):
            if not reason.left:
                return _left(reason) + told("nothing is left over")
            over = (bare(reason.left), "is less than", bare(by))
            return _left(reason) + told(over, Seam(", so"), "it is the remainder")
        case _:
            assert_never(reason)


def _left(reason: DigitBroughtDown | DivisionEnds) -> Sentences:
    """Say what is left when the product is taken away; nothing where nothing is taken."""
    if reason.taken is None:
        return ()
    return told(bare(reason.have), "take away", bare(reason.taken), "leaves", bare(reason.left))
