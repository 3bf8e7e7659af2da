"""A pasted table without a browser: looked at, asked about, kept, taken back, by the forms of the pages."""

import re
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import room, set_night, start_room
from onewhole.desk.marking.grid import grid
from onewhole.store.classes import name_pupil
from onewhole.web.jobs import Jobs
from tests.kit.doors import NOW, Answer, Clock, Opened, opened
from tests.kit.forms import Form, form_to
from tests.kit.marking_book import SHEET
from tests.kit.workbooks import workbook

PLACE = "/mine/1/night/1/marking"
PASTE, KEEP, BACK = f"{PLACE}/paste", f"{PLACE}/paste/keep", f"{PLACE}/paste/back"


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """Room 12 with three pupils, one of them named, and a night of four problems."""
    with opened(tmp_path, Clock()) as made:
        book = made.door.books["mine"]
        start_room(book, "Room 12", 3, NOW)
        name_pupil(book, 1, "K02", "Lin Park")
        set_night(book, 1, SHEET, date(2026, 9, 1), NOW)
        yield made


def _send(door: Opened, form: Form, **said: str) -> Answer:
    fields = {f"say-{key.replace('_', ':')}": value for key, value in said.items()}
    return door.post(form.action, **dict(form.filled(**fields)))


def _texts(door: Opened) -> dict[str, list[str]]:
    return {
        row.pupil.code: [cell.text for cell in row.cells] for row in grid(door.door.books["mine"], 1, 1).rows
    }


def _words(page: str) -> str:
    return " ".join(re.sub(r"<[^>]+>", " ", page).split())


def test_a_table_is_looked_at_before_it_is_kept(door: Opened) -> None:
    """An unknown code is placed, left out or added by a choice; nothing is kept before, all of it after."""
    shown = door.post(PASTE, text="Code\t1\t2\nK01\t4 7/8\t3 2/6\nK99\t5\t6\nLin Park\tsmudge\t4\n")
    assert "2 pupils × 2 problems ; 1 not in this class: K99; 1 cell that cannot be read" in _words(
        shown.text
    )
    assert _texts(door) == {code: [""] * 4 for code in ("K01", "K02", "K03")}
    again = _send(door, form_to(shown.text, PASTE), row_2="add")
    assert "3 pupils × 2 problems" in _words(again.text)
    assert _send(door, form_to(again.text, KEEP)).status == 303
    assert _texts(door) == {
        "K01": ["4 7/8", "3 2/6", "", ""],
        "K02": ["smudge", "4", "", ""],
        "K03": [""] * 4,
        "K04": ["5", "6", "", ""],
    }
    assert room(door.door.books["mine"], 1).pupil("K04").name == "K99"


def test_a_form_sent_with_a_question_open_keeps_nothing(door: Opened) -> None:
    """Whoever skips the look is shown it."""
    shown = door.post(PASTE, text="Code\t1\nK01\t4 7/8\nK99\t5\n")
    form = form_to(shown.text, PASTE)
    form.action = KEEP
    came = _send(door, form)
    assert (came.status, "K99" in came.text) == (200, True)
    assert _texts(door)["K01"] == [""] * 4


def test_a_paste_is_taken_back_after_the_window_was_closed(door: Opened) -> None:
    """Every cell is as it was; what was typed since stays and is told; the older paste can still go too."""
    door.post(f"{PLACE}/keep", cells='[["K01", "1", "9", ""]]')
    first = _send(
        door, form_to(door.post(PASTE, text="\t1\t2\nK01\t8\t7\nK02\t6\t5\n").text, PASTE), over="replace"
    )
    assert _send(door, form_to(first.text, KEEP)).status == 303
    second = _send(door, form_to(door.post(PASTE, text="\t2\nK02\t55\n").text, PASTE), over="replace")
    assert _send(door, form_to(second.text, KEEP)).status == 303
    door.post(f"{PLACE}/keep", cells='[["K02", "1", "66", "6"]]')
    assert "2 answers pasted 01 September" in _words(door.get(PLACE).text)
    told = _send(door, form_to(door.get(PLACE).text, BACK, paste="2"))
    assert "1 cell is as before the paste." in _words(told.text)
    assert _texts(door)["K02"] == ["66", "5", "", ""]
    told = _send(door, form_to(door.get(PLACE).text, BACK, paste="1"))
    assert "3 cells are as before the paste." in _words(told.text)
    assert "1 cell is not taken back, for something was written there since: K02 Lin Park, 1." in _words(
        told.text
    )
    assert (_texts(door)["K01"], _texts(door)["K02"]) == (["9", "", "", ""], ["66", "", "", ""])
    assert BACK not in door.get(PLACE).text
    assert door.post(BACK, paste="7").status == 422


def test_children_who_came_with_a_paste_are_named_when_it_is_taken_back(door: Opened) -> None:
    """Those of whom nothing is written any more, with the way out; who has anything else is not named."""
    table = "Code\t1\t2\nK01\t4 7/8\t3 2/6\nKim\t5\t6\nSal\t5\t6\n"
    door.post(f"{PLACE}/keep", cells='[["K01", "3", "9", ""]]')
    again = _send(door, form_to(door.post(PASTE, text=table).text, PASTE), row_2="add", row_3="add")
    assert _send(door, form_to(again.text, KEEP)).status == 303
    door.post(f"{PLACE}/keep", cells='[["K05", "4", "1/2", ""]]')
    told = _send(door, form_to(door.get(PLACE).text, BACK, paste="1"))
    assert "Nothing is written of this child now" in told.text
    assert re.findall(r'href="(/mine/1/pupil/[^"]*/erase)"', told.text) == ["/mine/1/pupil/K04/erase"]
    assert "Nothing is written of" not in door.get(PLACE).text


