"""The program's own code as a digest: what it made before is made anew once any of it has changed."""

import hashlib
from collections.abc import Collection
from functools import cache
from importlib.metadata import version
from importlib.resources import files
from pathlib import Path

#: The libraries that what is drawn and pressed depends on.
_LIBRARIES = ("av", "numpy", "pillow", "typst")
_KINDS = frozenset({".py", ".pyi", ".typ", ".html", ".css", ".js", ".csv", ".toml", ".txt"})


@cache
def code_digest(rooms: Collection[str] = ("",)) -> str:
    """Return the SHA-256 of the code in some rooms of the package, all where none is named, and of libraries.

    >>> code_digest(("number",)) == code_digest(("pictures",))
    False
    """
    found = hashlib.sha256(repr([version(library) for library in _LIBRARIES]).encode())
    root = Path(str(files("onewhole")))
    for room in rooms:
        for file in sorted((root / room).rglob("*")):
            if file.suffix in _KINDS:
                found.update(file.read_bytes())
    return found.hexdigest()
