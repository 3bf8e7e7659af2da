"""The notes on a page against what the standards say.

Source of every fact: *Common Core State Standards for Mathematics* (2010), CCSSM, by the code named at the
check; "from memory" where the text was not opened.
"""

import pytest

from onewhole.findings.standard import GRADE_3, GRADE_4
from onewhole.languages.english.standards import rule, standard_met
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.sheets.standards import STANDARDS, Provenance, notes
from onewhole.statements.expression import value
from onewhole.statements.reading import read_expression, read_statement
from tests.kit.sheets import worked_sheet


def codes(text: str) -> dict[str, tuple[str, ...]]:
    """Return the codes of the notes on a page, and their problems."""
    return {note.standard.code.value: note.labels for note in notes(worked_sheet(text))}


def test_the_denominators_of_the_footnotes() -> None:
    """Grade 4: 2, 3, 4, 5, 6, 8, 10, 12, 100; grade 3: 2, 3, 4, 6, 8. Footnotes to the NF domain (read)."""
    assert sorted(GRADE_4) == [2, 3, 4, 5, 6, 8, 10, 12, 100]
    assert sorted(GRADE_3) == [2, 3, 4, 6, 8]


@pytest.mark.parametrize(
    ("page", "code"),
    [
        ("1. 3 2/9 - 1 5/9", "K1"),
        ("grade: 3\n\n1. 2/5 + 1/5", "K2"),
        ("1. 2/3 + 1/4", "K3"),
        ("1. 2 - 5 + 4", "K4"),
        ("simplest form: yes\n\n1. 1/4 + 1/4", "K5"),
        ("1. 5 1/3 - 2 2/3 | A kite takes 2 2/3 of 5 1/3 wholes.", "K6"),
        ("1. 5 1/3 - 2 2/3 | A kite takes 2 2/3 of 5 1/3 metres.", "K7"),
        ("1. 1,000,000 + 1", "K8"),
        ("1. 2/3 + 1/4", "K9"),
        ("1. 2/3 x 1/4", "K10"),
        ("1. 5 1/3 - 2 2/3\n2. 7 1/4 - 2 3/4", "K11"),
        ("1. 3 2/7 - 1 5/7", "K12"),
        ("picture: strip\n\n1. 3 2/100 - 1 5/100", "K13"),
        ("grade: 3\n\n1. round 4567 to thousands", "K27"),
        ("1. round 3.46 to tenths", "K27"),
        ("1. round 450 to hundreds", "K28"),
    ],
)
def test_every_note_can_be_raised(page: str, code: str) -> None:
    """Each of them speaks where it should; none stops the page."""
    assert code in codes(page)


def test_the_notes_and_no_more() -> None:
    """K1 to K13 and a few more, each with source and provenance, a rule and a remedy of its own."""
    more = (14, 16, 17, 18, 19, 27, 28, 30, 36, 51)
    found = [standard.code.value for standard in STANDARDS]
    assert found == [f"K{at}" for at in (*range(1, 14), *more)]
    for standard in STANDARDS:
        assert rule(standard.code)
        assert standard.source
        assert standard_met(standard.code)
        assert standard.provenance in Provenance


@pytest.mark.parametrize(
    "page",
    [
        "1. 5 4/6 - 2 1/6\n2. 6 1/4 - 3 2/4",  # 4.NF.B.3.c
        "1. 3/10 + 4/100",  # 4.NF.C.5: the one exception to like denominators
        "1. 3 x 2/5",  # 4.NF.B.4.b
        "1. 5/6 ? 7/8",  # 4.NF.A.2
        "1. 3/4 = ?/12",  # 4.NF.A.1
        "1. 5 ft 2 in - 2 ft 7 in",  # 4.MD.A.2
        "1. round 345,678 to ten thousands",  # 4.NBT.A.3
        "grade: 3\n\n1. round 467 to hundreds",  # 3.NBT.A.1
        "grade: 5\n\n1. round 3.46 to tenths",  # 5.NBT.A.4
        "grade: 5\n\n1. 2/3 + 5/4\n2. 2/3 x 1/4",  # 5.NF.A.1, 5.NF.B.4 (from memory)
        "1. 999,999 + 1",  # footnote to 4.NBT: at or below 1,000,000
    ],
)
def test_what_the_standards_ask_for_raises_no_note(page: str) -> None:
    """A page inside its grade is quiet."""
    assert codes(page) == {}


@pytest.mark.parametrize(
    ("asked", "right"),
    [
        ("5 x 1/4", "5/4"),  # 4.NF.B.4.a
        ("3 x 2/5", "6/5"),  # 4.NF.B.4.b
        ("5 x 3/8", "15/8"),  # 4.NF.B.4.c
        ("3/10 + 4/100", "34/100"),  # 4.NF.C.5
        ("2/5 + 1/2", "9/10"),  # 5.NF.A.2
        ("2/3 + 5/4", "23/12"),  # 5.NF.A.1
    ],
)
def test_the_worked_samples_of_the_standards(asked: str, right: str) -> None:
    """The key gives the amount that the standard's own sample gives."""
    found = answer(read_statement(asked))
    assert isinstance(found, Quantity)
    assert found.value == value(read_expression(right))
