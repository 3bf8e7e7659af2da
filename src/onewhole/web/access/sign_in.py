"""Signing in with the password, and out: only where the door can be reached from other machines."""

from collections.abc import Awaitable, Callable
from math import ceil
from pathlib import Path

from anyio import Lock
from anyio.to_thread import run_sync
from starlette.requests import Request
from starlette.responses import HTMLResponse, RedirectResponse, Response
from starlette.routing import BaseRoute, Route

from onewhole.desk.keep.password import PasswordRefused, is_password
from onewhole.web.access.guard import Access
from onewhole.web.access.rate_limit import RateLimit
from onewhole.web.access.security_log import log_sign_in, log_sign_out
from onewhole.web.http.forms import NotRead, read_form
from onewhole.web.http.handling import has_csrf_token, refused_form
from onewhole.web.http.templates import rendered

_MOST, _SECONDS = 4096, 10


def sign_in_routes(access: Access, path: Path, tries: RateLimit) -> list[BaseRoute]:
    """Return the addresses for signing in to the file of a class and out again."""
    return [
        Route("/sign-in", _asker(access), methods=["GET"]),
        Route("/sign-in", _signer(access, path, tries), methods=["POST"]),
        Route("/sign-out", _leaver(access), methods=["POST"]),
    ]


def set_session(answer: Response, access: Access, cookie: str) -> None:
    """Hand a session to the browser: no script sees it, no other site sends it."""
    answer.set_cookie(access.cookie, cookie, httponly=True, samesite="strict", secure=access.secure, path="/")


def _page(refused: str = "", status: int = 200, wait: int = 0) -> Response:
    headers = {"Retry-After": str(wait)} if wait else None
    return HTMLResponse(rendered("sign_in.html", {"demo": False, "refused": refused}), status, headers)


def _asker(_gate: Access) -> Callable[[Request], Awaitable[Response]]:
    async def asker(request: Request) -> Response:
        return RedirectResponse("/", 303) if request.scope["csrf_token"] else _page()

    return asker


def _signer(access: Access, path: Path, tries: RateLimit) -> Callable[[Request], Awaitable[Response]]:
    one_at_a_time = Lock()  # a hash takes 64 MiB

    async def signer(request: Request) -> Response:
        # A foreign page could sign a browser in; every browser tells where a form comes from.
        if request.headers.get("origin") not in access.origins:
            return _page("This form comes from another page. Sign in here.", 403)
        try:
            form = await read_form(request, most=_MOST, files=(), seconds=_SECONDS)
        except NotRead as no:
            return refused_form(request, no)
        address = request.client.host if request.client else ""
        wait = ceil(tries.wait(address))
        if wait:
            log_sign_in("too soon", address)
            return _page(f"That was tried too often. Wait {_long(wait)}, then try again.", 429, wait)
        try:
            async with one_at_a_time:
                right = await run_sync(is_password, path, dict(form.fields).get("password", ""))
        except PasswordRefused as refused:
            return _page(str(refused), 503)
        log_sign_in("right" if right else "wrong", address)
        if not right:
            return _page("This is not the password. Try again.", 403)
        tries.right(address)
        access.sessions.ended(access.cookie_of(request.headers))
        answer = RedirectResponse("/", 303)
        set_session(answer, access, access.sessions.begun())
        return answer

    return signer


def _leaver(access: Access) -> Callable[[Request], Awaitable[Response]]:
    async def leaver(request: Request) -> Response:
        try:
            form = await read_form(request, most=_MOST, files=(), seconds=_SECONDS)
        except NotRead as no:
            return refused_form(request, no)
        if not has_csrf_token(request, form):
            return refused_form(request, NotRead(403, "This form is too old"))
        access.sessions.ended(access.cookie_of(request.headers))
        log_sign_out(request.client.host if request.client else "")
        answer = RedirectResponse("/sign-in", 303)
        answer.delete_cookie(access.cookie, path="/", secure=access.secure, httponly=True, samesite="strict")
        answer.headers["Clear-Site-Data"] = '"cache", "storage"'
        return answer

    return leaver


def _long(seconds: int) -> str:
    """Return a wait in words.

    >>> _long(1), _long(59), _long(61)
    ('1 second', '59 seconds', '2 minutes')
    """
    count, unit = (seconds, "second") if seconds < 60 else (ceil(seconds / 60), "minute")
    return f"{count} {unit}{'s' if count > 1 else ''}"
