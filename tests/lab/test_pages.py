"""The pages that are compared."""

import pytest

from lab.pages import composed, in_columns, look_alikes, random_page, room12
from lab.trials import problems
from onewhole.misconceptions.catalogue import shows
from onewhole.problems.needs import needs
from onewhole.problems.twins import twin_key
from onewhole.statements.reading import read_statement


@pytest.mark.more("lab/test_topics.py")
@pytest.mark.parametrize("make", [random_page, look_alikes, in_columns, composed])
def test_a_page_comes_from_its_seed(make: object) -> None:
    """So many problems, the same for the same seed, others for another; all can be labelled."""
    assert callable(make)
    page = make(5, 1)
    assert len(problems(page)) == 5
    assert make(5, 1) == page
    assert make(5, 2) != page


def test_a_longer_random_page_begins_as_a_shorter_one() -> None:
    """So that more problems are only added."""
    assert random_page(8, 3)[:5] == random_page(5, 3)


def test_look_alikes_are_all_of_one_make() -> None:
    """They need the same, a whole opened among it, and none is another one's twin."""
    page = [read_statement(typed) for typed in look_alikes(10, 1)]
    assert len({needs(asked) for asked in page}) == 1
    assert needs(page[0]).regrouping
    assert len({twin_key(asked) for asked in page}) == 10


@pytest.mark.more("lab/test_steps.py")
def test_columns_tell_many_ideas_apart() -> None:
    """Each problem shows several column patterns, and hardly two of them write the same on the whole page."""
    page = [shows(read_statement(typed)) for typed in in_columns(12, 1)]
    wrote: dict[str, list[object]] = {}
    for at, slips in enumerate(page):
        for slip in slips:
            wrote.setdefault(slip.pattern, []).append((at, slip.wrote))
    assert len({tuple(row) for row in wrote.values()}) > 0.8 * len(wrote)


def test_the_example_s_page_is_the_example_s() -> None:
    """Twelve problems, as typed there."""
    assert len(room12()) == 12
    assert room12()[6] == "9 5/8 - 4 6/8"
