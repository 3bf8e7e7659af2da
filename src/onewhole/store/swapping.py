"""What stands under a name is replaced by a checked file; no answer falls between its backup and that."""

import sqlite3
from collections.abc import Callable
from contextlib import closing, suppress
from pathlib import Path

from onewhole.store.copying import copy_beside, give_up_when_busy
from onewhole.store.opening import connected, disk_refusals, logs_of, open_store, sync_folder
from onewhole.store.place import FilePlace
from onewhole.store.refusals import FileMoved
from onewhole.store.transaction import translate_errors

#: So often it is begun again where another window was faster.
_TRIES = 20


def swap_in(fresh: Path, goal: Path, before: Callable[[], Path]) -> Path | None:
    """Let a name hold what a fresh file holds; return the backup of what stood there, None for nothing.

    ``fresh`` is a whole file of ours that nobody has open and that wants no log. ``goal`` is a resolved path.
    Where a file of ours stands there it stays the same file: SQLite writes the new content into it in one
    transaction, and what stood is copied to the name that ``before`` gives while that transaction keeps every
    other writer waiting. So an answer that was told as kept is in that backup, and the next one is written
    into what was brought back, or is refused. A process killed meanwhile leaves what stood.
    Raises `StoreRefused`, `Damaged` for what does not open: move that aside first.
    """
    for _ in range(_TRIES):
        with disk_refusals(goal), suppress(FileExistsError, FileMoved):
            if not _is_free(goal):
                return _write_over(fresh, goal, before)
            goal.hardlink_to(fresh)
            sync_folder(goal.parent)
            return None
    raise FileMoved(
        "Other windows go on replacing this file", where=str(goal), remedy="Close them, then do it again."
    )


def _is_free(goal: Path) -> bool:
    return not goal.exists() and not any(log.exists() for log in logs_of(goal))


def _write_over(fresh: Path, goal: Path, before: Callable[[], Path]) -> Path:
    """Write over what stands, once its backup is made. Raises `FileMoved` where it is another file by now."""
    open_store(goal).close()
    place, made = FilePlace.of(goal), list[Path]()

    def held() -> None:
        """Nobody else writes now: copy what stands, and only then go on."""
        place.check()
        with closing(connected(goal, "rw")) as standing:
            copy_beside(standing, one := before())
        made.append(one)

    with (
        translate_errors(goal),
        closing(connected(goal, "rw")) as target,
        closing(connected(fresh, "rw")) as source,
    ):
        target.execute("PRAGMA synchronous = FULL")
        (size,) = target.execute("PRAGMA page_size").fetchone()
        source.execute(f"PRAGMA page_size = {size}")
        source.execute("VACUUM")  # a file with a log takes pages of its own size only
        source.execute("BEGIN")
        (pages,) = source.execute("PRAGMA page_count").fetchone()
        assert pages > 1, "the first step copies one page: the backup is made before the last one"
        source.backup(target, pages=1, progress=give_up_when_busy(held))
        with suppress(sqlite3.Error):  # what was brought back is kept already; the log is merged another time
            target.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    place.check()
    return made[0]
