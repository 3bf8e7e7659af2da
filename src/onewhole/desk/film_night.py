"""A night is filmed as planned, with what the teacher recorded; then it counts as shown."""

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from pathlib import Path

from onewhole.desk.board import board
from onewhole.desk.classbook import NightPage
from onewhole.desk.film import Shown, film_sheet
from onewhole.desk.film_plan import plan_of
from onewhole.desk.recordings import usable
from onewhole.store.opening import Store
from onewhole.store.steps import Step, keep_step


def film_night(
    book: Store,
    page: NightPage,
    to: Path,
    *,
    when: datetime,
    progress: Callable[[int, int], None] = lambda _done, _of: None,
) -> Shown:
    """Film a night into a folder as :func:`onewhole.desk.film.film_sheet` does, and keep that it was shown.

    Recordings that fit the board are heard, each in step with the teacher's key; parts without one are
    silent, and the notes say so. Raises InputError, PressError, FileRefused and StoreRefused.
    """
    night = page.night.number
    plan = plan_of(book, night)
    recorded, notes = usable(book, night, board(page.sheet, plan))
    shown = film_sheet(page.sheet, to, when=when, wishes=plan.wishes(recorded), progress=progress)
    mark_shown(book, night, when)
    return replace(shown, notes=(*notes, *shown.notes))


def mark_shown(book: Store, night: int, now: datetime) -> None:
    """Keep that a night's walkthrough was shown; again is fine. Raises NotThere and StoreRefused."""
    keep_step(book, night, Step.SHOWN, now)
