"""Where other machines reach the door, one signs in: with the password, not too often, and out again."""

import logging
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from httpx2 import Response
from starlette.testclient import TestClient

from onewhole.desk.keep.password import set_password
from onewhole.web.access.guard import Access
from onewhole.web.access.rate_limit import FREE, RateLimit
from onewhole.web.access.sessions import SHARED_IDLE, SHARED_LIFE, Sessions
from onewhole.web.access.sign_in import sign_in_routes
from onewhole.web.app import app_for
from onewhole.web.asgi import asgi_app
from onewhole.web.jobs import Outcome
from tests.kit.doors import Clock, Ticks, csrf_token_in

BASE = "https://desk.school:8443"
RIGHT = "six kites over the hill"


class Desk:
    """A door on a school's shared machine, asked without a network."""

    def __init__(self, folder: Path) -> None:
        path = folder / "room12.class"
        set_password(path, RIGHT)
        self.ticks = Ticks()
        sessions = Sessions(self.ticks, SHARED_IDLE, SHARED_LIFE)
        self.access = Access(frozenset({"desk.school:8443"}), sessions, 8443, secure=True, password=True)
        self.door = app_for(path, Clock(), signs_in=True)
        entry = sign_in_routes(self.access, path, RateLimit(self.ticks))
        served = asgi_app(self.door, self.access, entry=entry)
        self.client = TestClient(served, base_url=BASE, follow_redirects=False)

    def signs_in(self, password: str, **headers: str) -> Response:
        """Send the form."""
        sent = headers or {"Origin": BASE}
        return self.client.post("/sign-in", data={"password": password}, headers=sent)


@pytest.fixture
def desk(tmp_path: Path) -> Iterator[Desk]:
    """A door with a password."""
    made = Desk(tmp_path)
    yield made
    made.client.close()
    made.door.close()


@pytest.mark.asvs("V6.3.4", "V8.2.1")
def test_every_page_leads_to_the_sign_in(desk: Desk) -> None:
    """And shows nothing; there is no key that opens."""
    for path in ("/", "/mine/keep", "/under-way/none"):
        came = desk.client.get(path)
        assert (came.status_code, came.headers["location"]) == (303, "/sign-in")
    assert desk.client.get("/open?key=").status_code == 404
    page = desk.client.get("/sign-in")
    assert (page.status_code, 'type="password"' in page.text) == (200, True)


@pytest.mark.asvs("V3.3.1", "V3.3.2", "V3.3.3", "V3.3.4")
def test_the_password_opens_a_session(desk: Desk) -> None:
    """Its cookie goes over TLS only, to this host and port only, and to no script."""
    came = desk.signs_in(RIGHT)
    cookie = came.headers["set-cookie"]
    assert (came.status_code, came.headers["location"]) == (303, "/")
    assert cookie.startswith("__Host-onewhole-8443=")
    assert {"HttpOnly", "Path=/", "SameSite=strict", "Secure"} <= set(cookie.split("; "))
    assert "Domain" not in cookie
    assert desk.client.get("/").headers["location"] == "/welcome"
    assert desk.client.get("/sign-in").headers["location"] == "/"


@pytest.mark.asvs("V7.2.2", "V7.2.4")
def test_a_session_is_new_at_every_sign_in(desk: Desk) -> None:
    """One that was there before, perhaps planted, is over."""
    desk.signs_in(RIGHT)
    before = desk.client.cookies[desk.access.cookie]
    desk.signs_in(RIGHT)
    assert desk.client.cookies[desk.access.cookie] != before
    assert desk.access.sessions.csrf_token(before) is None


@pytest.mark.parametrize("password", ["", "six kites", RIGHT.upper(), "x" * 1000])
def test_a_wrong_password_opens_nothing(desk: Desk, password: str) -> None:
    """And is not shown again."""
    came = desk.signs_in(password)
    assert (came.status_code, "not the password" in came.text) == (403, True)
    assert "set-cookie" not in came.headers
    assert not password or password not in came.text


