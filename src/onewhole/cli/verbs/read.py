"""`onewhole read`: answers from photos or scans of papers."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.say_json import say_json
from onewhole.desk.page.pupil_copies import codes_listed
from onewhole.desk.page.sheets import sheet_in
from onewhole.desk.paper.file_papers import papers_object, papers_told, put_papers, read_files, written
from onewhole.desk.paper.paper_wishes import sureness_named
from onewhole.desk.paper.photo_folder import ANY_CODE, cells_beside
from onewhole.desk.paper.picture_files import PictureFiles
from onewhole.desk.paper.press_reading import sees_sheet

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet that was printed.")]
Photos = Annotated[
    list[Path],
    typer.Argument(metavar="PHOTOS...", help="Photos or scans (JPEG, PNG, HEIC, TIFF, PDF), or folders."),
]
To = Annotated[
    Path, typer.Option("--to", metavar="FILE", help="The answers as CSV, as `onewhole mark` takes them.")
]
Cells = Annotated[
    Path | None,
    typer.Option(
        "--cells",
        metavar="FILE",
        help="The picture of the cells to look at; else beside the answers.",
    ),
]
Pupils = Annotated[
    str,
    typer.Option(
        "--pupils",
        metavar="CODES",
        help="Whose papers they are, such as K01-K25: who is missing is named. If not given, any of K01-K60.",
    ),
]
Sure = Annotated[
    str,
    typer.Option(
        "--sure",
        metavar="HOW",
        help="few, usual, more, most or every: how many answers are shown. Of those that are not, about 1 in"
        " 100, 200, 500, 1000 may be wrong; with every, all are shown.",
    ),
]
#: What a script is told where no paper is in any picture; nothing is written then.
NO_PAPER = 2

AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(
    sheet: SheetFile,
    photos: Photos,
    to: To = Path("answers.csv"),
    cells: Cells = None,
    pupils: Pupils = "",
    sure: Sure = "usual",
    *,
    as_json: AsJson = False,
) -> int:
    """Write what is sure as answers, a picture of the cells to look at, and say what to look at."""
    read, codes = sheet_in(sheet), codes_listed(pupils or ANY_CODE)
    papers = read_files(
        read,
        PictureFiles(tuple(photos)),
        sees_sheet(read, codes),
        codes=codes,
        sureness=sureness_named(sure),
        awaited=codes if pupils else (),
    )
    shown = cells or cells_beside(to)
    if papers.codes:
        put_papers(papers, to, shown)
    if as_json:
        say_json({**papers_object(papers), "answers": str(to), "picture": str(shown)})
    else:
        print("\n".join(papers_told(papers)))
        if papers.codes:
            print(f"\n{written(papers, to, shown)}")
    return 0 if papers.codes else NO_PAPER
