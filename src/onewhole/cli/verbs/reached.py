"""`onewhole reached`: who reached the bar on a page."""

import json
from pathlib import Path
from typing import Annotated

import typer

from onewhole.desk.page import recheck as desk

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
AnswersFile = Annotated[
    Path, typer.Argument(metavar="ANSWERS", help="The answers: CSV with a pupil column and one a problem.")
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
        print(json.dumps(desk.as_object(found), indent=2, ensure_ascii=False, default=float))
    else:
        print("\n".join(desk.told(found)))
    return 0
