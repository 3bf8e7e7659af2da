"""Two windows on one form: the second is told what the first one kept, and nothing typed is lost."""

from collections.abc import Callable
from datetime import date

from onewhole.desk.classes.papers import papers
from onewhole.findings.own_page import OwnPage
from onewhole.store.own_pages import own_pages_of
from onewhole.store.pupil_days import PupilDays, pupil_days_of
from tests.kit.doors import Answer, Opened
from tests.kit.forms import Form, form_to

PAPERS, DAYS = "/mine/1/night/9/papers", "/mine/1/class/days"
FORMS = "/mine/1/class/forms"


def send_form(door: Opened, form: Form, **typed: str) -> Answer:
    """Send a form as it stood when the page was loaded, with something typed."""
    body: dict[str, list[str]] = {}
    for name, value in form.filled(**typed):
        body.setdefault(name, []).append(value)
    came = door.client.post(form.action, data=body, headers=door.origin)
    return Answer(came.status_code, came.text, came.headers.get("location", ""), came.content)


def _row_changed(door: Opened, form: Form, changes: dict[str, dict[str, str]]) -> Answer:
    """Send a form of rows, each beginning with its code, with some fields changed in some of them."""
    body: dict[str, list[str]] = {"csrf_token": [door.csrf_token]}
    code = ""
    for name, value in form.fields:
        code = value if name == "code" else code
        if name != "csrf_token":
            body.setdefault(name, []).append(changes.get(code, {}).get(name, value))
    came = door.client.post(form.action, data=body, headers=door.origin)
    return Answer(came.status_code, came.text, came.headers.get("location", ""), came.content)


def papers_of_a_night(door: Opened) -> None:
    """Two windows, two children: both words stand. One child: the second is told, and its choice stays."""
    old = form_to(door.get(PAPERS).text, PAPERS)
    assert _row_changed(door, old, {"K01": {"said": "absent"}}).status == 303
    assert _row_changed(door, old, {"K02": {"said": "late"}}).status == 303
    told = _row_changed(door, old, {"K01": {"said": "excused"}, "K03": {"said": "absent"}})
    assert (told.status, "“absent”" in told.text) == (409, True)
    book = door.door.books["mine"]
    assert [row.choice.value for row in papers(book, 1, 9).rows][:3] == ["absent", "late", "here"]
    assert _row_changed(door, form_to(told.text, PAPERS), {}).status == 303
    assert [row.choice.value for row in papers(book, 1, 9).rows][:3] == ["excused", "late", "absent"]


def for_whom(door: Opened) -> None:
    """A page that another window gave to others is not taken from them in silence."""
    old = form_to(door.get(PAPERS).text, f"{PAPERS}/for")
    assert send_form(door, old, whom="K01, K02").status == 303
    told = send_form(door, old, whom="K03")
    assert (told.status, "“K01 K02”" in told.text) == (409, True)
    assert send_form(door, form_to(told.text, f"{PAPERS}/for")).status == 303
    got = [row.pupil.code for row in papers(door.door.books["mine"], 1, 9).rows if row.choice.value == "here"]
    assert got == ["K03"]


def days_of_pupils(door: Opened) -> None:
    """The same of the days of joining and leaving."""
    old = form_to(door.get(DAYS).text, DAYS)
    assert _row_changed(door, old, {"K01": {"joined": "2026-09-01"}}).status == 303
    told = _row_changed(door, old, {"K01": {"left": "2026-12-01"}, "K02": {"left": "2026-12-02"}})
    assert (told.status, "2026-09-01" in told.text) == (409, True)
    book = door.door.books["mine"]
    assert pupil_days_of(book, 1) == {"K01": PupilDays(date(2026, 9, 1))}
    assert _row_changed(door, form_to(told.text, DAYS), {}).status == 303
    left = {"K01": PupilDays(None, date(2026, 12, 1)), "K02": PupilDays(None, date(2026, 12, 2))}
    assert pupil_days_of(book, 1) == left


def forms_of_pupils(door: Opened) -> None:
    """The same of the form in which pupils read their pages."""
    old = form_to(door.get(FORMS).text, FORMS)
    assert _row_changed(door, old, {"K01": {"form": "braille"}}).status == 303
    told = _row_changed(door, old, {"K01": {"form": "large print"}, "K02": {"form": "braille"}})
    assert (told.status, "“braille”" in told.text) == (409, True)
    book = door.door.books["mine"]
    assert own_pages_of(book, 1) == {"K01": OwnPage.BRAILLE}
    assert _row_changed(door, form_to(told.text, FORMS), {}).status == 303
    assert own_pages_of(book, 1) == {"K01": OwnPage.LARGE, "K02": OwnPage.BRAILLE}


def year_of_a_class(door: Opened) -> None:
    """The second window is told, and what it typed stays in its field, to be sent once more."""
    year = "/mine/1/year"
    old = form_to(door.get(year).text, year)
    assert send_form(door, old, typed="first day: 2026-09-08").status == 303
    told = send_form(door, old, typed="first day: 2026-08-24")
    assert (told.status, "another window changed it" in told.text) == (409, True)
    again = form_to(told.text, year)
    assert ">first day: 2026-08-24</textarea>" in told.text
    assert send_form(door, again, typed="first day: 2026-08-24").status == 303
    assert ">first day: 2026-08-24</textarea>" in door.get(year).text


#: The forms of pupils and their papers that carry what they saw: the field that does, and a case.
OF_PUPILS: dict[str, tuple[str, Callable[[Opened], None]]] = {
    "class_days.keep": ("saw", days_of_pupils),
    "class_forms.keep": ("saw", forms_of_pupils),
    "year.keep": ("saw", year_of_a_class),
    "papers.give": ("saw", for_whom),
    "papers.keep": ("saw", papers_of_a_night),
}
