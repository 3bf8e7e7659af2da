"""A key opens one session, a session ends when nobody uses it, secrets are compared in constant time."""

from secrets import token_urlsafe
from threading import Thread

import pytest

from onewhole.web.access import sessions
from onewhole.web.access.sessions import IDLE, MAX_SESSIONS, Sessions
from onewhole.web.http import handling
from tests.kit.doors import Opened, Ticks


@pytest.mark.asvs("V6.4.1")
def test_a_key_is_good_once(door: Opened) -> None:
    """The second time it opens nothing, and says what to do."""
    key = door.access.sessions.new_key()
    door.client.cookies.clear()
    assert door.client.get(f"/open?key={key}").headers["location"] == "/"
    door.client.cookies.clear()
    again = door.client.get(f"/open?key={key}")
    assert (again.status_code, "Start onewhole once more" in again.text) == (403, True)
    assert "set-cookie" not in again.headers


@pytest.mark.asvs("V6.4.1")
def test_a_key_is_good_once_also_for_many_at_once() -> None:
    """Sixteen threads with one key: one session."""
    made = Sessions(lambda: 0)
    key = made.new_key()
    cookies: list[str | None] = []
    threads = [Thread(target=lambda: cookies.append(made.opened(key))) for _ in range(16)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len([cookie for cookie in cookies if cookie]) == 1


def test_looking_at_the_address_first_does_not_use_the_key_up(door: Opened) -> None:
    """A mail program or a browser that asks for the head only leaves the key good."""
    key = door.access.sessions.new_key()
    door.client.cookies.clear()
    assert door.client.head(f"/open?key={key}").status_code == 403
    assert door.client.get(f"/open?key={key}").status_code == 303


@pytest.mark.asvs("V7.2.1")
@pytest.mark.parametrize("key", ["", "guessed", "x" * 5000, "%00", "%ed%a0%80"])
def test_a_guessed_key_opens_nothing(door: Opened, key: str) -> None:
    """Whatever it is made of, and the good key stays good."""
    good = door.access.sessions.new_key()
    door.client.cookies.clear()
    assert door.client.get(f"/open?key={key}").status_code == 403
    assert door.client.get(f"/open?key={good}").status_code == 303


@pytest.mark.asvs("V3.3.2", "V3.3.4")
def test_the_cookie_is_for_the_browser_alone(door: Opened) -> None:
    """No script reads it, no other site sends it, and the page's text does not hold it."""
    key = door.access.sessions.new_key()
    door.client.cookies.clear()
    cookie = door.client.get(f"/open?key={key}").headers["set-cookie"]
    assert cookie.startswith("onewhole-8000=")
    assert {"HttpOnly", "Path=/", "SameSite=strict"} <= set(cookie.split("; "))
    assert "Expires" not in cookie
    assert "Max-Age" not in cookie


@pytest.mark.asvs("V7.3.1")
def test_a_session_ends_when_nobody_uses_it() -> None:
    """Each use begins the time anew; the clock of the machine has no say in it."""
    ticks = Ticks()
    made = Sessions(ticks)
    cookie = made.begun()
    for _ in range(3):
        ticks.now += IDLE
        assert made.csrf_token(cookie)
    ticks.now += IDLE + 1
    assert made.csrf_token(cookie) is None
    ticks.now = 0
    assert made.csrf_token(cookie) is None


def test_a_session_ends_however_much_it_is_used() -> None:
    """After its life another has to be opened."""
    ticks = Ticks()
    made = Sessions(ticks, idle=10, life=100)
    cookie = made.begun()
    for now in range(0, 101, 10):
        ticks.now = now
        assert made.csrf_token(cookie)
    ticks.now = 101
    assert made.csrf_token(cookie) is None


def test_asking_without_use_keeps_nothing_open() -> None:
    """The session answers, and ends as if nobody had asked."""
    ticks = Ticks()
    made = Sessions(ticks, idle=10)
    cookie = made.begun()
    ticks.now = 10
    assert made.csrf_token(cookie, is_use=False)
    ticks.now = 11
    assert made.csrf_token(cookie, is_use=False) is None


def test_sessions_are_few() -> None:
    """The one used longest ago gives way; each has a CSRF token of its own."""
    ticks = Ticks()
    made = Sessions(ticks)
    cookies = []
    for _ in range(MAX_SESSIONS + 1):
        ticks.now += 1
        cookies.append(made.begun())
    assert [made.csrf_token(cookie) is None for cookie in cookies] == [True, *[False] * MAX_SESSIONS]
    assert len({made.csrf_token(cookie) for cookie in cookies[1:]}) == MAX_SESSIONS


@pytest.mark.asvs("V7.4.1")
def test_an_ended_session_is_over() -> None:
    """Its cookie is worth nothing."""
    made = Sessions(lambda: 0)
    cookie = made.begun()
    made.ended(cookie)
    assert made.csrf_token(cookie) is None


def test_secrets_are_compared_in_constant_time(door: Opened, monkeypatch: pytest.MonkeyPatch) -> None:
    """Keys by their hashes, CSRF tokens as they are, both by the function that is made for it."""
    compared: list[tuple[object, object]] = []

    def spied(one: object, other: object) -> bool:
        compared.append((one, other))
        return one == other

    monkeypatch.setattr(sessions, "compare_digest", spied)
    monkeypatch.setattr(handling, "compare_digest", spied)
    key = door.access.sessions.new_key()
    assert door.access.sessions.opened(key)
    assert len(compared) == 1
    assert key not in compared[0]


def test_a_secret_is_not_kept_as_it_is() -> None:
    """Neither key nor cookie stands in the sessions; only their hashes do."""
    made = Sessions(lambda: 0)
    key, cookie = made.new_key(), made.begun()
    assert key not in repr(made)
    assert cookie not in repr(made)


@pytest.mark.asvs("V7.2.3", "V11.5.1")
def test_every_secret_has_more_chance_than_can_be_guessed(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keys, cookies and CSRF tokens: 24 bytes of the system's chance each, no two alike."""
    asked: list[int] = []

    def spied(count: int) -> str:
        asked.append(count)
        return token_urlsafe(count)

    monkeypatch.setattr(sessions, "token_urlsafe", spied)
    made = Sessions(lambda: 0)
    key = made.new_key()
    cookie, other = made.begun(), made.opened(key)
    secrets = {key, cookie, other, made.csrf_token(cookie), made.csrf_token(other or "")}
    assert len(secrets) == 5
    assert len(asked) == 5
    assert min(asked) * 8 >= 128
