"""A year as files: one picture and one table to print, a calendar, and its pages composed ahead."""

from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path

from onewhole.desk.classes.year_night import NightComposed, NoPageError, compose_night
from onewhole.desk.classes.year_plan import YearNight, YearPlan, year_plan
from onewhole.presses.files import write
from onewhole.presses.folders import made
from onewhole.presses.pdf import press
from onewhole.presses.texts import read_text
from onewhole.sheets.header import Header
from onewhole.sheets.years.topic import YearTopic
from onewhole.sheets.years.year_wishes import read_year
from onewhole.store.refusals import NotThere
from onewhole.writers.calendar_file import CalendarDay, calendar_file
from onewhole.writers.year_page import year_page
from onewhole.writers.year_rows import YearRow

__all__ = [
    "ICS",
    "NightComposed",
    "YearPlan",
    "composed_night",
    "composed_year",
    "night_on",
    "nights_told",
    "put_sheets",
    "put_year",
    "year_ics",
    "year_in",
    "year_pdf",
    "year_rows",
]

ICS = "text/calendar; charset=utf-8"


def year_in(path: Path) -> tuple[str, YearPlan]:
    """Return what is typed in the file of a year, and the year. Raises YearError with every mistake."""
    typed = read_text(path)
    return typed, year_plan(read_year(typed, file=str(path)))


def night_on(plan: YearPlan, day: date) -> YearNight:
    """Return the night of a day. Raises NotThere where no page goes home."""
    found = plan.on(day)
    if found is None:
        after = plan.next_from(day)
        remedy = f"The next one is {after.day.isoformat()}." if after else "The year is over by then."
        raise NotThere("The year has no night on this day", where=day.isoformat(), remedy=remedy)
    return found


def composed_night(plan: YearPlan, day: date) -> NightComposed:
    """Compose the page of a day, as for a class of which nothing is known. Raises NotThere, NoPageError."""
    return compose_night(night_on(plan, day), plan.wishes, Header())


def year_rows(plan: YearPlan) -> tuple[YearRow, ...]:
    """Return the weeks of a year as rows."""
    rows = []
    taught = {week.topic: week.number for week in plan.weeks if week.topic}
    for week in plan.weeks:
        topic = week.topic
        brought = {one for night in plan.nights if night.week == week for one in _brought(night)}
        rows.append(
            YearRow(
                week.number,
                week.nights,
                topic.called if topic else "",
                topic.codes if topic else (),
                topic is None or topic.composed or not topic.codes,
                tuple(taught[one] for one in sorted(brought, key=taught.__getitem__)),
            )
        )
    return tuple(rows)


def _brought(night: YearNight) -> Iterator[YearTopic]:
    yield from night.back
    if night.of is not None and not night.own:
        yield night.of


def nights_told(plan: YearPlan) -> str:
    """Say how many nights a year has."""
    first, last = plan.nights[0].day, plan.nights[-1].day
    wishes = plan.wishes
    return (
        f"{len(plan.nights)} nights in {len(plan.weeks)} weeks, from {first.isoformat()} to "
        f"{last.isoformat()}; {wishes.problems} problems and {wishes.minutes} minutes a page at most."
    )


def year_pdf(plan: YearPlan, when: datetime, header: Header | None = None) -> bytes:
    """Return the year as a PDF, tagged."""
    page = year_page(year_rows(plan), header or Header(), grade=plan.wishes.grade, told=nights_told(plan))
    return press(page.source, data=page.content, when=when)


def year_ics(plan: YearPlan, when: datetime) -> bytes:
    """Return the nights of a year as a calendar (RFC 5545), an event a night."""
    return calendar_file(
        f"Grade {plan.wishes.grade} mathematics",
        [
            CalendarDay(night.day, _named(night), _described(night), f"onewhole-{night.day.isoformat()}")
            for night in plan.nights
        ],
        when.astimezone(UTC).strftime("%Y%m%dT%H%M%SZ"),
    )


def _named(night: YearNight) -> str:
    topic = night.week.topic
    return f"Week {night.week.number}: {topic.called if topic else 'review'}"


def _described(night: YearNight) -> str:
    topic = night.week.topic
    parts = [", ".join(topic.codes)] if topic and topic.codes else []
    if back := [one.called for one in night.back]:
        parts.append(f"Comes back: {'; '.join(back)}.")
    return "\n".join(parts)


def put_year(plan: YearPlan, folder: Path, when: datetime) -> tuple[Path, ...]:
    """Write ``year.pdf`` and ``year.ics`` into a folder, which is made if it is not there."""
    ready = {"year.pdf": year_pdf(plan, when), "year.ics": year_ics(plan, when)}
    return _put(folder, ready)


def _put(folder: Path, ready: dict[str, bytes]) -> tuple[Path, ...]:
    made(folder)
    for name, content in ready.items():
        write(folder / name, content)
    return tuple(folder / name for name in ready)


def composed_year(plan: YearPlan, header: Header | None = None) -> Iterator[tuple[YearNight, NightComposed]]:
    """Compose the pages of all nights in turn; where nothing can be asked yet, there is no page."""
    before: list[str] = []
    for night in plan.nights:
        try:
            made = compose_night(night, plan.wishes, header or Header(), before=before)
        except NoPageError:
            continue
        before += [problem.typed for problem in made.sheet.problems]
        yield night, made


def put_sheets(plan: YearPlan, folder: Path) -> tuple[Path, ...]:
    """Compose the pages of all nights and write each as a sheet, named after its day."""
    ready = {f"{night.day.isoformat()}.txt": made.typed.encode() for night, made in composed_year(plan)}
    return _put(folder, ready)
