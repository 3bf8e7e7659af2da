"""The browser's own files: kept for good under an address that changes with them, compressed on the way."""

import re

import pytest

from onewhole.web.http.static_files import static
from tests.kit.doors import Opened

KITE = static("kite.svg")
LOOK = static("look.css")


def test_a_file_is_kept_by_the_browser(door: Opened) -> None:
    """It is not asked for again: RFC 8246 (immutable), RFC 9111 (max-age)."""
    for address in (KITE, LOOK, LOOK.replace("look.css", "letters/Lexend[wght].ttf")):
        came = door.client.get(address)
        assert came.status_code == 200
        assert came.headers["cache-control"] == "public, max-age=31536000, immutable"


def test_another_digest_is_not_there(door: Opened) -> None:
    """An address of an older release does not give the files of this one."""
    older = re.sub("/static/[0-9a-f]+/", f"/static/{'0' * 12}/", LOOK)
    came = door.client.get(older)
    assert came.status_code == 404
    assert came.headers["cache-control"] == "no-store"


def test_what_is_not_there_is_not_kept(door: Opened) -> None:
    """A missing file may be there tomorrow."""
    came = door.client.get(LOOK.replace("look.css", "none.css"))
    assert came.status_code == 404
    assert "immutable" not in came.headers["cache-control"]


def test_files_are_compressed_and_pages_are_not(door: Opened) -> None:
    """A page may hold a secret beside typed words, whose length would tell of it (BREACH, 2013)."""
    asked = {"Accept-Encoding": "gzip"}
    assert door.client.get(LOOK, headers=asked).headers["content-encoding"] == "gzip"
    assert "content-encoding" not in door.client.get("/welcome", headers=asked).headers


def test_a_style_finds_the_letters(door: Opened) -> None:
    """Every address in the look is beside it."""
    named = re.findall(r'url\("([^"]+)"\)', door.client.get(LOOK).text)
    assert len(named) >= 4
    for one in named:
        assert door.client.get(LOOK.replace("look.css", one)).status_code == 200, one


def test_a_file_that_is_not_there_has_no_address() -> None:
    """A template that names one fails at once."""
    with pytest.raises(FileNotFoundError):
        static("none.css")
