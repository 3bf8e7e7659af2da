"""A night renamed, moved to another day, or its page set again for another."""

from datetime import date

from onewhole.desk.classes.class_list import name_seen
from onewhole.desk.classes.class_records import NightPage, night_page
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.errors import InputError
from onewhole.store.nights import add_night, change_day, name_night, nights_of
from onewhole.store.opening import Store


def rename_night(book: Store, room_number: int, night: int, name: str, *, saw: str | None = None) -> None:
    """Call a night otherwise than its page; with nothing typed it is called as its page again.

    ``saw`` is the name that the window saw. Raises InputError, ChangedMeanwhile and NotThere.
    """
    typed = name_seen(name, "This night") if name.strip() else ""
    with book.transaction() as within:
        page = night_page(within, room_number, night)
        wanted = "" if typed == page.page_name else typed
        if is_to_be_written("The name of this night", wanted, saw, page.night.name or ""):
            name_night(within, night, wanted or None)


def move_night(book: Store, room_number: int, night: int, day: date, *, saw: str | None = None) -> None:
    """Let a night be another day's, with all that was written on it.

    Raises InputError where its page is another night of that day already, ChangedMeanwhile and NotThere.
    """
    with book.transaction() as within:
        page = night_page(within, room_number, night)
        if is_to_be_written("The day", day.isoformat(), saw, page.night.day.isoformat()):
            _check_free(within, page, day)
            change_day(within, night, day)


def set_again(book: Store, room_number: int, night: int, day: date) -> int:
    """Let the class take the page of a night home once more; return the number of the new night.

    Raises InputError where it takes it home on that day already, and NotThere.
    """
    with book.transaction() as within:
        page = night_page(within, room_number, night)
        _check_free(within, page, day)
        made = add_night(within, room_number, page.night.sheet_number, page.night.version, day)
        if page.night.name is not None:
            name_night(within, made.number, page.night.name)
        return made.number


def _check_free(book: Store, page: NightPage, day: date) -> None:
    mine = page.night
    if any(
        (one.sheet_number, one.day) == (mine.sheet_number, day) for one in nights_of(book, mine.class_number)
    ):
        raise InputError(
            f"“{page.page_name}” goes home on {day:%A, %B} {day.day} already",
            remedy="Choose another day; or delete one of the two nights.",
        )
