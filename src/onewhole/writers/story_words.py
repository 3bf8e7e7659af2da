"""The words of a word problem as a page takes them: fractions in them are set and spoken as formulas."""

import re

from onewhole.errors import OnewholeError
from onewhole.notations.text import text
from onewhole.statements.reading import read_quantity
from onewhole.writers.formula import Formula, formula

_FRACTION = re.compile(r"(?<![0-9/.,])(?:[0-9]+ )?[0-9]+/[0-9]+(?![0-9/])")


def story_words(story: str) -> str | list[str | Formula]:
    """Return the words of a story; where fractions stand in them, as pieces of words and formulas in turn.

    Numbers without a fraction stay among the words, and so does what no number is written as (1/0).

    >>> [part if isinstance(part, str) else part["alt"] for part in story_words("A kite takes 2 2/3 strips.")]
    ['A kite takes ', 'two and two thirds', ' strips.']
    >>> story_words("Room 12 has 5 strips.")
    'Room 12 has 5 strips.'
    """
    parts: list[str | Formula] = []
    start = 0
    for found in _FRACTION.finditer(story):
        number = _read(found.group())
        if number is None:
            continue
        parts += [story[start : found.start()], number]
        start = found.end()
    if not parts:
        return story
    return [part for part in (*parts, story[start:]) if part]


def _read(typed: str) -> Formula | None:
    """Return a fraction or mixed number as a formula where it reads back as it was typed."""
    try:
        number = read_quantity(typed)
    except OnewholeError:
        return None
    return formula(number) if text(number) == typed else None
