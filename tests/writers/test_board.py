import json

import pytest
from msgspec.structs import replace

from onewhole.errors import Fault
from onewhole.statements.reading import read_expression
from onewhole.walkthroughs.cue import Place, Write
from onewhole.writers.board import board

PLACE = Place(60, 40, 900, 102)
LINE = Write("b", read_expression("6 8/6 - 3 5/6"), label="12a", leads=True, aside=True, place=PLACE)


def _lines(*writes: Write) -> list[dict[str, object]]:
    _, data = board(writes)
    lines: list[dict[str, object]] = json.loads(data)["lines"]
    return lines


def test_a_formula_leads_with_its_equals_sign() -> None:
    """Formula, label, size of the place, and how it is written, all reach the look."""
    assert _lines(LINE) == [
        {
            "says": {
                "math": "= 6 frac(8, 6) \N{MINUS SIGN} 3 frac(5, 6)",
                "alt": "equals six and eight sixths minus three and five sixths",
            },
            "label": "12a",
            "aside": True,
            "heading": False,
            "width": 900,
            "height": 102,
        }
    ]


def test_words_lead_too() -> None:
    """Plain words stay plain words, with the equals sign before them where it is asked for."""
    title = Write("t", "Kites", heading=True, place=PLACE)
    assert [line["says"] for line in _lines(title, replace(title, leads=True))] == ["Kites", "= Kites"]


def test_where_it_stands_changes_nothing() -> None:
    """Two lines that differ in name and place alone are set alike."""
    first, second = _lines(LINE, replace(LINE, name="other", place=replace(PLACE, x=7, y=9)))
    assert first == second


def test_a_line_without_a_place_is_a_fault() -> None:
    """The board is laid out before it is set."""
    with pytest.raises(Fault, match="has no place"):
        board([Write("t", "Kites")])
