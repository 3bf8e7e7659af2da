"""A sheet refuses to be empty, and two problems of one label."""

import pytest

from onewhole.problems.problem import Problem
from onewhole.sheets.document import Instruction, Sheet, SheetError
from onewhole.statements.reading import read_statement


def problem(label: str) -> Problem:
    """Return some problem of that label."""
    return Problem(label, read_statement("52 - 27"), "52 - 27")


def test_no_problem() -> None:
    """Words alone make no sheet."""
    with pytest.raises(SheetError, match="there is no problem"):
        Sheet((Instruction("Hello."),))


def test_one_label_twice() -> None:
    """Also in another case."""
    with pytest.raises(SheetError, match="two problems have the label 2A"):
        Sheet((problem("2a"), problem("2A")))


@pytest.mark.parametrize("words", ["", "# twice", " blank before", "two\nlines"])
def test_instructions(words: str) -> None:
    """What would not read back is refused."""
    with pytest.raises(ValueError, match=r"cannot stand on one line|needs words"):
        Instruction(words)


def test_problems_in_order() -> None:
    """Instructions are left out."""
    sheet = Sheet((problem("2"), Instruction("Then."), problem("1")))
    assert [one.label for one in sheet.problems] == ["2", "1"]
