"""What an answer says of itself: its kind and letters, the name that it is saved under, where it leads."""

from collections.abc import Callable, Iterator

import pytest

from onewhole.web.asgi import asgi_app
from onewhole.web.http.handling import PageRoute
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Content, PageResponse, Redirect
from onewhole.web.routes import TABLE
from tests.kit.doors import Opened
from tests.kit.raw_asks import Came, ask_raw
from tests.kit.rounds import address, lived_in
from tests.kit.routes import ROUTES

NAMES = ('kite".html', "kite\r\nSet-Cookie: a=b", "../../kite", "Дракон 🪁.json", "kite;filename=x.exe")
PLACES = ("//kites.example/", "https://kites.example/", "/\\kites.example", "javascript:fly()", "")


@pytest.fixture(scope="module")
def lived(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path_factory.mktemp("lived")) as door:
        yield door


@pytest.mark.asvs("V4.1.1")
@pytest.mark.parametrize("route", [one for one in ROUTES if one.method == "GET"], ids=lambda one: one.path)
def test_an_answer_tells_its_kind_and_a_text_its_letters(lived: Opened, route: object) -> None:
    """With a body: a content type; for text and XML: UTF-8."""
    row = next(one for one in ROUTES if one is route)
    came = lived.client.get(address(row))
    if came.content:
        kind = came.headers["content-type"]
        assert "/" in kind
        assert not kind.startswith("text/") or kind.endswith("; charset=utf-8")


def _asked(door: Opened, page: Callable[[PageRequest], PageResponse]) -> Came:
    heads = [
        ("host", "127.0.0.1:8000"),
        ("cookie", f"{door.access.cookie}={door.client.cookies[door.access.cookie]}"),
    ]
    return ask_raw(
        asgi_app(door.door, door.access, (*TABLE, PageRoute("GET", "/kite", page))), "GET", "/kite", heads
    )


@pytest.mark.asvs("V5.4.1", "V5.4.2")
@pytest.mark.parametrize("name", NAMES)
def test_a_name_that_is_saved_under_stays_in_its_header(lived: Opened, name: str) -> None:
    """Percent-encoded after RFC 8187, without a folder; no line and no other header begins in it."""

    def page(_request: PageRequest) -> PageResponse:
        return Content(b"red", "application/json", name)

    came = _asked(lived, page)
    told = came.headers["content-disposition"]
    assert (came.status, told.startswith("attachment; filename*=UTF-8''")) == (200, True)
    saved = told.partition("''")[2]
    assert saved
    assert not set(saved) & set(' ";\r\n/\\,')
    assert "set-cookie" not in came.headers


@pytest.mark.asvs("V3.7.2")
@pytest.mark.parametrize("to", PLACES)
def test_nobody_is_led_elsewhere(lived: Opened, to: str) -> None:
    """A redirect that is no address of ours is refused, whoever made it."""

    def page(_request: PageRequest) -> PageResponse:
        return Redirect(to)

    came = _asked(lived, page)
    assert (came.status, "location" in came.headers) == (422, False)


def test_a_redirect_of_ours_leads_on(lived: Opened) -> None:
    """The rule above refuses what it should, and not always."""

    def page(_request: PageRequest) -> PageResponse:
        return Redirect("/mine/1/week")

    came = _asked(lived, page)
    assert (came.status, came.headers["location"]) == (303, "/mine/1/week")
