"""Sums, differences, products, quotients, fractions being worked: the closed family of what has a value."""

from fractions import Fraction
from typing import assert_never

from msgspec import Struct

from onewhole.number.digits import in_digits
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind, KindError


class Term(Struct, frozen=True):
    """One part of a sum, added or taken away."""

    part: "Expression"
    taken: bool = False


class Sum(Struct, frozen=True):
    """Two or more parts, worked from left to right; the first is not taken away.

    >>> from onewhole.number.quantity import whole
    >>> value(minus(whole(52), whole(27)))
    Fraction(25, 1)
    """

    terms: tuple[Term, ...]

    def __post_init__(self) -> None:
        """Refuse fewer than two parts and a first part that is taken away."""
        if len(self.terms) < 2 or self.terms[0].taken:
            msg = "a sum has two or more parts and does not begin with taking away"
            raise ValueError(msg)


class Times(Struct, frozen=True):
    """A product of two."""

    left: "Expression"
    right: "Expression"


class Over(Struct, frozen=True):
    """A fraction whose numerator or denominator is still being worked: (44 - 23)/6."""

    top: "Expression"
    bottom: "Expression"


class Quotient(Struct, frozen=True):
    """One number divided by another: shared equally among so many, or measured out in groups of so much."""

    left: "Expression"
    right: "Expression"


class InBrackets(Struct, frozen=True):
    """A product or a quotient with brackets round it that change nothing: 2 + (3 x 4).

    Brackets that do change something are in the tree itself.
    """

    inside: Times | Quotient


class WithRemainder(Struct, frozen=True):
    """How much each gets, or how many groups there are, and what is ``left`` over: 21 r 3.

    ``by`` is the number that was divided by; it is not written, and without it (None: a pupil wrote 21 r 3)
    the whole has no value. Source of what it is worth: 87 = 4 x 21 + 3, so that 87 / 4 is 21 and 3 / 4.

    >>> from onewhole.number.quantity import whole
    >>> value(WithRemainder(whole(21), whole(3), whole(4)))
    Fraction(87, 4)
    """

    quotient: Quantity
    left: Quantity
    by: Quantity | None = None

    def written_as(self, other: "WithRemainder") -> bool:
        """Say whether both have the same number and the same remainder, whatever was divided by."""
        mine, theirs = (
            (one.quotient.kind, one.quotient.value, one.left.kind, one.left.value) for one in (self, other)
        )
        return mine == theirs


Expression = Quantity | Sum | Times | Over | Quotient | InBrackets | WithRemainder


def in_brackets(part: Expression) -> Expression:
    """Put brackets that change nothing round a product or a quotient; anything else stays as it is.

    >>> from onewhole.number.quantity import whole
    >>> in_brackets(whole(5)) == whole(5), in_brackets(Times(whole(2), whole(3))).inside.left == whole(2)
    (True, True)
    """
    return InBrackets(part) if isinstance(part, Times | Quotient) else part


def without_brackets(part: Expression) -> Expression:
    """Leave out brackets that change nothing.

    >>> from onewhole.number.quantity import whole
    >>> product = Times(whole(2), whole(3))
    >>> without_brackets(InBrackets(product)) == product
    True
    """
    return part.inside if isinstance(part, InBrackets) else part


def plus(*parts: Expression) -> Expression:
    """Add parts; one part alone is itself."""
    return parts[0] if len(parts) == 1 else Sum(tuple([Term(part) for part in parts]))


def minus(first: Expression, *rest: Expression) -> Expression:
    """Take the rest away from the first, one after another."""
    return Sum((Term(first), *[Term(part, taken=True) for part in rest])) if rest else first


def value(expression: Expression) -> Fraction:
    """Return the exact value in the reference unit of its kind.

    Raises KindError when measures and numbers are added, ZeroDivisionError for a denominator of 0.
    """
    top, bottom, _ = _weigh(expression)
    return Fraction(top, bottom)


def is_worth(expression: Expression, amount: Fraction) -> bool:
    """Say whether an expression has this value, without reducing it. Raises as ``value`` does.

    >>> from onewhole.number.quantity import whole
    >>> is_worth(minus(whole(52), whole(27)), Fraction(25))
    True
    """
    top, bottom, _ = _weigh(expression)
    return top * amount.denominator == amount.numerator * bottom


def kind(expression: Expression) -> Kind:
    """Return what the expression measures. Raises KindError when its parts do not go together."""
    return _weigh(expression)[2]


