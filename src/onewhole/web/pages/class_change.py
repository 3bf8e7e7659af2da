"""A class copied, deleted with a backup, or erased for good on its last day."""

from onewhole.desk.classes.class_list import LONGEST_NAME, copy_class
from onewhole.desk.classes.class_records import called_alike
from onewhole.desk.keep.backups import PRIVACY, backups_of, is_over, keep_until
from onewhole.desk.keep.deleting import class_holding, delete_class, erase_class, holding_text
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage, Redirect, refused_status
from onewhole.web.pages.gone import check_idle, deleted_page, forget_work


def look(request: PageRequest) -> HtmlPage:
    """Show what is kept of the class, and what can be done with all of it."""
    return _shown(request)


def copy(request: PageRequest) -> HtmlPage | Redirect:
    """Keep a new class with the same pupils."""
    name = request.field("name", "")
    try:
        made = copy_class(request.book, request.number("room"), name, request.app.now())
    except InputError as refused:
        return _shown(request, refused, name)
    return Redirect(request.at("class_page.look", room=made.number))


def delete(request: PageRequest) -> HtmlPage:
    """Delete the class where its name was typed to confirm it; a backup is made first."""
    try:
        _check_sure(request)
        check_idle(request)
        gone = delete_class(
            request.open_file,
            request.number("room"),
            request.app.now(),
            saw=request.field("saw"),
            made=request.app.folder / request.book_name,
        )
    except InputError as refused:
        return _shown(request, refused)
    return deleted_page(request, gone, room=None)


def erase(request: PageRequest) -> HtmlPage:
    """Erase the class where its name was typed to confirm it; tell where it may be still."""
    file = request.open_file
    try:
        _check_sure(request)
        check_idle(request)
        erased = erase_class(
            file,
            request.number("room"),
            saw=request.field("saw"),
            backups=request.field("backups", "") == "yes",
            made=request.app.folder / request.book_name,
        )
    except InputError as refused:
        return _shown(request, refused)
    forget_work(request)
    left = [path.relative_to(file.path.parent).as_posix() for path in erased.left]
    return HtmlPage("class_erased.html", {"erased": erased, "left": left, "room": None})


def _check_sure(request: PageRequest) -> None:
    name = request.room.name
    if not called_alike([(request.number("room"), name)], request.field("sure", "")):
        raise InputError(
            f"What was typed is not the name of this class, {name}", remedy="Type it if you mean this class."
        )


def _shown(request: PageRequest, refused: InputError | None = None, typed: str = "") -> HtmlPage:
    holding = class_holding(request.book, request.number("room"))
    words: dict[str, object] = {
        "typed": typed,
        "holding": holding,
        "saw": holding_text(holding),
        "refused": refused,
        "longest": LONGEST_NAME,
        "backups": len(backups_of(request.open_file.path)),
        "until": keep_until(request.book),
        "over": is_over(request.book, request.app.today()),
        "privacy": PRIVACY,
    }
    return HtmlPage("class_change.html", words, refused_status(refused) if refused else 200)
