"""`onewhole keep`: the file of a class backed up, restored, looked into, and a child given out or erased."""

import sys
from collections.abc import Iterable, Iterator
from datetime import date
from enum import StrEnum
from getpass import getpass
from pathlib import Path
from typing import Annotated, assert_never

import typer
from msgspec import Struct

from onewhole.cli.checked import checked, checked_after_restoring, checked_copy, mended
from onewhole.cli.clock import now
from onewhole.cli.days import day_in
from onewhole.cli.deleting import class_erased, deleted, made_by_door, near, nights_listed
from onewhole.cli.screen import plain_line
from onewhole.desk.classes.class_records import Store, rooms
from onewhole.desk.keep import backups as desk
from onewhole.desk.keep import locked_backup, restoring, way_back
from onewhole.desk.keep.lying import what_lies
from onewhole.desk.keep.password import LEAST
from onewhole.desk.pupil.given_out import given_out_of, note_given_out
from onewhole.desk.pupil.pupil_export import put_export
from onewhole.errors import InputError

#: How the name of a backup ends.
BACKUP = ".backup"


class KeepAct(StrEnum):
    """What to do with the file."""

    SHOW = "show"
    BACKUP = "backup"
    RESTORE = "restore"
    ASIDE = "aside"
    EXPORT = "export"
    GIVEN = "given"
    ERASE = "erase"
    NIGHTS = "nights"
    DELETE = "delete"
    UNTIL = "until"
    CLEAN = "clean"
    CHECK = "check"
    MEND = "mend"


Do = Annotated[
    KeepAct,
    typer.Argument(
        metavar="DO",
        help="show: what is kept; backup, restore: one file; aside: move away what cannot be "
        "opened; export, erase: a child, or the whole class; nights: with their numbers; delete: a night, a "
        "page or the class, a backup made first; given: note or show "
        "what was given out on a child; until: the last day; clean: take away traces of what was erased; "
        "check: is all as it was written; mend: take back what was damaged.",
    ),
]
ClassFile = Annotated[Path, typer.Argument(metavar="FILE", help="The file of the class.")]
To = Annotated[
    Path | None,
    typer.Option("--to", metavar="PATH", help="backup: the new file; export: the folder."),
]
From = Annotated[Path | None, typer.Option("--from", metavar="BACKUP", help="restore: the backup.")]
Room = Annotated[int, typer.Option("--room", metavar="NUMBER", help="The class in the file.")]
Pupil = Annotated[str, typer.Option("--pupil", metavar="CODE", help="export, erase, given: the child.")]
Day = Annotated[
    str,
    typer.Option(
        "--day",
        metavar="DAY",
        help="until: the last day, as 2027-06-30, or never; given: if not today.",
    ),
]
GivenTo = Annotated[
    str, typer.Option("--given-to", metavar="WHOM", help="export, given: note that WHOM it was given to.")
]
What = Annotated[str, typer.Option("--what", metavar="WORDS", help="given: what was given out.")]
Why = Annotated[str, typer.Option("--why", metavar="WORDS", help="export, given: what for.")]
Locked = Annotated[
    bool, typer.Option("--passphrase", help="backup: lock it with a passphrase, which is asked for twice.")
]
PassphraseFrom = Annotated[
    str,
    typer.Option(
        "--passphrase-from",
        metavar="FILE",
        help="backup, restore: the passphrase is the first line of FILE; - is what is piped in.",
    ),
]
Yes = Annotated[bool, typer.Option("--yes", help="erase, delete: do not ask.")]
WholeClass = Annotated[bool, typer.Option("--whole-class", help="erase: every child of the class at once.")]
Night = Annotated[int, typer.Option("--night", metavar="NUMBER", min=0, help="delete: the night.")]
Sheet = Annotated[int, typer.Option("--page", metavar="NUMBER", min=0, help="delete: the page.")]
Stands = Annotated[
    bool, typer.Option("--as-it-stands", help="mend: let the rest stand, and tell it as damaged no more.")
]
Backups = Annotated[
    bool, typer.Option("--backups/--no-backups", help="erase: from the automatic backups too.")
]


