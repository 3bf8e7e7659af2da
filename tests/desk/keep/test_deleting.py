"""A night, a page, a class deleted with a backup made first; a class erased from the backups too."""

from collections.abc import Iterator
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import (
    NotThere,
    Store,
    night_pages,
    open_book,
    rooms,
    set_night,
    start_room,
)
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.keep.backups import back_up_daily, backups_folder, backups_of
from onewhole.desk.keep.deleting import (
    class_holding,
    delete_class,
    delete_night,
    delete_page,
    erase_class,
    holding_text,
    night_holding,
    sheet_holding,
)
from onewhole.desk.page.kept_pages import kept_pages
from onewhole.store.answers import KeptAnswer, answers_of
from onewhole.store.keeping import keep_until, set_keep_until
from tests.kit.kept import DAY, NOW, keep_answer

PAGE = "title: Kite tails\n\n1. 5 1/8 - 2 5/8\n2. 52 - 27"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two with one page set on two nights, an answer on each; today's backup is made."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    for later in (0, 1):
        page = set_night(made, 1, PAGE, DAY + timedelta(days=later), NOW)
        keep_answer(made, KeptAnswer(page.night.number, "K01", "1", f"4 {later}/8", NOW, "teacher"))
    back_up_daily(made, backups_folder(made.path), NOW)
    yield made
    made.close()


def _made_of(folder: Path, night: int) -> tuple[Path, Path]:
    """Lay what the program makes of a night: a link to a hidden folder, and a page in that."""
    hidden = folder / f".night-{night}.x1"
    hidden.mkdir(parents=True)
    (hidden / "walkthrough.mp4").write_bytes(b"film")
    link = folder / f"night-{night}"
    link.symlink_to(hidden.name)
    return link, hidden


def test_a_night_is_deleted_and_comes_back_from_its_backup(book: Store, tmp_path: Path) -> None:
    """What was made of it is gone, what was made of another night stays; the backup has its answer."""
    mine, other = (_made_of(tmp_path / "made", night) for night in (1, 2))
    gone = delete_night(book, 1, 1, NOW, saw=holding_text(night_holding(book, 1)), made=tmp_path / "made")
    assert (gone.called, gone.went.answers, gone.left) == ("Kite tails", 1, ())
    assert [path.exists() or path.is_symlink() for path in (*mine, *other)] == [False, False, True, True]
    assert [page.night.number for page in night_pages(book, 1)] == [2]
    assert gone.before in {one.path for one in backups_of(book.path)}
    with closing(open_book(gone.before)) as saved:
        assert [one.text for one in answers_of(saved, 1)] == ["4 0/8"]


def test_what_was_written_meanwhile_is_told_and_nothing_is_deleted(book: Store) -> None:
    """Of a night, a page and a class; looked at again, it goes."""
    night, page, room = night_holding(book, 2), sheet_holding(book, 1), class_holding(book, 1)
    keep_answer(book, KeptAnswer(2, "K02", "1", "3", NOW, "teacher"))
    keep_answer(book, KeptAnswer(1, "K02", "1", "3", NOW, "teacher"))
    for act in (
        lambda: delete_night(book, 1, 2, NOW, saw=holding_text(night)),
        lambda: delete_page(book, 1, NOW, saw=holding_text(page)),
        lambda: delete_class(book, 1, NOW, saw=holding_text(room)),
        lambda: erase_class(book, 1, saw=holding_text(room)),
    ):
        with pytest.raises(ChangedMeanwhile, match="Nothing was deleted"):
            act()
    assert len(night_pages(book, 1)) == 2
    assert delete_night(book, 1, 2, NOW, saw=holding_text(night_holding(book, 2))).went.answers == 2


def test_a_page_goes_with_its_nights_and_another_class_s_night_is_not_there(book: Store) -> None:
    """A page by its number; a night only under its own class."""
    other = start_room(book, "Room 13", 1, NOW)
    for act in (
        lambda: delete_night(book, other.number, 1, NOW),
        lambda: delete_page(book, 9, NOW),
        lambda: delete_class(book, 9, NOW),
        lambda: erase_class(book, 9),
    ):
        with pytest.raises(NotThere):
            act()
    assert (len(kept_pages(book)), len(night_pages(book, 1))) == (2, 2)
    gone = delete_page(book, 1, NOW)
    assert (gone.called, gone.went.nights, gone.went.answers) == ("Kite tails", 1, 1)
    assert [page.sheet for page in kept_pages(book)] == [2]


def test_a_class_that_is_deleted_is_in_the_backup(book: Store) -> None:
    """With its children and answers; its pages stay in the file."""
    gone = delete_class(book, 1, NOW)
    assert (rooms(book), len(kept_pages(book)), gone.went.pupils) == ((), 2, 2)
    with closing(open_book(gone.before)) as saved:
        assert [one.name for one in rooms(saved)] == ["Room 12"]


def test_an_erased_class_is_out_of_the_backups_and_the_other_stays(book: Store) -> None:
    """The last day stays as long as another class is there, and goes with the last one."""
    other = start_room(book, "Room 13", 1, NOW)
    set_keep_until(book, DAY)
    done = erase_class(book, 1)
    assert (done.called, len(done.cleaned), done.left, done.traces) == ("Room 12", 1, (), "")
    assert ([one.name for one in rooms(book)], keep_until(book)) == (["Room 13"], DAY)
    with closing(open_book(done.cleaned[0])) as saved:
        assert rooms(saved) == ()
        assert answers_of(saved, 1) == ()
    erase_class(book, other.number, backups=False)
    assert (rooms(book), keep_until(book)) == ((), None)


def test_a_backup_in_which_another_class_has_the_number_is_left_alone(book: Store, tmp_path: Path) -> None:
    """It is another class by the moment at which it was made: of an earlier file of this name."""
    (backup,) = backups_of(book.path)
    other = open_book(tmp_path / "other.class")
    start_room(other, "Another", 1, NOW + timedelta(days=1))
    other.close()
    backup.path.write_bytes((tmp_path / "other.class").read_bytes())
    assert erase_class(book, 1).cleaned == (backup.path,)
    with closing(open_book(backup.path)) as saved:
        assert [one.name for one in rooms(saved)] == ["Another"]


def test_what_still_holds_children_is_named(book: Store) -> None:
    """Backups that were not to be cleaned, or cannot be."""
    (backup,) = backups_of(book.path)
    start_room(book, "Room 13", 1, NOW)
    backup.path.write_bytes(b"torn")
    done = erase_class(book, 1)
    assert (done.cleaned, done.left) == ((), (backup.path,))
    assert erase_class(book, 2, backups=False).left == (backup.path,)
