"""The ASGI application: the guard around the routes and the static files."""

from collections.abc import Awaitable, Callable, Iterator, Sequence
from typing import assert_never

from msgspec.structs import replace
from starlette.applications import Starlette
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import Response
from starlette.routing import BaseRoute, Mount, Route
from starlette.types import ASGIApp

from onewhole.desk.keep.error_location import error_location
from onewhole.web.access.guard import Access, Guard
from onewhole.web.access.login_link import login_link_routes
from onewhole.web.app import App
from onewhole.web.http.addresses import Addresses
from onewhole.web.http.handling import PageMount, PageRoute, respond, whole_routes
from onewhole.web.http.refusal_page import refusal_page
from onewhole.web.http.static_files import static_routes
from onewhole.web.routes import TABLE


def asgi_app(
    app: App,
    access: Access,
    routes: Sequence[PageRoute | PageMount] = TABLE,
    *,
    entry: Sequence[BaseRoute] | None = None,
) -> ASGIApp:
    """Return the application. Only addresses in the route table exist.

    ``entry`` are the routes that open a session; left out, the one-time login link.
    """
    addresses = Addresses.of((one.page, one.path) for one in whole_routes(routes))
    inner = Starlette(
        routes=[
            *(login_link_routes(access) if entry is None else entry),
            *_routes(routes, app, addresses),
            *static_routes(),
        ],
        exception_handlers={HTTPException: _not_there, Exception: _fault},
    )
    return Guard(inner, access)


def _routes(
    rows: Sequence[PageRoute | PageMount], app: App, addresses: Addresses, prefix: str = ""
) -> Iterator[BaseRoute]:
    for row in rows:
        match row:
            case PageRoute(method, path):
                whole = replace(row, path=prefix + path)
                yield Route(path, _endpoint(whole, app, addresses), methods=[method], name=row.page)
            case PageMount(more, routes):
                yield Mount(more, routes=list(_routes(routes, app, addresses, prefix + more)))
            case _:
                assert_never(row)


def _endpoint(route: PageRoute, app: App, addresses: Addresses) -> Callable[[Request], Awaitable[Response]]:
    async def endpoint(request: Request) -> Response:
        return await respond(route, app, addresses, request)

    return endpoint


async def _not_there(request: Request, error: Exception) -> Response:
    assert isinstance(error, HTTPException)
    what, remedy = error.detail, ""
    if error.status_code == 404:
        what, remedy = "There is no such page.", "Go back to the Week."
    elif error.status_code == 405:
        what, remedy = "This is not done here.", "Nothing was changed."
    return refusal_page(request.headers, error.status_code, what, remedy, headers=error.headers)


async def _fault(request: Request, error: Exception) -> Response:
    what = "This is a fault of the program; what was kept before is kept."
    return refusal_page(request.headers, 500, what, f"Go back and try again. ({error_location(error)})")
