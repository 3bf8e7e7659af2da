"""A browser on this person's screen: whether there is one, and a page opened in it."""

import os
import sys
import webbrowser
from collections.abc import Iterator, Mapping, MutableMapping
from contextlib import contextmanager
from pathlib import Path

#: Variables by which the unpacked program and the processes that it starts of itself find their libraries.
#: Source: PyInstaller's manual, "LD_LIBRARY_PATH / LIBPATH considerations".
_OF_LIBRARIES = ("LD_LIBRARY_PATH", "DYLD_LIBRARY_PATH")


def has_screen(environment: Mapping[str, str], platform: str = sys.platform) -> bool:
    """Say whether a browser can show itself: on a screen, and not at the far end of a line.

    >>> has_screen({}, "linux"), has_screen({"WAYLAND_DISPLAY": "wayland-0"}, "linux")
    (False, True)
    >>> has_screen({}, "darwin"), has_screen({"SSH_CONNECTION": "192.0.2.7 22"}, "darwin")
    (True, False)
    """
    if platform in {"win32", "darwin"}:
        return not environment.get("SSH_CONNECTION")
    return bool(environment.get("DISPLAY") or environment.get("WAYLAND_DISPLAY"))


def opened_in_browser(page: Path) -> bool:
    """Open a page of this person's disk in the usual browser; False where there is none.

    The browser is given the page's place only: what stands in it is on no command line.
    """
    try:
        with other_programs(os.environ):
            return webbrowser.open(page.as_uri())
    except (webbrowser.Error, OSError):
        return False


@contextmanager
def other_programs(environment: MutableMapping[str, str]) -> Iterator[None]:
    """Let a program that is started within find its own libraries, and not those of an unpacked folder."""
    ours = {name: environment[name] for name in _OF_LIBRARIES if name in environment}
    if not getattr(sys, "frozen", False):
        ours = {}
    for name in ours:
        before = environment.get(f"{name}_ORIG")
        if before is None:
            del environment[name]
        else:
            environment[name] = before
    try:
        yield
    finally:
        environment.update(ours)
