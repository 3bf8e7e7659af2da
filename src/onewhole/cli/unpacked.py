"""The program as it is unpacked from a folder, with no Python beside it: started by a double-click, or typed.

A double-click has no terminal to print into: what it cannot do it says on a page in the browser.
"""

import sys
from collections.abc import MutableMapping, Sequence
from contextlib import redirect_stderr, redirect_stdout
from html import escape
from io import StringIO
from pathlib import Path

from onewhole.cli.data_folder import data_folder, made_private
from onewhole.cli.main import main
from onewhole.cli.screen_browser import has_screen, opened_in_browser
from onewhole.errors import OnewholeError

_PAGE = """<!doctype html>
<html lang="en-US"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>onewhole did not start</title>
<style>body {{ font: 1.1rem/1.5 sans-serif; max-width: 40rem; margin: 3rem auto; padding: 0 1rem }}
pre {{ white-space: pre-wrap; overflow-wrap: anywhere; border-left: 4px solid; padding-left: 1rem }}</style>
</head><body><h1>onewhole did not start</h1>
<p>Nothing that was kept is lost. The program says:</p>
<pre>{said}</pre>
</body></html>
"""


def begin(typed: Sequence[str], environment: MutableMapping[str, str], home: Path) -> int:
    """Do what was typed, as the command does; where nothing was typed, open the class in the browser.

    Returns the exit code of the command.
    """
    if typed:
        return main(list(typed))
    said = StringIO()
    shows = has_screen(environment)
    with redirect_stderr(_Both(said, sys.stderr)), redirect_stdout(sys.stdout or StringIO()):
        code = main(["serve"])
    if code and said.getvalue() and shows:
        _show(said.getvalue(), environment, home)
    return code


class _Both(StringIO):
    """A stream that keeps what is written, and hands it on where there is a terminal."""

    def __init__(self, kept: StringIO, beneath: object) -> None:
        super().__init__()
        self.kept, self.beneath = kept, beneath

    def write(self, text: str) -> int:
        """Write a text."""
        if hasattr(self.beneath, "write"):
            self.beneath.write(text)
        return self.kept.write(text)


def _show(said: str, environment: MutableMapping[str, str], home: Path) -> None:
    """Show on a page why the program did not start; where not even that can be written, nothing is shown."""
    try:
        page = made_private(data_folder(environment, home)) / "did-not-start.html"
        page.write_text(_PAGE.format(said=escape(said)), encoding="utf-8")
    except (OSError, OnewholeError):
        return
    opened_in_browser(page)
