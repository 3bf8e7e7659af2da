"""Papers of a night: who got the page, who was absent or excused, whose paper is late, who owes one."""

from onewhole.desk.classes.papers import PaperChoice, keep_papers, papers
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage, Redirect, refused_status

#: Every word says who wrote it; the door knows one teacher.
BY = "teacher"


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


def _shown(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    found = papers(request.book, request.number("room"), request.number("night"))
    chosen = {row.pupil.code: row.choice.value for row in found.rows}
    if refused and "whole" not in refused.what:
        saw = request.beside("saw")
        chosen |= {code: said for code, said in request.beside("said").items() if said != saw[code]}
    words: dict[str, object] = {
        "papers": found,
        "page": found.page,
        "chosen": chosen,
        "Choice": PaperChoice,
        "refused": refused,
        "kept": request.query.get("kept") == "yes",
    }
    return HtmlPage("papers.html", words, refused_status(refused) if refused else 200)
