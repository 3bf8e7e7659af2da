"""What a page function returns: plain records, written as HTTP in one place (`handling`)."""

from collections.abc import Mapping
from pathlib import Path

from msgspec import Struct, field

from onewhole.desk.classes.class_records import NotThere, StoreRefused
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.errors import OnewholeError


def refused_status(refused: OnewholeError) -> int:
    """Return the status of a page that tells a refusal.

    >>> refused_status(OnewholeError("No page here"))
    422
    """
    match refused:
        case NotThere():
            return 404
        case StoreRefused():
            return 503
        case ChangedMeanwhile():
            return 409
        case _:
            return 422


class HtmlPage(Struct, frozen=True):
    """A page: a template and its words."""

    template: str
    words: Mapping[str, object] = field(default_factory=dict)
    status: int = 200


class Json(Struct, frozen=True):
    """An answer to one of our own scripts, as JSON."""

    content: Mapping[str, object]
    status: int = 200


class Redirect(Struct, frozen=True):
    """Go to another page (303)."""

    to: str


class Content(Struct, frozen=True):
    """Bytes with their media type; with a ``name`` the browser saves them, without one it shows them.

    ``in_tab`` shows them and saves them under the name where the teacher wants that. ``policy`` replaces our
    own Content-Security-Policy; only for a whole document with its own.
    """

    content: bytes
    kind: str
    name: str = ""
    policy: str = ""
    in_tab: bool = False


class FileContent(Struct, frozen=True):
    """A file of ours on the disk, with byte ranges, so that a film can be played from any moment.

    ``name`` and ``in_tab`` are as for :class:`Content`.
    """

    path: Path
    kind: str
    name: str = ""
    in_tab: bool = False


PageResponse = HtmlPage | Json | Redirect | Content | FileContent
