"""Keep: the file of the class backed up, restored, its last day; also where the file is damaged."""

from collections.abc import Callable, Iterable, Sequence
from contextlib import suppress
from pathlib import Path

from onewhole.desk.classes.class_records import Classroom, NotThere, Store, StoreRefused, open_book, rooms
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.desk.keep import backups, locked_backup, password, restoring, way_back
from onewhole.desk.keep.lying import what_lies
from onewhole.desk.pupil.given_out import given_out_of
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest, day_typed
from onewhole.web.http.response import Content, HtmlPage, Redirect

#: A backup that is handed in has so many bytes at most.
MOST = locked_backup.LARGEST

#: What was just done, by the word that the address carries.
_DID = {
    "restored": "The backup is back. What stood there before is kept: it is in the list of backups.",
    "aside": "The backup is back. What stood there was moved aside and is kept.",
    "moved": "What stood there was moved aside and is kept. Bring a backup back, or start anew.",
    "until": "The last day is set.",
    "never": "There is no last day now.",
    "removed": "The file was taken away.",
}


def look(request: PageRequest) -> HtmlPage:
    """Show the backups and the last day; where the file cannot be opened, what is wrong and the backups."""
    path = _file(request)
    words: dict[str, object] = {
        "file": path,
        "backups": backups.backups_of(path),
        "aside": way_back.damaged_of(path),
        "lying": what_lies(path),
        "privacy": backups.PRIVACY,
        "did": _DID.get(request.query.get("did", ""), ""),
        "most": MOST // (1024 * 1024),
        "forgotten": locked_backup.FORGOTTEN,
        "least": password.LEAST,
        "longest": password.MOST,
    }
    try:
        found = rooms(request.book)
        last, over = backups.keep_until(request.book), backups.is_over(request.book, request.app.today())
    except StoreRefused as refused:
        damaged = isinstance(refused, way_back.Damaged)
        found_back = way_back.way_back(path) if damaged else None
        told = {"refused": refused, "damaged": damaged, "way_back": found_back}
        return HtmlPage("damaged.html", {**words, **told}, 503)
    given = {room.number: given_out_of(request.book, room.number) for room in found}
    here = {
        **class_looked_at(request, found),
        "rooms": found,
        "until": last,
        "over": over,
        "given": given,
    }
    return HtmlPage("keep.html", {**words, **here})


def class_looked_at(request: PageRequest, found: Sequence[Classroom]) -> dict[str, object]:
    """Return the class of which this page of the whole file was opened, for the page's head and its forms.

    ``of`` is what follows their addresses, so that they lead back to it.
    """
    of = request.query.get("of", "")
    room = next((one for one in found if str(one.number) == of), next(iter(found), None))
    return {
        "room": room,
        "classes": [(one.number, one.name) for one in found],
        "of": f"?of={room.number}" if room and len(found) > 1 else "",
    }


def download(request: PageRequest) -> Content:
    """Give a backup to be saved."""
    name = f"{_file(request).stem}-{request.app.today()}.backup"
    return Content(backups.backup_bytes(request.book), "application/octet-stream", name)


def lock(request: PageRequest) -> Content:
    """Give a backup to be saved that is locked with a passphrase."""
    typed = locked_backup.check_passphrase(request.field("passphrase"), request.field("again"))
    name = f"{_file(request).stem}-{request.app.today()}.backup{locked_backup.ENDING}"
    return Content(locked_backup.locked_bytes(request.book, typed), "application/octet-stream", name)


def restore_own(request: PageRequest) -> Redirect:
    """Bring an automatic backup back."""
    saved = _listed(request, (one.path for one in backups.backups_of(_file(request))))
    return _put_back(request, lambda path: restoring.restore_backup(saved, path, request.app.now()))


def restore_file(request: PageRequest) -> Redirect:
    """Bring a backup back that is handed in; a locked one with its passphrase."""
    upload = request.files.get("backup")
    if upload is None or not upload.content:
        raise InputError("No file was handed in", remedy="Choose a backup first.")
    content = upload.content
    if locked_backup.is_locked(content):
        content = locked_backup.unlocked(content, request.field("passphrase", ""))
    return _put_back(request, lambda path: restoring.restore_bytes(content, path, request.app.now()))


def put_aside(request: PageRequest) -> Redirect:
    """Move aside what cannot be opened; a new class may be started, or a backup brought back."""
    if request.is_demo:
        raise InputError("The demo is put away on its own page", remedy="Go to your own class.")

    def make(path: Path) -> Store:
        with suppress(NotThere):  # it is gone already
            way_back.put_aside(path, request.app.now())
        return open_book(path)

    request.app.books.put_in(request.book_name, make)
    return _done(request, "moved")


def until(request: PageRequest) -> Redirect:
    """Set the last day, or with an empty field that there is none."""
    typed = request.field("day").strip()
    day = day_typed(typed) if typed else None
    stands = backups.keep_until(request.book)
    if is_to_be_written(
        "The last day",
        day.isoformat() if day else "",
        request.field("saw"),
        stands.isoformat() if stands else "",
    ):
        backups.set_keep_until(request.book, day)
    return _done(request, "until" if day else "never")


def remove(request: PageRequest) -> Redirect:
    """Take a backup, or a damaged file that was kept aside, off the disk."""
    path = _file(request)
    backups.remove_kept(
        _listed(request, (*(one.path for one in backups.backups_of(path)), *way_back.damaged_of(path)))
    )
    return _done(request, "removed")


def _file(request: PageRequest) -> Path:
    found = request.app.books.paths.get(request.book_name)
    if found is None or (request.is_demo and not found.exists()):
        raise NotThere("There is no such class file", remedy="Go to the Week and start there.")
    return found


def _listed(request: PageRequest, files: Iterable[Path]) -> Path:
    """Find a file that the page lists by the name that the form sends; nothing else is touched."""
    name = request.field("file")
    for file in files:
        if file.name == name:
            return file
    raise NotThere("This file is not there any more", remedy="Load the page again and choose another.")


def _put_back(request: PageRequest, restore: Callable[[Path], restoring.Restored]) -> Redirect:
    """Close the file, restore, open it again. An invented class takes no backup, so that nothing is mixed."""
    if request.is_demo:
        raise InputError("The demo takes no backup", remedy="Go to your own class and restore there.")
    done: list[restoring.Restored] = []

    def make(path: Path) -> Store:
        done.append(restore(path))
        return open_book(path)

    request.app.books.put_in(request.book_name, make)
    return _done(request, "aside" if done[0].aside else "restored")


def _done(request: PageRequest, what: str) -> Redirect:
    return Redirect(f"{request.at('keep.look')}?did={what}{and_of(request)}")


def and_of(request: PageRequest) -> str:
    """Return what follows an address with a question mark, so that it leads back to the class looked at."""
    of = request.query.get("of", "")
    return f"&of={of}" if of.isascii() and of.isdecimal() else ""
