"""A table of answers on its way to the grid: handed in, looked at, asked about, kept, taken back."""

from onewhole.desk.classes.class_records import night_page
from onewhole.desk.classes.score_tables import XLSX
from onewhole.desk.exchange.blank_workbook import workbook_of_night
from onewhole.desk.marking.handed_table import (
    LARGEST,
    HandedTable,
    table_in_file,
    table_sent,
    table_to_send,
    table_typed,
)
from onewhole.desk.marking.pastes import take_back
from onewhole.desk.marking.pasting import KeptTable, LaidTable, keep_table, lay_table
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Content, HtmlPage, Redirect
from onewhole.web.pages import marking
from onewhole.web.pages.ahead import tomorrow_ahead

#: What begins the name of a field with an answer to a question; its key follows.
SAYS = "say-"
#: Bytes that a table takes at most, with the answers to what is asked about it.
MOST = LARGEST + marking.MOST


def ask(request: PageRequest) -> HtmlPage:
    """Show where a table is pasted or a file is chosen."""
    page = night_page(request.book, request.number("room"), request.number("night"))
    return HtmlPage("paste.html", {"page": page, "most": LARGEST // 1_000_000})


def workbook(request: PageRequest) -> Content:
    """Give a workbook to type the answers of the night into."""
    room, night = request.number("room"), request.number("night")
    made = workbook_of_night(request.book, room, night, request.app.now())
    return Content(made, XLSX, f"answers-{night_page(request.book, room, night).night.day}.xlsx")


def show(request: PageRequest) -> HtmlPage:
    """Show what would be kept of a table and ask what is not sure; nothing is kept."""
    laid = lay_table(
        request.book,
        request.number("room"),
        request.number("night"),
        _handed(request),
        _decided(request),
        code=request.field("code", ""),
        label=request.field("label", ""),
    )
    return _shown(request, laid)


def keep(request: PageRequest) -> HtmlPage | Redirect:
    """Keep a table that was looked at; where something is still open, show it again."""
    found = keep_table(
        request.book,
        request.number("room"),
        request.number("night"),
        _handed(request),
        _decided(request),
        code=request.field("code", ""),
        label=request.field("label", ""),
        saw=request.field("saw"),
        now=request.app.now(),
        by=marking.BY,
    )
    if isinstance(found, KeptTable):
        tomorrow_ahead(request, whole=True)
    match found:
        case KeptTable(refused=()):
            return Redirect(request.at("marking.look"))
        case KeptTable():
            told = [f"{code}, {label}: {why}" for code, label, why in found.refused]
            return marking.shown(request, ["Not all of this paste could be kept.", *told])
        case LaidTable():
            return _shown(request, found)


def back(request: PageRequest) -> HtmlPage:
    """Take a paste back; what was written since stays and is told."""
    number = request.count("paste", 1, 999_999)
    found = take_back(
        request.book, request.number("room"), request.number("night"), number, now=request.app.now()
    )
    told = [f"{_cells(found.cells)} as before the paste."]
    if found.stay:
        shown = "; ".join(found.stay[:10]) + ("; and more" if len(found.stay) > 10 else "")
        told.append(
            f"{_cells(len(found.stay))} not taken back, for something was written there since: {shown}."
        )
    left = [(code, request.room.shown(code)) for code in found.left]
    return marking.shown(request, told, left)


def _cells(count: int) -> str:
    return "1 cell is" if count == 1 else f"{count} cells are"


def _handed(request: PageRequest) -> HandedTable:
    """Return the table of a form: one that was looked at already, a file, or a pasted text."""
    if sent := request.field("table", ""):
        return table_sent(sent)
    file = request.files.get("file")
    if file is not None and (file.content or file.name):
        return table_in_file(file.content, file.name)
    text = request.field("text", "")
    if not text.strip():
        raise InputError("There is nothing in this block", remedy="Paste the answers, or choose a file.")
    return table_typed(text)


def _decided(request: PageRequest) -> dict[str, str]:
    return {
        name.removeprefix(SAYS): value
        for name, value in request.form_items
        if name.startswith(SAYS) and value
    }


def _shown(request: PageRequest, laid: LaidTable) -> HtmlPage:
    answers = {(one.code, one.label): one for one in laid.placing.cells}
    written = {(one.code, one.label) for one in laid.cells}
    codes = list(dict.fromkeys(one.code for one in laid.placing.cells))
    order = {pupil.code: at for at, pupil in enumerate(laid.room.pupils)}
    added = dict(laid.placing.added)
    words: dict[str, object] = {
        "page": laid.page,
        "laid": laid,
        "says": SAYS,
        "table": table_to_send(laid.handed),
        "code": request.field("code", ""),
        "label": request.field("label", ""),
        "answers": answers,
        "written": written,
        "unreadable": {(one.code, one.label) for one in laid.placing.unreadable},
        "codes": sorted(codes, key=lambda code: order.get(code, len(order))),
        "called": {
            **{pupil.code: laid.room.shown(pupil.code) for pupil in laid.room.pupils},
            **added,
        },
        "labels": [label for label in laid.page.labels if any(label == one for _, one in answers)],
    }
    return HtmlPage("pasted.html", words)
