"""How many syllables an English word has, counted by its letters."""

import re

_VOWELS = re.compile(r"[aeiouy]+")
#: Vowels side by side that are spoken apart: radio, create, being; but not station, region, special.
_APART = re.compile(r"(?<![tcgs])i[ao]|creat|idea|area|[ey]ing|[^q]ua[lt]|ie(?=t$|nc)")
#: An e that is written and not spoken: kite, kites, whole, named; but table, pieces, needed are two.
_SILENT = re.compile(
    r"(?<![aeiouy])(?:(?<![^aeiouy]l)e|(?<![csgxz])(?<![sc]h)(?<![^aeiouy]l)es|(?<![td])(?<!dr)ed)$"
)


def syllables(word: str) -> int:
    """Count the syllables of a word; at least one. A word with a hyphen has those of its parts.

    A rule of thumb by spelling: no list of words stands behind it, so that it is wrong for some words
    (``tests/outside/test_syllables.py`` tells how many of a list of common ones).

    >>> [syllables(word) for word in ("kite", "strips", "paper", "table", "inches", "needed", "wholes")]
    [1, 1, 2, 2, 2, 2, 1]
    """
    parts = re.findall(r"[a-z]+", re.sub("['’]", "", word.lower()))
    return max(1, sum(map(_one, parts)))


def _one(part: str) -> int:
    found = len(_VOWELS.findall(part)) + len(_APART.findall(part))
    return max(1, found - bool(_SILENT.search(part)))
