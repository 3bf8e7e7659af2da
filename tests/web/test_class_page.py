"""Class, asked without a browser."""

import re

import pytest

from onewhole.desk.classes.class_languages import languages_of
from onewhole.desk.classes.class_records import room
from onewhole.store.classes import add_class
from tests.kit.doors import Opened


@pytest.fixture
def kites(door: Opened) -> Opened:
    """A class of two, the first with a name."""
    door.post("/welcome", name="Room 12", pupils="2", names="Delta")
    return door


def _names(door: Opened) -> list[str | None]:
    return [one.name for one in room(door.door.books["mine"], 1).pupils]


def test_pupils_are_added_by_number_or_by_names(kites: Opened) -> None:
    """A list as it is pasted from a spreadsheet."""
    kites.post("/mine/1/class/add", more="1", names="")
    assert kites.post("/mine/1/class/add", more="", names="Sled\tRed\r\nMoth\r\n").goes == "/mine/1/class"
    assert _names(kites) == ["Delta", None, None, "Sled Red", "Moth"]


@pytest.mark.parametrize("button", ["add", "names"])
def test_whichever_button_is_pressed_nothing_typed_is_lost(kites: Opened, button: str) -> None:
    """Names beside the codes and new pupils are kept together; where one cannot be, all stand there again."""
    fields = {
        "csrf_token": kites.csrf_token,
        "code": ["K01", "K02"],
        "name": ["Delta", "Moth"],
        "saw": ["Delta", ""],
        "more": "",
        "names": "Sled\nWren",
    }
    refused = kites.client.post(
        f"/mine/1/class/{button}", data={**fields, "more": "kites"}, headers=kites.origin
    )
    assert (refused.status_code, _names(kites)) == (422, ["Delta", None])
    assert all(typed in refused.text for typed in ('value="Moth"', 'value="kites"', "Sled\nWren"))
    came = kites.client.post(f"/mine/1/class/{button}", data=fields, headers=kites.origin)
    assert (came.status_code, _names(kites)) == (303, ["Delta", "Moth", "Sled", "Wren"])
    page = kites.get("/mine/1/class").text
    assert 'form="of-class" formaction="/mine/1/class/add"' in page
    assert page.count('form="of-class"') == 12


def test_languages_are_chosen_and_shown(kites: Opened) -> None:
    """The pupils' page in one, pages for home in further ones; English alone is nothing kept."""
    book = kites.door.books["mine"]
    address = "/mine/1/class/languages"
    fields = {"csrf_token": kites.csrf_token, "code": ["K01", "K02"], "name": ["Delta", ""]}
    fields |= {"saw": ["Delta", ""], "pages_in": "en", "home_in": ["es", "pt"], "saw_languages": ""}
    assert kites.client.post(address, data=fields, headers=kites.origin).status_code == 303
    assert languages_of(book, 1) == "en, es, pt"
    page = kites.get("/mine/1/class").text
    assert re.findall(r'name="home_in" value="(..)" form="of-class" checked', page) == ["es", "pt"]
    assert '<option value="en" lang="en" selected>English</option>' in page
    fields |= {"home_in": [], "saw_languages": "en, es, pt"}
    assert kites.client.post(address, data=fields, headers=kites.origin).status_code == 303
    assert languages_of(book, 1) == ""
    fields |= {"pages_in": "tlh", "saw_languages": ""}
    refused = kites.client.post(address, data=fields, headers=kites.origin)
    assert (refused.status_code, "no language that pages are printed in" in refused.text) == (422, True)


def test_classes_of_one_name_stay_and_are_told(kites: Opened) -> None:
    """Of before, or brought back in a backup: each still works, and says that another is called the same."""
    assert "Another class has this name" not in kites.get("/mine/1/class").text
    add_class(kites.door.books["mine"], "room  12", kites.door.now())
    for number in (1, 2):
        assert "Another class has this name" in kites.get(f"/mine/{number}/class").text
    assert kites.post("/mine/1/class/name", called="Room 12", saw_called="Room 12").status == 303
    assert kites.post("/mine/2/class/name", called="Room 13", saw_called="room  12").status == 303
    assert "Another class has this name" not in kites.get("/mine/1/class").text


