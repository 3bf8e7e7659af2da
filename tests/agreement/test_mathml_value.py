"""MathML evaluated by itself agrees with the value of the expression it was written from."""

from collections.abc import Sequence
from fractions import Fraction
from xml.etree import ElementTree as ET

from hypothesis import assume, given

from onewhole.notations.mathml import INVISIBLE_PLUS, mathml
from onewhole.number.ladder import Style
from onewhole.statements.expression import Expression, quantities, value
from onewhole.statements.reading import read_expression
from tests.kit.statements import expressions

WORDS = ("thousand", "hundred", "ten", "one", "tenth", "hundredth", "thousandth")
WORTH = {
    f"{word}{end}": Fraction(10) ** power
    for word, power in zip(WORDS, range(3, -4, -1), strict=True)
    for end in ("", "s")
}


def evaluated(markup: str) -> Fraction:
    """Work out presentation markup as a reader who knows only school notation would."""
    return _row(list(ET.fromstring(markup)))  # noqa: S314 - our own markup


def _row(children: Sequence[ET.Element]) -> Fraction:
    """Products before sums, from left to right; an invisible plus binds like a number."""
    total, product, sign, times = Fraction(0), Fraction(1), 1, False
    for child in children:
        written = child.text or ""
        if _tag(child) != "mo":
            product = product * _one(child) if times else _one(child)
            times = False
        elif written == "\N{MULTIPLICATION SIGN}":
            times = True
        else:
            total += sign * product
            sign = {"+": 1, INVISIBLE_PLUS: 1, "\N{MINUS SIGN}": -1}[written]
    return total + sign * product


def _one(element: ET.Element) -> Fraction:
    children = list(element)
    match _tag(element):
        case "mn":
            return Fraction((element.text or "").replace(",", ""))
        case "mfrac":
            return _one(children[0]) / _one(children[1])
        case "mrow" if any(_tag(child) == "mtext" for child in children):
            kept = [child for child in children if _tag(child) != "mspace"]
            counts, names = kept[::2], kept[1::2]
            pairs = zip(counts, names, strict=True)
            return sum((_one(count) * WORTH[(name.text or "").strip()] for count, name in pairs), Fraction(0))
        case "mrow" if children[0].text == "(":
            return _row(children[1:-1])
        case "mrow":
            return _row(children)
        case other:
            raise AssertionError(other)


def _tag(element: ET.Element) -> str:
    return element.tag.rpartition("}")[2]


@given(expressions())
def test_markup_has_the_value_of_the_expression(expression: Expression) -> None:
    """Fractions, mixed numbers, decimals, place words, brackets and fractions being worked."""
    assume(all(quantity.ladder.style is not Style.MEASURE for quantity in quantities(expression)))
    assert evaluated(mathml(expression)) == value(expression)


def test_the_two_roads_can_differ() -> None:
    """Markup with its brackets taken away has another value, so the check above can fail."""
    markup = mathml(read_expression("6 - (3 - 1)"))
    assert evaluated(markup) == 4
    assert evaluated(markup.replace("<mrow><mo>(</mo>", "").replace("<mo>)</mo></mrow>", "")) == 2
