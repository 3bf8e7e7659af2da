"""Scores as tables for a grade book: of one night with every problem, or of several nights."""

from collections.abc import Iterator, Sequence
from datetime import date, datetime
from pathlib import Path

from onewhole.desk.classes.class_records import Classroom, NightPage, room
from onewhole.desk.classes.papers import PaperChoice
from onewhole.desk.classes.scores import Score, Scores, night_scores, scores
from onewhole.desk.marking.verdicts import usual_right
from onewhole.desk.pupil.csv_cells import csv_bytes, csv_text
from onewhole.presses.files import write
from onewhole.presses.workbook_writing import TableCell, TableSheet, workbook_bytes
from onewhole.store.answers import answers_of
from onewhole.store.opening import Store

__all__ = [
    "XLSX",
    "night_csv",
    "night_xlsx",
    "paper_called",
    "put_table",
    "range_csv",
    "range_xlsx",
]

Rows = list[Sequence[TableCell]]

#: The media type of a workbook.
XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
#: How a mark stands in a table: 1 is right, 0 is not; what cannot be read is left to the teacher.
_MARKS: dict[str, TableCell] = {"r": 1, "f": 1, "w": 0, ".": None, "?": "?"}


def paper_called(score: Score) -> str:
    """Return in a word what a paper is that is not just there; nothing for one that is.

    >>> [paper_called(Score(choice, wrote)) for choice in PaperChoice for wrote in ("", "r")][:4]
    ['not here yet', '', 'absent', 'late']
    """
    if score.wrote:
        is_late = score.choice in {PaperChoice.ABSENT, PaperChoice.EXCUSED, PaperChoice.LATE}
        return "late" if is_late else ""
    if score.owes:
        return "late, not here yet" if score.choice is PaperChoice.LATE else "not here yet"
    return score.choice.value


def night_csv(book: Store, room_number: int, night: int) -> str:
    """Return a night's marks as CSV: the score, a mark for each problem, and each answer as text.

    No cell is taken for a formula or a date: an answer that is more than a plain number has an apostrophe
    before it. Raises NotThere.
    """
    _, marks, answers = _night_rows(book, room_number, night)
    head, *rows = [(*row, *more[2:]) for row, more in zip(marks, answers, strict=True)]
    width = len(marks[0])
    head = (*head[:width], *(f"{label} answer" for label in head[width:]))
    return _csv([head, *((*row[:width], *map(_as_text, row[width:])) for row in rows)])


def night_xlsx(book: Store, room_number: int, night: int, when: datetime) -> bytes:
    """Return the same as a workbook: a sheet of scores and marks, and one of the answers. Raises NotThere."""
    page, marks, answers = _night_rows(book, room_number, night)
    asked = ("", "asked", *(problem.typed for problem in page.sheet.problems))
    right = ("", "right answer", *(usual_right(page, label) for label in page.labels))
    every: Rows = [answers[0], asked, right, *answers[1:]]
    return workbook_bytes([TableSheet("Scores", marks), TableSheet("Answers", every)], when)


def range_csv(book: Store, room_number: int, first: date, last: date) -> str:
    """Return the scores of the nights from one day to another as CSV. Raises NotThere."""
    return _csv(_range_rows(scores(book, room_number, first, last)))


def range_xlsx(book: Store, room_number: int, first: date, last: date, when: datetime) -> bytes:
    """Return the same as a workbook. Raises NotThere."""
    return workbook_bytes([TableSheet("Scores", _range_rows(scores(book, room_number, first, last)))], when)


def put_table(path: Path, made: bytes | str) -> None:
    """Write a table, or another file about a class, for its owner alone (mode 0600).

    CSV says at its start that it is UTF-8.

    Raises FileRefused.
    """
    write(path, csv_bytes(made) if isinstance(made, str) else made, private=True)


def _night_rows(book: Store, room_number: int, night: int) -> tuple[NightPage, Rows, Rows]:
    """Return a night, the rows of scores and marks, and those of answers, the same pupils in both."""
    with book.snapshot() as seen:
        here, found = room(seen, room_number), night_scores(seen, room_number, night)
        texts = {(one.code, one.problem): one.text for one in answers_of(seen, night)}
    labels = found.page.labels
    marks: Rows = [("Code", "Name", "Paper", "Right", "Tried", "Asked", *labels)]
    answers: Rows = [("Code", "Name", *labels)]
    for code, name in _named(here, tuple(found.of)):
        score = found.of[code]
        cells = [_MARKS[letter] for letter in score.verdicts] or [None] * len(labels)
        counts = (score.right, score.tried) if score.wrote else (None, None)
        marks.append((code, name, paper_called(score), *counts, len(labels), *cells))
        answers.append((code, name, *(texts.get((code, label), "") for label in labels)))
    return found.page, marks, answers


def _range_rows(found: Scores) -> Rows:
    head: list[TableCell] = ["Code", "Name"]
    for night in found.nights:
        called = night_called(night.page)
        head += [f"{called}: right", f"{called}: tried", f"{called}: paper"]
    rows: Rows = [(*head, "Right", "Tried")]
    for code, name in _named(found.room, [pupil.code for pupil in found.pupils]):
        row: list[TableCell] = [code, name]
        for night in found.nights:
            score = night.of.get(code)
            if score is None:
                row += [None, None, "not in the class"]
            else:
                counts = (score.right, score.tried) if score.wrote else (None, None)
                row += [*counts, paper_called(score)]
        rows.append((*row, *found.total(code)))
    return rows


def night_called(page: NightPage) -> str:
    """Return the day and the title of a night's page, as a head of a column."""
    return f"{page.night.day.isoformat()} {page.name}"


def _named(here: Classroom, codes: Sequence[str]) -> Iterator[tuple[str, str]]:
    for pupil in here.pupils:
        if pupil.code in codes:
            yield pupil.code, pupil.name or ""


def _as_text(cell: TableCell) -> TableCell:
    """Return an answer so that no spreadsheet makes a date of 1/2, or another number of 007.

    >>> _as_text("1/2"), _as_text("35"), _as_text("3.50"), _as_text("")
    ("'1/2", '35', "'3.50", '')
    """
    text = "" if cell is None else str(cell)
    is_plain = text.isascii() and text.isdigit() and len(text) < 10 and str(int(text)) == text
    return text if not text or is_plain else f"'{text}"


def _csv(rows: Sequence[Sequence[TableCell]]) -> str:
    return csv_text(["" if cell is None else str(cell) for cell in row] for row in rows)
