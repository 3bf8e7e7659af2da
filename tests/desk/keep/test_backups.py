"""The file of a class kept safe: daily backups, a restore that loses nothing, a child erased everywhere."""

import os
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.keep.backups import (
    BEFORE_A_RESTORE,
    DAILY,
    back_up,
    back_up_before,
    back_up_daily,
    backup_bytes,
    backups_folder,
    backups_of,
    erase_everywhere,
    remove_kept,
)
from onewhole.desk.keep.restoring import restore_backup, restore_bytes
from onewhole.desk.keep.way_back import damaged_of, moved_aside, open_kept
from onewhole.errors import InputError
from onewhole.store.answers import answers_of
from onewhole.store.classes import name_pupil, pupils_of
from onewhole.store.opening import Store, make_beside, open_store
from onewhole.store.refusals import Damaged, NotThere, StoreRefused
from tests.kit.kept import NOW, first_round, write

LOCAL = NOW.astimezone()


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class file with a round, closed after the test."""
    opened = open_store(tmp_path / "room12.class")
    first_round(opened)
    yield opened
    opened.close()


def _texts(path: Path) -> list[str]:
    opened = open_store(path)
    texts = [one.text for one in answers_of(opened, 1)]
    opened.close()
    return texts


def test_seven_daily_backups_stay(book: Store) -> None:
    """One a day, the newest seven, none twice a day; folder and files are their owner's alone."""
    folder = backups_folder(book.path)
    made = [back_up_daily(book, folder, NOW + timedelta(days=day)) for day in range(10)]
    assert back_up_daily(book, folder, NOW + timedelta(days=9, minutes=5)) is None
    assert [one.path for one in backups_of(book.path)] == made[: -DAILY - 1 : -1]
    assert made[0] == folder / f"room12.class.{LOCAL.date()}.backup"
    assert sorted(folder.iterdir()) == made[-DAILY:]
    assert folder.stat().st_mode & 0o777 == 0o700
    assert {path.stat().st_mode & 0o777 for path in folder.iterdir()} == {0o600}


def test_a_link_leads_to_the_backups_of_its_file(book: Store, tmp_path: Path) -> None:
    """Whether the file is named by its own name or by a link from elsewhere."""
    (tmp_path / "desk").mkdir()
    link = tmp_path / "desk" / "class"
    link.symlink_to(book.path)
    made = back_up_daily(book, backups_folder(link), NOW)
    assert made is not None
    assert made.parent == tmp_path / "backups"
    assert [one.path for one in backups_of(link)] == [made]
    write(book, 1, "late")
    done = restore_backup(made, link, NOW)
    assert (done.path, link.is_symlink()) == (book.path, True)
    assert _texts(book.path) == []


def test_the_bytes_of_a_backup_leave_nothing_behind(book: Store) -> None:
    """Handed in again they are brought back, and neither leaves a file beside the class's."""
    write(book, 1, "early")
    content = backup_bytes(book)
    write(book, 1, "late")
    restore_bytes(content, book.path, NOW)
    assert _texts(book.path) == ["early"]
    with pytest.raises(InputError, match="the file handed in"):
        restore_bytes(b"kites", book.path, NOW)
    assert [path.name for path in book.path.parent.iterdir() if path.name.startswith(".")] == []


def test_a_file_kept_aside_is_removed_with_its_log(book: Store) -> None:
    """And the file of the class stays."""
    aside = book.path.with_name("room12.class.2026-09-01T183000.damaged")
    for end in ("", "-wal", "-shm"):
        aside.with_name(aside.name + end).write_bytes(b"torn")
    assert damaged_of(book.path) == (aside,)
    remove_kept(aside)
    assert damaged_of(book.path) == ()
    assert sorted(path.name for path in book.path.parent.iterdir()) == [
        "room12.class",
        "room12.class-shm",
        "room12.class-wal",
    ]


def test_a_clock_set_back_still_backs_up(book: Store) -> None:
    """Today's backup stays, even where seven seem to be of the future; another class's stay too."""
    folder = backups_folder(book.path)
    for day in range(DAILY):
        back_up_daily(book, folder, NOW + timedelta(days=day))
    other = folder / "room13.class.2020-01-01.backup"
    other.write_bytes(b"another class's")
    early = back_up_daily(book, folder, NOW - timedelta(days=3650))
    assert early is not None
    assert early.exists()
    assert other.exists()
    assert len([one for one in backups_of(book.path) if one.at is None]) == DAILY


def test_a_clock_that_was_ahead_for_a_week_takes_no_place(book: Store) -> None:
    """Backups dated after today count as the oldest: a week later seven of the right days are there."""
    folder = backups_folder(book.path)
    ahead = [back_up_daily(book, folder, NOW + timedelta(days=3650 + day)) for day in range(DAILY)]
    right = [back_up_daily(book, folder, NOW + timedelta(days=day)) for day in range(3)]
    assert [one.path for one in backups_of(book.path)] == [*ahead[: -DAILY + 2 : -1], *right[::-1]]
    right += [back_up_daily(book, folder, NOW + timedelta(days=day)) for day in range(3, DAILY)]
    assert [one.path for one in backups_of(book.path)] == right[::-1]


