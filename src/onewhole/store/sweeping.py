"""What a kill in the middle of making a file leaves behind is swept away, later."""

import re
from contextlib import suppress
from datetime import datetime, timedelta
from pathlib import Path
from stat import S_ISREG

from onewhole.store.backups import backups_folder
from onewhole.store.opening import MAKING, Store

#: A file in the making is ready in seconds; what is as old as this is left over.
LEFT = timedelta(hours=1)

_OURS = re.compile(rf"\..{{1,40}}\.[a-z0-9_]{{8}}{re.escape(MAKING)}(-journal|-wal|-shm)?")


def sweep(store: Store, now: datetime) -> tuple[Path, ...]:
    """Take away what was left in the making beside the file and among its backups, and say what that was.

    Only a plain file that is called as ours are, belongs to whom the file of the class belongs, and was not
    touched for an hour. What cannot be taken away stays for the next time.
    """
    owner = store.path.stat().st_uid
    gone = []
    for folder in (store.path.parent, backups_folder(store.path)):
        with suppress(OSError):
            for file in folder.iterdir():
                if _OURS.fullmatch(file.name) and _left(file, owner, now):
                    file.unlink()
                    gone.append(file)
    return tuple(gone)


def _left(file: Path, owner: int, now: datetime) -> bool:
    seen = file.lstat()
    return (
        S_ISREG(seen.st_mode)
        and seen.st_uid == owner
        and now.timestamp() - seen.st_mtime > LEFT.total_seconds()
    )
