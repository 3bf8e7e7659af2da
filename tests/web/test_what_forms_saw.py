"""Every form carries what its window saw: of two windows, the second is told, and no work is lost in silence.

Forms are taken from the pages as a browser without scripts sends them, or are sent as the script does.
"""

import json
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import room
from onewhole.desk.classes.marked_nights import mark_night
from onewhole.desk.page.class_prints import prints_of
from onewhole.desk.page.kept_pages import kept_versions
from onewhole.desk.page.print_choice import SheetPage
from onewhole.desk.tomorrow.keeping_groups import kept_as_shown
from onewhole.desk.tomorrow.morning import morning
from onewhole.desk.walkthrough.film_plan import plan_of
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.recordings import recordings_of
from tests.desk.walkthrough.test_recorded_film import beeps, webm
from tests.kit.changing_windows import (
    added_pupils,
    class_deleted,
    class_erased,
    class_languages,
    night_day,
    night_deleted,
    night_name,
    page_deleted,
    page_title,
)
from tests.kit.club import NOW
from tests.kit.doors import Answer, Opened
from tests.kit.forms import Form, form_to
from tests.kit.pasted_window import pasted
from tests.kit.photo_windows import checked_by_form, checked_by_script, paper_wishes_kept
from tests.kit.rounds import lived_in
from tests.kit.routes import ROUTES
from tests.kit.two_windows import OF_PUPILS, send_form

CLASS, FIRST, NIGHT = "/mine/1/class", "/mine/1/night/1", "/mine/1/night/9"

#: Forms that need not carry what they saw, each with its reason.
NEEDS_NONE = {
    "week.done": "says that a step is done: said twice, the first moment stays",
    "tomorrow.aside": "says which of two states it wants; what it saw is the other one",
    "tomorrow.merged": "names two groups by identities; each pupil can be moved back by itself",
    "tomorrow.paper": "makes pages anew from what is kept; nothing is kept",
    "marking.judge": "keeps nothing",
    "marking.close": "says which of two states it wants; no answer hangs on it",
    "marking.foretell": "keeps nothing",
    "paste.show": "keeps nothing; what is kept is sent once more",
    "paste.back": "names a paste by a number; what was written after it stays and is told",
    "photos.send": "what was typed or checked stays; where a picture says otherwise it is shown",
    "photos.unchecked": "gives a cell back as it was read, and it waits again",
    "photos.spot": "names cells that were shown; one that does not stand as it was read is passed over",
    "photos.finish": "takes pictures away only where nothing waits",
    "photos.back": "names a reading by a number that is never given twice; what was written since is told",
    "marking.column": "writes only where nothing stands, each cell by compare-and-set",
    "walkthrough.show": "says that it was shown: said twice, the first moment stays",
    "walkthrough.make": "makes a film of what is kept; nothing is kept",
    "walkthrough.keep_said": "says which of two states it wants; no other choice hangs on it",
    "reading.read": "reads what is kept",
    "night_change.again": "adds a night, and refuses the same page on the same day",
    "page_change.copy": "adds a page",
    "class_change.copy": "adds a class",
    "exchange.classes": "adds classes; a class that is there by its name is refused",
    **dict.fromkeys(("exchange.results", "exchange.page"), "keeps nothing; gives a file or the Page desk"),
    "class_share.give": "gives a file out; nothing is kept but a key where there was none",
    "tomorrow.ask": "adds a row",
    "tomorrow.unask": "names a row by a number that is never given twice and never changes",
    "pupil.ask": "adds a row",
    "pupil.unask": "names a row by a number that is never given twice and never changes",
    "pupil.give": "adds a line",
    "pupil.take_back": "names a line by a number that is never given twice and never changes",
    "pupil.clean_file": "takes away traces of what is erased already",
    **dict.fromkeys(("page_desk.live", "page_desk.mended", "page_desk.moved"), "keeps nothing"),
    "stop.now": "ends the program; what is kept stays as it is",
    **dict.fromkeys(("year.compose", "page_desk.wished"), "makes a draft; it is kept by Save"),
    "printing.night": "prints what is kept; the first moment of printing stays",
    "printing.typed": "prints what it sends; the first moment of printing stays",
    "welcome.make": "adds a class",
    "welcome.demo": "opens the invented class",
    "welcome.away": "takes the invented class away, and asks before",
    "keep.lock": "makes a copy",
    "checking.mend": "what stands is backed up first, and only what the digests prove is taken back",
    "checking.let_stand": "what stands is backed up first, and that backup is told",
    "keep.restore_own": "what stands is backed up first, and that backup is told",
    "keep.restore_file": "what stands is backed up first, and that backup is told",
    "keep.put_aside": "moves only what cannot be opened, and a class that opens stays",
    "keep.remove": "names a file by a name with its date",
}


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path) as made:
        yield made


