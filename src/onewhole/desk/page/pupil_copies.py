"""Whose copies of the pupils' page are printed: codes as a teacher types them at the terminal."""

import re
from collections.abc import Iterator

from onewhole.desk.page.print_choice import MOST_COPIES
from onewhole.errors import InputError

#: A code has so many letters and digits at most: more have no room at the foot of the page.
LONGEST_CODE = 8
_RANGE = re.compile(r"([A-Za-z]*)([0-9]+)\s*-\s*([A-Za-z]*)([0-9]+)")


def codes_listed(typed: str) -> tuple[str, ...]:
    """Return codes that are typed with commas between them; K01-K25 is all from the first to the last.

    A code that is there twice has one copy. Raises InputError for what is no code, and for too many.

    >>> codes_listed("K01-K03, K07, k07")
    ('K01', 'K02', 'K03', 'K07')
    """
    found: dict[str, str] = {}
    for part in filter(None, (one.strip() for one in typed.split(","))):
        for code in _codes(part):
            found.setdefault(code.casefold(), code)
    if not found:
        raise InputError("There is no code for a copy", remedy="Write such as: K01, K02, K05-K25.")
    if len(found) > MOST_COPIES:
        raise InputError(
            f"These are {len(found)} codes", remedy=f"Print copies for {MOST_COPIES} at most in one go."
        )
    return tuple(found.values())


def _codes(part: str) -> Iterator[str]:
    run = _RANGE.fullmatch(part)
    if run is None:
        yield _checked(part)
        return
    letters, first, again, last = run.groups()
    begins, ends = int(first[:LONGEST_CODE]), int(last[:LONGEST_CODE])
    if again.casefold() not in {"", letters.casefold()} or not begins <= ends < begins + 10 * MOST_COPIES:
        raise InputError(f"“{part[:40]}” is no run of codes", remedy="Write such as: K01-K25.")
    for number in range(begins, ends + 1):
        yield _checked(f"{letters}{number:0{len(first)}d}")


def _checked(code: str) -> str:
    if len(code) > LONGEST_CODE or not (code.isascii() and code.isalnum()):
        raise InputError(
            f"“{code[:40]}” is no code for a copy",
            remedy=f"A code has {LONGEST_CODE} letters and digits at most, such as K01.",
        )
    return code
