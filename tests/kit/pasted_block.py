"""A block as a teacher pastes it, with whose answers are in it and what the teacher says when asked."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from onewhole.marking.reading.tables.answer_grid import AnswerGrid
from onewhole.marking.reading.tables.class_names import ListedPupil
from onewhole.marking.reading.tables.cutting import cut_table
from onewhole.marking.reading.tables.table_cell import CellMade, Table, TableCell
from onewhole.sheets.reading import read_sheet

PUPILS = (
    ListedPupil("K01", "Maya Rivera"),
    ListedPupil("K02", "Ben Okafor"),
    ListedPupil("K03", "Lin"),
    ListedPupil("K04", "José Núñez"),
    ListedPupil("K05"),
    ListedPupil("K06", "Ben Ruiz"),
)
SHEET = (
    "title: Trail miles\n\n1. 7 2/6 - 3 5/6\n2. 9 5/8 - 4 6/8\n3. 3/4 ? 2/3\n"
    "4. 4 1/4 - 1 3/4 | Maya hiked 4 1/4 miles and Lin hiked 1 3/4 miles. How many miles more is that?\n"
)
PROBLEMS = read_sheet(SHEET).problems
#: The teacher is in the cell of K02 and problem 2 when the block is pasted.
GRID = AnswerGrid(PUPILS, PROBLEMS, "K02", "2")
#: The whole answers of three pupils, which many of the blocks hold.
WHOLE = "K01 1=3 3/6 2=4 7/8 3=> 4=2 2/4; K02 1=4 3/6 2=5 1/8 3=< 4=3 2/4; K03 1=3 1/2 2=4 6/8 3== 4=2 1/2"
ROWS = (("3 3/6", "4 7/8", ">", "2 2/4"), ("4 3/6", "5 1/8", "<", "3 2/4"), ("3 1/2", "4 6/8", "=", "2 1/2"))


@dataclass(frozen=True, slots=True)
class PastedBlock:
    """A block: its name, its text, whose answers it has, and what the teacher says to each question."""

    name: str
    text: str
    truth: str
    said: Mapping[str, str] = field(default_factory=dict)
    made: Mapping[str, CellMade] = field(default_factory=dict)

    @property
    def table(self) -> Table:
        """Return the block as a table; ``made`` has the texts of cells of which a file tells something."""
        rows = cut_table(self.text)
        return tuple(
            tuple(TableCell(cell.text, self.made.get(cell.text, CellMade.TYPED)) for cell in row)
            for row in rows
        )

    @property
    def cells(self) -> dict[tuple[str, str], str]:
        """Return the answers by code and label; what is read otherwise than it stands is after an arrow."""
        found = {}
        for row in filter(None, map(str.strip, self.truth.split(";"))):
            code, _, rest = row.partition(" ")
            parts = rest.replace("==", "=\0").split(" ")
            label = ""
            for part in parts:
                if "=" in part:
                    label, _, text = part.partition("=")
                    found[code, label] = text.replace("\0", "=")
                else:
                    found[code, label] += f" {part}"
        return found


def table_text(*rows: tuple[str, ...], sign: str = "\t") -> str:
    """Return rows as a block with tabs, or another sign, between the cells."""
    return "\n".join(sign.join(row) for row in rows) + "\n"


def coded(first: tuple[str, ...], names: tuple[str, ...] = ("K01", "K02", "K03"), sign: str = "\t") -> str:
    """Return the answers of three pupils under a first line, or none, with codes or names before them."""
    rows = tuple((name, *row) for name, row in zip(names, ROWS, strict=True))
    return table_text(*((first,) if first else ()), *rows, sign=sign)


def turned_text(text: str) -> str:
    """Return a block with its rows as columns."""
    rows = [line.split("\t") for line in text.splitlines()]
    return table_text(*zip(*rows, strict=True))


LABELS = ("1", "2", "3", "4")
HALF = "K01 1=3 3/6 2=4 7/8; K02 1=4 3/6 2=5 1/8"