def run(
    do: Do,
    file: ClassFile,
    to: To = None,
    saved: From = None,
    room: Room = 1,
    pupil: Pupil = "",
    day: Day = "",
    given_to: GivenTo = "",
    what: What = "",
    why: Why = "",
    passphrase: Locked = False,
    passphrase_from: PassphraseFrom = "",
    yes: Yes = False,
    backups: Backups = True,
    as_it_stands: Stands = False,
    whole_class: WholeClass = False,
    night: Night = 0,
    page: Sheet = 0,
) -> int:
    """Keep the file of a class safe, and give out or erase what is held on a child."""
    if do is KeepAct.RESTORE:
        done = _put_back(_backup_named(saved, file), file, passphrase_from)
        _say(_restored(done))
        _say(checked_after_restoring(done.path))
        return 0
    if do is KeepAct.ASIDE:
        _say(_aside(file, way_back.put_aside(file, now())))
        return 0
    if do is KeepAct.BACKUP and (passphrase or passphrase_from):
        _back_up_locked(file, _needed(to, "--to", "the new file"), passphrase_from)
        return 0
    if do is KeepAct.CHECK and file.suffix == BACKUP:
        return _told(checked_copy(file))
    book = way_back.open_kept(file)
    try:
        if do is KeepAct.CHECK:
            return _told(checked(book))
        if do is KeepAct.MEND:
            return _told(mended(book, now(), as_it_stands=as_it_stands))
        if do is KeepAct.DELETE:
            _say(deleted(book, room, night, page, yes=yes))
            return 0
        if do is KeepAct.ERASE and whole_class:
            _say(class_erased(book, room, yes=yes, backups=backups))
            return 0
        _say(_done(do, book, to, room, pupil, day, _Given(what, given_to, why), yes=yes, backups=backups))
    finally:
        book.close()
    return 0


def _put_back(saved: Path, file: Path, source: str) -> restoring.Restored:
    if not locked_backup.is_locked_file(saved):
        return restoring.restore_backup(saved, file, now())
    typed = _read(source) if source else getpass("The passphrase of this backup: ")
    return restoring.restore_bytes(locked_backup.unlocked_file(saved, typed), file, now())


def _back_up_locked(file: Path, goal: Path, source: str) -> None:
    """Lock a backup; what happens when the passphrase is forgotten is told before it is typed."""
    book = way_back.open_kept(file)
    try:
        print(locked_backup.FORGOTTEN, flush=True)
        first = _read(source) if source else getpass(f"A passphrase of {LEAST} characters or more: ")
        again = first if source else getpass("The same once more: ")
        locked_backup.back_up_locked(book, goal, locked_backup.check_passphrase(first, again))
    finally:
        book.close()
    print(f"All that is kept is in {goal}, locked.")


def _read(source: str) -> str:
    """A passphrase from a file, or from what is typed or piped in."""
    if source == "-":
        return sys.stdin.readline().rstrip("\r\n")
    return locked_backup.passphrase_in(Path(source))


class _Given(Struct, frozen=True):
    """What was given out, to whom and what for, as typed."""

    what: str
    to: str
    why: str


def _done(
    do: KeepAct,
    book: Store,
    to: Path | None,
    room: int,
    pupil: str,
    day: str,
    given: _Given,
    *,
    yes: bool,
    backups: bool,
) -> Iterator[str]:
    match do:
        case KeepAct.SHOW:
            yield from _shown(book)
        case KeepAct.BACKUP:
            goal = _needed(to, "--to", "the new file")
            desk.back_up(book, goal)
            yield f"All that is kept is in {goal}."
        case KeepAct.EXPORT:
            for path in put_export(book, room, _child(pupil), to or Path("out")):
                yield f"{path}"
            if given.to:
                all_of_it = _Given("all that is held, as JSON and as a table", given.to, given.why)
                yield _noted(book, room, pupil, all_of_it, "")
        case KeepAct.NIGHTS:
            yield from nights_listed(book, room)
        case KeepAct.GIVEN:
            if given.what or given.to:
                yield _noted(book, room, _child(pupil), given, day)
            else:
                yield from _given_out(book, room, pupil)
        case KeepAct.ERASE:
            code = _child(pupil)
            yield from _erased(book, room, code, yes=yes, backups=backups)
        case KeepAct.UNTIL:
            if day:
                desk.set_keep_until(book, None if day == "never" else _day(day))
            yield _until(book)
        case KeepAct.CLEAN:
            desk.clean(book)
            yield "No trace of what was erased is in the file."
        case KeepAct.RESTORE | KeepAct.ASIDE | KeepAct.CHECK | KeepAct.MEND | KeepAct.DELETE:
            raise AssertionError(do)
        case _:
            assert_never(do)


