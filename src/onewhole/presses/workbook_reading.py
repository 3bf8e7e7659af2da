"""A workbook that was handed in, read in a process of its own: little memory, little time, nothing worked."""

from typing import Final

import msgspec
from msgspec import Struct

from onewhole.errors import InputError
from onewhole.presses.limited import limited
from onewhole.presses.workbook import Shown, read_for_parent

#: The most bytes of a workbook; one of a class's answers has 20 KiB.
LARGEST: Final = 5_000_000
#: Bytes of memory and seconds of the processor that the process may take.
MEMORY: Final = 400_000_000
SECONDS: Final = 10

_SAVE = "Save the sheet with the answers as CSV, or copy its cells and paste them."


class WorkbookRows(Struct, frozen=True):
    """The sheet of a workbook that was open last: its rows, its name, the other sheets' names.

    ``formulas`` is how many cells are formulas, ``lost`` are those of them without a result in the file.
    """

    rows: tuple[tuple[Shown, ...], ...] = ()
    name: str = ""
    others: tuple[str, ...] = ()
    formulas: int = 0
    lost: tuple[str, ...] = ()
    why: str = ""


def workbook_rows(content: bytes, name: str) -> WorkbookRows:
    """Return the rows of an XLSX or ODS file; ``name`` is what refusals call it.

    Raises InputError for a file that is too large, packed too tightly, locked, damaged, or no workbook.
    """
    if len(content) > LARGEST:
        what = f"This workbook has more than {LARGEST // 1_000_000} MB"
        raise InputError(what, file=name, remedy=_SAVE)
    with limited(read_for_parent, memory=MEMORY, seconds=SECONDS) as process:
        assert process.stdin is not None
        assert process.stdout is not None
        process.stdin.write(len(content).to_bytes(8, "little"))
        process.stdin.write(content)
        process.stdin.flush()
        told = process.stdout.read()
    try:
        found = msgspec.json.decode(told, type=WorkbookRows)
    except msgspec.DecodeError:
        found = WorkbookRows(why="large")
    match found.why:
        case "":
            return found
        case "large":
            what = "This workbook would take too much memory or time to read"
        case "locked":
            what = "This workbook is locked with a password, or it is of the old kind (.xls)"
        case _:
            what = "This file is damaged, or it is no workbook"
    raise InputError(what, file=name, remedy=_SAVE)
