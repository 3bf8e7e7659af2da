"""A request as bytes would bring it: headers twice, a body that lies about its length or never ends."""

import asyncio
from collections.abc import Iterable
from dataclasses import dataclass

from starlette.types import ASGIApp, Message, Scope


@dataclass(frozen=True, slots=True)
class Came:
    """What came back."""

    status: int
    headers: dict[str, str]
    text: str


def ask_raw(
    app: ASGIApp,
    method: str,
    path: str,
    headers: Iterable[tuple[str, str]],
    body: Iterable[bytes] = (),
    *,
    ends: bool = True,
    query: str = "",
) -> Came:
    """Ask an application; with ``ends`` False the body never comes to its end."""
    scope: Scope = {
        "type": "http", "asgi": {"version": "3.0"}, "http_version": "1.1", "scheme": "http", "method": method,
        "path": path, "raw_path": path.encode(), "query_string": query.encode(), "root_path": "",
        "headers": [(name.lower().encode("latin-1"), value.encode("latin-1")) for name, value in headers],
        "client": ("127.0.0.1", 50000), "server": ("127.0.0.1", 8000),
    }  # fmt: skip
    return asyncio.run(_ask(app, scope, list(body), ends=ends))


async def _ask(app: ASGIApp, scope: Scope, body: list[bytes], *, ends: bool) -> Came:
    sent: list[Message] = []

    async def receive() -> Message:
        if body:
            part = body.pop(0)
            return {"type": "http.request", "body": part, "more_body": bool(body) or not ends}
        if not ends:
            await asyncio.Event().wait()
        return {"type": "http.request", "body": b"", "more_body": False}

    async def send(message: Message) -> None:
        sent.append(message)

    await app(scope, receive, send)
    start = sent[0]
    headers = {name.decode(): value.decode() for name, value in start["headers"]}
    text = b"".join(one.get("body", b"") for one in sent[1:]).decode(errors="replace")
    return Came(start["status"], headers, text)
