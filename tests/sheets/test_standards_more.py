"""The notes of K14 on: sizes of grade 3 and 4, zeros, lengths, ordering, units, decimals.

Source of the rules: *Common Core State Standards for Mathematics* (2010), read; K16 and K17 are our own.
"""

import pytest

from onewhole.languages.english.standards import rule, standard_met
from onewhole.notations.sentences.text import text_of
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.standards import STANDARDS, notes
from onewhole.sheets.worked import WorkedSheet


def codes(typed: str, grade: int) -> dict[str, tuple[str, ...]]:
    """The notes of a page, each with its problems."""
    found = notes(WorkedSheet(read_sheet(f"grade: {grade}\n\n{typed}")))
    return {note.standard.code.value: note.labels for note in found}


@pytest.mark.parametrize(
    ("typed", "grade", "code"),
    [
        ("1. 4567 + 3789", 3, "K14"),
        ("1. 1204 - 387", 3, "K14"),
        ("1. 24 x 36", 3, "K18"),
        ("1. 241 x 36", 4, "K19"),
        ("1. order 2/3, 1/2, 3/4", 4, "K30"),
        ("1. 36 in = ? ft", 4, "K36"),
        ("1. 5.2 - 2.7", 3, "K51"),
        ("1. 0.45 ? 0.6", 3, "K51"),
    ],
)
def test_a_problem_draws_a_note(typed: str, grade: int, code: str) -> None:
    """In its grade, and not in the next one that asks for it."""
    assert codes(typed, grade)[code] == ("1",)
    if code != "K30":
        assert code not in codes(typed, 5)


@pytest.mark.parametrize(
    ("typed", "grade"),
    [
        ("1. 304 - 128", 3),
        ("1. 4567 + 3789", 4),
        ("1. 7 x 8", 3),
        ("1. 6 x 40", 3),
        ("1. 24 x 36", 4),
        ("1. 3 ft = ? in", 4),
        ("1. 5.2 - 2.7", 4),
        ("1. 2/3 ? 3/4", 4),
    ],
)
def test_what_the_grade_asks_for_draws_none(typed: str, grade: int) -> None:
    """Of these."""
    assert not {"K14", "K18", "K19", "K30", "K36", "K51"} & set(codes(typed, grade))


@pytest.mark.parametrize(
    ("problems", "code", "there"),
    [
        (("342 - 118", "561 - 223", "782 - 345", "963 - 478"), "K16", True),
        (("302 - 118", "501 - 223", "702 - 345", "903 - 478"), "K16", True),
        (("302 - 118", "561 - 223", "782 - 345", "963 - 478"), "K16", False),
        (("342 - 118", "561 - 223", "782 - 345"), "K16", False),
        (("342 - 118", "561 - 223", "782 + 345", "963 - 478"), "K17", True),
        (("342 - 18", "561 - 223", "782 + 345", "963 - 478"), "K17", False),
    ],
)
def test_zeros_and_lengths_of_a_page(problems: tuple[str, ...], code: str, there: bool) -> None:
    """Said of the page where none of several problems has them, or (zeros) all."""
    typed = "\n".join(f"{at}. {one}" for at, one in enumerate(problems, 1))
    found = codes(typed, 4)
    assert (code in found) == there
    assert found.get(code, ()) == ()


def test_every_note_has_words_and_a_source() -> None:
    """One row a code, each with what is expected, what may be done and where it comes from."""
    assert len({one.code for one in STANDARDS}) == len(STANDARDS)
    for one in STANDARDS:
        assert text_of(rule(one.code)).endswith(".")
        assert text_of(standard_met(one.code)).endswith(".")
        assert one.source
