"""A page that is fitted is drawn for that once, also where the terminal tells how it fits."""

import json
from pathlib import Path

import pytest

from onewhole.cli.verbs import print as verb
from onewhole.desk.page import fitting
from onewhole.presses.pdf import press_drawings


@pytest.mark.parametrize("together", [False, True])
def test_a_fitted_page_is_drawn_for_that_once(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, *, together: bool
) -> None:
    """With boxes, and closer where it does not fit so: not both of them again for the words."""
    drawn = list[str]()

    def counted(source: str, *, data: bytes) -> tuple[bytes, ...]:
        drawn.append(source)
        return press_drawings(source, data=data)

    monkeypatch.setattr(fitting, "press_drawings", counted)
    sheet = tmp_path / "sheet.txt"
    sheet.write_text("fit: 1\n\n" + "\n".join(f"{at}. 9 5/8 - 4 6/8" for at in range(1, 13)))
    assert verb.run(sheet, tmp_path / "out", together=together) == 0
    assert len(drawn) == 2
    assert "It fits on 1 page without boxes" in capsys.readouterr().out


def test_problems_that_miss_room_are_named(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """In one line under the files, and by their labels for other programs; a page with room says nothing."""
    sheet = tmp_path / "sheet.txt"
    plot = "plot 1/4: 2, 1/2: 3, 5/8 in: 1; total"
    line = "Problem a needs more room than its page has; onewhole audit says what is left out.\n"
    for problems, cut in ((f"a. {plot}\nb. 7/8 - 3/8", ["a"]), ("a. 7/8 - 3/8", [])):
        sheet.write_text(problems)
        assert verb.run(sheet, tmp_path / "out") == 0
        said = capsys.readouterr().out
        assert said.endswith(line) == bool(cut)
        assert ("onewhole audit" in said) == bool(cut)
        assert verb.run(sheet, tmp_path / "out", as_json=True) == 0
        assert json.loads(capsys.readouterr().out).get("cut", []) == cut
