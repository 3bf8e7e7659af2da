"""Two roads to a line's width: the bound that lays the board out, and the page library setting the line."""

import datetime as dt
import io
import json
from fractions import Fraction

import pikepdf
from hypothesis import given, settings
from hypothesis import strategies as st

from onewhole.presses.pdf import press
from onewhole.statements.reading import read_expression, read_statement
from onewhole.walkthroughs.cue import Write
from onewhole.walkthroughs.measure import width
from onewhole.writers.formula import formula
from tests.kit.statements import statements

SIZE = 60
SOURCE = """
#import "/look/board.typ": line-of
#set par(leading: 0.1em, justify: false)
#for it in json(bytes(sys.inputs.data)) {
  page(width: auto, height: auto, margin: 0pt, line-of(it, 60pt))
}
"""
PRINTED = "".join(map(chr, range(33, 127)))


def set_widths(writes: list[Write]) -> list[Fraction]:
    """How wide each line is as the page library sets it, in units of the board."""
    lines = [
        {
            "says": each.content
            if isinstance(each.content, str)
            else formula(each.content, leads=each.leads),
            "label": each.label,
            "aside": each.aside,
            "heading": each.heading,
        }
        for each in writes
    ]
    made = press(
        SOURCE, data=json.dumps(lines).encode(), when=dt.datetime(2026, 3, 5, tzinfo=dt.UTC), standard="1.7"
    )
    with pikepdf.open(io.BytesIO(made)) as pdf:
        return [Fraction(str(page.mediabox[2])) for page in pdf.pages]


def test_each_sign_alone() -> None:
    """No printed sign of the words is wider than its bound, in a line and in a heading."""
    writes = [Write("a", sign * 10, heading=heading) for sign in PRINTED for heading in (False, True)]
    for each, found in zip(writes, set_widths(writes), strict=True):
        assert found <= width(each, Fraction(SIZE)), each


def test_lines_of_the_board() -> None:
    """The bound holds for mathematics with a label, an equals sign, a gap, brackets, and places."""
    writes = [
        Write("a", read_statement("7 2/6 - 3 5/6"), label="12"),
        Write("b", read_expression("6 8/6 - 3 5/6"), leads=True),
        Write("c", read_statement("3/4 = ?/12")),
        Write("d", read_statement("3/4 ? 7/12")),
        Write("e", read_expression("(44 - 23)/6"), leads=True, aside=True),
        Write("f", read_expression("7 2/6 - (3 5/6 - 1 1/6)")),
        Write("g", read_expression("4 tens 12 ones - 2 tens 7 ones")),
        Write("h", read_expression("5 ft 2 in - 2 ft 7 in")),
        Write("i", read_expression("5.2 - 2.7")),
    ]
    for each, found in zip(writes, set_widths(writes), strict=True):
        bound = width(each, Fraction(SIZE))
        assert found <= bound < 2 * found, each


@settings(max_examples=settings().max_examples // 4)
@given(st.lists(statements(), min_size=1, max_size=20))
def test_any_statement(asked: list[object]) -> None:
    """The bound holds for whatever can be read."""
    writes = [Write("a", one) for one in asked]  # type: ignore[arg-type]
    for each, found in zip(writes, set_widths(writes), strict=True):
        assert found <= width(each, Fraction(SIZE)), each
