"""`onewhole print`: the pages of a sheet as PDFs."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.class_option import ClassFile, Room, forms_in
from onewhole.cli.clock import now
from onewhole.cli.say_json import say_json
from onewhole.desk.page.cut_told import cut, cut_told
from onewhole.desk.page.own_pages import own_pages
from onewhole.desk.page.print_choice import PrintChoice, SheetPage, read_order
from onewhole.desk.page.print_pages import fitted_where_asked, print_pages, print_together
from onewhole.desk.page.pupil_copies import codes_listed
from onewhole.desk.page.sheets import sheet_in

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="The folder to print into.")]
Paper = Annotated[
    str | None, typer.Option("--paper", metavar="PAPER", help="letter or a4, instead of the sheet's.")
]
Size = Annotated[
    str | None, typer.Option("--print", metavar="SIZE", help="ordinary or large, instead of the sheet's.")
]
FitOn = Annotated[
    str | None,
    typer.Option(
        "--fit", metavar="PAGES", help="1, 2 or more: on so many pages, with less room where it must be."
    ),
]
Marks = Annotated[
    str | None,
    typer.Option(
        "--corner-marks",
        metavar="ANSWERS",
        help="lines or windows: marks by which photos of papers are read, with each answer over a line, or in"
        " windows, which show a child that a whole part is wanted. none: a page to hang up.",
    ),
]
Pupils = Annotated[
    str,
    typer.Option(
        "--pupils",
        metavar="CODES",
        help="A copy of the pupils' page for each, with the code on it, such as K01-K25.",
    ),
]
Together = Annotated[bool, typer.Option("--together", help="Put the pages into one file, together.pdf.")]
Order = Annotated[
    str | None,
    typer.Option(
        "--order",
        metavar="PAGES",
        help='The pages of that file in their order, with copies in front, such as "27 pupil, key".',
    ),
]
BothSides = Annotated[
    bool, typer.Option("--both-sides", help="In that file begin each page on a new sheet of paper.")
]
InBraille = Annotated[
    bool,
    typer.Option(
        "--braille",
        help="The pupils' page and the key in braille too: mathematics in Nemeth, words in uncontracted UEB.",
    ),
]
Languages = Annotated[
    str,
    typer.Option(
        "--languages",
        metavar="CODES",
        help="The class's languages, where the sheet names none: en,es prints a page for home in each.",
    ),
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]

#: The names of pages stand in a column of so many letters at least.
NARROWEST = 9


def run(
    sheet: SheetFile,
    to: To = Path("out"),
    paper: Paper = None,
    size: Size = None,
    *,
    fit: FitOn = None,
    marks: Marks = None,
    pupils: Pupils = "",
    together: Together = False,
    order: Order = None,
    both_sides: BothSides = False,
    braille: InBraille = False,
    languages: Languages = "",
    class_file: ClassFile = None,
    room: Room = 1,
    as_json: AsJson = False,
) -> int:
    """Print pupil page, key, workings and family page, and say where they lie."""
    read = sheet_in(
        sheet,
        paper=paper,
        size=size,
        fit=fit,
        marks=marks,
        braille="yes" if braille else None,
        languages=languages,
    )
    codes = codes_listed(pupils) if pupils else ()
    when = now()
    own = own_pages(read, forms_in(class_file, room), when)
    choice = PrintChoice(PrintChoice().parts if order is None else read_order(order), both_sides)
    fitted = fitted_where_asked(read) if choice.copies(SheetPage.PUPIL) else None
    page, came = (fitted.page, fitted.fit) if fitted else (None, None)
    if together or order is not None or both_sides:
        made = print_together(read, to, choice=choice, when=when, pupils=codes, pupil=page, own=own)
    else:
        made = print_pages(read, to, when=when, pupils=codes, pupil=page, own=own)
    short = cut(read)
    if as_json:
        files = [{"page": one.page, "path": str(one.path)} for one in made]
        said: dict[str, object] = {"files": files}
        said |= {"fit": came.as_object} if came else {}
        said |= {"cut": list(short)} if short else {}
        say_json(said)
        return 0
    wide = max(NARROWEST, *(len(one.page) for one in made))
    for one in made:
        print(f"{one.page:{wide}} {one.path}")
    if came:
        print(came.told)
    if short:
        print(cut_told(read, short))
    return 0
