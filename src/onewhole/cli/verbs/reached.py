"""`onewhole reached`: who reached the bar on a page."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.say_json import say_json
from onewhole.desk.page import recheck as desk

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
AnswersFile = Annotated[
    Path,
    typer.Argument(metavar="ANSWERS", help="The answers: CSV, XLSX or ODS; a pupil column, one a problem."),
]
BarAt = Annotated[
    int, typer.Option("--bar", metavar="PERCENT", help="The share of right answers that is enough.")
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(
    sheet: SheetFile, answers: AnswersFile, bar: BarAt = desk.USUAL_PERCENT, as_json: AsJson = False
) -> int:
    """Print how many each pupil has right, and who reached the bar."""
    found = desk.passed_files(sheet, answers, percent=bar)
    if as_json:
        say_json(desk.as_object(found))
    else:
        print("\n".join(desk.told(found)))
    return 0
