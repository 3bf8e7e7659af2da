"""The examples of family T of a second collection of error patterns: what to do in a story, what to answer.

Source: the rows of that family (the story, then in brackets the right step, what a word in it suggests, and
whether it compares), every example and every problem that tells apart computed there by its own code. T06
and T07 are about a left-over that makes the answer one more: that is asked in so many words, so they show on
numbers alone.
T02 has numbers there that the question does not need; an equation holds only those that it needs, so only its
rule for the others is held.
"""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.misconceptions.catalogue import by_id, patterns, shows
from onewhole.misconceptions.in_story import InStory
from onewhole.misconceptions.telling import PLAIN_STORY, Doing, ToldAs
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_statement
from onewhole.writers.pattern_words import question

#: Id, problem, how it is told, right, written, ids that answer alike there.
ROWS = (
    ("T01", "12 - 3", ToldAs(Doing.ADDING, compares=True), "9", "15", "T02 T03 E28"),
    ("T01", "20 + 6", ToldAs(Doing.TAKING), "26", "14", ""),
    ("T03", "24 / 4", ToldAs(Doing.MULTIPLYING, compares=True), "6", "96", "T01"),
    ("T03", "2 x 12", ToldAs(Doing.MULTIPLYING, compares=True), "24", "6", ""),
    ("T05", "3 / 4", PLAIN_STORY, "3/4", "4/3", "M17"),
    ("T05", "2 / 6", PLAIN_STORY, "2/6", "6/2", "M17"),
    ("T08", "3 x 12 - 20", PLAIN_STORY, "16", "36", "W03"),
    ("T08", "4 x 15 - 12", PLAIN_STORY, "48", "60", "W03"),
    ("T09", "3/4 x 8", PLAIN_STORY, "6", "10 2/3", ""),
    ("T09", "2/3 x 12", PLAIN_STORY, "8", "18", ""),
    ("T02", "25 - 8", PLAIN_STORY, "17", "33", "E28"),
)
#: Those of what is left over, typed as there, with what is right and what each pattern writes.
LEFT_OVER = (
    ("50 ÷ 8; up", "7", {"T06": "6", "T07": "6 r 2"}),
    ("65 ÷ 9; up", "8", {"T06": "7", "T07": "7 r 2"}),
)


@pytest.mark.parametrize("row", ROWS, ids=[f"{row[0]} {row[1]}" for row in ROWS])
def test_a_pattern_writes_its_example(row: tuple[str, str, ToldAs, str, str, str]) -> None:
    """The answer comes out, and exactly the named patterns answer alike."""
    key, problem, telling, right, wrote, same = row
    statement = read_statement(problem)
    assert answer(statement) == answer(read_statement(problem))
    assert text(answer(statement)) == right
    found = {slip.pattern: text(slip.wrote) for slip in shows(statement, telling)}
    assert found[key] == wrote
    assert {other for other in found if found[other] == wrote} - {key} == set(same.split())


def test_every_pattern_of_the_family_is_here() -> None:
    """And each has an example that is told."""
    told = [one for one in patterns() if one.id.startswith("T") and one.id not in {"T06", "T07"}]
    assert {one.id for one in told} == {row[0] for row in ROWS}
    assert all(one.example.story and one.example.telling and isinstance(one.attempt, InStory) for one in told)
    assert not [one.id for one in patterns() if isinstance(one.attempt, InStory) and one not in told]


@pytest.mark.parametrize(("typed", "right", "wrote"), LEFT_OVER)
def test_what_is_left_over_needs_a_place(typed: str, right: str, wrote: dict[str, str]) -> None:
    """As the rows of the collection have it, their examples and those that tell them apart."""
    statement = read_statement(typed)
    assert text(answer(statement)) == right
    found = {slip.pattern: text(slip.wrote) for slip in shows(statement)}
    assert {key: found[key] for key in wrote} == wrote
    assert all(by_id(key).example.story for key in wrote)


def test_numbers_alone_show_none_of_them() -> None:
    """There a sign says what to do."""
    for row in ROWS:
        assert by_id(row[0]).slip(read_statement(row[1])) is None


def test_a_pattern_that_no_problem_shows_is_asked_about_by_its_story() -> None:
    """The example stands there in its words, not as an equation alone."""
    pattern = by_id("T08")
    asked = question(pattern, (), ClassWords())
    assert asked.startswith(f"on “{pattern.example.story}”: Read the question")
