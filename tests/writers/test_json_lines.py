"""Workings and patterns as JSON objects."""

import json
from fractions import Fraction

import pytest

from lab.spaces import additions, subtractions
from onewhole.languages.class_words import ClassWords
from onewhole.misconceptions.catalogue import shows
from onewhole.problems.answer import answer
from onewhole.statements.expression import value
from onewhole.statements.reading import read_expression, read_statement
from onewhole.working.questions import suiting
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from onewhole.writers.json_lines import patterns_object, value_text, working_object

WORDS = ClassWords()


@pytest.mark.more("commands/test_sessions.py")
def test_every_line_typed_again_is_worth_what_it_says() -> None:
    """On every difference and sum of sixths up to 2 5/6, by every strategy: `text` reads back to `value`."""
    seen = 0
    for question in (*subtractions([6], 2), *additions([6], 2)):
        for strategy in suiting(question):
            found = working_object(work(question, strategy), WORDS)
            lines = found["lines"]
            assert isinstance(lines, list)
            for line in lines:
                assert value(read_expression(line["text"])) == Fraction(line["value"])
                assert line["value"] == found["value"]
                assert line["because"].endswith((".", "!"))
                seen += 1
    print(f"{seen} lines")
    assert seen > 1000


def test_a_measure_counts_its_smallest_unit() -> None:
    """2 ft 7 in is worth 31 inches; a sign is its own value."""
    assert value_text(answer(read_statement("5 ft 2 in - 2 ft 7 in"))) == "31"
    assert value_text(answer(read_statement("7 2/6 - 3 5/6"))) == "7/2"
    assert value_text(answer(read_statement("5/6 ? 7/8"))) == "<"


def test_a_missing_number_is_the_answer() -> None:
    """The lines keep the number that is looked for."""
    found = working_object(work(read_statement("7 2/6 = 6 ?/6"), REGROUP_FIRST), WORDS)
    lines = found["lines"]
    assert isinstance(lines, list)
    assert (found["answer"], found["value"], {line["value"] for line in lines}) == ("8", "8", {"8"})


def test_patterns_are_raw() -> None:
    """Each id with what is written on paper, not made simpler: 4 9/8 stays."""
    statement = read_statement("9 5/8 - 4 6/8")
    found = patterns_object(statement, answer(statement), shows(statement))
    shown = found["shows"]
    assert isinstance(shown, dict)
    assert shown["A04"] == "4 9/8"
    assert list(shown) == [slip.pattern for slip in shows(statement)]
    assert json.loads(json.dumps(found)) == found
