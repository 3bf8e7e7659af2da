"""Deleting at the terminal: a night, a page or a class, asked first and named; a class erased for good."""

import sys
from collections.abc import Iterator
from pathlib import Path

from onewhole.cli.clock import now
from onewhole.cli.screen import plain_line
from onewhole.desk.classes.class_records import Store, called_alike, night_page, night_pages, room
from onewhole.desk.keep import deleting as desk
from onewhole.desk.page.kept_pages import kept_versions
from onewhole.errors import InputError


def nights_listed(book: Store, room_number: int) -> Iterator[str]:
    """Say every night of a class by day, with its number, its page's number and what is written on it."""
    for page in night_pages(book, room_number):
        written = desk.night_holding(book, page.night.number)
        said = f"{page.night.number}  {page.night.day}  page {page.kept.number}  {page.name}"
        yield plain_line(f"{said}, {_counted(written.answers, 'answer')}")


def deleted(book: Store, room_number: int, night: int, sheet: int, *, yes: bool) -> Iterator[str]:
    """Delete a night, a page, or with neither the class; what goes is named first, a backup made before."""
    made = made_by_door(book)
    if night:
        page = night_page(book, room_number, night)
        went = desk.night_holding(book, night)
        _ask(f"the night {night}, {page.name}, {page.night.day}", went, yes=yes)
        gone = desk.delete_night(book, room_number, night, now(), saw=desk.holding_text(went), made=made)
    elif sheet:
        called, went = kept_versions(book, sheet)[0].title, desk.sheet_holding(book, sheet)
        _ask(f"the page {sheet}, {called}", went, yes=yes)
        gone = desk.delete_page(book, sheet, now(), saw=desk.holding_text(went), made=made)
    else:
        called, went = room(book, room_number).name, desk.class_holding(book, room_number)
        _ask(f"the class {room_number}, {called}", went, yes=yes)
        gone = desk.delete_class(book, room_number, now(), saw=desk.holding_text(went), made=made)
    yield plain_line(f"{gone.called} is deleted, with {_told(gone.went)}.")
    yield f"All of it is in {near(book, gone.before)}."
    for path in gone.left:
        yield f"Could not be taken away: {near(book, path)}. Take it away yourself."


def class_erased(book: Store, room_number: int, *, yes: bool, backups: bool) -> Iterator[str]:
    """Erase a class from the file and, if asked, from its backups, once its name was typed."""
    called, went = room(book, room_number).name, desk.class_holding(book, room_number)
    if not yes:
        print(plain_line(f"With it goes: {_told(went)}. It cannot be undone."))
        print(f"Type {plain_line(called)} to erase this class: ", end="", flush=True)
        if not called_alike([(room_number, called)], sys.stdin.readline()):
            print()
            raise InputError("Nothing was erased", remedy="Type the class's name when asked, or give --yes.")
    made = made_by_door(book)
    done = desk.erase_class(book, room_number, saw=desk.holding_text(went), backups=backups, made=made)
    yield plain_line(f"{called} is erased.")
    if done.traces:
        yield f"{done.traces}. Close other windows and make room, then: onewhole keep clean."
    for path in done.cleaned:
        yield f"Erased from {near(book, path)}."
    for path in done.left:
        yield f"May still hold children of it: {near(book, path)}. Look, and take the file away."
    yield "Backups that you put elsewhere and pages that you printed may still hold them."


def _ask(what: str, went: desk.Holding, *, yes: bool) -> None:
    if yes:
        return
    print(plain_line(f"With {what}, goes: {_told(went)}. A backup is made first."))
    print("Type yes to delete it: ", end="", flush=True)
    if sys.stdin.readline().strip() != "yes":
        print()
        raise InputError("Nothing was deleted", remedy="Type yes when you are asked, or give --yes.")


def _told(went: desk.Holding) -> str:
    counts = ((went.nights, "night"), (went.answers, "answer"), (went.talks, "line of a talk"))
    more = ((went.recordings, "recording"),)
    return ", ".join(_counted(count, noun) for count, noun in (*counts, *more) if count) or "nothing else"


def _counted(count: int, noun: str) -> str:
    head, _, tail = noun.partition(" ")
    plural = "" if count == 1 else "s"
    return f"{count} {head}{plural}{' ' if tail else ''}{tail}"


def made_by_door(book: Store) -> Path:
    """Return the folder in which the browser door puts what it makes."""
    return book.path.with_name(f"{book.path.stem}-made") / "mine"


def near(book: Store, path: Path) -> str:
    """Return a path as seen from the folder of the class's file."""
    return path.relative_to(book.path.parent).as_posix()
