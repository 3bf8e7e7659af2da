"""A district put together: what is told, what is not, what is written back, and the same bytes each time."""

import re
from datetime import date
from pathlib import Path

import polars as pl
import pytest

from onewhole.desk.district.running import DistrictWishes, run_district
from onewhole.errors import InputError
from onewhole.marking.district.district_prior import read_prior
from tests.kit.district_papers import A01, ODD, PAGE, RIGHT, put_papers, small_district


def held(folder: Path) -> dict[str, bytes]:
    """All that a run left, but for the counts, whose parts depend on what was there before."""
    return {
        f"{path.relative_to(folder)}": path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file() and "counts" not in path.relative_to(folder).parts
    }


def test_a_district_whole(tmp_path: Path) -> None:
    """The idea of 60 papers is told, the four of the other school are not, and can't be worked out."""
    papers = small_district(tmp_path / "papers")
    done = run_district([papers], tmp_path / "found")
    found = done.found
    assert (done.files, done.read, found.papers, found.schools, found.pages) == (3, 3, 937, 2, 2)
    at = found.places.rows.index("A01")
    assert found.places.columns == ("Elm", "Oak")
    assert found.places.cells[at][1] is None
    assert 4 not in [cell for line in found.places.cells for cell in line]
    told = {one.problem: one for one in found.problems}
    assert told["9 5/8 - 4 6/8"].wrong[0][:2] == ("4 6/8", 70)
    assert told["9 5/8 - 4 6/8"].wrong[1][:2] == ("5 1/8", 60)
    back = pl.read_parquet(tmp_path / "found" / "pupils" / "papers" / "elm" / "*-503.parquet")
    assert back.columns[:4] == ["pupil", "class", "school", "night"]
    ideas = dict(back.filter(pl.col("odds") > 900_000)["idea"].value_counts().rows())
    assert ideas["A01"] == 60
    assert back["skill: regrouping"].is_between(0, 1).all()
    prior = read_prior((tmp_path / "found" / "prior.json").read_text()).shares
    have, of = prior["A01"]
    assert 60 < have < 90
    assert of == 937
    for name in ("report.html", "report.pdf", "prior.json"):
        assert not re.search(rb"Elm0|Oak0|Room 12", (tmp_path / "found" / name).read_bytes())
    assert sorted(path.name for path in (tmp_path / "found").iterdir()) == [
        "counts",
        "prior.json",
        "pupils",
        "report.html",
        "report.pdf",
    ]


def test_nights_that_are_added_give_the_same_bytes(tmp_path: Path) -> None:
    """Counted in two runs or in one: every file is the same."""
    papers = small_district(tmp_path / "papers")
    run_district([papers], tmp_path / "found")
    put_papers(papers, "Elm", date(2026, 9, 3), PAGE, {RIGHT: 25, A01: 5, ODD: 1})
    again = run_district([papers], tmp_path / "found")
    assert (again.files, again.read) == (4, 1)
    run_district([papers], tmp_path / "fresh")
    assert held(tmp_path / "found") == held(tmp_path / "fresh")


def test_what_cannot_be_is_refused(tmp_path: Path) -> None:
    """A setting that hides nothing, and folders without papers."""
    with pytest.raises(InputError, match="cannot be left out"):
        run_district([tmp_path], tmp_path / "found", DistrictWishes(least=0))
    with pytest.raises(InputError, match="no papers"):
        run_district([tmp_path], tmp_path / "found")
    assert not (tmp_path / "found").exists()
