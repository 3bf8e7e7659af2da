"""Pictures of cells go once they are checked; a reading is taken back; what was confirmed is learnt."""

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import set_night
from onewhole.desk.keep.backups import back_up_daily, backups_folder, erase_everywhere
from onewhole.desk.keep.deleting import erase_class
from onewhole.desk.paper.checking_papers import check_cell, papers_to_check
from onewhole.desk.paper.clearing_papers import KEPT_FOR, finish_papers, sweep_papers, take_back_papers
from onewhole.desk.paper.keep_papers import keep_seen_papers, read_papers
from onewhole.desk.paper.paper_by import PaperReading, reading_of
from onewhole.desk.paper.paper_wishes import PaperWishes, paper_wishes, wishes_text
from onewhole.desk.paper.wish_papers import set_paper_wishes
from onewhole.errors import InputError
from onewhole.marking.paper.calibration import Calibration
from onewhole.marking.paper.sureness import Sureness
from onewhole.store.answers import KeptAnswer, answers_of
from onewhole.store.backups import backups_of
from onewhole.store.keeping import settle
from onewhole.store.nights import change_day
from onewhole.store.opening import Store, open_store
from onewhole.store.paper_cells import nights_with_paper, paper_cells_of
from onewhole.store.settings import set_setting
from tests.kit.answers import all_right, page
from tests.kit.kept import DAY, NOW, keep_answer
from tests.kit.seen_papers import TYPED, Sees, paper_class, row, seen, sure, unsure

RIGHT = all_right(page())
#: A picture whose bytes are told from all others.
PICTURE = b"\x89PNG the hand of one child, told from all others"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of three; two papers are read, one cell waits; a backup of today has it all."""
    made = paper_class(tmp_path / "room12.class")
    cells = {"K01": {**row(RIGHT), "2": unsure("3 5/8", "3 6/8")}, "K02": row(RIGHT)}
    keep_seen_papers(made, 1, 1, seen(cells, crop=PICTURE), now=NOW)
    back_up_daily(made, backups_folder(made.path), NOW)
    yield made
    made.close()


def _holding(folder: Path) -> set[str]:
    return {one.name for one in folder.rglob("*") if one.is_file() and PICTURE in one.read_bytes()}


def test_pictures_go_once_all_is_looked_at(book: Store) -> None:
    """From the file, its log and the backups; who read what stays beside each answer."""
    folder = book.path.parent
    assert finish_papers(book, 1, 1).left == 1
    assert len(_holding(folder)) >= 2
    check_cell(book, 1, 1, ("K01", "2"), "3 5/8", now=NOW)
    assert finish_papers(book, 1, 1).cleared == 24
    assert _holding(folder) == set()
    assert paper_cells_of(book, 1) == ()
    by = {reading_of(one.by) for one in answers_of(book, 1)}
    assert by == {PaperReading(1), PaperReading(1, checked=True)}
    assert finish_papers(book, 1, 1).cleared == 0
    (saved,) = backups_of(book.path)
    copy = open_store(saved.path)
    assert len(answers_of(copy, 1)) == 23
    copy.close()


def test_another_night_of_the_same_number_keeps_its_pictures(book: Store) -> None:
    """In a backup that was made before another one was brought back, a number may mean another night."""
    (saved,) = backups_of(book.path)
    copy = open_store(saved.path)
    change_day(copy, 1, DAY + timedelta(days=1))
    settle(copy)
    check_cell(book, 1, 1, ("K01", "2"), "3 5/8", now=NOW)
    assert finish_papers(book, 1, 1).cleared == 24
    assert _holding(book.path.parent) == {saved.path.name}


def test_pictures_stay_where_the_teacher_wishes(book: Store) -> None:
    """Until the night is deleted, or the wish is another one."""
    set_paper_wishes(book, 1, Sureness.USUAL, learns=False, keeps=True, now=NOW)
    check_cell(book, 1, 1, ("K01", "2"), "3 5/8", now=NOW)
    assert finish_papers(book, 1, 1).stays
    assert nights_with_paper(book, 1) == {1: 24}
    set_paper_wishes(book, 1, Sureness.USUAL, learns=False, keeps=False, now=NOW)
    assert finish_papers(book, 1, 1).cleared == 24


def test_pictures_that_nobody_looks_at_go_after_thirty_days(book: Store) -> None:
    """Not a second earlier; out of the backups too, and of what waited nothing becomes an answer."""
    assert timedelta(days=30) == KEPT_FOR
    before = answers_of(book, 1)
    assert sweep_papers(book, now=NOW + KEPT_FOR - timedelta(seconds=1)) == 0
    assert len(_holding(book.path.parent)) >= 2
    assert sweep_papers(book, now=NOW + KEPT_FOR) == 1
    assert _holding(book.path.parent) == set()
    assert answers_of(book, 1) == before
    assert sweep_papers(book, now=NOW + KEPT_FOR) == 0


def test_old_pictures_stay_where_the_teacher_wishes_and_while_papers_still_come(book: Store) -> None:
    """The 30 days begin anew with each reading of the night's papers."""
    keep_seen_papers(book, 1, 1, seen({"K03": row(RIGHT)}), now=NOW + timedelta(days=1))
    assert sweep_papers(book, now=NOW + KEPT_FOR) == 0
    set_paper_wishes(book, 1, Sureness.USUAL, learns=False, keeps=True, now=NOW)
    assert sweep_papers(book, now=NOW + timedelta(days=300)) == 0
    assert nights_with_paper(book, 1) == {1: 36}


