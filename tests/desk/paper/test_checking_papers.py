"""Cells are looked at one after another: what a person says is the answer, and can be taken back."""

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.paper.checking_papers import (
    cell_picture,
    check_cell,
    papers_to_check,
    spot_checked,
    uncheck_cell,
)
from onewhole.desk.paper.keep_papers import keep_seen_papers
from onewhole.desk.paper.paper_wishes import paper_wishes
from onewhole.desk.paper.wish_papers import set_paper_wishes
from onewhole.errors import InputError
from onewhole.marking.paper.ink_reading import InkReading
from onewhole.marking.paper.sureness import Sureness
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.marking.reading.mark import Verdict
from onewhole.store.answers import KeptAnswer, answers_of, history_of
from onewhole.store.opening import Store
from onewhole.store.paper_cells import CellState, paper_cells_of
from onewhole.store.refusals import NotThere
from tests.kit.answers import all_right, page
from tests.kit.kept import NOW, keep_answer
from tests.kit.paper_cells import CROP
from tests.kit.seen_papers import paper_class, row, seen, sure, unsure

RIGHT = all_right(page())
KEY = ("K01", "2")


def _says(doubt: int) -> InkReading:
    """Return a picture of an answer that nobody expects, with so much doubt."""
    return InkReading((("8 7/9", 1_000_000 - doubt),), 0, 0)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of three; K01's paper is read, and three of its cells wait."""
    made = paper_class(tmp_path / "room12.class")
    cells = {
        **row(RIGHT),
        "2": unsure("3 5/8", "3 6/8", "8 5/8"),
        "3": InkReading((("9", 800_000),), 0, 0),
        "4": InkReading((), 0, 1_000_000),
    }
    keep_seen_papers(made, 1, 1, seen({"K01": cells}), now=NOW)
    yield made
    made.close()


def _answer(book: Store, key: tuple[str, str] = KEY) -> tuple[str, str]:
    return next(
        ((one.text, one.by) for one in answers_of(book, 1) if (one.code, one.problem) == key), ("", "")
    )


def test_the_largest_doubt_comes_first(book: Store) -> None:
    """With the problem as typed, the likeliest readings, and why it is shown."""
    waits = papers_to_check(book, 1, 1)
    assert [one.label for one in waits.open] == ["4", "2", "3"]
    assert (waits.read, waits.empty, waits.checked, waits.done) == (9, 0, 0, False)
    shown = waits.open[1]
    assert (shown.shown, shown.problem, shown.text) == ("K01", "6 7/8 - 3 2/8", "3 5/8")
    assert shown.choices == ("3 5/8", "3 6/8", "8 5/8")
    assert shown.why is PaperWhy.DOUBTFUL
    assert waits.open[0].why is PaperWhy.NO_ANSWER
    assert cell_picture(book, 1, 1, *KEY) == CROP
    with pytest.raises(NotThere):
        cell_picture(book, 1, 1, "K02", "1")


def test_what_a_person_says_is_the_answer(book: Store) -> None:
    """By the person's name beside the reading's; the next one comes with it; nothing is an answer too."""
    checked = check_cell(book, 1, 1, ("K01", "4"), "2 3/4", now=NOW, saw="")
    assert checked.judged.verdict is Verdict.RIGHT
    assert (checked.next and checked.next.label, checked.left) == ("2", 2)
    assert _answer(book, ("K01", "4")) == ("2 3/4", "paper 1, checked")
    assert check_cell(book, 1, 1, KEY, "", now=NOW, saw="").left == 1
    assert _answer(book) == ("", "")
    assert papers_to_check(book, 1, 1).cells[KEY].state is CellState.CHECKED
    assert check_cell(book, 1, 1, ("K01", "3"), "2 2/3", now=NOW, saw="").next is None


def test_a_sure_reading_that_a_person_confirms_is_the_person_s(book: Store) -> None:
    """Who read it is kept also where the text stays the same."""
    check_cell(book, 1, 1, ("K01", "1"), RIGHT[0], now=NOW, saw=RIGHT[0])
    assert _answer(book, ("K01", "1")) == (RIGHT[0], "paper 1, checked")
    assert [one.by for one in history_of(book, 1, "K01", "1")] == ["paper 1", "paper 1, checked"]


