"""Jumps along a number line, shifts of both numbers, and making a whole."""

from onewhole.notations.reasons.told import Told
from onewhole.notations.words import unit_name
from onewhole.number.ladder import Style


def jump_to_stops(told: Told) -> str:
    """Count up from 3 5/6 to 7 2/6, with stops at easy numbers."""
    return f"Count up from {told.number('start')} to {told.number('end')}, with stops at easy numbers."


def jump_lengths(told: Told) -> str:
    """Find how long each of the 3 jumps is."""
    jumps = told.count("jumps")
    return "Find how long the jump is." if jumps == 1 else f"Find how long each of the {jumps} jumps is."


def jump_wholes(told: Told) -> str:
    """Start at 2 4/5 and jump on by 1."""
    return f"Start at {told.number('start')} and jump on by {told.number('wholes')}."


def jump_to_whole(told: Told) -> str:
    """From 3 4/5, a jump of 1/5 lands on the next whole."""
    jump = f"From {told.number('start')}, a jump of {told.number('by')}"
    return f"{jump} lands on the next {_next(told, 'start')}."


def jumped_to(told: Told) -> str:
    """You land on 3 4/5."""
    return f"You land on {told.number('reached')}."


def give_to_make_one(told: Told) -> str:
    """2 4/5 needs 1/5 to reach the next whole, so take that from the other number."""
    needs = f"{told.number('first')} needs {told.number('by')}"
    return f"{needs} to reach the next {_next(told, 'first')}, so take that from the other number."


def whole_and_rest(told: Told) -> str:
    """Now add 3 and 1 2/5."""
    return f"Now add {told.number('filled')} and {told.number('rest')}."


def same_to_both(told: Told) -> str:
    """Add 1/6 to both numbers: the distance between them stays the same."""
    return f"Add {told.number('by')} to both numbers: the distance between them stays the same."


def easier_to_take(told: Told) -> str:
    """4 is easier to take away."""
    return f"{told.number('second')} is easier to take away."


def _next(told: Told, name: str) -> str:
    """Name the unit that a small step fills up: whole, ten, foot."""
    ladder = told.quantity(name).ladder
    if ladder.style is Style.PLACES:
        return "ten"
    return unit_name(ladder.units[-2], 1, told.words) if len(ladder.units) > 1 else "easy number"
