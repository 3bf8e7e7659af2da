"""The Tomorrow page: whom to see first, groups, the heat map, evidence for each finding, pages to print."""

from pathlib import Path
from urllib.parse import quote

from markupsafe import Markup

from onewhole.desk.classes.class_records import Store, night_page
from onewhole.desk.classes.group_settings import set_groups
from onewhole.desk.classes.marked_nights import marked_night, missing_before
from onewhole.desk.marking.heat import density
from onewhole.desk.page.file_name import file_name
from onewhole.desk.pupil.asked_answers import (
    LONGEST,
    note_asked,
    take_asked_back,
    talk_lines,
    word_choices,
)
from onewhole.desk.tomorrow.keeping_groups import keep_groups, keep_seen, take_changes
from onewhole.desk.tomorrow.morning import CAUTION, fingerprint, morning
from onewhole.desk.tomorrow.morning_pages import print_morning, printed_page, printed_pages
from onewhole.desk.tomorrow.moving import NEW, merge, move, set_aside
from onewhole.desk.tomorrow.practice_pages import unpractised
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import FileContent, HtmlPage, Json, Redirect
from onewhole.web.jobs import Outcome, Progress
from onewhole.web.pages.job import how_far
from onewhole.web.pages.reading import READ_AT_ONCE, started

#: No number of groups or pupils has so many digits.
LONGEST_NUMBER = 3
#: So many changes are in view; the others are folded.
MOST_CHANGES = 3


def look(request: PageRequest) -> HtmlPage:
    """Show tomorrow's page, or how far the reading of the earlier nights is."""
    return _shown(request)


