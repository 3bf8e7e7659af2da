"""What the page for home says, as sentence trees."""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.for_home import closing_told, opening_told, tonight_told, wording_told
from onewhole.languages.english.home_questions import operation_asked, unit_asked
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import text_of
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation
from onewhole.sentences.node import Counted
from onewhole.sentences.sentence import End

WORDS = ClassWords("ribbon", "ribbons", "trade")


def test_tonight_names_every_operation_once() -> None:
    """What most pages do comes first; a page without an operation writes numbers in other ways."""
    assert text_of(tonight_told(())) == "Tonight we write numbers in other ways."
    every = tonight_told(tuple(Operation))
    assert text_of(every).count("we ") == len(Operation)
    assert len(every) == 1 + len(Operation) // 2


def test_a_whole_is_opened_in_the_class_s_words() -> None:
    """The amounts are nodes: one ribbon and eight eighths, one ten and ten ones."""
    opened, alike = opening_told(8, WORDS)
    assert text_of(opened) == (
        "Sometimes there are too few pieces to take away. "
        "Then we trade one ribbon: it is cut into equal pieces. One ribbon is eight eighths."
    )
    numbers = [one for sentence in (*opened, *alike) for one in sentence.numbers()]
    assert [one.count for one in numbers if isinstance(one, Counted)] == [1, 1, 8, 1, 10]
    assert [spoken(one) for one in alike[:2]] == ["It is the same with tens.", "One ten is ten ones."]


@pytest.mark.parametrize(
    ("taken", "added", "known"),
    [
        (True, True, "You may know this as borrowing. "),
        (False, True, "You may know this as carrying. "),
        (False, False, ""),
    ],
)
def test_the_older_word_is_that_of_the_operation(taken: bool, added: bool, known: str) -> None:
    """Borrowing where something is taken, carrying where it is added, one of them at most."""
    said = text_of(wording_told(WORDS, taken=taken, added=added))
    assert said == f"{known}In class we say trading: the amount does not change."


@pytest.mark.parametrize("operation", Operation)
@pytest.mark.parametrize("units", Units)
def test_every_question_asks(operation: Operation, units: Units) -> None:
    """Each pair of operation and units has its question, with the class's word for a whole."""
    one = About(operation, units)
    for asked in (*operation_asked(one, WORDS), *unit_asked(one, WORDS)):
        assert asked.end is End.ASKS
        assert "whole" not in text_of((asked,)).removesuffix("make a whole?")


def test_a_family_is_not_made_a_teacher() -> None:
    """Three short sentences close the page."""
    assert [len(text_of((one,)).split()) for one in closing_told()] == [7, 2, 12]
