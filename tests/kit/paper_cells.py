"""Cells of papers as they are kept, for tests of what is made of them."""

from onewhole.marking.paper.read_cell import ReadCell
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.store.opening import Store
from onewhole.store.paper_cells import PaperCell, ReadBy, keep_paper_cells
from tests.kit.kept import NOW

#: A picture of one grey point, as PNG.
CROP = bytes.fromhex(
    "89504e470d0a1a0a0000000d4948445200000001000000010800000000"
    "3a7e9b550000000a49444154789c63600000000200014821bc330000000049454e44ae426082"
)
READ = ReadCell(PaperVerdict.READ, "4 7/8", ("4 7/8", "4 1/8"), 900, 1_400, PaperWhy.ALONE)
UNSURE = ReadCell(PaperVerdict.UNSURE, "5 1/8", ("5 1/8", "5 7/8"), 90_000, 90_000, PaperWhy.DOUBTFUL)
NOTHING = ReadCell(PaperVerdict.EMPTY, "", (), 10, 10, PaperWhy.NOTHING)


def paper_cell(
    night: int, code: str, problem: str, cell: ReadCell = UNSURE, by: ReadBy = ReadBy.PROGRAM
) -> PaperCell:
    """Return a cell of the night's first reading."""
    return PaperCell(night, code, problem, 1, cell, by, NOW)


def keep_cell(store: Store, cell: PaperCell, crop: bytes = CROP) -> None:
    """Keep one cell by itself."""
    keep_paper_cells(store, cell.night, [(cell, crop)])
