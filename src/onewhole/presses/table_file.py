"""A long table on the disk, walked line by line: no more of it is in memory than a line."""

import os
from collections.abc import Iterator
from io import TextIOWrapper
from pathlib import Path

from onewhole.errors import InputError
from onewhole.presses.named_file import no_text, opened, refused

#: Answers of four million pupils to twenty problems.
LARGEST = 200_000_000


def table_lines(path: Path) -> Iterator[str]:
    r"""Give the lines of a UTF-8 file with their ends, without a byte-order mark.

    Raises InputError when the file is not there, is no file, is too large, or holds bytes that are no UTF-8,
    with the line after which the first of these comes.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     _ = (Path(folder) / "q.csv").write_bytes(b"item,a\n1,1\n")
    ...     list(table_lines(Path(folder) / "q.csv"))
    ['item,a\n', '1,1\n']
    """
    line = 0
    try:
        with refused(path), opened(path) as file:
            if os.fstat(file.fileno()).st_size > LARGEST:
                msg = "the file is too large to be a table of answers"
                raise InputError(msg, file=str(path), remedy="See whether this is the right file.")
            with TextIOWrapper(file, encoding="utf-8-sig", newline="") as texts:
                for text in texts:
                    line += 1
                    yield text
    except UnicodeDecodeError as error:
        raise no_text(path, line + 1) from error
