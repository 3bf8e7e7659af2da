"""The Tomorrow page: whom to see first, groups, the heat map, evidence for each finding, pages to print."""

from pathlib import Path
from urllib.parse import quote

from markupsafe import Markup

from onewhole.desk.classes.class_records import Store, night_page
from onewhole.desk.classes.marked_nights import marked_night, missing_before
from onewhole.desk.tomorrow.morning import CAUTION, fingerprint, morning
from onewhole.desk.tomorrow.morning_pages import print_morning, printed_page, printed_pages
from onewhole.desk.tomorrow.moving import move, set_aside
from onewhole.web.ask import Ask, Lent, Shown, Told, Went
from onewhole.web.long_work import Outcome, Progress
from onewhole.web.pages.reading import READ_AT_ONCE, started


def look(ask: Ask) -> Shown:
    """Show tomorrow's page, or how far the reading of the earlier nights is."""
    book, room, night = _where(ask)
    if missing_before(book, room, night) > READ_AT_ONCE:
        return _waiting(ask)
    found = morning(book, room, night)
    early = [one.code for one in found.first]
    later = sorted(found.talks, key=lambda code: (not found.talks[code].finds, code))
    talks = [found.talks[code] for code in dict.fromkeys((*early, *later))]
    words = {
        "page": found.page,
        "morning": found,
        "told": [talk for talk in talks if talk.lines],
        "aside": {seat.code for card in found.cards for seat in card.seats if seat.aside},
        "printed": printed_pages(_folder(ask), found.stamp),
        "printing": ask.door.works.under_way(_back(ask)),
        "caution": CAUTION,
        "formula": Markup,
    }
    return Shown("tomorrow.html", words)


def moved(ask: Ask) -> Told | Went:
    """Move a pupil to a group, or back to where the answers say."""
    book, room, night = _where(ask)
    code = ask.field("code")
    done = move(book, room, night, code=code, key=ask.field("key"), now=ask.door.now())
    if ask.field("script", ""):
        said = f"{ask.room.shown(code)} is in the group {done.group} now."
        return Told({"said": said, "group": done.group, "undo": done.undo})
    return Went(f"{_back(ask)}#seat-{quote(code)}")


def aside(ask: Ask) -> Went:
    """Set a finding aside, or take it up again."""
    book, room, night = _where(ask)
    code = ask.field("code")
    set_aside(book, room, night, code=code, aside=ask.field("aside") == "yes", now=ask.door.now())
    return Went(f"{_back(ask)}#talk-{quote(code)}")


def paper(ask: Ask) -> Went:
    """Make tomorrow's pages; that is long work."""
    book, room, night = _where(ask)
    folder, when = _folder(ask), ask.door.now()
    every, back = ask.field("every", "") == "yes", _back(ask)

    def run(progress: Progress) -> Outcome:
        made = print_morning(
            book, room, night, folder=folder, when=when, progress=progress, every_pupil=every
        )
        return Outcome(f"{back}#paper", f"{len(made)} pages are ready to print.")

    night_page(book, room, night)
    work = ask.door.works.start("Tomorrow's pages are made", back, run)
    return Went(f"/under-way/{work.name}")


def sheet(ask: Ask) -> Lent:
    """Give one of the printed pages."""
    named = fingerprint(marked_night(*_where(ask)))
    return Lent(printed_page(_folder(ask), named, str(ask.place["sheet"])), "application/pdf", "")


def _waiting(ask: Ask) -> Shown:
    """Let the earlier nights be read as long work, and show how far that is."""
    book, room, night = _where(ask)
    page = night_page(book, room, night)
    return Shown("tomorrow_wait.html", {"page": page, "work": started(ask, book, room, _back(ask))})


def _where(ask: Ask) -> tuple[Store, int, int]:
    return ask.book, ask.number("room"), ask.number("night")


def _back(ask: Ask) -> str:
    return ask.at("night", ask.number("night"), "tomorrow")


def _folder(ask: Ask) -> Path:
    return ask.door.folder / ask.book_name / f"night-{ask.number('night')}" / "tomorrow"