def _names(door: Opened, form: Form, names: dict[str, str]) -> Answer:
    """Send the form of names with some typed."""
    codes = [value for name, value in form.fields if name == "code"]
    stood = [value for name, value in form.fields if name == "name"]
    typed = [names.get(code, name) for code, name in zip(codes, stood, strict=True)]
    saw = [value for name, value in form.fields if name == "saw"]
    body = {"csrf_token": door.csrf_token, "code": codes, "name": typed, "saw": saw}
    came = door.client.post(form.action, data=body, headers=door.origin)
    return Answer(came.status_code, came.text, "", came.content)


def _named(door: Opened, *codes: str) -> list[str | None]:
    here = room(door.door.books["mine"], 1)
    return [here.pupil(code).name for code in codes]


def names(door: Opened) -> None:
    """Two windows name two children: both names stand. Two name one: the second is told and asked."""
    old = form_to(door.get(CLASS).text, f"{CLASS}/names")
    assert _names(door, old, {"K01": "Ada"}).status == 303
    assert _names(door, old, {"K02": "Bo"}).status == 303
    assert _named(door, "K01", "K02") == ["Ada", "Bo"]
    told = _names(door, old, {"K01": "Ann", "K03": "Cy"})
    assert (told.status, "K01" in told.text, "“Ada”" in told.text) == (409, True, True)
    assert _named(door, "K01", "K03")[0] == "Ada"
    again = form_to(told.text, f"{CLASS}/names")
    assert {"Ann", "Cy"} <= {value for name, value in again.fields if name == "name"}, "nothing typed is lost"
    assert _names(door, again, {}).status == 303
    assert _named(door, "K01", "K02", "K03") == ["Ann", "Bo", "Cy"]


def class_name(door: Opened) -> None:
    """The second is told, and its name stands in the field, to be sent once more."""
    old = form_to(door.get(CLASS).text, f"{CLASS}/name")
    assert send_form(door, old, called="Larks").status == 303
    told = send_form(door, old, called="Owls")
    assert (told.status, "“Larks”" in told.text) == (409, True)
    assert room(door.door.books["mine"], 1).name == "Larks"
    again = form_to(told.text, f"{CLASS}/name")
    assert again.value("called") == "Owls"
    assert send_form(door, again).status == 303
    assert room(door.door.books["mine"], 1).name == "Owls"


def last_day(door: Opened) -> None:
    """The second is told which day stands."""
    old = form_to(door.get("/mine/keep").text, "/mine/keep/until")
    assert send_form(door, old, day="2027-06-30").status == 303
    told = send_form(door, old, day="2026-12-24")
    assert (told.status, "2027-06-30" in told.text) == (409, True)
    assert form_to(door.get("/mine/keep").text, "/mine/keep/until").value("day") == "2027-06-30"


def erased_child(door: Opened) -> None:
    """Of a child that is called otherwise since, it is asked once more."""
    address = "/mine/1/pupil/K05/erase"
    old = form_to(door.get(address).text, address)
    assert _names(door, form_to(door.get(CLASS).text, f"{CLASS}/names"), {"K05": "Renamed"}).status == 303
    told = send_form(door, old, sure="K05")
    assert (told.status, "Renamed" in told.text) == (409, True)
    assert _named(door, "K05") == ["Renamed"]
    assert send_form(door, form_to(told.text, address), sure="K05").status == 200
    assert "K05" not in [pupil.code for pupil in room(door.door.books["mine"], 1).pupils]


