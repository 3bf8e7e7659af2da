"""From HTTP to a page function and back: reads the form, checks the CSRF token, writes the response."""

import json
import logging
import time
from collections.abc import Callable, Iterable, Mapping
from hmac import compare_digest
from http import HTTPStatus
from pathlib import Path
from typing import assert_never
from urllib.parse import quote

from anyio.to_thread import run_sync
from msgspec import Struct
from msgspec.structs import replace
from starlette.requests import Request
from starlette.responses import FileResponse, HTMLResponse, JSONResponse, RedirectResponse, Response

from onewhole.desk.classes.class_records import NotThere, StoreRefused, class_names
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.errors import InputError, OnewholeError
from onewhole.web.app import MINE, App
from onewhole.web.http.addresses import Addresses
from onewhole.web.http.forms import NotRead, SubmittedForm, read_form
from onewhole.web.http.request import PageRequest
from onewhole.web.http.request_store import FileUse, RequestStore
from onewhole.web.http.response import (
    Content,
    FileContent,
    HtmlPage,
    Json,
    PageResponse,
    Redirect,
    refused_status,
)
from onewhole.web.http.templates import rendered

#: The most bytes of a form; a route that takes files has its own limit.
MAX_FORM_BYTES = 512 * 1024
#: A form must arrive within the first number of seconds, a file within the second.
FORM_SECONDS, FILE_SECONDS = 30, 300
#: The largest number that an address may hold; the store has none above it.
_LARGEST = 2**31

_log = logging.getLogger("onewhole.web")

PageFunction = Callable[[PageRequest], PageResponse]


class PageRoute(Struct, frozen=True):
    """A row of the route table: method, address pattern, page function, and what its form has.

    ``fields`` and ``files`` name what its form has; ``max_bytes`` is how much may be sent, and ``most_files``
    how many files of one name; ``use`` is how it uses the class file.
    """

    method: str
    path: str
    handler: PageFunction
    fields: tuple[str, ...] = ()
    files: tuple[str, ...] = ()
    max_bytes: int = MAX_FORM_BYTES
    most_files: int = 1
    use: FileUse = FileUse.SNAPSHOT

    @property
    def name(self) -> str:
        """Return its name in the log: method and address pattern, without the values in the address."""
        return f"{self.method} {self.path}"

    @property
    def page(self) -> str:
        """Return the name of its page function: ``marking.look``."""
        return f"{self.handler.__module__.rpartition('.')[2]}.{self.handler.__name__}"


class PageMount(Struct, frozen=True):
    """Rows of the route table under one prefix."""

    prefix: str
    routes: tuple["PageRoute | PageMount", ...]


def whole_routes(rows: Iterable[PageRoute | PageMount], prefix: str = "") -> tuple[PageRoute, ...]:
    """Return the rows of a table one by one, each with its whole address pattern."""
    found: list[PageRoute] = []
    for row in rows:
        match row:
            case PageRoute():
                found.append(replace(row, path=prefix + row.path))
            case PageMount(more, routes):
                found += whole_routes(routes, prefix + more)
            case _:
                assert_never(row)
    return tuple(found)


def has_csrf_token(http_request: Request, form: SubmittedForm) -> bool:
    """Say whether a form or its header carries the CSRF token of its session."""
    csrf_token = str(http_request.scope["csrf_token"])
    sent = http_request.headers.get("x-csrf-token") or dict(form.fields).get("csrf_token", "")
    return bool(csrf_token) and compare_digest(sent.encode(), csrf_token.encode())


async def respond(route: PageRoute, app: App, addresses: Addresses, http_request: Request) -> Response:
    """Answer a request by its page function. A refusal is shown with what to do next; a fault is logged."""
    began = time.perf_counter()
    try:
        request = await _asked(route, app, addresses, http_request)
        response = await run_sync(_paged, route, http_request, request)
    except NotRead as no:
        response = refused_form(http_request, no)
    milliseconds = round((time.perf_counter() - began) * 1000)
    _log.info("%s %s %d ms", route.name, response.status_code, milliseconds)
    return response


def _paged(route: PageRoute, http_request: Request, request: PageRequest) -> Response:
    try:
        with request.store:
            response = _response(request, route.handler(request))
            if response.status_code >= 400:
                raise _NothingKept(response)
    except _NothingKept as told:
        return told.response
    except OnewholeError as refused:
        return refusal(http_request, request, refused)
    return response


class _NothingKept(Exception):
    """A page function refused by the page it gave: nothing that it changed is kept."""

    def __init__(self, response: Response) -> None:
        super().__init__()
        self.response = response


