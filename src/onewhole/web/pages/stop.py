"""Stop: the program ends from its own page, for whoever started it without a terminal."""

from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage, Redirect


def ask(request: PageRequest) -> HtmlPage | Redirect:
    """Ask whether the program is to end, with what is under way; where another has started it, go on."""
    if request.app.stop is None:
        return Redirect("/")
    return HtmlPage("stop.html")


def now(request: PageRequest) -> HtmlPage:
    """Let the program end once this page is there. Raises InputError where it is not ended by a page."""
    if request.app.stop is None:
        raise InputError(
            "onewhole is not stopped by a page here", remedy="Who started it stops it where it was started."
        )
    request.app.stop()
    return HtmlPage("stopped.html")
