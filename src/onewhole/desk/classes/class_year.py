"""The year of a class: kept as typed, looked at, and its next night composed with what the class showed."""

from datetime import date, datetime

from msgspec import Struct

from onewhole.desk.classes.class_records import night_pages, room
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.desk.classes.year_files import night_on, nights_told, year_ics, year_pdf, year_rows
from onewhole.desk.classes.year_night import NightComposed, compose_night
from onewhole.desk.classes.year_plan import YearNight, YearPlan, year_plan
from onewhole.desk.page.class_due import problems_due
from onewhole.desk.page.class_questions import questions_left
from onewhole.desk.page.page_begun import page_begun, typed_settings
from onewhole.errors import InputError
from onewhole.sheets.typed_lines import lines_of
from onewhole.sheets.wishes import OpenQuestion
from onewhole.sheets.years.year_wishes import YearWishes, read_year, write_year
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere
from onewhole.store.years import keep_year, year_of
from onewhole.writers.year_rows import YearRow, year_picture

#: A year to begin with begins in September; from June on it is the next one.
_SEPTEMBER, _JUNE = 9, 6


class ClassYear(Struct, frozen=True):
    """A class's year: as typed, planned, in rows and as a picture (SVG); and its next night.

    ``tonight`` is the first night from today on that has no page yet; None after the last one.
    """

    typed: str
    plan: YearPlan
    rows: tuple[YearRow, ...]
    picture: str
    told: str
    tonight: YearNight | None


def class_year(book: Store, room_number: int, today: date) -> ClassYear | None:
    """Return the year of a class; None where none is kept. Raises NotThere."""
    with book.snapshot() as seen:
        room(seen, room_number)
        kept = year_of(seen, room_number)
        taken = {page.night.day for page in night_pages(seen, room_number)} if kept else set()
    if kept is None:
        return None
    plan = year_plan(read_year(kept.typed))
    tonight = next((one for one in plan.nights if one.day >= today and one.day not in taken), None)
    rows = year_rows(plan)
    return ClassYear(kept.typed, plan, rows, year_picture(rows), nights_told(plan), tonight)


def keep_class_year(
    book: Store, room_number: int, typed: str, now: datetime, *, saw: str | None = None
) -> None:
    """Keep a typed year for a class. Raises YearError, NotThere; ChangedMeanwhile where it changed since."""
    typed = "\n".join(lines_of(typed))
    year_plan(read_year(typed))
    with book.transaction() as within:
        kept = year_of(within, room_number)
        if is_to_be_written("The year", typed, _lines(saw), kept.typed if kept else "", shown="another one"):
            keep_year(within, room_number, typed, now)


def _lines(saw: str | None) -> str | None:
    """Return what a window saw with the line ends of any computer made ours."""
    return None if saw is None else "\n".join(lines_of(saw))


def usual_year(today: date) -> str:
    """Return a year to begin with: grade 4, from the first Tuesday of September on.

    >>> usual_year(date(2026, 7, 1)).splitlines()[1]
    'first day: 2026-09-01'
    """
    year = today.year if today.month >= _JUNE else today.year - 1
    first = date(year, _SEPTEMBER, 1)
    return write_year(YearWishes(date.fromordinal(first.toordinal() + (1 - first.weekday()) % 7)))


def composed_for_class(
    book: Store, room_number: int, day: date, today: date, *, typed: str | None = None
) -> NightComposed:
    """Compose the page of a night of a class's year, with what the class showed until today.

    Its settings are those of the class's last page. None of the class's problems comes again while others are
    left; what its answers say is due comes back before what the plan has, and what they left open is asked.
    ``typed`` is a year instead of the one that is kept. Raises NotThere where there is none, and where no
    page goes home on the day.
    """
    plan = _plan(book, room_number) if typed is None else year_plan(read_year(typed))
    night = night_on(plan, day)
    before = [one.typed for page in night_pages(book, room_number) for one in page.sheet.problems]
    header = typed_settings(page_begun(book, room_number))
    back = problems_due(book, room_number, today)
    asks = _open(book, room_number)
    return compose_night(night, plan.wishes, header, before=before, back=back, questions=asks)


def _open(book: Store, room_number: int) -> tuple[OpenQuestion, ...]:
    try:
        return questions_left(book, room_number)
    except InputError:  # earlier nights are not read yet: the page is composed without what they left open
        return ()


def class_year_pdf(book: Store, room_number: int, now: datetime) -> bytes:
    """Return the year of a class as a PDF. Raises NotThere."""
    return year_pdf(_plan(book, room_number), now, typed_settings(page_begun(book, room_number)))


def class_year_ics(book: Store, room_number: int, now: datetime) -> bytes:
    """Return the year of a class as a calendar file. Raises NotThere."""
    return year_ics(_plan(book, room_number), now)


def _plan(book: Store, room_number: int) -> YearPlan:
    room(book, room_number)
    kept = year_of(book, room_number)
    if kept is None:
        raise NotThere("No year is kept for this class", where="year", remedy="Plan one on the page Year.")
    return year_plan(read_year(kept.typed))
