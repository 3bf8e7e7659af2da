"""How hard words are to read, as a school grade: a warning and never a verdict."""

import re
from collections.abc import Callable
from enum import Enum
from fractions import Fraction

from msgspec import Struct

from onewhole.notations.spanish_syllables import spanish_syllables
from onewhole.notations.syllables import syllables
from onewhole.notations.text import text
from onewhole.number.ladder import decimal
from onewhole.number.quantity import Quantity, usual_in_parts

#: Text for families and pupils stays at or below this grade; our own aim.
AIM = 6

_WORD = re.compile(r"[^\W\d_][^\W\d_'’-]*(?:['’-][^\W\d_]+)*")
_SENTENCE = re.compile(r"[.?!]+(?=\s|$)")


class ReadingFormula(Enum):
    """By which formula words are graded: each was made for one language."""

    KINCAID = "en-US"
    FERNANDEZ_HUERTA = "es-US"

    @property
    def syllables(self) -> Callable[[str], int]:
        """Return what counts the syllables of a word."""
        return syllables if self is ReadingFormula.KINCAID else spanish_syllables


class ReadingLevel(Struct, frozen=True):
    """What the grade of some words is made of: how many words, sentences and syllables, and the formula.

    Raises ValueError when there is no word or no sentence.
    """

    words: int
    sentences: int
    syllables: int
    formula: ReadingFormula = ReadingFormula.KINCAID

    def __post_init__(self) -> None:
        """Refuse nothing to read."""
        if self.words < 1 or self.sentences < 1:
            msg = "there are no words to read"
            raise ValueError(msg)

    @property
    def grade(self) -> Fraction:
        """Return the grade of a school in the United States, exactly; it may be below zero.

        In English 0.39 words a sentence + 11.8 syllables a word - 15.59. Source: Kincaid, Fishburne, Rogers
        and Chissom (1975), from memory. In Spanish what :attr:`ease` says: 90 to 100 is for grade 4, 80 to 90
        for grade 5, 70 to 80 for grade 6 (as told at legible.es); between these on a straight line, which is
        ours. Formulas are poor on very short texts, and syllables are counted by spelling.

        >>> ReadingLevel(words=10, sentences=2, syllables=13).grade
        Fraction(17, 10)
        """
        if self.formula is ReadingFormula.FERNANDEZ_HUERTA:
            return (140 - self.ease) / 10
        return (
            Fraction(39, 100) * Fraction(self.words, self.sentences)
            + Fraction(118, 10) * Fraction(self.syllables, self.words)
            - Fraction(1559, 100)
        )

    @property
    def ease(self) -> Fraction:
        """Return how easy Spanish words are to read: 206.84 - 60 syllables a word - 1.02 words a sentence.

        Source: Fernández Huerta (1959), the last term as corrected by Law (2011), as told at legible.es; many
        copies count sentences there.

        >>> spanish = ReadingFormula.FERNANDEZ_HUERTA
        >>> ReadingLevel(words=100, sentences=10, syllables=190, formula=spanish).ease
        Fraction(2066, 25)
        """
        by_words = Fraction(102, 100) * Fraction(self.words, self.sentences)
        return Fraction(20684, 100) - 60 * Fraction(self.syllables, self.words) - by_words

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


def reading_level(told: str, language: str = ReadingFormula.KINCAID.value) -> ReadingLevel | None:
    """Return the level of a text, its numbers left out; None where there are no words.

    None also for a ``language`` (a BCP 47 tag) that has no formula here. A text that does not end with a full
    stop has one more sentence.

    >>> reading_level("The kite club has 5 1/3 strips. It uses 2 2/3 strips.")
    ReadingLevel(words=8, sentences=2, syllables=9, formula=<ReadingFormula.KINCAID: 'en-US'>)
    >>> reading_level("El club tiene 5 1/3 tiras.", "es-US").ease > 80
    True
    """
    formula = next((one for one in ReadingFormula if one.value == language), None)
    if formula is None:
        return None
    words = _WORD.findall(told)
    if not words:
        return None
    ends = list(_SENTENCE.finditer(told))
    unended = bool(_WORD.search(told, ends[-1].end() if ends else 0))
    return ReadingLevel(len(words), len(ends) + unended, sum(map(formula.syllables, words)), formula)
