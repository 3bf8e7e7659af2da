"""A ZIP file that was handed in: its files within limits, none of them unpacked onto the disk."""

import zlib
from io import BytesIO
from zipfile import BadZipFile, ZipFile

from onewhole.errors import InputError

#: The most files in one.
MOST_FILES = 500


def handed_files(
    content: bytes, name: str, *, largest: int, largest_part: int, together: int, remedy: str
) -> dict[str, bytes]:
    """Return the files of a ZIP by their names.

    ``largest`` is the most bytes of it, ``largest_part`` of a file in it, ``together`` of all of them.
    ``name`` is what refusals call it, and ``remedy`` what they say to do. Raises InputError for one that is
    too large, damaged or locked, and for a name that is there twice or leads out of it.
    """
    large = InputError("This package is too large", file=name, remedy=remedy)
    if len(content) > largest:
        raise large
    found: dict[str, bytes] = {}
    try:
        with ZipFile(BytesIO(content)) as parts:
            listed = [one for one in parts.infolist() if not one.is_dir()]
            sizes = [one.file_size for one in listed]
            if len(listed) > MOST_FILES or max(sizes, default=0) > largest_part or sum(sizes) > together:
                raise large
            for one in listed:
                if one.filename.startswith("/") or "\\" in one.filename or ".." in one.filename.split("/"):
                    what = f"It has a file outside of it, {one.filename[:80]!r}"
                    raise InputError(what, file=name, remedy=remedy)
                if one.filename in found:
                    what = f"It has two files called {one.filename[:80]!r}"
                    raise InputError(what, file=name, remedy=remedy)
                found[one.filename] = parts.read(one)
    except InputError:
        raise
    except (
        BadZipFile,
        ValueError,
        OSError,
        NotImplementedError,
        RuntimeError,
        EOFError,
        zlib.error,
    ) as error:
        what = "This file is damaged, locked, or no package (ZIP)"
        raise InputError(what, file=name, remedy=remedy) from error
    return found
