"""A long line folded into rows."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.notations.folding import Bit, Break, chunks, folded
from onewhole.notations.text import text
from onewhole.number.digits import in_digits
from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_expression
from onewhole.statements.row import Sign, row
from tests.kit.statements import statements


def one(_bit: Bit) -> int:
    """Every bit is as wide as any other."""
    return 1


@given(statements(), st.integers(1, 6))
def test_no_row_is_too_wide_and_nothing_is_lost(asked: object, room: int) -> None:
    """The rows hold all pieces in their order, none wider than the room; a refusal has a bit that is."""
    rows = folded(asked, room, one)  # type: ignore[arg-type]
    if rows is None:
        assert max(map(len, chunks(asked, Break.PLACE))) > room  # type: ignore[arg-type]
        return
    assert max(map(len, rows)) <= room
    signs = [bit for each in rows for bit in each if isinstance(bit, Sign)]
    assert signs == [bit for bit in row(asked) if isinstance(bit, Sign)]  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("room", "rows"),
    [
        (7, ["(90 - 40) + 7"]),
        (6, ["(90 - 40)", "+ 7"]),
        (3, ["(90", "- 40)", "+ 7"]),
    ],
)
def test_brackets_are_broken_last(room: int, rows: list[str]) -> None:
    """A break outside the brackets is taken before one inside."""
    found = folded(read_expression("(90 - 40) + 7"), room, one)
    assert found is not None
    spelt = [
        " ".join(
            bit.value if isinstance(bit, Sign) else text(bit) if isinstance(bit, Quantity) else str(bit)
            for bit in each
        )
        for each in found
    ]
    assert [each.replace("( ", "(").replace(" )", ")") for each in spelt] == rows


def test_place_words_are_broken_between_places() -> None:
    """Where one number is wider than the room, its places go on to the next row."""

    def wide(bit: Bit) -> int:
        return 3 if isinstance(bit, Quantity) and not in_digits(bit) else 1

    found = folded(read_expression("3 hundreds 9 tens 14 ones - 128"), 2, wide)
    assert found == (("3 hundreds", "9 tens"), ("14 ones",), row(read_expression("1 - 128"))[1:])
