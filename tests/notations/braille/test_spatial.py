"""Numbers under each other in braille."""

import pytest

from onewhole.notations.braille.cells import ascii_braille
from onewhole.notations.braille.spatial import spatial
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize(
    ("typed", "lines"),
    [
        # Source: APH, Braille Brain, Nemeth, unit 5a: where sign and line stand.
        ("12 + 2", ("  12", " + 2", "33333")),
        ("$3.52 - $2.96", ("  @S3.52", " -@S2.96", "333333333")),
        ("999 + 1,000", ("   999", " +1000", "3333333")),
        ("5.2 - 2.75", ("  5.2", " -2.75", "3333333")),
        ("30 + 4 + 105", ("   30", "    4", " +105", "333333")),
    ],
)
def test_digits_stand_by_their_places(typed: str, lines: tuple[str, ...]) -> None:
    """With no numeric indicator, the points under each other."""
    assert tuple(map(ascii_braille, spatial(read_statement(typed)))) == lines


@pytest.mark.parametrize(
    "typed", ["7 2/6 - 3", "5 ft - 2 ft", "9 - 3 - 2", "3 x 4", "5/6 ? 7/8", "75¢ - 20¢"]
)
def test_other_questions_have_no_columns(typed: str) -> None:
    """Mixed numbers, measures, more than one that is taken away, products, comparisons."""
    assert spatial(read_statement(typed)) == ()
