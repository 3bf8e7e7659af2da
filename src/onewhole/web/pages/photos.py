"""Papers from photos or a scan: pictures are read, answers looked at one after another, pictures cleared."""

from collections.abc import Sequence

from onewhole.desk.classes.class_records import night_page
from onewhole.desk.paper.checking_papers import (
    CheckedCell,
    PapersToCheck,
    ShownCell,
    cell_picture,
    check_cell,
    papers_to_check,
    spot_checked,
    uncheck_cell,
)
from onewhole.desk.paper.clearing_papers import finish_papers, take_back_papers
from onewhole.desk.paper.found_told import found_told
from onewhole.desk.paper.judged_cells import Key
from onewhole.desk.paper.keep_papers import KeptPapers, read_papers
from onewhole.desk.paper.paper_wishes import paper_wishes, sureness_named, sureness_told, wishes_text
from onewhole.desk.paper.readings_there import readings_there
from onewhole.desk.paper.sent_pictures import sent_pictures
from onewhole.desk.paper.why_told import UNSEEN_HANDS, why_told
from onewhole.desk.paper.wish_papers import set_paper_wishes
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Content, HtmlPage, Json, Redirect
from onewhole.web.http.templates import rendered
from onewhole.web.jobs import Job, Outcome, Progress
from onewhole.web.pages.ahead import tomorrow_ahead
from onewhole.web.pages.marking import picture_address

#: So many files are sent at once, and so many bytes: a class of 30 with two pages, as a phone saves them.
MOST_PICTURES = 150
MOST = 256 * 1024 * 1024
#: What is told where nothing else was found.
NOTHING_ELSE = "No paper is missing, and no picture was left out."
#: So many pictures of cells are loaded before they are looked at.
AHEAD = 4


def look(request: PageRequest) -> HtmlPage:
    """Show what is to be looked at, or where pictures are chosen."""
    return _shown(request, *_made(request))


def send(request: PageRequest) -> Redirect:
    """Read pictures; it goes on when the page is left."""
    pictures = sent_pictures(
        (one.name, one.content) for name, one in request.file_items if name == "pictures"
    )
    room, night = request.number("room"), request.number("night")
    file, app, home = request.open_file, request.app, request.at("photos.look")
    night_page(request.book, room, night)

    def run(_: Progress) -> Outcome:
        kept = read_papers(file, room, night, pictures, app.sees(file, room, night), now=app.now())
        with file.snapshot() as seen:
            told = found_told(seen, room, night, kept.found)
        return Outcome(home, kept_told(kept), told=told or (NOTHING_ELSE,))

    job = app.jobs.start("Papers are read", home, run, again=True)
    return Redirect(request.at("job.look", job=job.name))


def picture(request: PageRequest) -> Content:
    """Give the picture of a cell."""
    code, label = request.query.get("code", ""), request.query.get("label", "")
    found = cell_picture(request.book, request.number("room"), request.number("night"), code, label)
    return Content(found, "image/png")


def check(request: PageRequest) -> Redirect:
    """Keep what a person reads in a cell."""
    _checked(request)
    return Redirect(f"{request.at('photos.look')}#cell")


def checked(request: PageRequest) -> Json:
    """Keep what a person reads in a cell, and give the next one."""
    done = _checked(request)
    told = f"{request.field('code')}, {request.field('label')}: {done.judged.said}"
    return Json({**_next(request, done.papers, done.next), "told": told})


def unchecked(request: PageRequest) -> Json:
    """Take the check of a cell back, and show it again."""
    shown = uncheck_cell(
        request.book,
        request.number("room"),
        request.number("night"),
        _key(request),
        now=request.app.now(),
    )
    tomorrow_ahead(request)
    papers = papers_to_check(request.book, request.number("room"), request.number("night"))
    return Json(_next(request, papers, shown))


def spot(request: PageRequest) -> HtmlPage:
    """Keep what came of a spot check."""
    wrong = dict.fromkeys(_keys(request, "wrong"))
    found = spot_checked(
        request.book,
        request.number("room"),
        request.number("night"),
        _keys(request, "seen"),
        wrong,
        now=request.app.now(),
    )
    told = ["All of these were read rightly."]
    if found.wrong:
        told = [f"{_counted(found.wrong, 'answer')} read wrongly: look at it with the others."]
    if found.raised is not None:
        told.append(f"From now on the program must be surer. {sureness_told(found.raised)}.")
    if found.shown:
        told.append(f"{_counted(found.shown, 'more answer')} to be looked at because of that.")
    tomorrow_ahead(request)
    return _shown(request, "", told)


def finish(request: PageRequest) -> HtmlPage:
    """Take the pictures away once all is looked at."""
    done = finish_papers(request.book, request.number("room"), request.number("night"))
    if done.left:
        return _shown(request, f"{_counted(done.left, 'answer')} to be looked at first; the pictures stay.")
    if done.stays:
        return _shown(request, "The pictures of answers stay with this night, as you wished.")
    return _shown(request, f"{_counted(done.cleared, 'picture')} taken away. The answers are in Marking.")