def test_names_are_kept_beside_their_codes(kites: Opened) -> None:
    """They come in turn with their codes; an empty one takes a name away."""
    rows = {
        "csrf_token": kites.csrf_token,
        "code": ["K01", "K02"],
        "name": ["", "Moth"],
        "saw": ["Delta", ""],
    }
    came = kites.client.post("/mine/1/class/names", data=rows, headers=kites.origin)
    assert (came.status_code, _names(kites)) == (303, [None, "Moth"])


def test_a_name_that_cannot_be_loses_no_other(kites: Opened) -> None:
    """What was typed stands in the form again, nothing was changed."""
    rows = {
        "csrf_token": kites.csrf_token,
        "code": ["K01", "K02"],
        "name": ["Sled", "x" * 81],
        "saw": ["Delta", ""],
    }
    came = kites.client.post("/mine/1/class/names", data=rows, headers=kites.origin)
    assert came.status_code == 422
    assert 'value="Sled"' in came.text
    assert "Pupil K02" in came.text
    assert _names(kites) == ["Delta", None]
    torn = {"csrf_token": kites.csrf_token, "code": ["K01"], "name": ["a", "b"], "saw": [""]}
    assert kites.client.post("/mine/1/class/names", data=torn, headers=kites.origin).status_code == 422
    other = {"csrf_token": kites.csrf_token, "code": ["K09"], "name": ["a"], "saw": [""]}
    assert kites.client.post("/mine/1/class/names", data=other, headers=kites.origin).status_code == 404


def test_the_class_is_renamed(kites: Opened) -> None:
    """And not to nothing."""
    assert kites.post("/mine/1/class/name", called="Kite club", saw_called="Room 12").goes == "/mine/1/class"
    refused = kites.post("/mine/1/class/name", called="y" * 90, saw_called="Kite club")
    assert (refused.status, "y" * 90 in refused.text) == (422, True)
    assert room(kites.door.books["mine"], 1).name == "Kite club"


@pytest.mark.parametrize(("more", "names"), [("", ""), ("0", ""), ("59", ""), ("two", "Sled"), ("-1", "")])
def test_what_adds_nobody_is_told_beside_what_was_typed(kites: Opened, more: str, names: str) -> None:
    """Nothing typed, too many, no number."""
    page = kites.post("/mine/1/class/add", more=more, names=names)
    assert page.status == 422
    assert f'value="{more}"' in page.text
    assert names in page.text
    assert len(_names(kites)) == 2


@pytest.mark.parametrize("button", ["name", "names", "add"])
def test_the_name_of_the_class_is_kept_with_the_rest(kites: Opened, button: str) -> None:
    """The class's name, a child's and new children; where one cannot be, all stand in the form again."""
    rows = {
        "csrf_token": kites.csrf_token,
        "code": ["K01", "K02"],
        "name": ["Delta", "Moth"],
        "saw": ["Delta", ""],
        "names": "Sled",
        "called": "Kite club",
        "saw_called": "Room 12",
    }
    torn = {**rows, "called": "y" * 90}
    came = kites.client.post(f"/mine/1/class/{button}", data=torn, headers=kites.origin)
    assert came.status_code == 422
    assert all(typed in came.text for typed in ("y" * 90, 'value="Moth"', ">Sled</textarea>"))
    assert (room(kites.door.books["mine"], 1).name, _names(kites)) == ("Room 12", ["Delta", None])
    came = kites.client.post(f"/mine/1/class/{button}", data=rows, headers=kites.origin)
    assert came.status_code == 303
    assert (room(kites.door.books["mine"], 1).name, _names(kites)) == ("Kite club", ["Delta", "Moth", "Sled"])
