"""The part-whole bar of three problems as SVG, compared with kept files that people look at."""

from pathlib import Path

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.notations.svg import svg
from onewhole.pictures.choosing import picture
from onewhole.pictures.picture import PictureKind
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work

KEPT = Path(__file__).parent / "pictures"


@pytest.mark.parametrize(
    ("name", "problem"),
    [
        ("bar-part-taken", "9 - ? = 3 1/2"),
        ("bar-whole", "? - 2 3/4 = 1 1/2"),
        ("bar-part-added", "3 + ? = 5 1/4"),
    ],
)
def test_the_bar_is_as_kept(name: str, problem: str, accept: bool) -> None:
    """The scene that stands on paper; ONEWHOLE_ACCEPT=1 writes the file anew."""
    drawn = picture(work(read_statement(problem), REGROUP_FIRST))
    assert drawn is not None
    assert drawn.kind is PictureKind.BAR
    found = svg(drawn.telling, ClassWords(), grid=False) + "\n"
    kept = KEPT / f"{name}.svg"
    if accept:
        kept.write_text(found, encoding="utf-8")
    assert kept.read_text(encoding="utf-8") == found
