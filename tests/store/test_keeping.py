"""Backups, what is held on one pupil, erasing, a last day."""

import json
from datetime import date, timedelta
from pathlib import Path

import pytest

from onewhole.store.answers import answers_of
from onewhole.store.classes import add_pupil, name_pupil, pupils_of
from onewhole.store.correction_rows import (
    CellReadAs,
)
from onewhole.store.corrections import Correction, keep_correction
from onewhole.store.handed_in.fresh import fresh_file
from onewhole.store.keeping import (
    all_on_pupil,
    backup,
    clean,
    erase_pupil,
    is_over,
    keep_until,
    set_keep_until,
)
from onewhole.store.migrations.env import VERSION_TABLE
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import NotThere, StoreRefused
from onewhole.store.swapping import swap_in
from tests.kit.kept import DAY, NOW, first_round, write


def _restore(saved: Path, path: Path) -> Path | None:
    with fresh_file(saved, path) as fresh:
        return swap_in(fresh, path, lambda: path.with_name("before.backup"))


def _texts(store: Store, night: int) -> list[str]:
    return [answer.text for answer in answers_of(store, night)]


def test_a_backup_is_one_file_and_comes_back(store: Store, tmp_path: Path) -> None:
    """Made while the store is open, mode 0600, nothing beside it; back under a new and the old name."""
    night = first_round(store).night
    write(store, night, "2 4/8")
    (tmp_path / "safe").mkdir()
    saved = tmp_path / "safe" / "room12.backup"
    saved.write_text("an older backup")
    backup(store, saved)
    assert list(saved.parent.iterdir()) == [saved]
    assert saved.stat().st_mode & 0o777 == 0o600
    assert saved.read_bytes()[18:20] == b"\1\1", "a backup wants no log beside it"
    write(store, night, "changed later")
    _restore(saved, tmp_path / "new.class")
    fresh = open_store(tmp_path / "new.class")
    assert _texts(fresh, night) == ["2 4/8"]
    fresh.close()
    _restore(saved, store.path)
    again = open_store(store.path)
    assert _texts(again, night) == _texts(store, night) == ["2 4/8"]
    write(again, night, "5")
    assert _texts(store, night) == ["5"]
    again.close()


def test_a_backup_that_cannot_be_made_leaves_nothing(store: Store, tmp_path: Path) -> None:
    """Onto itself, into no folder, onto a folder: refused; the store is as it was, nothing is beside it."""
    first_round(store)
    (tmp_path / "folder").mkdir()
    before = sorted(tmp_path.iterdir())
    for goal in (store.path, tmp_path / "none" / "a", tmp_path / "folder"):
        with pytest.raises(StoreRefused):
            backup(store, goal)
    assert sorted(tmp_path.iterdir()) == before
    assert len(pupils_of(store, 1)) == 2


@pytest.mark.parametrize("fault", ["foreign", "newer", "absent"])
def test_a_wrong_backup_changes_nothing(store: Store, tmp_path: Path, fault: str) -> None:
    """It is refused before the store is touched."""
    night = first_round(store).night
    write(store, night, "2 4/8")
    saved = tmp_path / "room12.backup"
    if fault == "foreign":
        saved.write_bytes(b"pupil,1\n")
    if fault == "newer":
        other = open_store(saved)
        with other.writing() as connection:
            connection.exec_driver_sql(f"UPDATE {VERSION_TABLE} SET version_num = '9999'")  # noqa: S608 - our own name
        other.close()
    with pytest.raises(StoreRefused):
        _restore(saved, store.path)
    assert _texts(store, night) == ["2 4/8"]


def test_a_damaged_store_is_not_written_over(store: Store, tmp_path: Path) -> None:
    """Restoring under its name is refused: somebody may still read something out of it."""
    first_round(store)
    backup(store, tmp_path / "a.backup")
    store.close()
    store.path.write_bytes(b"torn" * 1000)
    with pytest.raises(StoreRefused):
        _restore(tmp_path / "a.backup", store.path)
    assert store.path.read_bytes() == b"torn" * 1000


def test_all_on_a_pupil_is_given_out(store: Store) -> None:
    """Every writing and every correction, and nothing of another pupil; it can be written as JSON."""
    kept = first_round(store)
    name_pupil(store, kept.class_number, "K01", "Wren")
    for text in ("2 4/8", "2 1/2"):
        write(store, kept.night, text)
    write(store, kept.night, "not hers", code="K02")
    keep_correction(store, Correction(kept.night, "K01", CellReadAs("1", "smudge", "3 1/2"), NOW, "teacher"))
    found = all_on_pupil(store, kept.class_number, "K01")
    said = json.loads(json.dumps(found))
    assert (said["class"], said["code"], said["name"]) == ("Room 12", "K01", "Wren")
    assert [row["text"] for row in said["answers"]] == ["2 4/8", "2 1/2"]
    assert [(row["of"], row["text"], row["day"]) for row in said["corrections"]] == [
        ("reading", '["smudge","3 1/2"]', DAY.isoformat())
    ]
    assert "not hers" not in json.dumps(found)


def test_an_erased_pupil_leaves_no_byte(store: Store) -> None:
    """Name and answers are in no file of the folder; the others stay, and the code is not given again."""
    kept = first_round(store)
    name_pupil(store, kept.class_number, "K01", "Wrenalinda")
    for number in range(200):
        write(store, kept.night, f"remarkable {number}", problem=f"{number}")
    write(store, kept.night, "stays", code="K02")
    clean(store)
    size = store.path.stat().st_size
    erase_pupil(store, kept.class_number, "K01")
    assert store.path.stat().st_size < size
    everything = b"".join(path.read_bytes() for path in store.path.parent.iterdir())
    assert b"Wrenalinda" not in everything
    assert b"remarkable" not in everything
    assert _texts(store, kept.night) == ["stays"]
    assert [pupil.code for pupil in pupils_of(store, kept.class_number)] == ["K02"]
    assert add_pupil(store, kept.class_number).code == "K03"
    with pytest.raises(NotThere):
        erase_pupil(store, kept.class_number, "K01")


def test_traces_while_another_window_reads_are_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The pupil is gone, the refusal says what may stay, and cleaning afterwards takes it away."""
    monkeypatch.setattr("onewhole.store.opening.BUSY_TIMEOUT_MS", 50)
    store = open_store(tmp_path / "room12.class")
    kept = first_round(store)
    name_pupil(store, kept.class_number, "K01", "Wrenalinda")
    other = open_store(store.path)
    with other.reading() as connection:
        connection.exec_driver_sql("SELECT * FROM pupils").all()
        with pytest.raises(StoreRefused):
            erase_pupil(store, kept.class_number, "K01")
    assert [pupil.code for pupil in pupils_of(store, kept.class_number)] == ["K02"]
    clean(store)
    assert b"Wrenalinda" not in b"".join(path.read_bytes() for path in store.path.parent.iterdir())
    other.close()
    store.close()


def test_a_last_day_passes(store: Store) -> None:
    """On the day itself it is not over yet; without a day it never is."""
    assert (keep_until(store), is_over(store, date(2999, 1, 1))) == (None, False)
    set_keep_until(store, DAY)
    assert keep_until(store) == DAY
    assert [is_over(store, DAY + timedelta(days=n)) for n in (-1, 0, 1)] == [False, False, True]
    set_keep_until(store, None)
    assert keep_until(store) is None
