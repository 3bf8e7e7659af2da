"""The one-time login link: the printed address opens a session once."""

from collections.abc import Awaitable, Callable

from starlette.requests import Request
from starlette.responses import RedirectResponse, Response
from starlette.routing import BaseRoute, Route

from onewhole.web.access.guard import Access
from onewhole.web.access.sign_in import set_session
from onewhole.web.http.refusal_page import refusal_page


def login_link_routes(access: Access) -> list[BaseRoute]:
    """Return the address that opens a session with a key."""
    return [Route("/open", _opener(access), methods=["GET"])]


def _opener(access: Access) -> Callable[[Request], Awaitable[Response]]:
    async def opener(request: Request) -> Response:
        # A browser that only looks at an address before it is opened (HEAD) does not use its key up.
        cookie = None
        if request.method == "GET":
            cookie = access.sessions.opened(request.query_params.get("key", ""))
        if cookie is None:
            if request.scope["csrf_token"]:
                return RedirectResponse("/", 303)
            what, remedy = (
                "This address was opened already.",
                "Stop the program and start it again for a new one.",
            )
            return refusal_page(request.headers, 403, what, remedy, leads=False)
        answer = RedirectResponse("/", 303)
        set_session(answer, access, cookie)
        return answer

    return opener