async def _asked(route: PageRoute, app: App, addresses: Addresses, http_request: Request) -> PageRequest:
    if any(isinstance(part, int) and part > _LARGEST for part in http_request.path_params.values()):
        raise NotRead(404, "There is no such page", "Go back to the Week.")
    form = SubmittedForm(())
    if route.method == "POST":
        seconds = FILE_SECONDS if route.files else FORM_SECONDS
        form = await read_form(
            http_request,
            most=route.max_bytes,
            files=route.files,
            seconds=seconds,
            most_files=route.most_files,
        )
        if not has_csrf_token(http_request, form):
            raise NotRead(403, "This form is too old", "Load the page again; nothing was changed.")
    return PageRequest(
        app,
        dict(http_request.path_params),
        RequestStore(app.books, route.use),
        addresses,
        dict(http_request.query_params),
        form.fields,
        form.files,
        str(http_request.scope["csrf_token"]),
        http_request.url.path,
        tuple(http_request.query_params.multi_items()),
    )


def _response(request: PageRequest, answer: PageResponse) -> Response:
    match answer:
        case HtmlPage(template, words, status):
            return HTMLResponse(rendered(template, {**_everywhere(request, words), **words}), status)
        case Json(content, status):
            # ASCII, so that a lone surrogate that was refused can be sent back as it came.
            return Response(
                json.dumps(dict(content), separators=(",", ":")), status, media_type="application/json"
            )
        case Redirect(to):
            if not to.startswith("/") or to.startswith(("//", "/\\")):
                raise InputError("This address is not one of ours", remedy="Go back to the Week.")
            return RedirectResponse(to, 303)
        case Content(content, kind, name, policy, in_tab):
            headers = _named(name, in_tab=in_tab) | ({"Content-Security-Policy": policy} if policy else {})
            return Response(content, media_type=kind, headers=headers)
        case FileContent(path, kind, name, in_tab):
            if not path.is_file():
                raise NotThere("This file is not there any more", remedy="Make it again.")
            return FileResponse(path, media_type=kind, headers=_named(name, in_tab=in_tab))
        case _:
            assert_never(answer)


def _named(name: str, *, in_tab: bool) -> dict[str, str]:
    """Say under which name a file is saved, at once or from its tab (RFC 6266, RFC 8187)."""
    if not name:
        return {}
    plain, how = Path(name).name, "inline" if in_tab else "attachment"
    return {"Content-Disposition": f"{how}; filename*=UTF-8''{quote(plain, safe='')}"}


def _everywhere(request: PageRequest, words: Mapping[str, object]) -> dict[str, object]:
    """Return the values that every template has; a page says itself that its class is gone."""
    room = request.room if "room" in request.path_params and "room" not in words else None
    classes = class_names(request.book) if room else ()
    app, name = request.app, request.book_name
    damages = app.checks.damages(name, app.books[name], app.jobs) if room else 0
    return {
        "request": request,
        "at": request.at,
        "room": room,
        "classes": classes,
        "damages": damages,
        "csrf_token": request.csrf_token,
        "demo": request.is_demo,
        "signs_in": request.app.signs_in,
        "stops": request.app.stop is not None,
        "jobs": request.app.jobs.under_way(),
        "today": request.app.today(),
    }


def wants_json(http_request: Request) -> bool:
    """Say whether one of our scripts asks."""
    return "application/json" in http_request.headers.get("accept", "")


def refusal(http_request: Request, request: PageRequest, refused: OnewholeError) -> Response:
    """Tell what was refused, where, and what to do next."""
    status = refused_status(refused)
    if wants_json(http_request):
        content = {"refused": refused.what, "where": refused.where or "", "remedy": refused.remedy or ""}
        if isinstance(refused, ChangedMeanwhile):
            content["stands"] = refused.stands
        return JSONResponse(content, status)
    words: Mapping[str, object] = {
        "what": refused.what,
        "where": refused.where or "",
        "remedy": refused.remedy or "",
        "damaged": isinstance(refused, StoreRefused),
        "missing": isinstance(refused, NotThere),
        "demo": http_request.path_params.get("book") == "demo",
        "backups_at": request.at("keep.look", book=MINE),
        "at": request.at,
        "today": request.app.today(),
    }
    return HTMLResponse(rendered("refused.html", words), status)


def refused_form(http_request: Request, no: NotRead) -> Response:
    """Tell why a request was not read; one that does not say how long it is ends its connection."""
    closes = {"Connection": "close"} if no.status_code == HTTPStatus.LENGTH_REQUIRED else None
    if wants_json(http_request):
        return JSONResponse({"refused": no.detail, "where": "", "remedy": ""}, no.status_code, closes)
    words = {
        "what": no.what,
        "where": "",
        "remedy": no.remedy,
        "damaged": False,
        "missing": no.status_code == 404,
        "demo": False,
        "backups_at": "",
    }
    return HTMLResponse(rendered("refused.html", words), no.status_code, closes)
