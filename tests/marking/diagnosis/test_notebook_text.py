"""The notebook as text."""

import json
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.notebook import KeptFinding, Notebook, NotebookNight, Sat
from onewhole.marking.diagnosis.notebook_text import NotebookError, notebook_text, read_notebook

words = st.text(max_size=12)
keys = st.sampled_from(["A01", "A01 A10", "sound", "E30"])
seats = st.dictionaries(words, st.builds(Sat, words, words), max_size=3)
nights = st.builds(
    NotebookNight,
    st.dates(date(2020, 1, 1), date(2030, 1, 1)),
    words,
    st.dictionaries(keys, st.integers(0, 9000), max_size=4),
    seats,
    st.lists(st.builds(KeptFinding, words, st.lists(keys, max_size=2).map(tuple)), max_size=3).map(tuple),
)
GOOD = {"date": "2026-11-24", "page": "Kites", "pupils": {"A01": 5}, "groups": [], "findings": []}


@given(st.lists(nights, max_size=4))
def test_a_notebook_is_read_back(found: list[NotebookNight]) -> None:
    """Any nights, written and read again, are the same nights."""
    book = Notebook()
    for night in found:
        book = book.and_night(night)
    assert read_notebook(notebook_text(book)) == book


def test_the_caution_stands_in_it() -> None:
    """It holds findings."""
    assert json.loads(notebook_text(Notebook()))["caution"] == CAUTION
    assert read_notebook("") == read_notebook(" \n") == Notebook()


def _with(**changes: object) -> str:
    return json.dumps({"nights": [GOOD, GOOD | {"date": "2026-11-25"} | changes]})


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("{", "the notebook is no JSON text"),
        ("[" * 100_000, "the notebook is no JSON text"),
        ('{"nights": [NaN]}', "the notebook is no JSON text"),
        ("{}", "“nights” is missing in the notebook"),
        ("[]", "“nights” is missing in the notebook"),
        ('{"nights": 5}', "“nights” is no list"),
        ('{"nights": [5]}', "“groups” is missing in the notebook"),
        (_with(date="24 November"), "“24 November” is no date such as 2026-11-24"),
        (_with(date=5), "“date” is no text"),
        (_with(page=None), "“page” is no text"),
        (_with(pupils=[]), "“pupils” is no table"),
        (_with(pupils={"A01": -1}), "“A01” counts no pupils in thousandths"),
        (_with(pupils={"A01": True}), "“A01” counts no pupils in thousandths"),
        (_with(pupils={"A01": 1.5}), "“A01” counts no pupils in thousandths"),
        (_with(pupils={"A01": 10**30}), "“A01” counts no pupils in thousandths"),
        (_with(groups=[{"pupil": "K01", "group": "Swifts"}]), "“talk” is missing in the notebook"),
        (_with(findings=[{"pupil": "K01", "patterns": [5]}]), "“patterns” are no ids"),
        (_with(findings=[{"pupil": "K01", "patterns": "A01"}]), "“patterns” is no list"),
    ],
)
def test_what_is_no_notebook_is_refused(text: str, what: str) -> None:
    """With the night it stands in, and what to do next."""
    with pytest.raises(NotebookError) as refused:
        read_notebook(text, "class.json")
    assert refused.value.what == what
    assert str(refused.value.where).startswith("class.json")
    assert refused.value.remedy is not None


def test_the_place_is_told() -> None:
    """The line and column of broken text, the number of the night otherwise."""
    with pytest.raises(NotebookError, match=r"class\.json, line 2, column 1"):
        read_notebook('{"nights":\n', "class.json")
    with pytest.raises(NotebookError, match=r"class\.json, night 2"):
        read_notebook(_with(page=None), "class.json")


@given(st.text(alphabet='{}[]":,nightspu015 \n', max_size=60))
def test_any_text_is_read_or_refused(text: str) -> None:
    """No text stops the program."""
    assert _read_or_told(text)


def _read_or_told(text: str) -> bool:
    try:
        return isinstance(read_notebook(text), Notebook)
    except NotebookError as refused:
        return refused.remedy is not None