@pytest.mark.asvs("V6.3.1")
def test_guessing_is_slowed(desk: Desk) -> None:
    """After a few tries the right one waits too; the page says how long; then it opens."""
    for _ in range(FREE):
        assert desk.signs_in("guess").status_code == 403
    came = desk.signs_in(RIGHT)
    assert (came.status_code, came.headers["retry-after"]) == (429, "1")
    assert "Wait 1 second, then try again." in came.text
    desk.ticks.now += 1
    assert desk.signs_in(RIGHT).status_code == 303


@pytest.mark.asvs("V3.5.1")
@pytest.mark.parametrize("origin", ["https://kites.example", "null", "http://desk.school:8443", ""])
def test_another_page_signs_nobody_in(desk: Desk, origin: str) -> None:
    """Not even with the right password; a browser tells where every form comes from."""
    assert desk.signs_in(RIGHT, Origin=origin).status_code == 403
    assert desk.client.post("/sign-in", data={"password": RIGHT}).status_code == 403
    assert desk.access.cookie not in desk.client.cookies


@pytest.mark.parametrize(
    ("sent", "status"),
    [
        (b"password=" + b"x" * 5000, 413),
        (b"password=a%00b", 422),
        (b"", 403),
        (b"a&" * 2010, 400),
    ],
)
def test_a_form_that_is_none_opens_nothing(desk: Desk, sent: bytes, status: int) -> None:
    """It is refused and is no fault."""
    kind = {"Content-Type": "application/x-www-form-urlencoded", "Origin": BASE}
    assert desk.client.post("/sign-in", content=sent, headers=kind).status_code == status


@pytest.mark.asvs("V7.4.1", "V14.3.1")
def test_signing_out_ends_the_session(desk: Desk) -> None:
    """For whoever holds the cookie; only the page's own form does it."""
    desk.signs_in(RIGHT)
    cookie = desk.client.cookies[desk.access.cookie]
    assert desk.client.post("/sign-out", headers={"Origin": BASE}).status_code == 403
    assert desk.access.sessions.csrf_token(cookie)
    csrf_token = desk.access.sessions.csrf_token(cookie) or ""
    came = desk.client.post("/sign-out", data={"csrf_token": csrf_token}, headers={"Origin": BASE})
    assert (came.status_code, came.headers["location"]) == (303, "/sign-in")
    assert came.headers["clear-site-data"] == '"cache", "storage"'
    assert desk.access.sessions.csrf_token(cookie) is None


@pytest.mark.asvs("V7.3.1")
def test_a_session_here_ends_after_half_an_hour(desk: Desk) -> None:
    """On a machine that others use too."""
    desk.signs_in(RIGHT)
    desk.ticks.now = SHARED_IDLE + 1
    assert desk.client.get("/").headers["location"] == "/sign-in"


@pytest.mark.asvs("V7.3.1")
def test_what_a_page_asks_by_itself_is_no_use(desk: Desk) -> None:
    """A page left alone asks every three seconds what other windows wrote, and is signed out in its time."""
    desk.signs_in(RIGHT)
    for path in ("/mine/1/night/1/marking/now", "/under-way/none/now"):
        desk.ticks.now += SHARED_IDLE / 2
        assert desk.client.get(path).status_code == 404
    desk.ticks.now += 1
    assert desk.client.get("/mine/1/night/1/marking/now").headers["location"] == "/sign-in"


def test_a_page_that_is_looked_at_is_use(desk: Desk) -> None:
    """And so is a form, whatever it is called."""
    desk.signs_in(RIGHT)
    for method, path in (("GET", "/mine/keep"), ("POST", "/kites/now"), ("GET", "/mine/keep")):
        desk.ticks.now += SHARED_IDLE
        assert desk.client.request(method, path).headers.get("location") != "/sign-in"


