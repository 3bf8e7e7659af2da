from xml.etree import ElementTree as ET

import pytest
from hypothesis import given

from onewhole.notations.mathml import INVISIBLE_PLUS, NAMESPACE, mathml
from onewhole.notations.text import printed
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression, quantities
from onewhole.statements.reading import read_answer, read_statement
from onewhole.statements.statement import Relation, Statement
from tests.kit.statements import any_expressions, statements

#: Elements of MathML Core that are used here, with how many children each must have (None: any number).
#: Source: MathML Core, W3C Candidate Recommendation (element list and content models, from memory).
CORE = {"math": None, "mrow": None, "mfrac": 2, "mn": 0, "mo": 0, "mtext": 0, "mspace": 0}

SHOWN = [
    ("7", "<mn>7</mn>"),
    ("2/6", "<mfrac><mn>2</mn><mn>6</mn></mfrac>"),
    ("7 2/6", "<mrow><mn>7</mn><mo>\N{INVISIBLE PLUS}</mo><mfrac><mn>2</mn><mn>6</mn></mfrac></mrow>"),
    ("5.2 - 2", "<mn>5.2</mn><mo>\N{MINUS SIGN}</mo><mn>2</mn>"),
    ("3 x 2", "<mn>3</mn><mo>\N{MULTIPLICATION SIGN}</mo><mn>2</mn>"),
    ("5 - (3 - 1)", "<mrow><mo>(</mo><mn>3</mn><mo>\N{MINUS SIGN}</mo><mn>1</mn><mo>)</mo></mrow>"),
    ("(4 + 3)/6", "<mfrac><mrow><mn>4</mn><mo>+</mo><mn>3</mn></mrow><mrow><mn>6</mn></mrow></mfrac>"),
    ("1 = ?/6", '<mfrac><mtext intent="_blank">\N{WHITE SQUARE}</mtext><mn>6</mn></mfrac>'),
    ("? + 1 = 6", '<mtext intent="_blank">\N{WHITE SQUARE}</mtext><mo>+</mo>'),
    ("5 ? 6", '<mo intent="_blank">\N{WHITE CIRCLE}</mo>'),
    ("5 < 6", "<mo>&lt;</mo>"),
    ("5 ft", "<mrow><mn>5</mn><mtext>\N{NO-BREAK SPACE}ft</mtext></mrow>"),
    ("12 ones", "<mrow><mn>12</mn><mtext>\N{NO-BREAK SPACE}ones</mtext></mrow>"),
]


@pytest.mark.parametrize(("written", "markup"), SHOWN)
def test_markup(written: str, markup: str) -> None:
    """Each kind of piece has its markup."""
    assert markup in mathml(read_statement(written))


def test_what_is_no_number_can_be_shown() -> None:
    """A pupil's 3 3/0 and a sign alone are written too."""
    assert "<mfrac><mn>3</mn><mn>0</mn></mfrac>" in mathml(Impossible(3, 3))
    assert "<mo>&gt;</mo>" in mathml(Relation.GREATER)


@pytest.mark.parametrize(
    ("written", "inside"),
    [
        ("-3", '<mrow><mo form="prefix">\N{MINUS SIGN}</mo><mn>3</mn></mrow>'),
        ("1/-2", '<mfrac><mn>1</mn><mrow><mo form="prefix">\N{MINUS SIGN}</mo><mn>2</mn></mrow></mfrac>'),
    ],
)
def test_a_minus_sign_stands_before_its_number(written: str, inside: str) -> None:
    """It is a prefix, in front of the number or of the denominator."""
    assert inside in mathml(read_answer(written))


@given(statements())
def test_it_is_core_with_its_text_and_no_label(statement: Statement) -> None:
    """It parses as XML, has only elements of MathML Core, and carries plain text.

    A label would take the mathematics away from what reads or brailles it.
    """
    root = ET.fromstring(mathml(statement))  # noqa: S314 - our own markup
    assert root.get("alttext") == printed(statement)
    assert "aria-label" not in {name for element in root.iter() for name in element.attrib}
    for element in root.iter():
        children = CORE[element.tag.removeprefix(f"{{{NAMESPACE}}}")]
        assert children is None or len(element) == children
        assert (element.text is None) == (children != 0 or element.tag.endswith("mspace"))


@given(any_expressions())
def test_one_invisible_plus_per_mixed_number(expression: Expression) -> None:
    """Wholes and fraction are joined exactly once, and never by an invisible times."""
    mixed = [found for found in quantities(expression) if _mixed(found)]
    written = mathml(expression)
    assert written.count(INVISIBLE_PLUS) == len(mixed)
    assert "\N{INVISIBLE TIMES}" not in written


def _mixed(quantity: Quantity) -> bool:
    return quantity.ladder.style is Style.MIXED and quantity.counts[0] is not None
