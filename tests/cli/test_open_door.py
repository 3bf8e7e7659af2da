"""The note of an open door: private, one for each file and person, gone with the program."""

import os
import signal
from collections.abc import Callable
from pathlib import Path

import pytest

from onewhole.cli.open_door import DoorNote, DoorPlace, door_noted, held_door
from onewhole.cli.screen_browser import opened_in_browser

ADDRESS = "http://127.0.0.1:8000/open?key=a&b"


@pytest.fixture
def place(tmp_path: Path) -> DoorPlace:
    """The place of a door in a runtime folder."""
    return DoorPlace.of(tmp_path / "room12.class", {"XDG_RUNTIME_DIR": str(tmp_path)}, tmp_path)


def test_a_place_is_private_and_one_for_each_file(tmp_path: Path, place: DoorPlace) -> None:
    """Whatever the file is called by; in the data folder where there is no runtime folder."""
    runtime = {"XDG_RUNTIME_DIR": str(tmp_path)}
    assert place.note.parent == tmp_path / "onewhole"
    assert place.note.parent.stat().st_mode & 0o777 == 0o700
    assert DoorPlace.of(tmp_path / "a" / ".." / "room12.class", runtime, tmp_path) == place
    assert DoorPlace.of(tmp_path / "room13.class", runtime, tmp_path) != place
    for elsewhere in ({}, {"XDG_RUNTIME_DIR": "here"}, {"XDG_RUNTIME_DIR": str(tmp_path / "none")}):
        found = DoorPlace.of(tmp_path / "room12.class", elsewhere, tmp_path)
        assert found.note.parent == tmp_path / ".local" / "share" / "onewhole" / "open"


def test_a_door_that_is_held_is_found_and_gone_at_the_end(place: DoorPlace) -> None:
    """A second one is not taken; a new address takes the place of the last one, in the page too."""
    with held_door(place) as note:
        assert note is not None
        assert door_noted(place) is None
        note("http://127.0.0.1:8000/open?key=" + "long" * 20)
        note(ADDRESS)
        assert door_noted(place) == DoorNote(os.getpid(), ADDRESS)
        assert 'url=http://127.0.0.1:8000/open?key=a&amp;b"' in place.page.read_text()
        assert {path.stat().st_mode & 0o777 for path in place.note.parent.iterdir()} == {0o600}
        with held_door(place) as second:
            assert second is None
        assert door_noted(place) == DoorNote(os.getpid(), ADDRESS)
    assert list(place.note.parent.iterdir()) == []
    with held_door(place) as again:
        assert again is not None


def test_a_killed_program_holds_nothing(place: DoorPlace) -> None:
    """Its note stays and is not believed; the next start takes the place."""
    told, tells = os.pipe()
    child = os.fork()
    if child == 0:
        with held_door(place) as note:
            if note is not None:
                note(ADDRESS)
                os.write(tells, b"!")
            signal.pause()
        os._exit(0)
    os.close(tells)
    assert os.read(told, 1) == b"!"
    os.close(told)
    with held_door(place) as second:
        assert second is None
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    assert place.note.exists()
    assert door_noted(place) is None
    with held_door(place) as third:
        assert third is not None


def _read_by_all(place: DoorPlace) -> None:
    place.note.chmod(0o644)


def _led_elsewhere(place: DoorPlace) -> None:
    elsewhere = place.note.with_name("elsewhere")
    place.note.rename(elsewhere)
    place.note.symlink_to(elsewhere)


def _filled(place: DoorPlace) -> None:
    place.note.write_bytes(b"kites")


def _of_nobody(place: DoorPlace) -> None:
    place.note.write_bytes(b'{"pid":-1,"address":"http://kites.example"}')


@pytest.mark.parametrize(
    "spoil", [_read_by_all, _led_elsewhere, _filled, _of_nobody, lambda place: place.note.unlink()]
)
def test_a_note_that_is_not_ours_is_not_believed(
    place: DoorPlace, spoil: Callable[[DoorPlace], object]
) -> None:
    """One that others may read, a link, one that says something else, one of no process, none."""
    with held_door(place) as note:
        assert note is not None
        note(ADDRESS)
        spoil(place)
        assert door_noted(place) is None


def test_a_note_that_was_taken_away_is_made_anew(place: DoorPlace) -> None:
    """What is locked is what stands under the name: the door of before is no more to be found."""
    with held_door(place) as first:
        place.note.unlink()
        with held_door(place) as second:
            assert None not in {first, second}


def test_the_key_is_on_no_command_line(
    place: DoorPlace, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A browser is told where the page stands, and reads the key there; none at all is told as that."""
    said: list[str] = []

    def opens(address: str) -> bool:
        said.append(address)
        return True

    monkeypatch.setattr("webbrowser.open", opens)
    assert opened_in_browser(place.page)
    assert said == [f"file://{place.page}"]

    def fails(_address: str) -> bool:
        raise OSError

    monkeypatch.setattr("webbrowser.open", fails)
    assert not opened_in_browser(tmp_path / "a b.html")
