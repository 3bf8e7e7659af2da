"""Week: the nights in a row, where each stands, the next thing to do, and what is due to come back."""

from collections.abc import Callable, Mapping, Sequence
from datetime import date
from functools import partial
from itertools import groupby

from markupsafe import Markup

from onewhole.desk.classes.class_records import Store, night_page
from onewhole.desk.classes.own_forms import own_readers
from onewhole.desk.classes.week import (
    HOW,
    LONGEST_SOUGHT,
    PLAN,
    WHY,
    EveryNight,
    Next,
    NightStep,
    WeekNight,
    keep_step,
    monday,
    week,
)
from onewhole.desk.keep.backups import keep_until
from onewhole.desk.tomorrow.morning import morning
from onewhole.desk.walkthrough.board import board, on_offer
from onewhole.desk.walkthrough.film_plan import plan_of
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest, day_typed
from onewhole.web.http.response import HtmlPage, Redirect
from onewhole.web.pages.reading import READ_AT_ONCE

#: The last day of a class is told so many days before.
TOLD_AHEAD_DAYS = 28
#: What the teacher can say is done, by what comes next.
_SAYS = {
    Next.PRINT: NightStep.PRINTED,
    Next.SHOW: NightStep.SHOWN,
    Next.MARK: NightStep.MARKED,
    Next.REGROUP: NightStep.REGROUPED,
}


def look(request: PageRequest) -> HtmlPage:
    """Show three weeks of the class, every night in a list, and the nights that are looked for."""
    around = day_typed(request.query["of"]) if "of" in request.query else None
    today = request.app.today()
    until = keep_until(request.book)
    found = week(request.book, request.number("room"), today, around, sought=request.query.get("find", ""))
    if found.missing <= READ_AT_ONCE:
        _prefetch(request, [night for one in found.shown for night in one.nights])
    return HtmlPage(
        "week.html",
        {
            "weeks": found,
            "own_pages": own_readers(request.book, request.number("room")),
            "this_week": monday(today),
            "around": around,
            "until": until,
            "over": until is not None and today > until,
            "days_left": None if until is None else (until - today).days,
            "told_ahead": TOLD_AHEAD_DAYS,
            "longest": LONGEST_SOUGHT,
            "months": _by_month(found.every),
            "goes": lambda night: _goes(request, night),
            "says": _SAYS,
            "Step": NightStep,
            "Next": Next,
            "why": WHY,
            "how": HOW,
            "plan": PLAN,
            "picture": Markup(found.plan.picture),  # noqa: S704 - our own drawing, no word of it is typed
        },
    )


def _by_month(nights: Sequence[EveryNight]) -> list[tuple[date, list[EveryNight]]]:
    """Return the nights of each month under its first day."""
    return [
        (first, list(among))
        for first, among in groupby(nights, lambda night: date(night.day.year, night.day.month, 1))
    ]


def _prefetch(request: PageRequest, nights: Sequence[WeekNight]) -> None:
    """Work out the pages that the teacher is likely to open next, so that they are there at once.

    One of them is Tomorrow of the last night that has answers, whatever is still to be done there.
    """
    by_day = sorted(nights, key=lambda one: (one.day, one.number))
    last = {night.next: night for night in by_day}
    wanted = {last[step].number: ready for step, ready in _READY.items() if step in last}
    if answered := [night.number for night in by_day if night.marked]:
        wanted[answered[-1]] = morning
    for night, ready in wanted.items():
        what = f"{request.book_name} {night} {ready.__name__}"
        request.app.jobs.prefetch(what, partial(ready, request.open_file, request.number("room"), night))


def _board(book: Store, room: int, night: int) -> object:
    sheet, plan = night_page(book, room, night).sheet, plan_of(book, night)
    return board(sheet, plan), on_offer(sheet, plan)


#: What is worked out ahead, by what comes next on a night.
_READY: Mapping[Next, Callable[[Store, int, int], object]] = {Next.SHOW: _board, Next.REGROUP: morning}


def done(request: PageRequest) -> Redirect:
    """Keep that the teacher says a step is done."""
    page = night_page(request.book, request.number("room"), request.number("night"))
    said = request.field("step")
    if said not in set(NightStep):
        raise InputError("There is no such step", remedy="Load the Week again.")
    keep_step(request.book, page.night.number, NightStep(said), request.app.now())
    return Redirect(f"{request.at('week.look')}?of={page.night.day.isoformat()}#night-{page.night.number}")


def _goes(request: PageRequest, night: WeekNight) -> str:
    """Return the page on which the next thing is done."""
    match night.next:
        case Next.PRINT:
            return request.at("page_desk.look", sheet=night.sheet)
        case Next.SHOW:
            return request.at("walkthrough.look", night=night.number)
        case Next.MARK:
            return request.at("marking.look", night=night.number)
        case Next.REGROUP | Next.DONE:
            return request.at("tomorrow.look", night=night.number)
