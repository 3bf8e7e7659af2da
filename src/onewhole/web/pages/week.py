"""Week: the nights in a row, where each stands, the next thing to do, and what is due to come back."""

from collections.abc import Sequence
from functools import partial

from onewhole.desk.classes.class_records import Store, night_page
from onewhole.desk.classes.week import WHY, Next, Step, WeekNight, keep_step, monday, week
from onewhole.desk.tomorrow.morning import morning
from onewhole.desk.walkthrough.board import board, on_offer
from onewhole.desk.walkthrough.film_plan import plan_of
from onewhole.errors import InputError
from onewhole.web.ask import Ask, Shown, Went, day_typed
from onewhole.web.pages.reading import READ_AT_ONCE

#: What the teacher can say is done, by what comes next.
_SAYS = {
    Next.PRINT: Step.PRINTED,
    Next.SHOW: Step.SHOWN,
    Next.MARK: Step.MARKED,
    Next.REGROUP: Step.REGROUPED,
}


def look(ask: Ask) -> Shown:
    """Show three weeks of the class."""
    around = day_typed(ask.query["of"]) if "of" in ask.query else None
    today = ask.door.today()
    found = week(ask.book, ask.number("room"), today, around)
    if found.missing <= READ_AT_ONCE:
        _make_ready(ask, [night for one in found.shown for night in one.nights])
    return Shown(
        "week.html",
        {
            "weeks": found,
            "this_week": monday(today),
            "around": around,
            "goes": lambda night: _goes(ask, night),
            "says": _SAYS,
            "Step": Step,
            "why": WHY,
        },
    )


def _make_ready(ask: Ask, nights: Sequence[WeekNight]) -> None:
    """Work out the pages that the teacher is likely to open next, so that they are there at once."""
    for night in {night.next: night for night in sorted(nights, key=lambda one: one.day)}.values():
        ready = {Next.SHOW: _board, Next.REGROUP: morning}.get(night.next)
        if ready is not None:
            what = f"{ask.book_name} {night.number} {night.next}"
            ask.door.works.meanwhile(what, partial(ready, ask.book, ask.number("room"), night.number))


def _board(book: Store, room: int, night: int) -> object:
    sheet, plan = night_page(book, room, night).sheet, plan_of(book, night)
    return board(sheet, plan), on_offer(sheet, plan)


def done(ask: Ask) -> Went:
    """Keep that the teacher says a step is done."""
    page = night_page(ask.book, ask.number("room"), ask.number("night"))
    said = ask.field("step")
    if said not in set(Step):
        raise InputError("There is no such step", remedy="Load the Week again.")
    keep_step(ask.book, page.night.number, Step(said), ask.door.now())
    return Went(f"{ask.at('week')}?of={page.night.day.isoformat()}#night-{page.night.number}")


def _goes(ask: Ask, night: WeekNight) -> str:
    """Return the page on which the next thing is done."""
    match night.next:
        case Next.PRINT:
            return ask.at("page", night.sheet)
        case Next.SHOW:
            return ask.at("night", night.number, "walkthrough")
        case Next.MARK:
            return ask.at("night", night.number, "marking")
        case Next.REGROUP | Next.DONE:
            return ask.at("night", night.number, "tomorrow")
