"""What is refused before a page function is asked: a page in a browser's window, words for a script."""

import pytest

from onewhole.web.access.guard import POLICY
from onewhole.web.access.login_link import SpareLink
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


def test_where_another_page_led_here_a_page_of_ours_goes_on(door: Opened) -> None:
    """A cookie that is kept from other sites is not sent on their redirect, but on our page's."""
    for site, status in (("cross-site", 200), ("none", 303), ("same-origin", 303)):
        door.client.cookies.clear()
        heads = {
            **BROWSER,
            "sec-fetch-site": site,
            "sec-fetch-mode": "navigate",
            "sec-fetch-dest": "document",
        }
        came = door.client.get(f"/open?key={door.access.sessions.new_key()}", headers=heads)
        assert (came.status_code, "set-cookie" in came.headers) == (status, True)
        assert ('http-equiv="refresh" content="0; url=/"' in came.text) == (status == 200)


def test_the_spare_link_is_told_anew_once_it_was_used(door: Opened) -> None:
    """And not before: a key that waits stays good."""
    told: list[str] = []
    spare = SpareLink(door.access.sessions, told.append)
    for _ in range(2):
        spare.renew()
    assert len(told) == 1
    assert door.access.sessions.opened(told[0])
    spare.renew()
    assert (len(set(told)), door.access.sessions.is_good(told[0])) == (2, False)


def test_what_is_told_is_text(door: Opened) -> None:
    """Nothing of the address stands in the page."""
    came = door.client.get("/%3Cscript%3Ekite()%3C/script%3E", headers=BROWSER)
    assert (came.status_code, "kite()" in came.text) == (404, False)
