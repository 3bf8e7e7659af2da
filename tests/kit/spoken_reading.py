"""Spoken words read back: the other road of :mod:`onewhole.languages.english.speech`.

The words are typed out, and the text is read by :mod:`onewhole.statements`; so whatever can be said can be
typed, and a refusal names the word it stumbled over.
"""

import re
from collections.abc import Callable
from typing import TypeVar

from onewhole.statements.expression import Expression
from onewhole.statements.reading import read_expression, read_statement
from onewhole.statements.statement import Statement
from onewhole.statements.tokens import ReadingError
from tests.kit.typist import REMEDY, Typed, Word, typed

#: What a number is rounded to is a name, and is typed as it is said.
_ROUNDS = re.compile(r"round (?P<number>.+) to the nearest (?P<unit>[a-z ]+)\.?", re.IGNORECASE)
#: Numbers in a row are parted by rests, and typed one by one.
_ORDERS = re.compile(r"order (?P<numbers>.+) (?P<end>from [a-z]+ to [a-z]+)\.?", re.IGNORECASE)
_Read = TypeVar("_Read", Statement, Expression)


def unsay(words: str) -> Statement:
    """Read a statement back from words as :func:`~onewhole.languages.english.speech.say` says it.

    Capitals and a full stop at the end do not matter. Raises ReadingError, with the word that cannot be read
    and its column, for anything else.

    >>> from onewhole.notations.text import text
    >>> text(unsay("Seven and two sixths minus three and five sixths."))
    '7 2/6 - 3 5/6'
    """
    if found := _ROUNDS.fullmatch(words):
        number = " ".join(piece for piece, _ in typed(found["number"]))
        return read_statement(f"round {number} to the nearest {found['unit']}")
    if found := _ORDERS.fullmatch(words):
        numbers = (" ".join(piece for piece, _ in typed(said)) for said in found["numbers"].split(", "))
        return read_statement(f"order {', '.join(numbers)} {found['end']}")
    return _read(words, read_statement)


def unsay_expression(words: str) -> Expression:
    """Read an expression back from words.

    >>> from onewhole.notations.text import text
    >>> text(unsay_expression("four tens twelve ones"))
    '4 tens 12 ones'
    """
    return _read(words, read_expression)


def _read(words: str, reader: Callable[[str], _Read]) -> _Read:
    pieces = typed(words)
    try:
        return reader(" ".join(piece for piece, _ in pieces))
    except ReadingError as error:
        word = _word_at(pieces, error.column or 1)
        raise ReadingError(error.what, column=word.column, where=word.place(), remedy=REMEDY) from error


def _word_at(pieces: Typed, column: int) -> Word:
    """Return the word from which the text at some column (from 1) was typed."""
    end = 0
    for piece, word in pieces:
        end += len(piece) + 1
        if column <= end:
            return word
    return pieces[-1][1]
