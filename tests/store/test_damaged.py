"""Damaged files: each opens or is told as damaged, as class and as backup; there is always a way back.

Some hundreds by default; ONEWHOLE_DAMAGED=1000000 tries a million. The same seeds give the same files.
"""

import os
import random
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest

from onewhole.desk.keep import restoring
from onewhole.desk.keep.way_back import moved_aside
from onewhole.store.answers import KeptAnswer, answers_of
from onewhole.store.handed_in import fresh
from onewhole.store.handed_in.fresh import step_checked
from onewhole.store.handed_in.records import given_of, record_types, rows_of
from onewhole.store.keeping import backup
from onewhole.store.opening import open_store
from onewhole.store.refusals import BackupRefused, Damaged
from onewhole.store.standing import Standing, standing
from onewhole.store.whole import read_whole
from tests.kit.damage import damaged
from tests.kit.in_process import asked_in_process
from tests.kit.kept import NOW
from tests.kit.whole_class import whole_class

FILES, SEEDS = int(os.environ.get("ONEWHOLE_DAMAGED", "300")), 20
#: Of the files that are refused one in so many is brought back from a backup to the end; of those that open
#: one in so many is read by the functions of the pages: a million of either would take a day.
RESTORED, READ = (50, 1) if FILES < 10_000 else (500, 50)


@dataclass(frozen=True, slots=True)
class Good:
    """A class with a row in every table: its bytes, its log, a backup of it, and what it holds."""

    folder: Path
    whole: bytes
    log: bytes
    backup: Path
    night: int
    answers: tuple[KeptAnswer, ...]


@pytest.fixture(scope="module")
def good() -> Iterator[Good]:
    """In memory where there is such a folder: a disk would be waited for."""
    shared = Path("/dev/shm")  # noqa: S108 - a folder of its own is made in it
    with TemporaryDirectory(dir=shared if shared.is_dir() else None) as name:
        folder = Path(name)
        store = open_store(folder / "room12.class")
        night = whole_class(store).night
        log = store.path.with_name("room12.class-wal").read_bytes()
        backup(store, folder / "good.backup")
        answers = answers_of(store, night)
        store.close()
        (folder / "class").mkdir()
        yield Good(folder, store.path.read_bytes(), log, folder / "good.backup", night, answers)


def _read_as_class(path: Path, *, whole: bool) -> str:
    try:
        store = open_store(path)
    except Damaged:
        return "refused"
    try:
        if whole:
            read_whole(store)
    except Damaged:
        return "told when read"
    finally:
        store.close()
    return "opened"


def _read_as_backup(path: Path) -> str:
    try:
        with asked_in_process(path) as frames:
            step = step_checked(frames, path)
            for record in record_types(step):
                for _ in rows_of(frames, path, record):
                    pass
            given_of(frames, path)
    except BackupRefused:
        return "refused as a backup"
    return "read as a backup"


def _put(folder: Path, content: bytes, log: bytes | None) -> Path:
    """Let a folder hold a class file and its log, and nothing else."""
    for one in folder.glob("room12*"):
        one.unlink()
    path = folder / "room12.class"
    path.write_bytes(content)
    if log is not None:
        path.with_name("room12.class-wal").write_bytes(log)
    return path


@pytest.mark.parametrize("seed", range(SEEDS))
def test_every_damaged_file_is_read_or_refused(
    seed: int, good: Good, monkeypatch: pytest.MonkeyPatch
) -> None:
    """No other fault comes out of any; what is refused moves aside byte for byte, and the name is free."""
    monkeypatch.setattr(fresh, "asked", asked_in_process)
    chance, found = random.Random(seed), Counter[str]()
    for at in range(FILES // SEEDS):
        content = damaged(chance.choice((good.whole, good.backup.read_bytes())), chance)
        log = chance.choice((None, None, None, good.log, damaged(good.log, chance)))
        path = _put(good.folder / "class", content, log)
        found[_read_as_backup(path)] += 1
        path = _put(good.folder / "class", content, log)
        found[outcome := _read_as_class(path, whole=at % READ == 0)] += 1
        if outcome == "refused":
            assert path.read_bytes() == content, (seed, at)
            aside = _way_back(path, good, to_the_end=found[outcome] % RESTORED == 1)
            assert aside.read_bytes() == content, (seed, at)
    print(dict(found))
    assert found["refused"] + found["refused as a backup"] > 0


def _way_back(path: Path, good: Good, *, to_the_end: bool) -> Path:
    """Free the name of what was refused, or bring the good backup back there; return what was moved aside."""
    if not to_the_end:
        aside = moved_aside(path, NOW)
        assert standing(path) is Standing.NOTHING
        return aside
    done = restoring.restore_backup(good.backup, path, NOW)
    again = open_store(done.path)
    assert answers_of(again, good.night) == good.answers
    again.close()
    assert done.aside is not None
    return done.aside