def test_what_stood_before_a_restore_stays_for_eight_weeks(book: Store) -> None:
    """Ten restores in one evening lose none of them; later the newest seven stay, and the others go."""
    folder = backups_folder(book.path)
    made = [back_up_before(book, NOW + timedelta(minutes=at)) for at in range(10)]
    back_up_daily(book, folder, NOW + BEFORE_A_RESTORE)
    assert [one.path for one in backups_of(book.path) if one.at] == made[::-1]
    back_up_daily(book, folder, NOW + BEFORE_A_RESTORE + timedelta(days=1))
    assert [one.path for one in backups_of(book.path) if one.at] == made[:2:-1]


def test_a_backup_never_writes_over_a_file(book: Store, tmp_path: Path) -> None:
    """A name that is taken is refused, and so is a folder for backups that is a file."""
    (tmp_path / "mine").write_text("kites")
    with pytest.raises(StoreRefused, match="file of this name"):
        back_up(book, tmp_path / "mine")
    with pytest.raises(StoreRefused):
        back_up_daily(book, tmp_path / "mine", NOW)
    assert (tmp_path / "mine").read_text() == "kites"


def test_a_restore_keeps_what_stood_there(book: Store, tmp_path: Path) -> None:
    """Of a whole file a backup is made first, and again in the same second under a name of its own."""
    write(book, 1, "early")
    back_up(book, tmp_path / "a.backup")
    write(book, 1, "late")
    first = restore_backup(tmp_path / "a.backup", book.path, NOW)
    assert first.aside is None
    assert first.before == backups_folder(book.path) / f"room12.class.{LOCAL:%Y-%m-%dT%H%M%S}.backup"
    assert (_texts(book.path), _texts(first.before)) == (["early"], ["late"])
    second = restore_backup(first.before, book.path, NOW)
    assert second.before not in {None, first.before}
    assert second.before is not None
    assert (_texts(book.path), _texts(second.before)) == (["late"], ["early"])


@pytest.mark.parametrize("fault", ["torn", "foreign", "empty", "gone"])
def test_a_damaged_file_is_moved_aside_whole(book: Store, tmp_path: Path, fault: str) -> None:
    """With its log, to a name with the date, byte for byte; the backup then stands under the name."""
    write(book, 1, "early")
    back_up(book, tmp_path / "a.backup")
    write(book, 1, "late")
    log = book.path.with_name(f"{book.path.name}-wal")
    kept_log, whole = log.read_bytes(), book.path.read_bytes()
    book.close()
    torn = {"torn": whole[:8192] + b"torn" * 2048, "foreign": b"pupil,1\n", "empty": b"", "gone": b""}[fault]
    if fault == "gone":
        book.path.unlink()
    else:
        book.path.write_bytes(torn)
    if fault != "torn":  # a log that fits would mend what it can: SQLite's own way back after a power cut
        log.write_bytes(kept_log)
    with pytest.raises(Damaged):
        open_store(book.path)
    done = restore_backup(tmp_path / "a.backup", book.path, NOW)
    assert done.before is None
    assert done.aside == tmp_path / f"room12.class.{LOCAL:%Y-%m-%dT%H%M%S}.damaged"
    assert done.aside.exists() == (fault != "gone")
    assert fault == "gone" or done.aside.read_bytes() == torn
    log_aside = done.aside.with_name(f"{done.aside.name}-wal")
    assert (log_aside.read_bytes() if log_aside.exists() else None) == (None if fault == "torn" else kept_log)
    assert _texts(book.path) == ["early"]


@pytest.mark.parametrize("content", [b"kites", None])
def test_a_wrong_backup_moves_nothing(book: Store, tmp_path: Path, content: bytes | None) -> None:
    """It is refused first: what stands under the name, damaged or not, stays where it is."""
    saved = tmp_path / "a.backup"
    if content:
        saved.write_bytes(content)
    book.close()
    for stands in (book.path.read_bytes(), b"torn"):
        book.path.write_bytes(stands)
        before = sorted(tmp_path.iterdir())
        with pytest.raises(StoreRefused):
            restore_backup(saved, book.path, NOW)
        assert sorted(tmp_path.iterdir()) == before
        assert book.path.read_bytes() == stands


def test_a_name_that_is_taken_is_not_moved_over(tmp_path: Path) -> None:
    """A file moved aside earlier in the same second stays."""
    for text in ("one", "two"):
        (tmp_path / "a.class").write_text(text)
        moved_aside(tmp_path / "a.class", NOW)
    assert sorted(path.read_text() for path in tmp_path.iterdir()) == ["one", "two"]


