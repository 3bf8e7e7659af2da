"""MathML Core: the formula for a browser, a screen reader and a braille display, with its plain text."""

from collections.abc import Iterable, Iterator
from typing import assert_never
from xml.etree.ElementTree import Element, SubElement, tostring

from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.language import Language
from onewhole.notations.text import clock_face, digits_printed, grouped, part, printed
from onewhole.number.digits import in_digits, named_places
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import CENT, DOLLAR
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Over
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.row import Blanks, Part, Piece, Sign, row
from onewhole.statements.wording import (
    FactorWords,
    OfPlot,
    Wording,
    WordsBefore,
    WordsBehind,
)
from onewhole.statements.writable import Writable

NAMESPACE = "http://www.w3.org/1998/Math/MathML"

#: Joins wholes and pieces of a mixed number. Source: the accessibility text of MathML 4 asks for it.
INVISIBLE_PLUS = "\N{INVISIBLE PLUS}"
BOX = "\N{WHITE SQUARE}"
CIRCLE = "\N{WHITE CIRCLE}"
NO_BREAK = "\N{NO-BREAK SPACE}"

_OPERATORS = {
    Sign.PLUS: "+",
    Sign.MINUS: "\N{MINUS SIGN}",
    Sign.TIMES: "\N{MULTIPLICATION SIGN}",
    Sign.EQUALS: "=",
    Sign.LESS: "<",
    Sign.GREATER: ">",
    Sign.ABOUT: Sign.ABOUT.value,
    Sign.COMMA: ",",
    Sign.WHICH: CIRCLE,
    Sign.OPEN: "(",
    Sign.CLOSE: ")",
    Sign.OVER: "/",
    Sign.DIVIDE: "\N{DIVISION SIGN}",
    Sign.REMAINDER: "r",
}


def mathml(thing: Writable, *, leads: bool = False, language: Language = ENGLISH) -> str:
    """Write a line as one MathML Core ``math`` element.

    A mixed number is a row of its own with one invisible plus between wholes and fraction, minus is U+2212,
    a missing part is an empty square and a missing sign an empty circle, both meant as "blank" (``intent`` of
    MathML 4). ``alttext`` holds the plain text. Nothing has an ``aria-label``: with one, what speaks or
    writes in braille takes its words and never the mathematics (decision record 0042). A line that ``leads``
    follows from the line before and begins with its equals sign.

    >>> from onewhole.statements.reading import read_statement
    >>> written = mathml(read_statement("7 2/6 - 3"))
    >>> written.count(INVISIBLE_PLUS), 'alttext="7 2/6 - 3"' in written
    (1, True)
    """
    written = printed(thing, language)
    root = Element("math", {"xmlns": NAMESPACE, "alttext": f"= {written}" if leads else written})
    if leads:
        root.append(_leaf("mo", "="))
    _fill(root, row(thing), language)
    return tostring(root, encoding="unicode")


def _blank(language: Language) -> str:
    """Return what is missing as a literal of an intent: it begins with a low line, and its words are joined.

    Source: MathML 4, 5.1.
    """
    return "_" + language.blank.replace(" ", "-")


def _fill(root: Element, pieces: Iterable[Piece], language: Language) -> None:
    """Put pieces into a row; what stands in brackets becomes a row of its own."""
    rows = [root]
    for piece in pieces:
        if piece is Sign.OPEN:
            rows.append(SubElement(rows[-1], "mrow"))
        if isinstance(piece, OfPlot):
            rows[-1].extend(_parted(piece, language))
            continue
        rows[-1].append(_element(piece, language))
        if piece is Sign.CLOSE:
            rows.pop()


def _element(piece: Piece, language: Language) -> Element:
    blank = _blank(language)
    match piece:
        case Sign.UNTIL:
            return _leaf("mo", language.line.until)
        case Sign():
            sign = _leaf("mo", _OPERATORS[piece])
            if piece is Sign.WHICH:
                sign.set("intent", blank)
            return sign
        case WordsBefore() | WordsBehind():
            return _words(piece, language)
        case Quantity():
            return _quantity(piece, language)
        case Gap(wholes, top, bottom):
            return _mixed(wholes, top, bottom, blank)
        case Impossible(wholes, top):
            return _mixed(wholes, top, 0, blank)
        case WithMinus():
            return _signed(piece, language)
        case Blanks(units):
            return _named(((HOLE, unit.mark) for unit in units.units), blank)
        case NumberForm():
            return _leaf("mtext", f"\N{NO-BREAK SPACE}{language.line.forms[piece]}")
        case Over(above, below):
            fraction = Element("mfrac")
            for inside in (above, below):
                _fill(SubElement(fraction, "mrow"), row(inside), language)
            return fraction
        case _:
            assert_never(piece)


