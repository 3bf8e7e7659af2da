"""A backup read in this process, as the limited one would: for tests that read very many."""

from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from sqlite3 import Error

from onewhole.store.handed_in import child
from onewhole.store.handed_in.asking import Frames, check_handed_in, refused, said


@contextmanager
def asked_in_process(saved: Path) -> Iterator[Frames]:
    """Answer as :func:`onewhole.store.handed_in.asking.asked` does, without a process of its own."""
    check_handed_in(saved)
    try:
        opened = child.opened(saved)
    except Error as error:
        raise refused(saved, "it cannot be opened") from error
    with closing(opened) as connection:

        def frames(query: str, table: str = "") -> Iterator[bytes]:
            for kind, held in child.answered(connection, query):
                if kind == child.WRONG:
                    raise said(saved, held, table)
                if kind == child.ROWS:
                    yield held

        yield frames
