"""What `onewhole keep` says where a session in markdown cannot bring it about."""

import sqlite3
from contextlib import closing
from io import StringIO
from pathlib import Path

import pytest

from onewhole.cli.verbs import keep as verb
from onewhole.store.classes import name_pupil
from onewhole.store.opening import open_store
from tests.kit.age_format import lock_quickly
from tests.kit.kept import first_round
from tests.kit.terminal import Terminal


def test_traces_are_told_and_cleaned_away(
    onewhole: Terminal, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """While another window reads, the child is erased and the rest is told; cleaning afterwards ends it."""
    monkeypatch.setattr("onewhole.store.opening.BUSY_TIMEOUT_MS", 50)
    path = tmp_path / "room12.class"
    other = open_store(path)
    first_round(other)
    name_pupil(other, 1, "K01", "Wrenalinda")
    with other.reading() as connection:
        connection.exec_driver_sql("SELECT * FROM pupils").all()
        shown = onewhole("keep", "erase", path, "--pupil", "K01", "--yes")
    assert shown.code == 0
    assert "traces may still be in the file. Another window is reading the file." in shown.out
    assert onewhole("keep", "clean", path).code == 0
    other.close()
    assert b"Wrenalinda" not in b"".join(file.read_bytes() for file in tmp_path.iterdir())


def test_a_name_that_would_command_the_terminal_is_shown_as_text(onewhole: Terminal, tmp_path: Path) -> None:
    """Escapes and what turns the reading direction become question marks."""
    path = tmp_path / "room12.class"
    store = open_store(path)
    first_round(store)
    name_pupil(store, 1, "K01", "\x1b[2J\u202eWren")
    store.close()
    assert "K01 ?[2J?Wren" in onewhole("keep", "show", path).out


PHRASE = "six kites over the hill"


def test_a_locked_backup_is_typed_twice_and_comes_back_by_its_passphrase(
    onewhole: Terminal, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Nothing of the passphrase is shown or kept; a wrong one leaves the class as it is."""
    lock_quickly(monkeypatch)
    path, locked = tmp_path / "room12.class", tmp_path / "room12.age"
    store = open_store(path)
    first_round(store)
    store.close()
    asked: list[str] = []
    typed = [PHRASE, PHRASE.upper(), PHRASE, PHRASE, "seven kites", PHRASE]

    def ask(said: str) -> str:
        asked.append(said)
        return typed.pop(0)

    monkeypatch.setattr(verb, "getpass", ask)
    shown = onewhole("keep", "backup", path, "--to", locked, "--passphrase")
    assert (shown.code, "not the same" in shown.err, locked.exists()) == (2, True, False)
    shown = onewhole("keep", "backup", path, "--to", locked, "--passphrase")
    assert shown.code == 0
    assert shown.out.index("kept nowhere") < shown.out.index("locked.")
    assert PHRASE not in shown.out + shown.err
    before = path.read_bytes()
    shown = onewhole("keep", "restore", path, "--from", locked)
    assert (shown.code, "does not open" in shown.err, path.read_bytes() == before) == (2, True, True)
    assert onewhole("keep", "restore", path, "--from", locked).code == 0
    assert asked[-1] == "The passphrase of this backup: "


def test_a_passphrase_comes_from_a_file_or_a_pipe(
    onewhole: Terminal, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The first line of it, without its end."""
    lock_quickly(monkeypatch)
    path, locked, phrase = tmp_path / "room12.class", tmp_path / "room12.age", tmp_path / "phrase"
    store = open_store(path)
    first_round(store)
    store.close()
    phrase.write_bytes(f"{PHRASE}\r\nmore".encode())
    assert onewhole("keep", "backup", path, "--to", locked, "--passphrase-from", phrase).code == 0
    monkeypatch.setattr("sys.stdin", StringIO(f"{PHRASE}\n"))
    assert onewhole("keep", "restore", path, "--from", locked, "--passphrase-from", "-").code == 0


def test_a_damaged_backup_comes_back_and_is_told(onewhole: Terminal, tmp_path: Path) -> None:
    """It may be the best there is: it is restored, and what is not as it was written is named on asking."""
    path, saved = tmp_path / "room12.class", tmp_path / "monday.backup"
    store = open_store(path)
    first_round(store)
    name_pupil(store, 1, "K01", "Wren")
    store.close()
    assert onewhole("keep", "backup", path, "--to", saved).code == 0
    assert "not as written" not in onewhole("keep", "restore", path, "--from", saved).out
    with closing(sqlite3.connect(saved)) as file, file:
        file.execute("UPDATE pupils SET name = 'Wrem' WHERE number = 1")
    assert onewhole("keep", "check", saved).code == 2
    restored = onewhole("keep", "restore", path, "--from", saved)
    assert restored.code == 0
    assert "One place in it is not as written. See what: onewhole keep check room12.class" in restored.out
    checked = onewhole("keep", "check", path)
    assert (checked.code, "the name stands as “Wrem”; the backup of" in checked.out) == (2, True)
    assert onewhole("keep", "mend", path).code == 0
    assert "K01 Wren" in onewhole("keep", "show", path).out


def test_what_no_backup_has_is_let_stand(onewhole: Terminal, tmp_path: Path) -> None:
    """And is told no more."""
    path = tmp_path / "room12.class"
    store = open_store(path)
    first_round(store)
    store.close()
    with closing(sqlite3.connect(path)) as file, file:
        file.execute("UPDATE classes SET name = 'Rook 12'")
    told = onewhole("keep", "mend", path)
    assert told.code == 2
    assert "no backup has it" in told.out
    assert "--as-it-stands" in told.out
    assert onewhole("keep", "mend", path, "--as-it-stands").code == 0
    assert onewhole("keep", "check", path).code == 0
