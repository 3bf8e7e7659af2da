"""Delete orphaned temporary files (left by a killed process) that are older than an hour."""

import re
from contextlib import suppress
from datetime import datetime, timedelta
from pathlib import Path
from stat import S_ISREG

from onewhole.store.backups import backups_folder
from onewhole.store.opening import MAKING, Store

#: A file is made within seconds, so a temporary file of this age is an orphan.
ORPHAN_AGE = timedelta(hours=1)

_OURS = re.compile(rf"\..{{1,40}}\.[a-z0-9_]{{8}}{re.escape(MAKING)}(-journal|-wal|-shm)?")


def remove_orphans(store: Store, now: datetime) -> tuple[Path, ...]:
    """Delete orphaned temporary files beside the class file and among its backups; return their paths.

    Only a plain file that is called as ours are, belongs to whom the file of the class belongs, and was not
    touched for an hour. What cannot be taken away stays for the next time.
    """
    owner = store.path.stat().st_uid
    gone = []
    for folder in (store.path.parent, backups_folder(store.path)):
        with suppress(OSError):
            for file in folder.iterdir():
                if _OURS.fullmatch(file.name) and _is_orphan(file, owner, now):
                    file.unlink()
                    gone.append(file)
    return tuple(gone)


def _is_orphan(file: Path, owner: int, now: datetime) -> bool:
    seen = file.lstat()
    return (
        S_ISREG(seen.st_mode)
        and seen.st_uid == owner
        and now.timestamp() - seen.st_mtime > ORPHAN_AGE.total_seconds()
    )
