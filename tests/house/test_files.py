"""One noun a file."""

from pathlib import Path
from statistics import median

import pytest

from tests.house.plan import ROOT, kept_files, kept_links

CEILING = 400
USUAL = 150


def _kept(folder: str, *suffixes: str) -> list[Path]:
    return [path for path in kept_files() if path.suffix in suffixes and path.is_relative_to(ROOT / folder)]


def _lines(path: Path) -> int:
    return len(path.read_text().splitlines())


@pytest.mark.parametrize("folder", ["src", "tests", "bench", "lab", "tools"])
def test_no_file_is_longer_than_the_ceiling(folder: str) -> None:
    """A file over 400 lines wants dividing by noun, in whatever language it is."""
    files = _kept(folder, ".py", ".js", ".css")
    long = {str(path.relative_to(ROOT)): n for path in files if (n := _lines(path)) > CEILING}
    assert not long


def test_a_file_is_usually_short() -> None:
    """The median file of the source, empty ones left out, is at most 150 lines (the plan says about 120)."""
    lengths = [n for path in _kept("src", ".py") if (n := _lines(path))]
    print(f"{len(lengths)} source files, median {median(lengths)} lines, longest {max(lengths)}")
    assert median(lengths) <= USUAL


def test_no_link_is_kept() -> None:
    """A link that git keeps takes the place of a folder of this name that it does not, such as `.venv`."""
    assert kept_links() == []
