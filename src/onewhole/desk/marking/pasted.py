"""A block of cells as a spreadsheet puts it on the clipboard, and where it falls in the grid."""

import csv
from collections.abc import Sequence
from dataclasses import dataclass
from io import StringIO
from itertools import dropwhile

from onewhole.errors import InputError
from onewhole.marking.reading.answer import Unreadable, read_written

Block = tuple[tuple[str, ...], ...]

LONGEST_BLOCK = 200_000


@dataclass(frozen=True, slots=True)
class Placed:
    """What of a block falls on the grid, as code, label and text; ``told`` says what does not."""

    cells: tuple[tuple[str, str, str], ...]
    told: tuple[str, ...]


def pasted(text: str) -> Block:
    r"""Cut a pasted text into rows of cells.

    Cells are divided by tabs; where there is no tab, by the comma or the semicolon, whichever stands in
    more lines, unless every line is one answer by itself. Line ends of any computer are fine, and so are
    cells in quotation marks, with line ends in them. Where quotation marks do not close, they are text.
    Raises InputError for more than 200,000 characters.

    >>> pasted('3 3/6\t"4 ""or"" 5"\r\n\t7\r\n'), pasted("1,000\n2")
    ((('3 3/6', '4 "or" 5'), ('', '7')), (('1,000',), ('2',)))
    """
    if len(text) > LONGEST_BLOCK:
        raise InputError(
            f"This block has {len(text)} characters; {LONGEST_BLOCK} are taken at once",
            remedy="Paste the answers of one night, or a part of them.",
        )
    divider = _divider(text)
    rows = _rows(text, divider)
    filled = list(dropwhile(lambda row: not any(row), reversed(rows)))
    return tuple(tuple(row) for row in reversed(filled))


def _divider(text: str) -> str:
    lines = [line for line in text.splitlines() if line.strip()]
    if "\t" in text or not lines or all(_one_answer(line) for line in lines):
        return "\t"
    return max(",;", key=lambda sign: sum(sign in line for line in lines))


def _one_answer(line: str) -> bool:
    return not isinstance(read_written(line).read, Unreadable)


def _rows(text: str, divider: str) -> list[list[str]]:
    try:
        return list(csv.reader(StringIO(text, newline=""), delimiter=divider, strict=True))
    except csv.Error:
        return [line.split(divider) for line in text.splitlines()]


def placed(block: Block, codes: Sequence[str], labels: Sequence[str], code: str, label: str) -> Placed:
    """Lay a block on the grid with its first cell on a pupil and a problem.

    An empty cell of the block changes nothing. A block whose first cell is ``pupil`` has pupils' codes in
    its first column and labels in its first line, and lies where those say, wherever the first cell is to be.
    Raises InputError for a pupil or a problem that is not in the grid.

    >>> laid = placed((("1", "2"), ("3",)), ["K01"], ["1", "2"], "K01", "2")
    >>> laid.cells, laid.told
    ((('K01', '2', '1'),), ('2 answers fall outside the grid and were not taken: “2”, “3”.',))
    """
    if code not in codes or label not in labels:
        raise InputError("This cell is not in the grid", remedy="Choose a pupil and a problem of the night.")
    if block and block[0][0].strip().casefold() == "pupil":
        down = [row[0].strip() for row in block[1:]]
        across = [cell.strip().rstrip(".):") for cell in block[0][1:]]
        block = tuple(row[1:] for row in block[1:])
    else:
        down, across = list(codes[codes.index(code) :]), list(labels[labels.index(label) :])
    cells: list[tuple[str, str, str]] = []
    outside: list[str] = []
    for at, row in enumerate(block):
        for beside, text in enumerate(row):
            if not text.strip():
                continue
            place = (down[at : at + 1], across[beside : beside + 1])
            if place[0] and place[0][0] in codes and place[1] and place[1][0] in labels:
                cells.append((place[0][0], place[1][0], text))
            else:
                outside.append(text)
    return Placed(tuple(cells), _told(outside))


def _told(outside: Sequence[str]) -> tuple[str, ...]:
    if not outside:
        return ()
    shown = ", ".join(f"“{text[:40]}”" for text in outside[:5])
    more = ", and more" if len(outside) > 5 else ""
    falls = "1 answer falls" if len(outside) == 1 else f"{len(outside)} answers fall"
    were = "was" if len(outside) == 1 else "were"
    return (f"{falls} outside the grid and {were} not taken: {shown}{more}.",)
