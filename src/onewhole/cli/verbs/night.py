"""`onewhole night`: everything for one folder."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.clock import now
from onewhole.desk.marking import mark as marks
from onewhole.desk.tomorrow.night import night

Folder = Annotated[
    Path,
    typer.Argument(
        metavar="FOLDER", help="A folder with sheet.txt, answers.csv once they are back, and asked.csv."
    ),
]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="The folder to print into.")]
Meets = Annotated[
    int, typer.Option("--meets", metavar="GROUPS", help="How many groups you can meet tomorrow.")
]


def run(folder: Folder, to: To = Path("out"), meets: Meets = marks.MEETS) -> int:
    """Print the pages, and with answers the marks and the morning plan; end with the most useful findings."""
    done = night(folder, to, when=now(), meets=meets)
    for one in done.made:
        print(f"{one.page:18} {one.path}")
    if done.findings:
        print()
    for number, finding in enumerate(done.findings, start=1):
        print(f"{number}. {finding}")
    if done.findings:
        print(f"\n{marks.CAUTION}")
    return 0
