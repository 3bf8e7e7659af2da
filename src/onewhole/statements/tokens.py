"""Typed text cut into pieces, each with its place."""

import re
import unicodedata
from enum import StrEnum

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.number.unit import DOLLAR
from onewhole.statements.unit_words import FLUID_OUNCE

LONGEST_TEXT = 2000
LONGEST_NUMBER = 9


class ReadingError(InputError):
    """The text cannot be read; ``line`` and ``column`` (both from 1) say where."""


class TokenKind(StrEnum):
    """What a piece of text is."""

    NUMBER = "number"
    POINTED = "decimal"
    SLASH = "/"
    PLUS = "+"
    MINUS = "-"
    TIMES = "x"
    DIVIDE = "\N{DIVISION SIGN}"
    UNCLEAR = "/ with one space"
    EQUALS = "="
    COMPARE = "< or >"
    HOLE = "?"
    DOLLAR = "$"
    CLOCK = "clock time"
    OPEN = "("
    CLOSE = ")"
    WORD = "word"
    END = "end"


class Token(Struct, frozen=True):
    """One piece: what it is, its text in the usual spelling, and where it begins."""

    sort: TokenKind
    text: str
    line: int
    column: int


_SIGNS = {
    "/": TokenKind.SLASH,
    "\N{FRACTION SLASH}": TokenKind.SLASH,
    "\N{DIVISION SLASH}": TokenKind.SLASH,
    "\N{DIVISION SIGN}": TokenKind.DIVIDE,
    "+": TokenKind.PLUS,
    "-": TokenKind.MINUS,
    "\N{MINUS SIGN}": TokenKind.MINUS,
    "\N{EN DASH}": TokenKind.MINUS,
    "\N{EM DASH}": TokenKind.MINUS,
    "\N{HYPHEN}": TokenKind.MINUS,
    "\N{NON-BREAKING HYPHEN}": TokenKind.MINUS,
    "*": TokenKind.TIMES,
    "\N{MULTIPLICATION SIGN}": TokenKind.TIMES,
    "\N{DOT OPERATOR}": TokenKind.TIMES,
    "=": TokenKind.EQUALS,
    "<": TokenKind.COMPARE,
    ">": TokenKind.COMPARE,
    "?": TokenKind.HOLE,
    "\N{WHITE SQUARE}": TokenKind.HOLE,
    "\N{WHITE CIRCLE}": TokenKind.HOLE,
    DOLLAR: TokenKind.DOLLAR,
    "(": TokenKind.OPEN,
    ")": TokenKind.CLOSE,
}
#: Signs that divide where a space stands on each side: without spaces they are a fraction and a time of day.
_SPACED = {"/", "\N{DIVISION SLASH}", ":"}
_PIECE = re.compile(
    r"""(?P<space>\s+)
    |(?P<clock>[0-9]{1,2}:[0-5][0-9](?![0-9:])(?:\s*(?:[AaPp]\.?\s?[Mm]\b\.?|noon\b|midnight\b))?)
    |(?P<number>(?:[1-9][0-9]{0,2}(?:,[0-9]{3})+(?![0-9])|[0-9]+)(?:\.[0-9]+)?|\.[0-9]+)
    |(?P<fluid>(?:[Ff][Ll]\.?\s*[Oo][Zz]|[Ff]luid\s+[Oo]unces?)\b\.?)
    |(?P<word>[A-Za-z]+\.?|['"′″’”¢])
    |(?P<blank>_+)
    |(?P<sign>.)""",
    re.VERBOSE | re.DOTALL,
)
#: Marks of direction, joiners, control signs: what a screen does not show.
_UNSEEN = {"Cf", "Cc", "Cs", "Co", "Cn"}


