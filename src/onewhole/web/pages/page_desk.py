"""The Page desk: problems typed on the left, the page as it prints beside them, notes with their remedies."""

from datetime import datetime

from onewhole.desk.classes.class_records import sheet_typed
from onewhole.desk.page import kept_pages, live_page
from onewhole.desk.page.class_questions import last_answered, questions_left
from onewhole.desk.page.wished_page import WishForm, composed, read_wishes
from onewhole.errors import InputError
from onewhole.web.ask import Ask, Given, Shown, Told, Went, day_typed
from onewhole.web.long_work import Draft, Outcome, Progress

#: What the form of every act carries.
TYPED = ("typed",)
REMEDY = (*TYPED, "act", "label", "value")
MOVE = (*TYPED, "label", "to", "by")
FORM = ("kind", "number", "denominators", "regrouping", "minutes", "seed", "again", "left")
WISHES = (*TYPED, *FORM, "sheet", "script")
SAVE = (*TYPED, "sheet", "recipe")
SET = (*SAVE, "day")
PRINT = (*TYPED, "print")


def new(ask: Ask) -> Shown:
    """Show the desk with nothing on it, or with a problem to begin with, and the pages that are kept."""
    return _shown(ask, None, (), _begun(ask.query["with"]) if "with" in ask.query else None)


def look(ask: Ask) -> Shown:
    """Show a page that is kept."""
    versions = kept_pages.kept_versions(ask.book, ask.number("sheet"))
    return _shown(ask, versions[0], versions)


def version(ask: Ask) -> Told:
    """Tell what an earlier version says."""
    wanted = ask.number("version")
    for one in kept_pages.kept_versions(ask.book, ask.number("sheet")):
        if one.version == wanted:
            return Told({"typed": one.typed, "words": f"Version {wanted} stands on the desk, not saved yet."})
    raise InputError("There is no such version", remedy="Choose one of the list.")


def live(ask: Ask) -> Told:
    """Tell how what is typed prints, and what is found in it."""
    laid = live_page.laid(_typed(ask), ask.door.now())
    return Told(
        {
            "mistakes": [
                {
                    "line": one.line,
                    "column": one.column,
                    "what": one.what,
                    "remedy": one.remedy,
                    "remedies": [_click(click) for click in one.remedies],
                }
                for one in laid.mistakes
            ],
            "pages": [{"picture": one.address, "words": one.words} for one in laid.pages],
            "problems": [
                {"label": one.label, "line": one.line, "asks": one.asks, "room": one.room}
                for one in laid.problems
            ],
            "notes": [
                {
                    "advice": one.advice,
                    "words": one.words,
                    "remedy": one.remedy,
                    "lines": list(one.lines),
                    "remedies": [_click(click) for click in one.remedies],
                }
                for one in laid.notes
            ],
            "told": laid.told,
        }
    )


def mended(ask: Ask) -> Told:
    """Do what a remedy offers."""
    labels = [value for name, value in ask.every if name == "label"]
    values = [value for name, value in ask.every if name == "value"]
    return _changed(live_page.remedied(_typed(ask), live_page.remedy_named(ask.field("act"), labels, values)))


def moved(ask: Ask) -> Told:
    """Move a problem to another place, or by so many places."""
    label = ask.field("label")
    if by := ask.field("by", ""):
        if by not in {"-1", "1"}:
            raise InputError("A problem moves one place up or down", remedy="Use the arrows.")
        return _changed(live_page.moved_by(_typed(ask), label, int(by)))
    return _changed(live_page.moved(_typed(ask), label, ask.count("to", 1, 1000)))


