"""First start: an empty class, or the invented one in a file of its own."""

import shutil
from time import sleep

from onewhole.desk.classes.class_list import LONGEST_NAME, MOST_PUPILS, names_typed, new_class
from onewhole.desk.classes.class_records import rooms
from onewhole.desk.classes.demo import is_whole, open_demo
from onewhole.errors import InputError
from onewhole.web.app import DEMO
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage, Redirect
from onewhole.web.pages.reading import started

#: So often, and so many seconds apart, it is looked whether work on the demo has ended.
_TRIES, _PAUSE = 100, 0.1


def look(request: PageRequest) -> HtmlPage:
    """Ask for a class; the demo is beside it."""
    return _shown(request, {"name": "", "pupils": "24", "names": ""})


def make(request: PageRequest) -> HtmlPage | Redirect:
    """Keep the new class and go to its week; what cannot be is told beside what was typed."""
    typed = {key: request.field(key, "") for key in ("name", "pupils", "names")}
    try:
        names = names_typed(typed["names"])
        pupils = request.count("pupils", 0, MOST_PUPILS) if typed["pupils"].strip() else len(names)
        made = new_class(request.book, typed["name"], pupils, names, request.app.now())
    except InputError as refused:
        return _shown(request, typed, refused)
    return Redirect(request.at("week.look", room=made.number))


def _shown(request: PageRequest, typed: dict[str, str], refused: InputError | None = None) -> HtmlPage:
    words: dict[str, object] = {
        "typed": typed,
        "refused": refused,
        "others": rooms(request.book),
        "most": MOST_PUPILS,
        "longest": LONGEST_NAME,
    }
    return HtmlPage("welcome.html", words, 422 if refused else 200)


def demo(request: PageRequest) -> Redirect:
    """Open the demo, filled if it is not there yet, and let its answers be read meanwhile."""
    books, now = request.app.books, request.app.now()
    if not (books.there(DEMO) and is_whole(books[DEMO])):
        books.put_in(DEMO, lambda path: open_demo(path, now))
    club = rooms(books[DEMO])[0]
    week = request.at("week.look", book=DEMO, room=club.number)
    started(request, books[DEMO], club.number, week)
    return Redirect(week)


def ask_away(_ask: PageRequest) -> HtmlPage:
    """Ask whether the demo is to be put away."""
    return HtmlPage("demo_away.html")


def away(request: PageRequest) -> Redirect:
    """Take the demo's file and what was made of it off the disk, once no work on it is under way."""
    for _ in range(_TRIES):
        if not any(job.back.startswith(f"/{DEMO}/") for job in request.app.jobs.under_way()):
            break
        sleep(_PAUSE)
    else:
        raise InputError(
            "The demo is still being worked on", remedy="Wait until that is done, then try again."
        )
    request.app.books.put_away(DEMO)
    shutil.rmtree(request.app.folder / DEMO, ignore_errors=True)
    return Redirect("/")
