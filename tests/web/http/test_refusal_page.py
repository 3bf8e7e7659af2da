"""What is refused before a page function is asked: a page in a browser's window, words for a script."""

import pytest

from onewhole.web.access.guard import POLICY
from tests.kit.doors import Opened

BROWSER = {"Accept": "text/html,application/xhtml+xml,*/*;q=0.8"}


@pytest.mark.parametrize(
    ("method", "address", "status", "told"),
    [
        ("GET", "/nowhere", 404, "There is no such page"),
        ("GET", f"/{'9' * 2000}", 414, "This address is too long"),
        ("PUT", "/", 405, "This is not done here"),
        ("POST", "/welcome", 403, "This form comes from another page"),
    ],
)
def test_a_browser_gets_a_page(door: Opened, method: str, address: str, status: int, told: str) -> None:
    """With a title, a heading, a language and a way back; a script gets the same words plain."""
    foreign = {"Origin": "http://kites.example"} if method == "POST" else {}
    came = door.client.request(method, address, headers={**BROWSER, **foreign})
    assert came.status_code == status
    assert came.headers["content-security-policy"] == POLICY
    assert f"<title>{told} · onewhole</title>" in came.text
    assert f"<h1>{told}</h1>" in came.text
    assert '<html lang="en-US">' in came.text
    assert '<a class="button" href="/">To the Week</a>' in came.text
    plain = door.client.request(method, address, headers={"Accept": "application/json", **foreign})
    assert (plain.status_code, plain.text.startswith(told)) == (status, True)
    assert plain.headers["content-type"] == "text/plain; charset=utf-8"


@pytest.mark.parametrize(
    ("address", "status", "told"),
    [
        ("/mine/1/week", 401, "This window is not open yet"),
        ("/open?key=guessed", 403, "This address was opened already"),
    ],
)
def test_without_a_session_no_button_leads_in_a_circle(
    door: Opened, address: str, status: int, told: str
) -> None:
    """The page says how the window is opened, and no more."""
    door.client.cookies.clear()
    came = door.client.get(address, headers=BROWSER)
    assert (came.status_code, f"<h1>{told}</h1>" in came.text) == (status, True)
    assert "To the Week" not in came.text


def test_what_is_told_is_text(door: Opened) -> None:
    """Nothing of the address stands in the page."""
    came = door.client.get("/%3Cscript%3Ekite()%3C/script%3E", headers=BROWSER)
    assert (came.status_code, "kite()" in came.text) == (404, False)
