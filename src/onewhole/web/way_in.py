"""The way in: the printed address opens a session once."""

from collections.abc import Awaitable, Callable

from starlette.requests import Request
from starlette.responses import PlainTextResponse, RedirectResponse, Response
from starlette.routing import BaseRoute, Route

from onewhole.web.guard import Gate
from onewhole.web.sign_in import set_session


def way_in(gate: Gate) -> list[BaseRoute]:
    """Return the address that opens a session with a key."""
    return [Route("/open", _opener(gate), methods=["GET"])]


def _opener(gate: Gate) -> Callable[[Request], Awaitable[Response]]:
    async def opener(request: Request) -> Response:
        # A browser that only looks at an address before it is opened (HEAD) does not use its key up.
        cookie = None
        if request.method == "GET":
            cookie = gate.sessions.opened(request.query_params.get("key", ""))
        if cookie is None:
            if request.scope["seal"]:
                return RedirectResponse("/", 303)
            words = "This address was opened already. Stop the program and start it again for a new one."
            return PlainTextResponse(words, 403)
        answer = RedirectResponse("/", 303)
        set_session(answer, gate, cookie)
        return answer

    return opener
