"""The table of contents as a whole: every row that changes something wants the session's seal."""

from collections.abc import Iterator

import pytest

from onewhole.web.routes import WAYS
from tests.kit.doors import Opened
from tests.kit.rounds import address, lived_in

POSTS = [way for way in WAYS if way.method == "POST"]


@pytest.fixture(scope="module")
def lived(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path_factory.mktemp("lived")) as door:
        yield door


def test_a_row_stands_once() -> None:
    """A method and an address have one page; there are rows of both kinds."""
    assert len({way.name for way in WAYS}) == len(WAYS)
    assert {way.method for way in WAYS} == {"GET", "POST"}


@pytest.mark.parametrize("way", POSTS, ids=lambda way: way.path)
def test_a_form_without_the_seal_changes_nothing(lived: Opened, way: object) -> None:
    """None, an empty one, one of another session: refused before the page is asked, with the cookie too."""
    row = next(one for one in POSTS if one is way)
    before = _file(lived)
    cookie = lived.gate.sessions.begun()
    other = lived.gate.sessions.seal(cookie) or ""
    fields = dict.fromkeys(row.takes, "1")
    for seal in (None, "", other, lived.seal[:-1], lived.seal + "x", "\u2154"):
        sent = fields if seal is None else {**fields, "seal": seal}
        came = lived.client.post(address(row), data=sent, headers=lived.origin)
        assert came.status_code == 403, seal
        assert "too old" in came.text
        scripted = {**lived.origin, "Accept": "application/json"}
        came = lived.client.post(address(row), data=sent, headers=scripted)
        assert (came.status_code, set(came.json())) == (403, {"refused", "where", "remedy"})
    lived.gate.sessions.ended(cookie)
    assert _file(lived) == before


@pytest.mark.parametrize("way", POSTS, ids=lambda way: way.path)
def test_what_changes_something_is_no_link(lived: Opened, way: object) -> None:
    """The same address by GET shows a page, or is not there; nothing is changed."""
    row = next(one for one in POSTS if one is way)
    before = _file(lived)
    shown = any(one.method == "GET" and one.path == row.path for one in WAYS)
    came = lived.client.get(address(row), params=dict.fromkeys(row.takes, "1"))
    assert came.status_code in ({200} if shown else {404, 405})
    assert _file(lived) == before


@pytest.mark.parametrize("way", [way for way in POSTS if way.files], ids=lambda way: way.path)
@pytest.mark.parametrize("kind", ["text/html", "image/svg+xml", "application/x-msdownload", ""])
def test_a_file_of_another_kind_is_not_taken(lived: Opened, way: object, kind: str) -> None:
    """Neither by what it says of itself nor by what it is: refused with a reason, nothing kept."""
    row = next(one for one in POSTS if one is way)
    before = _file(lived)
    for content in (
        b"<script>fly()</script>",
        b"",
        b"\x1aE\xdf\xa3" + bytes(2000),
        b"SQLite format 3\0" + bytes(5000),
    ):
        files = dict.fromkeys(row.files, ("../../kite.html", content, kind))
        fields = {"seal": lived.seal, **dict.fromkeys(row.takes, "1")}
        came = lived.client.post(address(row), data=fields, files=files, headers=lived.origin)
        assert came.status_code == 422
    assert _file(lived) == before


def _file(door: Opened) -> tuple[object, ...]:
    """Everything that is kept, row by row, except what is only reckoned."""
    with door.door.books["mine"].reading() as connection:
        tables = connection.exec_driver_sql("SELECT name FROM sqlite_master WHERE type = 'table'").scalars()
        kept = sorted(set(tables) - {"reckonings"})
        return tuple((name, *connection.exec_driver_sql(f'SELECT * FROM "{name}"')) for name in kept)  # noqa: S608
