"""Why a strategy does not suit a problem."""

from msgspec import Struct

from onewhole.number.quantity import Quantity


class OtherOperation(Struct, frozen=True):
    """The strategy is for the other sign."""


class AllOnesAlready(Struct, frozen=True):
    """Whole numbers have no pieces to change to."""


class NoWholesToTake(Struct, frozen=True):
    """The second number has no larger units to take first."""

    second: Quantity


class NothingToSetAside(Struct, frozen=True):
    """The first number has no smaller part to set aside."""

    first: Quantity


class WholeTooSmall(Struct, frozen=True):
    """The wholes are not enough to take the second number from."""

    wholes: Quantity
    second: Quantity


class NoShiftNeeded(Struct, frozen=True):
    """The second number is easy to take as it is."""

    second: Quantity


class NothingLacking(Struct, frozen=True):
    """The first number is full already."""

    first: Quantity


class TooLittleToGive(Struct, frozen=True):
    """The second number is not enough to fill the first one up."""

    first: Quantity
    second: Quantity


class NoColumns(Struct, frozen=True):
    """The numbers have no places of tens to stand under each other, or only one place each."""


class ShiftNoEasier(Struct, frozen=True):
    """To bring ``second`` to a round number, ``by`` would have to be found first, which is as hard."""

    second: Quantity
    by: Quantity


class FilledNotRound(Struct, frozen=True):
    """``first`` filled up by ``by`` is no round number, so nothing becomes easier."""

    first: Quantity
    by: Quantity


class NotSoManyTimes(Struct, frozen=True):
    """Neither number is a plain whole number that says how many times the other is taken."""


class TooManyTimes(Struct, frozen=True):
    """A number is taken more times than are written one after another: ``times``, and at most ``most``."""

    times: int
    most: int


class NoPartsToSplit(Struct, frozen=True):
    """Both numbers have one part only, so there is nothing to multiply part by part."""


class NoFractionToMultiply(Struct, frozen=True):
    """Both are whole numbers: there is no numerator to multiply."""


class NotByHeart(Struct, frozen=True):
    """More than one digit of a number is not 0, so the product is not known by heart."""


class NotSharedOut(Struct, frozen=True):
    """The number behind the sign is no plain whole number, so it says no number of equal shares."""


class TooFewToShare(Struct, frozen=True):
    """``number`` is less than ``by``: nothing can be given out before it is cut."""

    number: Quantity
    by: Quantity


class NotByWholes(Struct, frozen=True):
    """Both numbers are not plain whole numbers, as this way needs."""


class NoFactKnown(Struct, frozen=True):
    """The quotient is not one of the facts up to 10 times 10."""


class NoGroups(Struct, frozen=True):
    """The number behind the sign counts equal shares, and is no group to be measured out."""


class DigitsGoOn(Struct, frozen=True):
    """The digits of ``number`` divided by ``by`` would go on past the thousandths, or without end."""

    number: Quantity
    by: Quantity


#: Every reason why a strategy does not suit a problem.
Unsuited = (
    OtherOperation
    | AllOnesAlready
    | NoWholesToTake
    | NothingToSetAside
    | WholeTooSmall
    | NoShiftNeeded
    | NothingLacking
    | TooLittleToGive
    | NoColumns
    | ShiftNoEasier
    | FilledNotRound
    | NotSoManyTimes
    | TooManyTimes
    | NoPartsToSplit
    | NoFractionToMultiply
    | NotByHeart
    | NotSharedOut
    | TooFewToShare
    | NotByWholes
    | NoFactKnown
    | NoGroups
    | DigitsGoOn
)
