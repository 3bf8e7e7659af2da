"""Backups are brought back while cells are kept: what was told as kept is in a file that is told."""

import json
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing, contextmanager
from pathlib import Path
from threading import Event, Semaphore

import pytest
from starlette.testclient import TestClient

from onewhole.desk.classes.class_records import open_book, set_night, start_room
from onewhole.desk.keep.backups import back_up_daily, backups_folder, backups_of
from onewhole.store.opening import open_store
from onewhole.web.asgi import asgi_app
from tests.kit.doors import NOW, Opened, opened
from tests.kit.how_much import sample
from tests.kit.kept import DAY

#: So many backups are brought back, with so many answers told as kept between two; `make walk` does more.
RESTORES, BETWEEN = sample((4, 10), (8, 10), (25, 100))
WRITERS = 4
KEEP = "/mine/1/night/1/marking/keep"


@contextmanager
def _window(door: Opened) -> Iterator[TestClient]:
    """Another window on the door, with a session of its own."""
    heads = {**door.origin, "Accept": "application/json"}
    made = asgi_app(door.door, door.access)
    with TestClient(made, base_url="http://127.0.0.1:8000", headers=heads, follow_redirects=False) as client:
        client.get(f"/open?key={door.access.sessions.new_key()}")
        seal = door.access.sessions.csrf_token(client.cookies[door.access.cookie])
        client.headers["X-CSRF-Token"] = seal or ""
        yield client


def _mark(door: Opened, code: str, kept: Semaphore, over: Event) -> list[str]:
    """Type one answer after another into a cell, each over what stands there; return those told as kept."""
    told, was, number = list[str](), "", 0
    with _window(door) as client:
        while not over.is_set():
            number += 1
            cells = json.dumps([[code, "1", text := f"{code} {number}", was]])
            came = client.post(KEEP, data={"cells": cells})
            if came.status_code != 200:
                assert came.status_code == 503, came.text
                continue
            found = came.json()
            for one in found["kept"]:
                assert one["text"] == text
                told.append(text)
                kept.release()
            was = [*found["kept"], *found["clashes"]][0]["text"]
    return told


def _texts(path: Path) -> set[str]:
    with closing(open_store(path)) as store, store.reading() as connection:
        return set(connection.exec_driver_sql("SELECT text FROM answers").scalars())


@pytest.mark.more("desk/keep/test_backups.py")
@pytest.mark.slow
def test_no_answer_falls_between_the_backup_and_the_change(tmp_path: Path) -> None:
    """Over HTTP, in as many windows as there are pupils: what was told as kept is in the file, or in one of
    the backups that were made of what stood before, and the page Keep lists these.
    """
    book = open_book(tmp_path / "room12.class")
    start_room(book, "Room 12", WRITERS, NOW)
    set_night(book, 1, "1. 5 1/8 - 2 5/8", DAY, NOW)
    saved = back_up_daily(book, backups_folder(book.path), NOW)
    book.close()
    assert saved is not None
    with opened(tmp_path) as door, ThreadPoolExecutor(WRITERS) as threads:
        over, more = Event(), Semaphore(0)
        windows = [threads.submit(_mark, door, f"K0{place + 1}", more, over) for place in range(WRITERS)]
        try:
            for _ in range(RESTORES):
                for _ in range(BETWEEN):
                    more.acquire()
                came = door.post("/mine/keep/back", file=saved.name)
                assert came.status == 303, came.text
        finally:
            over.set()  # whatever comes, the windows close
        told = [text for window in windows for text in window.result()]
        listed = door.get("/mine/keep").text
    backups = [one.path for one in backups_of(book.path)]
    assert len(backups) == RESTORES + 1
    assert all(path.name in listed for path in backups)
    kept = _texts(book.path).union(*map(_texts, backups))
    print(f"{len(told)} told as kept, {len(set(told) - kept)} of them in no file")
    assert len(told) >= RESTORES * BETWEEN
    assert set(told) <= kept
