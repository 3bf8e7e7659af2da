"""A release has one number and a section of its own; a wrong one changes nothing."""

import shutil
import subprocess
import tomllib
from pathlib import Path

import pytest

from onewhole import __version__
from tests.house.plan import ROOT
from tools.release import ReleaseError, main, number, released


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    """What a release touches, copied, with two changes to tell of."""
    (tmp_path / "src" / "onewhole").mkdir(parents=True)
    for name in ("pyproject.toml", "CHANGELOG.md", "src/onewhole/__init__.py"):
        shutil.copy(ROOT / name, tmp_path / name)
    (tmp_path / "changelog.d").mkdir()
    (tmp_path / "changelog.d" / "+kites.added.md").write_text("Kites fly higher.\n")
    (tmp_path / "changelog.d" / "+tails.fixed.md").write_text("Tails are counted once.\n")
    subprocess.run(["git", "init", "--quiet"], cwd=tmp_path, check=True)  # noqa: S607 - towncrier asks git
    return tmp_path


def test_the_number_stands_once() -> None:
    """In the code; the package takes it from there."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    assert "version" not in project["project"]
    assert project["tool"]["setuptools"]["dynamic"]["version"] == {"attr": "onewhole.__version__"}
    assert number() == __version__


def test_what_was_to_be_told_becomes_a_section(copy: Path) -> None:
    """Under the new number, and the pieces are gone."""
    released("99.0.0", copy)
    assert number(copy) == "99.0.0"
    text = (copy / "CHANGELOG.md").read_text()
    assert "## 99.0.0 (" in text
    assert text.index("Kites fly higher.") < text.index("Tails are counted once.")
    assert not list((copy / "changelog.d").glob("*.md"))


@pytest.mark.parametrize("wanted", ["0.0.1", "next", __version__])
def test_a_number_that_does_not_come_after_is_refused(wanted: str, copy: Path) -> None:
    """And nothing is changed."""
    before = {path: path.read_bytes() for path in copy.rglob("*.md")}
    with pytest.raises(ReleaseError):
        released(wanted, copy)
    assert {path: path.read_bytes() for path in copy.rglob("*.md")} == before
    assert number(copy) == __version__


def test_without_a_change_there_is_no_release(copy: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """It is said; and so is a number that was not given."""
    for path in (copy / "changelog.d").iterdir():
        path.unlink()
    with pytest.raises(ReleaseError, match="nothing to release"):
        released("99.0.0", copy)
    assert main([]) == 2
    assert "make release VERSION=" in capsys.readouterr().err
