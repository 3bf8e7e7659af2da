"""Writing a sheet as text that reads back to the same sheet."""

from typing import assert_never

from onewhole.problems.problem import Problem
from onewhole.sheets.document import Instruction, Item, Sheet
from onewhole.sheets.settings import header_lines


def write_sheet(sheet: Sheet) -> str:
    r"""Write a sheet the way a teacher types it; ``read_sheet(write_sheet(sheet)) == sheet``.

    Settings that are as usual are left out.

    >>> from onewhole.sheets.reading import read_sheet
    >>> write_sheet(read_sheet("title:Kites\n\n1) 52-27"))
    'title: Kites\n\n1. 52-27\n'
    """
    header = header_lines(sheet.header)
    blank = ("",) if header else ()
    return "\n".join((*header, *blank, *map(_line, sheet.items))) + "\n"


def _line(item: Item) -> str:
    match item:
        case Instruction(words):
            return f"# {words}"
        case Problem():
            story = f" | {item.story}" if item.story else ""
            return f"{item.label}. {item.typed}{story}"
        case _:
            assert_never(item)
