"""What people type, read."""

from fractions import Fraction

import pytest

from onewhole.number.impossible import Impossible
from onewhole.number.ladder import decimal, measure, mixed, places
from onewhole.number.quantity import Quantity, whole
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Expression, Over, Sum, Term, Times, minus, plus, value
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.reading import (
    read_answer,
    read_expression,
    read_quantity,
    read_statement,
)
from onewhole.statements.statement import Comparison, MissingNumber, Question, Relation
from onewhole.statements.tokens import ReadingError


def sixths(wholes: int | None, pieces: int) -> Quantity:
    """A number in sixths."""
    return Quantity(mixed(6), (wholes, pieces))


def feet(feet_: int, inches: int) -> Quantity:
    """A length in feet and inches."""
    return Quantity(measure("ft", "in"), (feet_, inches))


KITE = minus(sixths(7, 2), sixths(3, 5))


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        # as the issue of a page is typed
        ("7 2/6 - 3 5/6", KITE),
        ("7 2/6 \N{MINUS SIGN} 3 5/6", KITE),
        ("7\N{VULGAR FRACTION TWO THIRDS}", Quantity(mixed(3), (7, 2))),
        ("3 and 5/6", sixths(3, 5)),
        ("39/8", Quantity(mixed(8), (None, 39))),
        ("4", whole(4)),
        ("4 9/8", Quantity(mixed(8), (4, 9))),
        ("4 14/16", Quantity(mixed(16), (4, 14))),
        # spaces anywhere sensible
        ("  7   2 / 6-3 5 /6  ", KITE),
        ("7/6", sixths(None, 7)),
        ("7 2 / 6", sixths(7, 2)),
        ("7\t2/6\N{NO-BREAK SPACE}-\N{THIN SPACE}3 5/6", KITE),
        ("7 2/6-3 5/6=", KITE),
        ("7 2/6 - 3 5/6 =", KITE),
        # every dash and slash that keyboards make
        ("7 2/6 \N{EN DASH} 3 5/6", KITE),
        ("7 2/6 \N{EM DASH} 3 5/6", KITE),
        ("7 2/6 \N{HYPHEN} 3 5/6", KITE),
        ("7 2/6 \N{NON-BREAKING HYPHEN} 3 5/6", KITE),
        ("7 2\N{FRACTION SLASH}6 - 3 5\N{DIVISION SLASH}6", KITE),
        # fractions in one sign
        ("\N{VULGAR FRACTION ONE HALF}", Quantity(mixed(2), (None, 1))),
        ("7 \N{VULGAR FRACTION FIVE SIXTHS}", sixths(7, 5)),
        ("\N{VULGAR FRACTION ZERO THIRDS}", Quantity(mixed(3), (None, 0))),
        # whole numbers, decimals, places
        ("52 - 27", minus(whole(52), whole(27))),
        ("1,000,000", whole(1_000_000)),
        ("05", whole(5)),
        ("0", whole(0)),
        ("5.2 - 2.7", minus(Quantity(decimal(1, 1), (5, 2)), Quantity(decimal(1, 1), (2, 7)))),
        (".50", Quantity(decimal(1, 2), (0, 5, 0))),
        ("4 tens 12 ones", Quantity(places(2), (4, 12))),
        ("2 hundreds 14 ones", Quantity(places(3), (2, 0, 14))),
        ("4 Ones 12 tenths", Quantity(decimal(1, 1), (4, 12))),
        # measures
        ("5 ft 2 in - 2 ft 7 in", minus(feet(5, 2), feet(2, 7))),
        ("5 feet and 2 inches", feet(5, 2)),
        ("5' 2\"", feet(5, 2)),
        ("5\N{PRIME}2\N{DOUBLE PRIME}", feet(5, 2)),
        ("5\N{RIGHT SINGLE QUOTATION MARK} 2\N{RIGHT DOUBLE QUOTATION MARK}", feet(5, 2)),
        ("5 ft. 2 in.", feet(5, 2)),
        ("14 in", Quantity(measure("in"), (14,))),
        ("1 yd 2 ft", Quantity(measure("yd", "ft"), (1, 2))),
        ("5 lb 2 oz", Quantity(measure("lb", "oz"), (5, 2))),
        ("5 h 2 min", Quantity(measure("h", "min"), (5, 2))),
        ("5 hours 2 minutes", Quantity(measure("h", "min"), (5, 2))),
        # longer rows, brackets, products, worked fractions
        ("1 + 2 - 3", Sum((Term(whole(1)), Term(whole(2)), Term(whole(3), taken=True)))),
        ("1 - (2 - 1)", minus(whole(1), minus(whole(2), whole(1)))),
        ("((4))", whole(4)),
        ("5 x 1/4", Times(whole(5), Quantity(mixed(4), (None, 1)))),
        ("5 \N{MULTIPLICATION SIGN} 4", Times(whole(5), whole(4))),
        ("5*4", Times(whole(5), whole(4))),
        ("(44 - 23)/6", Over(minus(whole(44), whole(23)), whole(6))),
        ("(3 x 2)/(6 x 2)", Over(Times(whole(3), whole(2)), Times(whole(6), whole(2)))),
        ("7 -2/6", minus(whole(7), sixths(None, 2))),
    ],
)
def test_what_is_read(typed: str, read: Expression) -> None:
    """The same question, whichever keys were pressed."""
    assert read_statement(typed) == Question(read)


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("5/6 ? 7/8", Comparison(sixths(None, 5), Quantity(mixed(8), (None, 7)))),
        ("5/6 _ 7/8", Comparison(sixths(None, 5), Quantity(mixed(8), (None, 7)))),
        ("5/6 < 7/8", Comparison(sixths(None, 5), Quantity(mixed(8), (None, 7)), Relation.LESS)),
        ("3 > 4", Comparison(whole(3), whole(4), Relation.GREATER)),
        ("2 + 3 = 5", Comparison(plus(whole(2), whole(3)), whole(5), Relation.EQUAL)),
        ("7 2/6 = 6 ?/6", MissingNumber(sixths(7, 2), Gap(6, HOLE, 6))),
        ("7 2/6 = 6 __/6", MissingNumber(sixths(7, 2), Gap(6, HOLE, 6))),
        ("6 ?/6 = 7 2/6", MissingNumber(sixths(7, 2), Gap(6, HOLE, 6), gap_left=True)),
        ("7 2/6 = ? 8/6", MissingNumber(sixths(7, 2), Gap(HOLE, 8, 6))),
        ("8/6 = 4/?", MissingNumber(sixths(None, 8), Gap(None, 4, HOLE))),
        ("? = 4", MissingNumber(whole(4), Gap(HOLE), gap_left=True)),
        ("1 + ? = 4", MissingNumber(whole(4), Gap(HOLE), ((whole(1), False),), 1, gap_left=True)),
        ("9 - ? = 4", MissingNumber(whole(4), Gap(HOLE), ((whole(9), False),), 1, True, True)),  # noqa: FBT003
        ("4 = \N{WHITE SQUARE} - 1", MissingNumber(whole(4), Gap(HOLE), ((whole(1), True),))),
    ],
)
def test_comparisons_and_missing_numbers(typed: str, read: Comparison | MissingNumber) -> None:
    """What is asked for is a sign, or one number in an equation."""
    assert read_statement(typed) == read


