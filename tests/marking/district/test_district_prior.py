"""A district's prior: what it says is taken, and what is no prior is refused."""

import json
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.desk.district.priors import learnt_elsewhere
from onewhole.desk.marking.mark import mark
from onewhole.errors import InputError
from onewhole.marking.diagnosis.diagnosis import diagnose
from onewhole.marking.district.district_prior import DistrictPrior, district_learnt, prior_text, read_prior

PAGE = "1. 9 5/8 - 4 6/8\n2. 8 1/6 - 3 5/6"
SHARES = st.dictionaries(
    st.text(st.characters(codec="utf-8"), max_size=8),
    st.tuples(st.integers(0, 9), st.integers(10, 10**9)),
    max_size=5,
)


@given(SHARES)
def test_what_is_written_is_read(shares: dict[str, tuple[int, int]]) -> None:
    """Any keys and counts come back."""
    assert read_prior(prior_text(DistrictPrior(shares))).shares == shares


def test_an_idea_that_goes_round_is_likelier_at_once() -> None:
    """One answer that fits A01: with a district in which every third pupil has it, the odds rise."""
    marks = mark(PAGE, "pupil,1,2\nK01,5 1/8,").marks
    odds = []
    for prior in (DistrictPrior({}), DistrictPrior({"A01": (330, 1000), "sound": (500, 1000)})):
        [one] = diagnose(marks, district_learnt(prior))
        odds.append({each.patterns: each.probability for each in one.odds}[("A01",)])
    assert odds[0] < odds[1]


@pytest.mark.parametrize(
    ("held", "why"),
    [
        ("kite", "not JSON"),
        ("[" * 100_000, "not JSON"),
        ("[]", "“format”"),
        ({"format": "onewhole prior 1"}, "“shares”"),
        ({"format": "onewhole prior 1", "shares": {"A01": 3}}, "“A01” has no"),
        ({"format": "onewhole prior 1", "shares": {"A01": {"have": 11, "of": 10}}}, "“A01” has no"),
        ({"format": "onewhole prior 1", "shares": {"A01": {"have": True, "of": 10}}}, "“A01” has no"),
        ({"format": "onewhole prior 1", "shares": {"A01": {"have": 0, "of": 0}}}, "“A01” has no"),
    ],
)
def test_what_is_no_prior_is_refused(held: object, why: str, tmp_path: Path) -> None:
    """With its reason, and the file."""
    path = tmp_path / "prior.json"
    path.write_text(held if isinstance(held, str) else json.dumps(held))
    with pytest.raises(InputError, match=why):
        learnt_elsewhere(path)
