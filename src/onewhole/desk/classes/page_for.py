"""For whom a page is: the whole class, a group, or pupils by their codes or names."""

from collections.abc import Collection, Iterator, Sequence
from datetime import datetime

from msgspec import Struct

from onewhole.desk.classes.class_records import Classroom, night_page, room
from onewhole.desk.classes.marked_nights import night_summaries
from onewhole.desk.classes.pupil_codes import codes_typed
from onewhole.desk.classes.rosters import Roster, roster_of
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.errors import InputError
from onewhole.findings.attendance import NightSaid, PageWord
from onewhole.store.night_words import keep_night_words
from onewhole.store.opening import Store

__all__ = ["WHOLE", "GroupNow", "give_page_to", "groups_now", "meant", "saw_of"]

#: What is typed for everybody; nothing typed means the same.
WHOLE = "the whole class"


class GroupNow(Struct, frozen=True):
    """A group of the last night that was marked: its name, and who is in it, as the teacher knows them."""

    name: str
    codes: tuple[str, ...]
    shown: tuple[str, ...]


def groups_now(book: Store, room_number: int) -> tuple[GroupNow, ...]:
    """Return the groups as they stand after the last night of a class that was marked. Raises NotThere."""
    with book.snapshot() as seen:
        here, left = room(seen, room_number), night_summaries(seen, room_number)
    found: dict[str, list[str]] = {}
    if left.nights:
        pupils = left.nights[-1].pupils
        for pupil in here.pupils:
            if pupil.code in pupils:
                found.setdefault(pupils[pupil.code].group, []).append(pupil.code)
    return tuple(
        GroupNow(name, tuple(codes), tuple(map(here.shown, codes))) for name, codes in sorted(found.items())
    )


def meant(of: Classroom, typed: str, groups: Sequence[GroupNow]) -> tuple[str, ...] | None:
    """Return the pupils that are meant, by code in the class's order; None for the whole class.

    A group's name means its pupils; else :func:`~.pupil_codes.codes_typed`. Groups, codes and names may stand
    beside each other, divided by commas. Raises InputError for a word of nobody.

    >>> from onewhole.store.classes import Pupil
    >>> ada, bo = Pupil(1, 1, "K01", "Ada"), Pupil(2, 1, "K02", None)
    >>> of, larks = Classroom(1, "Room 12", (ada, bo)), GroupNow("Larks", ("K02",), ("K02",))
    >>> meant(of, "larks, ada", (larks,)), meant(of, "the whole class", ())
    (('K01', 'K02'), None)
    """
    if typed.strip().casefold() in {"", WHOLE}:
        return None
    by_name = {group.name.casefold(): group.codes for group in groups}
    found: set[str] = set()
    for part in typed.replace(";", ",").split(","):
        codes = by_name.get(" ".join(part.split()).casefold())
        found |= set(codes_typed(of, part) if codes is None else codes)
    if not found:
        raise InputError("Nobody is meant", remedy="Type codes, names or a group, or leave it empty.")
    return tuple(pupil.code for pupil in of.pupils if pupil.code in found)


def saw_of(who: Roster) -> str:
    """Return for whom a page stands to be, as a form carries it: nothing for the whole class."""
    return (" ".join(code for code in who.everyone if code in who.got) or "nobody") if who.for_part else ""


def give_page_to(
    book: Store,
    room_number: int,
    night: int,
    codes: Collection[str] | None,
    *,
    now: datetime,
    by: str,
    saw: str | None = None,
) -> None:
    """Keep for whom a night's page is: for these pupils only, or with None for the whole class.

    ``saw`` is what stood when the window was loaded (:func:`saw_of`). Raises ChangedMeanwhile and NotThere.
    """
    with book.transaction() as within:
        page, here = night_page(within, room_number, night), room(within, room_number)
        who = roster_of(within, page.night)
        wanted = "" if codes is None else " ".join(one.code for one in here.pupils if one.code in codes)
        told = saw_of(who) or WHOLE
        if is_to_be_written("For whom this page is", wanted, saw, saw_of(who), shown=told):
            keep_night_words(within, night, list(_words(who, codes)), now, by)


def _words(who: Roster, codes: Collection[str] | None) -> Iterator[tuple[str, NightSaid]]:
    for code in who.everyone:
        if codes is None:
            yield code, PageWord.CLASS
        else:
            yield code, PageWord.NAMED if code in codes else PageWord.NOT_GIVEN
