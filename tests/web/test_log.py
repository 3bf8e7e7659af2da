"""The log has methods, patterns of addresses, codes and times: no name, no answer, no secret."""

import logging
from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.web.app import app
from onewhole.web.ask import Ask, Shown
from onewhole.web.handling import Way
from onewhole.web.routes import WAYS
from tests.kit.doors import Opened
from tests.kit.raw_asks import ask_raw
from tests.kit.rounds import address, lived_in

MARKED = "Zanzibarkite"


@pytest.fixture
def lived(tmp_path: Path) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path) as door:
        yield door


def test_no_name_and_no_answer_is_logged(lived: Opened, caplog: pytest.LogCaptureFixture) -> None:
    """Every row is walked with a marked word in every field and place: it is nowhere in the log."""
    with caplog.at_level(logging.DEBUG, logger="onewhole"):
        named = lived.post("/mine/1/class/names", code="K05", name=MARKED)
        written = lived.post("/mine/1/night/3/marking/keep", cells=f'[["K05", "1", "{MARKED}", ""]]')
        assert (named.status, written.status) == (303, 200)
        for way in WAYS:
            for places in ({}, {"code": MARKED, "label": MARKED, "work": MARKED, "file": MARKED}):
                where = address(way, **places)
                if way.method == "GET":
                    lived.client.get(where, params={"did": MARKED, "of": MARKED})
                elif not way.path.startswith("/demo"):
                    lived.client.post(
                        where,
                        data={"seal": lived.seal, **dict.fromkeys(way.takes, MARKED)},
                        files={name: (MARKED, MARKED.encode()) for name in way.files} or None,
                        headers=lived.origin,
                    )
    logged = caplog.text
    assert logged.count("GET /{book}/{room:int}/class 200") == 2
    for secret in (MARKED, lived.seal, lived.client.cookies[lived.gate.cookie], "K05", "Box Kite"):
        assert secret not in logged
    assert "fault" not in logged


def _torn(ask: Ask) -> Shown:
    name = ask.query["name"]
    try:
        raise KeyError(name)
    except KeyError as first:
        raise ValueError(f"nobody thought of {name}") from first


def _unwritten(ask: Ask) -> Shown:
    return Shown("work.html", {"work": ask.query["name"]})


@pytest.mark.parametrize("page", [_torn, _unwritten])
def test_a_fault_is_logged_by_its_place(
    lived: Opened, caplog: pytest.LogCaptureFixture, page: object
) -> None:
    """Its kind and its place in the code; its words, which may hold a name, are not logged nor shown."""
    ways = (Way("GET", "/torn", _torn if page is _torn else _unwritten),)
    heads = [
        ("host", "127.0.0.1:8000"),
        ("cookie", f"{lived.gate.cookie}={lived.client.cookies[lived.gate.cookie]}"),
    ]
    served = app(lived.door, lived.gate, ways)
    with caplog.at_level(logging.DEBUG):
        came = ask_raw(served, "GET", "/torn", heads, query=f"name={MARKED}")
    assert (came.status, MARKED in came.text) == (500, False)
    assert "what was kept before is kept" in came.text
    (fault,) = [one for one in caplog.records if one.levelno == logging.ERROR]
    assert fault.getMessage().startswith("fault ")
    assert " at " in fault.getMessage()
    assert fault.exc_info is None
    assert MARKED not in caplog.text
