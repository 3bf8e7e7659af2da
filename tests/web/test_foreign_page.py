"""A foreign page in a real Chromium with a session open beside it: it reads and changes nothing."""

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext

from onewhole.desk.classes.class_records import rooms
from onewhole.web.http.static_files import static
from tests.kit.browsers import NEEDS_CHROMIUM, chromium
from tests.kit.doors import Served, served
from tests.kit.rounds import lived_in

pytestmark = NEEDS_CHROMIUM
FOREIGN = """<!doctype html><title>Free kites</title><p id="told"></p>
<form id="name" method="post" action="DOOR/mine/1/class/name"><input name="called" value="Taken"></form>
<form id="plain" method="post" action="DOOR/mine/1/class/name" enctype="text/plain">
<input name="name" value="Taken"></form>
<form id="away" method="post" action="DOOR/demo/away"></form>
<iframe id="frame" src="DOOR/mine/1/week"></iframe>"""
#: What a foreign script tries; each gives what it got.
TRIES = {
    "read a page": "fetch('DOOR/mine/1/week', {credentials: 'include'}).then(r => r.text())",
    "read as a script": """new Promise(done => { const s = document.createElement('script');
        s.src = 'DOOR/mine/1/night/3/marking/now'; s.onload = () => done('loaded');
        s.onerror = () => done(''); document.head.append(s); })""",
    "show a picture": """new Promise(done => { const i = new Image(); i.onload = () => done('loaded');
        i.onerror = () => done(''); i.src = 'DOORKITE'; })""".replace("KITE", static("kite.svg")),
    "send blindly": """fetch('DOOR/mine/1/class/name', {method: 'POST', mode: 'no-cors',
        credentials: 'include', body: new URLSearchParams({name: 'Taken', csrf_token: 'guessed'})})
        .then(r => r.type === 'opaque' ? '' : r.text())""",
    "ask first": """fetch('DOOR/mine/1/class/name', {method: 'POST', credentials: 'include',
        headers: {'X-CSRF-Token': 'guessed'},
        body: new URLSearchParams({name: 'Taken'})}).then(r => r.text())""",
}


@contextmanager
def foreign(door: Served) -> Iterator[int]:
    """Serve a foreign page on another port of this machine."""
    page = FOREIGN.replace("DOOR", door.base).encode()

    class Handler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            """Give the page."""
            self.send_response(200)
            self.send_header("Content-Type", "text/html")
            self.end_headers()
            self.wfile.write(page)

        def log_message(self, *_: object) -> None:
            """Say nothing."""

    server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    try:
        yield server.server_address[1]
    finally:
        server.shutdown()
        thread.join()
        server.server_close()


@pytest.fixture(scope="module")
def place(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Served, BrowserContext, int]]:
    """A door with its window open, and a foreign server; foreign names lead to this machine."""
    folder: Path = tmp_path_factory.mktemp("foreign")
    with lived_in(folder):
        pass
    names = "--host-resolver-rules=MAP *.example 127.0.0.1"
    with served(folder) as door, foreign(door) as port, chromium(names) as browser:
        context = browser.new_context()
        context.new_page().goto(door.address)
        yield door, context, port
        context.close()


def _named(door: Served) -> str:
    return rooms(door.door.books["mine"])[0].name


@pytest.mark.asvs("V3.4.2", "V3.5.8")
@pytest.mark.parametrize("host", ["127.0.0.1", "kites.example"])
def test_a_foreign_script_reads_and_changes_nothing(
    place: tuple[Served, BrowserContext, int], host: str
) -> None:
    """Also from another port of this machine, to which the browser sends the session along."""
    door, context, port = place
    page = context.new_page()
    page.goto(f"http://{host}:{port}/")
    for what, script in TRIES.items():
        got = page.evaluate(f"{script.replace('DOOR', door.base)}.catch(() => '')")
        assert got == "", what
    assert page.frames[1].locator("text=Room 12").count() == 0
    assert _named(door) == "Room 12, the kite club"
    page.close()


@pytest.mark.asvs("V3.5.1")
@pytest.mark.parametrize("host", ["127.0.0.1", "kites.example"])
@pytest.mark.parametrize("form", ["name", "plain", "away"])
def test_a_foreign_form_changes_nothing(
    place: tuple[Served, BrowserContext, int], host: str, form: str
) -> None:
    """It is told that it comes from another page, or that no session is open."""
    door, context, port = place
    page = context.new_page()
    page.goto(f"http://{host}:{port}/")
    with page.expect_navigation():
        page.evaluate(f"document.getElementById('{form}').submit()")
    assert "another page" in page.content()
    assert _named(door) == "Room 12, the kite club"
    page.close()


def test_a_foreign_name_that_leads_to_this_machine_shows_nothing(
    place: tuple[Served, BrowserContext, int],
) -> None:
    """DNS rebinding: the name is not ours, whatever it leads to."""
    door, context, _ = place
    page = context.new_page()
    port = door.base.rsplit(":", 1)[1]
    answer = page.goto(f"http://kites.example:{port}/mine/1/week")
    assert answer is not None
    assert answer.status == 421
    assert "Room 12" not in page.content()
    page.close()


def test_the_own_window_still_works(place: tuple[Served, BrowserContext, int]) -> None:
    """What is refused above is refused for what it is, and not always."""
    door, context, _ = place
    page = context.new_page()
    page.goto(f"{door.base}/mine/1/week")
    assert "Room 12" in page.content()
    page.close()
