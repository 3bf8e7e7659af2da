"""A workbook to type the answers to a page into: for a night of a class, or for a sheet and any classes."""

from collections.abc import Sequence
from datetime import datetime

from onewhole.desk.classes.class_records import MOST_PUPILS, night_page, room, rooms
from onewhole.errors import InputError
from onewhole.presses.answer_workbook import AskedColumn, ClassSheet, answer_workbook
from onewhole.problems.problem import Problem
from onewhole.sheets.document import Sheet
from onewhole.store.opening import Store


def workbook_of_night(book: Store, room_number: int, night: int, when: datetime) -> bytes:
    """Return a workbook for the answers of a night, with the class's codes and names. Raises NotThere."""
    with book.snapshot() as seen:
        page, here = night_page(seen, room_number, night), room(seen, room_number)
    pupils = [(pupil.code, pupil.name or "") for pupil in here.pupils]
    return answer_workbook(_asked(page.sheet.problems), [ClassSheet(here.name, pupils)], when)


def workbook_of_sheet(sheet: Sheet, classes: Sequence[ClassSheet], when: datetime) -> bytes:
    """Return a workbook for the answers to a sheet, with a sheet for each class."""
    return answer_workbook(_asked(sheet.problems), classes, when)


def classes_in(book: Store, room_number: int | None) -> tuple[ClassSheet, ...]:
    """Return the classes of a file, or the one of a number. Raises NotThere."""
    found = rooms(book) if room_number is None else (room(book, room_number),)
    return tuple(
        ClassSheet(one.name, [(pupil.code, pupil.name or "") for pupil in one.pupils]) for one in found
    )


def class_of(pupils: int) -> ClassSheet:
    """Return a class of so many pupils, with codes and no names. Raises InputError.

    >>> class_of(2).pupils
    [('K01', ''), ('K02', '')]
    """
    if not 1 <= pupils <= MOST_PUPILS:
        raise InputError(f"A class has from 1 to {MOST_PUPILS} pupils", remedy="Give another number.")
    return ClassSheet("Answers", [(f"K{number:02}", "") for number in range(1, pupils + 1)])


def _asked(problems: Sequence[Problem]) -> list[AskedColumn]:
    """Return the columns of problems; the hint of a word problem is its words."""
    return [AskedColumn(one.label, one.typed, one.story or one.typed) for one in problems]
