"""The browser's own files: an address holds a digest of them all, so that a browser keeps them for good."""

from functools import cache
from hashlib import sha256
from importlib.resources import files
from pathlib import Path

from starlette.middleware.gzip import GZipMiddleware
from starlette.responses import Response
from starlette.routing import Mount
from starlette.staticfiles import StaticFiles
from starlette.types import Scope

#: Where the letters of the screen come from: those of the printed pages.
FONTS = ("fontpkg_lexend", "fontpkg_atkinson_hyperlegible")
#: A file of one digest never changes: it is kept for a year, and not asked for again (RFC 8246).
KEPT = "public, max-age=31536000, immutable"
#: Smaller answers are sent as they are.
LEAST_SQUEEZED = 500


class _KeptFiles(StaticFiles):
    """Files that a browser keeps; an answer that is no file is not kept."""

    async def get_response(self, path: str, scope: Scope) -> Response:
        found = await super().get_response(path, scope)
        found.headers["Cache-Control"] = KEPT
        return found


@cache
def static(file: str) -> str:
    """Return the address of one of our files; it changes when any of them does.

    Scripts and styles name each other beside themselves, so that one digest serves them all. Raises
    FileNotFoundError for a file that is not there.

    >>> static("look.css").startswith("/static/"), static("look.css").endswith("/look.css")
    (True, True)
    """
    if not (_ours() / file).is_file():
        raise FileNotFoundError(file)
    return f"/static/{_digest()}/{file}"


def static_routes() -> list[Mount]:
    """Return the routes of the files, and of the letters beside them; both compressed on the way."""
    at = f"/static/{_digest()}"
    letters = _KeptFiles(packages=[(font, "files") for font in FONTS])
    ours = _KeptFiles(directory=_ours())
    return [
        Mount(place, GZipMiddleware(what, minimum_size=LEAST_SQUEEZED))
        for place, what in ((f"{at}/letters", letters), (at, ours))
    ]


def _ours() -> Path:
    return Path(str(files("onewhole.web") / "static"))


@cache
def _digest() -> str:
    """Return twelve digits of the digest of every file, ours and the letters."""
    folders = (_ours(), *(Path(str(files(font) / "files")) for font in FONTS))
    found = sha256()
    for file in (file for folder in folders for file in sorted(folder.iterdir()) if file.is_file()):
        found.update(f"{file.name}\0".encode() + sha256(file.read_bytes()).digest())
    return found.hexdigest()[:12]
