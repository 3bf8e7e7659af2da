"""A text that a person typed, read once: its sentences, and where its numbers stand."""

import re

from onewhole.errors import OnewholeError
from onewhole.sentences.node import Spot, Typed
from onewhole.sentences.sentence import End, Sentence, Sentences
from onewhole.statements.reading import read_expression, read_quantity, read_statement
from onewhole.statements.unit_words import MARKS
from onewhole.statements.writable import Writable

#: A full stop, question or exclamation mark that ends a sentence, and not one that ends "5/?".
_END = re.compile(r"(?<=[^\s/][.?!])\s+")
#: One number as it is typed: 1,200 or 4 or 5.2, with a fraction after it, or a fraction alone, or 2⅔.
_WHOLE = r"(?:\d{1,3}(?:,\d{3})+|\d+)"
_FIGURE = rf"{_WHOLE}(?:\.\d+)?"
_VULGAR = "[¼-¾⅐-⅞]"
_MIXED = rf"(?:(?:{_FIGURE}\s(?:and\s)?)?{_WHOLE}/{_WHOLE}|(?:{_FIGURE}\s?)?{_VULGAR})"
#: Marks and names of measures that are no other word.
_SPELLINGS = sorted(
    (one for one in MARKS if one.isalpha() and one not in {"in", "ins"}), key=len, reverse=True
)
_MARK = rf"(?:(?i:fl\.?\s*oz|fluid\s+ounces?|{'|'.join(_SPELLINGS)}))"
#: "in" is inches at the end, before a mark or a number, after feet, and before the words of a length.
_INCH = r"in(?=\s*(?:$|[.,;:?!)+=<>-]|\d|(?:of|long|wide|tall|high|deep|thick)\b))"
_MEASURE = rf"{_WHOLE} {_MARK}(?: {_WHOLE} (?:{_MARK}|in)\b)*|{_WHOLE} {_INCH}"
#: Whole dollars, or dollars and cents: $3.25.
_MONEY = rf"\${_WHOLE}(?:\.\d\d)?(?![\d/])"
_NUMBER = rf"(?:{_MONEY}|(?:{_MEASURE})\b|{_MIXED}|{_FIGURE})"
_SIGN = "[-+x*=<>\N{MINUS SIGN}\N{MULTIPLICATION SIGN}]"
#: Numbers alone, or with signs between them; never a part of 3a, of 11/25/26 or of 2026-11-25.
_WRITTEN = re.compile(rf"(?<![\w./:,$-]){_NUMBER}(?:\s{_SIGN}\s{_NUMBER})*(?![\w/:-]|[.,]\d)")


def typed_sentences(text: str, language: str) -> Sentences:
    """Return a typed text sentence by sentence, to the letter; blanks between sentences are not kept.

    >>> [
    ...     sentence.nodes[0].text
    ...     for sentence in typed_sentences("Ana has 5 strips. How many are left?", "en-US")
    ... ]
    ['Ana has 5 strips.', 'How many are left?']
    """
    parts = (part for part in _END.split(text.strip()) if part)
    return tuple(Sentence(language, (typed(part),), End.TYPED) for part in parts)


#: A hyphen that joins a number to its fraction or to what it counts: 4-1/4 yards, a 5-foot board.
_JOINED = re.compile(r"(?<=\d)-(?=\d+/\d)|(?<=\d)-(?=[a-z])")


def loosened(text: str) -> str:
    """Return words in which no hyphen joins a number to what is beside it, letter for letter as long.

    >>> loosened("a 5-foot board, 4-1/4 yards")
    'a 5 foot board, 4 1/4 yards'
    """
    return _JOINED.sub(" ", text)


def typed(text: str) -> Typed:
    """Return a typed text with its numbers and their places.

    What stands there is read as a statement, an expression or a number. "in" after a number is the little
    word, not inches, before any word but those of a length.

    >>> [
    ...     text[spot.start : spot.end]
    ...     for text in ["6 in the back row, 6 in long"]
    ...     for spot in typed(text).spots
    ... ]
    ['6', '6 in']
    """
    spots: list[Spot] = []
    for found in _WRITTEN.finditer(text):
        thing = _read(found.group())
        if thing is not None:
            spots.append(Spot(found.start(), found.end(), thing))
    return Typed(text, tuple(spots))


def _read(written: str) -> Writable | None:
    for reader in (read_quantity, read_expression, read_statement):
        try:
            return reader(written)
        except OnewholeError:
            continue
    return None