@pytest.mark.asvs("V7.3.2")
def test_a_session_ends_with_the_day(desk: Desk) -> None:
    """However much it is used."""
    desk.signs_in(RIGHT)
    while desk.ticks.now < SHARED_LIFE:
        assert desk.client.get("/mine/keep").status_code == 200
        desk.ticks.now += SHARED_IDLE
    desk.ticks.now = SHARED_LIFE + 1
    assert desk.client.get("/mine/keep").headers["location"] == "/sign-in"


@pytest.mark.asvs("V3.4.1")
def test_a_browser_comes_back_by_tls_only(desk: Desk) -> None:
    """Every page says so, also one that is refused; without a password and TLS nothing does."""
    for path in ("/sign-in", "/", "/none", "/static/none"):
        assert desk.client.get(path).headers["strict-transport-security"] == "max-age=31536000"
    assert desk.client.get("/", headers={"Host": "kites"}).headers["strict-transport-security"]


@pytest.mark.asvs("V16.5.3")
def test_a_damaged_password_lets_nobody_in(desk: Desk) -> None:
    """It says what to do."""
    Path(f"{desk.door.books.paths['mine']}.password").write_text("torn")
    came = desk.signs_in(RIGHT)
    assert (came.status_code, "--set-password" in came.text) == (503, True)


@pytest.mark.asvs("V7.4.4")
def test_every_page_has_the_way_out(desk: Desk) -> None:
    """The form to sign out carries the session's CSRF token."""
    desk.signs_in(RIGHT)
    work = desk.door.jobs.start("Six kites", "/", lambda _progress: Outcome("/"))
    page = desk.client.get(f"/under-way/{work.name}").text
    assert f'action="/sign-out"><input type="hidden" name="csrf_token" value="{csrf_token_in(page)}">' in page


@pytest.mark.asvs("V6.2.6", "V6.2.7", "V6.4.2")
def test_the_page_asks_for_one_password_and_gives_no_hint(desk: Desk) -> None:
    """One field, not shown as it is typed, which a browser may fill in; no question, no hint, no script."""
    page = desk.client.get("/sign-in").text
    (field,) = re.findall("<input[^>]*>", page)
    assert {'type="password"', 'autocomplete="current-password"'} <= set(field.rstrip(">").split())
    for word in ("<script", "onpaste", "readonly", "hint", "question", "forgot"):
        assert word not in page.lower()


@pytest.mark.asvs("V4.1.3", "V15.3.4")
def test_a_header_of_a_proxy_is_not_believed(desk: Desk) -> None:
    """Whoever claims another address with each try waits all the same."""
    for tried in range(FREE):
        claimed = {"X-Forwarded-For": f"192.0.2.{tried}", "Forwarded": f"for=192.0.2.{tried}"}
        assert desk.signs_in("guess", Origin=BASE, **claimed).status_code == 403
    again = {"X-Forwarded-For": "198.51.100.1", "X-Real-IP": "198.51.100.1"}
    assert desk.signs_in(RIGHT, Origin=BASE, **again).status_code == 429


@pytest.mark.asvs("V16.3.1")
def test_signing_in_is_logged(desk: Desk, caplog: pytest.LogCaptureFixture) -> None:
    """Wrong, right, too soon and out: with the address, without the password."""
    with caplog.at_level(logging.INFO, logger="onewhole"):
        desk.signs_in(RIGHT)
        cookie = desk.client.cookies[desk.access.cookie]
        sent = {"csrf_token": desk.access.sessions.csrf_token(cookie) or ""}
        desk.client.post("/sign-out", data=sent, headers={"Origin": BASE})
        for _ in range(FREE + 1):
            desk.signs_in("guessed kites")
    said = [one.getMessage() for one in caplog.records if one.getMessage().startswith("sign")]
    wrong = ["sign-in wrong from testclient"] * FREE
    soon = "sign-in too soon from testclient"
    assert said == ["sign-in right from testclient", "sign-out from testclient", *wrong, soon]
    assert "kites" not in caplog.text
