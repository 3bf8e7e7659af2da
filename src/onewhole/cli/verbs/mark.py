"""`onewhole mark`: the answers of a class marked, and what they may show."""

import json
from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.tables import marked_tables
from onewhole.desk import mark as desk

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
AnswersFile = Annotated[
    Path, typer.Argument(metavar="ANSWERS", help="The answers: CSV with a pupil column and one a problem.")
]
Meets = Annotated[
    int, typer.Option("--meets", metavar="GROUPS", help="How many groups you can meet tomorrow.")
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(sheet: SheetFile, answers: AnswersFile, meets: Meets = desk.MEETS, as_json: AsJson = False) -> int:
    """Print how each problem went, what each pupil's answers may show, and groups."""
    marked = desk.mark_files(sheet, answers, meets=meets)
    if as_json:
        print(json.dumps(desk.as_object(marked), indent=2, ensure_ascii=False))
    else:
        print(marked_tables(marked), end="")
    return 0