def group(door: Opened) -> None:
    """The second window's move is told with the group that the pupil is in."""
    page = door.get(f"{FIRST}/tomorrow").text
    cards = [card for card in morning(door.door.books["mine"], 1, 1).cards if card.takes]
    code = cards[0].seats[0].code
    old = form_to(page, f"{FIRST}/tomorrow/move", code=code)
    assert send_form(door, old, key=cards[1].key).status == 303
    told = send_form(door, old, key=cards[2].key)
    assert (told.status, f"“{cards[1].name}”" in told.text) == (409, True)
    again = form_to(door.get(f"{FIRST}/tomorrow").text, f"{FIRST}/tomorrow/move", code=code)
    assert again.value("saw") == cards[1].key
    assert send_form(door, again, key=cards[2].key).status == 303


def group_settings(door: Opened) -> None:
    """Of two windows the second is told which number stands."""
    page, address = f"{FIRST}/tomorrow", f"{FIRST}/tomorrow/groups"
    old = form_to(door.get(page).text, address)
    assert send_form(door, old, meets="5").status == 303
    told = send_form(door, old, meets="3")
    assert (told.status, "5 groups of 3 to 6" in told.text) == (409, True)
    again = form_to(door.get(page).text, address)
    assert (again.value("meets"), again.value("saw")) == ("5", "5 groups of 3 to 6")
    assert send_form(door, again, meets="3", largest="5").status == 303


def group_changes(door: Opened) -> None:
    """What is offered is taken only as it was shown; taken, nothing more is asked."""
    page, address, book = f"{NIGHT}/tomorrow", f"{NIGHT}/tomorrow/changes", door.door.books["mine"]
    shown = kept_as_shown(book, 1, 9, NOW)
    card = next(group for group in shown.marked.groups if group.place.meets)
    gone = [KeptAnswer(9, card.pupils[0], label, "", NOW, "teacher") for label in shown.page.labels]
    keep_answers(book, gone)
    old = form_to(door.get(page).text, address)
    assert send_form(door, old, take="yes").status == 303
    assert address not in door.get(page).text
    assert send_form(door, old, take="no").status == 422


def groups_seen(door: Opened) -> None:
    """Groups are kept only as they were looked at; kept, the page asks no more."""
    page, address, book = f"{NIGHT}/tomorrow", f"{NIGHT}/tomorrow/seen", door.door.books["mine"]
    found = mark_night(book, 1, 9)
    old = form_to(door.get(page).text, address)
    card = next(group for group in found.groups if group.place.meets)
    labels = [problem.label for problem in found.sheet.problems]
    keep_answers(book, [KeptAnswer(9, card.pupils[0], label, "", NOW, "teacher") for label in labels])
    assert send_form(door, old).status == 422
    again = form_to(door.get(page).text, address)
    assert send_form(door, again).status == 303
    assert address not in door.get(page).text
    assert send_form(door, again).status == 303


def reading(door: Opened) -> None:
    """Of two readings of one cell the second is told the first."""
    sent = {"code": "K05", "label": "1", "typed": "smudge"}
    cells = json.dumps([["K05", "1", "smudge", json.loads(_now(door))]])
    assert json.loads(door.post(f"{NIGHT}/marking/keep", cells=cells).text)["kept"]
    assert door.post(f"{NIGHT}/marking/read-as", **sent, read="4 7/8", saw="smudge").status == 200
    told = door.client.post(
        f"{NIGHT}/marking/read-as",
        data={**sent, "read": "4 1/8", "saw": "smudge", "csrf_token": door.csrf_token},
        headers={**door.origin, "Accept": "application/json"},
    )
    assert (told.status_code, told.json()["stands"]) == (409, "4 7/8")
    assert door.post(f"{NIGHT}/marking/read-as", **sent, read="4 1/8", saw="4 7/8").status == 200


