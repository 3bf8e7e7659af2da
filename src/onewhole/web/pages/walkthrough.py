"""The walkthrough of a night: its board, what is chosen for each problem, the voice, and the film."""

from pathlib import Path

from onewhole.desk.classes.class_records import NightPage, NotThere, spoken_night
from onewhole.desk.walkthrough.board import board, board_html, board_policy, on_offer
from onewhole.desk.walkthrough.film import BOTH
from onewhole.desk.walkthrough.film_night import film_night, film_there, further_files, mark_shown, shown_at
from onewhole.desk.walkthrough.film_options import FilmChoice
from onewhole.desk.walkthrough.film_plan import (
    MOST_MINUTES,
    FilmPlan,
    keep_plan,
    plan_of,
    plan_read,
    plan_text,
)
from onewhole.desk.walkthrough.kept_slips import keep_slip
from onewhole.desk.walkthrough.recordings import heard
from onewhole.desk.walkthrough.soundtrack_choice import MOST_SECONDS, called
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Content, FileContent, HtmlPage, Redirect
from onewhole.web.jobs import Outcome, Progress

_VTT = "text/vtt; charset=utf-8"
#: The files of a film that are lent: what each is called on the page, and its kind.
FILES = {
    "walkthrough.mp4": ("The film, wide", "video/mp4"),
    "walkthrough-upright.mp4": ("The film, upright for a phone", "video/mp4"),
    "walkthrough.html": ("The board as a page, for home", "text/html"),
    "script.pdf": ("The script to print", "application/pdf"),
    "transcript.md": ("All that is said, as text", "text/markdown; charset=utf-8"),
    "walkthrough.vtt": ("Captions (VTT)", _VTT),
    "walkthrough.srt": ("Captions (SRT)", "application/x-subrip"),
    "chapters.vtt": ("Chapters (VTT)", _VTT),
    "poster.png": ("Poster, wide", "image/png"),
    "poster-upright.png": ("Poster, upright", "image/png"),
}
FILES |= {file: (f"{FILES[like][0]}, {language}", FILES[like][1]) for file, like, language in further_files()}
#: The shapes of a film as the form offers them.
SHAPES = {BOTH: "Wide and upright", "wide": "Wide", "upright": "Upright, for a phone"}
#: What may be done to recordings, as the form offers it.
TIDY = {
    "level": "Make them equally loud",
    "trim": "Cut off silence at the ends",
    "clicks": "Take out clicks of keys",
}
#: So many notes are in view; the others are folded.
MOST_NOTES = 3
#: What the form of choices has: a row for each problem, then the rest.
_COLUMNS = ("label", "strategy", "picture", "length")
TAKES = (*_COLUMNS, "tried", "turn", "minutes", "mistake", "shape", "tidy", "saw")
#: Of the files, what a page of ours plays or shows; the others are saved.
_PLAYED = frozenset(
    {
        *(file for file, (_, kind) in FILES.items() if kind == _VTT),
        "walkthrough.mp4",
        "walkthrough-upright.mp4",
        "poster.png",
        "poster-upright.png",
    }
)


def look(request: PageRequest) -> HtmlPage:
    """Show the walkthrough."""
    page = _page(request)
    night = page.night.number
    try:
        plan, refused = plan_of(request.book, night), ""
        shown = board(page.sheet, plan)
    except InputError as no:
        plan, refused = FilmPlan(), str(no)
        shown = board(page.sheet, plan)
    film = film_there(request.book, page, _folder(request))
    words = {
        "refused": refused,
        "page": page,
        "plan": plan,
        "chosen": len({*plan.choices, *plan.tried, *plan.turns}),
        "most_notes": MOST_NOTES,
        "saw": plan_text(plan),
        "board": shown,
        "minutes": _length(int(shown.seconds)),
        "offered": on_offer(page.sheet, plan),
        "nothing": FilmChoice(),
        "heard": heard(request.book, night, shown),
        "called": called,
        "most_minutes": MOST_MINUTES,
        "most_seconds": MOST_SECONDS,
        "shown_at": shown_at(request.book, page, request.number("room")),
        "film": film,
        "files": {file: told for file, told in FILES.items() if film is None or file not in film.lacking},
        "shapes": SHAPES,
        "tidy": TIDY,
        "length": _length,
        "making": request.app.jobs.under_way(_home(request)),
    }
    return HtmlPage("walkthrough.html", words)


