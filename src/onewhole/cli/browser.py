"""The browser door, as the terminal finds it: by the name that the installed package gives it."""

from collections.abc import Callable
from datetime import datetime
from importlib.metadata import entry_points
from pathlib import Path
from typing import Protocol

from onewhole.errors import InputError


class Serve(Protocol):
    """What the browser door offers: serve the file of a class until it is stopped."""

    def __call__(
        self,
        path: Path,
        *,
        port: int = 0,
        address: str = ...,
        names: tuple[str, ...] = (),
        certificate: Path | None = None,
        key: Path | None = None,
        now: Callable[[], datetime],
        told: Callable[[str], None],
        again: Callable[[str], None],
    ) -> None:
        """Serve; ``told`` is told the address to open, ``again`` one for the next window, each time anew."""


def browser_door() -> Serve:
    """Return the browser door. The two doors are strangers: only `pyproject.toml` knows both.

    Raises InputError when the package was installed before it had one.
    """
    found = tuple(entry_points(group="onewhole.doors", name="browser"))
    if not found:
        raise InputError("The browser door is not installed", remedy="Install onewhole again.")
    serve: Serve = found[0].load()
    return serve
