"""The browser door assembled: guard, table of contents, what is static."""

from collections.abc import Awaitable, Callable, Sequence
from importlib.resources import files
from pathlib import Path

from starlette.applications import Starlette
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import PlainTextResponse, Response
from starlette.routing import BaseRoute, Mount, Route
from starlette.staticfiles import StaticFiles
from starlette.types import ASGIApp

from onewhole.web.door import Door
from onewhole.web.faults import place
from onewhole.web.guard import Gate, Guard
from onewhole.web.handling import Way, answered
from onewhole.web.routes import WAYS
from onewhole.web.templates import FONTS
from onewhole.web.way_in import way_in


def app(
    door: Door, gate: Gate, ways: Sequence[Way] = WAYS, *, entry: Sequence[BaseRoute] | None = None
) -> ASGIApp:
    """Return the application: what is not in the table is not there.

    ``entry`` is how one comes in; left out, by the key that is good once.
    """
    routes = [Route(way.path, _endpoint(way, door), methods=[way.method]) for way in ways]
    static = Path(str(files("onewhole.web") / "static"))
    letters = StaticFiles(packages=[(font, "files") for font in FONTS])
    inner = Starlette(
        routes=[
            *(way_in(gate) if entry is None else entry),
            *routes,
            Mount("/static", StaticFiles(directory=static)),
            Mount("/letters", letters),
        ],
        exception_handlers={HTTPException: _not_there, Exception: _fault},
    )
    return Guard(inner, gate)


def _endpoint(way: Way, door: Door) -> Callable[[Request], Awaitable[Response]]:
    async def endpoint(request: Request) -> Response:
        return await answered(way, door, request)

    return endpoint


async def _not_there(_request: Request, error: Exception) -> Response:
    assert isinstance(error, HTTPException)
    words = "There is no such page. Go back to the Week." if error.status_code == 404 else error.detail
    return PlainTextResponse(words, error.status_code, error.headers)


async def _fault(_request: Request, error: Exception) -> Response:
    words = "This is a fault of the program; what was kept before is kept. Go back and try again."
    return PlainTextResponse(f"{words} ({place(error)})", 500)
