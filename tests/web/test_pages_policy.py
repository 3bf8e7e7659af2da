"""What stands on every page: nothing inline, nothing from elsewhere, a CSRF token in every form."""

import re
from collections.abc import Iterator
from html.parser import HTMLParser

import pytest

from onewhole.web.access.guard import POLICY
from onewhole.web.http.handling import PageRoute
from tests.kit.doors import Opened
from tests.kit.rounds import address, lived_in
from tests.kit.routes import ROUTES

PAGES = [route for route in ROUTES if route.method == "GET"]
#: Attributes that load or lead, and those of them that may hold a picture in themselves.
LOADS = {
    "href",
    "src",
    "action",
    "formaction",
    "poster",
    "data",
    "srcset",
    "xlink:href",
    "ping",
    "cite",
    "background",
}


@pytest.fixture(scope="module")
def lived(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path_factory.mktemp("lived")) as door:
        yield door


class Page(HTMLParser):
    """What a page may not hold, where it does."""

    def __init__(self, text: str, csrf_token: str) -> None:
        super().__init__()
        self.wrong: list[str] = []
        self.csrf_token = csrf_token
        self.without_token: list[str] = []
        self.feed(text)
        self.wrong += self.without_token

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Look at an element and its attributes."""
        given = {name: value or "" for name, value in attrs}
        if (tag == "script" and not given.get("src")) or tag in {
            "style",
            "base",
            "object",
            "embed",
            "applet",
        }:
            self.wrong.append(self.get_starttag_text() or tag)
        for name, value in given.items():
            elsewhere = name in LOADS and not re.match(r"(/(?!/)|#|\?|data:image/|$)", value.strip())
            if name.startswith("on") or name == "style" or elsewhere or "srcdoc" in name:
                self.wrong.append(f"{name}={value[:60]} on {tag}")
        if tag == "meta" and "http-equiv" in given:
            self.wrong.append("http-equiv")
        if tag == "form" and given.get("method", "get").lower() == "post":
            self.without_token.append(f"no CSRF token: form to {given.get('action')}")
        if (
            tag == "input"
            and given.get("name") == "csrf_token"
            and given.get("value") == self.csrf_token
            and self.without_token
        ):
            self.without_token.pop()


@pytest.mark.asvs("V3.4.3", "V3.7.1", "V14.2.3")
@pytest.mark.parametrize("route", PAGES, ids=lambda route: route.path)
def test_a_page_has_nothing_inline_and_nothing_from_elsewhere(lived: Opened, route: object) -> None:
    """No script, style or handler in the text; every address is our own; every form has the CSRF token.

    A whole document with a policy of its own (the film as a page) is held to that policy instead.
    """
    row = next(one for one in PAGES if one is route)
    came = lived.client.get(address(row))
    policy = came.headers["content-security-policy"]
    assert came.status_code < 500
    if policy != POLICY:
        assert "default-src 'none'" in policy
        assert "http" not in policy
        assert "*" not in policy
    elif came.headers.get("content-type", "").startswith("text/html"):
        assert Page(came.text, lived.csrf_token).wrong == []


@pytest.mark.asvs("V1.2.2")
@pytest.mark.parametrize("route", PAGES, ids=lambda route: route.path)
def test_every_address_on_a_page_is_in_the_table(lived: Opened, route: object) -> None:
    """A link leads to a page, a form to a row that takes it; what a page loads is there."""
    row = next(one for one in PAGES if one is route)
    came = lived.client.get(address(row))
    if came.headers.get("content-type", "").startswith("text/html"):
        for method, leads in addresses(came.text):
            path = leads.partition("#")[0].partition("?")[0]
            if path.startswith("/static/"):
                assert lived.client.get(path).status_code == 200, leads
            elif path.startswith("/"):
                assert any(one.method == method and _pattern(one).fullmatch(path) for one in ROUTES), leads


def _pattern(route: PageRoute) -> re.Pattern[str]:
    return re.compile(
        re.sub(r"\\\{\w+(:int)?\\\}", lambda at: r"\d+" if at[1] else "[^/]+", re.escape(route.path))
    )


def addresses(text: str) -> list[tuple[str, str]]:
    """Return the addresses on a page, each with the method by which it is asked.

    >>> addresses('<a href="/a"><form method="post" action="/b">')
    [('GET', '/a'), ('POST', '/b')]
    """
    found: list[tuple[str, str]] = []

    class Found(HTMLParser):
        def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
            given = {name: value or "" for name, value in attrs}
            method = given.get("method", "get").upper() if tag == "form" else "GET"
            found.extend((method, given[name]) for name in ("href", "src", "action") if name in given)

    Found().feed(text)
    return found


def test_the_search_finds_what_it_looks_for() -> None:
    """The test above can fail."""
    for text in (
        "<script>fly()</script>",
        "<style>p{}</style>",
        '<p style="color:red">',
        '<p onclick="fly()">',
        '<img src="//kites.example/a.png">',
        '<a href="https://kites.example">',
        '<a href="javascript:fly()">',
        '<form method="post" action="/a"><button>',
        '<form method="post" action="/a"><input name="csrf_token" value="other"><button>',
        '<iframe srcdoc="a">',
        '<base href="/">',
    ):
        assert Page(text, "csrf_token").wrong, text
    assert not Page(
        '<form method="post" action="/a"><input name="csrf_token" value="csrf_token"></form>', "csrf_token"
    ).wrong
