"""Words in uncontracted Unified English Braille.

Source of the signs and rules: International Council on English Braille, *The Rules of Unified English
Braille* (2013), sections 4 (letters and accents), 6 (numeric mode), 7 (punctuation), 8 (capitals) and 3
(other signs), from memory. In uncontracted braille every word is spelt out, so that a page in Spanish is
written by the same rules: its accents are those of section 4.2.
"""

import re
import string
import unicodedata
from collections.abc import Mapping
from itertools import pairwise

from onewhole.errors import InputError
from onewhole.notations.braille.cells import BLANK

_LETTERS = dict(zip("abcdefghijklmnopqrstuvwxyz", "⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚⠅⠇⠍⠝⠕⠏⠟⠗⠎⠞⠥⠧⠺⠭⠽⠵", strict=True))
_DIGITS = dict(zip("1234567890", "⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚", strict=True))
NUMBER, CAPITAL, GRADE_ONE = "⠼", "⠠", "⠰"
#: Stays in numeric mode between two digits: 1,200 and 5.2.
_IN_NUMBER = {",": "⠂", ".": "⠲", "\N{FRACTION SLASH}": "⠌"}
#: An accent stands before its letter.
_ACCENTS = {
    "\N{COMBINING ACUTE ACCENT}": "⠘⠌",
    "\N{COMBINING GRAVE ACCENT}": "⠘⠡",
    "\N{COMBINING CIRCUMFLEX ACCENT}": "⠘⠩",
    "\N{COMBINING TILDE}": "⠘⠻",
    "\N{COMBINING DIAERESIS}": "⠘⠒",
    "\N{COMBINING CEDILLA}": "⠘⠯",
    "\N{COMBINING RING ABOVE}": "⠘⠫",
    "\N{COMBINING CARON}": "⠘⠬",
}
_SIGNS = {
    ".": "⠲",
    ",": "⠂",
    ";": "⠆",
    ":": "⠒",
    "!": "⠖",
    "?": "⠦",
    "'": "⠄",
    "-": "⠤",
    "(": "⠐⠣",
    ")": "⠐⠜",
    "[": "⠨⠣",
    "]": "⠨⠜",
    "{": "⠸⠣",
    "}": "⠸⠜",
    "/": "⠸⠌",
    "\\": "⠸⠡",
    "|": "⠸⠳",
    "&": "⠈⠯",
    "@": "⠈⠁",
    "#": "⠸⠹",
    "*": "⠐⠔",
    "%": "⠨⠴",
    "$": "⠈⠎",
    "\N{CENT SIGN}": "⠈⠉",
    "\N{EURO SIGN}": "⠈⠑",
    "\N{POUND SIGN}": "⠈⠇",
    "+": "⠐⠖",
    "=": "⠐⠶",
    "<": "⠈⠣",
    ">": "⠈⠜",
    "~": "⠈⠔",
    "^": "⠈⠢",
    "_": "⠨⠤",
    "\N{MINUS SIGN}": "⠐⠤",
    "\N{MULTIPLICATION SIGN}": "⠐⠦",
    "\N{DIVISION SIGN}": "⠐⠌",
    "\N{ALMOST EQUAL TO}": "⠘⠔",
    "\N{DEGREE SIGN}": "⠘⠚",
    "\N{BULLET}": "⠸⠲",
    "\N{EN DASH}": "⠠⠤",
    "\N{EM DASH}": "⠠⠤",
    "\N{LEFT DOUBLE QUOTATION MARK}": "⠦",
    "\N{RIGHT DOUBLE QUOTATION MARK}": "⠴",
    "\N{LEFT SINGLE QUOTATION MARK}": "⠠⠦",
    "\N{RIGHT SINGLE QUOTATION MARK}": "⠄",
    "\N{INVERTED QUESTION MARK}": "⠘⠰⠦",
    "\N{INVERTED EXCLAMATION MARK}": "⠘⠰⠖",
}
#: A typewriter's quotation mark at the beginning of a word, and behind one.
_QUOTE, _UNQUOTE = "⠦", "⠴"
#: What a word is cut into: a number, letters that are all capitals, or one letter or sign with its accents.
_PARTS = re.compile(r"\d(?:[,.\u2044]?\d)*|[A-Z][A-Z]+(?![A-Za-z\u0300-\u036f])|.[\u0300-\u036f]*", re.ASCII)


class NoBrailleError(InputError):
    """A sign that is to be written has no braille here."""


def literary(text: str) -> str:
    """Return a text in uncontracted braille, with one blank between words.

    Raises NoBrailleError for a sign that has no braille here.

    >>> literary("Room 12, martes")
    '⠠⠗⠕⠕⠍⠀⠼⠁⠃⠂⠀⠍⠁⠗⠞⠑⠎'
    """
    return BLANK.join(map(_word, text.split()))


def _word(word: str) -> str:
    """Write one word: its letters, capitals, digits and signs."""
    if word == "?":
        return GRADE_ONE + _SIGNS[word]
    parts: list[str] = _PARTS.findall(unicodedata.normalize("NFKD", word))
    spelt = _part(parts[0], first=True)
    for before, part in pairwise(parts):
        spelt += GRADE_ONE * (before[-1] in _DIGITS and part in "abcdefghij") + _part(part)
    return spelt


def _part(part: str, *, first: bool = False) -> str:
    if part[0] in _DIGITS:
        return NUMBER + "".join(_DIGITS.get(sign) or _IN_NUMBER[sign] for sign in part)
    if part == '"':
        return _QUOTE if first else _UNQUOTE
    if part[0].lower() in _LETTERS:
        several = len(part) > 1 and part[1] in string.ascii_uppercase
        letters = part if several else part[0]
        capitals = CAPITAL * (2 if several else part[0].isupper())
        accents = "" if several else "".join(_found(accent, _ACCENTS, part) for accent in part[1:])
        return capitals + accents + "".join(_LETTERS[letter.lower()] for letter in letters)
    return _found(part, _SIGNS, part)


def _found(sign: str, signs: Mapping[str, str], part: str) -> str:
    if sign not in signs:
        msg = f"there is no braille here for “{unicodedata.normalize('NFC', part)}”"
        raise NoBrailleError(msg, remedy="Write it in another way, or print without braille.")
    return signs[sign]