def test_old_pictures_of_one_night_go_when_papers_of_another_are_read(book: Store) -> None:
    """Also where a cell of the old night still waits."""
    set_night(book, 1, TYPED, DAY + timedelta(days=40), NOW)
    papers = Sees(seen({"K02": row(RIGHT)}))
    read_papers(book, 1, 2, [("one.jpg", b"")], papers, now=NOW + timedelta(days=40))
    assert nights_with_paper(book, 1) == {2: 12}


def test_erasing_a_child_leaves_no_picture(book: Store) -> None:
    """Neither in the file nor in a backup nor beside them, while cells still wait; the other child's stay."""
    erase_everywhere(book, 1, "K01")
    assert {one.code for one in paper_cells_of(book, 1)} == {"K02"}
    erase_everywhere(book, 1, "K02")
    assert _holding(book.path.parent) == set()


def test_erasing_the_class_leaves_no_picture_and_nothing_learnt(book: Store) -> None:
    """Also what was learnt goes with it."""
    set_paper_wishes(book, 1, Sureness.FEW, learns=True, keeps=False, now=NOW)
    erase_class(book, 1)
    assert _holding(book.path.parent) == set()
    assert paper_wishes(book, 1) == PaperWishes()


def test_a_reading_is_taken_back(book: Store) -> None:
    """Its answers and pictures go; what a person checked or typed since stays, and is told."""
    keep_answer(book, KeptAnswer(1, "K02", "1", "typed since", NOW, "teacher"))
    check_cell(book, 1, 1, ("K01", "2"), "3 5/8", now=NOW)
    back = take_back_papers(book, 1, 1, 1, now=NOW)
    assert (back.cells, back.stay) == (22, ("K01, 2", "K02, 1"))
    assert {(one.problem, one.text) for one in answers_of(book, 1) if one.text} == {
        ("1", "typed since"),
        ("2", "3 5/8"),
    }
    assert [one.key for one in paper_cells_of(book, 1)] == [("K01", "2")]
    with pytest.raises(InputError, match="no such reading"):
        take_back_papers(book, 1, 1, 7, now=NOW)


def test_what_stood_before_a_reading_comes_back(book: Store) -> None:
    """A later reading over an earlier one gives the earlier one's answer back."""
    keep_seen_papers(book, 1, 1, seen({"K02": {"1": sure("9 1/2"), "5": sure("")}}), now=NOW)
    assert take_back_papers(book, 1, 1, 2, now=NOW).cells == 2
    texts = {one.problem: (one.text, one.by) for one in answers_of(book, 1) if one.code == "K02"}
    assert (texts["1"], texts["5"]) == ((RIGHT[0], "paper 1"), (RIGHT[4], "paper 1"))


def test_what_is_confirmed_is_learnt_once_and_only_on_wish(book: Store) -> None:
    """Counts by doubt and nothing else; who does not want it any more has them forgotten."""
    check_cell(book, 1, 1, ("K01", "2"), "9", now=NOW)
    set_paper_wishes(book, 1, Sureness.USUAL, learns=True, keeps=True, now=NOW)
    for _ in range(2):
        assert finish_papers(book, 1, 1).stays
        learnt = paper_wishes(book, 1).learnt
        assert [sum(getattr(band, of) for band in learnt.bands) for of in ("came", "looked_at", "wrong")] == [
            24,
            1,
            1,
        ]
    assert (
        set_paper_wishes(book, 1, Sureness.USUAL, learns=False, keeps=True, now=NOW).learnt == Calibration()
    )
    assert papers_to_check(book, 1, 1).done is False, "the spot check is still to be done"


@pytest.mark.parametrize("text", ["", "{", "[]", '{"sureness": "sure"}', '{"learnt": {"bands": []}}'])
def test_wishes_that_cannot_be_read_are_the_usual_ones(book: Store, text: str) -> None:
    """A damaged setting is in nobody's way."""
    set_setting(book, "papers of class 1", text)
    assert paper_wishes(book, 1) == PaperWishes()


def test_wishes_are_told_in_words() -> None:
    """What the setting means, and what else is wished."""
    assert wishes_text(PaperWishes(Sureness.MOST, learns=True, keeps=True)) == (
        "Of the answers that are read without a look, about 1 in 1000 may be wrong; learns from what is "
        "confirmed; keeps the pictures of cells"
    )
