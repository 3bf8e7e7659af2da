"""The grid of a night: what is kept is what was typed, and nothing is overwritten unseen."""

from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import NotThere, Store, standing_answers
from onewhole.desk.classes.pupil_codes import codes_typed
from onewhole.desk.marking.cells import MOST_CELLS, Change, KeptCells, keep_cells, keep_column, read_cell_as
from onewhole.desk.marking.grid import cell_history, grid
from onewhole.desk.marking.mark import mark_sheet
from onewhole.desk.marking.readings import Reading
from onewhole.desk.marking.verdicts import judged
from onewhole.errors import InputError
from onewhole.marking.reading.class_answers import read_texts
from onewhole.marking.reading.mark import Verdict
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.classes import name_pupil
from onewhole.store.correction_rows import (
    word_of,
)
from onewhole.store.corrections import Correction, keep_correction
from onewhole.store.refusals import NotStorable
from tests.kit.marking_book import NOW, book_with_night


def keep(book: Store, *changes: Change, minutes: int = 0) -> KeptCells:
    """Keep cells of the first night of the first class."""
    return keep_cells(book, 1, 1, changes, now=NOW + timedelta(minutes=minutes), by="teacher")


def texts(book: Store) -> dict[tuple[str, str], str]:
    """Every cell that is not empty, as it stands on the disk."""
    return {
        (cell.code, cell.label): cell.text for row in grid(book, 1, 1).rows for cell in row.cells if cell.text
    }


def test_right_of_tried_is_counted_by_pupil_and_by_problem(tmp_path: Path) -> None:
    """Another form is the right amount; what is blank was not tried, and what cannot be read was."""
    with book_with_night(tmp_path) as (book, _, _page):
        wrote = (("K01", "1", "39/8"), ("K01", "2", "3"), ("K01", "4", "-"), ("K03", "1", "two feet"))
        keep(book, *(Change(*one) for one in wrote))
        found = grid(book, 1, 1)
        assert [row.right_of_tried for row in found.rows] == ["1 of 2", "0 of 0", "0 of 1"]
        assert found.right_of_tried == ("1 of 2", "0 of 1", "0 of 0", "0 of 0")


def test_the_grid_is_what_was_typed_judged(tmp_path: Path) -> None:
    """Rows are pupils, columns problems, every cell exactly as typed with its judgement."""
    with book_with_night(tmp_path) as (book, _, page):
        keep(book, Change("K01", "1", " 5 7/8 "), Change("K03", "4", "two feet"))
        found = grid(book, 1, 1)
        assert [column.label for column in found.columns] == ["1", "2", "3", "4"]
        assert [column.right for column in found.columns] == ["4 7/8", "3 2/6", ">", "2 ft 7 in"]
        assert [[cell.text for cell in row.cells] for row in found.rows] == [
            [" 5 7/8 ", "", "", ""],
            ["", "", "", ""],
            ["", "", "", "two feet"],
        ]
        assert found.rows[0].cells[0].judged == judged(page, "1", " 5 7/8 ")
        assert found.rows[2].cells[3].judged.verdict is Verdict.UNREADABLE


def test_a_cell_changed_in_another_window_is_told_and_left(tmp_path: Path) -> None:
    """The text that stands comes back with the one that was not kept; the others of the request are kept."""
    with book_with_night(tmp_path) as (book, _, page):
        keep(book, Change("K01", "1", "first", ""))
        mine, other = Change("K01", "1", "mine", ""), Change("K02", "1", "other", "")
        assert keep(book, mine, other) == KeptCells(page, (other,), ((mine, "first"),))
        assert texts(book) == {("K01", "1"): "first", ("K02", "1"): "other"}
        keep(book, Change("K01", "1", "mine", "first"))
        assert texts(book)["K01", "1"] == "mine"


def test_sent_twice_is_written_once(tmp_path: Path) -> None:
    """A save whose answer was lost may be sent again: it counts as kept, and the history has it once."""
    with book_with_night(tmp_path) as (book, _, page):
        change = Change("K01", "1", "4 7/8", "")
        assert keep(book, change) == keep(book, change) == KeptCells(page, (change,))
        keep(book, Change("K01", "1", "", "4 7/8"), minutes=2)
        found = cell_history(book, 1, 1, "K01", "1")
        assert [(one.text, one.written - NOW, one.by) for one in found] == [
            ("4 7/8", timedelta(0), "teacher"),
            ("", timedelta(minutes=2), "teacher"),
        ]
        assert texts(book) == {}


def test_what_cannot_be_kept_is_refused_by_itself(tmp_path: Path) -> None:
    """Too long, half a character, no such problem or pupil: each with words; the rest is kept."""
    with book_with_night(tmp_path) as (book, _, _):
        good = Change("K01", "1", "x" * 200)
        wrong = (
            Change("K01", "2", "x" * 201),
            Change("K01", "2", "\ud83d"),
            Change("K01", "9", "4"),
            Change("K77", "1", "4"),
        )
        found = keep(book, *wrong, good)
        assert (found.kept, found.clashes) == ((good,), ())
        assert [change for change, _ in found.refused] == list(wrong)
        said = [words for _, words in found.refused]
        assert said[0].startswith("This has 201 characters, and a cell holds 200.")
        assert ["cut in half" in said[1], "no problem “9”" in said[2], "no pupil “K77”" in said[3]] == [
            True
        ] * 3
        assert texts(book) == {("K01", "1"): "x" * 200}


def test_a_night_of_another_class_is_refused(tmp_path: Path) -> None:
    """And so are more cells than any class has."""
    with book_with_night(tmp_path) as (book, _, _):
        with pytest.raises(NotThere):
            keep_cells(book, 1, 2, [Change("K01", "1", "4")], now=NOW, by="teacher")
        with pytest.raises(InputError, match="too many"):
            keep(book, *[Change("K01", "1", "4")] * (MOST_CELLS + 1))
        assert texts(book) == {}


