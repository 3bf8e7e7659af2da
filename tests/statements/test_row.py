import pytest

from onewhole.statements.expression import Over
from onewhole.statements.reading import read_expression, read_statement
from onewhole.statements.row import Sign, flat, row
from onewhole.statements.statement import Relation


def _signs(written: str) -> str:
    return "".join(piece.value for piece in row(read_statement(written)) if isinstance(piece, Sign))


@pytest.mark.parametrize(
    ("written", "signs"),
    [
        ("6 + 1 - 2", "+-"),
        ("6 - (3 - 1)", "-(-)"),
        ("(6 - 3) + 1", "(-)+"),
        ("2 x 3 + 1", "x+"),
        ("2 x (3 + 1)", "x(+)"),
        ("2 x 3 x 4", "xx"),
        ("2 x (3 x 4)", "x(x)"),
        ("5/6 ? 7/8", "?"),
        ("5/6 < 7/8", "<"),
        ("7 = 6 ?/6 + 1", "=+"),
        ("7 - ? = 2", "-="),
    ],
)
def test_brackets_stand_where_the_tree_needs_them(written: str, signs: str) -> None:
    """A sum in a sum, a sum in a product, a product on the right of a product."""
    assert _signs(written) == signs


def test_a_fraction_being_worked_is_one_piece() -> None:
    """In a row it stays whole, flat it is written with brackets."""
    worked = read_expression("(44 - 23)/6")
    assert row(worked) == (worked,)
    assert isinstance(row(worked)[0], Over)
    assert [piece for piece in flat(worked) if isinstance(piece, Sign)] == list("(-)/")


@pytest.mark.parametrize("relation", list(Relation))
def test_a_relation_is_its_sign(relation: Relation) -> None:
    """A pupil may answer with a sign alone."""
    (sign,) = row(relation)
    assert sign == relation.value
