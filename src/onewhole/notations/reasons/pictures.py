"""Why a picture does not suit a working."""

from onewhole.notations.reasons.told import Told


def too_many_parts(told: Told) -> str:
    """A whole with 100 equal parts cannot be counted in this picture: 12 are the most."""
    whole = f"A {told.words.whole} with {told.count('parts')} equal parts"
    return f"{whole} cannot be counted in this picture: {told.count('most')} are the most."


def too_many_wholes(told: Told) -> str:
    """This picture would need 52 wholes, and 12 are the most."""
    needs = f"This picture would need {told.count('wholes')} {told.words.wholes}"
    return f"{needs}, and {told.count('most')} are the most."


def not_hundredths(told: Told) -> str:
    """A hundred grid shows tenths and hundredths, and here a whole has 6 equal parts."""
    parts = f"a {told.words.whole} has {told.count('parts')} equal parts"
    return f"A hundred grid shows tenths and hundredths, and here {parts}."


def no_place_on_line(_: Told) -> str:
    """Only sums, differences and comparisons go on a number line."""
    return "Only sums, differences and comparisons go on a number line."


def too_many_jumps(told: Told) -> str:
    """10 jumps would run into one another: 8 are the most."""
    return f"{told.count('jumps')} jumps would run into one another: {told.count('most')} are the most."


def nothing_to_split(_: Told) -> str:
    """This way opens nothing and makes nothing, so there is nothing to split."""
    return "This way opens nothing and makes nothing, so there is nothing to split."


def no_tens_and_ones(_: Told) -> str:
    """These numbers do not count in tens and ones, so blocks cannot show them."""
    return "These numbers do not count in tens and ones, so blocks cannot show them."


def not_place_by_place(_: Told) -> str:
    """This way does not go place by place, so blocks cannot follow it."""
    return "This way does not go place by place, so blocks cannot follow it."


def too_much_for_blocks(told: Told) -> str:
    """Blocks show two numbers, with 999 of the smallest place at most."""
    return f"Blocks show two numbers, with {told.count('most')} of the smallest place at most."


def no_room(_: Told) -> str:
    """So many wholes and parts do not fit on one picture."""
    return "So many wholes and parts do not fit on one picture."
