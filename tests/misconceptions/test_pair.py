import pytest

from onewhole.misconceptions.catalogue import shows
from onewhole.misconceptions.pair import like_parts, pair_of, unlike_parts
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize(
    "problem", ["7 2/6", "1 + 2 + 3", "3 x 2/5", "1/2 ? 2/3", "7 2/6 = 6 ?/6", "2 + ? = 5"]
)
def test_no_pair(problem: str) -> None:
    """Only a plain sum or difference of two numbers is a pair."""
    assert pair_of(read_statement(problem)) is None


def test_a_gap_alone_asks_the_same() -> None:
    """`? = 4 - 1 3/8` is the question 4 - 1 3/8."""
    assert pair_of(read_statement("? = 4 - 1 3/8")) == pair_of(read_statement("4 - 1 3/8"))


@pytest.mark.parametrize(
    ("problem", "first", "second"),
    [
        ("7 2/6 - 3 5/6", (7, 2), (3, 5)),
        ("4 - 3/8", (4, 0), (0, 3)),
        ("3 7/8 - 12", (3, 7), (12, 0)),
        ("3 1/2 - 2 3/2", (3, 1), (2, 3)),
    ],
)
def test_like_parts(problem: str, first: tuple[int, int], second: tuple[int, int]) -> None:
    """A whole number counts as having the other number's denominator, and pieces stay as they are written."""
    turned = problem.replace("3 7/8 - 12", "12 - 3 7/8")
    found = like_parts(read_statement(turned), taken=True)
    assert found is not None
    assert {found[1].first.amounts, found[1].second.amounts} == {first, second}


@pytest.mark.parametrize(
    "problem", ["7 - 3", "3/4 - 3/8", "7.5 - 2 1/2", "5 ft 2 in - 7 in", "7 2/6 + 3 5/6"]
)
def test_no_like_parts(problem: str) -> None:
    """Whole numbers, unlike denominators, decimals, measures and sums are no difference of like parts."""
    assert like_parts(read_statement(problem), taken=True) is None


def test_unlike_parts() -> None:
    """Both numbers show their pieces, of two sizes."""
    found = unlike_parts(read_statement("5 3/5 - 2 1/7"), taken=True)
    assert found is not None
    assert (found.first.amounts, found.second.amounts) == ((5, 3), (2, 1))
    for problem in ("4 - 3/8", "3/8 - 1/8", "5 3/5 + 2 1/7"):
        assert unlike_parts(read_statement(problem), taken=True) is None


@pytest.mark.parametrize(
    "typed", ["3 x 2/5", "24 x 36", "1/2 x 3/4", "345 + 128 + 67", "304 - 128", "7/8 - 3/8", "1/2 + 1/3"]
)
def test_a_result_that_is_missing_first_shows_what_the_question_shows(typed: str) -> None:
    """``? = 3 x 2/5`` is answered as ``3 x 2/5 = ?`` is, and so are its patterns."""
    first, last = (
        [(slip.pattern, slip.wrote) for slip in shows(read_statement(one))] for one in (f"? = {typed}", typed)
    )
    assert first == last
    assert first


def test_a_number_alone_is_no_question_of_another_name() -> None:
    """``? = 12/18`` asks for no simpler form."""
    assert shows(read_statement("? = 12/18")) == ()
