"""`onewhole night`: everything for one folder."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.class_option import ClassFile, Room, forms_in
from onewhole.cli.clock import now
from onewhole.cli.group_options import (
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
from onewhole.cli.verbs.print import InBraille, Languages
from onewhole.desk.classes import notebooks
from onewhole.desk.district.priors import learnt_elsewhere
from onewhole.desk.marking import mark as marks
from onewhole.desk.marking.answers_file import answers_of_night
from onewhole.desk.tomorrow.night import PHOTOS, SHEET, NightPrints, night
from onewhole.desk.tomorrow.plan import no_practice

Folder = Annotated[
    Path,
    typer.Argument(
        metavar="FOLDER",
        help="A folder with sheet.txt, answers.csv, .xlsx or .ods once they are back, and asked.csv. Instead"
        " of answers it may have a folder photos, with photos or scans of the papers.",
    ),
]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="The folder to print into.")]


def run(
    folder: Folder,
    to: To = Path("out"),
    meets: Meets = marks.MEETS,
    sizes: SizesTyped = "3-6",
    notebook: NotebookFile = None,
    date: On = None,
    prior: PriorFile = None,
    take: Take = False,
    move: Move = None,
    stay: StayIn = None,
    let_go: LetGo = None,
    merge: Merge = None,
    new_group: NewGroup = None,
    languages: Languages = "",
    braille: InBraille = False,
    class_file: ClassFile = None,
    room: Room = 1,
) -> int:
    """Print the pages, and with answers the marks and the morning plan; end with the most useful findings."""
    settings, known = settings_typed(meets, sizes), learnt_elsewhere(prior)
    prints = NightPrints(languages, braille, forms_in(class_file, room))
    wishes = wishes_typed(move, stay, let_go, merge, new_group, take=take)
    if (folder / PHOTOS).is_dir() and not answers_of_night(folder).exists():
        _read_photos(folder)
    with tonight_in(notebook, date, folder / SHEET, answers_of_night(folder)) as tonight:
        done = night(
            folder,
            to,
            when=now(),
            settings=settings,
            tonight=tonight,
            wishes=wishes,
            prints=prints,
            elsewhere=known,
        )
    for one in done.made:
        print(f"{one.page:18} {one.path}")
    if done.marked is not None and (missing := no_practice(done.marked, done.made)):
        print(missing)
    if done.findings:
        print()
    for number, finding in enumerate(done.findings, start=1):
        print(f"{number}. {finding}")
    if done.findings:
        print(f"\n{marks.CAUTION}")
    if done.marked is not None:
        if notebook:
            notebooks.keep(done.marked, notebook)
        for line in changes_offered(done.marked):
            print(line)
    return 0


def _read_photos(folder: Path) -> None:
    """Read the photos of papers where no answers are there, and say what is still to be looked at."""
    from onewhole.desk.paper.file_papers import papers_told, written  # noqa: PLC0415 - see the house's list
    from onewhole.desk.paper.photo_folder import cells_beside, read_photo_folder  # noqa: PLC0415

    answers = answers_of_night(folder)
    papers = read_photo_folder(folder / PHOTOS, folder / SHEET, answers)
    if papers is None:
        return
    print("\n".join(papers_told(papers)))
    if papers.codes:
        print(f"\n{written(papers, answers, cells_beside(answers))}\n")
