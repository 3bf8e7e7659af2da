"""The name that is wanted of a number: simplest form, a mixed number, a fraction, a decimal, other units."""

from enum import Enum
from math import gcd
from typing import NoReturn, assert_never

from onewhole.errors import OnewholeError
from onewhole.number.digits import in_digits
from onewhole.number.factors import simplest
from onewhole.number.ladder import TEN, Ladder, Style, decimal, mixed
from onewhole.number.quantity import NotOnLadderError, Quantity, counted, trimmed, usual, whole, with_mark
from onewhole.number.unit import Kind, KindError

#: A decimal is written as far as the thousandths.
MOST_PLACES = 3


class NoSuchNameError(OnewholeError, ValueError):
    """A number has no name of the kind that is wanted."""


class NumberForm(Enum):
    """A form in which one and the same number may be written."""

    SIMPLEST = "simplest form"
    MIXED = "mixed number"
    FRACTION = "one fraction"
    DECIMAL = "decimal"


#: A form of a number, or the units of a measure.
Wanted = NumberForm | Ladder


def named_as(number: Quantity, wanted: Wanted) -> Quantity:
    """Write a number in the form, or a measure in the units, that are wanted.

    In simplest form a fraction of more than one whole stays a fraction (56/32 is 7/4, as in OpenStax
    Prealgebra 2e, Multiply and Divide Fractions, example 3), and 12/4 is 3. A decimal as a fraction keeps its
    tenths or hundredths (4.NF.C.6: 0.62 is 62/100; CCSSM 2010); a fraction of tenths or hundredths as a
    decimal keeps them too, and any other is written with as few places as can be. Raises NoSuchNameError
    where there is no such name or it is what is written already, NotOnLadderError for a measure that does not
    come out even, KindError for units of another kind.

    >>> from onewhole.number.ladder import measure
    >>> named_as(Quantity(mixed(18), (None, 12)), NumberForm.SIMPLEST).ladder.denominator
    3
    >>> named_as(Quantity(measure("in"), (26,)), measure("ft", "in")).counts
    (2, 2)
    """
    if isinstance(wanted, Ladder):
        return _in_units(number, wanted)
    if number.kind is not Kind.NUMBER:
        msg = "a measure is asked for in other units and not in another form"
        raise NoSuchNameError(msg, remedy="Write for example 3 ft = ? in, or leave the unit off.")
    if number.ladder.mark:
        return with_mark(named_as(with_mark(number, ""), wanted), number.ladder.mark)
    match wanted:
        case NumberForm.SIMPLEST:
            return _simplest(number)
        case NumberForm.MIXED:
            return _mixed(number)
        case NumberForm.FRACTION:
            return _fraction(number)
        case NumberForm.DECIMAL:
            return _decimal(number)
        case _:
            assert_never(wanted)


def has_form(written: Quantity, wanted: Wanted) -> bool:
    """Say whether a number is written in a form, or in units, that are wanted; how much it is counts nothing.

    As a mixed number means that no pieces fill a whole: 3 stands for 12/4, 1 7/4 does not for 2 3/4.

    >>> [has_form(Quantity(mixed(4), counts), NumberForm.MIXED) for counts in ((2, 3), (1, 7), (None, 11))]
    [True, False, False]
    """
    style, digits = written.ladder.style, _in_digits(written)
    match wanted:
        case Ladder():
            return written.ladder == wanted or _empty_left_out(written, wanted)
        case NumberForm.SIMPLEST if style is Style.MIXED:
            top, bottom = written.amounts[1], written.ladder.denominator
            return bottom > 1 and gcd(top, bottom) == 1
        case NumberForm.MIXED if style is Style.MIXED:
            return written.amounts[1] < written.ladder.denominator
        case NumberForm.SIMPLEST | NumberForm.MIXED:
            return digits and style is Style.PLACES
        case NumberForm.FRACTION:
            return style is Style.MIXED and not written.amounts[0]
        case NumberForm.DECIMAL:
            return digits
        case _:
            assert_never(wanted)


def _empty_left_out(written: Quantity, units: Ladder) -> bool:
    """Say whether a measure is written in some units of which the empty ones are left out: 2 ft for 24 in."""
    if written.kind is not units.kind:
        return False
    try:
        return written == trimmed(counted(units, written.value))
    except NotOnLadderError:
        return False


def _in_digits(written: Quantity) -> bool:
    return written.ladder.style in {Style.PLACES, Style.DECIMAL} and in_digits(written)


def _in_units(number: Quantity, units: Ladder) -> Quantity:
    if number.kind is not units.kind:
        msg = f"a {number.kind} cannot be written as a {units.kind}"
        raise KindError(msg, remedy="Ask for units that measure the same thing.")
    if number.ladder == units:
        _refuse("the measure is in these units already", "Ask for other units.")
    try:
        return counted(units, number.value)
    except NotOnLadderError:
        msg = "the measure does not come out even in these units"
        remedy = "Ask for a smaller unit too: 26 in = ? ft ? in."
        raise NotOnLadderError(msg, remedy=remedy) from None


def _simplest(number: Quantity) -> Quantity:
    if number.ladder.style is not Style.MIXED:
        _refuse("only a fraction or a mixed number has a simplest form", "Write a fraction: 12/18 simplest.")
    if number.counts[0] is not None:
        fewest = simplest(number.parts, number.ladder.denominator)[1]
        return usual(mixed(fewest, number.ladder.mark), number.value)
    top, bottom = simplest(number.parts, number.ladder.denominator)
    if bottom == 1:
        return whole(top, number.ladder.mark)
    return Quantity(mixed(bottom, number.ladder.mark), (None, top))


def _mixed(number: Quantity) -> Quantity:
    ladder = number.ladder
    if ladder.style is Style.DECIMAL:
        ladder = mixed(TEN**ladder.after, ladder.mark)
    if ladder.style is not Style.MIXED:
        _refuse("a whole number is no mixed number", "Write a fraction: 11/4 as a mixed number.")
    if number.value < 1:
        _refuse("this is less than one whole", "Write a fraction of more than one whole.")
    found = usual(ladder, number.value)
    if found == number:
        _refuse("this is a mixed number already", "Write one fraction: 11/4 as a mixed number.")
    return found


def _fraction(number: Quantity) -> Quantity:
    match number.ladder.style:
        case Style.MIXED:
            bottom = number.ladder.denominator
        case Style.DECIMAL:
            bottom = TEN**number.ladder.after
        case _:
            bottom = 1
    found = Quantity(mixed(bottom, number.ladder.mark), (None, (number.value * bottom).numerator))
    if found == number:
        _refuse("this is one fraction already", "Write a mixed number: 2 3/4 as a fraction.")
    return found


def _decimal(number: Quantity) -> Quantity:
    if number.ladder.style is not Style.MIXED:
        _refuse("this is no fraction", "Write a fraction: 3/4 as a decimal.")
    places = [at for at in range(MOST_PLACES + 1) if (number.value * TEN**at).denominator == 1]
    if not places:
        remedy = "Use a denominator such as 2, 4, 5, 10 or 100."
        _refuse("this fraction does not come out as tenths, hundredths or thousandths", remedy)
    given = [at for at in places if at and TEN**at == number.ladder.denominator]
    after = given[0] if given else places[0]
    if not after:
        return whole(int(number.value), number.ladder.mark)
    return usual(decimal(1, after, number.ladder.mark), number.value)


def _refuse(what: str, remedy: str) -> NoReturn:
    raise NoSuchNameError(what, remedy=remedy)
