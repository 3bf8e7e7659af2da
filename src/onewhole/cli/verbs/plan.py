"""`onewhole plan`: the morning page, and practice for every group and for pupils asked for."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.clock import now
from onewhole.cli.group_options import (
    AskedFile,
    LetGo,
    Meets,
    Merge,
    Move,
    NewGroup,
    NotebookFile,
    On,
    SizesTyped,
    StayIn,
    Take,
    changes_offered,
    settings_typed,
    wishes_typed,
)
from onewhole.cli.notebook_option import tonight_in
from onewhole.cli.prior_option import PriorFile
from onewhole.desk.classes import notebooks
from onewhole.desk.district.priors import learnt_elsewhere
from onewhole.desk.marking import mark as marks
from onewhole.desk.tomorrow.group_wishes import with_wishes
from onewhole.desk.tomorrow.plan import no_practice, plan, tomorrow

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
AnswersFile = Annotated[
    Path,
    typer.Argument(
        metavar="ANSWERS", help="The answers: CSV, XLSX or ODS; a pupil column and one a problem."
    ),
]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="The folder to print into.")]
Pupil = Annotated[
    list[str] | None,
    typer.Option("--pupil", metavar="CODE", help="Print a page for this pupil too; may be given again."),
]
EveryPupil = Annotated[bool, typer.Option("--every-pupil", help="Print a page for every pupil too.")]
Earlier = Annotated[
    list[Path] | None,
    typer.Option(
        "--earlier",
        metavar="SHEET",
        help="The sheet of an earlier night, from which a problem comes back; may be given again.",
    ),
]
Slip = Annotated[
    bool | None,
    typer.Option(
        "--find-slip/--no-find-slip",
        help="End each page with a wrong answer to mend. Left out: only after an earlier night.",
    ),
]
FitOn = Annotated[
    str,
    typer.Option(
        "--fit",
        metavar="PAGES",
        help="1, 2 or more: each practice page on so many, with less room where it must be.",
    ),
]


def run(
    sheet: SheetFile,
    answers: AnswersFile,
    to: To = Path("out"),
    meets: Meets = marks.MEETS,
    sizes: SizesTyped = "3-6",
    asked: AskedFile = None,
    pupil: Pupil = None,
    every_pupil: EveryPupil = False,
    earlier: Earlier = None,
    find_slip: Slip = None,
    fit: FitOn = "",
    notebook: NotebookFile = None,
    date: On = None,
    prior: PriorFile = None,
    take: Take = False,
    move: Move = None,
    stay: StayIn = None,
    let_go: LetGo = None,
    merge: Merge = None,
    new_group: NewGroup = None,
) -> int:
    """Print the morning page, the practice pages and their key, and say where they lie."""
    settings, known = settings_typed(meets, sizes), learnt_elsewhere(prior)
    wishes = wishes_typed(move, stay, let_go, merge, new_group, take=take)
    with tonight_in(notebook, date, sheet, answers) as tonight:
        read = marks.mark_files(
            sheet, answers, settings=settings, tonight=tonight, asked=asked, elsewhere=known
        )
        marked = with_wishes(read, wishes)
        wanted = tomorrow(
            marked,
            pupils=pupil or (),
            every_pupil=every_pupil,
            earlier=earlier or (),
            find_slip=find_slip,
            fit=fit,
        )
        made = plan(marked, to, when=now(), asked=wanted)
    for one in made:
        print(f"{one.page:18} {one.path}")
    if missing := no_practice(marked, made):
        print(missing)
    if notebook:
        notebooks.keep(marked, notebook)
    for line in changes_offered(marked):
        print(line)
    return 0
