"""A refusal before any page function is asked: a page for a browser's window, words for anything else."""

from collections.abc import Mapping

from starlette.datastructures import Headers
from starlette.responses import HTMLResponse, PlainTextResponse, Response

from onewhole.web.http.templates import rendered

#: How one gets into a program that runs, from a window that is not open.
NEXT_WINDOW = (
    "Start onewhole once more, as you started it before: it finds the program that runs and opens a window "
    "into it. An address that was printed is good once. Nothing that was kept is lost."
)


def refusal_page(
    asked: Headers,
    status: int,
    what: str,
    remedy: str,
    *,
    leads: bool = True,
    headers: Mapping[str, str] | None = None,
) -> Response:
    """Return what was refused and what to do next; with ``leads`` the page has a button to the Week.

    >>> refusal_page(Headers({"accept": "*/*"}), 404, "There is no such page.", "Go back to the Week.").body
    b'There is no such page. Go back to the Week.'
    """
    if "text/html" not in asked.get("accept", ""):
        return PlainTextResponse(f"{what} {remedy}".rstrip(), status, headers)
    words = {"demo": False, "what": what.rstrip("."), "remedy": remedy, "leads": leads}
    return HTMLResponse(rendered("not_shown.html", words), status, headers)
