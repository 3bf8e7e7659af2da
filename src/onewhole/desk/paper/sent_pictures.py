"""Pictures of papers as a browser sends them: what cannot be one is refused before anything is read."""

from collections.abc import Iterable

from onewhole.desk.paper.seen_papers import NamedPicture
from onewhole.errors import InputError
from onewhole.presses.paper.picture_kinds import is_picture


def sent_pictures(files: Iterable[NamedPicture]) -> tuple[NamedPicture, ...]:
    """Return the files that were chosen; a field that was left empty sends one without name and bytes.

    Raises InputError where there is none, or where none of them is a picture: what becomes of each is told
    by the reading.
    """
    chosen = tuple((name, content) for name, content in files if name or content)
    if not chosen:
        raise InputError("There is no picture here", remedy="Choose the photos or the scan of the papers.")
    if not any(is_picture(content) for _, content in chosen):
        raise InputError("No picture is among these files", remedy="Choose JPEG, PNG, HEIC, TIFF or PDF.")
    return chosen
