import re
from collections.abc import Iterable

import pytest
from hypothesis import given

from onewhole.languages.class_words import ClassWords
from onewhole.misconceptions.attempt import answer_claim
from onewhole.misconceptions.catalogue import UnknownPatternError, by_id, indexed, patterns, shows
from onewhole.misconceptions.pattern import Pattern, Topic
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement, meaning
from onewhole.working.strategies.table import strategy_named
from onewhole.working.strategy import fits
from onewhole.writers.pattern_words import question_on, thought_on
from tests.kit.statements import statements


def said(pattern: Pattern) -> tuple[str, ...]:
    """Return every sentence of a pattern that a teacher reads."""
    case, words = pattern.example_case, ClassWords()
    filled = thought_on(pattern, case, words), question_on(pattern, case, words)
    return pattern.name, pattern.rule, pattern.shows_when, *filled


def test_every_id_is_there_in_order() -> None:
    """A01 to A36, P01 to P11, B01 to B13, and so on."""
    topics = (("A", 36), ("P", 11), ("B", 13), ("C", 13), ("D", 7), ("E", 31), ("F", 11), ("G", 6))
    second: dict[str, Iterable[int]] = {
        "H": range(1, 15),
        "I": range(2, 8),
        "J": [*range(1, 10), 11, 12, 13, 14],
        "K": [*range(1, 14), 15],
        "L": [*range(1, 9), 11, 12],
        "M": [1, 2, 3, 4, 6, *range(8, 16), 17, 18],
        "N": [*range(1, 7), *range(8, 17)],
    }
    second |= {"O": [5, 8, 9, 10, 11, 15, 16, 18, 19, 21, 23], "Q": [1, 2, 3, 7, 8, 9], "R": range(1, 10)}
    second |= {"S": [*range(1, 7), 8, 9, 10]}
    second |= {
        "T": [1, 2, 3, 5, 6, 7, 8, 9],
        "U": [1, 2, 3],
        "V": range(1, 17),
        "W": range(1, 6),
        "X": range(1, 11),
    }
    wanted = [f"{letter}{n:02}" for letter, last in topics for n in range(1, last + 1)]
    wanted += [f"{letter}{n:02}" for letter, numbers in second.items() for n in numbers]
    assert [pattern.id for pattern in patterns()] == wanted


def test_two_patterns_with_one_id_are_refused() -> None:
    """A duplicate id raises, so that none is lost."""
    with pytest.raises(ValueError, match=r"^two patterns are called A02$"):
        indexed([[by_id("A02")], [by_id("A01"), by_id("A02")]])


def test_an_id_may_be_typed_small() -> None:
    """Ids are found however they are typed, and an unknown one says what there is."""
    assert by_id(" a02 ").id == "A02"
    with pytest.raises(UnknownPatternError, match="called “Z01”"):
        by_id("Z01")


def test_shows_keeps_the_order_of_ids() -> None:
    """What a problem shows is listed by id."""
    found = [slip.pattern for slip in shows(read_statement("9 5/8 - 4 6/8"))]
    assert found == [p.id for p in patterns() if p.id in found]


@pytest.mark.parametrize("problem", ["7 2/6", "1/4 + 1/4 + 1/4", "2 + ? = 5 1/3", "(1 + 2)/3", "9/9 - 1/1"])
def test_a_problem_that_shows_nothing_is_no_fault(problem: str) -> None:
    """Any statement may be asked."""
    assert isinstance(shows(read_statement(problem)), tuple)


@pytest.mark.parametrize("pattern", patterns(), ids=lambda pattern: pattern.id)
class TestWords:
    def test_every_field_says_something(self, pattern: Pattern) -> None:
        """No pattern is without words for the teacher and a question to the child."""
        assert all(words.strip() for words in said(pattern))
        assert "?" in said(pattern)[-1]

    def test_plain_words(self, pattern: Pattern) -> None:
        """No word labels a child, and no trade word is left that this grade does without."""
        words = set(re.findall(r"[a-z]+", " ".join(said(pattern)).lower()))
        assert not words & {"has", "improper", "reduce", "misconception", "bug", "deficit", "borrow"}

    def test_the_strategy_beside_it_is_for_its_operation(self, pattern: Pattern) -> None:
        """What is bent or set beside is a strategy of the table, some steps of it, and for this operation."""
        if pattern.strategy is None:
            return
        strategy = strategy_named(pattern.strategy)
        if pattern.bends is not None:
            assert pattern.bends.steps
            assert set(pattern.bends.steps) <= {step.key for step in strategy.steps}
        if pattern.topic in {Topic.SUBTRACT_LIKE, Topic.ADD_LIKE}:
            assert fits(strategy, taken=pattern.topic is Topic.SUBTRACT_LIKE)


@given(statements())
def test_any_statement_may_be_asked(statement: Statement) -> None:
    """No statement that can be read makes a pattern stumble, and what it writes is never the right answer."""
    right = meaning(statement)
    for slip in shows(statement):
        assert (answer_claim(slip.wrote) == right) == slip.form
