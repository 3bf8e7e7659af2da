"""Scores: right of tried for each pupil and night, and who still owes a paper."""

from datetime import date

from onewhole.desk.classes.score_days import score_days
from onewhole.desk.classes.score_tables import XLSX, paper_called, range_csv, range_xlsx
from onewhole.desk.classes.scores import owed_in, scores
from onewhole.desk.classes.year_files import ICS
from onewhole.desk.exchange.due_calendar import due_ics
from onewhole.desk.exchange.grade_book import CAUTION, grade_book_csv
from onewhole.desk.pupil.csv_cells import csv_bytes
from onewhole.web.http.request import PageRequest, day_typed
from onewhole.web.http.response import Content, HtmlPage


def look(request: PageRequest) -> HtmlPage:
    """Show the scores of three weeks, or of those from one day to another."""
    first, last = _days(request)
    found = scores(request.book, request.number("room"), first, last)
    return HtmlPage(
        "scores.html",
        {
            "scores": found,
            "first": first,
            "last": last,
            "owed": owed_in(found, request.app.today()),
            "called": paper_called,
            "caution": CAUTION,
            "asked": f"?from={first.isoformat()}&to={last.isoformat()}",
        },
    )


def as_csv(request: PageRequest) -> Content:
    """Give the same as CSV."""
    first, last = _days(request)
    made = csv_bytes(range_csv(request.book, request.number("room"), first, last))
    return Content(made, "text/csv; charset=utf-8", f"scores-{first}-to-{last}.csv")


def as_xlsx(request: PageRequest) -> Content:
    """Give the same as a workbook."""
    first, last = _days(request)
    made = range_xlsx(request.book, request.number("room"), first, last, request.app.now())
    return Content(made, XLSX, f"scores-{first}-to-{last}.xlsx")


def as_grades(request: PageRequest) -> Content:
    """Give a line a pupil and page for a grade book."""
    first, last = _days(request)
    made = csv_bytes(grade_book_csv(request.book, request.number("room"), first, last))
    return Content(made, "text/csv; charset=utf-8", f"grades-{first}-to-{last}.csv")


def as_calendar(request: PageRequest) -> Content:
    """Give what was set as a calendar."""
    made = due_ics(request.book, request.number("room"), date.min, date.max, request.app.now())
    return Content(made, ICS, "due.ics")


def _days(request: PageRequest) -> tuple[date, date]:
    """Return the first and the last day that are asked for. Raises InputError."""
    first, last = (day_typed(typed) if (typed := request.query.get(key)) else None for key in ("from", "to"))
    return score_days(first, last, request.app.today())
