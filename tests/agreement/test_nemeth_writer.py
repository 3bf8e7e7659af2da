"""Our Nemeth braille against a reader that knows nothing of it, and against an engine of screen readers."""

import re

from hypothesis import given

from onewhole.notations.braille.chunks import one_line
from onewhole.notations.braille.nemeth import nemeth, nemeth_parts
from onewhole.notations.mathml import mathml
from onewhole.notations.text import text
from onewhole.statements.expression import Expression
from onewhole.statements.reading import read_statement
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import AnotherName, Ordering, Statement
from tests.kit.braille_reading import nemeth_read
from tests.kit.candidates import typed_space
from tests.kit.how_much import sample
from tests.kit.nemeth import brailled
from tests.kit.statements import any_expressions, statements

#: One of so many problems of the space; `make walk` takes all.
STEP = sample(331, 29, 1)
#: Lines on which the engine and we agree cell by cell.
OTHERS = (
    *("52 - 27", "1000000 - 345678", "12.05 - 3.8", "0.5 + 0.25", "3/4 + 5/6", "5/6 < 7/8", "3 1/2 > 3/2"),
    *("3 x 2/5", "8 - (3 1/2 - 1 1/2)", "2 1/2 + 3 1/2 + 4 1/2 - 1 1/2", "9 11/12 - 3 5/12 - 2 7/12"),
    *("(3 + 2)/6 + 1/6", "$3.50 + $2", "75¢ - 20¢", "1,234 + 3 1/2", "3 km", "1.5 km", "5 5/8 in"),
)
#: What is missing: the engine writes the shape that MathML has there, and its blanks; we write the general
#: omission symbol, spaced as what it stands for (section 57).
MISSING = ("5/6 ? 7/8", "7 2/6 = 6 ?/6", "3/4 = ?/12", "3/? = 6/8", "? + 2 1/3 = 5", "10 - ? - 2 = 3")
_SHAPE = re.compile("⠀*(?:⠫⠲|⠫⠉|⠿)⠀*")
_BEHIND_MINUS = re.compile("(?<=⠤)⠼")


def test_the_writer_agrees_with_an_engine_and_reads_back() -> None:
    """Cell by cell, over the small space."""
    typed = [read_statement(one) for one in [*OTHERS, *typed_space()[::STEP]]]
    theirs = brailled([mathml(one) for one in typed])
    wrong = [
        (text(one), nemeth(one), engine)
        for one, engine in zip(typed, theirs, strict=True)
        if nemeth(one) != engine or nemeth_read(nemeth(one)) != text(one)
    ]
    assert wrong == []
    print(f"{len(typed)} problems in Nemeth as the engine writes them, and read back")


def test_what_is_missing_differs_by_its_sign_alone() -> None:
    """The rest of the line is the engine's, cell by cell."""
    typed = [read_statement(one) for one in MISSING]
    for one, engine in zip(typed, brailled([mathml(one) for one in typed]), strict=True):
        ours, theirs = (_BEHIND_MINUS.sub("", _SHAPE.sub("⠿", braille)) for braille in (nemeth(one), engine))
        assert ours == theirs
        assert nemeth_read(nemeth(one)) == text(one)


#: A fraction of two plain numbers that is "still worked" is, in braille as on paper, a fraction.
_WORKED = re.compile(r"(?<![\w)])\((\d+)\)/(\d+)")


def _read_back(thing: Statement) -> str:
    parts = nemeth_parts(thing)
    return " ".join(one if isinstance(one, str) else nemeth_read(one_line(one)) for one in parts)


@given(statements())
def test_any_statement_reads_back(statement: Statement) -> None:
    """Measures, money, times of day, places in words, names, orders and roundings too."""
    written = text(statement)
    if isinstance(statement, AnotherName | Ordering | Rounding):
        written = f"{written[:1].upper()}{written[1:]}"
    assert _WORKED.sub(r"\1/\2", _read_back(statement)) == _WORKED.sub(r"\1/\2", written)


@given(any_expressions())
def test_any_line_of_a_working_reads_back(expression: Expression) -> None:
    """Brackets and fractions with numbers still being worked inside."""
    written = text(expression)
    assert _WORKED.sub(r"\1/\2", nemeth_read(nemeth(expression))) == _WORKED.sub(r"\1/\2", written)


def test_a_point_before_a_one_is_no_sign_of_comparison() -> None:
    """The same two cells: a sign of comparison has blanks at both sides."""
    one, more = read_statement("0.1 + 2.15"), read_statement("0.2 > 0.1")
    assert [nemeth_read(nemeth(said)) for said in (one, more)] == ["0.1 + 2.15", "0.2 > 0.1"]
