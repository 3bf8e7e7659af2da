"""Text files that people typed: read whole, or refused with the place that cannot be read."""

from pathlib import Path

from onewhole.errors import InputError
from onewhole.presses.named_file import TooLarge, content, no_text, refused

#: A sheet or the answers of a class are far smaller.
LARGEST = 5_000_000


def read_text(path: Path) -> str:
    """Return the text of a UTF-8 file, without a byte-order mark.

    Raises InputError when the file is not there, is no file, is too large, or holds bytes that are no UTF-8,
    with line and column of the first.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     _ = (Path(folder) / "sheet.txt").write_bytes(b"1. 7 2/6 - 3 5/6")
    ...     read_text(Path(folder) / "sheet.txt")
    '1. 7 2/6 - 3 5/6'
    """
    try:
        with refused(path):
            found = content(path, LARGEST)
    except TooLarge:
        msg = "the file is too large to be a sheet or the answers of a class"
        raise InputError(msg, file=str(path), remedy="See whether this is the right file.") from None
    try:
        return found.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        before = found[: error.start].decode("utf-8-sig", errors="replace")
        raise no_text(path, before.count("\n") + 1, len(before) - before.rfind("\n")) from error
