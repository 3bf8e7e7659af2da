"""Numbers to be put in order: read as typed, and rows of numbers as answers."""

from fractions import Fraction

import pytest

from onewhole.languages.english.speech import say
from onewhole.notations.mathml import mathml
from onewhole.notations.text import printed, text
from onewhole.notations.typst_math import typst_math
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import KindError
from onewhole.statements.ordering_reading import number_row
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import NumberRow, Ordering, Relation, meaning
from onewhole.statements.tokens import ReadingError


def asked(typed: str) -> Ordering:
    """Read an ordering."""
    found = read_statement(typed)
    assert isinstance(found, Ordering)
    return found


def row(written: str) -> NumberRow:
    """Read a row as an answer."""
    return number_row(written, 1, 1, read_quantity)


def numbers(typed: str) -> tuple[Quantity, ...]:
    """Read numbers parted by semicolons."""
    return tuple(map(read_quantity, typed.split(";")))


@pytest.mark.parametrize(
    ("typed", "parts", "falling"),
    [
        ("order 2/3, 1/2, 3/4", "2/3;1/2;3/4", False),
        ("Order 2/3; 1/2; 3/4.", "2/3;1/2;3/4", False),
        ("put in order 2/3, 1/2 from least", "2/3;1/2", False),
        ("order 2/3, 1/2 from greatest", "2/3;1/2", True),
        ("order 2/3, 1/2, from the largest to the smallest", "2/3;1/2", True),
        ("order from greatest to least: 2/3, 1/2", "2/3;1/2", True),
        ("order from smallest: 2/3, 1/2", "2/3;1/2", False),
        ("order: 2/3, 1/2", "2/3;1/2", False),
        ("order 345, 354,1,205, 12", "345;354;1205;12", False),
        ("order 1,205, 1,250", "1205;1250", False),
        ("order 5 ft, 4 ft 11 in, 61 in", "5 ft;4 ft 11 in;61 in", False),
        ("order 2 1/2, 0.5, 3", "2 1/2;0.5;3", False),
        ("order $3.25, $2.50", "$3.25;$2.50", False),
    ],
)
def test_every_spelling(typed: str, parts: str, falling: bool) -> None:
    """The numbers as they are typed, and from which end."""
    found = asked(typed)
    assert found == Ordering(numbers(parts), falling)


@pytest.mark.parametrize(
    "typed", ["order 2/3, 1/2, 3/4", "order 1,205, 354 from greatest", "order 5 ft, 61 in"]
)
def test_it_is_written_in_words_that_are_read_back(typed: str) -> None:
    """Plain text, and what is printed."""
    found = asked(typed)
    assert read_statement(text(found)) == read_statement(printed(found)) == found


def test_whole_inches_beside_inches_with_a_fraction() -> None:
    """5 3/8 in and 4 in are numbers of one unit, and 4 in alone is a measure."""
    found = asked("order 5 3/8 in, 4 in, 4 1/2 in")
    assert found.parts == (read_quantity("5 3/8 in"), whole(4, "in"), read_quantity("4 1/2 in"))
    assert read_statement(text(found)) == found
    assert found.is_right(row("4 in, 4 1/2 in, 5 3/8 in"))
    assert asked("order 5 in, 4 in").parts == numbers("5 in;4 in")


def test_every_notation() -> None:
    """Commas close up to the number before them; the row of an answer has its signs."""
    found = asked("order 2/3, 1/2")
    assert printed(found) == "order 2/3, 1/2 from least to greatest"
    assert say(found) == "order two thirds, one half from least to greatest"
    assert typst_math(found) == '"Order" frac(2, 3)"," fold frac(1, 2) fold "from least" fold "to greatest"'
    assert "<mo>,</mo>" in mathml(found)
    assert text(found.ordered) == "1/2 < 2/3"
    assert text(asked("order 2/3, 2/4, 1/2 from greatest").ordered) == "2/3 > 2/4 = 1/2"


