"""The guard before every page: whom the door talks with, and what its pages may do in the browser."""

import logging
from collections.abc import Iterable
from dataclasses import dataclass
from http.cookies import CookieError, SimpleCookie

from starlette.datastructures import Headers, MutableHeaders
from starlette.responses import PlainTextResponse
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from onewhole.web.faults import place
from onewhole.web.sessions import Sessions

#: What a page of ours may load: its own scripts, styles, pictures and sounds, and nothing from elsewhere.
POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
    "media-src 'self' blob:; connect-src 'self'; frame-src 'self'; form-action 'self'; base-uri 'none'; "
    "frame-ancestors 'none'"
)
_HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "microphone=(self), camera=(), geolocation=(), display-capture=()",
}
_SAFE = frozenset({"GET", "HEAD"})
_KNOWN = _SAFE | {"POST"}
#: What may be seen without a session: the way in, and what it looks like.
OPEN = ("/open", "/sign-in")
OPEN_FOLDERS = ("/static/", "/letters/")
#: An address is this long at most, and what follows its question mark.
LONGEST_PATH, LONGEST_QUERY = 1000, 8000

_log = logging.getLogger("onewhole.web")


@dataclass(frozen=True, slots=True)
class Gate:
    """Where the door stands: the hosts it answers to, whether it speaks TLS, and its sessions.

    ``hosts`` are written as in the Host header, with the port. ``cookie`` has the port in its name, because
    a browser sends the cookies of one port to all.
    """

    hosts: frozenset[str]
    sessions: Sessions
    port: int
    secure: bool = False
    password: bool = False

    @property
    def cookie(self) -> str:
        """Return the name of the session's cookie."""
        return f"{'__Host-' if self.secure else ''}onewhole-{self.port}"

    @property
    def origins(self) -> frozenset[str]:
        """Return the origins whose forms are taken: our own."""
        return frozenset(f"{'https' if self.secure else 'http'}://{host}" for host in self.hosts)

    def cookie_of(self, headers: Headers) -> str:
        """Return the cookie that a browser sent, or an empty text."""
        jar = SimpleCookie()
        for line in headers.getlist("cookie"):
            try:
                jar.load(line)
            except CookieError:
                return ""
        return jar[self.cookie].value if self.cookie in jar else ""


class Guard:
    """Refuses what does not come from a window of ours, and writes the headers of every answer.

    A Host that is not ours: a foreign name was pointed at this machine (DNS rebinding). An Origin, or a
    Sec-Fetch-Site, that is not ours: a foreign page sends a form. No session: the address was not opened with
    its key. Source of the checks: OWASP Cross-Site Request Forgery Prevention cheat sheet, from memory.
    """

    def __init__(self, app: ASGIApp, gate: Gate) -> None:
        self.app = app
        self.gate = gate

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer a request, or refuse it."""
        if scope["type"] == "lifespan":
            await self.app(scope, receive, send)
            return
        if scope["type"] != "http":
            return
        headers = Headers(scope=scope)
        refused = self._refusal(scope, headers)
        if refused is not None:
            await refused(scope, receive, _with_headers(send))
            return
        seal = self.gate.sessions.seal(self.gate.cookie_of(headers))
        scope["seal"] = seal or ""
        if seal is None and scope["path"] not in OPEN and not scope["path"].startswith(OPEN_FOLDERS):
            await self._no_session(scope, receive, _with_headers(send))
            return
        try:
            await self.app(scope, receive, _with_headers(send))
        except Exception as fault:  # noqa: BLE001 - the server would print it, and what was typed with it
            _log.error("fault %s", place(fault))

    def _refusal(self, scope: Scope, headers: Headers) -> PlainTextResponse | None:
        if scope["method"] not in _KNOWN:
            return PlainTextResponse("This is not done here.", 405, {"Allow": ", ".join(sorted(_KNOWN))})
        if _host(headers.getlist("host")) not in self.gate.hosts:
            return PlainTextResponse("This address is not ours. Open the one that was printed.", 421)
        if len(scope["path"]) > LONGEST_PATH or len(scope["query_string"]) > LONGEST_QUERY:
            return PlainTextResponse("This address is too long.", 414)
        ours = headers.get("sec-fetch-site", "same-origin") in {"same-origin", "none"}
        if scope["method"] in _SAFE:
            # Another page may lead here, as a link in a message does; it may not take a part of ours in.
            way = (headers.get("sec-fetch-mode"), headers.get("sec-fetch-dest"))
            if ours or way == ("navigate", "document"):
                return None
            return PlainTextResponse("Another page asks for this. Open it here.", 403)
        foreign = any(origin not in self.gate.origins for origin in headers.getlist("origin"))
        if foreign or not ours:
            return PlainTextResponse("This form comes from another page. Nothing was changed.", 403)
        return None

    async def _no_session(self, scope: Scope, receive: Receive, send: Send) -> None:
        if self.gate.password:
            answer = PlainTextResponse("Sign in first.", 303, {"Location": "/sign-in"})
        else:
            words = "This window is not open yet. Open the address that the program printed; it is good once."
            answer = PlainTextResponse(words, 401)
        await answer(scope, receive, send)


def _host(sent: Iterable[str]) -> str:
    """Return the one Host that was sent; two are none."""
    hosts = list(sent)
    return hosts[0].lower() if len(hosts) == 1 else ""


def _with_headers(send: Send) -> Send:
    async def sending(message: Message) -> None:
        if message["type"] == "http.response.start":
            headers = MutableHeaders(scope=message)
            for name, value in _HEADERS.items():
                headers.setdefault(name, value)
            headers.setdefault("Content-Security-Policy", POLICY)
            headers.setdefault("Cache-Control", "no-store")
        await send(message)

    return sending
