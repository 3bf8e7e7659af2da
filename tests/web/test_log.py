"""The log has methods, patterns of addresses, codes and times: no name, no answer, no secret."""

import logging
from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import room
from onewhole.web.asgi import asgi_app
from onewhole.web.http.handling import PageRoute
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage
from tests.kit.doors import Opened
from tests.kit.how_much import sample
from tests.kit.raw_asks import ask_raw
from tests.kit.rounds import address, lived_in
from tests.kit.routes import ROUTES

MARKED = "Zanzibarkite"
#: What stands in the places of an address: the word, and in CI what is there as well.
IN_PLACES = {"code": MARKED, "label": MARKED, "job": MARKED, "file": MARKED}
PLACES: tuple[dict[str, str], ...] = sample((IN_PLACES,), ({}, IN_PLACES))


@pytest.fixture
def lived(tmp_path: Path) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path) as door:
        yield door


@pytest.mark.more("web/test_privacy_round.py")
@pytest.mark.slow
@pytest.mark.asvs("V14.2.1", "V14.2.4", "V16.2.5", "V16.4.1")
def test_no_name_and_no_answer_is_logged(lived: Opened, caplog: pytest.LogCaptureFixture) -> None:
    """Every row is walked with a marked word in every field and place: it is nowhere in the log."""
    with caplog.at_level(logging.DEBUG, logger="onewhole"):
        saw = room(lived.door.books["mine"], 1).pupil("K05").name or ""
        named = lived.post("/mine/1/class/names", code="K05", name=MARKED, saw=saw)
        written = lived.post("/mine/1/night/3/marking/keep", cells=f'[["K05", "1", "{MARKED}", ""]]')
        assert (named.status, written.status) == (303, 200)
        for route in ROUTES:
            for places in PLACES:
                where = address(route, **places)
                if route.method == "GET":
                    lived.client.get(where, params={"did": MARKED, "of": MARKED})
                elif not route.path.startswith("/demo"):
                    lived.client.post(
                        where,
                        data={"csrf_token": lived.csrf_token, **dict.fromkeys(route.fields, MARKED)},
                        files={name: (MARKED, MARKED.encode()) for name in route.files} or None,
                        headers=lived.origin,
                    )
    logged = caplog.text
    assert logged.count("GET /{book}/{room:int}/class 200") == len(PLACES)
    for secret in (MARKED, lived.csrf_token, lived.client.cookies[lived.access.cookie], "K05", "Box Kite"):
        assert secret not in logged
    assert "fault" not in logged


def _torn(request: PageRequest) -> HtmlPage:
    name = request.query["name"]
    try:
        raise KeyError(name)
    except KeyError as first:
        raise ValueError(f"nobody thought of {name}") from first


def _unwritten(request: PageRequest) -> HtmlPage:
    return HtmlPage("job.html", {"job": request.query["name"]})


@pytest.mark.asvs("V13.4.2", "V16.3.4", "V16.5.1", "V16.5.4")
@pytest.mark.parametrize("page", [_torn, _unwritten])
def test_a_fault_is_logged_by_its_place(
    lived: Opened, caplog: pytest.LogCaptureFixture, page: object
) -> None:
    """Its kind and its place in the code; its words, which may hold a name, are not logged nor shown."""
    routes = (PageRoute("GET", "/torn", _torn if page is _torn else _unwritten),)
    heads = [
        ("host", "127.0.0.1:8000"),
        ("cookie", f"{lived.access.cookie}={lived.client.cookies[lived.access.cookie]}"),
    ]
    served = asgi_app(lived.door, lived.access, routes)
    with caplog.at_level(logging.DEBUG):
        came = ask_raw(served, "GET", "/torn", heads, query=f"name={MARKED}")
    assert (came.status, MARKED in came.text) == (500, False)
    assert "what was kept before is kept" in came.text
    (fault,) = [one for one in caplog.records if one.levelno == logging.ERROR]
    assert fault.getMessage().startswith("fault ")
    assert " at " in fault.getMessage()
    assert fault.exc_info is None
    assert MARKED not in caplog.text
