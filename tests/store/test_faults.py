"""A full disk, one that may not be written, a log without its file, a damaged file, what a kill left."""

import json
import os
import shutil
import signal
import subprocess
import sys
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.store.answers import answers_of
from onewhole.store.backups import backups_folder, backups_of, daily_name
from onewhole.store.classes import pupils_of
from onewhole.store.keeping import backup, clean, erase_pupil
from onewhole.store.migrations.env import VERSION_TABLE
from onewhole.store.opening import Store, make_beside, open_store
from onewhole.store.orphan_cleanup import MAKING, hold, orphans_of, remove_orphans
from onewhole.store.refusals import Damaged, Newer, StoreRefused
from tests.kit.disks import small_disk
from tests.kit.kept import DAY, first_round, write

#: Writes until the system takes no more, tells what was kept, then what was refused.
NO_ROOM = """
import json, resource, sys
from pathlib import Path
from onewhole.store.opening import open_store
from onewhole.store.refusals import StoreRefused
from tests.kit.disks import small_disk
from tests.kit.kept import first_round, write
store, told = open_store(Path(sys.argv[1])), []
night = first_round(store).night
resource.setrlimit(resource.RLIMIT_FSIZE, (600_000, 600_000))
try:
    for number in range(10_000):
        write(store, night, f"{number}" * 50, problem=f"{number}")
        told.append(f"{number}")
except StoreRefused as refused:
    print(json.dumps([told, refused.what, refused.remedy]))
"""


def _fill(disk: Path) -> Path:
    """Take all the room there is."""
    filler = disk / "filler"
    with filler.open("wb", buffering=0) as file:
        try:
            while file.write(bytes(4096)):
                pass
        except OSError:
            pass
    return filler


@pytest.mark.asvs("V16.5.2")
def test_a_really_full_disk_loses_nothing(tmp_path: Path) -> None:
    """Writing goes on until there is no room: what was told as kept is there, also after opening again; no
    half of a backup stays; with room again writing goes on.
    """
    with small_disk(tmp_path, 1200) as disk:
        filler = disk / "filler"
        filler.write_bytes(bytes(400 * 1024))
        store = open_store(disk / "a.class")
        night = first_round(store).night
        told, what = 0, ""
        while not what:
            try:
                write(store, night, f"{told}" * 100, problem=f"{told:04}")
                told += 1
            except StoreRefused as refused:
                what = refused.what
        assert "disk" in what
        assert told > 10
        before = {path.name for path in disk.iterdir()}
        with pytest.raises(StoreRefused):
            backup(store, disk / "a.backup")
        assert {path.name for path in disk.iterdir()} == before
        assert [one.problem for one in answers_of(store, night)] == [f"{number:04}" for number in range(told)]
        with pytest.raises(StoreRefused):
            open_store(disk / "another.class")
        assert {path.name for path in disk.iterdir()} == before
        filler.unlink()
        store.close()
        store = open_store(store.path)
        assert len(answers_of(store, night)) == told
        write(store, night, "2 4/8", problem="again")
        assert len(answers_of(store, night)) == told + 1
        store.close()


def test_erasing_on_a_full_disk_says_how_far_it_came(tmp_path: Path) -> None:
    """Nobody is told that a child is gone who is not; with room again no trace stays."""
    with small_disk(tmp_path, 3000) as disk:
        store = open_store(disk / "a.class")
        kept = first_round(store)
        for number in range(100):
            write(store, kept.night, f"remarkable {number}", problem=f"{number}")
        clean(store)
        filler = _fill(disk)
        with pytest.raises(StoreRefused) as refused:
            erase_pupil(store, kept.class_number, "K01")
        there = "K01" in [pupil.code for pupil in pupils_of(store, kept.class_number)]
        assert there == ("is erased" not in refused.value.what)
        filler.unlink()
        if there:
            erase_pupil(store, kept.class_number, "K01")
        else:
            clean(store)
        assert b"remarkable" not in b"".join(path.read_bytes() for path in disk.iterdir())
        store.close()


