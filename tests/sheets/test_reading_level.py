"""How hard words are to read."""

from fractions import Fraction

import pytest

from onewhole.sheets.reading_level import AIM, ReadingFormula, ReadingLevel, reading_level


def test_the_formula() -> None:
    """0.39 words a sentence, 11.8 syllables a word, less 15.59: by hand 1.95 + 15.34 - 15.59."""
    level = ReadingLevel(words=10, sentences=2, syllables=13)
    assert level.grade == Fraction("1.95") + Fraction("15.34") - Fraction("15.59")
    assert level.shown == "1.7"


@pytest.mark.parametrize(
    ("told", "counts"),
    [
        ("The kite club has 5 1/3 strips.", (5, 1)),
        ("It has 5.2 strips. It uses 2.7 strips!", (6, 2)),
        ("How many are left?", (4, 1)),
        ("No full stop", (3, 1)),
        ("One. And more", (3, 2)),
        ("All the club’s twenty-four kites fly.", (6, 1)),
    ],
)
def test_words_and_sentences(told: str, counts: tuple[int, int]) -> None:
    """Numbers are left out, the point of a decimal ends nothing, and the last sentence needs no full stop."""
    level = reading_level(told)
    assert level is not None
    assert (level.words, level.sentences) == counts


@pytest.mark.parametrize("told", ["", "5 1/3 - 2 2/3", "?!"])
def test_nothing_to_read(told: str) -> None:
    """Without words there is no level, and none can be made."""
    assert reading_level(told) is None
    with pytest.raises(ValueError, match="no words"):
        ReadingLevel(0, 1, 0)


def test_hard_is_above_the_aim() -> None:
    """Exactly at the aim is not hard; the shown grade is never below zero."""
    at = ReadingLevel(words=100, sentences=100, syllables=180)
    assert at.grade == Fraction(604, 100)
    assert at.hard
    assert AIM == 6
    assert not ReadingLevel(words=100, sentences=100, syllables=179).hard
    assert ReadingLevel(words=2, sentences=1, syllables=2).shown == "0.0"
    assert ReadingLevel(words=10, sentences=2, syllables=15).shown == "4.1"


@pytest.mark.parametrize(
    ("told", "ease"),
    [
        # Computed for our own notes by another program (shared/domain/spanish.md, section 3), rounded.
        ("Una tira tiene 6 sextos.", 83),
        ("2 tiras tienen 12 sextos.", 84),
        ("6 sextos y 2 sextos son 8 sextos.", 106),
        ("Quitamos tiras de las tiras y sextos de los sextos.", 101),
        ("No queda nada.", 104),
        ("Lo comprobamos al revés.", 83),
        ("Esta noche restamos un número de otro.", 80),
        ("Así lo hacemos en clase", 94),
        ("¿Cuántas partes tiene una tira?", 82),
    ],
)
def test_spanish_is_graded_by_its_own_formula(told: str, ease: int) -> None:
    """Fernández Huerta, and accents belong to words; 80 and more is at most grade 6."""
    level = reading_level(told, "es-US")
    assert level is not None
    assert level.formula is ReadingFormula.FERNANDEZ_HUERTA
    assert round(level.ease) == ease
    assert level.hard is (level.ease < 80)


def test_a_language_without_a_formula_has_no_level() -> None:
    """A grade of English says nothing of Portuguese."""
    assert reading_level("Uma tira tem 6 sextos.", "pt-BR") is None
