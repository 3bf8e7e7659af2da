"""Why a strategy does not suit a problem."""

from onewhole.notations.reasons.told import Told


def other_operation(_: Told) -> str:
    """This way works only for the other sign, plus or minus."""
    return "This way works only for the other sign, plus or minus."


def all_ones_already(_: Told) -> str:
    """These are whole numbers, so there are no pieces to change to."""
    return "These are whole numbers, so there are no pieces to change to."


def no_wholes_to_take(told: Told) -> str:
    """5/6 has no larger units to take first."""
    return f"{told.number('second')} has no larger units to take first."


def nothing_to_set_aside(told: Told) -> str:
    """4 has no smaller part to set aside."""
    return f"{told.number('first')} has no smaller part to set aside."


def whole_too_small(told: Told) -> str:
    """7 is not enough to take 7 1/6 from."""
    return f"{told.number('wholes')} is not enough to take {told.number('second')} from."


def no_shift_needed(told: Told) -> str:
    """3 is easy to take away as it is."""
    return f"{told.number('second')} is easy to take away as it is."


def nothing_lacking(told: Told) -> str:
    """4 is full already, so there is nothing to give."""
    return f"{told.number('first')} is full already, so there is nothing to give."


def too_little_to_give(told: Told) -> str:
    """2/6 is not enough to fill 1/6 up."""
    return f"{told.number('second')} is not enough to fill {told.number('first')} up."
