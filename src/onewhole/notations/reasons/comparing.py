"""Which of two numbers is more, and which number is missing."""

from onewhole.notations.reasons.told import Told


def wholes_decide(told: Told) -> str:
    """4 is more than 3, and that decides."""
    more = "more" if told.quantity("first").value > told.quantity("second").value else "less"
    return f"{told.number('first')} is {more} than {told.number('second')}, and that decides."


def same_size_pieces_to_compare(told: Told) -> str:
    """Write both numbers with pieces of the same size: twelfths."""
    return f"Write both numbers with pieces of the same size: {told.small()}."


def all_in_pieces_to_compare(told: Told) -> str:
    """Count everything in fourths."""
    return f"Count everything in {told.small()}."


def count_the_pieces(told: Told) -> str:
    """All are twelfths now, so only the counts matter."""
    return f"All are {told.small()} now, so only the counts matter."


def count_decides(told: Told) -> str:
    """20 twenty-fourths are fewer than 21 twenty-fourths."""
    first, second = told.count("first"), told.count("second")
    if first == second:
        return f"Both are {told.some_small('first')}."
    verb = "is" if first == 1 else "are"
    more = "more" if first > second else "fewer"
    return f"{told.some_small('first')} {verb} {more} than {told.some_small('second')}."


def undo_to_find(_: Told) -> str:
    """Undo what stands beside the blank, so that the blank is alone."""
    return "Undo what stands beside the blank, so that the blank is alone."


def read_the_gap(_: Told) -> str:
    """Both sides look alike now, so you can read the missing number."""
    return "Both sides look alike now, so you can read the missing number."
