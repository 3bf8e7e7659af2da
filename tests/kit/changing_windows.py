"""Two windows that change or delete a night, a page, a class: the second is told."""

from onewhole.desk.classes.class_languages import languages_of
from onewhole.desk.classes.class_records import night_page, room
from onewhole.desk.page.kept_pages import kept_versions
from onewhole.store.answers import KeptAnswer, answers_of, keep_answers
from tests.kit.club import NOW
from tests.kit.doors import Opened
from tests.kit.forms import form_to
from tests.kit.two_windows import send_form

CLASS, NIGHT = "/mine/1/class", "/mine/1/night/9"


def added_pupils(door: Opened) -> None:
    """Of pupils that are added with a name that another window changed, none is kept before it is asked."""
    rows = {"csrf_token": door.csrf_token, "code": ["K05"], "name": ["Wind"], "saw": ["Calm"], "more": "1"}
    told = door.client.post(f"{CLASS}/add", data=rows, headers=door.origin)
    assert (told.status_code, 'value="Wind"' in told.text, 'value="1"' in told.text) == (409, True, True)
    assert len(room(door.door.books["mine"], 1).pupils) == 24
    stands = next(one.name or "" for one in room(door.door.books["mine"], 1).pupils if one.code == "K05")
    again = door.client.post(f"{CLASS}/add", data={**rows, "saw": [stands]}, headers=door.origin)
    assert again.status_code == 303
    assert len(room(door.door.books["mine"], 1).pupils) == 25


def night_name(door: Opened) -> None:
    """The second is told what it is called."""
    old = form_to(door.get(f"{NIGHT}/change").text, f"{NIGHT}/change/name")
    assert send_form(door, old, name="Wind").status == 303
    told = send_form(door, old, name="Calm")
    assert (told.status, "“Wind”" in told.text, 'value="Calm"' in told.text) == (409, True, True)
    assert send_form(door, form_to(told.text, f"{NIGHT}/change/name")).status == 303


def night_day(door: Opened) -> None:
    """The second is told which day it is."""
    old = form_to(door.get(f"{NIGHT}/change").text, f"{NIGHT}/change/day")
    assert send_form(door, old, day="2026-12-01").status == 303
    told = send_form(door, old, day="2026-12-02")
    assert (told.status, "2026-12-01" in told.text, 'value="2026-12-02"' in told.text) == (409, True, True)
    assert send_form(door, form_to(told.text, f"{NIGHT}/change/day")).status == 303


def _answered_meanwhile(door: Opened, place: str, act: str, **typed: str) -> None:
    """What goes is named anew where an answer came in since; sent once more it goes."""
    old = form_to(door.get(place).text, f"{place}/{act}")
    (one,) = keep_answers(door.door.books["mine"], [KeptAnswer(9, "K05", "1", "77 1/9", NOW, "t")])
    told = send_form(door, old, **typed)
    assert (told.status, "Nothing was deleted" in told.text) == (409, True)
    assert one in answers_of(door.door.books["mine"], 9)
    assert send_form(door, form_to(told.text, f"{place}/{act}"), **typed).status == 200
    assert answers_of(door.door.books["mine"], 9) == ()


def night_deleted(door: Opened) -> None:
    """A night."""
    keep_answers(door.door.books["mine"], [KeptAnswer(9, "K05", "1", "", NOW, "t")])
    _answered_meanwhile(door, f"{NIGHT}/change", "delete")


def page_deleted(door: Opened) -> None:
    """A page with its nights."""
    keep_answers(door.door.books["mine"], [KeptAnswer(9, "K05", "1", "", NOW, "t")])
    sheet = night_page(door.door.books["mine"], 1, 9).kept.number
    _answered_meanwhile(door, f"/mine/1/page/{sheet}/change", "delete")


def class_deleted(door: Opened) -> None:
    """A class, by its name."""
    keep_answers(door.door.books["mine"], [KeptAnswer(9, "K05", "1", "", NOW, "t")])
    _answered_meanwhile(door, f"{CLASS}/change", "delete", sure=room(door.door.books["mine"], 1).name)


def class_erased(door: Opened) -> None:
    """A class for good, by its name."""
    keep_answers(door.door.books["mine"], [KeptAnswer(9, "K05", "1", "", NOW, "t")])
    _answered_meanwhile(door, f"{CLASS}/change", "erase", sure=room(door.door.books["mine"], 1).name)


def page_title(door: Opened) -> None:
    """A page that was saved in another window since is looked at first."""
    place = "/mine/1/page/9/change"
    old = form_to(door.get(place).text, f"{place}/title")
    assert send_form(door, old, title="Wind").status == 303
    told = send_form(door, old, title="Calm")
    assert (told.status, 'value="Calm"' in told.text) == (409, True)
    assert send_form(door, form_to(told.text, f"{place}/title")).status == 303
    assert kept_versions(door.door.books["mine"], 9)[0].title == "Calm"


def class_languages(door: Opened) -> None:
    """The second is told which languages stand, and sees its own choice."""
    old = form_to(door.get("/mine/1/class").text, "/mine/1/class/languages")
    assert send_form(door, old, pages_in="es").status == 303
    told = send_form(door, old, pages_in="pt")
    assert (told.status, "“es”" in told.text) == (409, True)
    again = form_to(told.text, "/mine/1/class/languages")
    assert (again.value("pages_in"), again.value("saw_languages")) == ("pt", "es")
    assert send_form(door, again).status == 303
    assert languages_of(door.door.books["mine"], 1) == "pt"
