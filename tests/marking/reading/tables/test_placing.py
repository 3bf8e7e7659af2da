"""Sixty pasted blocks: every answer lands on its child and its problem, or a question is asked first."""

import pytest

from onewhole.marking.reading.tables.placing import Placing, place
from tests.kit.pasted_block import GRID, PastedBlock
from tests.kit.pasted_blocks import BLOCKS


def _cells(found: Placing) -> dict[tuple[str, str], str]:
    made = {
        (one.code, one.label): f"{one.text}>{one.read}" if one.read else one.text.replace("\n", " ")
        for one in found.cells
    }
    assert len(made) == len(found.cells)
    return made


def test_there_are_sixty() -> None:
    """Each with a name of its own."""
    assert len(BLOCKS) >= 60
    assert len({block.name for block in BLOCKS}) == len(BLOCKS)


@pytest.mark.parametrize("block", BLOCKS, ids=lambda block: block.name)
def test_nothing_lands_on_a_wrong_child(block: PastedBlock) -> None:
    """Before any question is answered only what is true is placed; after all are, everything that is true."""
    table = block.table
    before = _cells(place(table, GRID, {}))
    truth = {where: text.replace("\x01", "=") for where, text in block.cells.items()}
    assert {where: text for where, text in before.items() if truth.get(where) != text} == {}
    found = place(table, GRID, block.said)
    assert [(one.key, one.asks.value, one.about) for one in found.open] == []
    assert block.said.keys() <= {one.key for one in found.questions}
    assert _cells(found) == truth
