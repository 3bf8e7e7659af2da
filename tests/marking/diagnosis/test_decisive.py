"""Answers without which a pattern would not be likely."""

from hypothesis import given
from hypothesis import strategies as st

from onewhole.findings.status import Status
from onewhole.marking.diagnosis.decisive import decisive
from onewhole.marking.diagnosis.finding import findings
from onewhole.marking.reading.expected import expect
from tests.kit.answers import all_right, by_pattern, marked_against, page

PAGE = page()
EXPECTED = tuple(map(expect, PAGE))
RIGHT, WRONG = all_right(PAGE), by_pattern("A01", PAGE)
SHOWS = [at for at, (one, other) in enumerate(zip(RIGHT, WRONG, strict=True)) if one != other]


def _row(fits: set[int]) -> list[str]:
    return [WRONG[at] if at in fits else RIGHT[at] for at in range(len(PAGE))]


def _decisive(row: list[str], recent: dict[str, int] | None = None) -> frozenset[str]:
    (pupil,) = marked_against(EXPECTED, {"K01": row}).pupils
    return decisive(EXPECTED, pupil.marks, recent or {})


def test_of_two_answers_each_decides_and_of_many_none() -> None:
    """One alone makes no group by itself, but after a recent night it does."""
    one, two = _row({SHOWS[0]}), _row({SHOWS[0], SHOWS[2]})
    assert _decisive(one) == frozenset()
    assert _decisive(one, {"A01": 1}) == {PAGE[SHOWS[0]].label}
    assert _decisive(two) == {PAGE[SHOWS[0]].label, PAGE[SHOWS[2]].label}
    assert _decisive(_row(set(SHOWS))) == frozenset()
    assert _decisive(RIGHT) == frozenset()


@given(st.sets(st.sampled_from(SHOWS)))
def test_without_a_deciding_answer_its_patterns_are_not_likely(fits: set[int]) -> None:
    """The rule of the findings agrees, for every pupil who follows a pattern on some of the problems."""
    row = _row(fits)
    (pupil,) = marked_against(EXPECTED, {"K01": row}).pupils
    for label in _decisive(row):
        at = next(at for at, problem in enumerate(PAGE) if problem.label == label)
        without = [*row[:at], "", *row[at + 1 :]]
        (found,) = findings(marked_against(EXPECTED, {"K01": without}))
        fitted = {key for mark in pupil.marks if mark.label == label for key in mark.patterns}
        assert found.status is not Status.LIKELY or not fitted & set(found.patterns)


def test_two_ideas_are_decided_apart() -> None:
    """Where one idea has many answers and another two, the two decide about theirs."""
    other = by_pattern("A19", PAGE)
    row = [other[at] if at < 2 else WRONG[at] for at in range(len(PAGE))]
    assert _decisive(row) == {PAGE[0].label, PAGE[1].label}
