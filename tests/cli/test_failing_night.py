"""A night on which the program fails, from the terminal: told whole, noted, and left behind."""

from pathlib import Path

import pytest

from onewhole.desk.marking import mark
from onewhole.desk.tomorrow import night
from tests.kit.terminal import Terminal


@pytest.mark.parametrize("verb", ["mark", "plan", "night"])
def test_it_is_noted_and_the_next_night_says_so(
    onewhole: Terminal, sheet: Path, answers: Path, monkeypatch: pytest.MonkeyPatch, verb: str
) -> None:
    """The fault ends with 3; the next night is marked, and standard error tells of the one before."""
    folder = sheet.parent
    book, to = folder / "class.json", folder / "out"
    typed: dict[str, tuple[object, ...]] = {
        "mark": (sheet, answers),
        "plan": (sheet, answers, "--to", to),
        "night": (folder, "--to", to),
    }

    def fails(*_args: object, **_options: object) -> None:
        raise ZeroDivisionError

    for place in (mark, night):
        monkeypatch.setattr(place, "mark_sheet", fails)
    failed = onewhole(verb, *typed[verb], "--notebook", book, "--date", "2026-11-10")
    assert (failed.code, failed.out, to.exists()) == (3, "", False)
    monkeypatch.undo()
    after = onewhole(verb, *typed[verb], "--notebook", book, "--date", "2026-11-11")
    assert (after.code, after.out) == (0, onewhole(verb, *typed[verb]).out)
    assert "The answers of 10 November (“Kite tails”) could not be worked through" in after.err


def test_the_page_that_once_failed_is_marked(onewhole: Terminal, tmp_path: Path) -> None:
    """Two innocent answers on which an earlier release ended with a traceback."""
    page, wrote, book = tmp_path / "page.txt", tmp_path / "wrote.csv", tmp_path / "class.json"
    page.write_text("1. 4 1/2 - 2 1/2\n2. 9 1/6 - 4 4/6\n")
    wrote.write_text("pupil,1,2\nK01,2/2,4 5/6\nK02,2,4 3/6\n")
    for day in ("2026-11-10", "2026-11-11"):
        shown = onewhole("mark", page, wrote, "--notebook", book, "--date", day)
        assert (shown.code, shown.err) == (0, "")
