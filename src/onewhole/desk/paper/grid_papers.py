"""Which answers of the grid came from papers, so that Marking shows the picture beside what was read."""

from collections.abc import Mapping

from onewhole.desk.paper.judged_cells import Key
from onewhole.store.opening import Store
from onewhole.store.paper_cells import CellState, paper_cells_of


def grid_papers(book: Store, night: int) -> Mapping[Key, CellState]:
    """Return the cells of a night of which a picture is kept, by code and label, with what is to be done."""
    return {one.key: one.state for one in paper_cells_of(book, night)}
