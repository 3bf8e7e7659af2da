"""One night of a folder, whole or not at all."""

import json
import os
import stat
from datetime import UTC, datetime
from pathlib import Path

import pytest

from onewhole.desk.marking.mark import mark_files
from onewhole.desk.page import print_pages
from onewhole.desk.page.recheck import print_recheck
from onewhole.desk.page.sheets import sheet_in
from onewhole.desk.tomorrow.night import night
from onewhole.desk.tomorrow.plan import plan
from onewhole.errors import OnewholeError
from onewhole.presses.pdf import PressError, press
from onewhole.sheets.reading import read_sheet

WHEN = datetime(2025, 3, 6, 20, 0, tzinfo=UTC)
SHEET = "title: Kite tails\n\n1. 6 7/8 - 3 2/8\n2. 9 5/8 - 4 6/8\n"
ANSWERS = "pupil,1,2\nK01,3 5/8,5 1/8\n"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A night's folder, the answers back."""
    folder = tmp_path / "night"
    folder.mkdir()
    (folder / "sheet.txt").write_text(SHEET)
    (folder / "answers.csv").write_text(ANSWERS)
    return folder


def test_everything_is_made(folder: Path, tmp_path: Path) -> None:
    """Pages, audit, marks, the morning and practice: what is told is there, and nothing else is."""
    done = night(folder, tmp_path / "out", when=WHEN)
    assert [made.page for made in done.made] == [
        "pupil",
        "key",
        "workings",
        "family",
        "audit",
        "marks",
        "morning",
        "talks",
        "practice-swifts",
        "practice-key",
    ]
    listed = tmp_path / "out" / "manifest.json"
    assert {*(made.path for made in done.made), listed} == set((tmp_path / "out").iterdir())
    assert json.loads((tmp_path / "out" / "marks.json").read_text())["pupils"][0]["pupil"] == "K01"
    assert (tmp_path / "out" / "audit.txt").read_text().startswith("Kite tails\n2 problems")
    assert done.findings


def test_the_same_night_gives_the_same_bytes(folder: Path, tmp_path: Path) -> None:
    """Time comes in by the door; nothing else differs between two runs."""
    (folder / "answers.csv").unlink()
    for out in ("one", "two"):
        night(folder, tmp_path / out, when=WHEN)
    pages = sorted(path.name for path in (tmp_path / "one").iterdir())
    assert pages == ["audit.txt", "family.pdf", "key.pdf", "manifest.json", "pupil.pdf", "workings.pdf"]
    assert all(
        (tmp_path / "one" / page).read_bytes() == (tmp_path / "two" / page).read_bytes() for page in pages
    )


def test_a_page_that_cannot_be_pressed_leaves_nothing(
    folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Even when it is the last one: what was there before is still there, as it was."""
    kept = tmp_path / "out" / "pupil.pdf"
    kept.parent.mkdir()
    kept.write_bytes(b"yesterday's page")

    def fails_late(source: str, **rest: object) -> bytes:
        if "morning" in source:
            raise PressError("The page cannot be printed", remedy="Take the sign out.")
        return press(source, **rest)  # type: ignore[arg-type]

    monkeypatch.setattr(print_pages, "press", fails_late)
    with pytest.raises(OnewholeError, match="cannot be printed"):
        night(folder, tmp_path / "out", when=WHEN)
    assert [path.read_bytes() for path in kept.parent.iterdir()] == [b"yesterday's page"]
    assert sorted(path.name for path in tmp_path.iterdir()) == ["night", "out"]


@pytest.mark.more("desk/tomorrow/test_plan.py")
def test_another_night_takes_the_place_of_the_last(folder: Path, tmp_path: Path) -> None:
    """Nothing of last night's is left among tonight's; the teacher's own file and folder stay."""
    out = tmp_path / "out"
    night(folder, out, when=WHEN)
    (out / "letter.txt").write_text("mine")
    (out / "kites").mkdir()
    (out / "kites" / "red.txt").write_text("mine too")
    (folder / "sheet.txt").write_text("title: Kites\n\n1. 5 2/8 - 3 7/8\n")
    (folder / "answers.csv").unlink()
    done = night(folder, out, when=WHEN)
    mine = {out / "letter.txt", out / "kites", out / "manifest.json"}
    assert set(out.iterdir()) == {*(made.path for made in done.made), *mine}
    assert (out / "kites" / "red.txt").read_text() == "mine too"
    listed = json.loads((out / "manifest.json").read_text())
    assert (listed["title"], {file["name"] for file in listed["files"]}) == (
        "Kites",
        {made.path.name for made in done.made},
    )


def test_the_answers_come_back_to_a_folder_of_the_same_night(folder: Path, tmp_path: Path) -> None:
    """What another verb made of the same sheet stays; practice of other answers does not."""
    out = tmp_path / "out"
    sheet, answers = folder / "sheet.txt", folder / "answers.csv"
    print_recheck(sheet, out, when=WHEN, count=2)
    night(folder, out, when=WHEN)
    assert {"again.pdf", "again-key.pdf", "marks.json"} <= {path.name for path in out.iterdir()}
    print_pages.print_pages(sheet_in(sheet, paper="a4"), out, when=WHEN)
    assert {"again.pdf", "marks.json", "practice-swifts.pdf"} <= {path.name for path in out.iterdir()}
    answers.write_text("pupil,1,2\nK01,3 5/8,4 7/8\n")
    plan(mark_files(sheet, answers), out, when=WHEN)
    names = {path.name for path in out.iterdir()}
    assert "marks.json" not in names, "they are those of other answers"
    assert {"again.pdf", "pupil.pdf", "morning.pdf"} <= names
    print_pages.print_pages(read_sheet("1. 5 - 2"), out, when=WHEN)
    assert {path.stem for path in out.iterdir()} == {"pupil", "key", "workings", "family", "manifest"}


@pytest.mark.parametrize("umask", [0o000, 0o022, 0o077])
def test_what_pupils_wrote_is_for_the_teacher_alone(folder: Path, tmp_path: Path, umask: int) -> None:
    """Whatever is usual: the folder has mode 0700, every file 0600, also those that were there before."""
    usual = os.umask(umask)
    try:
        print_pages.print_pages(sheet_in(folder / "sheet.txt"), tmp_path / "out", when=WHEN)
        for_class = stat.S_IMODE((tmp_path / "out" / "pupil.pdf").stat().st_mode)
        plan(mark_files(folder / "sheet.txt", folder / "answers.csv"), tmp_path / "out", when=WHEN)
    finally:
        os.umask(usual)
    assert for_class == 0o666 & ~umask
    assert stat.S_IMODE((tmp_path / "out").stat().st_mode) == 0o700
    assert {stat.S_IMODE(path.stat().st_mode) for path in (tmp_path / "out").iterdir()} == {0o600}
    assert {"pupil.pdf", "morning.pdf"} <= {path.name for path in (tmp_path / "out").iterdir()}
