"""What was given out on a child, to whom, what for and when: a record that the teacher types.

Source: FERPA (34 CFR 99.32, from memory) asks schools for a record of whom something of a child's record was
disclosed to and why, kept as long as the child's record itself; the GDPR (articles 15 and 19, from memory)
asks that a family is told to whom something went, and that those are told when it is erased.
"""

from datetime import date, datetime

from onewhole.desk.classes.class_records import room
from onewhole.errors import InputError
from onewhole.store.given_out import GivenOut, forget_given_out, given_out_of, keep_given_out
from onewhole.store.opening import Store

__all__ = ["forget_given_out", "given_out_of", "note_given_out"]

#: The most characters of each part of a line.
LONGEST = 200


def note_given_out(
    book: Store, class_number: int, code: str, *, what: str, to: str, why: str, day: date, now: datetime
) -> GivenOut:
    """Note that something was given out on a child. Raises InputError, NotThere.

    A day to come is refused: what is noted has happened.
    """
    room(book, class_number).pupil(code)
    if day > now.date():
        raise InputError(
            f"{day} is still to come", remedy="Note what was given out on the day on which it was."
        )
    what, to = _part(what, "What was given out"), _part(to, "To whom it was given")
    given = GivenOut(code, what, to, _part(why, ""), day, now, "teacher")
    keep_given_out(book, class_number, given)
    return given


def _part(typed: str, needed: str) -> str:
    """Return a part of a line, spaces around it taken off; one that is `needed` is so called."""
    typed = " ".join(typed.split())
    if needed and not typed:
        raise InputError(f"{needed} is missing", remedy="Type it in a few words.")
    if len(typed) > LONGEST:
        raise InputError(
            f"A line of {len(typed)} characters is too long", remedy=f"Use {LONGEST} at most for each part."
        )
    return typed
