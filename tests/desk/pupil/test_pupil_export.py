"""All that is held on a child, as a family or another school may read it."""

import csv
import json
from io import StringIO
from pathlib import Path

import pytest

from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.pupil.csv_cells import csv_text, guarded
from onewhole.desk.pupil.given_out import note_given_out
from onewhole.desk.pupil.held_findings import HOW_KNOWN
from onewhole.desk.pupil.pupil_export import export_csv, export_json, put_export
from onewhole.findings.attendance import PaperWord
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.store.classes import name_pupil
from onewhole.store.correction_rows import (
    CellReadAs,
)
from onewhole.store.corrections import Correction, keep_correction
from onewhole.store.night_words import keep_night_words
from onewhole.store.opening import open_store
from onewhole.store.pupil_days import PupilDays, keep_pupil_days
from onewhole.store.refusals import NotThere
from tests.kit.club import NOW as CLUB
from tests.kit.club import small_club
from tests.kit.kept import DAY, NOW, first_round, write

FORMULAS = ('=HYPERLINK("x")', "+1", "-1", "@now", "\t=1", "\r=1", "\n=1", "＝1", "＋1", "－1", "＠1")


@pytest.mark.parametrize("cell", FORMULAS, ids=ascii)
def test_a_formula_becomes_text(cell: str) -> None:
    """An apostrophe stands before it; read back as CSV the rest is what it was, whatever stands in it."""
    assert guarded(cell) == f"'{cell}"
    ((read,),) = csv.reader(StringIO(csv_text([(cell,)]), newline=""))
    assert read == f"'{cell}"


@pytest.mark.parametrize(
    "cell", ["2 4/8", "", "5-2", "a=b", " =1", '","=1+1', "a\0b", "\u202e5", "<b>"], ids=ascii
)
def test_other_text_stays_as_it_is(cell: str) -> None:
    """Quotes around every cell keep a comma or quote inside from beginning a new one."""
    made = csv_text([(cell, "next")])
    assert list(csv.reader(StringIO(made, newline=""))) == [[cell, "next"]]
    assert made.startswith('"')


def test_both_forms_hold_every_writing_and_nothing_of_another_child(tmp_path: Path) -> None:
    """The JSON exactly, the CSV with its formulas guarded; the files are their owner's alone."""
    book = open_store(tmp_path / "a.class")
    kept = first_round(book)
    name_pupil(book, 1, "K01", "=Wren")
    for text in ("2 4/8", "=1+1"):
        write(book, kept.night, text)
    write(book, kept.night, "not hers", code="K02")
    keep_correction(book, Correction(kept.night, "K01", CellReadAs("1", None, "2"), NOW, "teacher"))
    keep_pupil_days(book, 1, "K01", PupilDays(DAY))
    keep_night_words(book, kept.night, [("K01", PaperWord.ABSENT), ("K02", PaperWord.LATE)], NOW, "teacher")
    held = json.loads(export_json(book, 1, "K01"))
    assert (held["joined"], held["left"]) == (DAY.isoformat(), "")
    assert [row["said"] for row in held["night_words"]] == ["absent"]
    assert (held["name"], [row["text"] for row in held["answers"]]) == ("=Wren", ["2 4/8", "=1+1"])
    rows = list(csv.DictReader(StringIO(export_csv(book, 1, "K01"), newline="")))
    assert [(row["what"], row["text"]) for row in rows] == [
        ("class", "Room 12"),
        ("code", "K01"),
        ("name", "'=Wren"),
        ("joined", DAY.isoformat()),
        ("answers", "2 4/8"),
        ("answers", "'=1+1"),
        ("corrections: reading", '[null,"2"]'),
        ("paper", "absent"),
    ]
    assert {row["day"] for row in rows[4:]} == {"2026-09-01"}
    paths = put_export(book, 1, "K01", tmp_path / "out")
    assert [path.name for path in paths] == ["held-on-k01.json", "held-on-k01.csv"]
    assert {path.stat().st_mode & 0o777 for path in paths} == {0o600}
    assert b"not hers" not in b"".join(path.read_bytes() for path in paths)
    with pytest.raises(NotThere):
        put_export(book, 1, "K09", tmp_path / "none")
    assert not (tmp_path / "none").exists()
    book.close()


def test_both_forms_hold_findings_with_the_caution_and_what_was_given_out(tmp_path: Path) -> None:
    """How a finding is known stands beside it; no other child's finding is in it."""
    book = open_store(tmp_path / "a.class")
    small_club(book, 1)
    mark_missing(book, 1, lambda _done, _of: None)
    note_given_out(book, 1, "K03", what="=the page", to="her family", why="a talk", day=DAY, now=CLUB)
    held = json.loads(export_json(book, 1, "K03"))
    assert held["findings"]["caution"] == CAUTION
    assert held["findings"]["how_known"] == HOW_KNOWN
    (night,) = held["findings"]["nights"]
    assert night["says"].startswith("Answers to 1 and 2")
    assert night["carried"].startswith("What the next night is weighed with: A01 9")
    assert [(one["what"], one["to"], one["why"]) for one in held["given_out"]] == [
        ("=the page", "her family", "a talk")
    ]
    rows = [
        (row["what"], row["text"]) for row in csv.DictReader(StringIO(export_csv(book, 1, "K03"), newline=""))
    ][6:]
    assert rows == [
        ("findings: a caution", CAUTION),
        ("findings: how they are known", HOW_KNOWN),
        ("finding", night["says"]),
        ("finding: each answer", night["answers"]),
        ("finding: sat with", night["group"]),
        ("finding: carried on", night["carried"]),
        ("given out", "'=the page, to her family (a talk)"),
    ]
    book.close()
