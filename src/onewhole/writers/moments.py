"""Times of a film as a reader takes them."""

from fractions import Fraction


def clock(seconds: Fraction) -> str:
    """Write minutes and whole seconds, rounded down, as beside the cues of a script.

    >>> clock(Fraction(3905, 30))
    '2:10'
    """
    minutes, rest = divmod(int(seconds), 60)
    return f"{minutes}:{rest:02}"
