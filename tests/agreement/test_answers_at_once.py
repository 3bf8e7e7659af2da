"""Two roads to what patterns write: the catalogue, one problem at a time, and the arrays, all at once.

Walked whole for halves and thirds with up to two wholes; a seeded sample of every other denominator of the
grade, with up to nine wholes (two for hundredths). ONEWHOLE_WHOLE_WALK=1 (`make walk`) walks every
denominator of the grade whole with up to nine wholes, and hundredths with up to one.
"""

import os
import random
from collections.abc import Iterator

import numpy as np
import pytest

from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import by_id, patterns, shows
from onewhole.misconceptions.pattern import Topic
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.presses.answers_at_once import Table, code, writes
from onewhole.presses.space_at_once import likes, table
from onewhole.problems.traps import traps
from tests.kit.how_much import sample

SAMPLE = sample(20, 60)
EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
#: Denominator and largest whole of the spaces that are walked whole, and so many problems in one test.
WALKED = [*((d, 9) for d in (2, 3, 4, 5, 6, 8, 10, 12)), (100, 1)] if EVERYTHING else [(2, 2), (3, 2)]
AT_ONCE = 1500
SAMPLES = [(d, 2 if d == 100 else 9, taken) for d in (4, 5, 6, 8, 10, 12, 100) for taken in (True, False)]


def coded(outcome: Outcome) -> int:
    """One number for an answer as written."""
    if isinstance(outcome, Impossible):
        return int(code(outcome.wholes or 0, outcome.top, 0))
    assert isinstance(outcome, Quantity)
    if outcome.ladder.style is Style.MIXED:
        wholes, pieces = outcome.amounts
        return int(code(wholes, pieces, outcome.ladder.denominator))
    return int(code(outcome.value.numerator, 0, 1))


def agree(t: Table) -> None:
    """Both roads write the same on every problem of a table, and are right by luck on the same."""
    wrote = writes(t)
    for at, one in enumerate(likes(t)):
        found = {key: int(row.answer[at]) for key, row in wrote.items() if row.shows[at]}
        assert found == {slip.pattern: coded(slip.wrote) for slip in shows(one.statement)}, one.typed
        lucky = {key for key, row in wrote.items() if row.lucky[at]}
        assert lucky == set(traps(one.statement).lucky) & set(wrote), one.typed


def _walks() -> Iterator[tuple[int, int, bool, int]]:
    """Every space, and where in it a test begins."""
    for denominator, largest in WALKED:
        for taken in (True, False):
            for begin in range(0, len(table(denominator, largest, taken=taken)), AT_ONCE):
                yield denominator, largest, taken, begin


@pytest.mark.parametrize(("denominator", "largest", "taken", "begin"), list(_walks()))
def test_a_space_whole(denominator: int, largest: int, taken: bool, begin: int) -> None:
    """Every problem of it."""
    every = table(denominator, largest, taken=taken)
    agree(every.at(np.arange(begin, min(begin + AT_ONCE, len(every)))))


@pytest.mark.parametrize(("denominator", "largest", "taken"), SAMPLES)
def test_a_sample_of_the_grade(denominator: int, largest: int, taken: bool) -> None:
    """A seeded sample of problems, the same each time."""
    every = table(denominator, largest, taken=taken)
    places = sorted(random.Random(denominator).sample(range(len(every)), SAMPLE))
    agree(every.at(np.array(places)))


@pytest.mark.parametrize(("taken", "topic"), [(True, Topic.SUBTRACT_LIKE), (False, Topic.ADD_LIKE)])
def test_every_pattern_has_its_row(taken: bool, topic: Topic) -> None:
    """The arrays hold all patterns of the topic and no other."""
    rows = set(writes(table(3, 1, taken=taken)))
    assert rows == {one.id for one in patterns() if one.topic is topic}
    assert all(by_id(key).topic is topic for key in rows)


def test_answers_that_are_written_alike_have_one_number() -> None:
    """3 0/6 is 3; 3/6 and 1/2, 4 8/5 and 5 3/5, 3 3/0 and 3 3/1 are different."""
    assert code(3, 0, 6) == code(3, 0, 1)
    different = [code(0, 3, 6), code(0, 1, 2), code(4, 8, 5), code(5, 3, 5), code(3, 3, 0), code(3, 3, 1)]
    assert len({int(one) for one in different}) == len(different)
