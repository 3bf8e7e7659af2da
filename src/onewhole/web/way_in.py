"""The way in: the printed address opens a session once."""

from collections.abc import Awaitable, Callable

from starlette.requests import Request
from starlette.responses import PlainTextResponse, RedirectResponse, Response
from starlette.routing import BaseRoute, Route

from onewhole.web.guard import Gate


def way_in(gate: Gate) -> list[BaseRoute]:
    """Return the addresses that need no session."""
    return [Route("/open", _opener(gate), methods=["GET"])]


def _opener(gate: Gate) -> Callable[[Request], Awaitable[Response]]:
    async def opener(request: Request) -> Response:
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


def set_session(answer: Response, gate: Gate, cookie: str) -> None:
    """Hand a session to the browser: no script sees it, no other site sends it."""
    answer.set_cookie(gate.cookie, cookie, httponly=True, samesite="strict", secure=gate.secure, path="/")
