"""A day that was typed at the terminal."""

from datetime import date

from onewhole.errors import InputError


def day_in(text: str, *, also: str = "") -> date:
    """Return a day written as 2027-06-30. Raises InputError; ``also`` is what else may be typed.

    >>> day_in("2027-06-30").day
    30
    """
    try:
        return date.fromisoformat(text)
    except ValueError as error:
        raise InputError(f"“{text[:40]}” is not a day", remedy=f"Write it as 2027-06-30{also}.") from error
