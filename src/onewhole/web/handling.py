"""From a request to a page and back: reads the form within its limits, checks its seal, writes the answer."""

import json
import logging
import time
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from hmac import compare_digest
from pathlib import Path
from typing import assert_never
from urllib.parse import quote

from anyio.to_thread import run_sync
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import FileResponse, HTMLResponse, JSONResponse, RedirectResponse, Response

from onewhole.desk.classes.class_records import NotThere, StoreRefused
from onewhole.errors import InputError, OnewholeError
from onewhole.web.ask import Answer, Ask, Given, Lent, Shown, Told, Went
from onewhole.web.door import Door
from onewhole.web.forms import Form, form_of
from onewhole.web.templates import rendered

#: A form is this long at most, in bytes; a way that takes files says another number.
FORM = 512 * 1024
#: A form comes in within so many seconds, a file within so many.
FORM_SECONDS, FILE_SECONDS = 30, 300
#: The largest number that an address may hold; the store has none above it.
_LARGEST = 2**31

_log = logging.getLogger("onewhole.web")

Page = Callable[[Ask], Answer]


@dataclass(frozen=True, slots=True)
class Way:
    """A row of the table of contents: method, address, page, and what its form takes.

    ``takes`` are the fields, ``files`` the files. ``most`` is how many bytes may be sent.
    """

    method: str
    path: str
    page: Page
    takes: tuple[str, ...] = ()
    files: tuple[str, ...] = ()
    most: int = FORM

    @property
    def name(self) -> str:
        """Return what the log calls it: method and the pattern of the address, without what stands in it."""
        return f"{self.method} {self.path}"


def sealed(request: Request, form: Form) -> bool:
    """Say whether a form carries the seal of the session that it comes in."""
    seal = str(request.scope["seal"])
    sent = request.headers.get("x-seal") or dict(form.fields).get("seal", "")
    return bool(seal) and compare_digest(sent.encode(), seal.encode())


async def answered(way: Way, door: Door, request: Request) -> Response:
    """Answer a request by a page. What the page refuses is told with what to do next; a fault is logged."""
    began = time.perf_counter()
    try:
        ask = await _asked(way, door, request)
        response = await run_sync(_paged, way, door, request, ask)
    except HTTPException as no:
        response = refused_form(request, no)
    milliseconds = round((time.perf_counter() - began) * 1000)
    _log.info("%s %s %d ms", way.name, response.status_code, milliseconds)
    return response


def _paged(way: Way, door: Door, request: Request, ask: Ask) -> Response:
    try:
        return _response(ask, way.page(ask))
    except OnewholeError as refused:
        return refusal(request, door, refused)


async def _asked(way: Way, door: Door, request: Request) -> Ask:
    if any(isinstance(part, int) and part > _LARGEST for part in request.path_params.values()):
        raise HTTPException(404, "There is no such page. Go back to the Week.")
    form = Form((), {})
    if way.method == "POST":
        seconds = FILE_SECONDS if way.files else FORM_SECONDS
        form = await form_of(request, most=way.most, files=way.files, seconds=seconds)
        if not sealed(request, form):
            words = "This form is too old. Load the page again; nothing was changed."
            raise HTTPException(403, words)
    return Ask(
        door,
        dict(request.path_params),
        dict(request.query_params),
        form.fields,
        form.files,
        str(request.scope["seal"]),
        request.url.path,
    )


def _response(ask: Ask, answer: Answer) -> Response:
    match answer:
        case Shown(template, words, status):
            return HTMLResponse(rendered(template, {**_everywhere(ask), **words}), status)
        case Told(content, status):
            # In ASCII, so that half a sign that was refused can be told as it was sent.
            return Response(
                json.dumps(dict(content), separators=(",", ":")), status, media_type="application/json"
            )
        case Went(to):
            if not to.startswith("/") or to.startswith(("//", "/\\")):
                raise InputError("This address is not one of ours", remedy="Go back to the Week.")
            return RedirectResponse(to, 303)
        case Given(content, kind, name, policy):
            headers = _saved(name) | ({"Content-Security-Policy": policy} if policy else {})
            return Response(content, media_type=kind, headers=headers)
        case Lent(path, kind, name):
            if not path.is_file():
                raise NotThere("This file is not there any more", remedy="Make it again.")
            return FileResponse(path, media_type=kind, headers=_saved(name))
        case _:
            assert_never(answer)


def _saved(name: str) -> dict[str, str]:
    """Say that a file is to be saved under a name (RFC 6266, RFC 8187)."""
    if not name:
        return {}
    plain = Path(name).name
    return {"Content-Disposition": f"attachment; filename*=UTF-8''{quote(plain, safe='')}"}


def _everywhere(ask: Ask) -> dict[str, object]:
    """Return the words that every template has."""
    room = ask.room if "room" in ask.place else None
    return {
        "ask": ask,
        "room": room,
        "seal": ask.seal,
        "demo": ask.is_demo,
        "signs_in": ask.door.signs_in,
        "works": ask.door.works.under_way(),
        "today": ask.door.today(),
    }


def wants_json(request: Request) -> bool:
    """Say whether one of our scripts asks."""
    return "application/json" in request.headers.get("accept", "")


def refusal(request: Request, door: Door, refused: OnewholeError) -> Response:
    """Tell what was refused, where, and what to do next."""
    status = 404 if isinstance(refused, NotThere) else 503 if isinstance(refused, StoreRefused) else 422
    if wants_json(request):
        content = {"refused": refused.what, "where": refused.where or "", "remedy": refused.remedy or ""}
        return JSONResponse(content, status)
    words: Mapping[str, object] = {
        "what": refused.what,
        "where": refused.where or "",
        "remedy": refused.remedy or "",
        "damaged": isinstance(refused, StoreRefused),
        "demo": request.path_params.get("book") == "demo",
        "backups_at": "/mine/keep",
        "today": door.today(),
    }
    return HTMLResponse(rendered("refused.html", words), status)


def refused_form(request: Request, no: HTTPException) -> Response:
    """Tell why a request was not read."""
    if wants_json(request):
        return JSONResponse({"refused": no.detail, "where": "", "remedy": ""}, no.status_code)
    words = {"what": no.detail, "where": "", "remedy": "", "damaged": False, "demo": False, "backups_at": ""}
    return HTMLResponse(rendered("refused.html", words), no.status_code)
