"""Ideas about two numbers, on numbers that are put in order."""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.asks import ask_told
from onewhole.languages.english.thoughts import thought_told
from onewhole.misconceptions.asks.sizes import WhichPieces
from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.misconceptions.pattern import Luck
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Comparison, NumberRow


@pytest.mark.parametrize(
    ("pattern", "typed", "wrote"),
    [
        ("C08", "order 1/8, 1/2, 1/4", "1/2 < 1/4 < 1/8"),
        ("C08", "order 1/8, 1/2, 1/4 from greatest", "1/8 > 1/4 > 1/2"),
        ("C09", "order 3/8, 2/3, 1/2", "1/2 < 2/3 < 3/8"),
        ("C12", "order 3/8, 1/8, 5/8", "5/8 < 3/8 < 1/8"),
        ("N03", "order 2 1/8, 2 1/4, 1 3/4", "1 3/4 < 2 1/4 < 2 1/8"),
        ("F06", "order 0.5, 0.45, 0.405", "0.5 < 0.45 < 0.405"),
        ("F07", "order 0.5, 0.65, 0.805", "0.805 < 0.65 < 0.5"),
        ("N16", "order 5 ft, 61 in, 2 yd", "2 yd < 5 ft < 61 in"),
        ("N14", "order 999, 1001, 354", "1001 < 354 < 999"),
    ],
)
def test_an_idea_puts_numbers_in_order(pattern: str, typed: str, wrote: str) -> None:
    """By what it says of each two; where it says nothing, they are compared rightly."""
    slip = by_id(pattern).slip(read_statement(typed))
    assert slip is not None
    assert text(slip.wrote) == wrote
    assert slip.false_at == 1


@pytest.mark.parametrize(
    ("pattern", "typed", "lucky"),
    [
        ("C08", "order 3/8, 1/8", False),  # says nothing of like denominators
        ("C12", "order 3/8, 5/8, 1/2", False),  # 5/8 below 3/8 by it, 3/8 below 1/2 below 5/8: no order
        ("N01", "order 3 1/4, 3 3/4, 3 1/2", False),  # all equal, so in any order
        ("N15", "order 3/8, 5/8, 1/2", False),  # not about which is more
        ("A01", "order 3/8, 5/8, 1/2", False),
        ("C09", "order 1/8, 2/3, 3/4", True),
        ("N09", "order 0.5, 0.50, 0.45", True),  # the row is right, whatever signs stand in it
    ],
)
def test_what_an_idea_cannot_show(pattern: str, typed: str, lucky: bool) -> None:
    """Where it says nothing, makes no order or calls unequal numbers equal; and right by luck."""
    statement = read_statement(typed)
    assert by_id(pattern).slip(statement) is None
    assert (by_id(pattern).meets(statement) is Luck.RIGHT) is lucky


def test_the_question_is_about_the_first_two_that_are_compared_wrongly() -> None:
    """Its holes are filled from them, and so are those of the thought."""
    pattern = by_id("C08")
    case = pattern.case(read_statement("order 3/8, 1/4, 1/8"))
    assert case is not None
    assert case.statement == read_statement("1/4 ? 1/8")
    assert isinstance(case.statement, Comparison)
    ask = pattern.ask(case)
    assert isinstance(ask, WhichPieces)
    assert [unit.size.denominator for unit in (ask.first, ask.second)] == [4, 8]


def test_every_pattern_that_shows_can_be_asked_about() -> None:
    """Of each idea that an ordering shows, there is a case with its question and thought."""
    typed = (
        "order 1/8, 2/3, 1/4",
        "order 0.5, 0.45, 0.405",
        "order 2 1/8, 2 1/4, 1 3/4",
        "order 7/3, 2, 3/4",
    )
    found = {
        slip.pattern: statement
        for one in typed
        for statement in [read_statement(one)]
        for slip in shows(statement)
    }
    assert len(found) > 6
    for key, statement in found.items():
        case = by_id(key).case(statement)
        assert case is not None
        assert text_of(ask_told(by_id(key).ask(case), ClassWords()))
        assert text_of(thought_told(by_id(key).thinking(case), ClassWords()))


def test_every_slip_is_a_row_of_the_numbers() -> None:
    """All of them, each once, with its own signs."""
    statement = read_statement("order 5/6, 1/2, 3/8, 2/3")
    for slip in shows(statement):
        assert isinstance(slip.wrote, NumberRow)
        assert len(slip.wrote.signs) == 3
        assert set(map(text, slip.wrote.parts)) == {"5/6", "1/2", "3/8", "2/3"}
