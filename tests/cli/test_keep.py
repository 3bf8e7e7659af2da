"""What `onewhole keep` says where a session in markdown cannot bring it about."""

from pathlib import Path

from onewhole.store.classes import name_pupil
from onewhole.store.opening import open_store
from tests.kit.kept import first_round
from tests.kit.terminal import Terminal


def test_traces_are_told_and_cleaned_away(onewhole: Terminal, tmp_path: Path) -> None:
    """While another window reads, the child is erased and the rest is told; cleaning afterwards ends it."""
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
