"""What a way to work is called on the numbers of a problem."""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.ways import way_of
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.questions import suiting
from onewhole.working.strategies.table import strategy_named
from onewhole.working.work import work

WORDS = ClassWords("strip", "strips")


@pytest.mark.parametrize(
    ("problem", "way", "called"),
    [
        ("52 - 27", "columns", "In columns"),
        ("52 - 27", "regroup_first", "Regroup a ten"),
        ("58 - 27", "regroup_first", "Regroup first"),
        ("304 - 128", "regroup_first", "Regroup a hundred, then a ten"),
        ("8000 - 2345", "regroup_first", "Regroup a thousand, then on to the right"),
        ("7 2/6 - 3 5/6", "regroup_first", "Regroup one whole first"),
        ("5 ft 2 in - 2 ft 7 in", "regroup_first", "Regroup a foot"),
        ("2 h 5 min - 50 min", "regroup_first", "Regroup an hour"),
        ("5.2 - 2.7", "regroup_first", "Regroup a strip"),
        ("48 + 27", "make_a_whole", "Make a ten"),
        ("2 4/5 + 1 3/5", "make_a_whole", "Make a whole"),
        ("48 + 27", "units_apart", "Place by place, then regroup"),
        ("5 ft 2 in + 11 in", "units_apart", "Unit by unit, then regroup"),
        ("5/6 ? 7/8", "columns", "Compare what is missing to one whole"),
        ("4/5 ? 4/7", "columns", "Compare the size of the pieces"),
        ("0 ? 4/7", "columns", "Compare"),
    ],
)
def test_it_names_what_is_regrouped_or_filled(problem: str, way: str, called: str) -> None:
    """A ten on whole numbers, a foot on measures, and a whole where wholes are cut into pieces."""
    assert way_of(work(read_statement(problem), strategy_named(way)), WORDS) == called


@pytest.mark.parametrize("problem", ["52 - 27", "48 + 27", "304 - 128", "4006 - 1278", "1234 + 2876"])
def test_nothing_is_said_of_wholes_or_fractions_where_there_are_none(problem: str) -> None:
    """No way that is offered for whole numbers speaks of wholes, pieces or fractions."""
    statement = read_statement(problem)
    assert isinstance(statement, Question)
    names = [way_of(work(statement, way), ClassWords()) for way in suiting(statement)]
    assert not [name for name in names if any(word in name for word in ("one whole", "fraction", "wholes"))]
    assert len(set(names)) == len(names)
