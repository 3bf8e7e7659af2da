"""The file of a class, where a page is printed for its pupils: who reads it in braille or in large print."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.clock import now
from onewhole.desk.classes.forms import Forms

ClassFile = Annotated[
    Path | None,
    typer.Option(
        "--class",
        metavar="FILE",
        help="The file of the class: pupils who read braille or large print (`onewhole papers --reads`) have"
        " their own pages too, K05-pupil.brf or K06-pupil-large.pdf.",
    ),
]
Room = Annotated[int, typer.Option("--room", metavar="NUMBER", help="The class in that file.")]


def forms_in(file: Path | None, room_number: int) -> Forms:
    """Return the forms of pages of those who are in the class today; nothing without a file."""
    if file is None:
        return {}
    # Only who names a file waits for what opens it.
    from onewhole.desk.classes.own_forms import forms_on  # noqa: PLC0415
    from onewhole.desk.keep import way_back  # noqa: PLC0415

    book = way_back.open_kept(file)
    try:
        return forms_on(book, room_number, now().date())
    finally:
        book.close()
