"""Spanish reasons say the numbers that English ones say, and what they claim of them is true.

The English sentences are read back and found true of the problem; so each Spanish one of the same reason must
hold the same numbers, and what its own words claim is read from the tree here: worth, sum, more and less.
"""

import re
from collections.abc import Iterator
from fractions import Fraction

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.words import read_whole
from onewhole.languages.table import LANGUAGES, spoken_by
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import text_of
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Said, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.sheets.reading_level import reading_level
from onewhole.statements.expression import value
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.line import Line
from onewhole.working.questions import suiting
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work

PROBLEMS = (
    *("7 2/6 - 3 5/6", "304 - 128", "12.35 - 4.7", "5 ft 2 in - 2 ft 7 in", "3 lb 5 oz + 2 lb 14 oz"),
    *("2 4/5 + 1 3/5", "7 1/2 - 3 2/3", "29 + 43", "5/6 ? 7/8", "7 2/3 = 5 ?/6", "4 - 1 3/8"),
    *(
        "3/6 ? 5/8",
        "2 1/6 ? 1 5/6",
        "5/6 ? 9/10",
        "2/3 ? 2/5",
        "? + 2 1/4 = 5",
        "round 450 to the nearest hundred",
    ),
    *("round 4567 to the nearest ten", "order 3/4, 1/2, 2/4", "12/18 in simplest form", "0.4 = ?/10"),
)
STRIP = read_whole("una tira de papel")
#: Words between two amounts, and what they claim of them.
CLAIMS = {
    "tiene": lambda first, second: first == second,
    "tienen": lambda first, second: first == second,
    "forman": lambda first, second: first == second,
    "es más que": lambda first, second: first > second,
    "son más que": lambda first, second: first > second,
    "es menos que": lambda first, second: first < second,
    "son menos que": lambda first, second: first < second,
    "es la misma cantidad que": lambda first, second: first == second,
}


def _lines() -> Iterator[Line]:
    for problem in PROBLEMS:
        statement = read_statement(problem)
        ways = suiting(statement) if isinstance(statement, Question) else (REGROUP_FIRST,)
        for way in ways:
            yield from work(statement, way).lines


LINES = tuple(line for line in _lines() if line.because)


def _said(line: Line, words: ClassWords) -> Sentences:
    assert line.because is not None
    told = spoken_by(words).working
    return told.reason(line.because, words) + tuple(one for fact in line.facts for one in told.fact(fact))


def _numbers(told: Sentences) -> list[object]:
    found: list[object] = []
    for sentence in told:
        for number in sentence.numbers():
            match number:
                case Counted(count, unit) if count:
                    found.append(count * _size(unit))
                case Counted():
                    pass
                case _:
                    found.append(str(number))
    return sorted(found, key=str)


def _size(unit: Unit | Thing) -> Fraction:
    worth = unit.worth if isinstance(unit, Thing) else unit
    return worth.size if worth else Fraction(1)


@pytest.mark.parametrize("tag", [tag for tag in LANGUAGES if tag != "en-US"])
def test_every_reason_holds_the_numbers_that_english_says(tag: str) -> None:
    """No number is lost, added or changed on the way into another language."""
    words = STRIP if tag == STRIP.language else LANGUAGES[tag].usual
    for line in LINES:
        english, other = (_said(line, one) for one in (ClassWords("strip", "strips"), words))
        in_part = {"en-US"} if tag == "pt-BR" else set()
        assert {sentence.language for sentence in other} <= {tag} | in_part
        assert set(map(str, _numbers(english))) == set(map(str, _numbers(other))), text_of(other)


def test_what_spanish_claims_of_two_amounts_is_true() -> None:
    """Worth, more and less are checked by the tree, where two amounts stand on the sides of such words."""
    checked = set[str]()
    for line in LINES:
        for sentence in _said(line, STRIP):
            for before, words, after in zip(
                sentence.nodes, sentence.nodes[1:], sentence.nodes[2:], strict=False
            ):
                if isinstance(words, str) and words in CLAIMS:
                    first, second = _worth(before), _worth(after)
                    if first is not None and second is not None:
                        assert CLAIMS[words](first, second), text_of((sentence,))
                        checked.add(words)
    assert {"tiene", "tienen", "es la misma cantidad que"} <= checked


def _worth(node: object) -> Fraction | None:
    match node:
        case Counted(count, unit):
            return count * _size(unit)
        case Said(Quantity() as number):
            return value(number)
        case _:
            return None


def test_speech_has_no_digit_and_no_english() -> None:
    """Nothing reaches the voice in digits, signs or English words."""
    for line in LINES:
        for sentence in _said(line, STRIP):
            said = spoken(sentence)
            assert not re.search(r"[\d+=<>/]", said), said
            assert not re.search(r"\b(the|and|of|is|are|with|from)\b", said), said


def test_reasons_are_read_in_grade_4_to_6() -> None:
    """Fernández Huerta: 206.84 - 60 syllables a word - 1.02 words a sentence; 80 and above is for grade 5.

    Source: Fernández Huerta (1959), with Law's correction of the last term (2011), as told at legible.es.
    """
    level = reading_level(" ".join(text_of(_said(line, STRIP)) for line in LINES), "es-US")
    assert level is not None
    assert level.ease >= 80, float(level.ease)
    assert not level.hard