def show_board(request: PageRequest) -> Content:
    """Give the board itself: a whole page with its own policy, framed by ours or alone in a window."""
    page = _page(request)
    back = _home(request) if "alone" in request.query else ""
    html = board_html(page.sheet, plan_of(request.book, page.night.number), back=back)
    return Content(html.encode(), "text/html; charset=utf-8", policy=board_policy())


def choose(request: PageRequest) -> Redirect:
    """Keep what was chosen, if the night can be told so."""
    page = _page(request)
    columns = [[value for name, value in request.form_items if name == one] for one in _COLUMNS]
    if len({len(column) for column in columns}) != 1:
        raise InputError("The form is not whole", remedy="Load the page again and send it once more.")
    rows = list(zip(*columns, strict=True))
    typed = request.field("minutes", "").strip()
    plan = FilmPlan(
        {label: choice for label, *chosen in rows if (choice := FilmChoice(*chosen)) != FilmChoice()},
        tuple(value for name, value in request.form_items if name == "tried"),
        request.count("minutes", 1, MOST_MINUTES) if typed else None,
        request.field("mistake", "") == "yes",
        request.field("shape", BOTH),
        tuple(value for name, value in request.form_items if name == "turn"),
        tuple(value for name, value in request.form_items if name == "tidy"),
    )
    board(page.sheet, plan)
    saw = request.field("saw")
    keep_plan(request.book, page.night.number, plan, plan_read(saw) if saw else FilmPlan())
    return Redirect(f"{_home(request)}#choices")


def show(request: PageRequest) -> Redirect:
    """Keep that the walkthrough was shown."""
    mark_shown(request.book, _page(request).night.number, request.app.now())
    return Redirect(f"{_home(request)}#film")


def make(request: PageRequest) -> Redirect:
    """Make the film; it goes on when the page is left."""
    page, file, folder, home = _page(request), request.open_file, _folder(request), _home(request)
    now = request.app.now()

    def run(progress: Progress) -> Outcome:
        made = film_night(file, page, folder, when=now, progress=progress)
        notes = " ".join((*map(str, made.slips), *made.notes))
        said = f"The film takes {_length(int(made.length))}. {notes}".strip()
        return Outcome(f"{home}#film", said)

    job = request.app.jobs.start(f"The film of {page.name}", home, run)
    return Redirect(request.at("job.look", job=job.name))


def keep_said(request: PageRequest) -> Redirect:
    """Keep a number as it was said, or tell it again."""
    page = _page(request)
    film = film_there(request.book, page, _folder(request))
    slips = () if film is None else film.slips
    kept = request.field("kept") == "yes"
    keep_slip(request.book, page.night.number, slips, request.field("key"), kept=kept)
    return Redirect(f"{_home(request)}#film")


def lend(request: PageRequest) -> FileContent:
    """Lend a file of the film: played where a page of ours plays it, else saved."""
    page = _page(request)
    name = str(request.path_params["file"])
    if name not in FILES:
        raise NotThere("There is no such file of the film", where=name[:40], remedy="Choose one on the page.")
    saved = "save" in request.query or name not in _PLAYED
    return FileContent(
        _folder(request) / name, FILES[name][1], f"night-{page.night.number}-{name}" if saved else ""
    )


def _page(request: PageRequest) -> NightPage:
    return spoken_night(request.book, request.number("room"), request.number("night"))


def _home(request: PageRequest) -> str:
    return request.at("walkthrough.look")


def _folder(request: PageRequest) -> Path:
    return request.app.folder / request.book_name / f"night-{request.number('night')}"


def _length(seconds: int) -> str:
    """Write a length: 3 min 20 s."""
    minutes, rest = divmod(seconds, 60)
    return f"{minutes} min {rest} s" if minutes else f"{rest} s"
