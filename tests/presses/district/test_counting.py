"""Counts of papers add up: a file is read once, a changed one anew, and others than papers are refused."""

from datetime import date
from pathlib import Path

import polars as pl
import pytest

from onewhole.errors import InputError
from onewhole.presses.district.counting import count, paper_files, to_count
from tests.kit.district_papers import A01, PAGE, RIGHT, put_papers, small_district


def counted(folder: Path, counts: Path) -> tuple[int, list[tuple[object, ...]]]:
    """How many files were read, and the sums of all counts."""
    counts.mkdir(exist_ok=True)
    kept, asked = to_count(paper_files([folder]), counts)
    made = [*kept, *map(count, asked)]
    rows = pl.read_parquet(made).group_by("school", "week", "answers").agg(pl.col("papers").sum())
    return sum(len(one.files) for one in asked), sorted(rows.rows())


def test_a_new_night_is_added_and_nothing_is_read_again(tmp_path: Path) -> None:
    """What was counted before and after is what is counted at once."""
    papers = small_district(tmp_path / "papers")
    assert counted(papers, tmp_path / "counts")[0] == 3
    assert counted(papers, tmp_path / "counts")[0] == 0
    put_papers(papers, "Elm", date(2026, 9, 2), PAGE, {RIGHT: 5, A01: 7})
    read, after = counted(papers, tmp_path / "counts")
    assert read == 1
    assert after == counted(papers, tmp_path / "fresh")[1]
    assert ("Elm", date(2026, 8, 31), A01, 67) in after


def test_a_file_that_changed_or_went_is_counted_anew(tmp_path: Path) -> None:
    """A child that was erased at the school is not counted any more."""
    papers = small_district(tmp_path / "papers")
    counted(papers, tmp_path / "counts")
    path = put_papers(papers, "Oak", date(2026, 9, 3), PAGE, {RIGHT: 2})
    counted(papers, tmp_path / "counts")
    path.unlink()
    assert counted(papers, tmp_path / "counts")[1] == counted(papers, tmp_path / "fresh")[1]
    put_papers(papers, "Oak", date(2026, 9, 1), PAGE, {RIGHT: 334})
    assert counted(papers, tmp_path / "counts")[1] == counted(papers, tmp_path / "again")[1]


def test_what_is_no_file_of_papers_is_named(tmp_path: Path) -> None:
    """Another table, bytes that are none, an empty cell; a folder that is not there or has nothing."""
    with pytest.raises(InputError, match="not there"):
        paper_files([tmp_path / "none"])
    with pytest.raises(InputError, match="no papers here"):
        paper_files([tmp_path])
    for at, (table, why) in enumerate(
        [(pl.DataFrame({"pupil": ["x"]}), "“class” is missing"), (None, "cannot be read")]
    ):
        place = tmp_path / f"{at}" / "elm"
        place.mkdir(parents=True)
        if table is None:
            (place / "x.parquet").write_bytes(b"kites")
        else:
            table.write_parquet(place / "x.parquet")
        with pytest.raises(InputError, match=why):
            counted(tmp_path / f"{at}", tmp_path / f"counts{at}")
    hole = put_papers(tmp_path / "hole", "Elm", date(2026, 9, 1), PAGE, {RIGHT: 2})
    pl.read_parquet(hole).with_columns(answers=pl.lit(None, dtype=pl.String)).write_parquet(hole)
    with pytest.raises(InputError, match="a cell in them is empty"):
        counted(tmp_path / "hole", tmp_path / "counts9")
    assert not list((tmp_path / "counts9").iterdir())
    pl.read_parquet(hole).with_columns(answers=pl.lit("4 7/8\n1")).write_parquet(hole)
    with pytest.raises(InputError, match="more answers than problems, or fewer"):
        counted(tmp_path / "hole", tmp_path / "counts9")
