import re

import pytest

from onewhole.misconceptions.attempt import BelowZeroError, answer_claim, line_claim, written
from onewhole.misconceptions.slip import Slip, SlipError
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import mixed
from onewhole.statements.reading import read_expression, read_quantity, read_statement
from onewhole.statements.statement import Comparison, Relation
from onewhole.working.line import Line


def lines(*texts: str) -> tuple[Line, ...]:
    """Read lines."""
    return tuple(Line(read_expression(text)) for text in texts)


def test_a_slip_says_where_it_is_false() -> None:
    """The place of the one false line is counted from the problem."""
    slip = Slip("X", lines("7 2/6 - 3 5/6", "6 8/6 - 3 5/6", "3 4/6"), read_quantity("3 4/6"))
    assert slip.false_at == 2


@pytest.mark.parametrize(
    ("texts", "wrote", "breaks"),
    [
        (("5 - 2", "3"), "3", "0 lines, at ()"),
        (("5 - 2", "4 - 2", "3"), "3", "2 lines, at (1, 2)"),
    ],
)
def test_a_slip_that_breaks_not_exactly_one_line_is_refused(
    texts: tuple[str, ...], wrote: str, breaks: str
) -> None:
    """None is a right working, two are two patterns."""
    message = f"X breaks {breaks}. Fold what is wrong into one line."
    with pytest.raises(SlipError, match=f"^{re.escape(message)}$"):
        Slip("X", lines(*texts), read_quantity(wrote))


def test_a_slip_of_form_breaks_none() -> None:
    """A form keeps the amount, and one that does not is refused."""
    assert Slip("X", lines("5 - 2", "3"), read_quantity("3"), form=True).false_at is None
    with pytest.raises(SlipError, match="breaks 1 lines"):
        Slip("X", lines("5 - 2", "4"), read_quantity("4"), form=True)


def test_the_last_line_says_the_answer() -> None:
    """An answer that stands on no line is refused."""
    with pytest.raises(SlipError, match=r"^the last line of X does not say the answer"):
        Slip("X", lines("5 - 2", "4"), read_quantity("2"))


@pytest.mark.parametrize("also", ["4", "3"])
def test_another_way_to_write_it_is_wrong_too_and_another(also: str) -> None:
    """The same once more, and the right answer, are refused."""
    with pytest.raises(SlipError, match="right answer, or the same twice"):
        Slip("X", lines("5 - 2", "4"), read_quantity("4"), (read_quantity(also),))


def test_an_answer_without_a_value_is_the_false_line() -> None:
    """3 3/0 stands on no line and is false after a true working."""
    slip = Slip("X", lines("5 4/6 - 2 1/6"), Impossible(3, 3), (read_quantity("3"),))
    assert slip.false_at == 1
    assert slip.outcomes == (Impossible(3, 3), read_quantity("3"))
    with pytest.raises(SlipError, match="breaks 2 lines"):
        Slip("X", lines("5 4/6 - 2 1/6", "3"), Impossible(3, 3))


def test_a_sign_is_what_a_comparison_says() -> None:
    """A comparison with a wrong sign breaks the line; without a sign it says the true order."""
    asked = read_statement("1/8 ? 1/4")
    assert isinstance(asked, Comparison)
    signed = Comparison(asked.left, asked.right, Relation.GREATER)
    assert line_claim(asked) is Relation.LESS
    assert line_claim(signed) is Relation.GREATER
    assert Slip("X", (Line(asked), Line(signed)), Relation.GREATER).false_at == 1


def test_what_answers_are_worth() -> None:
    """An amount, an order, or nothing."""
    assert answer_claim(read_quantity("2 1/2")) == read_quantity("5/2").value
    assert answer_claim(Relation.EQUAL) is Relation.EQUAL
    assert answer_claim(Impossible(None, 3)) is None


def test_no_count_is_below_zero() -> None:
    """Counts below zero are refused with what was wanted."""
    with pytest.raises(BelowZeroError, match=re.escape("below zero: (-1, 3)")):
        written(mixed(8), (-1, 3))
