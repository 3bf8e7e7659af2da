"""The invented class as a file: made once in a run for each moment, then copied for every test."""

from datetime import datetime
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

from onewhole.desk.classes.class_records import open_book
from onewhole.desk.classes.demo import fill_demo
from onewhole.desk.classes.marked_nights import mark_missing
from tests.kit.once import once


@cache
def _file(now: datetime, *, read: bool) -> bytes:
    """Return what the file holds."""
    return once(f"the invented class, {now.isoformat()}, {read}", lambda: _made(now, read=read))


def _made(now: datetime, *, read: bool) -> bytes:
    with TemporaryDirectory() as folder:
        path = Path(folder) / "room12.class"
        book = open_book(path)
        fill_demo(book, now)
        if read:
            mark_missing(book, 1, lambda _done, _of: None)
        book.close()
        assert [one.name for one in path.parent.iterdir()] == [path.name], "all of it is in the one file"
        return path.read_bytes()


def lay_invented_class(folder: Path, now: datetime, *, read: bool = False) -> None:
    """Lay the file of the invented class into a folder; with ``read`` the answers of every night are read."""
    (folder / "room12.class").write_bytes(_file(now, read=read))
