"""The table of contents as a whole: every row that changes something wants the session's CSRF token."""

import re
from collections.abc import Iterator
from importlib.resources import files
from pathlib import Path

import pytest

from onewhole.web.http.handling import whole_routes
from onewhole.web.routes import TABLE
from tests.kit.doors import Opened
from tests.kit.rounds import address, lived_in
from tests.kit.routes import ROUTES

POSTS = [route for route in ROUTES if route.method == "POST"]


@pytest.fixture(scope="module")
def lived(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Opened]:
    """A door on the invented class; what would end the program is only counted, and no link does it."""
    ended: list[str] = []
    with lived_in(tmp_path_factory.mktemp("lived"), stop=lambda: ended.append("end")) as door:
        yield door
    assert ended == []


def test_a_row_stands_once() -> None:
    """A method and an address have one page; there are rows of both kinds."""
    assert len({route.name for route in ROUTES}) == len(ROUTES)
    assert {route.method for route in ROUTES} == {"GET", "POST"}


@pytest.mark.asvs("V3.5.1")
@pytest.mark.parametrize("route", POSTS, ids=lambda route: route.path)
def test_a_form_without_the_seal_changes_nothing(lived: Opened, route: object) -> None:
    """None, an empty one, one of another session: refused before the page is asked, with the cookie too."""
    row = next(one for one in POSTS if one is route)
    before = _file(lived)
    cookie = lived.access.sessions.begun()
    other = lived.access.sessions.csrf_token(cookie) or ""
    fields = dict.fromkeys(row.fields, "1")
    for csrf_token in (None, "", other, lived.csrf_token[:-1], lived.csrf_token + "x", "\u2154"):
        sent = fields if csrf_token is None else {**fields, "csrf_token": csrf_token}
        came = lived.client.post(address(row), data=sent, headers=lived.origin)
        assert came.status_code == 403, csrf_token
        assert "too old" in came.text
        scripted = {**lived.origin, "Accept": "application/json"}
        came = lived.client.post(address(row), data=sent, headers=scripted)
        assert (came.status_code, set(came.json())) == (403, {"refused", "where", "remedy"})
    lived.access.sessions.ended(cookie)
    assert _file(lived) == before


@pytest.mark.asvs("V3.5.3")
@pytest.mark.parametrize("route", POSTS, ids=lambda route: route.path)
def test_what_changes_something_is_no_link(lived: Opened, route: object) -> None:
    """The same address by GET shows a page, or is not there; nothing is changed."""
    row = next(one for one in POSTS if one is route)
    before = _file(lived)
    shown = any(one.method == "GET" and one.path == row.path for one in ROUTES)
    came = lived.client.get(address(row), params=dict.fromkeys(row.fields, "1"))
    assert came.status_code in ({200} if shown else {404, 405})
    assert _file(lived) == before


@pytest.mark.asvs("V5.2.2")
@pytest.mark.parametrize("route", [route for route in POSTS if route.files], ids=lambda route: route.path)
@pytest.mark.parametrize("kind", ["text/html", "image/svg+xml", "application/x-msdownload", ""])
def test_a_file_of_another_kind_is_not_taken(lived: Opened, route: object, kind: str) -> None:
    """Neither by what it says of itself nor by what it is: refused with a reason, nothing kept."""
    row = next(one for one in POSTS if one is route)
    before = _file(lived)
    for content in (
        b"<script>fly()</script>",
        b"",
        b"\x1aE\xdf\xa3" + bytes(2000),
        b"SQLite format 3\0" + bytes(5000),
    ):
        files = dict.fromkeys(row.files, ("../../kite.html", content, kind))
        fields = {"csrf_token": lived.csrf_token, **dict.fromkeys(row.fields, "1")}
        came = lived.client.post(address(row), data=fields, files=files, headers=lived.origin)
        assert came.status_code == 422
    assert _file(lived) == before


def _file(door: Opened) -> tuple[object, ...]:
    """Everything that is kept, row by row, except what is only reckoned."""
    with door.door.books["mine"].reading() as connection:
        tables = connection.exec_driver_sql("SELECT name FROM sqlite_master WHERE type = 'table'").scalars()
        kept = sorted(set(tables) - {"reckonings", "mornings"})
        return tuple((name, *connection.exec_driver_sql(f'SELECT * FROM "{name}"')) for name in kept)  # noqa: S608


@pytest.mark.asvs("V1.2.2")
def test_no_address_is_glued_by_hand() -> None:
    """Pages and templates name a page function; only the way in, which is no row of the table, is spelled.

    Work on a file is known by how its addresses begin.
    """
    web = Path(str(files("onewhole.web")))
    spells = {"pages/*.py": r"""["'](/[a-z{][^"' ]*)""", "templates/*.html": r'="(/[a-z{][^"]*)"'}
    spelled = {
        (path.name, address)
        for where, pattern in spells.items()
        for path in web.glob(where)
        for address in re.findall(pattern, path.read_text(encoding="utf-8"))
    }
    assert spelled == {
        ("sign_in.html", "/sign-in"),
        ("base.html", "/sign-out"),
        ("welcome.py", "/{DEMO}/"),
        ("gone.py", "/{request.book_name}/"),
        ("pupil.py", "/{request.book_name}/"),
    }


def test_a_prefix_is_spelled_once() -> None:
    """The table is nested: the rows of a night stand under it, those of a class under that."""
    table = Path(str(files("onewhole.web"))).joinpath("routes.py").read_text(encoding="utf-8")
    assert (table.count("{room:int}"), table.count("{night:int}")) == (1, 1)
    assert len(whole_routes(TABLE)) == len(ROUTES) > 50