def tokens(text: str, line: int = 1, column: int = 1, *, divides: bool = True) -> tuple[Token, ...]:
    """Cut one line of text into pieces, ending with an END piece.

    A slash with a space on each side divides, and so does a colon; where a slash never ``divides``, as in an
    answer, it is the bar of a fraction whatever stands beside it.

    Raises ReadingError with line and column for any character that has no place in a problem.

    >>> [token.text for token in tokens("7 2/6")][:4]
    ['7', '2', '/', '6']
    """
    if len(text) > LONGEST_TEXT:
        msg = f"this line has {len(text)} characters; a problem has at most {LONGEST_TEXT}"
        raise ReadingError(msg, line=line, column=column, remedy="Cut the line into shorter problems.")
    found: list[Token] = []
    for piece in _PIECE.finditer(text):
        spelt, place = piece.group(), column + piece.start()
        match piece.lastgroup:
            case "space":
                continue
            case "number":
                found.append(_number(spelt, line, place))
            case "clock":
                found.append(Token(TokenKind.CLOCK, spelt, line, place))
            case "fluid":
                found.append(Token(TokenKind.WORD, FLUID_OUNCE, line, place))
            case "word":
                word = spelt.lower().rstrip(".")
                found.append(Token(TokenKind.TIMES if word == "x" else TokenKind.WORD, word, line, place))
            case "blank":
                found.append(Token(TokenKind.HOLE, "?", line, place))
            case _:
                sides = text[: piece.start()][-1:], text[piece.end() :][:1]
                spaces = [side.isspace() for side in sides]
                found.extend((divides and _divides(spelt, spaces, line, place)) or _sign(spelt, line, place))
    return (*found, Token(TokenKind.END, "", line, column + len(text)))


def _divides(sign: str, spaces: list[bool], line: int, column: int) -> tuple[Token, ...]:
    """Return a sign that divides, or may do so; nothing for any other.

    7 / 4 and 7 : 4 divide, 7/4 is a fraction, and of 7 /4 nobody knows.
    """
    if sign not in _SPACED or not any(spaces):
        return ()
    if all(spaces):
        return (Token(TokenKind.DIVIDE, sign, line, column),)
    return () if sign == ":" else (Token(TokenKind.UNCLEAR, sign, line, column),)


def _sign(sign: str, line: int, column: int) -> tuple[Token, ...]:
    if sign in _SIGNS:
        return (Token(_SIGNS[sign], sign, line, column),)
    if parts := _one_sign_fraction(sign):
        top, bottom = parts
        return (
            Token(TokenKind.NUMBER, top, line, column),
            Token(TokenKind.SLASH, "/", line, column),
            Token(TokenKind.NUMBER, bottom, line, column),
        )
    raise _refused(sign, line, column)


def _number(spelt: str, line: int, column: int) -> Token:
    plain = spelt.replace(",", "")
    if len(plain) > LONGEST_NUMBER:
        msg = f"this number has {len(plain)} digits; at most {LONGEST_NUMBER} are read"
        remedy = "Use a smaller number: grade 4 stays at or below 1,000,000."
        raise ReadingError(msg, line=line, column=column, remedy=remedy)
    return Token(TokenKind.POINTED if "." in plain else TokenKind.NUMBER, plain, line, column)


def _one_sign_fraction(character: str) -> tuple[str, str] | None:
    """Return numerator and denominator of a character such as two thirds in one sign."""
    if "<fraction>" not in unicodedata.decomposition(character):
        return None
    top, _, bottom = unicodedata.normalize("NFKC", character).partition("\N{FRACTION SLASH}")
    return (top, bottom) if top and bottom else None


def _refused(character: str, line: int, column: int) -> ReadingError:
    name = unicodedata.name(character, f"character number {ord(character)}").lower()
    if unicodedata.category(character) in _UNSEEN:
        msg = f"a hidden sign stands here: {name}"
        remedy = "Delete it, or type the line again by hand."
    elif unicodedata.bidirectional(character) in {"R", "AL", "AN"}:
        msg = f"text that runs from right to left cannot be read here ({name})"
        remedy = "Type the problem from left to right with the digits 0 to 9."
    else:
        msg = f"this sign has no place in a problem: {name}"
        remedy = "Type numbers such as 7 2/6, 5.2 or 5 ft 2 in, and the signs + - x = < > ?"
        if character == ",":
            remedy = "In a number a comma stands before every three digits: 4,006."
        if character == ":":
            remedy = "Write a time of day such as 9:45, with minutes from 00 to 59. To divide, type 12 : 4."
    return ReadingError(msg, line=line, column=column, remedy=remedy)
