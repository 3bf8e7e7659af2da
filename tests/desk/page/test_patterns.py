"""What each error pattern would write on a typed problem."""

from onewhole.desk.page.patterns import as_object, patterns, told
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text


def test_the_same_patterns_in_every_form() -> None:
    """As slips, as an object and as lines: the same ids in the same order, the same raw answers."""
    problem = "9 5/8 - 4 6/8"
    wrote = {slip.pattern: text(slip.wrote) for slip in patterns(problem)}
    assert as_object(problem) == {"problem": problem, "answer": "4 7/8", "shows": wrote}
    head, *lines = told(problem)
    assert head == "9 5/8 - 4 6/8    right: 4 7/8"
    assert [line.split()[0] for line in lines] == list(wrote)
    assert all(line.endswith(by_id(line.split()[0]).name) for line in lines)
    assert all(wrote[line.split()[0]] in line for line in lines)


def test_a_problem_that_shows_none() -> None:
    """The right answer is told, and nothing else."""
    assert told("5 ? 5") == ("5 ? 5    right: =",)
