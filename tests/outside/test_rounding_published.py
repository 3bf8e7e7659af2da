"""Published examples of rounding, with their answers.

Source of RND01 to RND08 and RND13: OpenStax, Prealgebra 2e, worked examples of the sections on whole numbers
and on decimals. Source of RND09 to RND12: Wikibooks, Basic Math for Adults. RND15 is our own: rounding twice
gives 500. Of a number exactly halfway the published answer goes up; the standards (CCSSM 3.NBT.A.1,
4.NBT.A.3, 5.NBT.A.4) have no rule for it, and Ohio's published scoring for grades 3 to 5 takes either.
"""

import pytest

from onewhole.marking.reading.expected import Expected, expect
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_answer, read_statement

PUBLISHED = (
    ("RND01", "843 to the nearest ten", "840"),
    ("RND02", "23,658 to the nearest hundred", "23,700"),
    ("RND03", "3,978 to the nearest hundred", "4,000"),
    ("RND04", "147,032 to the nearest thousand", "147,000"),
    ("RND05", "29,504 to the nearest thousand", "30,000"),
    ("RND06", "18.379 to the nearest hundredth", "18.38"),
    ("RND07", "18.379 to the nearest tenth", "18.4"),
    ("RND08", "18.379 to the nearest whole number", "18"),
    ("RND09", "245 to the nearest ten", "250"),
    ("RND10", "324 to the nearest ten", "320"),
    ("RND11", "1.5 to the nearest whole number", "2"),
    ("RND12", "2.1 to the nearest whole number", "2"),
    ("RND13", "28.232 to the nearest hundredth", "28.23"),
    ("RND15", "445 to the nearest hundred", "400"),
)


def expected_of(asked: str) -> Expected:
    """Return what the answers to a number to be rounded are compared with."""
    typed = f"round {asked}"
    return expect(Problem("1", read_statement(typed), typed))


@pytest.mark.parametrize(("row", "asked", "published"), PUBLISHED)
def test_the_published_answer_is_the_right_one(row: str, asked: str, published: str) -> None:
    """It is what the key writes, and any other neighbor is wrong but at a tie."""
    expected = expected_of(asked)
    assert expected.right == read_answer(published), row


TIES = (("245 to tens", ("240", "250")), ("1.5 to wholes", ("1", "2")))


@pytest.mark.parametrize(("asked", "either"), TIES)
def test_exactly_halfway_either_neighbor_is_right(asked: str, either: tuple[str, str]) -> None:
    """As Ohio's scoring takes it; a number beside them is wrong."""
    expected = expected_of(asked)
    assert all(expected.is_right(read_answer(text)) for text in either)
    assert not expected.is_right(read_answer("230"))


def test_twice_rounded_is_wrong() -> None:
    """445 is 400 to the nearest hundred: by way of 450 it would be 500 (common practice, no source)."""
    assert not expected_of("445 to hundreds").is_right(read_answer("500"))
