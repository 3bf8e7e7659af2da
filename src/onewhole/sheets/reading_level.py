"""How hard words are to read, as a school grade: a warning and never a verdict."""

import re
from dataclasses import dataclass
from fractions import Fraction

from onewhole.notations.syllables import syllables
from onewhole.notations.text import text
from onewhole.number.ladder import decimal
from onewhole.number.quantity import Quantity, usual_in_parts

#: Text for families and pupils stays at or below this grade; our own aim.
AIM = 6

_WORD = re.compile(r"[A-Za-z][A-Za-z'’-]*")
_SENTENCE = re.compile(r"[.?!]+(?=\s|$)")


@dataclass(frozen=True, slots=True)
class ReadingLevel:
    """What the grade of some words is made of: how many words, sentences and syllables.

    Raises ValueError when there is no word or no sentence.
    """

    words: int
    sentences: int
    syllables: int

    def __post_init__(self) -> None:
        """Refuse nothing to read."""
        if self.words < 1 or self.sentences < 1:
            msg = "there are no words to read"
            raise ValueError(msg)

    @property
    def grade(self) -> Fraction:
        """Return 0.39 words a sentence + 11.8 syllables a word - 15.59, exactly; it may be below zero.

        Source: Kincaid, Fishburne, Rogers and Chissom (1975), from memory. The formula is poor on very short
        texts, and syllables are counted by spelling.

        >>> ReadingLevel(words=10, sentences=2, syllables=13).grade
        Fraction(17, 10)
        """
        return (
            Fraction(39, 100) * Fraction(self.words, self.sentences)
            + Fraction(118, 10) * Fraction(self.syllables, self.words)
            - Fraction(1559, 100)
        )

    @property
    def hard(self) -> bool:
        """Say whether the words are above the grade that is aimed at."""
        return self.grade > AIM

    @property
    def rounded(self) -> Quantity:
        """Return the grade with one decimal, rounded half up; below zero it is 0.0.

        >>> ReadingLevel(words=10, sentences=2, syllables=13).rounded.value
        Fraction(17, 10)
        """
        tenths = max(0, (self.grade * 10 + Fraction(1, 2)).__floor__())
        return usual_in_parts(decimal(1, 1), tenths)

    @property
    def shown(self) -> str:
        """Write the rounded grade.

        >>> ReadingLevel(words=10, sentences=2, syllables=13).shown
        '1.7'
        """
        return text(self.rounded)


def reading_level(told: str) -> ReadingLevel | None:
    """Return the level of a text, its numbers left out; None where there are no words.

    A text that does not end with a full stop has one more sentence.

    >>> reading_level("The kite club has 5 1/3 strips. It uses 2 2/3 strips.")
    ReadingLevel(words=8, sentences=2, syllables=9)
    """
    words = _WORD.findall(told)
    if not words:
        return None
    ends = list(_SENTENCE.finditer(told))
    unended = bool(_WORD.search(told, ends[-1].end() if ends else 0))
    return ReadingLevel(len(words), len(ends) + unended, sum(map(syllables, words)))
