"""The door as a whole: who gets in, and what an answer carries."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.web.access.guard import POLICY
from onewhole.web.http.static_files import static
from tests.kit.doors import Opened, opened


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A door to an empty class file."""
    with opened(tmp_path) as made:
        yield made


def test_an_empty_file_leads_to_the_welcome(door: Opened) -> None:
    """The first address goes on to where a teacher starts."""
    assert door.get("/").goes == "/welcome"


@pytest.mark.asvs("V3.4.3")
def test_every_answer_carries_the_policy(door: Opened) -> None:
    """Also what is refused, and what is not there."""
    for address in ("/", "/nowhere", static("look.css"), "/under-way/none"):
        assert door.client.get(address).headers["content-security-policy"] == POLICY


@pytest.mark.asvs("V13.4.5")
def test_what_is_not_there_is_told_with_a_way_back(door: Opened) -> None:
    """A page, and a work that was forgotten."""
    assert (door.get("/nowhere").status, door.get("/under-way/none").status) == (404, 404)
    assert "start it again" in door.get("/under-way/none").text


@pytest.mark.asvs("V1.4.2")
def test_a_number_that_no_file_holds_is_not_there(door: Opened) -> None:
    """In an address or a form, however large: no fault, and nothing wraps round."""
    for number in (2**31, 2**63, 2**64 + 1, 10**100):
        assert door.get(f"/mine/{number}/week").status == 404
        assert door.post("/welcome", name="Room 12", pupils=str(number), names="").status == 422
    assert door.get("/").goes == "/welcome"


@pytest.mark.asvs("V13.4.1", "V13.4.5")
@pytest.mark.parametrize(
    "path",
    [
        "/docs",
        "/openapi.json",
        "/metrics",
        "/status",
        "/debug",
        "/.git/config",
        "/pyproject.toml",
        "/static/.git",
    ],
)
def test_nothing_is_served_that_is_not_in_the_table(door: Opened, path: str) -> None:
    """No page for developers and no folder of the code, not even for whoever is in."""
    assert door.get(path).status == 404