def _now(door: Opened) -> str:
    """Return the text of K05's first cell, as JSON."""
    cells = json.loads(door.get(f"{NIGHT}/marking/now").text)["cells"]
    return json.dumps(next(one["text"] for one in cells if (one["code"], one["label"]) == ("K05", "1")))


def cells(door: Opened) -> None:
    """Of two writings over one text the second is told what stands."""
    was = json.loads(_now(door))
    for text, key in (("77 7/9", "kept"), ("88 8/9", "clashes")):
        sent = json.dumps([["K05", "1", text, was]])
        (found,) = json.loads(door.post(f"{NIGHT}/marking/keep", cells=sent).text)[key]
        assert found["text"] == "77 7/9"


def saved_page(door: Opened) -> None:
    """A later version is told and listed; sent once more, what was typed is the next one. Nothing is lost."""
    _page(door, "/mine/1/page/saved", {})


def set_page(door: Opened) -> None:
    """As when it is saved; the class takes home what is sent the second time."""
    _page(door, "/mine/1/page/set", {"day": "2026-09-30"})


def _page(door: Opened, address: str, more: dict[str, str]) -> None:
    page = door.get("/mine/1/page/1").text
    newest = kept_versions(door.door.books["mine"], 1)[0].version
    assert f'data-sheet="1" data-saw="{newest}"' in page
    sent = {"sheet": "1", "saw": f"{newest}", **more}
    assert door.post("/mine/1/page/saved", typed="1. 5 - 2\n", sheet="1", saw=f"{newest}").status == 200
    told = door.post(address, typed="1. 6 - 2\n", **sent)
    found = json.loads(told.text)
    assert (told.status, found["stands"]) == (409, f"{newest + 1}")
    assert f"Bring back version {newest + 1}" in found["row"]
    assert kept_versions(door.door.books["mine"], 1)[0].typed == "1. 5 - 2\n"
    assert door.post(address, typed="1. 6 - 2\n", **(sent | {"saw": found["stands"]})).status == 200
    assert [one.typed for one in kept_versions(door.door.books["mine"], 1)[:2]] == [
        "1. 6 - 2\n",
        "1. 5 - 2\n",
    ]
    assert door.post(address, typed="1. 6 - 2\n", **sent).status == 200, "the same text is no clash"


def prints(door: Opened) -> None:
    """The second is told what is printed now, and its own stands in the form, to be sent once more."""
    page = "/mine/1/printing"
    old = form_to(door.get(page).text, page)
    assert send_form(door, old, copies_pupil="24").status == 303
    told = send_form(door, old, copies_pupil="20")
    assert (told.status, "24 copies of the pupils’ page" in told.text) == (409, True)
    again = form_to(told.text, page)
    assert again.value("copies_pupil") == "20"
    assert send_form(door, again).status == 303
    assert prints_of(door.door.books["mine"], 1).copies(SheetPage.PUPIL) == 20


def film(door: Opened) -> None:
    """Choices for two problems are both kept; two for one are told."""
    home = f"{NIGHT}/walkthrough"
    old = form_to(door.get(home).text, f"{home}/choices")
    assert send_form(door, old, minutes="9").status == 303
    assert send_form(door, old, mistake="yes").status == 303
    plan = plan_of(door.door.books["mine"], 9)
    assert (plan.minutes, plan.mistake) == (9, True)
    told = send_form(door, old, minutes="12")
    assert (told.status, "How long the film may be" in told.text) == (409, True)
    assert plan_of(door.door.books["mine"], 9) == plan


def _recorded(door: Opened, sound: bytes, saw: str) -> dict[str, str]:
    came = door.client.post(
        f"{NIGHT}/walkthrough/recording",
        data={"csrf_token": door.csrf_token, "label": "closing", "steps": "", "saw": saw},
        files={"sound": ("recording", sound, "audio/webm")},
        headers={**door.origin, "Accept": "application/json"},
    )
    found: dict[str, str] = came.json()
    return {**found, "status": f"{came.status_code}"}


