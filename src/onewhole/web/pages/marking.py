"""The Marking page: the grid of a night, judged while it is typed, kept cell by cell."""

import json
from collections.abc import Iterable, Sequence

from markupsafe import Markup

from onewhole.desk.marking.cells import Change, KeptCells, codes_typed, keep_cells, keep_column, read_cell_as
from onewhole.desk.marking.grid import Cell, cell_history, cells_as, grid, grid_fingerprint, night_page
from onewhole.desk.marking.pasted import pasted, placed
from onewhole.desk.marking.predicted import predicted
from onewhole.desk.marking.readings import Reading
from onewhole.desk.marking.verdicts import Judged, judged
from onewhole.errors import InputError
from onewhole.web.ask import Ask, Shown, Told

#: Every writing says who wrote it; the door knows one teacher.
BY = "teacher"
#: Bytes that a whole grid of answers takes at most.
MOST = 2 * 1024 * 1024


def look(ask: Ask) -> Shown:
    """Show the grid as it stands on the disk."""
    stamp = grid_fingerprint(ask.book, ask.number("room"), ask.number("night"))
    found = grid(ask.book, ask.number("room"), ask.number("night"))
    words = {"page": found.page, "grid": found, "stamp": stamp, "formula": Markup, "read": read_words}
    return Shown("marking.html", words)


def now(ask: Ask) -> Told:
    """Tell every cell as it stands, unless nothing was written since the stamp in the address."""
    stamp = grid_fingerprint(ask.book, ask.number("room"), ask.number("night"))
    if ask.query.get("since") == stamp:
        return Told({"stamp": stamp})
    found = grid(ask.book, ask.number("room"), ask.number("night"))
    return Told({"stamp": stamp, "cells": [_cell(cell) for row in found.rows for cell in row.cells]})


def judge(ask: Ask) -> Told:
    """Judge one text while it is typed; nothing is kept."""
    page = night_page(ask.book, ask.number("room"), ask.number("night"))
    return Told(_judged(judged(page, ask.field("label"), ask.field("text"))))


def foretell(ask: Ask) -> Told:
    """Tell what the likeliest patterns would write in a cell, beside what the row says as it is typed."""
    page = night_page(ask.book, ask.number("room"), ask.number("night"))
    row = {label: text for label, text in _lists(ask.field("row"), 2) if label in page.labels}
    found = predicted(page, ask.field("label"), row)
    return Told({"predicted": [[one.id, one.name, one.text] for one in found]})


def keep(ask: Ask) -> Told:
    """Keep cells; the answer is given when they are on the disk."""
    changes = [Change(*parts) for parts in _lists(ask.field("cells"), 4)]
    kept = keep_cells(ask.book, ask.number("room"), ask.number("night"), changes, now=ask.door.now(), by=BY)
    return _kept(ask, kept, changes=changes)


def column(ask: Ask) -> Told:
    """Keep the right answer of a problem for everyone except those named."""
    wrong = codes_typed(ask.room, ask.field("wrong"))
    kept = keep_column(
        ask.book,
        ask.number("room"),
        ask.number("night"),
        ask.field("label"),
        wrong,
        now=ask.door.now(),
        by=BY,
    )
    return _kept(ask, kept, left=wrong)


def paste(ask: Ask) -> Told:
    """Lay a pasted block on the grid and tell which cell gets what; nothing is kept yet."""
    page = night_page(ask.book, ask.number("room"), ask.number("night"))
    codes = [pupil.code for pupil in ask.room.pupils]
    laid = placed(pasted(ask.field("text")), codes, page.labels, ask.field("code"), ask.field("label"))
    return Told({"cells": laid.cells, "told": laid.told})


def read_as(ask: Ask) -> Told:
    """Keep how the teacher reads a cell."""
    found = read_cell_as(
        ask.book,
        ask.number("room"),
        ask.number("night"),
        Reading(ask.field("typed"), ask.field("read")),
        code=ask.field("code"),
        label=ask.field("label"),
        now=ask.door.now(),
        by=BY,
    )
    read_as = ask.field("read") if ask.field("read") != ask.field("typed") else None
    return Told({"judged": _judged(found), "readAs": read_as, "read": read_words(read_as)})


def history(ask: Ask) -> Told:
    """Tell every writing of a cell, the last one first."""
    found = cell_history(
        ask.book,
        ask.number("room"),
        ask.number("night"),
        ask.query.get("code", ""),
        ask.query.get("label", ""),
    )
    writings = [
        {"text": one.text, "when": one.written.astimezone().strftime("%d %B, %H:%M"), "by": one.by}
        for one in reversed(found)
    ]
    return Told({"writings": writings})


def read_words(read_as: str | None) -> str:
    """Return in words how a cell is read; nothing where it is read as it is typed.

    >>> read_words("3 1/2")
    'Read as 3 1/2.'
    """
    return "" if read_as is None else f"Read as {read_as}."


def _kept(ask: Ask, kept: KeptCells, *, changes: Sequence[Change] = (), left: Sequence[str] = ()) -> Told:
    """Tell what became of changes; a refused one by its place among them, for it may not be text."""
    page = night_page(ask.book, ask.number("room"), ask.number("night"))

    def seen(texts: Iterable[tuple[Change, str]]) -> list[dict[str, object]]:
        cells = ((change.code, change.problem, text) for change, text in texts)
        return [_cell(cell) for cell in cells_as(ask.book, page, cells)]

    return Told(
        {
            "kept": seen((change, change.text) for change in kept.kept),
            "clashes": seen(kept.clashes),
            "refused": [
                {"at": changes.index(change), "why": why.encode(errors="replace").decode()}
                for change, why in kept.refused
            ],
            "left": left,
        }
    )


def _cell(cell: Cell) -> dict[str, object]:
    return {
        "code": cell.code,
        "label": cell.label,
        "text": cell.text,
        "readAs": cell.read_as,
        "read": read_words(cell.read_as),
        "judged": _judged(cell.judged),
    }


def _judged(one: Judged) -> dict[str, object]:
    return {
        "verdict": one.verdict.value,
        "sign": one.sign,
        "word": one.word,
        "mathml": one.mathml,
        "spoken": one.spoken,
        "said": one.said,
    }


def _lists(typed: str, parts: int) -> list[list[str]]:
    """Return what a script sent: lists of so many texts, as code, label, text, and the text it saw there."""
    try:
        found = json.loads(typed)
    except (ValueError, RecursionError):
        found = None
    if isinstance(found, list) and all(_are_texts(one, parts) for one in found):
        return found
    raise InputError("These cells cannot be read", remedy="Load the page again; what shows as kept is kept.")


def _are_texts(one: object, parts: int) -> bool:
    return isinstance(one, list) and len(one) == parts and all(isinstance(part, str) for part in one)
