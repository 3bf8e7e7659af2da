"""Cells that a spreadsheet made into dates, and the fractions that they may have been."""

import re
from datetime import date

_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_ENDS = "uary|ruary|ch|il|e|y|ust|t|tember|ober|ember"
_MONTH = rf"({'|'.join(_MONTHS)})(?:{_ENDS})?\b\.?"
_CLOCK = r"(?:[ T]0?0:00(?::00(?:\.0+)?)?)?"
_DAY_MONTH = re.compile(rf"(\d{{1,2}})[-. ]{_MONTH}(?:[-. ]\d+)?", re.IGNORECASE)
_MONTH_NUMBER = re.compile(rf"{_MONTH}[-. ](\d{{1,4}})(?:, ?\d{{4}})?", re.IGNORECASE)
_NUMBERS = re.compile(rf"(\d{{1,4}})([-/.])(\d{{1,2}})\2(\d{{1,4}}){_CLOCK}")
#: Day 0 of the numbers by which a spreadsheet counts days, and the days of 2000 to 2050 among them.
#: Source: ECMA-376, part 1, 18.17.4.1 (the 1900 date system), from memory.
_DAY_ZERO = date(1899, 12, 30).toordinal()
_DAYS = range(36_526, 55_153)
MOST_DAYS = 31


def fractions_of_date(text: str) -> tuple[str, ...] | None:
    """Return the fractions that a date may have been, the likeliest first; None for a text that is no date.

    In the United States 3/8 becomes the 8th of March, where the day comes first it becomes the 3rd of August,
    and 3/32, which is no day of a year, becomes March 1932 (tried in spreadsheets, from memory).

    >>> fractions_of_date("8-Mar"), fractions_of_date("3/8/2026"), fractions_of_date("Mar-32")
    (('3/8', '8/3'), ('3/8', '8/3'), ('3/32',))
    >>> fractions_of_date("3/8") is None
    True
    """
    typed = " ".join(text.split())
    if found := _DAY_MONTH.fullmatch(typed):
        return _offers(_month(found[2]), int(found[1]))
    if found := _MONTH_NUMBER.fullmatch(typed):
        return _offers(_month(found[1]), int(found[2]))
    if found := _NUMBERS.fullmatch(typed):
        first, second, third = int(found[1]), int(found[3]), int(found[4])
        return _offers(second, third) if len(found[1]) > 2 else _offers(first, second)
    return None


def fractions_of_day_number(text: str) -> tuple[str, ...] | None:
    """Return the fractions that a count of days may have been; None for a text that is none of 2000 to 2050.

    >>> fractions_of_day_number("45359"), fractions_of_day_number("3") is None
    (('3/8', '8/3'), True)
    """
    typed = text.strip()
    if not (typed.isascii() and typed.isdecimal() and len(typed) < 6 and int(typed) in _DAYS):
        return None
    day = date.fromordinal(_DAY_ZERO + int(typed))
    return _offers(day.month, day.day)


def _month(word: str) -> int:
    return _MONTHS.index(word.lower()) + 1


def _offers(first: int, second: int) -> tuple[str, ...]:
    pairs = [(first, second)]
    if second <= MOST_DAYS and first <= MOST_DAYS:
        pairs.append((second, first))
    return tuple(dict.fromkeys(f"{top}/{bottom}" for top, bottom in pairs if top and bottom))
