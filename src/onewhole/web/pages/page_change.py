"""A kept page changed: its title, a copy of it, all of it deleted with its nights."""

from onewhole.desk.classes.class_list import LONGEST_NAME
from onewhole.desk.keep.deleting import delete_page, holding_text, sheet_holding
from onewhole.desk.page.kept_pages import kept_versions
from onewhole.desk.page.page_changes import copy_page, rename_page
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage, Redirect, refused_status
from onewhole.web.pages.gone import check_idle, deleted_page


def look(request: PageRequest) -> HtmlPage:
    """Show what can be changed of a page, and what would go with it."""
    return _shown(request)


def rename(request: PageRequest) -> HtmlPage | Redirect:
    """Keep the page under another title."""
    title = request.field("title", "")
    try:
        saw = request.count("saw", 1, 2**31)
        rename_page(request.book, request.number("sheet"), title, request.app.now(), saw=saw)
    except InputError as refused:
        return _shown(request, refused, title)
    return Redirect(request.at("page_desk.look"))


def copy(request: PageRequest) -> Redirect:
    """Keep the page once more."""
    made = copy_page(request.book, request.number("sheet"), request.app.now())
    return Redirect(request.at("page_desk.look", sheet=made.sheet))


def delete(request: PageRequest) -> HtmlPage:
    """Delete the page and its nights; a backup is made first."""
    try:
        check_idle(request)
        gone = delete_page(
            request.open_file,
            request.number("sheet"),
            request.app.now(),
            saw=request.field("saw"),
            made=request.app.folder / request.book_name,
        )
    except InputError as refused:
        return _shown(request, refused)
    return deleted_page(request, gone)


def _shown(request: PageRequest, refused: InputError | None = None, typed: str | None = None) -> HtmlPage:
    sheet = request.number("sheet")
    kept, holding = kept_versions(request.book, sheet)[0], sheet_holding(request.book, sheet)
    words: dict[str, object] = {
        "kept": kept,
        "typed": kept.title if typed is None else typed,
        "holding": holding,
        "saw": holding_text(holding),
        "refused": refused,
        "longest": LONGEST_NAME,
    }
    return HtmlPage("page_change.html", words, refused_status(refused) if refused else 200)
