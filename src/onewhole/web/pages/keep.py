"""Keep: the file of the class backed up, restored, its last day; also where the file is damaged."""

from collections.abc import Callable, Iterable
from pathlib import Path

from onewhole.desk.classes.class_records import NotThere, Store, StoreRefused, open_book, rooms
from onewhole.desk.keep import backups
from onewhole.errors import InputError
from onewhole.web.ask import Ask, Given, Shown, Went, day_typed

#: A backup that is handed in has so many bytes at most.
MOST = 256 * 1024 * 1024

#: What was just done, by the word that the address carries.
_DID = {
    "restored": "The backup is back. What stood there before is kept: it is in the list of backups.",
    "aside": "The backup is back. The damaged file was moved aside and is kept.",
    "until": "The last day is set.",
    "never": "There is no last day now.",
    "removed": "The file was taken away.",
}


def look(ask: Ask) -> Shown:
    """Show the backups and the last day; where the file cannot be opened, what is wrong and the backups."""
    path = _file(ask)
    words: dict[str, object] = {
        "file": path,
        "backups": backups.backups_of(path),
        "aside": backups.damaged_of(path),
        "privacy": backups.PRIVACY,
        "did": _DID.get(ask.query.get("did", ""), ""),
        "most": MOST // (1024 * 1024),
    }
    try:
        found = rooms(ask.book)
        last, over = backups.keep_until(ask.book), backups.is_over(ask.book, ask.door.today())
    except StoreRefused as refused:
        damaged = isinstance(refused, backups.Damaged)
        return Shown("damaged.html", {**words, "refused": refused, "damaged": damaged}, 503)
    here = {"room": found[0] if found else None, "rooms": found, "until": last, "over": over}
    return Shown("keep.html", {**words, **here})


def download(ask: Ask) -> Given:
    """Give a backup to be saved."""
    name = f"{_file(ask).stem}-{ask.door.today()}.backup"
    return Given(backups.backup_bytes(ask.book), "application/octet-stream", name)


def restore_own(ask: Ask) -> Went:
    """Bring an automatic backup back."""
    saved = _listed(ask, (one.path for one in backups.backups_of(_file(ask))))
    return _put_back(ask, lambda path: backups.restore_backup(saved, path, ask.door.now()))


def restore_file(ask: Ask) -> Went:
    """Bring a backup back that is handed in."""
    upload = ask.files.get("backup")
    if upload is None or not upload.content:
        raise InputError("No file was handed in", remedy="Choose a backup first.")
    return _put_back(ask, lambda path: backups.restore_bytes(upload.content, path, ask.door.now()))


def until(ask: Ask) -> Went:
    """Set the last day, or with an empty field that there is none."""
    typed = ask.field("day").strip()
    day = day_typed(typed) if typed else None
    backups.set_keep_until(ask.book, day)
    return _done(ask, "until" if day else "never")


def remove(ask: Ask) -> Went:
    """Take a backup, or a damaged file that was kept aside, off the disk."""
    path = _file(ask)
    backups.remove_kept(
        _listed(ask, (*(one.path for one in backups.backups_of(path)), *backups.damaged_of(path)))
    )
    return _done(ask, "removed")


def _file(ask: Ask) -> Path:
    found = ask.door.books.paths.get(ask.book_name)
    if found is None or (ask.is_demo and not found.exists()):
        raise NotThere("There is no such class file", remedy="Go to the Week and start there.")
    return found


def _listed(ask: Ask, files: Iterable[Path]) -> Path:
    """Find a file that the page lists by the name that the form sends; nothing else is touched."""
    name = ask.field("file")
    for file in files:
        if file.name == name:
            return file
    raise NotThere("This file is not there any more", remedy="Load the page again and choose another.")


def _put_back(ask: Ask, restore: Callable[[Path], backups.Restored]) -> Went:
    """Close the file, restore, open it again. An invented class takes no backup, so that nothing is mixed."""
    if ask.is_demo:
        raise InputError("The demo takes no backup", remedy="Go to your own class and restore there.")
    done: list[backups.Restored] = []

    def make(path: Path) -> Store:
        done.append(restore(path))
        return open_book(path)

    ask.door.books.put_in(ask.book_name, make)
    return _done(ask, "aside" if done[0].aside else "restored")


def _done(ask: Ask, what: str) -> Went:
    return Went(f"/{ask.book_name}/keep?did={what}")
