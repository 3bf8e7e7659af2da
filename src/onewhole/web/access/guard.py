"""Checks every request before a page sees it, and writes the security headers of every response."""

import logging
from collections.abc import Iterable
from http.cookies import CookieError, SimpleCookie

from msgspec import Struct
from starlette.datastructures import Headers, MutableHeaders
from starlette.responses import PlainTextResponse, Response
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from onewhole.desk.keep.error_location import error_location
from onewhole.web.access.security_log import log_refusal
from onewhole.web.access.sessions import Sessions
from onewhole.web.http.refusal_page import NEXT_WINDOW, refusal_page

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
#: With TLS and a password a browser is told to come back by TLS only, for a year (RFC 6797, 6.1).
HSTS = "max-age=31536000"
_SAFE = frozenset({"GET", "HEAD"})
_KNOWN = _SAFE | {"POST"}
#: What may be loaded without a session: signing in, and the styles and fonts of that page.
OPEN = ("/open", "/sign-in")
OPEN_FOLDER = "/static/"
#: How the addresses end that our scripts ask again and again by themselves: that is no use of a session.
POLLED = "/now"
#: An address is this long at most, and what follows its question mark.
LONGEST_PATH, LONGEST_QUERY = 1000, 8000

_log = logging.getLogger("onewhole.web")


class Access(Struct, frozen=True):
    """Who may send requests: the host names that are answered, TLS or not, and the open sessions.

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
        """Return the origins whose forms are accepted: our own."""
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
    """ASGI middleware: refuses requests that do not come from our own pages, and writes security headers.

    A Host that is not ours: a foreign name was pointed at this machine (DNS rebinding). An Origin, or a
    Sec-Fetch-Site, that is not ours: a foreign page sends a form. No session: the address was not opened with
    its key. Source of the checks: OWASP Cross-Site Request Forgery Prevention cheat sheet, from memory.
    """

    def __init__(self, app: ASGIApp, access: Access) -> None:
        self.app = app
        self.access = access

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
            log_refusal(refused.status_code, _method(scope), _address(scope))
            await refused(scope, receive, self._with_headers(send))
            return
        is_use = scope["method"] not in _SAFE or not scope["path"].endswith(POLLED)
        csrf_token = self.access.sessions.csrf_token(self.access.cookie_of(headers), is_use=is_use)
        scope["csrf_token"] = csrf_token or ""
        if csrf_token is None and scope["path"] not in OPEN and not scope["path"].startswith(OPEN_FOLDER):
            await self._no_session(scope, receive, self._with_headers(send))
            return
        try:
            await self.app(scope, receive, self._with_headers(send))
        except Exception as fault:  # noqa: BLE001 - the server would print it, and what was typed with it
            _log.error("fault %s", error_location(fault))

    def _refusal(self, scope: Scope, headers: Headers) -> Response | None:
        if "transfer-encoding" in headers and "content-length" in headers:
            # Two that read it otherwise would find different requests in it (RFC 9112, 6.1).
            closes = {"Connection": "close"}
            return refusal_page(headers, 400, "This form says twice how long it is.", "", headers=closes)
        if scope["method"] not in _KNOWN:
            allowed = {"Allow": ", ".join(sorted(_KNOWN))}
            return refusal_page(headers, 405, "This is not done here.", "", headers=allowed)
        if _host(headers.getlist("host")) not in self.access.hosts:
            return refusal_page(
                headers, 421, "This address is not ours.", "Open the one that was printed.", leads=False
            )
        if len(scope["path"]) > LONGEST_PATH or len(scope["query_string"]) > LONGEST_QUERY:
            return refusal_page(headers, 414, "This address is too long.", "Nothing was changed.")
        ours = headers.get("sec-fetch-site", "same-origin") in {"same-origin", "none"}
        if scope["method"] in _SAFE:
            # Other sites may link here, but they may not embed or fetch our pages.
            navigation = (headers.get("sec-fetch-mode"), headers.get("sec-fetch-dest"))
            if ours or navigation == ("navigate", "document"):
                return None
            return refusal_page(headers, 403, "Another page asks for this.", "Open it here.")
        foreign = any(origin not in self.access.origins for origin in headers.getlist("origin"))
        if foreign or not ours:
            return refusal_page(headers, 403, "This form comes from another page.", "Nothing was changed.")
        return None

    async def _no_session(self, scope: Scope, receive: Receive, send: Send) -> None:
        log_refusal(303 if self.access.password else 401, _method(scope), _address(scope))
        answer: Response = PlainTextResponse("Sign in first.", 303, {"Location": "/sign-in"})
        if not self.access.password:
            asked = Headers(scope=scope)
            answer = refusal_page(asked, 401, "This window is not open yet.", NEXT_WINDOW, leads=False)
        await answer(scope, receive, send)

    def _with_headers(self, send: Send) -> Send:
        async def sending(message: Message) -> None:
            if message["type"] == "http.response.start":
                headers = MutableHeaders(scope=message)
                for name, value in _HEADERS.items():
                    headers.setdefault(name, value)
                headers.setdefault("Content-Security-Policy", POLICY)
                headers.setdefault("Cache-Control", "no-store")
                if self.access.secure and self.access.password:
                    headers.setdefault("Strict-Transport-Security", HSTS)
            await send(message)

        return sending


def _method(scope: Scope) -> str:
    """Return the method as the log tells it: one that is not done here may be any word."""
    return scope["method"] if scope["method"] in _KNOWN else "other"


def _address(scope: Scope) -> str:
    """Return the address that a request came from, as the connection has it; no header is believed."""
    return scope["client"][0] if scope.get("client") else ""


def _host(sent: Iterable[str]) -> str:
    """Return the one Host that was sent; two are none."""
    hosts = list(sent)
    return hosts[0].lower() if len(hosts) == 1 else ""
