"""On Windows an open file takes no other name: where that is so, it is closed first."""

import os
from pathlib import Path

import pytest

from onewhole.cli.open_door import DoorPlace, held_door
from onewhole.presses.files import write
from onewhole.store import copying
from onewhole.store.keeping import backup
from onewhole.store.opening import open_store

HANDLES = Path("/proc/self/fd")

pytestmark = pytest.mark.skipif(not HANDLES.is_dir(), reason="open files are told by Linux only")


@pytest.fixture
def renamed_closed(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Refuse a new name for a file that this process has open, as Windows does; list what was renamed."""
    renamed: list[str] = []
    replace = Path.replace

    def closed(self: Path, target: str | Path) -> Path:
        held = [one for one in HANDLES.iterdir() if os.path.exists(one) and os.path.samefile(one, self)]  # noqa: PTH110, PTH121
        if held:
            raise PermissionError(32, "The process cannot access the file", str(self))
        renamed.append(Path(target).name)
        return replace(self, target)

    monkeypatch.setattr(Path, "replace", closed)
    return renamed


def test_a_backup_takes_its_name_when_it_is_closed(
    renamed_closed: list[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """And only where it has to: elsewhere it is held until then, so that no sweep takes it away."""
    store = open_store(tmp_path / "room12.class")
    with pytest.raises(OSError, match="cannot access"):
        backup(store, tmp_path / "stick.class")
    monkeypatch.setattr(copying, "CLOSES_FIRST", True)
    backup(store, tmp_path / "stick.class")
    store.close()
    assert renamed_closed == ["stick.class"]
    assert [path.name for path in tmp_path.glob(".*")] == []


def test_pages_and_notes_of_a_door_do_too(renamed_closed: list[str], tmp_path: Path) -> None:
    """They are closed before they take their names, on every system."""
    write(tmp_path / "page.pdf", b"kites")
    with held_door(DoorPlace.of(tmp_path / "room12.class", {}, tmp_path)) as note:
        assert note is not None
        note("http://127.0.0.1:8000/open?key=a")
    assert renamed_closed[0] == "page.pdf"
    assert renamed_closed[1].endswith(".html")
