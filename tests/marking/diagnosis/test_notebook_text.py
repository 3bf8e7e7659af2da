"""The notebook as text."""

import json
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.findings.night_failed import NightFailed
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.marking.diagnosis.notebook import KeptFinding, Notebook, NotebookNight, Sat, failed_night
from onewhole.marking.diagnosis.notebook_text import NotebookError, notebook_text, read_notebook

words = st.text(max_size=12)
keys = st.sampled_from(["A01", "A01 A10", "sound", "E30"])
seats = st.dictionaries(words, st.builds(Sat, words, words), max_size=3)
histories = st.builds(
    PupilNight,
    st.dictionaries(keys, st.integers(0, 10**5), max_size=3),
    st.dictionaries(keys, st.integers(0, 9), max_size=3),
)
nights = st.builds(
    NotebookNight,
    st.dates(date(2020, 1, 1), date(2030, 1, 1)),
    words,
    st.dictionaries(keys, st.integers(0, 9000), max_size=4),
    seats,
    st.lists(st.builds(KeptFinding, words, st.lists(keys, max_size=2).map(tuple)), max_size=3).map(tuple),
    st.dictionaries(words, histories, max_size=3),
)
EARLIER = """\
{
 "caution": "A pattern found in a few answers is a hint for a talk with the child, never a label.",
 "nights": [
  {
   "date": "2026-11-24",
   "page": "Kites, “é”",
   "until": "2026-12-08",
   "pupils": {
    "A01": 5000,
    "A01 A10": 12
   },
   "groups": [
    {
     "pupil": "K01",
     "group": "Delta",
     "talk": ""
    },
    {
     "pupil": "K02",
     "group": "Swifts",
     "talk": "A01"
    }
   ],
   "findings": [
    {
     "pupil": "K01",
     "patterns": [
      "A01",
      "A10"
     ]
    },
    {
     "pupil": "K02",
     "patterns": []
    }
   ]
  }
 ]
}
"""
NOT_SO = "this is not as a notebook is written:"
GOOD = {"date": "2026-11-24", "page": "Kites", "pupils": {"A01": 5}, "groups": [], "findings": []}


@given(st.lists(nights, max_size=4))
def test_a_notebook_is_read_back(found: list[NotebookNight]) -> None:
    """Any nights, written and read again, are the same nights."""
    book = Notebook()
    for night in found:
        book = book.and_night(night)
    assert read_notebook(notebook_text(book)) == book


NOW = """\
{
 "caution": "A pattern found in a few answers is a hint for a talk with the child, never a label.",
 "version": 2,
 "nights": [
  {
   "date": "2026-11-24",
   "page": "Kites",
   "until": "2026-12-08",
   "pupils": {
    "A01": 990
   },
   "groups": [],
   "findings": [],
   "histories": [
    {
     "pupil": "K01",
     "shares": {
      "A01": 980000,
      "sound": 15000
     },
     "fits": {
      "A01": 3,
      "A10": 0
     }
    }
   ],
   "failed": ""
  },
  {
   "date": "2026-11-25",
   "page": "Tails",
   "until": "2026-12-09",
   "pupils": {},
   "groups": [],
   "findings": [],
   "histories": [],
   "failed": "ValueError at x.py:7"
  }
 ]
}
"""


def test_a_notebook_of_an_earlier_release_is_read() -> None:
    """Teachers have these files: they have no version, and say nothing of a pupil's own history."""
    night = NotebookNight(
        date(2026, 11, 24),
        "Kites, “é”",
        {"A01": 5000, "A01 A10": 12},
        {"K01": Sat("Delta", ""), "K02": Sat("Swifts", "A01")},
        (KeptFinding("K01", ("A01", "A10")), KeptFinding("K02", ())),
    )
    assert read_notebook(EARLIER) == Notebook((night,))


def test_a_notebook_is_written_as_ever() -> None:
    """Byte for byte: a pupil's own history is in it, as shares in millionths and exact fits."""
    left = {"K01": PupilNight({"A01": 980_000, "sound": 15_000}, {"A01": 3, "A10": 0})}
    failed = failed_night(NightFailed(date(2026, 11, 25), "Tails", "ValueError at x.py:7"))
    book = Notebook((NotebookNight(date(2026, 11, 24), "Kites", {"A01": 990}, {}, (), left), failed))
    assert notebook_text(book) == NOW
    assert read_notebook(NOW) == book


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
        ("{}", f"{NOT_SO} object missing required field `nights`"),
        ("[]", f"{NOT_SO} expected `object`, got `array`"),
        ('{"nights": 5}', f"{NOT_SO} expected `array`, got `int`"),
        ('{"nights": [5]}', f"{NOT_SO} expected `object`, got `int`"),
        (_with(date="24 November"), f"{NOT_SO} invalid RFC3339 encoded date"),
        (_with(date=5), f"{NOT_SO} expected `date`, got `int`"),
        (_with(page=None), f"{NOT_SO} expected `str`, got `null`"),
        (_with(pupils=[]), f"{NOT_SO} expected `object`, got `array`"),
        (_with(pupils={"A01": -1}), f"{NOT_SO} expected `int` >= 0"),
        (_with(pupils={"A01": True}), f"{NOT_SO} expected `int`, got `bool`"),
        (_with(pupils={"A01": 1.5}), f"{NOT_SO} expected `int`, got `float`"),
        (_with(pupils={"A01": 10**30}), f"{NOT_SO} expected `int` <= 10000000"),
        (
            _with(groups=[{"pupil": "K01", "group": "Swifts"}]),
            f"{NOT_SO} object missing required field `talk`",
        ),
        ('{"version": 99, "nights": []}', f"{NOT_SO} expected `int` <= 2"),
        (
            _with(histories=[{"pupil": "K01", "shares": {"A01": 10**7}, "fits": {}}]),
            f"{NOT_SO} expected `int` <= 1000000",
        ),
        (
            _with(histories=[{"pupil": "K01", "shares": {"A01": 600_000, "A02": 600_000}, "fits": {}}]),
            f"{NOT_SO} the shares of a history are parts of one whole",
        ),
        (_with(findings=[{"pupil": "K01", "patterns": [5]}]), f"{NOT_SO} expected `str`, got `int`"),
        (_with(findings=[{"pupil": "K01", "patterns": "A01"}]), f"{NOT_SO} expected `array`, got `str`"),
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
    """The line and column of broken text, otherwise the night, and the part of it."""
    with pytest.raises(NotebookError, match=r"class\.json, line 2, column 1"):
        read_notebook('{"nights":\n', "class.json")
    with pytest.raises(NotebookError, match=r"class\.json, night 2, page"):
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
