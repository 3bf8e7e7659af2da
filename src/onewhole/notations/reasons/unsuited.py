"""Why a strategy does not suit a problem."""

from typing import assert_never

from onewhole.notations.text import text
from onewhole.working.reasons.unsuited import (
    AllOnesAlready,
    NoShiftNeeded,
    NothingLacking,
    NothingToSetAside,
    NoWholesToTake,
    OtherOperation,
    TooLittleToGive,
    Unsuited,
    WholeTooSmall,
)


def unsuited(reason: Unsuited) -> str:
    """Say why a strategy does not suit a problem.

    >>> from onewhole.number.quantity import whole
    >>> unsuited(NothingLacking(whole(4)))
    '4 is full already, so there is nothing to give.'
    """
    match reason:
        case OtherOperation():
            return "This way works only for the other sign, plus or minus."
        case AllOnesAlready():
            return "These are whole numbers, so there are no pieces to change to."
        case NoWholesToTake(second):
            return f"{text(second)} has no larger units to take first."
        case NothingToSetAside(first):
            return f"{text(first)} has no smaller part to set aside."
        case WholeTooSmall(wholes, second):
            return f"{text(wholes)} is not enough to take {text(second)} from."
        case NoShiftNeeded(second):
            return f"{text(second)} is easy to take away as it is."
        case NothingLacking(first):
            return f"{text(first)} is full already, so there is nothing to give."
        case TooLittleToGive(first, second):
            return f"{text(second)} is not enough to fill {text(first)} up."
        case _:
            assert_never(reason)
