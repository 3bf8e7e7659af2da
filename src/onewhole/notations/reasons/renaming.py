"""The same amount in other units."""

from onewhole.notations.reasons.told import Told


def wholes_in_pieces(told: Told) -> str:
    """One whole is 6 sixths, so count the wholes in sixths."""
    return (
        f"One {told.large(1)} is {told.some_small('ratio')}, so count the {told.large()} in {told.small()}."
    )


def all_in_pieces(told: Told) -> str:
    """That is 44 sixths and 23 sixths."""
    return f"That is {told.some_small('first')} and {told.some_small('second')}."


def cut_each_again(told: Told) -> str:
    """Cut each piece again to get twelfths."""
    return f"Cut each piece again to get {told.small()}."


def same_size_pieces(told: Told) -> str:
    """Now all the pieces are the same size: sixths."""
    return f"Now all the pieces are the same size: {told.small()}."


def same_places(told: Told) -> str:
    """Write every number as far as the hundredths."""
    return f"Write every number as far as the {told.small()}."


def same_amount_renamed(told: Told) -> str:
    """It is the same amount, counted in twelfths."""
    return f"It is the same amount, counted in {told.small()}."