def back(request: PageRequest) -> HtmlPage:
    """Take a reading back; what was checked or written since stays and is told."""
    done = take_back_papers(
        request.book,
        request.number("room"),
        request.number("night"),
        request.count("reading", 1, 999_999),
        now=request.app.now(),
    )
    told = [f"{_counted(done.cells, 'answer')} as before these papers."]
    if done.stay:
        shown = "; ".join(done.stay[:10]) + ("; and more" if len(done.stay) > 10 else "")
        told.append(f"Checked or written since, and not taken back: {shown}.")
    tomorrow_ahead(request)
    return _shown(request, "", told)


def wish(request: PageRequest) -> Redirect:
    """Keep how sure a reading must be, whether it is learnt from, and whether pictures stay."""
    set_paper_wishes(
        request.book,
        request.number("room"),
        sureness_named(request.field("sureness")),
        learns=request.field("learns", "") == "yes",
        keeps=request.field("keeps", "") == "yes",
        now=request.app.now(),
        saw=request.field("saw"),
    )
    tomorrow_ahead(request)
    return Redirect(f"{request.at('photos.look')}#how")


def kept_told(kept: KeptPapers) -> str:
    """Return what became of some papers, in a sentence.

    >>> kept_told(KeptPapers(1, 231, 1, 38, 0, 0, ()))
    '231 answers are read, 1 is empty, 38 are to be looked at.'
    """
    parts = [
        f"{_counted(kept.read, 'answer')} read",
        f"{kept.empty} {'is' if kept.empty == 1 else 'are'} empty",
        f"{kept.shown} {'is' if kept.shown == 1 else 'are'} to be looked at",
    ]
    if kept.same:
        parts.append(f"{kept.same} {'was' if kept.same == 1 else 'were'} typed already, and the same")
    if kept.left:
        parts.append(f"{kept.left} {'was' if kept.left == 1 else 'were'} checked before, and stay")
    return ", ".join(parts) + "."


def _counted(count: int, what: str) -> str:
    return f"1 {what} is" if count == 1 else f"{count} {what}s are"


def _checked(request: PageRequest) -> CheckedCell:
    done = check_cell(
        request.book,
        request.number("room"),
        request.number("night"),
        _key(request),
        request.field("text").strip(),
        now=request.app.now(),
        saw=request.field("saw"),
    )
    tomorrow_ahead(request)
    return done


def _key(request: PageRequest) -> Key:
    return request.field("code"), request.field("label")


def _keys(request: PageRequest, name: str) -> tuple[Key, ...]:
    """Return the cells that a form names: a pupil's code, a blank and a label each."""
    sent = [value.partition(" ") for key, value in request.form_items if key == name]
    return tuple((code, label) for code, _, label in sent)


def _next(request: PageRequest, papers: PapersToCheck, cell: ShownCell | None) -> dict[str, object]:
    """Return what a script shows next: a cell as markup, how many wait, which pictures come after it."""
    words = {**_cell_words(request, papers), "cell": cell}
    row = rendered("_photo_cell.html", words) if cell else ""
    return {"row": row, "left": len(papers.open), "ahead": words["ahead"]}


def _cell_words(request: PageRequest, papers: PapersToCheck) -> dict[str, object]:
    return {
        "at": request.at,
        "csrf_token": request.csrf_token,
        "why_told": why_told,
        "picture": lambda cell: _picture(request, cell),
        "ahead": [_picture(request, cell) for cell in papers.open[:AHEAD]],
    }


def _picture(request: PageRequest, cell: ShownCell) -> str:
    return picture_address(request, cell.code, cell.label)


def _made(request: PageRequest) -> tuple[str, tuple[str, ...]]:
    """Return what is said of papers that were just read, and what else was found."""
    try:
        job: Job = request.app.jobs[request.query.get("made", "")]
    except KeyError:
        return "", ()
    return (job.said, job.told) if job.back == request.path else ("", ())


def _shown(request: PageRequest, said: str = "", told: Sequence[str] = ()) -> HtmlPage:
    room, night = request.number("room"), request.number("night")
    papers, wishes = papers_to_check(request.book, room, night), paper_wishes(request.book, room)
    words: dict[str, object] = {
        **_cell_words(request, papers),
        "page": papers.page,
        "papers": papers,
        "cell": next(iter(papers.open), None),
        "readings": readings_there(request.book, night),
        "wishes": wishes,
        "saw": wishes_text(wishes),
        "choices": tuple(type(wishes.sureness)),
        "sureness_told": sureness_told,
        "unseen": UNSEEN_HANDS,
        "most": MOST_PICTURES,
        "most_mb": MOST // (1024 * 1024),
        "said": said,
        "told": told,
        "reading": request.app.jobs.under_way(request.at("photos.look")),
    }
    return HtmlPage("photos.html", words)