def test_an_unknown_after_the_equals_sign_is_a_question() -> None:
    """7 2/6 - 3 5/6 = ? asks how much it is."""
    assert read_statement("7 2/6 - 3 5/6 = ?") == Question(KITE)


class TestQuantity:
    def test_one_number_is_read(self) -> None:
        """A number, also in brackets."""
        assert read_quantity("3 and 5/6") == read_quantity("(3 5/6)") == sixths(3, 5)

    def test_a_problem_is_refused(self) -> None:
        """More than one number is no number."""
        with pytest.raises(ReadingError) as refused:
            read_quantity("3 + 3")
        assert str(refused.value) == (
            "one number is wanted here, not a problem (line 1, column 1). Write one number such as 3 5/6."
        )


class TestExpression:
    def test_below_zero_has_a_value_on_the_way(self) -> None:
        """An expression is only weighed; that it is no problem for grade 4 is said elsewhere."""
        assert value(read_expression("2 - 3")) == Fraction(-1)

    def test_nothing_is_left_over(self) -> None:
        """An equals sign does not belong to an expression."""
        with pytest.raises(ReadingError, match=r"^this does not belong to the expression: here there is “=”"):
            read_expression("2 = 2")


class TestAnswer:
    @pytest.mark.parametrize(
        ("written", "read"),
        [
            ("3 3/6", sixths(3, 3)),
            ("= 3 3/6", sixths(3, 3)),
            ("3 3/0", Impossible(3, 3)),
            ("3/0", Impossible(None, 3)),
            ("=", Relation.EQUAL),
            ("<", Relation.LESS),
            (">", Relation.GREATER),
            ("2 ft 7 in", feet(2, 7)),
            ("-3 3/6", WithMinus(sixths(3, 3))),
            ("\N{MINUS SIGN} 2 ft 7 in", WithMinus(feet(2, 7))),
            ("-3/-6", WithMinus(sixths(None, 3), below=True)),
            ("= 3/-6", WithMinus(sixths(None, 3), front=False, below=True)),
            ("-3/0", WithMinus(Impossible(None, 3))),
            ("-3/-0", WithMinus(Impossible(None, 3), below=True)),
        ],
    )
    def test_what_a_pupil_wrote(
        self, written: str, read: Quantity | Impossible | WithMinus | Relation
    ) -> None:
        """A number, what is no number, or a sign."""
        assert read_answer(written) == read

    @pytest.mark.parametrize(
        ("written", "column", "what"),
        [
            ("", 1, "a number is missing: here the line ends"),
            ("3 + 3", 3, "an answer is one number: here there is “+”"),
            ("3 3/6 r", 8, "a number is missing: here the line ends"),
            ("--3", 2, "a number is missing: here there is “-”"),
            ("-?", 2, "a number with a minus sign has no missing part"),
            ("3 1/-2", 5, "a denominator is missing: here there is “-”"),
            ("-1/-2000", 5, "so many equal parts are not worked here: here there is “2000”"),
            ("?/6", 1, "an answer has no missing part"),
            ("<=", 2, "an answer is one number: here there is “=”"),
        ],
    )
    def test_what_cannot_be_read(self, written: str, column: int, what: str) -> None:
        """Refused with the place, so that the cell can be kept as written and shown."""
        with pytest.raises(ReadingError) as refused:
            read_answer(written)
        assert (refused.value.what, refused.value.column) == (what, column)


@pytest.mark.parametrize(
    ("typed", "same"),
    [
        ("3/4 of 20", "3/4 x 20"),
        ("3/4 OF 2/3", "3/4 x 2/3"),
        ("1/2 de 20", "1/2 x 20"),
        ("2/3 of 12 + 1", "2/3 x 12 + 1"),
    ],
)
def test_a_fraction_of_a_number_is_a_product(typed: str, same: str) -> None:
    """Source: 5.NF.B.4 (CCSSM 2010) reads (a/b) x q as a parts of q cut into b."""
    assert read_statement(typed) == read_statement(same)


@pytest.mark.parametrize(("typed", "column"), [("5 of 2", 3), ("1/2 of", 7), ("1/2 in of 3", 5)])
def test_nothing_but_a_fraction_is_taken_of_a_number(typed: str, column: int) -> None:
    """Refused with its place."""
    with pytest.raises(ReadingError) as refused:
        read_statement(typed)
    assert refused.value.column == column