def wished(ask: Ask) -> Told | Went:
    """Compose a page by wishes, under the settings that stand there; it goes on when the page is left."""
    form = WishForm(
        ask.field("kind"),
        ask.field("number", ""),
        ask.field("denominators", ""),
        ask.field("regrouping", ""),
        ask.field("minutes", ""),
        ask.field("seed", ""),
    )
    typed, sheet, book, room = _typed(ask), _sheet(ask), ask.book, ask.room.number
    read_wishes(typed, form)
    if sheet is not None:
        kept_pages.kept_versions(book, sheet)
    again, left = ask.field("again", ""), ask.field("left", "")
    home = ask.at("page") if sheet is None else ask.at("page", sheet)

    def run(_progress: Progress) -> Outcome:
        before = kept_pages.last_typed(book, room) if again else ()
        asks = questions_left(book, room) if left else ()
        made = composed(typed, form, not_again=before, questions=asks)
        return Outcome(home, "The page is composed.", Draft(made.typed, made.told, made.recipe))

    work = ask.door.works.start("A page is composed", home, run, again=True)
    shown = f"/under-way/{work.name}"
    return Told({"work": work.name, "now": f"{shown}/now"}) if ask.field("script", "") else Went(shown)


def saved(ask: Ask) -> Told:
    """Keep what is typed; every earlier version stays."""
    recipe = ask.field("recipe", "")
    kept = kept_pages.keep_page(ask.book, _sheet(ask), _typed(ask), ask.door.now(), recipe=recipe)
    return Told({"words": f"Saved as version {kept.version}.", **_kept(ask, kept)})


def night(ask: Ask) -> Told:
    """Keep what is typed, and that the class takes it home on a day."""
    day = day_typed(ask.field("day"))
    made = kept_pages.set_page(
        ask.book,
        ask.room.number,
        _sheet(ask),
        _typed(ask),
        day=day,
        now=ask.door.now(),
        recipe=ask.field("recipe", ""),
    )
    return Told({"goes": f"{ask.at('week')}?of={day.isoformat()}#night-{made.night.number}"})


def printed(ask: Ask) -> Given:
    """Give what is typed as PDF."""
    made = kept_pages.printed(ask.book, ask.room.number, _typed(ask), ask.field("print"), ask.door.now())
    return Given(made.content, made.kind, made.name)


def _shown(
    ask: Ask,
    kept: kept_pages.KeptPage | None,
    versions: tuple[kept_pages.KeptPage, ...],
    begun: Draft | None = None,
) -> Shown:
    saved, draft = kept.typed if kept else "", begun or _draft(ask)
    return Shown(
        "page_desk.html",
        {
            "typed": draft.typed if draft else saved,
            "saved": saved,
            "draft": draft,
            "lost": "made" in ask.query and draft is None,
            "kept": kept,
            "versions": versions,
            "pages": kept_pages.kept_pages(ask.book),
            "kinds": kept_pages.KINDS,
            "when": lambda moment: _when(ask, moment),
            "answered": last_answered(ask.book, ask.room.number) is not None,
            "longest": live_page.LONGEST_TYPED,
        },
    )


def _begun(problem: str) -> Draft:
    """Return a page that begins with a problem. Raises SheetError for one that cannot be read."""
    typed = f"1. {problem}\n"
    sheet_typed(typed)
    return Draft(typed)


def _draft(ask: Ask) -> Draft | None:
    """Return what a work composed for this page, where it is asked for and still remembered."""
    try:
        work = ask.door.works[ask.query.get("made", "")]
    except KeyError:
        return None
    return work.draft if work.back == ask.path else None


def _typed(ask: Ask) -> str:
    """Return what is typed, with plain line ends."""
    return ask.field("typed").replace("\r\n", "\n")


def _sheet(ask: Ask) -> int | None:
    """Return which page it is saved as; none means a new one."""
    return ask.count("sheet", 1, 2**31 - 1) if ask.field("sheet", "") else None


def _kept(ask: Ask, kept: kept_pages.KeptPage) -> dict[str, object]:
    return {
        "sheet": kept.sheet,
        "version": kept.version,
        "title": kept.title,
        "written": _when(ask, kept.written),
        "goes": ask.at("page", kept.sheet),
    }


def _when(ask: Ask, moment: datetime) -> str:
    """Write a moment by the clock of this place."""
    here = moment.astimezone(ask.door.now().tzinfo)
    return f"{here.day} {here.strftime('%B %Y, %H:%M')}"


def _click(click: live_page.Remedy) -> dict[str, object]:
    return {
        "act": click.act.value,
        "words": click.words,
        "labels": list(click.labels),
        "values": list(click.values),
    }


def _changed(changed: live_page.Changed) -> Told:
    return Told({"typed": changed.typed, "words": changed.words})
