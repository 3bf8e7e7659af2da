"""A request is one transaction: pages see one moment, and what is told as kept was on the disk before."""

import json
import sqlite3
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import event
from starlette.testclient import TestClient
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from onewhole.desk.classes.class_list import rename
from onewhole.desk.classes.class_records import Store, open_book
from onewhole.desk.marking.cells import Change, keep_cells
from onewhole.desk.marking.grid import grid
from onewhole.store.settings import set_setting, setting
from onewhole.web.asgi import asgi_app
from onewhole.web.http.handling import PageRoute
from onewhole.web.http.request import PageRequest
from onewhole.web.http.request_store import FileUse
from onewhole.web.http.response import HtmlPage
from onewhole.web.jobs import Jobs
from onewhole.web.routes import TABLE
from tests.kit.doors import NOW, Opened, opened
from tests.kit.invented import lay_invented_class
from tests.kit.rounds import address
from tests.kit.routes import ROUTES
from tests.kit.statements_counted import counted

#: Of a night that was handed in.
KEEP, LABEL = "/mine/1/night/9/marking/keep", "3"


@pytest.fixture
def door(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Opened]:
    """A door on the invented class, every night read and the file checked; nothing works ahead."""
    monkeypatch.setattr(Jobs, "prefetch", lambda *_: None)
    monkeypatch.setattr(Jobs, "prefetch_when_quiet", lambda *_: None)
    lay_invented_class(tmp_path, NOW, read=True)
    with opened(tmp_path) as made:
        made.door.checks.look_again("mine", made.door.books["mine"])
        yield made


def _book(door: Opened) -> Store:
    return door.door.books["mine"]


def _cell(book: Store) -> str:
    return grid(book, 1, 9).rows[2].cells[2].text


def _one_cell(was: str, text: str) -> str:
    return json.dumps([["K03", LABEL, text, was]])


def test_keeping_one_cell_is_six_statements_in_one_transaction(door: Opened) -> None:
    """Class, page, pupil, cell, the writing, and how cells are read; it was ten in seven."""
    book = _book(door)
    was = _cell(book)
    with counted(book) as count:
        came = door.post(KEEP, cells=_one_cell(was, "7 1/2"))
    assert [one["text"] for one in json.loads(came.text)["kept"]] == ["7 1/2"]
    assert len(count.statements) <= 6, count.statements
    assert (count.begun, count.committed) == (1, 1)
    assert _cell(book) == "7 1/2"


def test_a_column_costs_no_more_for_a_whole_class(door: Opened) -> None:
    """Twenty-four cells are looked at together and written together, and once whose papers are waited for."""
    with counted(_book(door)) as count:
        came = door.post("/mine/1/night/9/marking/column", label="3", wrong="K01", over="yes")
    assert came.status == 200
    assert len(count.statements) <= 9, count.statements
    assert (count.begun, count.committed) == (1, 1)


@pytest.mark.parametrize(
    "route",
    [one for one in ROUTES if one.method == "GET" and one.path.startswith("/{book}/{room:int}/")],
    ids=lambda route: route.path,
)
def test_a_page_is_read_in_one_transaction(door: Opened, route: PageRoute) -> None:
    """However much is read, and also where something of it is not there."""
    with counted(_book(door)) as count:
        came = door.get(address(route))
    assert came.status in {200, 404, 422}
    assert count.begun == 1, count.statements


def test_a_page_shows_one_moment(door: Opened) -> None:
    """Another window names the class and writes a cell while the page is put together: both show, or none."""
    other = open_book(_book(door).path)
    was = _cell(other)

    def meanwhile(_statement: str) -> None:
        count.after = lambda _statement: None
        rename(other, 1, "Renamed meanwhile")
        keep_cells(other, 1, 9, [Change("K03", LABEL, "77 7/9", was)], now=NOW, by="t")

    with counted(_book(door)) as count:
        count.after = meanwhile
        shown = door.get("/mine/1/night/9/marking").text
    assert _cell(other) == "77 7/9"
    assert ("Renamed meanwhile" in shown, "77 7/9" in shown) == (False, False)
    later = door.get("/mine/1/night/9/marking").text
    assert ("Renamed meanwhile" in later, "77 7/9" in later) == (True, True)
    other.close()


def test_it_is_on_the_disk_before_the_reply_begins(door: Opened) -> None:
    """Commit first, then the first byte: a program that is killed between them has told nothing."""
    book, order = _book(door), list[str]()

    def listened(app: ASGIApp) -> ASGIApp:
        async def listening(scope: Scope, receive: Receive, send: Send) -> None:
            async def sending(message: Message) -> None:
                order.append(message["type"])
                await send(message)

            await app(scope, receive, sending)

        return listening

    client = TestClient(listened(asgi_app(door.door, door.access)), base_url="http://127.0.0.1:8000")
    client.cookies.update(door.client.cookies)
    was = _cell(book)
    event.listen(book.engine, "commit", lambda _connection: order.append("commit"))
    sent = {"csrf_token": door.csrf_token, "cells": _one_cell(was, "7 1/2")}
    assert client.post(KEEP, data=sent, headers=door.origin).json()["kept"]
    assert order == ["commit", "http.response.start", "http.response.body"]


def test_a_disk_that_does_not_take_it_at_the_end_is_told(door: Opened) -> None:
    """The page function is done, the commit fails: refused, and nothing is kept."""
    book = _book(door)
    was = _cell(book)

    def full(_connection: object) -> None:
        raise sqlite3.OperationalError("database or disk is full")

    event.listen(book.engine, "commit", full)
    came = door.post(KEEP, cells=_one_cell(was, "7 1/2"))
    event.remove(book.engine, "commit", full)
    assert came.status == 503
    assert "The disk is full" in came.text
    assert _cell(book) == was


@pytest.mark.asvs("V2.3.3", "V16.5.3")
@pytest.mark.parametrize(("status", "kept"), [(200, "red"), (422, None)])
def test_a_page_that_refuses_keeps_nothing(door: Opened, status: int, kept: str | None) -> None:
    """Also where the page function had written already, and gives its page again with what is wrong."""

    def half(request: PageRequest) -> HtmlPage:
        set_setting(request.book, "kite", "red")
        return HtmlPage("demo_away.html", status=status)

    routes = (*TABLE, PageRoute("POST", "/half", half, use=FileUse.TRANSACTION))
    client = TestClient(asgi_app(door.door, door.access, routes), base_url="http://127.0.0.1:8000")
    client.cookies.update(door.client.cookies)
    came = client.post("/half", data={"csrf_token": door.csrf_token}, headers=door.origin)
    assert came.status_code == status
    assert setting(_book(door), "kite") == kept
