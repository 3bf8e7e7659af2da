"""`onewhole film`: a sheet worked aloud, as a film and all that goes with it."""

import sys
from pathlib import Path
from typing import Annotated

import typer
from msgspec.structs import replace
from rich.console import Console
from rich.progress import BarColumn, Progress, TextColumn, TimeRemainingColumn

from onewhole.cli.clock import now
from onewhole.cli.say_json import say_json
from onewhole.cli.screen import beneath
from onewhole.cli.verbs.print import Languages
from onewhole.desk.page.sheets import sheet_in
from onewhole.desk.walkthrough.film import (
    BOTH,
    FilmWishes,
    film_sheet,
    shapes_named,
    tidy_wishes,
)
from onewhole.desk.walkthrough.film_files import FilmFiles
from onewhole.desk.walkthrough.film_options import kind_named
from onewhole.desk.walkthrough.soundtrack_choice import SILENT

SheetFile = Annotated[Path, typer.Argument(metavar="SHEET", help="The typed sheet.")]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="The folder to film into.")]
Voice = Annotated[
    str,
    typer.Option(
        "--voice",
        metavar="VOICE",
        help="silent, synthetic, or your own recording: a folder with a file a problem, or one file.",
    ),
]
Minutes = Annotated[
    int | None, typer.Option("--fit", metavar="MINUTES", min=1, max=120, help="Fit into so many minutes.")
]
Rate = Annotated[
    int, typer.Option("--rate", metavar="WORDS", min=60, max=200, help="Words spoken in a minute.")
]
Drawing = Annotated[
    str | None,
    typer.Option(
        "--picture",
        metavar="PICTURE",
        help=(
            "strips, discs, rectangles, hundred grid, number line, ruler, split and join, tens and ones, "
            "or part-whole bar."
        ),
    ),
]
Tried = Annotated[
    str, typer.Option("--try-first", metavar="LABELS", help="Problems to try before they are worked: 3,7.")
]
Turns = Annotated[
    str,
    typer.Option("--your-turn", metavar="LABELS", help="Problems whose answer is left to the family: 3,7."),
]
Mistake = Annotated[bool, typer.Option("--mistake", help="Show a likely mistake once, and mend it.")]
Shapes = Annotated[
    str,
    typer.Option("--shape", metavar="SHAPE", help="wide, upright (for a phone held upright), or both."),
]
Listen = Annotated[
    bool,
    typer.Option(
        "--listen/--no-listen", help="Listen to your own recording: captions follow it, slips are told."
    ),
]
Tidied = Annotated[
    str,
    typer.Option("--tidy", metavar="WISHES", help="Tidy your recording: level,trim,clicks, or some of them."),
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(
    sheet: SheetFile,
    to: To = Path("out"),
    voice: Voice = SILENT,
    fit: Minutes = None,
    rate: Rate = 120,
    picture: Drawing = None,
    try_first: Tried = "",
    your_turn: Turns = "",
    mistake: Mistake = False,
    shape: Shapes = BOTH,
    listen: Listen = True,
    tidy: Tidied = "",
    languages: Languages = "",
    as_json: AsJson = False,
) -> int:
    """Film a sheet: script, walkthrough, captions, chapters, transcript, film and poster."""
    wishes = FilmWishes(
        voice=voice,
        minutes=fit,
        kind=None if picture is None else kind_named(picture),
        tried=_labels(try_first),
        turns=_labels(your_turn),
        mistake=mistake,
        shapes=shapes_named(shape),
        listen=listen,
        tidy=tidy_wishes(tidy),
    )
    wishes = replace(wishes, pace=replace(wishes.pace, words_a_minute=rate))
    bar = Progress(
        TextColumn("Filming"),
        BarColumn(),
        TimeRemainingColumn(),
        console=Console(file=beneath(sys.stderr)),
        disable=not sys.stderr.isatty(),
    )
    with bar:
        task = bar.add_task("film", total=None)
        shown = film_sheet(
            sheet_in(sheet, languages=languages),
            to,
            when=now(),
            wishes=wishes,
            progress=lambda done, of: bar.update(task, completed=done, total=of),
        )
    if as_json:
        say_json(_object(shown))
        return 0
    for one in shown.made:
        print(f"{one.page:19} {one.path}")
    print()
    minutes, seconds = divmod(int(shown.length), 60)
    done = shown.filmed
    print(f"The film takes {minutes} min {seconds} s; its words read {shown.reads}.")
    print(
        f"{done.frames_drawn} frames drawn; "
        f"{done.parts_rendered} parts made, {done.parts_kept} kept from before."
    )
    for note in shown.notes:
        print(note)
    for slip in shown.slips:
        print(slip)
    return 0


def _labels(typed: str) -> tuple[str, ...]:
    """Read labels of problems, with commas between."""
    return tuple(label for part in typed.split(",") if (label := part.strip()))


def _object(shown: FilmFiles) -> dict[str, object]:
    return {
        "files": [{"page": one.page, "path": str(one.path)} for one in shown.made],
        "seconds": float(shown.length),
        "frames_drawn": shown.filmed.frames_drawn,
        "parts": {"made": shown.filmed.parts_rendered, "kept": shown.filmed.parts_kept},
        "reading_grade": float(shown.level.grade) if shown.level else None,
        "longest_sentence": shown.longest,
        "notes": list(shown.notes),
        "slips": [
            {"problem": one.label, "seconds": float(one.at), "said": one.said, "board": one.board}
            for one in shown.slips
        ],
    }