@pytest.mark.parametrize("sign", ["\0", "\x1b", "\x07", "\x7f", "\x9b"])
def test_a_sign_that_nobody_sees_is_refused_by_its_cell(tmp_path: Path, sign: str) -> None:
    """What a script sends is held to the rule that forms have; a tab and lines stay as typed."""
    with book_with_night(tmp_path) as (book, _, _):
        found = keep(book, Change("K01", "1", f"4{sign}"), Change("K02", "1", "4\t7/8\n= 3"))
        assert [change.code for change in found.kept] == ["K02"]
        ((change, words),) = found.refused
        assert (change.code, words) == (
            "K01",
            "A sign stands here that nobody can see. Type the answer again by hand.",
        )
        assert texts(book) == {("K02", "1"): "4\t7/8\n= 3"}


def test_a_column_is_right_for_everyone_except(tmp_path: Path) -> None:
    """Empty cells of the others are filled; what is typed stays, unless the teacher says over it."""
    with book_with_night(tmp_path, 4) as (book, _, _):
        keep(book, Change("K02", "2", "smudge"))
        found = keep_column(book, 1, 1, "2", ["K03"], now=NOW, by="teacher")
        assert [change.code for change in found.kept] == ["K01", "K04"]
        assert texts(book) == {("K01", "2"): "3 2/6", ("K02", "2"): "smudge", ("K04", "2"): "3 2/6"}
        keep_column(book, 1, 1, "2", ["K03"], now=NOW, by="teacher", over=True)
        assert texts(book) == {("K01", "2"): "3 2/6", ("K02", "2"): "3 2/6", ("K04", "2"): "3 2/6"}
        with pytest.raises(InputError, match="K09"):
            keep_column(book, 1, 1, "1", ["K09"], now=NOW, by="teacher")
        assert ("K01", "1") not in texts(book)


def test_pupils_are_meant_by_code_number_or_name(tmp_path: Path) -> None:
    """A word that means nobody, or two, refuses all of them."""
    with book_with_night(tmp_path, 11) as (book, _, _):
        for code, name in (("K01", "Ada Wren"), ("K02", "Ada Lark"), ("K03", "Noor")):
            name_pupil(book, 1, code, name)
        room = grid(book, 1, 1).room
        assert codes_typed(room, " k11; 4,K005 noor lark 3 ") == ("K11", "K04", "K05", "K03", "K02")
        assert codes_typed(room, "") == ()
        with pytest.raises(InputError, match="“ada”, “99”, “K”, “²”"):
            codes_typed(room, "ada 99 K ² 1")


def test_a_cell_is_read_as_the_teacher_reads_it(tmp_path: Path) -> None:
    """The grid and the marking take the reading; the cell stays as typed; another text is read afresh."""
    with book_with_night(tmp_path) as (book, room, page):
        keep(book, Change("K01", "1", "5 and 7 over 8?"))
        reading = Reading("5 and 7 over 8?", "5 7/8")
        seen = read_cell_as(book, 1, 1, reading, code="K01", label="1", now=NOW, by="teacher")
        assert [fit.id for fit in seen.fits] == ["A02", "A33"]
        cell = grid(book, 1, 1).rows[0].cells[0]
        assert (cell.text, cell.read_as, cell.judged) == ("5 and 7 over 8?", "5 7/8", seen)
        marks = (
            mark_sheet(
                WorkedSheet(page.sheet), read_texts(standing_answers(book, page, room), page.sheet.problems)
            )
            .marks.pupils[0]
            .marks
        )
        assert marks[0].patterns == ("A02", "A33")
        keep(book, Change("K01", "1", "4 7/8"))
        cell = grid(book, 1, 1).rows[0].cells[0]
        assert (cell.read_as, cell.judged.verdict) == (None, Verdict.RIGHT)


@pytest.mark.parametrize("plain", ["4 7/8", "5", "[4", ""])
def test_a_reading_kept_as_plain_words_is_of_any_text(tmp_path: Path, plain: str) -> None:
    """As files of the first release may hold it."""
    with book_with_night(tmp_path) as (book, _, page):
        keep(book, Change("K01", "1", "smudge"))
        keep_correction(book, Correction(1, "K01", word_of("1", "reading", plain), NOW, "teacher"))
        assert grid(book, 1, 1).rows[0].cells[0].judged == judged(page, "1", plain)


def test_a_reading_is_taken_back_by_the_text_itself(tmp_path: Path) -> None:
    """And one that cannot be read either, is too long or is of no problem, is refused."""
    with book_with_night(tmp_path) as (book, _, _):
        keep(book, Change("K01", "1", "smudge"))

        def read(text: str, label: str = "1") -> None:
            read_cell_as(book, 1, 1, Reading("smudge", text), code="K01", label=label, now=NOW, by="teacher")

        read("-")
        assert grid(book, 1, 1).rows[0].cells[0].judged.verdict is Verdict.BLANK
        read("smudge")
        assert grid(book, 1, 1).rows[0].cells[0].judged.verdict is Verdict.UNREADABLE
        for text, label in (("three", "1"), ("3" * 201, "1"), ("4", "9")):
            with pytest.raises(InputError):
                read(text, label)
        with pytest.raises(NotThere):
            read_cell_as(book, 1, 1, Reading("a", "4"), code="K09", label="1", now=NOW, by="teacher")
        with pytest.raises((InputError, NotStorable)):
            read("\ud83d")
        assert grid(book, 1, 1).rows[0].cells[0].read_as is None
