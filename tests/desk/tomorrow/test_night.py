"""One night of a folder, whole or not at all."""

import json
from datetime import UTC, datetime
from pathlib import Path

import pytest

from onewhole.desk.page import print_pages
from onewhole.desk.tomorrow.night import night
from onewhole.errors import OnewholeError
from onewhole.presses.pdf import PressError, press

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
        "practice-swifts",
        "practice-key",
    ]
    assert {made.path for made in done.made} == set((tmp_path / "out").iterdir())
    assert json.loads((tmp_path / "out" / "marks.json").read_text())["pupils"][0]["pupil"] == "K01"
    assert (tmp_path / "out" / "audit.txt").read_text().startswith("Kite tails\n2 problems")
    assert done.findings


def test_the_same_night_gives_the_same_bytes(folder: Path, tmp_path: Path) -> None:
    """Time comes in by the door; nothing else differs between two runs."""
    (folder / "answers.csv").unlink()
    for out in ("one", "two"):
        night(folder, tmp_path / out, when=WHEN)
    pages = sorted(path.name for path in (tmp_path / "one").iterdir())
    assert pages == ["audit.txt", "family.pdf", "key.pdf", "pupil.pdf", "workings.pdf"]
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