def test_tomorrow_is_worked_out_as_soon_as_a_table_is_kept(
    door: Opened, monkeypatch: pytest.MonkeyPatch
) -> None:
    """And not before; what is typed cell by cell waits until typing rests."""
    ahead = list[str]()

    def noted(name: str) -> Callable[..., None]:
        def note(_jobs: Jobs, what: str, _run: object) -> None:
            if what.endswith("morning"):
                ahead.append(f"{name} {what}")

        return note

    for name in ("prefetch", "prefetch_when_quiet"):
        monkeypatch.setattr(Jobs, name, noted(name))
    shown = door.post(PASTE, text="Code\t1\nK01\t4 7/8\n")
    assert ahead == []
    assert _send(door, form_to(shown.text, KEEP)).status == 303
    assert ahead == ["prefetch mine 1 morning"]
    door.post(f"{PLACE}/keep", cells='[["K02", "1", "9", ""]]')
    assert ahead[1:] == ["prefetch_when_quiet mine 1 morning"]


def test_close_together_is_remembered_for_the_class(door: Opened) -> None:
    """A small grid stands wide by itself, until somebody chooses; another class has its own."""
    book = door.door.books["mine"]
    start_room(book, "Room 13", 3, NOW)
    set_night(book, 2, SHEET, date(2026, 9, 1), NOW)
    others = "/mine/2/night/2/marking"
    checked = re.compile(r'id="close"[^>]* checked')
    for said, place, close in (("yes", PLACE, True), ("", PLACE, False), ("yes", others, True)):
        assert door.post(f"{place}/close", close=said).status == 200
        assert bool(checked.search(door.get(place).text)) == close
    assert not checked.search(door.get(PLACE).text)


def test_what_stands_in_a_cell_is_not_written_over_unasked(door: Opened) -> None:
    """It is asked which counts, and both ways are open."""
    door.post(f"{PLACE}/keep", cells='[["K01", "1", "9", ""], ["K02", "1", "6", ""]]')
    shown = door.post(PASTE, text="\t1\nK01\t8\nK02\t6\nK03\t5\n")
    assert "K01, 1: 9 → 8" in shown.text
    assert "1 cell has its answer already" in _words(shown.text)
    left = _send(door, form_to(shown.text, PASTE), over="leave")
    assert "Keep 1 answer" in left.text
    assert _send(door, form_to(left.text, KEEP)).status == 303
    assert [row[0] for row in _texts(door).values()] == ["9", "6", "5"]


def test_a_date_stays_as_it_stands_and_is_read_as_was_said(door: Opened) -> None:
    """The cell keeps the date; how it is read is kept beside it."""
    shown = door.post(PASTE, text="\t1\nK01\t8-Mar\n")
    again = _send(door, form_to(shown.text, PASTE), dates="likeliest")
    assert _send(door, form_to(again.text, KEEP)).status == 303
    cell = grid(door.door.books["mine"], 1, 1).rows[0].cells[0]
    assert (cell.text, cell.read_as) == ("8-Mar", "3/8")


def test_a_workbook_is_taken_from_the_page(door: Opened) -> None:
    """The file goes with the form, and the table travels on with it; a file that is none is refused."""
    content = workbook([["Name", 1, 2], ["Lin Park", (3.5, "# ?/6"), "4"], ["K03", (3.5, "# ?/?"), "5"]])
    form = form_to(door.get(PASTE).text, PASTE)
    data = dict(form.filled())

    def send(sent: bytes) -> str:
        came = door.client.post(PASTE, data=data, files={"file": ("a.xlsx", sent)}, headers=door.origin)
        assert came.status_code == (200 if sent is content else 422)
        return came.text

    assert "no workbook" in send(b"PK\3\4" + bytes(100))
    assert "no table" in send(b"\0\1\2" * 100)
    shown = send(content)
    assert "The sheet shows these fractions in lowest terms" in shown
    again = _send(door, form_to(shown, PASTE), reduced="other")
    assert _send(door, form_to(again.text, KEEP)).status == 303
    assert (_texts(door)["K02"][:2], _texts(door)["K03"][:2]) == (["3 3/6", "4"], ["3 4/8", "5"])


@pytest.mark.parametrize(
    ("fields", "told"),
    [
        ({"text": ""}, "There is nothing in this block"),
        ({"text": "\t\n \n"}, "There is nothing in this block"),
        ({"text": "x\t" * 200_000}, "200000 are taken at once"),
        ({"table": "[["}, "did not come through whole"),
        (
            {"table": '{"rows":[[["a","nonsense"]]],"sheet":"","others":[],"formulas":0}'},
            "did not come through whole",
        ),
    ],
    ids=["nothing", "blanks", "too long", "no JSON", "no kind"],
)
def test_what_is_no_table_is_refused(door: Opened, fields: dict[str, str], told: str) -> None:
    """With words, and nothing is kept."""
    came = door.post(PASTE, **fields)
    assert (came.status, told in came.text) == (422, True)


def test_hostile_cells_end_as_text(door: Opened) -> None:
    """In questions, in the preview and in the field that carries the table."""
    shown = door.post(PASTE, text='<b>x</b>"\t1\nK01\t<script>fly()</script>\n<img src=x>\t{{ 7 * 7 }}\n')
    assert shown.status == 200
    assert "<script>fly" not in shown.text
    assert "<img src=x" not in shown.text
    assert "{{ 7 * 7 }}" in shown.text