def _weigh(expression: Expression) -> tuple[int, int, Kind]:
    """Return numerator, denominator (not reduced, quick) and kind."""
    match expression:
        case Quantity():
            top, bottom, measured = expression.ladder.scale
            return expression.parts * top, bottom, measured
        case Sum(terms):
            top, bottom, measured = _weigh(terms[0].part)
            for term in terms[1:]:
                over, under, other = _weigh(term.part)
                if other is not measured:
                    msg = f"a {measured} and a {other} cannot be put together"
                    raise KindError(msg, remedy="Give every number the same unit, or leave all units off.")
                top = top * under - over * bottom if term.taken else top * under + over * bottom
                bottom *= under
            return top, bottom, measured
        case Times(left, right):
            (over, under, first), (top, bottom, second) = _weigh(left), _weigh(right)
            if Kind.NUMBER not in {first, second}:
                msg = f"a {first} times a {second} is not worked here"
                raise KindError(msg, remedy="Multiply by a plain number.")
            return over * top, under * bottom, second if first is Kind.NUMBER else first
        case Over(above, below):
            (over, under, first), (top, bottom, second) = _weigh(above), _weigh(below)
            if first is not Kind.NUMBER or second is not Kind.NUMBER:
                msg = "numerator and denominator are plain numbers"
                raise KindError(msg, remedy="Leave the units off.")
            return over * bottom, under * top, Kind.NUMBER
        case Quotient(left, right):
            (over, under, first), (top, bottom, second) = _weigh(left), _weigh(right)
            if second is not Kind.NUMBER and first is not second:
                msg = f"a {first} divided by a {second} is not worked here"
                raise KindError(msg, remedy="Divide by a plain number, or by a measure of the same kind.")
            return over * bottom, under * top, first if second is Kind.NUMBER else Kind.NUMBER
        case InBrackets(inside):
            return _weigh(inside)
        case WithRemainder(quotient, left, by):
            if by is None:
                msg = "a remainder belongs to a number that is divided"
                raise KindError(msg, remedy="Write what is divided first: 87 \N{DIVISION SIGN} 4 = 21 r 3.")
            (top, bottom, measured), (over, under, _) = _weigh(quotient), _weigh(Quotient(left, by))
            return top * under + over * bottom, bottom * under, measured
        case _:
            assert_never(expression)


def unit_mark(expression: Expression) -> str | None:
    """Return the unit of the numbers of an expression: "in" of 5 5/8 in - 2 in; "" for plain numbers.

    None for a number by its places (4 ones 12 tenths), which goes with any.

    Raises KindError where some have a unit and some have none, or have another one. A plain number may
    multiply one with a unit.
    """
    match expression:
        case Quantity():
            if expression.ladder.style in {Style.PLACES, Style.DECIMAL} and not in_digits(expression):
                return None
            return "" if expression.ladder.style is Style.MEASURE else expression.ladder.mark
        case Sum(terms):
            return alike_marks([unit_mark(term.part) for term in terms])
        case Times(left, right):
            marks = [mark for mark in (unit_mark(left), unit_mark(right)) if mark]
            if len(marks) > 1:
                msg = "two numbers with units are not multiplied here"
                raise KindError(msg, remedy="Multiply by a plain number.")
            return marks[0] if marks else ""
        case Quotient(left, right):
            mark, by = unit_mark(left), unit_mark(right) or ""
            if by and mark not in {by, None}:
                msg = "a number is divided by a number with another unit"
                raise KindError(msg, remedy="Divide by a plain number, or by one with the same unit.")
            return "" if by else mark
        case InBrackets(inside):
            return unit_mark(inside)
        case WithRemainder(quotient):
            return unit_mark(quotient)
        case Over():
            return ""
        case _:
            assert_never(expression)


def alike_marks(marks: list[str | None]) -> str | None:
    """Return the one unit of numbers that belong together. Raises KindError where they differ."""
    found = {mark for mark in marks if mark is not None}
    if len(found) > 1:
        msg = "some numbers have a unit and some have none" if "" in found else "the numbers have two units"
        raise KindError(msg, remedy="Give every number the same unit, or leave all units off.")
    return next(iter(found), None)


def quantities(expression: Expression) -> tuple[Quantity, ...]:
    """Return every quantity from left to right.

    >>> from onewhole.number.quantity import whole
    >>> len(quantities(plus(whole(2), whole(3), whole(4))))
    3
    """
    match expression:
        case Quantity():
            return (expression,)
        case Sum(terms):
            return tuple(found for term in terms for found in quantities(term.part))
        case WithRemainder(quotient, left):
            return quotient, left
        case InBrackets(inside):
            return quantities(inside)
        case Times(first, second) | Over(first, second) | Quotient(first, second):
            return quantities(first) + quantities(second)
        case _:
            assert_never(expression)
