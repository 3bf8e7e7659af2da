"""A table for a grade book: a line a pupil and page, with points possible and the score."""

from datetime import date

from onewhole.desk.classes.score_tables import night_called
from onewhole.desk.classes.scores import Score, scores
from onewhole.desk.pupil.csv_cells import csv_text
from onewhole.store.opening import Store

#: What stands beside every table of results.
CAUTION = (
    "This tells how children did, by code. Before you give it to anybody, see what your school allows, and "
    "note to whom you gave it."
)
#: The heads of its columns; common practice of grade books, no source.
HEADS = ("identifier", "title", "points possible", "score")


def grade_book_csv(book: Store, room_number: int, first: date, last: date) -> str:
    """Return the pages of some days as CSV: identifier, title, points possible, score.

    A pupil is told by code, never by name. A page that was not handed in has no score, excused or not: no
    zero is written that nobody gave. Raises NotThere.
    """
    found = scores(book, room_number, first, last)
    rows = [
        (
            pupil.code,
            night_called(night.page),
            str(len(night.page.labels)),
            score_written(night.of[pupil.code]),
        )
        for night in found.nights
        for pupil in found.pupils
        if pupil.code in night.of
    ]
    return csv_text([HEADS, *rows])


def score_written(score: Score) -> str:
    """Return how many answers are right; nothing where nothing was handed in."""
    return str(score.right) if score.wrote else ""
