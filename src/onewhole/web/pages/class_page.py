"""Class: its name, its pupils with codes always and names only where typed; add, name, take out."""

from onewhole.desk.classes.class_languages import (
    chosen_languages,
    languages_chosen,
    languages_of,
    languages_there,
    set_languages,
)
from onewhole.desk.classes.class_list import (
    LONGEST_NAME,
    MOST_PUPILS,
    enrol,
    name_pupils,
    names_typed,
    rename,
)
from onewhole.desk.classes.class_records import called_alike, rooms
from onewhole.desk.keep.backups import PRIVACY
from onewhole.errors import InputError
from onewhole.web.http.request import BrokenForm, PageRequest
from onewhole.web.http.response import HtmlPage, Redirect, refused_status

#: In which language the pupils' page is, in which others there is a page for home, and what was shown.
LANGUAGE_FIELDS = ("pages_in", "home_in", "saw_languages")
#: What the form of the class has.
FIELDS = ("code", "name", "saw", "more", "names", "called", "saw_called", *LANGUAGE_FIELDS)


def look(request: PageRequest) -> HtmlPage:
    """Show the class."""
    return _shown(request)


def call(request: PageRequest) -> HtmlPage | Redirect:
    """Give the class another name, and keep what else was typed."""
    return _kept(request, adds=_more_typed(request))


def speak(request: PageRequest) -> HtmlPage | Redirect:
    """Keep in which languages the class's pages are, and what else was typed."""
    return _kept(request, adds=_more_typed(request))


def add(request: PageRequest) -> HtmlPage | Redirect:
    """Add pupils by number or by names, and keep the names that were typed beside the codes."""
    return _kept(request, adds=True)


def name(request: PageRequest) -> HtmlPage | Redirect:
    """Keep the names beside the codes, and add whoever was typed meanwhile."""
    return _kept(request, adds=_more_typed(request))


def _more_typed(request: PageRequest) -> bool:
    return any(request.field(key, "").strip() for key in ("more", "names"))


def _kept(request: PageRequest, *, adds: bool) -> HtmlPage | Redirect:
    """Keep all that the form has: whichever of its buttons was pressed, nothing typed is lost."""
    book, number = request.book, request.number("room")
    try:
        if "called" in request.fields:
            rename(book, number, request.field("called"), request.field("saw_called"))
        if "pages_in" in request.fields:
            set_languages(book, number, _languages(request), saw=request.field("saw_languages"))
        name_pupils(book, number, request.beside("name"), request.beside("saw"))
        if adds:
            names = names_typed(request.field("names", ""))
            more = request.count("more", 0, MOST_PUPILS) if request.field("more", "").strip() else 0
            enrol(book, number, more, names, today=request.app.today())
    except InputError as refused:
        return _shown(request, refused)
    return Redirect(request.at("class_page.look"))


def _languages(request: PageRequest) -> str:
    home = [value for key, value in request.form_items if key == "home_in"]
    return chosen_languages(request.field("pages_in"), home)


def _shown(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    here, classes = request.room, rooms(request.book)
    names = {pupil.code: pupil.name or "" for pupil in here.pupils}
    if refused and not isinstance(refused, BrokenForm):
        names |= {code: said for code, said in request.changed_beside("name").items() if code in names}
    kept = languages_of(request.book, here.number)
    typed = kept
    if refused and "pages_in" in request.fields:
        try:
            typed = _languages(request)
        except InputError:
            typed = kept
    first, home = languages_chosen(typed)
    words: dict[str, object] = {
        "languages": languages_there(),
        "pages_in": first,
        "home_in": home,
        "saw_languages": kept,
        "names": names,
        "called": request.field("called", here.name),
        "typed": {key: request.field(key, "") for key in ("more", "names")},
        "refused": refused,
        "others": [one for one in classes if one.number != here.number],
        "twins": len(called_alike([(one.number, one.name) for one in classes], here.name)) > 1,
        "most": MOST_PUPILS,
        "longest": LONGEST_NAME,
        "privacy": PRIVACY,
    }
    return HtmlPage("class.html", words, refused_status(refused) if refused else 200)
