"""`onewhole mark`: the answers of a class marked, and what they may show."""

import sys
from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.group_options import AskedFile, Meets, NotebookFile, On, SizesTyped, settings_typed
from onewhole.cli.notebook_option import tonight_in
from onewhole.cli.odds import odds_typed
from onewhole.cli.prior_option import PriorFile
from onewhole.cli.say_json import say_json
from onewhole.cli.screen import beneath
from onewhole.cli.tables import marked_tables
from onewhole.desk.classes import notebooks
from onewhole.desk.district.priors import learnt_elsewhere
from onewhole.desk.marking import mark as desk
from onewhole.desk.pupil import report

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
AnswersFile = Annotated[
    Path,
    typer.Argument(
        metavar="ANSWERS",
        help="The answers: CSV, XLSX or ODS; a pupil column, one a problem. A cell may hold lines of work.",
    ),
]
Confident = Annotated[
    str, typer.Option("--confident", metavar="ODDS", help="From which odds answers are said to fit.")
]
Pupil = Annotated[
    str | None, typer.Option("--pupil", metavar="CODE", help="Tell all about one pupil instead.")
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(
    sheet: SheetFile,
    answers: AnswersFile,
    meets: Meets = desk.MEETS,
    sizes: SizesTyped = "3-6",
    confident: Confident = "0.9",
    asked: AskedFile = None,
    pupil: Pupil = None,
    notebook: NotebookFile = None,
    date: On = None,
    prior: PriorFile = None,
    as_json: AsJson = False,
) -> int:
    """Print how each problem went, what each pupil's answers may show, and groups."""
    settings, odds = settings_typed(meets, sizes), odds_typed(confident)
    with tonight_in(notebook, date, sheet, answers) as tonight:
        marked = desk.mark_files(
            sheet,
            answers,
            settings=settings,
            confident=odds,
            tonight=tonight,
            asked=asked,
            elsewhere=learnt_elsewhere(prior),
        )
    one = report.report(marked, pupil) if pupil is not None else None
    if notebook:
        notebooks.keep(marked, notebook)
    if as_json:
        found = report.as_object(marked, one) if one else desk.as_object(marked)
        say_json(found)
    elif one:
        print("\n".join(report.told(marked, one)))
    else:
        print(marked_tables(marked), end="", file=beneath(sys.stdout))
    return 0
