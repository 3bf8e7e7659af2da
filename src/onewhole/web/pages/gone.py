"""What pages share that delete: nothing is under way meanwhile, and what went is told."""

from onewhole.desk.keep.deleting import Deleted
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage


def check_idle(request: PageRequest) -> None:
    """Refuse to delete while work with the class is under way, which may write of it. Raises InputError.

    The demo is put away as a whole: it has no backups.
    """
    if request.is_demo:
        raise InputError("Of the demo nothing is deleted by itself", remedy="Put it away as a whole.")
    if request.app.jobs.goes_on(_begins(request)):
        raise InputError(
            "Work with this class is under way, which may write of what is to go",
            remedy="Wait until it is done, then do this again.",
        )


def forget_work(request: PageRequest) -> None:
    """Forget the outcome of work that ended, which may tell of what is gone."""
    request.app.jobs.forget(_begins(request))


def deleted_page(request: PageRequest, gone: Deleted, **words: object) -> HtmlPage:
    """Return the page that names what went, its backup, and what was made of it and is left."""
    forget_work(request)
    folder = request.open_file.path.parent
    left = [path.relative_to(folder).as_posix() for path in gone.left]
    return HtmlPage("deleted.html", {"gone": gone, "before": gone.before.name, "left": left, **words})


def _begins(request: PageRequest) -> str:
    """Return how the addresses of work on this file begin."""
    return f"/{request.book_name}/"
