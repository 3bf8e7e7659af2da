"""Why a strategy does not suit a problem."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity


@dataclass(frozen=True, slots=True)
class OtherOperation:
    """The strategy is for the other sign."""


@dataclass(frozen=True, slots=True)
class AllOnesAlready:
    """Whole numbers have no pieces to change to."""


@dataclass(frozen=True, slots=True)
class NoWholesToTake:
    """The second number has no larger units to take first."""

    second: Quantity


@dataclass(frozen=True, slots=True)
class NothingToSetAside:
    """The first number has no smaller part to set aside."""

    first: Quantity


@dataclass(frozen=True, slots=True)
class WholeTooSmall:
    """The wholes are not enough to take the second number from."""

    wholes: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class NoShiftNeeded:
    """The second number is easy to take as it is."""

    second: Quantity


@dataclass(frozen=True, slots=True)
class NothingLacking:
    """The first number is full already."""

    first: Quantity


@dataclass(frozen=True, slots=True)
class TooLittleToGive:
    """The second number is not enough to fill the first one up."""

    first: Quantity
    second: Quantity


@dataclass(frozen=True, slots=True)
class NoColumns:
    """The numbers have no places of tens to stand under each other, or only one place each."""


@dataclass(frozen=True, slots=True)
class ShiftNoEasier:
    """To bring ``second`` to a round number, ``by`` would have to be found first, which is as hard."""

    second: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class FilledNotRound:
    """``first`` filled up by ``by`` is no round number, so nothing becomes easier."""

    first: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class NotSoManyTimes:
    """Neither number is a plain whole number that says how many times the other is taken."""


@dataclass(frozen=True, slots=True)
class TooManyTimes:
    """A number is taken more times than are written one after another: ``times``, and at most ``most``."""

    times: int
    most: int


@dataclass(frozen=True, slots=True)
class NoPartsToSplit:
    """Both numbers have one part only, so there is nothing to multiply part by part."""


@dataclass(frozen=True, slots=True)
class NoFractionToMultiply:
    """Both are whole numbers: there is no numerator to multiply."""


@dataclass(frozen=True, slots=True)
class NotByHeart:
    """More than one digit of a number is not 0, so the product is not known by heart."""


@dataclass(frozen=True, slots=True)
class NotSharedOut:
    """The number behind the sign is no plain whole number, so it says no number of equal shares."""


@dataclass(frozen=True, slots=True)
class TooFewToShare:
    """``number`` is less than ``by``: nothing can be given out before it is cut."""

    number: Quantity
    by: Quantity


@dataclass(frozen=True, slots=True)
class NotByWholes:
    """Both numbers are not plain whole numbers, as this way needs."""


@dataclass(frozen=True, slots=True)
class NoFactKnown:
    """The quotient is not one of the facts up to 10 times 10."""


@dataclass(frozen=True, slots=True)
class NoGroups:
    """The number behind the sign counts equal shares, and is no group to be measured out."""


@dataclass(frozen=True, slots=True)
class DigitsGoOn:
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
