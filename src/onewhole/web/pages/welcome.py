"""First start: an empty class, or the invented one in a file of its own."""

import shutil
from time import sleep

from onewhole.desk.classes.class_list import LONGEST_NAME, MOST_PUPILS, names_typed, new_class
from onewhole.desk.classes.class_records import rooms
from onewhole.desk.classes.demo import is_whole, open_demo
from onewhole.errors import InputError
from onewhole.web.ask import Ask, Shown, Went
from onewhole.web.door import DEMO
from onewhole.web.pages.reading import started

#: So often, and so many seconds apart, it is looked whether work on the demo has ended.
_TRIES, _PAUSE = 100, 0.1


def look(ask: Ask) -> Shown:
    """Ask for a class; the demo is beside it."""
    return _shown(ask, {"name": "", "pupils": "24", "names": ""})


def make(ask: Ask) -> Shown | Went:
    """Keep the new class and go to its week; what cannot be is told beside what was typed."""
    typed = {key: ask.field(key, "") for key in ("name", "pupils", "names")}
    try:
        names = names_typed(typed["names"])
        pupils = ask.count("pupils", 0, MOST_PUPILS) if typed["pupils"].strip() else len(names)
        made = new_class(ask.book, typed["name"], pupils, names, ask.door.now())
    except InputError as refused:
        return _shown(ask, typed, refused)
    return Went(f"/mine/{made.number}/week")


def _shown(ask: Ask, typed: dict[str, str], refused: InputError | None = None) -> Shown:
    words: dict[str, object] = {
        "typed": typed,
        "refused": refused,
        "others": rooms(ask.book),
        "most": MOST_PUPILS,
        "longest": LONGEST_NAME,
    }
    return Shown("welcome.html", words, 422 if refused else 200)


def demo(ask: Ask) -> Went:
    """Open the demo, filled if it is not there yet, and let its answers be read meanwhile."""
    books, now = ask.door.books, ask.door.now()
    if not (books.there(DEMO) and is_whole(books[DEMO])):
        books.put_in(DEMO, lambda path: open_demo(path, now))
    club = rooms(books[DEMO])[0]
    week = f"/demo/{club.number}/week"
    started(ask, books[DEMO], club.number, week)
    return Went(week)


def ask_away(_ask: Ask) -> Shown:
    """Ask whether the demo is to be put away."""
    return Shown("demo_away.html")


def away(ask: Ask) -> Went:
    """Take the demo's file and what was made of it off the disk, once no work on it is under way."""
    for _ in range(_TRIES):
        if not any(work.back.startswith(f"/{DEMO}/") for work in ask.door.works.under_way()):
            break
        sleep(_PAUSE)
    else:
        raise InputError(
            "The demo is still being worked on", remedy="Wait until that is done, then try again."
        )
    ask.door.books.put_away(DEMO)
    shutil.rmtree(ask.door.folder / DEMO, ignore_errors=True)
    return Went("/")
