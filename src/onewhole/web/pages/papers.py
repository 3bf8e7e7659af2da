"""Papers of a night: who got the page, who was absent or excused, whose paper is late, who owes one."""

from onewhole.desk.classes.class_records import night_page
from onewhole.desk.classes.page_for import give_page_to, groups_now, meant
from onewhole.desk.classes.papers import PaperChoice, keep_papers, papers
from onewhole.desk.classes.score_tables import XLSX, night_csv, night_xlsx
from onewhole.desk.classes.scores import night_scores
from onewhole.desk.pupil.csv_cells import csv_bytes
from onewhole.errors import InputError
from onewhole.web.http.request import BrokenForm, PageRequest
from onewhole.web.http.response import Content, HtmlPage, Redirect, refused_status
from onewhole.web.pages.marking import BY


def look(request: PageRequest) -> HtmlPage:
    """Show the papers of the night."""
    return _shown(request)


def keep(request: PageRequest) -> HtmlPage | Redirect:
    """Keep what is said of the papers."""
    try:
        keep_papers(
            request.book,
            request.number("room"),
            request.number("night"),
            request.beside("said"),
            request.beside("saw"),
            now=request.app.now(),
            by=BY,
        )
    except InputError as refused:
        return _shown(request, refused)
    return Redirect(f"{request.at('papers.look')}?kept=yes")


def give(request: PageRequest) -> HtmlPage | Redirect:
    """Keep for whom the page is."""
    room, typed = request.number("room"), request.field("whom")
    try:
        codes = meant(request.room, typed, groups_now(request.book, room))
        give_page_to(
            request.book,
            room,
            request.number("night"),
            codes,
            now=request.app.now(),
            by=BY,
            saw=request.field("saw"),
        )
    except InputError as refused:
        return _shown(request, refused)
    return Redirect(f"{request.at('papers.look')}?kept=yes")


def as_csv(request: PageRequest) -> Content:
    """Give the scores and answers as CSV."""
    room, night = request.number("room"), request.number("night")
    made = csv_bytes(night_csv(request.book, room, night))
    return Content(made, "text/csv; charset=utf-8", f"{_file(request)}.csv")


def as_xlsx(request: PageRequest) -> Content:
    """Give the same as a workbook."""
    room, night = request.number("room"), request.number("night")
    made = night_xlsx(request.book, room, night, request.app.now())
    return Content(made, XLSX, f"{_file(request)}.xlsx")


def _file(request: PageRequest) -> str:
    """Return what a saved table is called: two pages of one day have two names."""
    night = night_page(request.book, request.number("room"), request.number("night")).night
    return f"scores-{night.day.isoformat()}-page-{night.number}"


def _shown(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    found = papers(request.book, request.number("room"), request.number("night"))
    chosen = {row.pupil.code: row.choice.value for row in found.rows}
    if refused and "said" in request.fields and not isinstance(refused, BrokenForm):
        chosen |= request.changed_beside("said")
    words: dict[str, object] = {
        "papers": found,
        "page": found.page,
        "chosen": chosen,
        "scores": night_scores(request.book, request.number("room"), request.number("night")).of,
        "whom": request.field("whom", ""),
        "Choice": PaperChoice,
        "refused": refused,
        "kept": request.query.get("kept") == "yes",
    }
    return HtmlPage("papers.html", words, refused_status(refused) if refused else 200)
