"""A browser on this person's screen: whether there is one, and a page opened in it."""

import sys
import webbrowser
from collections.abc import Mapping
from pathlib import Path


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
        return webbrowser.open(page.as_uri())
    except (webbrowser.Error, OSError):
        return False
