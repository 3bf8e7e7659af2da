"""The Page desk: problems typed on the left, the page as it prints beside them, notes with their remedies."""

from collections.abc import Sequence
from datetime import datetime

from markupsafe import Markup

from onewhole.desk.classes.class_languages import languages_of
from onewhole.desk.classes.page_for import groups_now
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.page import kept_pages, live_page, problem_moves
from onewhole.desk.page.class_due import problems_due
from onewhole.desk.page.class_prints import printable_alone, prints_of, prints_text
from onewhole.desk.page.class_questions import last_answered, questions_left
from onewhole.desk.page.clicks import Offered, click_sent
from onewhole.desk.page.page_begun import page_begun, page_begun_with
from onewhole.desk.page.wished_page import WishForm, composed, read_wishes, skills_offered
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest, day_typed
from onewhole.web.http.response import HtmlPage, Json, Redirect
from onewhole.web.http.templates import name, rendered
from onewhole.web.jobs import Draft, Outcome, Progress

#: What the form of every act carries.
TYPED = ("typed",)
REMEDY = (*TYPED, "act", "label", "value")
MOVE = (*TYPED, "label", "line", "to", "by")
FORM = ("kind", "number", "denominators", "digits", "regrouping", "minutes", "told", "seed", "again", "left")
WISHES = (*TYPED, *FORM, "due", "sheet", "script")
SAVE = (*TYPED, "sheet", "recipe", "saw")
SET = (*SAVE, "day", "whom")
#: A page begins with so many problems of the Week at most.
MOST_BEGUN = 40


def new(request: PageRequest) -> HtmlPage:
    """Show the desk with nothing on it, or with problems to begin with, and the pages that are kept."""
    problems = request.every("with")[:MOST_BEGUN]
    return _shown(request, None, (), _begun(request, problems) if problems else None)


def look(request: PageRequest) -> HtmlPage:
    """Show a page that is kept."""
    versions = kept_pages.kept_versions(request.book, request.number("sheet"))
    return _shown(request, versions[0], versions)


def begun_with(request: PageRequest, typed: str) -> HtmlPage:
    """Show the desk with a page that came from elsewhere, not saved yet."""
    return _shown(request, None, (), Draft(typed))


def version(request: PageRequest) -> Json:
    """Tell what an earlier version says."""
    wanted = request.number("version")
    for one in kept_pages.kept_versions(request.book, request.number("sheet")):
        if one.version == wanted:
            return Json({"typed": one.typed, "words": f"Version {wanted} stands on the desk, not saved yet."})
    raise InputError("There is no such version", remedy="Choose one of the list.")


def live(request: PageRequest) -> Json:
    """Tell how what is typed prints, and what is found in it."""
    laid = live_page.laid(
        _typed(request), request.app.now(), languages_of(request.book, request.number("room"))
    )
    return Json(
        {
            "mistakes": [
                {
                    "line": one.line,
                    "column": one.column,
                    "what": one.what,
                    "remedy": one.remedy,
                    "story": one.is_story,
                    "places": [_placed(one.place)] if one.place else [],
                    "remedies": [_click(click) for click in one.remedies],
                }
                for one in laid.mistakes
            ],
            "pages": [{"picture": one.address, "words": one.words} for one in laid.pages],
            "problems": [
                {
                    "label": one.label,
                    "line": one.line,
                    "asks": one.asks,
                    "room": one.room,
                    "remedies": [_click(click) for click in one.remedies],
                }
                for one in laid.problems
            ],
            "notes": [
                {
                    "advice": one.advice,
                    "words": one.words,
                    "remedy": one.remedy,
                    "known": one.known,
                    "places": [_placed(place) for place in one.places],
                    "remedies": [_click(click) for click in one.remedies],
                }
                for one in laid.notes
            ],
            "told": laid.told,
            "counted": [_placed(place) for place in laid.counted],
        }
    )


def mended(request: PageRequest) -> Json:
    """Do what a remedy offers."""
    labels = [value for name, value in request.form_items if name == "label"]
    values = [value for name, value in request.form_items if name == "value"]
    return _changed(live_page.remedied(_typed(request), click_sent(request.field("act"), labels, values)))


def moved(request: PageRequest) -> Json:
    """Move a problem, named by its label or its line, to another place, or one place up or down."""
    typed, by = _typed(request), request.field("by", "")
    if by and by not in {"-1", "1"}:
        raise InputError("A problem moves one place up or down", remedy="Use the arrows.")
    if "line" in request.fields:
        made = problem_moves.moved_on_line(
            typed, request.count("line", 1, live_page.LONGEST_TYPED), int(by or 0)
        )
    elif by:
        made = problem_moves.moved_by(typed, request.field("label"), int(by))
    else:
        made = problem_moves.moved(typed, request.field("label"), request.count("to", 1, 1000))
    return Json({"typed": made.typed, "words": made.words, "place": made.place, "line": made.line})


