"""`onewhole serve`: the browser door, opened until Ctrl-C."""

import os
import sys
from datetime import datetime
from getpass import getpass
from pathlib import Path
from time import sleep
from typing import Annotated

import typer

from onewhole.cli import clock
from onewhole.cli.browser import browser_door
from onewhole.cli.data_folder import data_folder, made_private
from onewhole.cli.open_door import DoorPlace, door_noted, held_door
from onewhole.cli.refusal import told
from onewhole.cli.screen_browser import has_screen, opened_in_browser
from onewhole.desk.classes.class_records import open_book
from onewhole.desk.keep.backups import back_up_daily, backups_folder
from onewhole.desk.keep.password import LEAST, set_password
from onewhole.desk.paper.clearing_papers import sweep_papers
from onewhole.errors import InputError, OnewholeError

#: So often, and so many seconds apart, a program that has just begun is asked for its address.
_TRIES, _PAUSE = 100, 0.1
_ASKS = "Open this address in your browser."

ClassFile = Annotated[
    Path | None,
    typer.Argument(metavar="[FILE]", help="The file of the class; left out, one in your own data folder."),
]
Port = Annotated[int, typer.Option("--port", metavar="PORT", min=0, max=65535, help="0 takes a free one.")]
Address = Annotated[
    str,
    typer.Option(
        "--address",
        metavar="ADDRESS",
        help="Where to listen. Any but this machine's own needs a password, a certificate and its key.",
    ),
]
Names = Annotated[
    list[str] | None,
    typer.Option("--name", metavar="NAME", help="A name that other machines call this one by."),
]
Certificate = Annotated[Path | None, typer.Option("--certificate", metavar="PEM", help="For https.")]
Key = Annotated[Path | None, typer.Option("--key", metavar="PEM", help="The certificate's key.")]
Browser = Annotated[
    bool, typer.Option("--browser/--no-browser", help="Open a window, or only print the address.")
]
SetPassword = Annotated[bool, typer.Option("--set-password", help="Set the password, and end.")]


def run(
    file: ClassFile = None,
    port: Port = 0,
    address: Address = "127.0.0.1",
    name: Names = None,
    certificate: Certificate = None,
    key: Key = None,
    password: SetPassword = False,
    browser: Browser = True,
) -> int:
    """Serve the class until Ctrl-C, in a browser window; with `--set-password`, set the password and end.

    Where it is served already, one more window is opened into that, and this start ends.
    """
    os.umask(0o077)  # whatever is made from here on, films and printed pages too, is read by its owner only
    path = (made_private(data_folder(os.environ, Path.home())) / "my.class") if file is None else file
    if not path.parent.is_dir():
        raise InputError("The folder is not there", where=str(path.parent), remedy="Make it first.")
    if password:
        set_password(path, _typed_twice())
        print(f"The password for {path} is set.")
        return 0
    serve = browser_door()
    place = DoorPlace.of(path, os.environ, Path.home())
    shows = browser and has_screen(os.environ)
    with held_door(place) as note:
        if note is None:
            _open_again(place, shows=shows)
            return 0
        _back_up(path)
        serve(
            path,
            port=port,
            address=address,
            names=tuple(name or ()),
            certificate=certificate,
            key=key,
            now=_now,
            told=lambda opens: _tell(opens, place if shows else None),
            again=note,
        )
    print("Stopped. What was kept is kept.")
    return 0


def _open_again(place: DoorPlace, *, shows: bool) -> None:
    """Open one more window into the program that serves this file already. Raises InputError."""
    for _ in range(_TRIES):
        if (noted := door_noted(place)) is not None:
            break
        sleep(_PAUSE)
    else:
        raise InputError(
            "This class is being served already, and that program does not answer",
            remedy="Stop it with Ctrl-C where it was started, then start again.",
        )
    if shows and opened_in_browser(place.page):
        print(f"This class is served already (process {noted.pid}). A window into it opens.", flush=True)
        return
    said = f"This class is served already (process {noted.pid}). {_ASKS}{_once(noted.address)}"
    print(f"{said}\n\n  {noted.address}", flush=True)


def _now() -> datetime:
    """Return the time where the teacher is, so that a day is the school's day."""
    return clock.now().astimezone()


def _back_up(path: Path) -> None:
    """Make today's backup of a file that is there, without pictures of cells that are too old.

    When that fails, it is told and the door opens. The pages then say what is wrong, and offer the backups of
    a damaged file.
    """
    if not path.exists():
        return
    try:
        book = open_book(path)
        try:
            sweep_papers(book, now=_now())
            back_up_daily(book, backups_folder(path), _now())
        finally:
            book.close()
    except OnewholeError as refused:
        print(f"No backup was made today. {told(refused)}", file=sys.stderr)


def _tell(address: str, place: DoorPlace | None) -> None:
    """Print the address to open; first open a window, where there is a browser to do it."""
    shown = place is not None and opened_in_browser(place.page)
    asks = "A window opens in your browser. If none does, open this address." if shown else _ASKS
    print(f"{asks}{_once(address)}\n\n  {address}\n\nCtrl-C stops it.", flush=True)


def _once(address: str) -> str:
    return " It is good once." if "?key=" in address else ""


def _typed_twice() -> str:
    first = getpass(f"A password of {LEAST} characters or more: ")
    if first != getpass("The same once more: "):
        raise InputError("The two were not the same", remedy="Set it again.")
    return first