def test_a_system_that_takes_no_more_loses_nothing(tmp_path: Path) -> None:
    """The same by a limit on how long a file may grow, which any user may set."""
    pytest.importorskip("resource", reason="this system has no limit on the length of a file")
    path = tmp_path / "a.class"
    ran = subprocess.run(
        [sys.executable, "-c", NO_ROOM, str(path)],
        capture_output=True,
        text=True,
        check=True,
        cwd=Path(__file__).parents[2],
    )
    told, what, remedy = json.loads(ran.stdout)
    assert len(told) > 10
    assert "disk" in what
    assert "room" in remedy
    store = open_store(path)
    assert {one.problem for one in answers_of(store, 1)} == set(told)
    write(store, 1, "2 4/8", problem="again")
    store.close()


def test_a_disk_that_may_only_be_read_is_told(tmp_path: Path) -> None:
    """For root too: the file is refused with what to do, and is as it was."""
    with small_disk(tmp_path, 1200) as disk:
        store = open_store(disk / "a.class")
        first_round(store)
        store.close()
        before = store.path.read_bytes()
        remount = [shutil.which("mount") or "mount", "-o", "remount,ro", str(disk)]
        subprocess.run(remount, check=True)
        for name in ("a.class", "new.class"):
            with pytest.raises(StoreRefused, match="you may write"):
                open_store(disk / name)
        assert store.path.read_bytes() == before
        assert [path.name for path in disk.iterdir()] == ["a.class"]


def test_a_folder_that_is_a_file_is_told(tmp_path: Path) -> None:
    """Refused for a class file and for a backup, whoever the user is."""
    (tmp_path / "file").write_text("kites")
    with pytest.raises(StoreRefused, match="folder is there"):
        open_store(tmp_path / "file" / "a.class")
    store = open_store(tmp_path / "a.class")
    with pytest.raises(StoreRefused):
        backup(store, tmp_path / "file" / "a.backup")
    store.close()
    assert (tmp_path / "file").read_text() == "kites"


def test_a_log_without_its_file_is_not_played_into_another(store: Store) -> None:
    """SQLite would bring back into a new file what stood in the old one: refused, and nothing is made."""
    write(store, first_round(store).night, "2 4/8")
    log = store.path.with_name("room12.class-wal")
    left = log.read_bytes()
    assert left
    store.close()
    store.path.unlink()
    log.write_bytes(left)
    with pytest.raises(Damaged, match="its log is still there"):
        open_store(store.path)
    assert [path.name for path in store.path.parent.iterdir()] == [log.name]
    other = open_store(store.path.with_name("b.class"))
    with pytest.raises(StoreRefused, match="log of another file"):
        backup(other, store.path)
    other.close()
    assert log.read_bytes() == left


@pytest.mark.parametrize("fault", ["torn", "foreign", "gone"])
def test_a_damaged_file_offers_the_newest_backup(store: Store, fault: str) -> None:
    """By its name, once there is one."""
    first_round(store)
    folder = backups_folder(store.path)
    folder.mkdir()
    days = [DAY + timedelta(days=later) for later in (0, 2, 1)]
    for day in days:
        backup(store, folder / daily_name(store.path, day))
    (folder / "other.class.2030-01-01.backup").write_bytes(b"")
    (folder / "room12.class.2030-13-01.backup").write_bytes(b"")
    (folder / "room12.class.2030-01-01.backup.part").write_bytes(b"")
    assert [one.day for one in backups_of(store.path)] == sorted(days, reverse=True)
    log = store.path.with_name("room12.class-wal").read_bytes()
    store.close()
    if fault == "gone":
        store.path.unlink()
        store.path.with_name("room12.class-wal").write_bytes(log)
    else:
        whole = store.path.read_bytes()
        store.path.write_bytes(b"kites" if fault == "foreign" else whole[:8192] + b"torn" * 2048)
    with pytest.raises(Damaged, match=r"newest backup, room12\.class\.2026-09-03\.backup"):
        open_store(store.path)


