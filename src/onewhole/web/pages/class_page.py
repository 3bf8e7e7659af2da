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
from onewhole.web.ask import Ask, Shown, Went


def look(ask: Ask) -> Shown:
    """Show the class."""
    return _shown(ask)


def call(ask: Ask) -> Shown | Went:
    """Give the class another name."""
    try:
        rename(ask.book, ask.number("room"), ask.field("name", ""))
    except InputError as refused:
        return _shown(ask, refused, "call")
    return Went(ask.at("class"))


def add(ask: Ask) -> Shown | Went:
    """Add pupils by number or by names."""
    try:
        names = names_typed(ask.field("names", ""))
        more = ask.count("more", 0, MOST_PUPILS) if ask.field("more", "").strip() else 0
        enrol(ask.book, ask.number("room"), more, names)
    except InputError as refused:
        return _shown(ask, refused, "add")
    return Went(ask.at("class"))


def name(ask: Ask) -> Shown | Went:
    """Keep the names beside the codes."""
    try:
        name_pupils(ask.book, ask.number("room"), _beside(ask))
    except InputError as refused:
        return _shown(ask, refused, "name")
    return Went(ask.at("class"))


def _beside(ask: Ask) -> dict[str, str]:
    """Return the names of the form by their codes: they come in turn."""
    codes = [value for key, value in ask.every if key == "code"]
    names = [value for key, value in ask.every if key == "name"]
    if len(codes) != len(names):
        raise InputError("The form is not whole", remedy="Load the page again; nothing was changed.")
    return dict(zip(codes, names, strict=True))


def _shown(ask: Ask, refused: InputError | None = None, part: str = "") -> Shown:
    here = ask.room
    names = {pupil.code: pupil.name or "" for pupil in here.pupils}
    if part == "name" and refused and "whole" not in refused.what:
        names |= {code: said for code, said in _beside(ask).items() if code in names}
    words: dict[str, object] = {
        "names": names,
        "called": ask.field("name", "") if part == "call" else here.name,
        "typed": {key: ask.field(key, "") if part == "add" else "" for key in ("more", "names")},
        "refused": refused,
        "part": part,
        "others": [one for one in rooms(ask.book) if one.number != here.number],
        "most": MOST_PUPILS,
        "longest": LONGEST_NAME,
        "privacy": PRIVACY,
    }
    return Shown("class.html", words, 422 if refused else 200)
