"""Papers of a sheet in a file: a table of answers, a contact sheet, and what is told."""

import csv
from io import StringIO
from pathlib import Path

import pytest

from onewhole.desk.paper.file_papers import (
    FilePapers,
    answers_table,
    papers_object,
    papers_told,
    put_papers,
    read_files,
    written,
)
from onewhole.desk.paper.why_told import UNSEEN_HANDS
from onewhole.errors import InputError
from onewhole.findings.in_papers import PaperMissing, StrangeCell
from onewhole.findings.in_pictures import NoPage
from onewhole.marking.paper.ink_reading import InkReading
from onewhole.marking.paper.sureness import Sureness
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.marking.reading.answers_table import read_answers
from onewhole.sheets.reading import read_sheet
from tests.kit.answers import all_right, by_pattern, page
from tests.kit.seen_papers import TYPED, Sees, row, seen, sure, unsure

SHEET = read_sheet(TYPED)
RIGHT, WRONG = all_right(page()), by_pattern("A01", page())
PICTURES = [("a.jpg", b"")]
CODES = ("K01", "K02", "K03")


def _read(rows: dict[str, dict[str, InkReading]], **wishes: Sureness) -> FilePapers:
    papers = seen(rows, NoPage("desk.jpg"))
    return read_files(SHEET, PICTURES, Sees(papers), codes=CODES, awaited=CODES, **wishes)


def test_the_table_is_what_mark_takes() -> None:
    """What is sure stands in it, in the order of codes and problems; what waits or is empty does not."""
    rows = {
        "K02": row(RIGHT),
        "K01": {**row(RIGHT), "1": unsure("3 3/6", "3 5/6"), "2": sure(""), "3": sure("-2 2/3")},
    }
    papers = _read(rows)
    answers = read_answers(answers_table(papers), SHEET.problems)
    assert [one.pupil for one in answers.pupils] == ["K01", "K02"]
    assert [one.text for one in answers.pupils[0].written[:4]] == ["", "", "'-2 2/3", RIGHT[3]]
    assert [str(one.read) for one in answers.pupils[0].written[2:3]] != ["Unreadable"]
    assert [one.text for one in answers.pupils[1].written] == RIGHT
    assert papers.of(PaperVerdict.UNSURE) == (("K01", "1"),)
    assert papers.of(PaperVerdict.EMPTY) == (("K01", "2"),)


def test_what_else_there_is_to_know_is_told() -> None:
    """Who is missing, what is of nobody, what the press found; the caution is always there."""
    papers = _read({"K01": {"1": sure("3 3/6"), "99": sure("1")}, "K77": {"1": sure("1")}})
    assert papers.found == (
        NoPage("desk.jpg"),
        StrangeCell("K01", "99"),
        StrangeCell("K77", "1"),
        PaperMissing("K02"),
        PaperMissing("K03"),
    )
    told = list(papers_told(papers))
    assert told[0] == "Read 1 paper, 1 answer, 0 empty cells. To be looked at: 0."
    assert UNSEEN_HANDS in told[1]
    assert any(line.startswith("The paper of K02 is in none of these pictures.") for line in told)
    nothing = read_files(SHEET, PICTURES, Sees(seen({}, NoPage("desk.jpg"))), codes=CODES)
    assert next(papers_told(nothing)) == "No paper could be read, and nothing was written."
    with pytest.raises(InputError, match="no picture"):
        read_files(SHEET, [], Sees(seen({})), codes=CODES)


def test_an_answer_that_alone_decides_a_group_is_shown_here_too() -> None:
    """And two pictures of one cell that do not agree; the largest doubt comes first."""
    fits = [str(at) for at in range(1, 13) if WRONG[at - 1] != RIGHT[at - 1]][:2]
    texts = {**row(RIGHT), **{label: sure(WRONG[int(label) - 1]) for label in fits}}
    papers = _read({"K01": texts, "K02": {"1": InkReading((("9 9/7", 600_000),), 0, 0)}})
    whys = {key: papers.cells[key].why for key in papers.of(PaperVerdict.UNSURE)}
    assert whys == {
        ("K02", "1"): PaperWhy.DOUBTFUL,
        ("K01", fits[0]): PaperWhy.DECIDES,
        ("K01", fits[1]): PaperWhy.DECIDES,
    }
    assert next(iter(whys)) == ("K02", "1")
    both = (*seen({"K01": {"1": sure("3 3/6")}}).cells, *seen({"K01": {"1": sure("3 5/6")}}).cells)
    twice = read_files(SHEET, PICTURES, Sees(type(seen({}))(both)), codes=CODES)
    assert twice.cells["K01", "1"].why is PaperWhy.TWICE


def test_files_are_written_and_never_replaced(tmp_path: Path) -> None:
    """For their owner alone; one that is there may hold what a teacher typed."""
    papers = _read({"K01": {**row(RIGHT), "1": unsure("3 3/6", "3 5/6")}})
    answers, picture = tmp_path / "answers.csv", tmp_path / "cells.png"
    put_papers(papers, answers, picture)
    assert answers.stat().st_mode & 0o777 == picture.stat().st_mode & 0o777 == 0o600
    told = written(papers, answers, picture)
    assert f"A picture of the cells, 1 to look at and 10 that were read for sure: {picture}" in told
    assert list(csv.reader(StringIO(answers.read_text("utf-8-sig"))))[1][:3] == ["K01", "", RIGHT[1]]
    before = answers.read_bytes()
    with pytest.raises(InputError, match="somebody may have typed"):
        put_papers(papers, answers, tmp_path / "other.png")
    with pytest.raises(InputError, match="somebody may have typed"):
        put_papers(papers, tmp_path / "other.csv", picture)
    assert answers.read_bytes() == before
    assert not (tmp_path / "other.png").exists()


def test_other_programs_get_every_cell() -> None:
    """With verdict, choices, doubt and reason, and the spot check; the strictest setting reads none."""
    papers = _read({"K01": row(RIGHT)}, sureness=Sureness.EVERY)
    found = papers_object(papers)
    assert found["sureness"] == "every"
    assert found["spot_check"] == []
    cells = found["cells"]
    assert isinstance(cells, list)
    assert {one["verdict"] for one in cells} == {"unsure"}
    assert len(papers_object(_read({"K01": row(RIGHT)}))["spot_check"]) == 10  # type: ignore[arg-type]
