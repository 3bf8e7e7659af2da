"""The list of a class: pupils added by names or by number, named, renamed; the class renamed."""

import unicodedata
from collections.abc import Mapping, Sequence
from datetime import date, datetime

from onewhole.desk.classes.class_languages import languages_of, set_languages
from onewhole.desk.classes.class_records import (
    LONGEST_NAME,
    MOST_PUPILS,
    Classroom,
    check_name_free,
    named,
    room,
    start_room,
)
from onewhole.desk.classes.pupil_days import joined_today
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.errors import InputError
from onewhole.store.classes import Pupil, add_pupil, name_pupil, rename_class
from onewhole.store.opening import Store
from onewhole.store.own_pages import keep_own_page, own_pages_of

__all__ = [
    "LONGEST_NAME",
    "MOST_PUPILS",
    "copy_class",
    "enrol",
    "name_pupils",
    "name_seen",
    "names_typed",
    "new_class",
    "rename",
]


def names_typed(typed: str) -> tuple[str, ...]:
    r"""Return the names of a list that was typed or pasted: one a line, empty lines left out.

    A tab, as between two columns of a spreadsheet, is a blank. What a name looks like is nobody's business:
    only signs that cannot be seen at all (NUL and its like) are refused, and names of more than 80
    characters. Raises InputError with the first such line.

    >>> names_typed("Delta\n\nBox\tKite\n")
    ('Delta', 'Box Kite')
    """
    found = []
    for line, row in enumerate(typed.replace("\r\n", "\n").replace("\r", "\n").split("\n"), start=1):
        if row.strip():
            found.append(_checked(" ".join(row.split()), line))
    return tuple(found)


def new_class(book: Store, name: str, pupils: int, names: Sequence[str], now: datetime) -> Classroom:
    """Keep a new class with so many pupils, or with as many as there are names if those are more.

    The first pupils have the names. Raises InputError.
    """
    _room_for(len(names))
    with book.transaction() as within:
        made = start_room(within, name_seen(name, "The class"), max(pupils, len(names)), now)
        for pupil, one in zip(made.pupils, names, strict=False):
            name_pupil(within, made.number, pupil.code, one)
        return room(within, made.number)


def copy_class(book: Store, room_number: int, name: str, now: datetime) -> Classroom:
    """Keep a new class with the pupils of another, by their names, under new codes; without its nights.

    The languages of the class and the form in which a pupil reads pages come along.

    Raises InputError and NotThere.
    """
    with book.transaction() as within:
        old = room(within, room_number)
        made = start_room(within, name_seen(name, "The class"), len(old.pupils), now)
        forms = own_pages_of(within, room_number)
        for pupil, one in zip(made.pupils, old.pupils, strict=True):
            if one.name is not None:
                name_pupil(within, made.number, pupil.code, one.name)
            keep_own_page(within, made.number, pupil.code, forms.get(one.code))
        set_languages(within, made.number, languages_of(within, room_number))
        return room(within, made.number)


def enrol(
    book: Store, room_number: int, more: int, names: Sequence[str] = (), *, today: date | None = None
) -> tuple[Pupil, ...]:
    """Add so many pupils, or as many as there are names if those are more. Raises InputError, NotThere.

    Where the class had pages before ``today``, they join on that day: earlier pages were not theirs.
    """
    count = max(more, len(names))
    asked: list[str | None] = [*names, *[None] * (count - len(names))]
    with book.transaction() as within:
        here = room(within, room_number)
        if count < 1:
            raise InputError("Nobody was added", remedy="Type how many pupils to add, or their names.")
        _room_for(len(here.pupils) + count)
        added = tuple(add_pupil(within, room_number, name) for name in asked)
        if today is not None:
            joined_today(within, room_number, [pupil.code for pupil in added], today)
        return added


def name_pupils(
    book: Store, room_number: int, names: Mapping[str, str], saw: Mapping[str, str] | None = None
) -> int:
    """Give pupils the names typed beside their codes, none where nothing is typed; return how many changed.

    All are changed, or none. ``saw`` are the names that stood there when the window was loaded: one that was
    not changed in it stays as it stands now. Raises InputError that tells the code, ChangedMeanwhile and
    NotThere.
    """
    with book.transaction() as within:
        here = {pupil.code: pupil.name or "" for pupil in room(within, room_number).pupils}
        wanted = {code: _of_pupil(code, typed) for code, typed in names.items()}
        changed = [
            code
            for code, name in wanted.items()
            if code not in here
            or is_to_be_written(
                f"The name of {code}", name or "", None if saw is None else saw.get(code), here[code]
            )
        ]
        for code in changed:
            name_pupil(within, room_number, code, wanted[code])
    return len(changed)


def rename(book: Store, room_number: int, name: str, saw: str | None = None) -> None:
    """Give the class another name than the window saw, which no other class has.

    Raises InputError, ChangedMeanwhile, NotThere.
    """
    wanted = name_seen(name, "The class")
    with book.transaction() as within:
        if is_to_be_written("The name of the class", wanted, saw, room(within, room_number).name):
            check_name_free(within, wanted, room_number)
            rename_class(within, room_number, wanted)


def _of_pupil(code: str, typed: str) -> str | None:
    return name_seen(typed, f"Pupil {code[:20]}") if typed.strip() else None


def _checked(name: str, line: int) -> str:
    try:
        return name_seen(name, "This pupil")
    except InputError as refused:
        raise InputError(refused.what, line=line, remedy=refused.remedy) from None


def name_seen(name: str, what: str) -> str:
    """Return a name without the blanks around it; refuse signs that cannot be seen (general category Cc)."""
    if any(unicodedata.category(sign) == "Cc" for sign in name.strip()):
        raise InputError(f"{what} has a sign in the name that cannot be seen", remedy="Type the name again.")
    return named(name, what)


def _room_for(pupils: int) -> None:
    if pupils > MOST_PUPILS:
        raise InputError(
            f"That would be {pupils} pupils, and a class has at most {MOST_PUPILS}",
            remedy="Add fewer, or start another class.",
        )
