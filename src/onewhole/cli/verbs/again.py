"""`onewhole again`: a short page with the structures of a sheet and new numbers."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.clock import now
from onewhole.desk.page import recheck as desk

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet of the night.")]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="The folder to print into.")]
Problems = Annotated[int, typer.Option("--problems", metavar="NUMBER", help="How many problems.")]
Turn = Annotated[
    int, typer.Option("--turn", metavar="NUMBER", min=0, help="0, 1, 2 ... for another page each time.")
]


def run(sheet: SheetFile, to: To = Path("out"), problems: Problems = desk.PROBLEMS, turn: Turn = 0) -> int:
    """Print the page, its key and its typed sheet, and say where they lie."""
    for one in desk.print_recheck(sheet, to, when=now(), count=problems, turn=turn):
        print(f"{one.page:10} {one.path}")
    return 0