def test_a_newer_file_is_named_as_newer(store: Store) -> None:
    """It is whole, and another release opens it; a backup may take its place all the same."""
    folder = backups_folder(store.path)
    folder.mkdir()
    backup(store, folder / daily_name(store.path, DAY))
    with store.writing() as connection:
        connection.exec_driver_sql(f"UPDATE {VERSION_TABLE} SET version_num = '9999'")  # noqa: S608 - our own name
    store.close()
    with pytest.raises(Newer, match="newer release"):
        open_store(store.path)


def test_what_a_kill_left_half_made_is_swept_at_once(store: Store) -> None:
    """Only a plain file called as ours in the making, of the same owner; nothing else."""
    folders = store.path.parent, backups_folder(store.path)
    folders[1].mkdir()
    ours = [f".room12.class.ab_1x9zq{MAKING}", f".a.class.abcdefgh{MAKING}-journal"]
    others = [
        ".room12.class.abcdefgh",
        f"room12.class.abcdefgh{MAKING}",
        f".room12.class.abcdefg{MAKING}",
        ".notes.abcdefgh.making.txt",
        "room12.class.2026-09-01.backup",
    ]
    for folder in folders:
        for name in (*ours, *others):
            (folder / name).write_bytes(b"x")
        (folder / f".room12.class.dddddddd{MAKING}").mkdir()
        (folder / f".room12.class.llllllll{MAKING}").symlink_to(store.path)
    if os.geteuid() == 0:
        others.append(f".room12.class.ssssssss{MAKING}")
        (folders[0] / others[-1]).write_bytes(b"somebody else's")
        os.chown(folders[0] / others[-1], 65534, 65534)
    before = {path for folder in folders for path in folder.iterdir()}
    gone = remove_orphans(store.path)
    assert set(gone) == {folder / name for folder in folders for name in ours}
    assert {path for folder in folders for path in folder.iterdir()} == before - set(gone)


def test_what_a_living_process_makes_is_never_swept(store: Store) -> None:
    """Its file and the log of that are held until it ends, however it ends; they are named till then."""
    told, tells = os.pipe()
    child = os.fork()
    if child == 0:
        _, beside = make_beside(store.path)
        beside.with_name(beside.name + "-journal").write_bytes(b"log")
        os.write(tells, beside.name.encode())
        signal.pause()
    made = store.path.with_name(os.read(told, 4096).decode())
    log = made.with_name(f"{made.name}-journal")
    try:
        assert remove_orphans(store.path) == ()
        assert orphans_of(store.path) == (made, log)
    finally:
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        os.close(told)
        os.close(tells)
    assert set(remove_orphans(store.path)) == {made, log}


def test_a_file_that_a_sweep_took_first_is_made_again(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    """Between its making and its holding another process may take it for an orphan: then there is another."""
    taken: list[str] = []

    def swept_first(handle: int) -> bool:
        if not taken:
            taken.extend(path.name for path in remove_orphans(store.path))
        return hold(handle)

    monkeypatch.setattr("onewhole.store.opening.hold", swept_first)
    handle, beside = make_beside(store.path)
    assert (len(taken), beside.exists(), beside.name in taken) == (1, True, False)
    os.close(handle)


def test_a_file_is_swept_when_it_is_opened(tmp_path: Path) -> None:
    """A copy that a killed backup left is gone at the next start, from the folder of the backups too."""
    open_store(tmp_path / "a.class").close()
    (tmp_path / "backups").mkdir()
    left = [folder / f".a.class.abcdefgh{MAKING}" for folder in (tmp_path, tmp_path / "backups")]
    for file in left:
        file.write_bytes(b"Wrenalinda")
    open_store(tmp_path / "a.class").close()
    assert [file for file in left if file.exists()] == []
