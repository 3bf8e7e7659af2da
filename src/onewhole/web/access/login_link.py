"""The one-time login link: the printed address opens a session once; a spare one waits for a next window."""

from collections.abc import Awaitable, Callable
from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import HTMLResponse, RedirectResponse, Response
from starlette.routing import BaseRoute, Route

from onewhole.web.access.guard import Access
from onewhole.web.access.sessions import Sessions
from onewhole.web.access.sign_in import set_session
from onewhole.web.http.refusal_page import NEXT_WINDOW, refusal_page
from onewhole.web.http.templates import rendered


@dataclass(slots=True)
class SpareLink:
    """A key for the next window: ``told`` is told a new one when the last was used, and not before."""

    sessions: Sessions
    told: Callable[[str], None]
    key: str = ""

    def renew(self) -> None:
        """Tell a new key where the last one is not good any more."""
        if not self.sessions.is_good(self.key):
            self.key = self.sessions.new_key()
            self.told(self.key)


def login_link_routes(access: Access, opened: Callable[[], None] = lambda: None) -> list[BaseRoute]:
    """Return the address that opens a session with a key; ``opened`` is called whenever one was."""
    return [Route("/open", _opener(access, opened), methods=["GET"])]


def _opener(access: Access, opened: Callable[[], None]) -> Callable[[Request], Awaitable[Response]]:
    async def opener(request: Request) -> Response:
        # A browser that only looks at an address before it is opened (HEAD) does not use its key up.
        cookie = None
        if request.method == "GET":
            cookie = access.sessions.opened(request.query_params.get("key", ""))
        if cookie is None:
            if request.scope["csrf_token"]:
                return RedirectResponse("/", 303)
            what = "This address was opened already."
            return refusal_page(request.headers, 403, what, NEXT_WINDOW, leads=False)
        opened()
        answer = _goes_on(request)
        set_session(answer, access, cookie)
        return answer

    return opener


def _goes_on(request: Request) -> Response:
    """Go to the first page; where another page led here, by a page of our own.

    A cookie that is kept from other sites (SameSite=Strict) is not sent where one of theirs redirects; the
    page that the program's own file opens is such a one.
    """
    if request.headers.get("sec-fetch-site", "none") in {"none", "same-origin"}:
        return RedirectResponse("/", 303)
    return HTMLResponse(rendered("opening.html", {"demo": False}))
