"""The notebook of a class: read before a night, written after it."""

import json
from datetime import date
from pathlib import Path

import pytest

from onewhole.desk.classes.notebooks import and_tonight, failures_told, keep, opened, tonight_in
from onewhole.desk.marking.mark import as_object, mark
from onewhole.errors import InputError
from onewhole.marking.diagnosis.notebook import Notebook, Tonight
from onewhole.marking.diagnosis.notebook_text import NotebookError

SHEET = "title: Kites\n\n1. 5 1/8 - 2 5/8\n2. 7 1/4 - 3 3/4\n"
TELLING = "title: Tails\n\n1. 9 5/8 - 4 6/8\n2. 7 1/6 - 3 5/6\n3. 6 1/4 - 3 2/4\n"
OPEN = "pupil,1,2\nK01,3 4/8,4 2/4\n"
FIRST, LATER = date(2026, 11, 10), date(2026, 11, 12)


def _clear(key: dict[str, str]) -> str:
    rows = [f"K0{at},{','.join(key.values())}" for at in range(2, 6)]
    return "\n".join(["pupil,1,2,3", *rows])


A02 = {"1": "5 7/8", "2": "4 2/6", "3": "3 3/4"}


def test_what_a_class_has_shown_counts_on_the_next_night(tmp_path: Path) -> None:
    """Four with A02 on Tuesday make A02 likelier than A01 for a pupil whose answers fit both on Thursday."""
    path = tmp_path / "class.json"
    keep(mark(TELLING, _clear(A02), tonight=tonight_in(path, FIRST)), path)
    alone = mark(SHEET, OPEN)
    known = mark(SHEET, OPEN, tonight=tonight_in(path, LATER))
    even, tilted = (night.findings[0].diagnosis.odds for night in (alone, known))
    assert even[0].probability == even[1].probability
    assert tilted[0].patterns == ("A02",)
    assert tilted[0].probability > 5 * tilted[1].probability


def test_a_night_read_twice_counts_once(tmp_path: Path) -> None:
    """The same sheet on the same day is read again from what was before it."""
    path = tmp_path / "class.json"
    keep(mark(TELLING, _clear(A02), tonight=tonight_in(path, FIRST)), path)
    once = path.read_text()
    keep(mark(TELLING, _clear(A02), tonight=tonight_in(path, FIRST)), path)
    assert path.read_text() == once


def test_pupils_keep_their_group_and_its_name(tmp_path: Path) -> None:
    """From one night to the next, where nothing speaks for a change."""
    path = tmp_path / "class.json"
    first = mark(TELLING, _clear(A02), tonight=tonight_in(path, FIRST))
    keep(first, path)
    changed = path.read_text().replace(first.groups[0].name, "Kestrels")
    path.write_text(changed)
    again = mark(TELLING, _clear(A02), tonight=tonight_in(path, LATER))
    assert [group.name for group in again.groups] == ["Kestrels"]


def test_a_dated_night_says_until_when_it_is_good() -> None:
    """In JSON beside each finding."""
    night = mark(SHEET, OPEN, tonight=Tonight(Notebook(), FIRST))
    pupils = as_object(night)["pupils"]
    assert isinstance(pupils, list)
    assert pupils[0]["finding"]["good_until"] == "2026-11-24"


def test_a_notebook_that_cannot_be_read_is_refused_and_stays(tmp_path: Path) -> None:
    """With its place; the file is not changed."""
    path = tmp_path / "class.json"
    path.write_text('{"nights": [5]}')
    with pytest.raises(NotebookError, match="night 1"):
        tonight_in(path, FIRST)
    assert json.loads(path.read_text()) == {"nights": [5]}


def test_a_night_without_a_notebook_has_nothing_to_keep() -> None:
    """It was read without one."""
    with pytest.raises(ValueError, match="without a notebook"):
        and_tonight(mark(SHEET, OPEN))


def test_a_fault_is_noted_and_the_next_night_is_read_without_it(tmp_path: Path) -> None:
    """The notebook says so for as long as findings of that night would be good; the same page replaces it."""
    path, sheet, answers = _files(tmp_path)
    keep(mark(TELLING, _clear(A02), tonight=tonight_in(path, FIRST)), path)
    tonight = tonight_in(path, LATER)
    with pytest.raises(ZeroDivisionError), opened(path, LATER, sheet, answers):
        raise ZeroDivisionError("K01 wrote 3 4/8")
    assert "3 4/8" not in path.read_text()
    after = tonight_in(path, date(2026, 11, 13))
    [told] = failures_told(after)
    assert told.startswith("The answers of 12 November (“Kites”) could not be worked through")
    known = mark(SHEET, OPEN, tonight=after)
    assert known.findings[0].diagnosis.odds[0].patterns == ("A02",)
    assert failures_told(tonight_in(path, date(2026, 11, 27))) == ()
    keep(mark(SHEET, OPEN, tonight=tonight), path)
    assert failures_told(tonight_in(path, date(2026, 11, 13))) == ()


def test_a_refusal_is_no_fault(tmp_path: Path) -> None:
    """What was typed is to be mended: nothing is noted."""
    path, sheet, answers = _files(tmp_path)
    with pytest.raises(InputError), opened(path, FIRST, sheet, answers) as tonight:
        mark(SHEET, "pupil,9\nK01,1", tonight=tonight)
    assert not path.exists()


def test_without_answers_nothing_failed_on_them(tmp_path: Path) -> None:
    """A page may be printed beforehand; a fault in that is no fault of the night's answers."""
    path, sheet, answers = _files(tmp_path)
    answers.unlink()
    with pytest.raises(ZeroDivisionError), opened(path, FIRST, sheet, answers):
        raise ZeroDivisionError
    assert not path.exists()


def _files(folder: Path) -> tuple[Path, Path, Path]:
    """Return a notebook that is not there yet, a sheet and its answers."""
    path, sheet, answers = (folder / name for name in ("class.json", "sheet.txt", "answers.csv"))
    sheet.write_text(SHEET)
    answers.write_text(OPEN)
    return path, sheet, answers
