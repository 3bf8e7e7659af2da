"""A number with a unit behind it, and money: 5 5/8 in, 5.2 km, $3.25."""

import pytest

from onewhole.languages.english.speech import say
from onewhole.notations.mathml import mathml
from onewhole.notations.text import printed, text
from onewhole.notations.typst_math import typst_math
from onewhole.number.ladder import Style
from onewhole.number.unit import Kind
from onewhole.statements.expression import quantities
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import Question
from onewhole.statements.tokens import ReadingError

#: As typed, as it is written back, and as it is said.
SAID = {
    "5 5/8 in": ("5 5/8 in", "five and five eighths inches"),
    '5 5/8"': ("5 5/8 in", "five and five eighths inches"),
    "5/8 inch": ("5/8 in", "five eighths of an inch"),
    "7/8 yards": ("7/8 yd", "seven eighths of a yard"),
    "4 5/8 cups": ("4 5/8 c", "four and five eighths cups"),
    "5.2 km": ("5.2 km", "five point two kilometers"),
    "0.5 L": ("0.5 L", "zero point five liters"),
    "$3.25": ("$3.25", "three dollars and twenty-five cents"),
    "3.25 dollars": ("$3.25", "three dollars and twenty-five cents"),
    "3 dollars and 25 cents": ("$3.25", "three dollars and twenty-five cents"),
    "3 dollars 5 cents": ("$3.05", "three dollars and five cents"),
    "$1.01": ("$1.01", "one dollar and one cent"),
    "$0.75": ("$0.75", "zero dollars and seventy-five cents"),
    "$3.00": ("$3.00", "three dollars and zero cents"),
    "$3": ("$3", "three dollars"),
    "12 dollars": ("$12", "twelve dollars"),
    "75¢": ("75¢", "seventy-five cents"),
    "75 cents": ("75¢", "seventy-five cents"),
    "2 dollars 12 dimes 5 cents": ("2 dollars 12 dimes 5 cents", "two dollars twelve dimes five cents"),
}


@pytest.mark.parametrize("typed", SAID)
def test_it_is_read_written_and_said(typed: str) -> None:
    """One unit, however it is spelt; money says its dollars and its cents."""
    found = read_quantity(typed)
    assert (text(found), say(found)) == SAID[typed]


def test_other_notations_write_the_unit_too() -> None:
    """A comma before every three digits, the dollar sign in front, the unit behind."""
    assert printed(read_quantity("$1250.50")) == "$1,250.50"
    assert typst_math(read_quantity("$3.25")) == '"$3.25"'
    assert typst_math(read_quantity("5 5/8 in")) == '5 frac(5, 8) thin "in"'
    assert "<mtext>$</mtext><mn>3.25</mn>" in mathml(read_quantity("$3.25"))
    assert "\N{NO-BREAK SPACE}in</mtext>" in mathml(read_quantity("5 5/8 in"))
    assert "<mn>75</mn><mtext>¢</mtext>" in mathml(read_quantity("75¢"))


def test_a_whole_number_of_the_unit_stands_beside_it() -> None:
    """In 5 in - 2 3/8 in both count inches and are worked as mixed numbers; 5 in alone is a measure."""
    statement = read_statement("5 in - 2 3/8 in")
    assert isinstance(statement, Question)
    assert [number.ladder.mark for number in quantities(statement.asked)] == ["in", "in"]
    assert {number.kind for number in quantities(statement.asked)} == {Kind.NUMBER}
    assert read_quantity("5 in").ladder.style is Style.MEASURE


@pytest.mark.parametrize(
    ("typed", "column", "what"),
    [
        ("5 5/8 in - 2", 1, "some numbers have a unit and some have none"),
        ("5 5/8 in + 2 1/2 ft", 1, "the numbers have two units"),
        ("$5 - 2.35", 1, "some numbers have a unit and some have none"),
        ("$5 - 75¢", 1, "$ and ¢ do not stand in one problem"),
        ("1/2 h + 15 min", 1, "a fraction or a decimal of one unit stands beside another unit"),
        ("2.5 m - 75 cm", 1, "a fraction or a decimal of one unit stands beside another unit"),
        ("3 ft - 1 m", 1, "customary and metric units do not stand in one problem"),
        ("2 kg ? 3 lb", 1, "customary and metric units do not stand in one problem"),
        ("$5 ? 75¢", 1, "$ and ¢ do not stand in one problem"),
        ("$5 - ? = 75¢", 1, "$ and ¢ do not stand in one problem"),
        ("$5 ? 3", 1, "some numbers have a unit and some have none"),
        ("$5 - ? = 2", 1, "some numbers have a unit and some have none"),
        ("$3.5 - $2", 2, "money has two places after the point, for the cents: here there is “3.5”"),
        ("$ - $2", 3, "how many dollars is missing: here there is “-”"),
        ("5 ft 3 1/2 in - 2 in", 6, "a fraction beside a larger unit is not read: here there is “3”"),
        ("$2 x $3", 1, "two numbers with units are not multiplied here"),
    ],
)
def test_what_does_not_go_together_is_refused_where_it_stands(typed: str, column: int, what: str) -> None:
    """In words for a teacher, with what to do next."""
    with pytest.raises(ReadingError) as refused:
        read_statement(typed)
    assert (refused.value.column, refused.value.what) == (column, what)
    assert refused.value.remedy
