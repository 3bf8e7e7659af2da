from fractions import Fraction

from onewhole.number.quantity import whole
from onewhole.statements.reading import read_expression, read_statement
from onewhole.statements.statement import Comparison, MissingNumber, Relation
from onewhole.working.line import Line, followed, kept, without_repeats
from onewhole.working.reasons.jumping import JumpedTo
from onewhole.working.reasons.taking import Left

THREE = Line(whole(3), JumpedTo(whole(3)), aside=True)


def test_what_a_line_keeps() -> None:
    """An amount, an order, or a missing number."""
    comparison, missing = read_statement("5/6 ? 7/8"), read_statement("7 2/6 = 6 ?/6")
    assert isinstance(comparison, Comparison)
    assert isinstance(missing, MissingNumber)
    assert kept(read_expression("6 8/6 - 3 5/6")) == Fraction(7, 2)
    assert kept(comparison) is Relation.LESS
    assert kept(missing) == 8


def test_a_repeated_line_is_not_written_again() -> None:
    """Whatever its reason."""
    other = Line(whole(3), Left(whole(3)), aside=True)
    assert followed((THREE,), other) == (THREE,)
    assert followed((THREE,), Line(whole(4))) == (THREE, Line(whole(4)))


def test_a_repeated_line_that_is_to_be_written_is_no_aside() -> None:
    """The pupil writes it, with the first reason."""
    assert followed((THREE,), Line(whole(3), Left(whole(3)))) == (Line(whole(3), JumpedTo(whole(3))),)
    assert followed((Line(whole(3)),), THREE) == (Line(whole(3)),)


def test_many_lines() -> None:
    """One under another, each thing once; a line may come again later."""
    lines = [Line(whole(n)) for n in (3, 3, 4, 4, 4, 3)]
    assert [line.says for line in without_repeats(lines)] == [whole(3), whole(4), whole(3)]
