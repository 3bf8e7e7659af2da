"""Check everything: what is not as it was written is named, and taken back or let stand."""

from onewhole.desk.classes.class_records import rooms
from onewhole.desk.keep import checking
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage, Redirect
from onewhole.web.pages.keep import and_of, class_looked_at


def look(request: PageRequest) -> HtmlPage:
    """Check the file and its backups, and show what was found."""
    found = checking.check_book(request.book)
    classes = () if found.damages else rooms(request.book)
    words: dict[str, object] = {
        "found": found,
        "backups": checking.check_backups(request.app.books.paths[request.book_name]),
        "did": request.query.get("did", "") == "mended",
        **class_looked_at(request, classes),
    }
    return HtmlPage("checked.html", words)


def mend(request: PageRequest) -> Redirect:
    """Take back what the backups have right; what stands is kept as a backup first."""
    _, before = checking.mend_book(request.open_file, request.app.now())
    if before is None:
        raise InputError("There is nothing that can be taken back", remedy="Look at what was found again.")
    return _looked_again(request)


def let_stand(request: PageRequest) -> Redirect:
    """Let everything stand as it is now; what stands is kept as a backup first."""
    checking.let_stand(request.open_file, request.app.now())
    return _looked_again(request)


def _looked_again(request: PageRequest) -> Redirect:
    request.app.checks.look_again(request.book_name, request.open_file)
    return Redirect(f"{request.at('checking.look')}?did=mended{and_of(request)}")
