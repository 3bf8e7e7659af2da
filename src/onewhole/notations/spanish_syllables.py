"""How many syllables a Spanish word has, counted by its vowels."""

import re

#: A u that is written and not spoken: que, guitarra; but pingüino.
_SILENT = re.compile(r"(?<=[gq])u(?=[eiéí])")
#: Vowels that are spoken together: siete, igual, reagrupamos, veintiún; but not día, where the i is stressed.
_NUCLEUS = re.compile(r"i[uú]|u[ií]|[iuü]?[aeoáéó](?:[iuy](?![aeoáéó]))?|[íúiuüy]")


def spanish_syllables(word: str) -> int:
    """Count the syllables of a word; at least one.

    The rules of diphthongs: a weak vowel (i, u) joins the strong one beside it unless it is stressed; two
    strong vowels stand apart. Source: RAE, Ortografía, diphthongs and hiatus (from memory).

    >>> [spanish_syllables(word) for word in ("siete", "día", "reagrupamos", "veintiún", "que", "hay")]
    [2, 2, 5, 2, 1, 1]
    """
    return max(1, len(_NUCLEUS.findall(_SILENT.sub("", word.lower()))))
