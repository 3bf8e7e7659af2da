"""`onewhole serve`: the browser door, opened until Ctrl-C."""

import os
import sys
from datetime import datetime
from getpass import getpass
from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli import clock
from onewhole.cli.browser import browser_door
from onewhole.cli.data_folder import data_folder, made_private
from onewhole.cli.refusal import told
from onewhole.desk.classes.class_records import open_book
from onewhole.desk.keep.backups import back_up_daily, backups_folder
from onewhole.desk.keep.password import LEAST, set_password
from onewhole.errors import InputError, OnewholeError

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
SetPassword = Annotated[bool, typer.Option("--set-password", help="Set the password, and end.")]


def run(
    file: ClassFile = None,
    port: Port = 0,
    address: Address = "127.0.0.1",
    name: Names = None,
    certificate: Certificate = None,
    key: Key = None,
    password: SetPassword = False,
) -> int:
    """Serve the class until Ctrl-C; with `--set-password`, set the password and end."""
    os.umask(0o077)  # whatever is made from here on, films and printed pages too, is read by its owner only
    path = (made_private(data_folder(os.environ, Path.home())) / "my.class") if file is None else file
    if not path.parent.is_dir():
        raise InputError("The folder is not there", where=str(path.parent), remedy="Make it first.")
    if password:
        set_password(path, _typed_twice())
        print(f"The password for {path} is set.")
        return 0
    serve = browser_door()
    _back_up(path)
    serve(
        path,
        port=port,
        address=address,
        names=tuple(name or ()),
        certificate=certificate,
        key=key,
        now=_now,
        told=_print_address,
    )
    print("Stopped. What was kept is kept.")
    return 0


def _now() -> datetime:
    """Return the time where the teacher is, so that a day is the school's day."""
    return clock.now().astimezone()


def _back_up(path: Path) -> None:
    """Make today's backup of a file that is there. When that fails, it is told and the door opens.

    The pages then say what is wrong, and offer the backups of a damaged file.
    """
    if not path.exists():
        return
    try:
        book = open_book(path)
        try:
            back_up_daily(book, backups_folder(path), _now())
        finally:
            book.close()
    except OnewholeError as refused:
        print(f"No backup was made today. {told(refused)}", file=sys.stderr)


def _print_address(address: str) -> None:
    once = " It is good once." if "?key=" in address else ""
    print(f"Open this address in your browser.{once}\n\n  {address}\n\nCtrl-C stops it.", flush=True)


def _typed_twice() -> str:
    first = getpass(f"A password of {LEAST} characters or more: ")
    if first != getpass("The same once more: "):
        raise InputError("The two were not the same", remedy="Set it again.")
    return first
