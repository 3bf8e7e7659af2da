"""`onewhole audit`: a sheet looked over before it is printed."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.say_json import say_json
from onewhole.desk.page import audit as desk

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
Strict = Annotated[bool, typer.Option("--strict", help="End with 1 when anything is found.")]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(sheet: SheetFile, strict: Strict = False, as_json: AsJson = False) -> int:
    """Print what the page is like and what is found in it."""
    audit = desk.audit_file(sheet)
    if as_json:
        say_json(desk.as_object(audit))
    else:
        print("\n".join(desk.told(audit)))
    return 1 if strict and not audit.clean else 0
