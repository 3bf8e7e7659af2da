"""Cells of papers are kept with their pictures, changed, and taken away."""

import pytest
from msgspec.structs import replace

from onewhole.marking.paper.verdict import PaperVerdict
from onewhole.store.opening import Store
from onewhole.store.paper_cells import (
    CellState,
    ReadBy,
    change_paper_cells,
    forget_paper_cells,
    keep_paper_cells,
    nights_with_paper,
    paper_cells_of,
    paper_crop,
)
from onewhole.store.refusals import Damaged, NotStorable, NotThere
from onewhole.store.tables import READERS
from tests.kit.kept import first_round
from tests.kit.paper_cells import CROP, NOTHING, READ, UNSURE, keep_cell, paper_cell


def test_cells_come_back_as_they_were_kept(store: Store) -> None:
    """By pupil and problem, with choices of any letters; the picture by itself; a cell kept again is new."""
    night = first_round(store).night
    odd = replace(UNSURE, text='"\n,é', choices=('"\n,é', "\N{VULGAR FRACTION ONE HALF}", "[]"))
    cells = [paper_cell(night, "K02", "1", READ), paper_cell(night, "K01", "2", odd)]
    keep_paper_cells(store, night, [(one, CROP) for one in cells])
    assert paper_cells_of(store, night) == (cells[1], cells[0])
    assert paper_crop(store, night, "K02", "1") == CROP
    assert nights_with_paper(store, 1) == {night: 2}
    keep_cell(store, paper_cell(night, "K02", "1", NOTHING), b"other")
    assert [one.cell for one in paper_cells_of(store, night)] == [odd, NOTHING]
    assert paper_crop(store, night, "K02", "1") == b"other"


def test_what_is_to_be_done_with_a_cell(store: Store) -> None:
    """An unsure one waits; a sure one and an empty one stand; one that a person looked at is checked."""
    night = first_round(store).night
    states = [paper_cell(night, "K01", "1", cell).state for cell in (UNSURE, READ, NOTHING)]
    assert states == [CellState.OPEN, CellState.TAKEN, CellState.TAKEN]
    assert paper_cell(night, "K01", "1", UNSURE, ReadBy.PERSON).state is CellState.CHECKED
    assert tuple(one.value for one in ReadBy) == READERS


def test_all_or_none_are_kept(store: Store) -> None:
    """A code that is not there, a picture that is too large, a cell that is gone: nothing is changed."""
    night = first_round(store).night
    keep_cell(store, paper_cell(night, "K01", "1", READ))
    cells = [paper_cell(night, "K01", "2"), paper_cell(night, "K09", "1")]
    with pytest.raises(NotThere):
        keep_paper_cells(store, night, [(one, CROP) for one in cells])
    with pytest.raises(NotStorable):
        keep_paper_cells(store, night, [(paper_cell(night, "K01", "1"), b"x" * 200_000)])
    with pytest.raises(NotThere):
        change_paper_cells(store, night, [paper_cell(night, "K01", "1"), paper_cell(night, "K01", "2")])
    with pytest.raises(NotThere):
        keep_cell(store, paper_cell(night + 1, "K01", "1"))
    with pytest.raises(NotThere):
        paper_crop(store, night, "K01", "2")
    assert [one.cell for one in paper_cells_of(store, night)] == [READ]


def test_cells_are_forgotten(store: Store) -> None:
    """Some, or all of a night; the bytes of their pictures are nowhere in the file then."""
    night = first_round(store).night
    crop = b"a picture that is told from all others"
    for code in ("K01", "K02"):
        for label in ("1", "2"):
            keep_cell(store, paper_cell(night, code, label), crop)
    forget_paper_cells(store, night, [("K01", "1"), ("K02", "9")])
    assert [one.key for one in paper_cells_of(store, night)] == [("K01", "2"), ("K02", "1"), ("K02", "2")]
    forget_paper_cells(store, night)
    assert (paper_cells_of(store, night), nights_with_paper(store, 1)) == ((), {})
    store.close()
    assert crop not in store.path.read_bytes()


@pytest.mark.parametrize(
    "damage",
    ["why = 'the picture alone'", "choices = '{'", "choices = '[1]'", "doubt = 2000000", "verdict = 'sure'"],
)
def test_a_cell_that_cannot_be_is_damaged(store: Store, damage: str) -> None:
    """A verdict that does not go with its reason, choices that are none, a doubt above certain."""
    night = first_round(store).night
    keep_cell(store, paper_cell(night, "K01", "1"))
    with store.writing() as connection:
        connection.exec_driver_sql(f"UPDATE paper_cells SET {damage}")  # noqa: S608 - our own words
    with pytest.raises(Damaged):
        paper_cells_of(store, night)


def test_a_cell_is_of_one_verdict() -> None:
    """The kit's own cells are one of each."""
    assert [cell.verdict for cell in (READ, UNSURE, NOTHING)] == [*PaperVerdict]
