"""What erasing does beside the file of the class: in its backups, and among the pages that were made."""

from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from shutil import rmtree

from onewhole.store.backups import backups_of
from onewhole.store.keeping import settle
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import NotThere, StoreRefused


def erased_in(path: Path, erase: Callable[[Store], object]) -> bool:
    """Erase in a backup; say whether no trace is left there. What is not in it need not be erased."""
    try:
        saved = open_store(path)
        try:
            with suppress(NotThere):
                erase(saved)
            settle(saved)
        finally:
            saved.close()
    except StoreRefused:
        return False
    return True


def erased_in_backups(
    of: Path, erase: Callable[[Store], object], *, backups: bool
) -> tuple[tuple[Path, ...], tuple[Path, ...]]:
    """Erase in the backups of a file where asked; return those without a trace now, and the others."""
    every = tuple(one.path for one in backups_of(of))
    cleaned = tuple(path for path in every if backups and erased_in(path, erase))
    return cleaned, tuple(path for path in every if path not in cleaned)


def taken_away(folder: Path) -> bool:
    """Take a folder of pages away; say whether it is gone. A name that leads elsewhere goes, and no more."""
    if folder.is_symlink():  # it leads to hidden ones
        folder.unlink(missing_ok=True)
    with suppress(OSError):  # it passes over most errors by itself, and not over all
        rmtree(folder, ignore_errors=True)
    return not folder.exists()
