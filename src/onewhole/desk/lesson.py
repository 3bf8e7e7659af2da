"""From a sheet to what is worked aloud: its problems, their workings and their pictures."""

from collections.abc import Collection

from onewhole.errors import InputError
from onewhole.misconceptions.catalogue import shows
from onewhole.misconceptions.slip import Slip
from onewhole.number.quantity import Quantity
from onewhole.pictures.choosing import PictureRefusedError, picture
from onewhole.pictures.picture import Kind, Picture
from onewhole.problems.needs import needs
from onewhole.problems.traps import is_at_heart
from onewhole.sheets.document import Sheet
from onewhole.sheets.key import KeyEntry, answer_key
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.working.working import Working
from onewhole.writers.frame import UNTITLED


def kind_named(name: str) -> Kind:
    """Return the picture with a teacher's name for it. Raises InputError with the names there are."""
    try:
        return Kind(name)
    except ValueError:
        names = ", ".join(kind.value for kind in Kind)
        msg = f"there is no picture called “{name}”"
        raise InputError(msg, remedy=f"Choose one of: {names}.") from None


def lesson(
    sheet: Sheet, *, kind: Kind | None = None, tried: Collection[str] = (), mistake: bool = False
) -> Lesson:
    """Return a sheet as it is worked aloud.

    ``kind`` is the picture that the teacher wants for every problem; where it cannot be drawn, and without a
    wish, the one that suits is taken. ``tried`` are the labels of problems that the family tries first. With
    ``mistake`` a likely mistake is shown and mended once, in the first problem that is regrouped. Raises
    InputError for a label that no problem has.
    """
    labels = [problem.label for problem in sheet.problems]
    for label in tried:
        if label not in labels:
            msg = f"there is no problem {label} to try first"
            raise InputError(msg, remedy=f"The sheet has {', '.join(labels)}.")
    entries = answer_key(sheet)
    shown = next((entry for entry in entries if needs(entry.problem.statement).regrouping), None)
    items = tuple(
        _item(
            entry,
            kind,
            tried=entry.problem.label in tried,
            mistake=_likely(entry) if mistake and entry is shown else None,
        )
        for entry in entries
    )
    header = sheet.header
    return Lesson(header.title or UNTITLED, header.date, header.class_name, header.words, items)


def _item(entry: KeyEntry, kind: Kind | None, *, tried: bool, mistake: Slip | None) -> Item:
    problem, working = entry.problem, entry.working
    return Item(
        problem.label,
        problem.statement,
        entry.answer,
        working,
        None if working is None else drawn(working, kind),
        problem.story,
        mistake,
        tried,
    )


def drawn(working: Working, kind: Kind | None = None) -> Picture | None:
    """Return the picture that is wanted, or where it cannot be drawn the one that suits."""
    try:
        return picture(working, kind)
    except PictureRefusedError:
        return picture(working)


def refused(sheet: Sheet, kind: Kind) -> tuple[str, ...]:
    """Return for each problem that the wanted picture cannot show why it is not, and what to choose."""
    notes = []
    for entry in answer_key(sheet):
        if entry.working is None:
            continue
        try:
            picture(entry.working, kind)
        except PictureRefusedError as no:
            notes.append(f"Problem {entry.problem.label}: {no.what}. {no.remedy or ''}".strip())
    return tuple(notes)


def _likely(entry: KeyEntry) -> Slip | None:
    """Return the first mistake of the catalogue about regrouping that shows in the answer."""
    return next(
        (
            slip
            for slip in shows(entry.problem.statement)
            if is_at_heart(slip.pattern) and isinstance(slip.wrote, Quantity) and slip.false_at is not None
        ),
        None,
    )
