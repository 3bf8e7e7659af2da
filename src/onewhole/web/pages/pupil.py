"""Pupil: the story, findings that fade, all that is held, given out or erased."""

from markupsafe import Markup

from onewhole.desk.classes.class_records import Pupil, class_names
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.keep.backups import PRIVACY, clean, erase_everywhere
from onewhole.desk.pupil.asked_answers import LONGEST as LONGEST_ASKED
from onewhole.desk.pupil.asked_answers import asked_of_pupil, note_asked, take_asked_back
from onewhole.desk.pupil.csv_cells import csv_bytes
from onewhole.desk.pupil.given_out import LONGEST as LONGEST_PART
from onewhole.desk.pupil.given_out import forget_given_out, given_out_of, note_given_out
from onewhole.desk.pupil.held_findings import HOW_KNOWN
from onewhole.desk.pupil.pupil_export import all_held, export_csv, export_json
from onewhole.desk.pupil.pupil_story import BANDS, CAUTION, CERTAINTY, GOOD_FOR_DAYS, HOW, MOST_WEEKS, story
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest, day_typed
from onewhole.web.http.response import Content, HtmlPage, Redirect, refused_status
from onewhole.web.pages.reading import READ_AT_ONCE


def look(request: PageRequest) -> HtmlPage:
    """Show the story."""
    return _shown(request)


def _shown(
    request: PageRequest, refused: InputError | None = None, not_asked: InputError | None = None
) -> HtmlPage:
    fields = ("what", "to", "why", "day", "night", "asked", "wrote", "word")
    typed = {key: request.field(key, "") for key in fields}
    told = story(request.book, request.number("room"), str(request.path_params["code"]), request.app.today())
    return HtmlPage(
        "pupil.html",
        {
            "told": told,
            "pupil": told.pupil,
            "picture": Markup(told.picture),  # noqa: S704 - our own drawing, no word of it is typed by anyone
            "caution": CAUTION,
            "bands": BANDS,
            "certainty": CERTAINTY,
            "how_found": HOW_KNOWN,
            "how": HOW,
            "good_for": GOOD_FOR_DAYS,
            "most_weeks": MOST_WEEKS,
            "privacy": PRIVACY,
            "given": given_out_of(request.book, request.number("room"), told.pupil.code),
            "typed": typed,
            "longest": LONGEST_PART,
            "refused": refused,
            "talks": asked_of_pupil(
                request.book, request.number("room"), told.pupil.code, at_once=READ_AT_ONCE
            ),
            "longest_asked": LONGEST_ASKED,
            "not_asked": not_asked,
            "formula": Markup,
        },
        422 if refused or not_asked else 200,
    )


def ask(request: PageRequest) -> HtmlPage | Redirect:
    """Keep what this child was asked after a night and said, and the teacher's word on the talk."""
    try:
        note_asked(
            request.book,
            request.number("room"),
            request.count("night", 1, 2**31),
            _pupil(request).code,
            asked=request.field("asked"),
            wrote=request.field("wrote"),
            word=request.field("word"),
            now=request.app.now(),
        )
    except InputError as refused:
        return _shown(request, not_asked=refused)
    return Redirect(f"{request.at('pupil.look')}#asked")


def unask(request: PageRequest) -> Redirect:
    """Take back a row of a talk with this child."""
    take_asked_back(
        request.book,
        request.number("room"),
        request.count("night", 1, 2**31),
        _pupil(request).code,
        number=request.count("line", 1, 2**31),
        now=request.app.now(),
    )
    return Redirect(f"{request.at('pupil.look')}#asked")


def give(request: PageRequest) -> HtmlPage | Redirect:
    """Note what was given out on this child, to whom, what for and when."""
    try:
        note_given_out(
            request.book,
            request.number("room"),
            _pupil(request).code,
            what=request.field("what"),
            to=request.field("to"),
            why=request.field("why", ""),
            day=day_typed(request.field("day").strip()),
            now=request.app.now(),
        )
    except InputError as refused:
        return _shown(request, refused)
    return Redirect(f"{request.at('pupil.look')}#given")


def take_back(request: PageRequest) -> Redirect:
    """Take away a line of what was given out that was typed wrongly."""
    line = request.count("line", 1, 2**31)
    forget_given_out(request.book, request.number("room"), _pupil(request).code, line)
    return Redirect(f"{request.at('pupil.look')}#given")


def held(request: PageRequest) -> HtmlPage:
    """Show everything that is held on this child."""
    pupil = _pupil(request)
    words = {
        "pupil": pupil,
        "held": all_held(request.book, request.number("room"), pupil.code),
        "caution": CAUTION,
        "how_known": HOW_KNOWN,
        "privacy": PRIVACY,
    }
    return HtmlPage("held.html", words)


def as_json(request: PageRequest) -> Content:
    """Give everything out as JSON."""
    code = _pupil(request).code
    text = export_json(request.book, request.number("room"), code)
    return Content(text.encode(), "application/json", f"held-on-{code.lower()}.json")


def as_csv(request: PageRequest) -> Content:
    """Give everything out as a table."""
    code = _pupil(request).code
    made = csv_bytes(export_csv(request.book, request.number("room"), code))
    return Content(made, "text/csv; charset=utf-8", f"held-on-{code.lower()}.csv")


def ask_erase(request: PageRequest) -> HtmlPage:
    """Ask whether this child is to be erased."""
    return _asked(request)


def erase(request: PageRequest) -> HtmlPage:
    """Erase the child where the code was typed to confirm it; tell where the child may be still."""
    pupil = _pupil(request)
    if request.field("sure", "").strip().upper() != pupil.code:
        return _asked(
            request,
            InputError(
                f"Nothing was erased: the code typed is not {pupil.code}",
                remedy=f"Type {pupil.code} if you mean this child.",
            ),
        )
    if request.field("saw") != (pupil.name or ""):
        return _asked(
            request,
            ChangedMeanwhile(
                f"Nothing was erased: the name of {pupil.code} was changed in another window",
                stands=pupil.name or "",
                remedy="See above who this is now, and type the code again if you mean this child.",
            ),
        )
    jobs, file = request.app.jobs, request.open_file
    if jobs.goes_on(f"/{request.book_name}/"):
        return _asked(
            request,
            InputError(
                "Nothing was erased: work with this class is under way, which may write of the child",
                remedy="Wait until it is done, then erase the child.",
            ),
        )
    erased = erase_everywhere(
        file,
        request.number("room"),
        pupil.code,
        backups=request.field("backups", "") == "yes",
        made=request.app.folder / request.book_name,
    )
    jobs.forget(f"/{request.book_name}/")
    left = [path.relative_to(file.path.parent).as_posix() for path in erased.left]
    return HtmlPage("erased.html", {"erased": erased, "left": left})


def clean_file(request: PageRequest) -> Redirect:
    """Write the file anew without what was erased."""
    clean(request.open_file)
    is_there = any(number == request.number("room") for number, _ in class_names(request.open_file))
    return Redirect(request.at("class_page.look") if is_there else request.at("start.start"))


def _asked(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    pupil = _pupil(request)
    given = given_out_of(request.book, request.number("room"), pupil.code)
    words = {"pupil": pupil, "refused": refused, "privacy": PRIVACY, "given": given}
    return HtmlPage("erase.html", words, refused_status(refused) if refused else 200)


def _pupil(request: PageRequest) -> Pupil:
    return request.room.pupil(str(request.path_params["code"]))
