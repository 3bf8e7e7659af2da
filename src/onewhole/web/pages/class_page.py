"""Class: its name, its pupils with codes always and names only where typed; add, name, take out."""

from onewhole.desk.classes.class_list import (
    LONGEST_NAME,
    MOST_PUPILS,
    enrol,
    name_pupils,
    names_typed,
    rename,
)
from onewhole.desk.classes.class_records import rooms
from onewhole.desk.keep.backups import PRIVACY
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage, Redirect, refused_status


def look(request: PageRequest) -> HtmlPage:
    """Show the class."""
    return _shown(request)


def call(request: PageRequest) -> HtmlPage | Redirect:
    """Give the class another name."""
    try:
        rename(request.book, request.number("room"), request.field("name", ""), request.field("saw"))
    except InputError as refused:
        return _shown(request, refused, "call")
    return Redirect(request.at("class_page.look"))


def add(request: PageRequest) -> HtmlPage | Redirect:
    """Add pupils by number or by names."""
    try:
        names = names_typed(request.field("names", ""))
        more = request.count("more", 0, MOST_PUPILS) if request.field("more", "").strip() else 0
        enrol(request.book, request.number("room"), more, names, today=request.app.today())
    except InputError as refused:
        return _shown(request, refused, "add")
    return Redirect(request.at("class_page.look"))


def name(request: PageRequest) -> HtmlPage | Redirect:
    """Keep the names beside the codes."""
    try:
        name_pupils(request.book, request.number("room"), request.beside("name"), request.beside("saw"))
    except InputError as refused:
        return _shown(request, refused, "name")
    return Redirect(request.at("class_page.look"))


def _shown(request: PageRequest, refused: InputError | None = None, part: str = "") -> HtmlPage:
    here = request.room
    names = {pupil.code: pupil.name or "" for pupil in here.pupils}
    if part == "name" and refused and "whole" not in refused.what:
        saw = request.beside("saw")
        typed = {code: said for code, said in request.beside("name").items() if said != saw[code]}
        names |= {code: said for code, said in typed.items() if code in names}
    words: dict[str, object] = {
        "names": names,
        "called": request.field("name", "") if part == "call" else here.name,
        "typed": {key: request.field(key, "") if part == "add" else "" for key in ("more", "names")},
        "refused": refused,
        "part": part,
        "others": [one for one in rooms(request.book) if one.number != here.number],
        "most": MOST_PUPILS,
        "longest": LONGEST_NAME,
        "privacy": PRIVACY,
    }
    return HtmlPage("class.html", words, refused_status(refused) if refused else 200)
