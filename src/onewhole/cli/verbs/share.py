"""`onewhole share`: a class's answers for the district, without names."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.days import day_in
from onewhole.cli.screen import plain_line
from onewhole.desk.district.school_key import KEY_FILE, school_key
from onewhole.desk.district.sharing import SHARING_CAUTION, put_shared, shared_nights
from onewhole.desk.keep import way_back

ClassFile = Annotated[Path, typer.Argument(metavar="FILE", help="The file of the class.")]
School = Annotated[str, typer.Option("--school", metavar="NAME", help="What the district calls the school.")]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="Where the school's folder is made.")]
Key = Annotated[
    Path | None,
    typer.Option(
        "--key",
        metavar="FILE",
        help="The school's key, which stays there; if not given, school.key beside the file of the class."
        " One that is not there is made.",
    ),
]
Room = Annotated[int, typer.Option("--room", metavar="NUMBER", help="The class in the file.")]
From = Annotated[str, typer.Option("--from", metavar="DAY", help="The first day, as 2026-09-01.")]
Until = Annotated[str, typer.Option("--until", metavar="DAY", help="The last day.")]


def run(
    file: ClassFile,
    school: School,
    to: To = Path("district"),
    key: Key = None,
    room: Room = 1,
    first: From = "",
    last: Until = "",
) -> int:
    """Write a Parquet file a night: hashes for pupils, problems, answers; no names and no codes."""
    days = (day_in(first) if first else None, day_in(last) if last else None)
    book = way_back.open_kept(file)
    try:
        nights = shared_nights(book, room, school, school_key(key or file.parent / KEY_FILE), days)
    finally:
        book.close()
    for path, night in zip(put_shared(nights, to, school), nights, strict=True):
        left = f", {night.left_out} problems left out" if night.left_out else ""
        print(plain_line(f"{path}: {night.papers} papers{left}"))
    print(SHARING_CAUTION if nights else "No paper of these days is here.")
    return 0
