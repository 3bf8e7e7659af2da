"""Stop: the program is ended by its own page, and only where whoever looks at it has started it."""

from pathlib import Path
from threading import Event

import pytest
from starlette.testclient import TestClient

from onewhole.web.access.guard import Access
from onewhole.web.access.sessions import Sessions
from onewhole.web.app import app_for
from onewhole.web.asgi import asgi_app
from onewhole.web.jobs import Outcome, Progress
from tests.kit.doors import Clock, Opened, csrf_token_in
from tests.kit.waiting import GIVE_UP

BASE = "http://127.0.0.1:8000"


def test_the_page_asks_first_and_then_lets_the_program_end(tmp_path: Path) -> None:
    """To look ends nothing; a form with its token does, once, and the page says what to do then."""
    told: list[str] = []
    sessions = Sessions(lambda: 0)
    access = Access(frozenset({"127.0.0.1:8000"}), sessions, 8000)
    app = app_for(tmp_path / "room12.class", Clock(), stop=lambda: told.append("end"))
    with TestClient(asgi_app(app, access), base_url=BASE, follow_redirects=False) as client:
        client.get(f"/open?key={sessions.new_key()}")
        asked = client.get("/stop")
        assert (asked.status_code, told) == (200, [])
        assert "Stop onewhole?" in asked.text
        assert client.post("/stop", headers={"Origin": BASE}).status_code == 403
        assert told == []
        token = csrf_token_in(asked.text)
        ended = client.post("/stop", data={"csrf_token": token}, headers={"Origin": BASE})
        assert (ended.status_code, told) == (200, ["end"])
        assert "You can close this window now." in ended.text
        assert "<nav" not in ended.text  # no link of it would lead anywhere
    app.close()


def test_work_that_is_under_way_is_told_of(tmp_path: Path) -> None:
    """Before it is ended and has to be begun again."""
    may_end = Event()

    def film(_progress: Progress) -> Outcome:
        may_end.wait(GIVE_UP)
        return Outcome("/")

    sessions = Sessions(lambda: 0)
    access = Access(frozenset({"127.0.0.1:8000"}), sessions, 8000)
    app = app_for(tmp_path / "room12.class", Clock(), stop=lambda: None)
    with TestClient(asgi_app(app, access), base_url=BASE) as client:
        client.get(f"/open?key={sessions.new_key()}")
        assert "still being made" not in client.get("/stop").text
        app.jobs.start("Film", "/", film)
        assert "still being made" in client.get("/stop").text
        may_end.set()
    app.close()


@pytest.mark.parametrize("method", ["GET", "POST"])
def test_where_others_look_too_nobody_ends_it(door: Opened, method: str) -> None:
    """No page has the link, the page leads on, and the form is refused with what to do."""
    assert "/stop" not in door.get("/welcome").text
    if method == "GET":
        assert (door.get("/stop").status, door.get("/stop").goes) == (303, "/")
    else:
        refused = door.post("/stop")
        assert refused.status == 422
        assert "stops it where it was started" in refused.text
