"""Pupil: the story, findings that fade, all that is held, given out or erased."""

import json

from markupsafe import Markup

from onewhole.desk.classes.class_records import Pupil
from onewhole.desk.keep.backups import PRIVACY, clean, erase_everywhere
from onewhole.desk.pupil.pupil_export import export_csv, export_json
from onewhole.desk.pupil.pupil_story import CAUTION, CERTAINTY, GOOD_FOR_DAYS, MOST_WEEKS, story
from onewhole.errors import InputError
from onewhole.web.ask import Ask, Given, Shown, Went


def look(ask: Ask) -> Shown:
    """Show the story."""
    told = story(ask.book, ask.number("room"), str(ask.place["code"]), ask.door.today())
    return Shown(
        "pupil.html",
        {
            "told": told,
            "pupil": told.pupil,
            "picture": Markup(told.picture),  # noqa: S704 - our own drawing, no word of it is typed by anyone
            "caution": CAUTION,
            "certainty": CERTAINTY,
            "good_for": GOOD_FOR_DAYS,
            "most_weeks": MOST_WEEKS,
            "privacy": PRIVACY,
        },
    )


def held(ask: Ask) -> Shown:
    """Show everything that is held on this child."""
    pupil = _pupil(ask)
    all_held = json.loads(export_json(ask.book, ask.number("room"), pupil.code))
    return Shown("held.html", {"pupil": pupil, "held": all_held, "privacy": PRIVACY})


def as_json(ask: Ask) -> Given:
    """Give everything out as JSON."""
    code = _pupil(ask).code
    text = export_json(ask.book, ask.number("room"), code)
    return Given(text.encode(), "application/json", f"held-on-{code.lower()}.json")


def as_csv(ask: Ask) -> Given:
    """Give everything out as a table; the mark at its start tells a spreadsheet that it is UTF-8."""
    code = _pupil(ask).code
    text = "\ufeff" + export_csv(ask.book, ask.number("room"), code)
    return Given(text.encode(), "text/csv; charset=utf-8", f"held-on-{code.lower()}.csv")


def ask_erase(ask: Ask) -> Shown:
    """Ask whether this child is to be erased."""
    return _asked(ask)


def erase(ask: Ask) -> Shown:
    """Erase the child where the code was typed to confirm it; tell where the child may be still."""
    pupil = _pupil(ask)
    if ask.field("sure", "").strip().upper() != pupil.code:
        return _asked(
            ask,
            InputError(
                f"Nothing was erased: the code typed is not {pupil.code}",
                remedy=f"Type {pupil.code} if you mean this child.",
            ),
        )
    erased = erase_everywhere(
        ask.book,
        ask.number("room"),
        pupil.code,
        backups=ask.field("backups", "") == "yes",
        made=ask.door.folder / ask.book_name,
    )
    return Shown("erased.html", {"erased": erased})


def clean_file(ask: Ask) -> Went:
    """Write the file anew without what was erased."""
    clean(ask.book)
    return Went(ask.at("class"))


def _asked(ask: Ask, refused: InputError | None = None) -> Shown:
    words = {"pupil": _pupil(ask), "refused": refused, "privacy": PRIVACY}
    return Shown("erase.html", words, 422 if refused else 200)


def _pupil(ask: Ask) -> Pupil:
    return ask.room.pupil(str(ask.place["code"]))