def test_a_stale_window_is_told(book: Store) -> None:
    """Two windows check one cell: the second is told what stands, unless it says the same."""
    check_cell(book, 1, 1, KEY, "3 5/8", now=NOW, saw="")
    with pytest.raises(ChangedMeanwhile, match="“3 5/8”"):
        check_cell(book, 1, 1, KEY, "3 6/8", now=NOW, saw="")
    assert check_cell(book, 1, 1, KEY, "3 5/8", now=NOW, saw="").left == 2
    check_cell(book, 1, 1, KEY, "3 6/8", now=NOW, saw="3 5/8")
    with pytest.raises(ChangedMeanwhile):
        uncheck_cell(book, 1, 1, KEY, now=NOW, saw="3 5/8")
    keep_answer(book, KeptAnswer(1, "K01", "3", "typed", NOW, "teacher"))
    with pytest.raises(ChangedMeanwhile, match="“typed”"):
        check_cell(book, 1, 1, ("K01", "3"), "9", now=NOW, saw="")
    assert _answer(book) == ("3 6/8", "paper 1, checked")


@pytest.mark.parametrize("text", ["x" * 201, "3\x07", "\ud800"])
def test_what_no_cell_holds_is_refused(book: Store, text: str) -> None:
    """Too long, a sign that nobody sees, half a character: nothing is kept."""
    with pytest.raises(InputError):
        check_cell(book, 1, 1, KEY, text, now=NOW)
    with pytest.raises(InputError):
        spot_checked(book, 1, 1, [("K01", "1")], {("K01", "1"): text}, now=NOW)
    for key in (("K02", "1"), ("K01", "99")):
        with pytest.raises(NotThere):
            check_cell(book, 1, 1, key, "3", now=NOW)
        with pytest.raises(NotThere):
            uncheck_cell(book, 1, 1, key, now=NOW)
    assert papers_to_check(book, 1, 1).checked == 0


def test_a_check_is_taken_back(book: Store) -> None:
    """An unsure cell waits again without an answer; a sure one stands again as the program read it."""
    check_cell(book, 1, 1, KEY, "9", now=NOW)
    check_cell(book, 1, 1, KEY, "8", now=NOW)
    assert uncheck_cell(book, 1, 1, KEY, now=NOW, saw="8").state is CellState.OPEN
    assert _answer(book)[0] == ""
    check_cell(book, 1, 1, ("K01", "1"), "8", now=NOW)
    assert uncheck_cell(book, 1, 1, ("K01", "1"), now=NOW).state is CellState.TAKEN
    assert _answer(book, ("K01", "1")) == (RIGHT[0], "paper 1")
    assert uncheck_cell(book, 1, 1, ("K01", "1"), now=NOW).state is CellState.TAKEN


def test_what_was_typed_before_a_check_comes_back_with_it(book: Store) -> None:
    """Nothing that a person typed is lost by taking back; what was typed after the check stays."""
    keep_answer(book, KeptAnswer(1, "K02", "1", "3", NOW, "teacher"))
    keep_seen_papers(book, 1, 1, seen({"K02": {"1": sure("3 3/6")}}), now=NOW)
    check_cell(book, 1, 1, ("K02", "1"), "3 3/6", now=NOW, saw="3")
    uncheck_cell(book, 1, 1, ("K02", "1"), now=NOW)
    assert _answer(book, ("K02", "1")) == ("3", "teacher")
    check_cell(book, 1, 1, ("K02", "1"), "3 3/6", now=NOW)
    keep_answer(book, KeptAnswer(1, "K02", "1", "4", NOW, "teacher"))
    uncheck_cell(book, 1, 1, ("K02", "1"), now=NOW)
    assert _answer(book, ("K02", "1")) == ("4", "teacher")


def test_a_spot_check_without_a_wrong_one_changes_nothing_else(book: Store) -> None:
    """The ones that were looked at are a person's readings now, and are not shown again."""
    spot = [(one.code, one.label) for one in papers_to_check(book, 1, 1).spot]
    assert len(spot) == 9
    done = spot_checked(book, 1, 1, spot, {}, now=NOW)
    assert (done.wrong, done.raised, done.shown) == (0, None, 0)
    after = papers_to_check(book, 1, 1)
    assert (after.spot, after.checked, after.sureness) == ((), 9, Sureness.USUAL)
    assert len(after.open) == 3
    assert {one.by for one in answers_of(book, 1)} == {"paper 1, checked"}