def _signed(number: WithMinus, language: Language) -> Element:
    if number.below:
        top, bottom = number.fraction
        inside = Element("mfrac")
        inside.extend((_part(top, _blank(language)), _negative(_part(bottom, _blank(language)))))
    else:
        inside = _element(number.unsigned, language)
    return _negative(inside) if number.front else inside


def _negative(number: Element) -> Element:
    group = Element("mrow")
    sign = _leaf("mo", _OPERATORS[Sign.MINUS])
    sign.set("form", "prefix")
    group.extend((sign, number))
    return group


def _quantity(quantity: Quantity, language: Language) -> Element:
    blank = _blank(language)
    match quantity.ladder.style:
        case Style.MIXED:
            wholes, top = quantity.counts
            return _with_mark(_mixed(wholes, top, quantity.ladder.denominator, blank), quantity)
        case Style.MEASURE if quantity.ladder.clock:
            return _leaf("mn", clock_face(quantity))
        case Style.MEASURE:
            pairs = zip(quantity.amounts, quantity.ladder.units, strict=True)
            return _named(((count, unit.mark) for count, unit in pairs), blank)
        case Style.PLACES | Style.DECIMAL:
            if in_digits(quantity):
                return _with_mark(_leaf("mn", digits_printed(quantity)), quantity)
            named = named_places(quantity)
            return _named(((count, language.line.place(unit, count)) for count, unit in named), blank)
        case _:
            assert_never(quantity.ladder.style)


def _with_mark(number: Element, quantity: Quantity) -> Element:
    """Write the unit of a number behind it, or the dollar sign before it."""
    mark = quantity.ladder.mark
    if not mark:
        return number
    group = Element("mrow")
    if mark == DOLLAR:
        group.extend((_leaf("mtext", mark), number))
    else:
        unit = mark if mark == CENT else f"{NO_BREAK}{mark}"
        group.extend((number, _leaf("mtext", unit)))
    return group


def _mixed(wholes: Part, top: Part, bottom: Part, blank: str) -> Element:
    if top is None:
        return _part(wholes, blank)
    fraction = Element("mfrac")
    fraction.extend((_part(top, blank), _part(bottom, blank)))
    if wholes is None:
        return fraction
    group = Element("mrow")
    group.extend((_part(wholes, blank), _leaf("mo", INVISIBLE_PLUS), fraction))
    return group


def _named(pairs: Iterable[tuple[Part, str]], blank: str) -> Element:
    """Write counts with the names of their units: 5 ft 2 in."""
    group = Element("mrow")
    for count, name in pairs:
        if len(group):
            SubElement(group, "mspace", {"width": "0.35em"})
        unit = name if name == CENT else f"{NO_BREAK}{name}"
        group.extend((_part(count, blank), _leaf("mtext", unit)))
    return group


def _words(words: Wording, language: Language) -> Element:
    """Write words of a line, with a capital where they begin it; blanks that keep their width part them."""
    match words:
        case WordsBefore():
            return _leaf("mtext", f"{language.line.wordings(words).capitalize()}{NO_BREAK}")
        case WordsBehind():
            follows = NO_BREAK if isinstance(words, FactorWords) and words.between else ""
            return _leaf("mtext", f"{NO_BREAK}{language.line.wordings(words)}{follows}")
        case _:
            assert_never(words)


def _parted(words: OfPlot, language: Language) -> Iterator[Element]:
    """Write words that begin a line in parts, between which it may be broken."""
    for at, words_of in enumerate(language.line.wording(words)):
        yield _leaf("mtext", f"{words_of if at else words_of.capitalize()}{NO_BREAK}")


def _part(count: Part, blank: str) -> Element:
    if count is HOLE:
        box = _leaf("mtext", BOX)
        box.set("intent", blank)
        return box
    return _leaf("mn", grouped(part(count)))


def _leaf(tag: str, content: str) -> Element:
    leaf = Element(tag)
    leaf.text = content
    return leaf