def recording(door: Opened) -> None:
    """A part that another window recorded is not replaced in silence."""
    first, second = webm(beeps(1, length=3)), webm(beeps(1, 2, length=4))
    assert _recorded(door, first, "")["status"] == "200"
    told = _recorded(door, second, "")
    assert told["status"] == "409"
    assert [one.sound for one in recordings_of(door.door.books["mine"], 9)] == [first]
    assert _recorded(door, second, told["stands"])["status"] == "200"
    assert [one.sound for one in recordings_of(door.door.books["mine"], 9)] == [second]


def forgotten(door: Opened) -> None:
    """The recording that is deleted is the one that was seen."""
    home = f"{NIGHT}/walkthrough"
    assert _recorded(door, webm(beeps(1, length=3)), "")["status"] == "200"
    old = form_to(door.get(home).text, f"{home}/forget")
    assert _recorded(door, webm(beeps(1, 2, length=4)), old.value("saw"))["status"] == "200"
    assert send_form(door, old).status == 409
    assert len(recordings_of(door.door.books["mine"], 9)) == 1
    assert send_form(door, form_to(door.get(home).text, f"{home}/forget")).status == 303


#: Forms that carry what they saw: the field that does, and a case of two windows.
CARRIES: dict[str, tuple[str, Callable[[Opened], None]]] = {
    "class_page.name": ("saw", names),
    "class_page.call": ("saw", class_name),
    "class_page.speak": ("saw_languages", class_languages),
    "class_page.add": ("saw", added_pupils),
    **OF_PUPILS,
    "keep.until": ("saw", last_day),
    "night_change.rename": ("saw", night_name),
    "night_change.move": ("saw", night_day),
    "night_change.delete": ("saw", night_deleted),
    "page_change.rename": ("saw", page_title),
    "page_change.delete": ("saw", page_deleted),
    "class_change.delete": ("saw", class_deleted),
    "class_change.erase": ("saw", class_erased),
    "pupil.erase": ("saw", erased_child),
    "tomorrow.moved": ("saw", group),
    "tomorrow.changes": ("saw", group_changes),
    "tomorrow.settings": ("saw", group_settings),
    "tomorrow.seen": ("saw", groups_seen),
    "marking.read_as": ("saw", reading),
    "marking.keep": ("cells", cells),
    "paste.keep": ("saw", pasted),
    "photos.check": ("saw", checked_by_form),
    "photos.checked": ("saw", checked_by_script),
    "photos.wish": ("saw", paper_wishes_kept),
    "page_desk.saved": ("saw", saved_page),
    "page_desk.night": ("saw", set_page),
    "printing.keep": ("saw", prints),
    "walkthrough.choose": ("saw", film),
    "recording.take": ("saw", recording),
    "recording.take_away": ("saw", forgotten),
}


def test_every_form_stands_in_one_of_the_two_tables() -> None:
    """A new form says what it saw, or why it needs not; none stands there that is gone."""
    posts = {route.page: route for route in ROUTES if route.method == "POST"}
    assert posts.keys() == CARRIES.keys() | NEEDS_NONE.keys()
    assert CARRIES.keys() & NEEDS_NONE.keys() == set()
    assert [page for page, (field, _) in CARRIES.items() if field not in posts[page].fields] == []
    assert [page for page in NEEDS_NONE if "saw" in posts[page].fields] == []


@pytest.mark.parametrize("page", CARRIES)
def test_of_two_windows_the_second_is_told(door: Opened, page: str) -> None:
    """What the first one kept stands; what the second typed is not lost; sent once more it is kept."""
    CARRIES[page][1](door)


@pytest.mark.parametrize("page", [page for page, (field, _) in CARRIES.items() if field == "saw"])
def test_a_form_that_does_not_say_what_it_saw_is_refused(door: Opened, page: str) -> None:
    """It changes nothing, whatever else it holds."""
    (route,) = (one for one in ROUTES if one.page == page and one.method == "POST")
    address = route.path.replace("{book}", "mine").replace("{room:int}", "1").replace("{night:int}", "9")
    address = address.replace("{sheet:int}", "1")
    fields = dict.fromkeys(route.fields, "1") | {"sure": "K05", "day": "2026-09-02"}
    del fields["saw"]
    assert door.post(address.replace("{code}", "K05"), **fields).status == 422