@pytest.mark.parametrize(
    ("typed", "what", "column"),
    [
        ("order 2/3", "2 to 8 numbers can be put in order, and here stand 1", 1),
        ("order 345,354", "2 to 8 numbers can be put in order, and here stand 1", 1),
        ("order 1, 2, 3, 4, 5, 6, 7, 8, 9", "2 to 8 numbers can be put in order, and here stand 9", 1),
        ("order 2/3, , 3/4", "a number is missing between two commas or signs", 11),
        ("order", "a number is missing between two commas or signs", 6),
        ("order 2/3 < 3/4", "a sign stands between numbers that are to be put in order", 7),
        ("order 2/3, 1/0", "a whole cannot be cut into 0 equal parts: here there is “0”", 14),
        ("order 2/3, kite", "a number is missing: here there is “kite”", 12),
        ("order 2/3, 1/2 + 1/4", "one number is wanted here, not a problem", 11),
        ("order 5 ft, 3", "numbers that measure different things cannot be put in order", 1),
    ],
)
def test_what_cannot_be_ordered_is_refused_with_its_place(typed: str, what: str, column: int) -> None:
    """All in words, with the column."""
    with pytest.raises(ReadingError) as refused:
        read_statement(typed)
    assert (refused.value.what, refused.value.column) == (what, column)


@pytest.mark.parametrize(
    ("written", "parts", "signs"),
    [
        ("1/2, 2/3, 3/4", "1/2;2/3;3/4", ""),
        ("1/2 < 2/3 < 3/4", "1/2;2/3;3/4", "<<"),
        ("3/4>2/3=4/6", "3/4;2/3;4/6", ">="),
        ("1/2; 2/3", "1/2;2/3", ""),
        ("1/2", "1/2", ""),
    ],
)
def test_a_row_as_a_child_writes_it(written: str, parts: str, signs: str) -> None:
    """With commas, semicolons or signs."""
    assert row(written) == NumberRow(numbers(parts), tuple(map(Relation, signs)))


def test_commas_and_signs_are_not_mixed() -> None:
    """What a child means by both, nobody can say."""
    with pytest.raises(ReadingError, match="here stand commas and signs between the numbers"):
        row("1/2, 2/3 < 3/4")


def test_what_is_right() -> None:
    """Any form of the amounts, equal ones in either order, signs only where they are true."""
    found = asked("order 3/4, 1/2, 2/4")
    right = ("1/2, 2/4, 3/4", "2/4, 1/2, 3/4", "0.5, 1/2, 0.75", "1/2 = 2/4 < 3/4")
    wrong = ("3/4, 1/2, 2/4", "1/2 < 2/4 < 3/4", "1/2, 3/4", "1/2, 1/2, 1/2", "3/4, 2/4, 1/2")
    assert all(found.is_right(row(written)) for written in right)
    assert not any(found.is_right(row(written)) for written in wrong)
    assert [found.is_reversed(row(written)) for written in wrong] == [True, False, False, False, True]
    assert not asked("order 5 ft, 4 ft").is_right(row("48, 60"))


def test_what_an_ordering_keeps() -> None:
    """Its amounts in the order that is asked for."""
    assert meaning(asked("order 2/3, 1/2")) == (Fraction(1, 2), Fraction(2, 3))
    assert meaning(asked("order 2/3, 1/2, 1 from greatest")) == (1, Fraction(2, 3), Fraction(1, 2))


def test_a_wrong_ordering_cannot_be_made() -> None:
    """Too few, too many, unlike kinds; signs for other gaps than there are."""
    with pytest.raises(ValueError, match="1 numbers cannot be put in order; 2 to 8 can"):
        Ordering((whole(1),))
    with pytest.raises(KindError):
        Ordering((whole(1), read_quantity("5 ft")))
    with pytest.raises(ValueError, match="there is one sign between two numbers"):
        NumberRow((whole(1), whole(2)), (Relation.LESS, Relation.LESS))
