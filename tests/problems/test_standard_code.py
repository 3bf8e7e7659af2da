"""Each problem has the code of one standard.

The codes and the samples: *Common Core State Standards for Mathematics* (2010), read in our own words.
"""

import pytest

from onewhole.problems.standard_code import standard_code
from onewhole.statements.reading import read_statement
from tools.topics.table import TOPICS, Topic


@pytest.mark.parametrize(
    ("typed", "grade", "code"),
    [
        ("3/10 + 4/100", 4, "4.NF.C.5"),  # the standard's own sample
        ("5 x 1/4", 4, "4.NF.B.4.a"),  # its own sample: 5/4 = 5 x 1/4
        ("3 x 2/5", 4, "4.NF.B.4.b"),  # its own sample: 3 x 2/5 = 6 x 1/5
        ("2/3 + 5/4", 5, "5.NF.A.1"),  # its own sample
        ("3 = ?/1", 3, "3.NF.A.3.c"),  # its own sample: 3 = 3/1
        ("3/8 ? 5/8", 3, "3.NF.A.3.d"),
        ("3/8 ? 3/5", 3, "3.NF.A.3.d"),
        ("3/8 ? 2/5", 4, "4.NF.A.2"),
        ("1.245 ? 1.25", 5, "5.NBT.A.3.b"),
        ("304 - 128", 3, "3.NBT.A.2"),
        ("7 x 8", 3, "3.OA.C.7"),
        ("6 x 40", 3, "3.NBT.A.3"),
        ("24 x 36", 4, "4.NBT.B.5"),
        ("4321 x 7", 4, "4.NBT.B.5"),
        ("241 x 36", 5, "5.NBT.B.5"),
        ("0.5 x 0.5", 5, "5.NBT.B.7"),
        ("round 47 to tens", 3, "3.NBT.A.1"),
    ],
)
def test_the_code_of_a_problem(typed: str, grade: int, code: str) -> None:
    """By what is done, with which units, and the grade where two grades ask the same."""
    assert standard_code(read_statement(typed), grade) == code


@pytest.mark.parametrize(
    ("typed", "code"),
    [
        ("5 1/3 - 2 2/3", "4.NF.B.3.d"),
        ("1/2 + 1/3", "5.NF.A.2"),
        ("4 x 2/3", "4.NF.B.4.c"),
        ("3/4 of $24", "4.MD.A.2"),
        ("3/4 of 2 ft", "4.MD.A.2"),
    ],
)
def test_a_word_problem_has_the_code_of_word_problems(typed: str, code: str) -> None:
    """Where the standards name them apart."""
    assert standard_code(read_statement(typed), story=True) == code
    assert standard_code(read_statement(typed)) != code


@pytest.mark.parametrize("topic", TOPICS, ids=lambda topic: topic.name)
def test_the_page_of_topics_names_the_same_codes(topic: Topic) -> None:
    """Its table was written by hand, topic by topic."""
    assert standard_code(read_statement(topic.typed)) == topic.standard
