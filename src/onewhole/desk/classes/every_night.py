"""Every night of a class in a row, the newest first, and those that a teacher looks for by date or title."""

import re
from collections.abc import Sequence
from datetime import date

from msgspec import Struct

from onewhole.desk.classes.class_records import NightPage

#: What is looked for has so many characters at most.
LONGEST_SOUGHT = 100
_WORDS = re.compile(r"[^\W_]+")
_NUMBER = re.compile(r"\d+")
_SLASHED = re.compile(r"(\d{1,2})/(\d{1,2})(?:/(\d{4}|\d\d))?")
_DASHED = re.compile(r"(\d{4})-(\d{1,2})-(\d{1,2})")


class EveryNight(Struct, frozen=True):
    """A night as the list of all of them names it."""

    number: int
    day: date
    name: str


def every_night(pages: Sequence[NightPage]) -> tuple[EveryNight, ...]:
    """Return all nights of a class, the newest first. ``pages`` are its nights by day."""
    return tuple(EveryNight(page.night.number, page.night.day, page.name) for page in reversed(pages))


def as_sought(typed: str) -> str:
    """Return what is looked for, as typed, without idle blanks and no longer than is looked for.

    >>> as_sought("  kite   tails ")
    'kite tails'
    """
    return " ".join(typed[:LONGEST_SOUGHT].split())


def nights_found(nights: Sequence[EveryNight], sought: str) -> tuple[EveryNight, ...]:
    """Return the nights that have everything that is looked for, in their order; all where that is nothing.

    A word is part of the title, of the weekday or of the month; a number stands in the title, or is the day
    or the year; a date is written 11/23, 11/23/2026 or 2026-11-23. Small and large letters are the same.

    >>> kites, joined = (
    ...     EveryNight(1, date(2026, 11, 23), "Kite tails"),
    ...     EveryNight(2, date(2026, 11, 30), "Joined"),
    ... )
    >>> [
    ...     [one.number for one in nights_found((kites, joined), sought)]
    ...     for sought in ("tail", "nov", "mon 30", "11/23", "2026-11-30", "")
    ... ]
    [[1], [1, 2], [2], [1], [2], [1, 2]]
    """
    asked = [_asked(one) for one in as_sought(sought).casefold().split()]
    return tuple(night for night in nights if all(_has(night, one) for one in asked))


def _asked(typed: str) -> str | tuple[int, int, int | None]:
    """Return a word of what is looked for, or the month, day and year of a date that it is."""
    typed = typed.strip(",.;:")
    if slashed := _SLASHED.fullmatch(typed):
        month, day, year = slashed.groups()
        full = None if year is None else int(year) + (2000 if len(year) == 2 else 0)
        return int(month), int(day), full
    if dashed := _DASHED.fullmatch(typed):
        return int(dashed[2]), int(dashed[3]), int(dashed[1])
    return typed


def _has(night: EveryNight, asked: str | tuple[int, int, int | None]) -> bool:
    day = night.day
    if isinstance(asked, tuple):
        return asked[:2] == (day.month, day.day) and asked[2] in {None, day.year}
    name = night.name.casefold()
    if _NUMBER.fullmatch(asked):
        return asked in _WORDS.findall(name) or int(asked) in {day.day, day.year}
    return asked in name or asked in f"{day:%A %B}".casefold()
