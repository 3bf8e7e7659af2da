"""The longest and deepest lines that are read can be written in every notation; longer ones are refused."""

import pytest

from onewhole.languages.english.speech import say
from onewhole.notations.mathml import mathml
from onewhole.notations.text import text
from onewhole.notations.typst_math import typst_math
from onewhole.statements.reading import DEEPEST, read_statement
from onewhole.statements.tokens import LONGEST_TEXT, ReadingError

LONGEST = [
    "+".join("1" * (LONGEST_TEXT // 2)),
    "x".join("1" * DEEPEST),
    "(" * DEEPEST + "1" + ")" * DEEPEST,
    "(1)/" * DEEPEST + "1",
    " - ".join(["999999999", *["1 1/1000"] * 100]),
]


@pytest.mark.parametrize("line", LONGEST, ids=len)
def test_every_notation_writes_the_longest_lines(line: str) -> None:
    """Nothing that is read is too long or too deep to be written."""
    statement = read_statement(line)
    assert all(write(statement) for write in (text, say, mathml, typst_math))


@pytest.mark.parametrize(
    ("line", "what", "column"),
    [
        ("x".join("1" * (DEEPEST + 1)), "so many factors cannot be read", 2 * DEEPEST),
        ("(1)/" * (DEEPEST + 1) + "1", "so many brackets cannot be read", 4 * DEEPEST + 2),
    ],
)
def test_longer_ones_are_refused(line: str, what: str, column: int) -> None:
    """One factor or one fraction under a fraction more is refused where it stands."""
    with pytest.raises(ReadingError) as refused:
        read_statement(line)
    assert refused.value.what.startswith(what)
    assert refused.value.column == column
