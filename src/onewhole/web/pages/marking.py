"""The Marking page: the grid of a night, judged while it is typed, kept cell by cell."""

import json
from collections.abc import Sequence
from typing import TypeVar
from urllib.parse import urlencode

import msgspec
from markupsafe import Markup

from onewhole.desk.marking.cells import Change, KeptCells, codes_typed, keep_cells, keep_column, read_cell_as
from onewhole.desk.marking.close_setting import set_close
from onewhole.desk.marking.grid import Cell, cell_history, cells_as, grid, grid_fingerprint, night_page
from onewhole.desk.marking.predicted import predicted
from onewhole.desk.marking.readings import Reading
from onewhole.desk.marking.verdicts import Judged, judged
from onewhole.desk.paper.grid_papers import grid_papers
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage, Json
from onewhole.web.pages.ahead import tomorrow_ahead

_T = TypeVar("_T")

#: Every writing says who wrote it; the door knows one teacher.
BY = "teacher"
#: Bytes that a whole grid of answers takes at most.
MOST = 2 * 1024 * 1024


def look(request: PageRequest) -> HtmlPage:
    """Show the grid as it stands on the disk."""
    return shown(request)


def shown(request: PageRequest, told: Sequence[str] = (), left: Sequence[tuple[str, str]] = ()) -> HtmlPage:
    """Show the grid, and above it what was just done, a sentence each.

    ``left`` are pupils of whom nothing is written any more: their codes, and how the teacher knows them.
    """
    found = grid(request.book, request.number("room"), request.number("night"))
    tomorrow_ahead(request)
    words: dict[str, object] = {
        "page": found.page,
        "grid": found,
        "stamp": found.stamp,
        "formula": Markup,
        "read": read_words,
        "photos": grid_papers(request.book, request.number("night")),
        "picture": lambda cell: picture_address(request, cell.code, cell.label),
        "told": told,
        "left": left,
    }
    return HtmlPage("marking.html", words)


def picture_address(request: PageRequest, code: str, label: str) -> str:
    """Return where the picture of an answer on paper is."""
    return f"{request.at('photos.picture')}?{urlencode({'code': code, 'label': label})}"


def now(request: PageRequest) -> Json:
    """Tell every cell as it stands, unless nothing was written since the stamp in the address."""
    stamp = grid_fingerprint(request.book, request.number("room"), request.number("night"))
    if request.query.get("since") == stamp:
        return Json({"stamp": stamp})
    found = grid(request.book, request.number("room"), request.number("night"))
    return Json({"stamp": stamp, "cells": [_cell(cell) for row in found.rows for cell in row.cells]})


def judge(request: PageRequest) -> Json:
    """Judge one text while it is typed; nothing is kept."""
    page = night_page(request.book, request.number("room"), request.number("night"))
    return Json(_judged(judged(page, request.field("label"), request.field("text"))))


def foretell(request: PageRequest) -> Json:
    """Tell what the likeliest patterns would write in a cell, beside what the row says as it is typed."""
    page = night_page(request.book, request.number("room"), request.number("night"))
    row = {
        label: text
        for label, text in _sent(request.field("row"), list[tuple[str, str]])
        if label in page.labels
    }
    found = predicted(page, request.field("label"), row)
    return Json({"predicted": [[one.id, one.name, one.text] for one in found]})


def keep(request: PageRequest) -> Json:
    """Keep cells; the answer is given when they are on the disk."""
    changes = [Change(*parts) for parts in _sent(request.field("cells"), list[tuple[str, str, str, str]])]
    kept = keep_cells(
        request.book, request.number("room"), request.number("night"), changes, now=request.app.now(), by=BY
    )
    return _kept(request, kept, changes=changes)


def column(request: PageRequest) -> Json:
    """Keep the right answer of a problem for everyone except those named."""
    wrong = codes_typed(request.room, request.field("wrong"))
    kept = keep_column(
        request.book,
        request.number("room"),
        request.number("night"),
        request.field("label"),
        wrong,
        now=request.app.now(),
        by=BY,
    )
    return _kept(request, kept, left=wrong)


def read_as(request: PageRequest) -> Json:
    """Keep how the teacher reads a cell."""
    found = read_cell_as(
        request.book,
        request.number("room"),
        request.number("night"),
        Reading(request.field("typed"), request.field("read")),
        code=request.field("code"),
        label=request.field("label"),
        now=request.app.now(),
        by=BY,
        saw=request.field("saw"),
    )
    tomorrow_ahead(request)
    read_as = request.field("read") if request.field("read") != request.field("typed") else None
    return Json({"judged": _judged(found), "readAs": read_as, "read": read_words(read_as)})


def close(request: PageRequest) -> Json:
    """Keep whether the grids of the class stand close together."""
    set_close(request.book, request.number("room"), close=request.field("close") == "yes")
    return Json({})


def history(request: PageRequest) -> Json:
    """Tell every writing of a cell, the last one first."""
    found = cell_history(
        request.book,
        request.number("room"),
        request.number("night"),
        request.query.get("code", ""),
        request.query.get("label", ""),
    )
    writings = [
        {"text": one.text, "when": one.written.astimezone().strftime("%d %B, %H:%M"), "by": one.by}
        for one in reversed(found)
    ]
    return Json({"writings": writings})


def read_words(read_as: str | None) -> str:
    """Return in words how a cell is read; nothing where it is read as it is typed.

    >>> read_words("3 1/2")
    'Read as 3 1/2.'
    """
    return "" if read_as is None else f"Read as {read_as}."


def _kept(
    request: PageRequest, kept: KeptCells, *, changes: Sequence[Change] = (), left: Sequence[str] = ()
) -> Json:
    """Tell what became of changes; a refused one by its place among them, for it may not be text."""
    texts = [*((change, change.text) for change in kept.kept), *kept.clashes]
    cells = cells_as(request.book, kept.page, ((change.code, change.problem, text) for change, text in texts))
    seen = [_cell(cell) for cell in cells]
    tomorrow_ahead(request)
    return Json(
        {
            "kept": seen[: len(kept.kept)],
            "clashes": seen[len(kept.kept) :],
            "refused": [
                {"at": changes.index(change), "why": why.encode(errors="replace").decode()}
                for change, why in kept.refused
            ],
            "left": left,
            "told": kept.told,
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


def _sent(typed: str, form: type[_T]) -> _T:
    """Return what a script sent. It is read loosely first: half a character is refused by its cell alone."""
    try:
        return msgspec.convert(json.loads(typed), type=form)
    except (ValueError, RecursionError) as error:
        raise InputError(
            "These cells cannot be read", remedy="Load the page again; what shows as kept is kept."
        ) from error
