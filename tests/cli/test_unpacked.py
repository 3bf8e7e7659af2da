"""The unpacked program: a double-click opens the class, what is typed is done, a fault is on a page."""

import sys
from pathlib import Path

import pytest

from onewhole.cli import unpacked
from onewhole.cli.screen_browser import other_programs


@pytest.fixture
def opened(monkeypatch: pytest.MonkeyPatch) -> list[Path]:
    """The pages that a browser was told to open."""
    pages: list[Path] = []

    def show(page: Path) -> bool:
        pages.append(page)
        return True

    monkeypatch.setattr(unpacked, "opened_in_browser", show)
    return pages


def test_what_is_typed_is_done_as_the_command_does_it(
    capsys: pytest.CaptureFixture[str], opened: list[Path], tmp_path: Path
) -> None:
    """With its exit code, and no page."""
    assert unpacked.begin(["--version"], {"DISPLAY": ":0"}, tmp_path) == 0
    assert capsys.readouterr().out.startswith("onewhole ")
    assert unpacked.begin(["fly"], {"DISPLAY": ":0"}, tmp_path) == 2
    assert opened == []


def test_a_double_click_serves_and_shows_on_a_page_what_went_wrong(
    monkeypatch: pytest.MonkeyPatch, opened: list[Path], tmp_path: Path
) -> None:
    """The very words of the command, escaped; with no terminal at all (None) too."""
    asked: list[list[str]] = []

    def serve(typed: list[str]) -> int:
        asked.append(typed)
        print("Serving")
        print("No room on <this> disk", file=sys.stderr)
        return 2

    monkeypatch.setattr(unpacked, "main", serve)
    monkeypatch.setattr(sys, "stdout", None)
    monkeypatch.setattr(sys, "stderr", None)
    named = {"DISPLAY": ":0", "XDG_DATA_HOME": str(tmp_path), "LOCALAPPDATA": str(tmp_path)}
    assert unpacked.begin([], named, tmp_path) == 2
    assert asked == [["serve"]]
    (page,) = opened
    assert page.parent == tmp_path / "onewhole"
    assert "No room on &lt;this&gt; disk" in page.read_text(encoding="utf-8")


def test_without_a_screen_or_a_fault_no_page_is_shown(
    monkeypatch: pytest.MonkeyPatch, opened: list[Path], tmp_path: Path
) -> None:
    """What is printed is enough there."""
    monkeypatch.setattr(unpacked, "main", lambda _typed: 0)
    assert unpacked.begin([], {"DISPLAY": ":0"}, tmp_path) == 0
    monkeypatch.setattr(unpacked, "main", lambda _typed: 2)
    assert unpacked.begin([], {}, tmp_path) == 2
    assert opened == []


def test_other_programs_find_their_own_libraries(monkeypatch: pytest.MonkeyPatch) -> None:
    """While they are started; the processes of our own find ours before and after. In a Python nothing is."""
    named = {"LD_LIBRARY_PATH": "/onewhole", "PATH": "/bin"}
    with other_programs(named):
        assert named == {"LD_LIBRARY_PATH": "/onewhole", "PATH": "/bin"}
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    with other_programs(named):
        assert named == {"PATH": "/bin"}
    assert named == {"LD_LIBRARY_PATH": "/onewhole", "PATH": "/bin"}
    named["LD_LIBRARY_PATH_ORIG"] = "/lib/here"
    with other_programs(named):
        assert named["LD_LIBRARY_PATH"] == "/lib/here"
    assert named["LD_LIBRARY_PATH"] == "/onewhole"
