"""`onewhole plan`: the morning page and a practice page for every group."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.clock import now
from onewhole.desk import mark as marks
from onewhole.desk.plan import plan

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
AnswersFile = Annotated[
    Path, typer.Argument(metavar="ANSWERS", help="The answers: CSV with a pupil column and one a problem.")
]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="The folder to print into.")]
Meets = Annotated[
    int, typer.Option("--meets", metavar="GROUPS", help="How many groups you can meet tomorrow.")
]


def run(sheet: SheetFile, answers: AnswersFile, to: To = Path("out"), meets: Meets = marks.MEETS) -> int:
    """Print the morning page and the practice pages, and say where they lie."""
    marked = marks.mark_files(sheet, answers, meets=meets)
    for one in plan(marked, to, when=now()):
        print(f"{one.page:18} {one.path}")
    return 0