def _shown(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    book, room, night = _where(request)
    if missing_before(book, room, night) > READ_AT_ONCE:
        return _waiting(request)
    found = morning(book, room, night)
    early = [one.code for one in found.first]
    later = sorted(found.talks, key=lambda code: (not found.talks[code].finds, code))
    talks = [found.talks[code] for code in dict.fromkeys((*early, *later))]
    printed = printed_pages(_folder(request), found.stamp)
    words = {
        "page": found.page,
        "morning": found,
        "told": [talk for talk in talks if talk.lines or talk.talked],
        "asked": talk_lines(book, room, night),
        "word_choices": word_choices,
        "longest": LONGEST,
        "refused": refused,
        "typed": {key: request.field(key, "") for key in ("code", "asked", "wrote", "word")},
        "aside": {seat.code for card in found.cards for seat in card.seats if seat.aside},
        "printed": printed,
        "no_practice": unpractised(
            [card.name for card in found.cards], found.page.sheet, {file for file, _ in printed}
        ),
        "printing": request.app.jobs.under_way(_back(request)),
        "caution": CAUTION,
        "formula": Markup,
        "density": density,
        "new": NEW,
        "most_changes": MOST_CHANGES,
        "met": sum(card.meets for card in found.cards),
    }
    return HtmlPage("tomorrow.html", words, 422 if refused else 200)


def ask(request: PageRequest) -> HtmlPage | Redirect:
    """Keep what a pupil was asked and said, and the teacher's word on the talk."""
    book, room, night = _where(request)
    code = request.field("code")
    try:
        note_asked(
            book,
            room,
            night,
            code,
            asked=request.field("asked"),
            wrote=request.field("wrote"),
            word=request.field("word"),
            now=request.app.now(),
        )
    except InputError as refused:
        return _shown(request, refused)
    return Redirect(f"{_back(request)}#talk-{quote(code)}")


def unask(request: PageRequest) -> Redirect:
    """Take back a row of a talk."""
    book, room, night = _where(request)
    code, line = request.field("code"), request.count("line", 1, 2**31)
    take_asked_back(book, room, night, code, number=line, now=request.app.now())
    return Redirect(f"{_back(request)}#talk-{quote(code)}")


def moved(request: PageRequest) -> Json | Redirect:
    """Move a pupil to a group, or back to where the answers say."""
    book, room, night = _where(request)
    code = request.field("code")
    done = move(
        book,
        room,
        night,
        code=code,
        key=request.field("key"),
        now=request.app.now(),
        saw=request.field("saw"),
        stays=request.field("stays", "") == "yes",
    )
    if request.field("script", ""):
        said = f"{request.room.shown(code)} is in the group {done.group} now."
        return Json({"said": said, "group": done.group, "undo": done.undo})
    return Redirect(f"{_back(request)}#seat-{quote(code)}")


def seen(request: PageRequest) -> Json | Redirect:
    """Keep the groups that were looked at: late papers then move nobody."""
    book, room, night = _where(request)
    keep_seen(book, room, night, saw=request.field("saw"), now=request.app.now())
    return Json({}) if request.field("script", "") else Redirect(f"{_back(request)}#groups-head")


def changes(request: PageRequest) -> Redirect:
    """Take the changes that the answers ask for, or keep the groups as they are."""
    book, room, night = _where(request)
    act = take_changes if request.field("take") == "yes" else keep_groups
    act(book, room, night, saw=request.field("saw"), now=request.app.now())
    return Redirect(f"{_back(request)}#groups-head")


def merged(request: PageRequest) -> Redirect:
    """Put all pupils of a group into another one."""
    book, room, night = _where(request)
    merge(book, room, night, key=request.field("key"), into=request.field("into"), now=request.app.now())
    return Redirect(f"{_back(request)}#groups-head")


def settings(request: PageRequest) -> Redirect:
    """Keep how many groups are met, and how many pupils sit together."""
    book, room, _ = _where(request)
    meets, smallest, largest = (_number(request, name) for name in ("meets", "smallest", "largest"))
    set_groups(book, room, meets, (smallest, largest), saw=request.field("saw"))
    return Redirect(f"{_back(request)}#groups-head")


def aside(request: PageRequest) -> Redirect:
    """Set a finding aside, or take it up again."""
    book, room, night = _where(request)
    code = request.field("code")
    set_aside(book, room, night, code=code, aside=request.field("aside") == "yes", now=request.app.now())
    return Redirect(f"{_back(request)}#talk-{quote(code)}")


def paper(request: PageRequest) -> Redirect:
    """Make tomorrow's pages; that is long work."""
    book, room, night = _where(request)
    file, folder, when = request.open_file, _folder(request), request.app.now()
    every, back = request.field("every", "") == "yes", _back(request)
    copies = request.field("copies", "") == "yes"

    def run(progress: Progress) -> Outcome:
        made = print_morning(
            file,
            room,
            night,
            folder=folder,
            when=when,
            progress=progress,
            every_pupil=every,
            copies=copies,
        )
        return Outcome(f"{back}#paper", f"{len(made) - 1} pages are ready to print.")

    night_page(book, room, night)
    job = request.app.jobs.start("Tomorrow's pages are made", back, run)
    return Redirect(request.at("job.look", job=job.name))


def sheet(request: PageRequest) -> FileContent:
    """Give one of the printed pages."""
    night, sheet = marked_night(*_where(request)), str(request.path_params["sheet"])
    named = fingerprint(night)
    there = printed_page(_folder(request), named, sheet)
    called = dict(printed_pages(_folder(request), named))[sheet]
    name = file_name(f"{night.page.name}, {called}", "pdf")
    return FileContent(there, "application/pdf", name, in_tab=True)


def _waiting(request: PageRequest) -> HtmlPage:
    """Let the earlier nights be read as long work, and show how far that is."""
    book, room, night = _where(request)
    job = started(request, request.open_file, room, _back(request))
    words = {
        "page": night_page(book, room, night),
        "job": job,
        "far": how_far(job, request.app.jobs.seconds(job)),
    }
    return HtmlPage("tomorrow_wait.html", words)


def _where(request: PageRequest) -> tuple[Store, int, int]:
    return request.book, request.number("room"), request.number("night")


def _number(request: PageRequest, name: str) -> int:
    typed = request.field(name).strip()
    if not (typed.isascii() and typed.isdigit() and len(typed) < LONGEST_NUMBER):
        raise InputError(
            "This is no number of groups or pupils", where=name, remedy="Give a number from 1 up."
        )
    return int(typed)


def _back(request: PageRequest) -> str:
    return request.at("tomorrow.look")


def _folder(request: PageRequest) -> Path:
    return request.app.folder / request.book_name / f"night-{request.number('night')}" / "tomorrow"