def test_one_wrong_in_a_spot_check_raises_the_threshold(book: Store) -> None:
    """To the first at which it would not have been read, for the class and for the cells of this night."""
    odd = {"2": _says(10_000), "4": _says(9_000)}
    keep_seen_papers(book, 1, 1, seen({"K02": {**row(RIGHT), **odd}}), now=NOW)
    assert papers_to_check(book, 1, 1).cells["K02", "4"].state is CellState.TAKEN
    spot = [("K02", "2"), ("K01", "1"), ("K01", "2")]
    done = spot_checked(book, 1, 1, spot, {("K02", "2"): "3 5/8"}, now=NOW)
    assert (done.wrong, done.raised, done.shown) == (1, Sureness.MORE, 1)
    after = papers_to_check(book, 1, 1)
    assert paper_wishes(book, 1).sureness is after.sureness is Sureness.MORE
    assert after.cells["K02", "4"].why is PaperWhy.DOUBTFUL
    assert _answer(book, ("K02", "2")) == ("3 5/8", "paper 2, checked")
    assert _answer(book, ("K02", "4"))[0] == ""
    assert _answer(book, ("K01", "1")) == (RIGHT[0], "paper 1, checked")
    assert after.cells["K01", "2"].state is CellState.OPEN, "it was not read for sure: it is passed over"


def test_a_wrong_one_can_wait_with_the_others(book: Store) -> None:
    """Marked wrong and not typed: it is shown, its answer withdrawn; the surest of all shows every cell."""
    done = spot_checked(book, 1, 1, [("K01", "1")], {("K01", "1"): None}, now=NOW)
    assert (done.wrong, done.raised) == (1, Sureness.EVERY)
    after = papers_to_check(book, 1, 1)
    assert after.cells["K01", "1"].why is PaperWhy.SPOT_CHECK
    assert len(after.open) == 12
    assert not any(one.text for one in answers_of(book, 1))


def test_the_threshold_is_the_teacher_s_one_setting(book: Store) -> None:
    """Stricter: more waits, its answers are withdrawn. Looser: they stand again. Never what is checked."""
    check_cell(book, 1, 1, ("K01", "1"), RIGHT[0], now=NOW)
    before = {one.key: one.cell.verdict for one in paper_cells_of(book, 1)}
    set_paper_wishes(book, 1, Sureness.EVERY, learns=False, keeps=False, now=NOW)
    strict = {one.key: one.cell.verdict for one in paper_cells_of(book, 1) if one.key != ("K01", "1")}
    assert set(strict.values()) == {PaperVerdict.UNSURE}
    assert [one.text for one in answers_of(book, 1) if one.text] == [RIGHT[0]]
    set_paper_wishes(book, 1, Sureness.USUAL, learns=False, keeps=False, now=NOW)
    assert {one.key: one.cell.verdict for one in paper_cells_of(book, 1)} == before
    assert sum(bool(one.text) for one in answers_of(book, 1)) == 9
    with pytest.raises(ChangedMeanwhile):
        set_paper_wishes(book, 1, Sureness.FEW, learns=True, keeps=False, now=NOW, saw="something else")
    with pytest.raises(NotThere):
        set_paper_wishes(book, 9, Sureness.FEW, learns=True, keeps=False, now=NOW)


def test_what_is_typed_into_the_grid_after_reading_is_checked(book: Store) -> None:
    """Who types the answer of a cell that waits has looked at it; what was typed before has not."""
    keep_answer(book, KeptAnswer(1, "K01", "2", "3 5/8", NOW + timedelta(seconds=1), "teacher"))
    after = papers_to_check(book, 1, 1)
    assert after.cells[KEY].state is CellState.CHECKED
    assert [one.label for one in after.open] == ["4", "3"]
    set_paper_wishes(book, 1, Sureness.EVERY, learns=False, keeps=False, now=NOW)
    assert _answer(book) == ("3 5/8", "teacher")
