"""Odds as they are typed into the terminal."""

from fractions import Fraction

from onewhole.errors import InputError


def odds_typed(said: str) -> Fraction:
    """Read odds such as 0.9, 9/10 or 90%, exactly. Raises InputError.

    >>> odds_typed("90%") == odds_typed("0.9") == odds_typed("9/10")
    True
    """
    number = said.strip()
    try:
        found = Fraction(number.removesuffix("%").strip())
    except (ValueError, ZeroDivisionError):
        msg = f"“{said[:40]}” are no odds"
        raise InputError(msg, remedy="Type a number such as 0.9 or 90%.") from None
    return found / 100 if number.endswith("%") else found