def wished(request: PageRequest) -> Json | Redirect:
    """Compose a page by wishes, under the settings that stand there; it goes on when the page is left."""
    form = WishForm(
        kind=request.field("kind"),
        number=request.field("number", ""),
        denominators=request.field("denominators", ""),
        regrouping=request.field("regrouping", ""),
        minutes=request.field("minutes", ""),
        seed=request.field("seed", ""),
        digits=request.field("digits", ""),
        told=request.field("told", ""),
    )
    typed, sheet, file, room = _typed(request), _sheet(request), request.open_file, request.room.number
    read_wishes(typed, form)
    if sheet is not None:
        kept_pages.kept_versions(request.book, sheet)
    again, left, due = (request.field(name, "") for name in ("again", "left", "due"))
    today = request.app.today()
    home = request.at("page_desk.new") if sheet is None else request.at("page_desk.look", sheet=sheet)

    def run(_progress: Progress) -> Outcome:
        before = kept_pages.last_typed(file, room) if again else ()
        asks = questions_left(file, room) if left else ()
        back = problems_due(file, room, today) if due else ()
        made = composed(typed, form, not_again=before, questions=asks, back=back)
        return Outcome(home, "The page is composed.", Draft(made.typed, made.told, made.recipe))

    job = request.app.jobs.start("A page is composed", home, run, again=True)
    if request.field("script", ""):
        return Json({"work": job.name, "now": request.at("job.now", job=job.name)})
    return Redirect(request.at("job.look", job=job.name))


def saved(request: PageRequest) -> Json:
    """Keep what is typed; every earlier version stays."""
    recipe = request.field("recipe", "")
    try:
        kept = kept_pages.keep_page(
            request.book,
            _sheet(request),
            _typed(request),
            request.app.now(),
            recipe=recipe,
            saw=_saw(request),
        )
    except ChangedMeanwhile as changed:
        return _later(request, changed)
    return Json({"words": f"Saved as version {kept.version}.", **_kept(request, kept)})


def night(request: PageRequest) -> Json:
    """Keep what is typed, and that the class takes it home on a day."""
    day = day_typed(request.field("day"))
    try:
        made = kept_pages.set_page(
            request.book,
            request.number("room"),
            _sheet(request),
            _typed(request),
            day=day,
            now=request.app.now(),
            recipe=request.field("recipe", ""),
            saw=_saw(request),
            whom=request.field("whom", ""),
        )
    except ChangedMeanwhile as changed:
        return _later(request, changed)
    return Json({"goes": f"{request.at('week.look')}?of={day.isoformat()}#night-{made.night.number}"})


def _shown(
    request: PageRequest,
    kept: kept_pages.KeptPage | None,
    versions: tuple[kept_pages.KeptPage, ...],
    begun: Draft | None = None,
) -> HtmlPage:
    saved = kept.typed if kept else page_begun(request.book, request.room.number)
    draft = begun or _draft(request)
    return HtmlPage(
        "page_desk.html",
        {
            "typed": draft.typed if draft else saved,
            "saved": saved,
            "draft": draft,
            "lost": "made" in request.query and draft is None,
            "kept": kept,
            "which": which,
            "versions": versions,
            "pages": kept_pages.kept_pages(request.book),
            "kinds": printable_alone(),
            "wished_heads": skills_offered(),
            "prints": prints_text(prints_of(request.book, request.room.number)),
            "when": lambda moment: _when(request, moment),
            "answered": last_answered(request.book, request.room.number) is not None,
            "longest": live_page.LONGEST_TYPED,
            "groups": groups_now(request.book, request.room.number),
        },
    )


def _begun(request: PageRequest, problems: Sequence[str]) -> Draft:
    """Return a page of the class that begins with what was chosen elsewhere, readable or not yet."""
    return Draft(page_begun_with(request.book, request.room.number, problems))


def _draft(request: PageRequest) -> Draft | None:
    """Return what a work composed for this page, where it is asked for and still remembered."""
    try:
        job = request.app.jobs[request.query.get("made", "")]
    except KeyError:
        return None
    return job.draft if job.back == request.path else None


def _typed(request: PageRequest) -> str:
    """Return what is typed, with plain line ends."""
    return request.field("typed").replace("\r\n", "\n")


def _sheet(request: PageRequest) -> int | None:
    """Return which page it is saved as; none means a new one."""
    return request.count("sheet", 1, 2**31 - 1) if request.field("sheet", "") else None


def _saw(request: PageRequest) -> int | None:
    """Return the version that the desk began with; none for a new page."""
    return request.count("saw", 1, 2**31 - 1) if request.field("sheet", "") else None


def _later(request: PageRequest, changed: ChangedMeanwhile) -> Json:
    """Tell that a later version was saved, with its row for the list of versions. Nothing is kept."""
    newest = kept_pages.kept_versions(request.book, request.count("sheet", 1, 2**31 - 1))[0]
    told = {"refused": changed.what, "where": "", "remedy": changed.remedy, "stands": changed.stands}
    return Json({**told, "row": _kept(request, newest)["row"]}, 409)


def _kept(request: PageRequest, kept: kept_pages.KeptPage) -> dict[str, object]:
    return {
        "sheet": kept.sheet,
        "version": kept.version,
        "which": which(kept),
        "row": rendered(
            "_version.html", {"one": kept, "at": request.at, "when": lambda moment: _when(request, moment)}
        ),
        "goes": request.at("page_desk.look", sheet=kept.sheet),
    }


def which(kept: kept_pages.KeptPage) -> Markup:
    """Return in words which version of which page stands on the desk."""
    return Markup("{}, version {}").format(name(kept.title), kept.version)


def _when(request: PageRequest, moment: datetime) -> str:
    """Write a moment by the clock of this place."""
    here = moment.astimezone(request.app.now().tzinfo)
    return f"{here.day} {here.strftime('%B %Y, %H:%M')}"


def _click(click: Offered) -> dict[str, object]:
    sent = click.sent
    return {
        "act": sent.key.value,
        "words": click.words,
        "labels": list(sent.labels),
        "values": list(sent.values),
    }


def _placed(place: live_page.NamedLine) -> dict[str, object]:
    return {"line": place.line, "name": place.name}


def _changed(changed: live_page.Changed) -> Json:
    return Json({"typed": changed.typed, "words": changed.words})