def _noted(book: Store, room: int, code: str, given: _Given, day: str) -> str:
    when = now().astimezone()
    on = _day(day) if day else when.date()
    note_given_out(book, room, code, what=given.what, to=given.to, why=given.why, day=on, now=when)
    return "It is noted."


def _given_out(book: Store, room: int, code: str) -> Iterator[str]:
    lines = given_out_of(book, room, code or None)
    for one in lines:
        why = f", for: {one.why}" if one.why else ""
        yield plain_line(f"{one.day}  {one.code}  {one.what}, to {one.to}{why}")
    if not lines:
        yield "Nothing is noted."


def _shown(book: Store) -> Iterator[str]:
    for room in rooms(book):
        yield f"{room.number}  {plain_line(room.name)}"
        for pupil in room.pupils:
            yield f"   {plain_line(room.shown(pupil.code))}"
    yield _until(book)
    saved = desk.backups_of(book.path)
    yield f"Automatic backups: {len(saved) or 'none'}"
    for one in saved:
        yield f"   {near(book, one.path)}"


def _restored(done: restoring.Restored) -> Iterator[str]:
    if done.aside:
        yield f"What stood there was damaged, or not the file of a class. It is kept as {done.aside.name}."
    if done.before:
        yield f"What stood there is kept in {done.before.parent.name}/{done.before.name}."
    yield f"{done.path.name} is as it was when the backup was made."
    yield "A child that was erased since then is in it again: erase it again."


def _erased(book: Store, room: int, code: str, *, yes: bool, backups: bool) -> Iterator[str]:
    if not yes:
        print(f"Type {code} to erase this child and all that is held on it: ", end="", flush=True)
        if sys.stdin.readline().strip() != code:
            print()
            raise InputError("Nothing was erased", remedy=f"Type {code} when you are asked, or give --yes.")
    done = desk.erase_everywhere(book, room, code, backups=backups, made=made_by_door(book))
    yield f"{code} is erased."
    if done.traces:
        yield f"{done.traces}. Close other windows and make room, then: onewhole keep clean."
    for path in done.cleaned:
        yield f"Erased from {near(book, path)}."
    for path in done.left:
        yield f"May still hold {code}: {near(book, path)}. Look, and take the file away."
    yield f"Backups that you put elsewhere and pages that you printed may still hold {code}."


def _until(book: Store) -> str:
    last = desk.keep_until(book)
    if last is None:
        return "No last day is set."
    if not desk.is_over(book, now().astimezone().date()):
        return f"The last day is {last}."
    there = (f"\n   {one.place.value.what}: {len(one.files)}" for one in what_lies(book.path))
    return f"The last day was {last}: it is over. Nothing is erased by itself. Still there:{''.join(there)}"


def _backup_named(saved: Path | None, file: Path) -> Path:
    """The backup that was named; where none was, the newest good one is told."""
    if saved is not None:
        return saved
    good = way_back.way_back(file).good
    best = f" The newest good one is {good.path.parent.name}/{good.path.name}." if good else ""
    raise InputError("--from is missing", remedy=f"Name the backup after --from.{best}")


def _aside(file: Path, moved: Path) -> Iterator[str]:
    """What was moved, and what may take its place."""
    yield f"What stood there is kept as {moved.name}."
    found = way_back.way_back(file)
    for one, why in found.bad:
        yield f"{one.path.name} is passed over. {why}."
    if found.good:
        where = f"{found.good.path.parent.name}/{found.good.path.name}"
        yield f"The newest good backup is {where}: bring it back with keep restore and --from."
    else:
        yield "There is no good backup here. A new class may be started under this name."


def _needed(path: Path | None, option: str, what: str) -> Path:
    if path is None:
        raise InputError(f"{option} is missing", remedy=f"Name {what} after {option}.")
    return path


def _child(code: str) -> str:
    if not code:
        raise InputError("--pupil is missing", remedy="Name the child by its code: --pupil K01.")
    return code


def _day(text: str) -> date:
    return day_in(text, also=", or write never")


def _told(found: tuple[int, tuple[str, ...]]) -> int:
    """Say what was found, in plain signs; return what a script is told."""
    status, lines = found
    _say(plain_line(line) for line in lines)
    return status


def _say(lines: Iterable[str]) -> None:
    for line in lines:
        print(line)
