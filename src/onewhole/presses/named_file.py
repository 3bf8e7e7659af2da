"""A file that a person named: opened to be read, if it is a file and nothing else."""

import os
import stat
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO, Final

from onewhole.errors import InputError

_REMEDY: Final = "See that the name is that of a file."


class NoFile(InputError):
    """What is named is no file: a folder, a pipe, a socket or a device."""


class TooLarge(InputError):
    """The file has more bytes than what it should be ever has."""


def opened(path: Path) -> BinaryIO:
    """Open a file to read its bytes; it never waits for a pipe, and asks what it opened, not the name.

    Raises NoFile, and OSError as `open` does.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     try:
    ...         opened(Path(folder))
    ...     except NoFile as refused:
    ...         print(refused.what)
    This is a folder, and a file is wanted
    """
    _check(path.stat().st_mode, path)  # a device may do something when it is opened
    handle = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0))
    file = os.fdopen(handle, "rb")
    try:
        _check(os.fstat(file.fileno()).st_mode, path)
    except BaseException:
        file.close()
        raise
    return file


def content(path: Path, most: int) -> bytes:
    """Return the bytes of a file, at most so many. Raises NoFile, TooLarge and OSError.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     _ = (Path(folder) / "kites.txt").write_bytes(b"six kites")
    ...     content(Path(folder) / "kites.txt", 9)
    b'six kites'
    """
    with opened(path) as file:
        found = file.read(most + 1)
    if len(found) > most:
        raise TooLarge(
            f"The file is larger than {most:,} bytes",
            file=str(path),
            remedy="See whether this is the right file.",
        )
    return found


@contextmanager
def refused(path: Path) -> Iterator[None]:
    """Raise InputError with what to do next where a file cannot be read; what is InputError stays so.

    >>> try:
    ...     with refused(Path("kites.txt")):
    ...         raise FileNotFoundError
    ... except InputError as error:
    ...     print(error.what)
    there is no such file
    """
    try:
        yield
    except InputError:
        raise
    except FileNotFoundError:
        msg = "there is no such file"
        remedy = "See how the name is spelt and in which folder it is."
        raise InputError(msg, file=str(path), remedy=remedy) from None
    except OSError as error:
        msg = f"the file cannot be read: {error.strerror or error}"
        remedy = "See that it is a file and that you may read it."
        raise InputError(msg, file=str(path), remedy=remedy) from error


def no_text(path: Path, line: int, column: int | None = None) -> InputError:
    """Return the refusal of a file whose bytes are no text from a place on."""
    remedy = "Save it again as plain text (UTF-8)."
    return InputError(
        "the file is not plain text in UTF-8", file=str(path), line=line, column=column, remedy=remedy
    )


def _check(mode: int, path: Path) -> None:
    """Raise NoFile for anything but a file."""
    if stat.S_ISREG(mode):
        return
    if stat.S_ISDIR(mode):
        raise NoFile("This is a folder, and a file is wanted", file=str(path), remedy=_REMEDY)
    raise NoFile("This is a pipe, a socket or a device, and a file is wanted", file=str(path), remedy=_REMEDY)
