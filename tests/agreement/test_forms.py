"""Four roads to the form of an answer: key, working, film and marking obey the page's two settings alike."""

from itertools import product
from pathlib import Path
from typing import Any

import pytest

from onewhole.desk.marking.mark import mark as mark_page
from onewhole.desk.marking.verdicts import judged, usual_right
from onewhole.desk.walkthrough.film import FilmWishes, told
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.sheets.faded_example import faded_example
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.expression import value
from onewhole.statements.statement import Comparison, MissingNumber
from onewhole.walkthroughs.cue import Role, Write
from onewhole.working.line import kept
from onewhole.working.working import equal_forms
from onewhole.writers.family_page import family_page
from onewhole.writers.morning_page import morning_page
from tests.kit.marking_book import book_with_night
from tests.kit.sheets import worked_sheet

SIMPLEST = "simplest form: yes\n\n"
SETTINGS = list(product(("yes", "no"), repeat=2))
PROBLEMS = [
    *(f"{top}/8 - {less}/8" for top in (7, 11, 15) for less in (1, 3, 4, 6)),
    *(f"{top}/6 + {more}/6" for top in (1, 3, 5) for more in (1, 3, 5)),
    "7 2/6 - 3 5/6",
    "9 5/8 - 4 7/8",
    "2 4/5 + 1 3/5",
    "1 3/4 + 2 1/4",
    "5 - 1 2/4",
    "1/2 + 1/6",
    "3/4 + 5/12",
    "1/10 + 35/100",
    "3 x 2/8",
    "6 x 2/3",
    "? + 1/8 = 5/8",
    "4 3/6 - ? = 1 1/6",
    "3/4 = ?/12",
    "1 2/4 = ?/4",
    "3/8 ? 1/2",
    "52 - 27",
    "5.2 - 2.7",
    "5 ft 2 in - 2 ft 7 in",
    "12/18 simplest",
    "18/12 simplest",
    "10/4 as a mixed number",
    "2 2/4 as a fraction",
    "6/8 as a decimal",
    "0.75 as a fraction",
    "3 ft = ? in",
    "26 in = ? ft ? in",
]


@pytest.mark.parametrize(("mixed", "simplest"), SETTINGS)
@pytest.mark.parametrize("asked", PROBLEMS)
def test_key_working_film_and_marking_agree(asked: str, mixed: str, simplest: str) -> None:
    """What the key lists and the working reaches is marked right; what they leave out is sent back."""
    sheet = read_sheet(f"mixed form: {mixed}\nsimplest form: {simplest}\n\n1. {asked}")
    worked = WorkedSheet(sheet)
    (entry,) = worked.problems
    expected, wanted = expect(entry.problem), sheet.header.form
    right = [entry.answer, *entry.forms]
    for one in right:
        assert mark(expected, read_written(text(one)), wanted).verdict is Verdict.RIGHT
    if isinstance(entry.answer, Quantity):
        for form in equal_forms(entry.answer):
            verdict = mark(expected, read_written(text(form)), wanted).verdict
            assert verdict is (Verdict.RIGHT if form in entry.forms else Verdict.FORM)
    if entry.working is not None:
        assert entry.working.answer == entry.answer
        last = entry.working.lines[-1].says
        if isinstance(entry.answer, Quantity) and not isinstance(last, MissingNumber | Comparison):
            assert last == entry.answer
            assert kept(last) == value(entry.answer)
    script, _ = told(worked, FilmWishes())
    cues = script.chapters[1].cues
    (final,) = [cue for cue in cues if cue.role is Role.ANSWER]
    if isinstance(entry.answer, Quantity):
        assert text(entry.answer) in text_of(final.says)
    shown = {
        act.content.right
        for cue in cues
        if cue.role is Role.FORMS
        for act in cue.acts
        if isinstance(act, Write) and isinstance(act.content, Comparison)
    }
    assert shown <= set(right)


def test_a_joining_step_leads_to_the_simplest_form() -> None:
    """The working goes on from 4/8 to 1/2 and says why; without the setting it ends at 4/8."""
    simplest, plain = (worked_sheet(f"{form}1. 7/8 - 3/8").problems[0] for form in (SIMPLEST, ""))
    assert simplest.working is not None
    assert plain.working is not None
    assert [text(line.says) for line in simplest.working.lines[-2:]] == ["4/8", "1/2"]
    assert plain.working.lines[-1].says == plain.answer == Quantity(mixed(8), (None, 4))
    assert simplest.forms == ()


def test_the_film_does_not_leave_what_is_sent_back() -> None:
    """Under `simplest form: yes` nobody is told to leave 4/8, and the working says how to go on."""
    script, _ = told(worked_sheet(f"{SIMPLEST}1. 7/8 - 3/8"), FilmWishes())
    said = text_of(sentence for cue in script.chapters[1].cues for sentence in cue.says)
    assert "leave it as 4/8" not in said
    assert "Every 4 eighths make 1 half. That is the simplest form." in said
    assert "So 7/8 - 3/8 = 1/2." in said


def test_every_page_goes_on_to_the_form() -> None:
    """The room on paper, the re-teaching, the example for home and the one to finish do as the key does."""
    typed = f"{SIMPLEST}1. 9 5/8 - 4 7/8\n2. 7 2/8 - 3 4/8"
    plain, worked = worked_sheet(typed.removeprefix(SIMPLEST)), worked_sheet(typed)
    assert [worked.rooms[label].lines - plain.rooms[label].lines for label in "12"] == [2, 2]

    marked = mark_page(typed, "pupil,1,2\nK01,5 2/8,4 2/8")
    night = marked.worked, marked.marks, marked.findings, marked.groups
    again: Any = morning_page(*night, items=marked.items, first=())
    shown = [example["lines"][-1]["alt"] for group in again.data["groups"] for example in group["examples"]]
    assert set(shown) == {"equals four and three fourths", "equals three and three fourths"}

    home: Any = family_page(worked).data
    assert home["example"]["steps"][-1]["words"].endswith("That is the simplest form.")
    taught, wanted = worked.header.strategy, worked.header.form
    one_to_finish = faded_example(worked.problems[0].statement, taught, wanted)
    assert one_to_finish is not None
    assert one_to_finish.endswith(" = 4 6/8 = ____")


def test_a_cell_of_the_grid_is_filled_and_told_in_the_form(tmp_path: Path) -> None:
    """What "all right" fills in is right, and an answer sent back is told the form that is wanted."""
    with book_with_night(tmp_path, typed=f"{SIMPLEST}1. 7/8 - 3/8\n") as (_, _, page):
        assert usual_right(page, "1") == "1/2"
        assert judged(page, "1", "4/8").said.endswith("1/2 is the same amount.")
