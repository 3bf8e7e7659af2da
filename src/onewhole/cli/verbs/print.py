"""`onewhole print`: the pages of a sheet as PDFs."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.clock import now
from onewhole.cli.say_json import say_json
from onewhole.desk.page.print_pages import print_pages
from onewhole.desk.page.sheets import sheet_in

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="The folder to print into.")]
Paper = Annotated[
    str | None, typer.Option("--paper", metavar="PAPER", help="letter or a4, instead of the sheet's.")
]
Size = Annotated[
    str | None, typer.Option("--print", metavar="SIZE", help="ordinary or large, instead of the sheet's.")
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(
    sheet: SheetFile,
    to: To = Path("out"),
    paper: Paper = None,
    size: Size = None,
    as_json: AsJson = False,
) -> int:
    """Print pupil page, key, workings and family page, and say where they lie."""
    made = print_pages(sheet_in(sheet, paper=paper, size=size), to, when=now())
    if as_json:
        files = [{"page": one.page, "path": str(one.path)} for one in made]
        say_json({"files": files})
        return 0
    for one in made:
        print(f"{one.page:9} {one.path}")
    return 0
