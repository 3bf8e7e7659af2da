"""Who the door talks with: Host, Origin, Sec-Fetch-Site, methods, the length of an address."""

from urllib.parse import unquote

import pytest

from onewhole.web.access.guard import POLICY, POLLED, Access
from onewhole.web.access.sessions import Sessions
from onewhole.web.asgi import asgi_app
from onewhole.web.http.static_files import static
from tests.kit.doors import Opened
from tests.kit.raw_asks import ask_raw
from tests.kit.routes import ROUTES

HOST = ("host", "127.0.0.1:8000")


@pytest.mark.parametrize(
    "host",
    ["kites.example:8000", "127.0.0.1", "127.0.0.1:8001", "localhost:8000.kites.example", "", "[::1]:8000"],
)
def test_a_host_that_is_not_ours_is_refused(door: Opened, host: str) -> None:
    """A foreign name that was pointed at this machine reads nothing (DNS rebinding), session or not."""
    for path in ("/", "/open", static("look.css")):
        came = door.client.get(path, headers={"Host": host})
        assert came.status_code == 421
        assert came.headers["content-security-policy"] == POLICY


def test_only_what_scripts_ask_by_themselves_is_no_use() -> None:
    """The addresses that are asked again and again, and no others, end so that the guard knows them."""
    polled = {route.page for route in ROUTES if route.method == "GET" and route.path.endswith(POLLED)}
    assert polled == {"marking.now", "job.now"}


@pytest.mark.asvs("V15.3.7")
def test_two_hosts_are_none(door: Opened) -> None:
    """Neither of two Host headers is believed, nor is one that is missing."""
    served = asgi_app(door.door, door.access)
    assert ask_raw(served, "GET", "/open", [HOST]).status == 403
    assert ask_raw(served, "GET", "/open", [HOST, ("host", "kites.example")]).status == 421
    assert ask_raw(served, "GET", "/open", [HOST, HOST]).status == 421
    assert ask_raw(served, "GET", "/open", []).status == 421


def test_a_host_is_ours_however_it_is_capitalised(door: Opened) -> None:
    """Names of machines do not tell capitals apart; an address of the sixth version is one too."""
    access = Access(frozenset({"localhost:8000", "[::1]:8000"}), Sessions(lambda: 0), 8000)
    for host in ("LocalHost:8000", "[::1]:8000"):
        assert ask_raw(asgi_app(door.door, access), "GET", "/", [("host", host)]).status == 401


@pytest.mark.asvs("V3.5.1")
@pytest.mark.parametrize(
    "origin",
    ["http://kites.example", "null", "http://127.0.0.1:8001", "https://127.0.0.1:8000", "http://127.0.0.1"],
)
def test_a_form_of_another_page_is_refused(door: Opened, origin: str) -> None:
    """Also with the session's cookie and its CSRF token."""
    came = door.client.post("/", data={"csrf_token": door.csrf_token}, headers={"Origin": origin})
    assert came.status_code == 403
    assert "another page" in came.text


@pytest.mark.asvs("V3.2.1", "V3.5.8")
@pytest.mark.parametrize("site", ["cross-site", "same-site", "else"])
def test_a_browser_that_tells_of_another_site_is_believed(door: Opened, site: str) -> None:
    """No form from there, and no picture, script or frame of ours in a page of theirs."""
    from_there = {"Sec-Fetch-Site": site, "Sec-Fetch-Mode": "no-cors", "Sec-Fetch-Dest": "image"}
    assert door.client.post("/", headers={**door.origin, **from_there}).status_code == 403
    assert door.client.get(static("kite.svg"), headers=from_there).status_code == 403
    framed = {"Sec-Fetch-Site": site, "Sec-Fetch-Mode": "navigate", "Sec-Fetch-Dest": "iframe"}
    assert door.client.get("/", headers=framed).status_code == 403


def test_a_link_elsewhere_may_lead_here(door: Opened) -> None:
    """To a page, as a link in a message does; the browser keeps the cookie back by itself (SameSite)."""
    led = {"Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "navigate", "Sec-Fetch-Dest": "document"}
    assert door.client.get("/", headers=led).status_code == 303


@pytest.mark.asvs("V3.4.2", "V4.1.4", "V13.4.4")
@pytest.mark.parametrize("method", ["PUT", "DELETE", "OPTIONS", "TRACE", "PATCH", "CONNECT", "PROPFIND"])
def test_only_what_pages_do_is_done(door: Opened, method: str) -> None:
    """GET, HEAD and POST; no preflight of another origin is ever granted."""
    came = door.client.request(method, "/", headers=door.origin)
    assert came.status_code == 405
    assert came.headers["allow"] == "GET, HEAD, POST"
    assert not [name for name in came.headers if name.startswith("access-control")]


def test_an_address_has_an_end(door: Opened) -> None:
    """A path of 5000 digits is not read as a number."""
    assert door.client.get(f"/under-way/{'9' * 5000}").status_code == 414
    assert door.client.get(f"/?a={'9' * 9000}").status_code == 414


@pytest.mark.asvs("V7.2.1", "V8.2.1", "V8.3.1")
def test_without_a_session_nothing_is_shown(door: Opened) -> None:
    """Only the way in and what it looks like; a cookie of another door is none."""
    door.client.cookies.clear()
    assert door.client.get("/").status_code == 401
    assert door.client.get("/mine/keep").status_code == 401
    assert door.client.post("/", headers=door.origin).status_code == 401
    assert door.client.get(static("look.css")).status_code == 200
    for cookie in (
        "onewhole-8000=guessed",
        "onewhole-8000=",
        "onewhole-8001=x",
        "=;=;\x01",
        f"onewhole-8000={'x' * 9000}",
    ):
        assert door.client.get("/", headers={"Cookie": cookie}).status_code == 401


@pytest.mark.asvs("V5.3.2", "V13.4.1", "V13.4.3")
@pytest.mark.parametrize("path", ["../app.py", "%2e%2e/app.py", "..%2fapp.py", "../../../app.py",
                                  "/etc/passwd", "%00", "a" * 400, "letters/../../__init__.py",
                                  "letters/%2e%2e/__init__.py", "..\\app.py", ".", "", "letters/",
                                  ".git/config"])  # fmt: skip
def test_a_static_address_stays_in_its_folder(door: Opened, path: str) -> None:
    """However it is written, it is not there."""
    served = asgi_app(door.door, door.access)
    path = static("look.css").removesuffix("look.css") + path
    assert ask_raw(served, "GET", path, [HOST]).status == 404
    assert ask_raw(served, "GET", unquote(path), [HOST]).status == 404


@pytest.mark.asvs("V3.2.1", "V3.4.3", "V3.4.4", "V3.4.5", "V3.4.6", "V14.3.2")
def test_every_answer_carries_what_protects_it(door: Opened) -> None:
    """Pages, refusals and what is not there: the policy, no guessing of kinds, nothing put by."""
    for path in ("/", "/nowhere", "/under-way/none", static("look.css")):
        headers = door.client.get(path).headers
        assert headers["content-security-policy"] == POLICY
        assert headers["x-content-type-options"] == "nosniff"
        assert headers["referrer-policy"] == "same-origin"
        assert headers["cross-origin-resource-policy"] == "same-origin"
        assert path.startswith("/static/") or headers["cache-control"] == "no-store"
        assert "server" not in headers
    for word in ("unsafe", "http:", "https:", "*"):
        assert word not in POLICY