def test_a_child_is_erased_from_the_automatic_backups_too(book: Store) -> None:
    """No byte of the child is in the folder of the file or in the backups; other children's answers stay."""
    name_pupil(book, 1, "K01", "Wrenalinda")
    write(book, 1, "remarkable")
    write(book, 1, "stays", code="K02")
    folder = backups_folder(book.path)
    made = [back_up_daily(book, folder, NOW + timedelta(days=day)) for day in range(2)]
    done = erase_everywhere(book, 1, "K01")
    assert (done.code, set(done.cleaned), done.left) == ("K01", set(made), ())
    files = [path for path in book.path.parent.rglob("*") if path.is_file()]
    everything = b"".join(path.read_bytes() for path in files)
    assert b"Wrenalinda" not in everything
    assert b"remarkable" not in everything
    assert sorted(folder.iterdir()) == made, "no log stays beside a backup"
    for saved in made:
        assert saved is not None
        assert saved.read_bytes()[18:20] == b"\1\1"
        assert _texts(saved) == ["stays"]
    assert [pupil.code for pupil in pupils_of(book, 1)] == ["K02"]


def test_tomorrow_s_pages_go_with_the_child(book: Store, tmp_path: Path) -> None:
    """They name children and can be made again; a night's film stays."""
    for name in ("night-1/tomorrow/morning.pdf", "night-2/tomorrow/practice.pdf", "night-1/film.mp4"):
        (tmp_path / "made" / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / "made" / name).write_bytes(b"x")
    erase_everywhere(book, 1, "K01", made=tmp_path / "made")
    assert [path.name for path in (tmp_path / "made").rglob("*") if path.is_file()] == ["film.mp4"]


def test_tomorrow_s_pages_that_a_killed_run_hid_go_too(book: Store, tmp_path: Path) -> None:
    """A link that is left where they were is taken away; what does not go is told."""
    made = tmp_path / "made"
    hidden = made / ".night-1.ab12cd.ef.pages-ready"
    (hidden / "tomorrow").mkdir(parents=True)
    (hidden / "tomorrow" / "pupil-k01.pdf").write_bytes(b"x")
    (made / "night-1").mkdir()
    (made / "night-1" / "tomorrow").symlink_to(f"../{hidden.name}/tomorrow")
    (made / "night-2").mkdir()
    (made / "night-2" / "tomorrow").write_bytes(b"a file that is no folder of ours")
    done = erase_everywhere(book, 1, "K01", made=made)
    assert [path.name for path in made.rglob("*") if not path.is_dir()] == ["tomorrow"]
    assert done.left == (made / "night-2" / "tomorrow",)


def test_a_backup_never_goes_through_a_link(book: Store, tmp_path: Path) -> None:
    """Under a name of the teacher's a link is refused as taken; today's backup takes a link's place."""
    elsewhere = tmp_path / "elsewhere"
    (tmp_path / "mine.backup").symlink_to(elsewhere)
    with pytest.raises(StoreRefused, match="a file of this name"):
        back_up(book, tmp_path / "mine.backup")
    folder = backups_folder(book.path)
    folder.mkdir()
    today = folder / f"{book.path.name}.{LOCAL.date()}.backup"
    for led_to in (None, b"what is there"):
        if led_to is not None:
            elsewhere.write_bytes(led_to)
        today.symlink_to(elsewhere)
        assert back_up_daily(book, folder, NOW) == today
        assert not today.is_symlink()
        assert (elsewhere.read_bytes() if elsewhere.exists() else None) == led_to
        today.unlink()


def test_what_may_still_hold_a_child_is_told(book: Store) -> None:
    """A backup that cannot be opened, a damaged file kept aside, and, unasked, every backup."""
    folder = backups_folder(book.path)
    back_up_daily(book, folder, NOW)
    torn = folder / f"room12.class.{(LOCAL - timedelta(days=1)).date()}.backup"
    torn.write_bytes(b"torn")
    aside = book.path.with_name("room12.class.2026-09-01T183000.damaged")
    aside.write_bytes(b"torn")
    whole = folder / f"room12.class.{LOCAL.date()}.backup"
    assert erase_everywhere(book, 1, "K01", backups=False).left == (whole, torn, aside)
    done = erase_everywhere(book, 1, "K02")
    assert (done.cleaned, done.left) == ((whole,), (torn, aside))
    with pytest.raises(NotThere):
        erase_everywhere(book, 1, "K02")


def test_a_file_that_is_not_there_is_not_made(tmp_path: Path) -> None:
    """Keeping looks after what is there."""
    with pytest.raises(NotThere, match="no such file"):
        open_kept(tmp_path / "a.class")
    assert list(tmp_path.iterdir()) == []


def test_a_copy_that_a_killed_backup_left_goes_with_the_child(book: Store) -> None:
    """What a living process is just making stays, and is named as what may still hold the child."""
    folder = backups_folder(book.path)
    back_up_daily(book, folder, NOW)
    left = folder / ".room12.class.2026-09-01.backup.abcdefgh.making"
    left.write_bytes(b"Wrenalinda")
    handle, making = make_beside(book.path)
    done = erase_everywhere(book, 1, "K01")
    os.close(handle)
    assert (left.exists(), done.left) == (False, (making,))
