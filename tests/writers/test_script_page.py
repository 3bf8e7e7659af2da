"""The script: what to write and what to say, cue by cue."""

import datetime as dt
from typing import Any

from onewhole.desk.walkthrough.lesson import lesson
from onewhole.notations.sentences.text import sentence_text
from onewhole.presses.pdf import press
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.fitting import fitted
from onewhole.walkthroughs.lesson import Pace
from onewhole.writers.moments import clock
from onewhole.writers.script_page import TRY, TURN, script_page
from tests.kit import pdf

SHEET = read_sheet("title: Kite tails\nwhole: strip\nwholes: strips\n1. 3 1/4 - 1 3/4\n2. 5 - 2 1/3\n")
TIMELINE = fitted(lesson(WorkedSheet(SHEET), tried=["2"], turns=["1"]), Pace(), None)[1]


def test_every_cue_is_there_with_its_time() -> None:
    """Each cue of the film, in its order, with what is said and the time at which it begins."""
    data: Any = script_page(SHEET.header, TIMELINE).data
    cues = [cue for chapter in TIMELINE.chapters for cue in chapter.cues]
    told = [cue for chapter in data["chapters"] for cue in chapter["cues"]]
    assert [cue["time"] for cue in told] == [clock(cue.start) for cue in cues]
    assert [tuple(cue["says"]) for cue in told] == [
        tuple(sentence_text(said) for said, _, _ in cue.said) for cue in cues
    ]
    assert sum(TURN in cue["does"] for cue in told) == 1
    assert sum(TRY in cue["does"] for cue in told) == 1


def test_it_prints() -> None:
    """It is a tagged PDF whose formulas are spoken."""
    page = script_page(SHEET.header, TIMELINE, level="The words read below grade 1.")
    made = press(page.source, data=page.content, when=dt.datetime(2025, 3, 6, tzinfo=dt.UTC))
    assert "below grade 1" in " ".join(pdf.words(made))
    assert any(
        "three and one fourths" in said or "three and one fourth" in said for _, said in pdf.tags(made)
    )
