"""Two doors on one file, and a file that is moved while a door has it open."""

import json
from collections.abc import Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import set_night, start_room
from onewhole.desk.keep.backups import back_up_daily, backups_folder
from onewhole.desk.keep.way_back import damaged_of
from onewhole.desk.marking import cells
from onewhole.store.answers import answers_of
from onewhole.store.cells import change_answers
from onewhole.store.opening import open_store
from tests.kit.doors import NOW, Opened, opened
from tests.kit.kept import DAY

KEEP = "/mine/1/night/1/marking/keep"


@pytest.fixture
def doors(tmp_path: Path) -> Iterator[tuple[Opened, Opened]]:
    """Two programs that serve one class of two pupils, of which there is a backup."""
    with ExitStack() as stack:
        one, other = (stack.enter_context(opened(tmp_path)) for _ in range(2))
        book = one.door.books["mine"]
        start_room(book, "Room 12", 2, NOW)
        set_night(book, 1, "1. 5 1/8 - 2 5/8", DAY, NOW)
        assert back_up_daily(book, backups_folder(book.path), NOW)
        yield one, other


def _keep(door: Opened, text: str, was: str = "") -> tuple[int, list[str]]:
    came = door.post(KEEP, cells=json.dumps([["K01", "1", text, was]]))
    told = json.loads(came.text)["kept"] if came.status == 200 else []
    return came.status, [one["text"] for one in told]


def _kept(path: Path) -> list[str]:
    store = open_store(path)
    found = [one.text for one in answers_of(store, 1)]
    store.close()
    return found


def test_two_doors_write_one_file(doors: tuple[Opened, Opened]) -> None:
    """Each sees what the other kept; of two writings over one text the second is told."""
    one, other = doors
    assert _keep(one, "a") == (200, ["a"])
    assert _keep(other, "b") == (200, [])
    assert _keep(other, "b", "a") == (200, ["b"])
    assert _kept(one.door.books.paths["mine"]) == ["b"]


def test_a_door_goes_on_in_the_file_that_stands_there(doors: tuple[Opened, Opened]) -> None:
    """One door moves a damaged file aside and brings a backup back; what the other tells as kept from then
    on is in that file, not in the one that was moved.
    """
    one, other = doors
    path = one.door.books.paths["mine"]
    assert _keep(one, "in the damaged file") == (200, ["in the damaged file"])
    one.door.books["mine"].close()
    other.door.books.close()
    with path.open("r+b") as file:
        file.write(b"torn")
    (saved,) = backups_folder(path).iterdir()
    assert other.post("/mine/keep/back", file=saved.name).goes == "/mine/keep?did=aside"
    assert _keep(one, "a") == (200, ["a"])
    assert _kept(path) == ["a"]
    (aside,) = damaged_of(path)
    assert b"in the damaged file" in aside.read_bytes()
    assert aside.name in other.get("/mine/keep").text


def test_a_request_under_way_is_not_told_kept_in_a_moved_file(
    doors: tuple[Opened, Opened], monkeypatch: pytest.MonkeyPatch
) -> None:
    """The other door moves the file while an answer is being written: refused, and asked again it is kept."""
    one, _ = doors
    path = one.door.books.paths["mine"]
    change = change_answers

    def moved(*given: object) -> object:
        monkeypatch.setattr(cells, "change_answers", change)
        found = change(*given)  # type: ignore[arg-type]
        for end in ("", "-wal", "-shm"):
            path.with_name(path.name + end).rename(path.with_name(f"aside{end}"))
        (saved,) = backups_folder(path).iterdir()
        path.write_bytes(saved.read_bytes())
        return found

    monkeypatch.setattr(cells, "change_answers", moved)
    assert _keep(one, "a") == (503, [])
    assert _kept(path) == []
    assert _keep(one, "a") == (200, ["a"])
    assert _kept(path) == ["a"]


def test_a_file_that_is_gone_is_told_and_not_made_anew(doors: tuple[Opened, Opened]) -> None:
    """An empty class would hide that the real one is elsewhere; brought back to its place, it goes on."""
    one, _ = doors
    path = one.door.books.paths["mine"]
    assert _keep(one, "a") == (200, ["a"])
    ends = ("", "-wal", "-shm")
    for end in ends:
        path.with_name(path.name + end).rename(path.with_name(f"aside{end}"))
    assert _keep(one, "b", "a") == (503, [])
    page = one.get("/mine/keep")
    assert (page.status, "gone from its place" in page.text) == (503, True)
    assert (one.get("/").status, path.exists()) == (503, False)
    for end in ends:
        path.with_name(f"aside{end}").rename(path.with_name(path.name + end))
    assert _keep(one, "b", "a") == (200, ["b"])
    assert _kept(path) == ["b"]


def test_what_stood_only_in_a_log_that_was_taken_away_is_saved(doors: tuple[Opened, Opened]) -> None:
    """Somebody cleans the folder: the door that has the log open writes it into the file, and goes on."""
    one, other = doors
    other.door.books.close()
    path = one.door.books.paths["mine"]
    assert _keep(one, "a") == (200, ["a"])
    for end in ("-wal", "-shm"):
        path.with_name(path.name + end).unlink()
    assert _keep(one, "b", "a") == (200, ["b"])
    assert _kept(path) == ["b"]
