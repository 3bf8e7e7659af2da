"""Every line of the OWASP ASVS has its answer: a test, a page, a reason, or the word that it is not met."""

import re
from collections import Counter

import pytest

from tools.docs import DOCS
from tools.page_of_security import CHAPTERS, kind_of, lines, proofs

HEADING = re.compile(r"^#+ (.*)$", re.MULTILINE)


def _anchors(page: str) -> set[str]:
    text = (DOCS / page).read_text(encoding="utf-8")
    return {re.sub(r"[^\w -]", "", head.lower()).replace(" ", "-") for head in HEADING.findall(text)}


def test_every_line_has_an_answer() -> None:
    """One that nothing else answers has a test; one that does not apply, or is not met, has none."""
    marked = proofs()
    answered = {kind: [one for one in lines() if kind_of(one) == kind] for kind in map(kind_of, lines())}
    print({kind: len(found) for kind, found in answered.items()})
    assert [one.number for one in answered["by a test"] if one.number not in marked] == []
    apart = answered["does not apply"] + answered["not met"]
    assert [one.number for one in apart if one.number in marked] == []


def test_a_test_bears_numbers_that_there_are() -> None:
    """A number in a marker stands in the list."""
    assert set(proofs()) - {one.number for one in lines()} == set()


def test_every_line_of_levels_one_and_two_is_there() -> None:
    """Seventy and 183, as the published table of version 5.0.0 has (OWASP_..._5.0.0_en.csv)."""
    counted = Counter(one.level for one in lines())
    assert (counted[1], counted[2]) == (70, 183)


def test_numbers_leave_no_gap_that_the_standard_has_not() -> None:
    """The chapters are those of the standard, and each has lines."""
    assert {one.chapter for one in lines()} == set(CHAPTERS)
    assert [one.number for one in lines() if len(one.order) != 3] == []


@pytest.mark.parametrize("line", [one for one in lines() if one.page], ids=lambda one: one.number)
def test_a_page_that_answers_is_there(line: object) -> None:
    """With the place in it that is named."""
    (page,) = [one.page for one in lines() if one is line]
    name, _, anchor = page.partition("#")
    assert (DOCS / name).is_file()
    assert not anchor or anchor in _anchors(name)


def test_a_line_has_one_kind_of_answer() -> None:
    """Not met and a reason why it does not apply do not go together."""
    both = [one.number for one in lines() if sum(map(bool, (one.page, one.apart, one.unmet))) > 1]
    assert both == []
