"""The options about a night's talks and tomorrow's groups, as `mark`, `plan` and `night` take them."""

import re
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.screen import plain_line
from onewhole.desk.marking.mark import GroupSettings, Marked, Sizes, shown_changes
from onewhole.desk.tomorrow.group_wishes import GroupWishes
from onewhole.errors import InputError

Meets = Annotated[
    int, typer.Option("--meets", metavar="GROUPS", help="How many groups you can meet tomorrow.")
]
SizesTyped = Annotated[
    str, typer.Option("--sizes", metavar="FROM-TO", help="How many pupils sit together, if it can be.")
]
NotebookFile = Annotated[
    Path | None,
    typer.Option(
        "--notebook",
        metavar="FILE",
        help="The class's notebook: earlier nights are read from it, and this one is written into it.",
    ),
]
On = Annotated[
    datetime | None,
    typer.Option(
        "--date", metavar="DATE", formats=["%Y-%m-%d"], help="The day for the notebook; today, left out."
    ),
]
AskedFile = Annotated[
    Path | None,
    typer.Option(
        "--asked",
        metavar="FILE",
        help="What pupils were asked since: CSV with the columns pupil, asked, wrote and word.",
    ),
]
Take = Annotated[
    bool, typer.Option("--take", help="Take the changes of kept groups that the answers now ask for.")
]
Move = Annotated[
    list[str] | None,
    typer.Option("--move", metavar="CODE=GROUP", help="Move a pupil to a group; may be given again."),
]
StayIn = Annotated[
    list[str] | None,
    typer.Option(
        "--stay",
        metavar="CODE=GROUP",
        help="Keep a pupil in a group, on later nights too; may be given again.",
    ),
]
LetGo = Annotated[
    list[str] | None,
    typer.Option("--let-go", metavar="CODE", help="Let a pupil who stays go where the answers say."),
]
Merge = Annotated[
    list[str] | None,
    typer.Option(
        "--merge", metavar="GROUP=GROUP", help="Put all of a group into another; may be given again."
    ),
]
NewGroup = Annotated[
    list[str] | None,
    typer.Option(
        "--new-group", metavar="CODE,CODE", help="Begin a group of these pupils; may be given again."
    ),
]


def settings_typed(meets: int, sizes: str) -> GroupSettings:
    """Return the settings typed. Raises InputError for sizes that are none.

    >>> settings_typed(3, "2-5").sizes.largest
    5
    """
    found = re.fullmatch(r"\s*(\d{1,3})\s*[-\N{EN DASH}]\s*(\d{1,3})\s*", sizes)
    if found is None:
        msg = f"“{sizes}” does not say how many pupils sit together"
        raise InputError(msg, remedy="Write the smallest and the largest number: --sizes 3-6.")
    return GroupSettings(meets, Sizes(int(found[1]), int(found[2])))


def wishes_typed(
    move: list[str] | None,
    stay: list[str] | None,
    let_go: list[str] | None,
    merge: list[str] | None,
    new_group: list[str] | None,
    *,
    take: bool,
) -> GroupWishes:
    """Return what was typed about groups, nothing for an option that was left out."""
    return GroupWishes(
        tuple(move or ()),
        tuple(stay or ()),
        tuple(let_go or ()),
        tuple(merge or ()),
        tuple(new_group or ()),
        take,
    )


def changes_offered(marked: Marked) -> Iterator[str]:
    """Say which pupils the answers now put elsewhere, where groups are kept; nothing where none."""
    if changes := shown_changes(marked):
        pupils = "1 pupil" if len(changes) == 1 else f"{len(changes)} pupils"
        yield f"The groups are kept as they were. The answers now ask to move {pupils}; --take does it:"
        for code, was, to, because in changes:
            yield plain_line(f"  {code} from {was} to {to}: {because}")
