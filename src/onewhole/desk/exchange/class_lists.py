"""Classes and their pupils out of a list that a school has: OneRoster 1.2, or names in a spreadsheet."""

from collections.abc import Iterator, Sequence
from datetime import datetime

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.class_list import name_seen, new_class
from onewhole.desk.classes.class_records import MOST_PUPILS, Classroom
from onewhole.desk.exchange.roster_files import LARGEST, RosterPackage, RosterRow, is_roster, roster_package
from onewhole.desk.marking.handed_table import table_in_file
from onewhole.errors import InputError
from onewhole.marking.reading.tables.pupil_columns import is_pupil_word
from onewhole.marking.reading.tables.table_cell import CellMade, Table, column_letters
from onewhole.store.opening import Store

__all__ = [
    "LARGEST",
    "ListedClass",
    "add_classes",
    "check_classes",
    "class_called",
    "classes_listed",
    "roster_classes",
]

#: So many classes are added at once at most.
MOST_CLASSES = 40
#: Headings of a column of pupils that holds no name.
_NO_NAMES = {"id", "code", "codes", "no", "nr", "number", "initial", "initials", "#"}
_HEAD = "Write Name above the column with the names, or keep that column alone."


class ListedClass(Struct, frozen=True):
    """A class of a list: its title, its pupils' names with the identifiers that the list has for them.

    Of a spreadsheet there are no identifiers: they are empty, and so are those of class, school and term.
    """

    title: str
    pupils: tuple[tuple[str, str], ...]
    sourced_id: str = ""
    school: str = ""
    term: str = ""


def classes_listed(content: bytes, name: str, called: str = "") -> tuple[ListedClass, ...]:
    """Return the classes of a file: a OneRoster package, or a list of names for one class, ``called`` so.

    Raises InputError with the file, line and column, or the cell.
    """
    if is_roster(content):
        return roster_classes(content, name, called)
    if not called:
        what = "This list does not say what the class is called"
        raise InputError(what, file=name, remedy="Name the class.")
    return (
        ListedClass(called, tuple(("", one) for one in _names(table_in_file(content, name).table, name))),
    )


def roster_classes(content: bytes, name: str, called: str = "") -> tuple[ListedClass, ...]:
    """Return the classes of a OneRoster package with their students, in the order of its enrollments.

    Where one is ``called`` so, by its title or identifier, it is that one alone. A pupil is called by the
    preferred given name, or the given one, and the family name; nothing else is read of a user. Raises
    InputError.
    """
    package = roster_package(content, name)
    classes = tuple(
        ListedClass(
            row["title"], (), row["sourcedId"], row["schoolSourcedId"], row["termSourcedIds"].split(",")[0]
        )
        for row in package.rows("classes")
    )
    if called:
        classes = (class_called(classes, called, name),)
    members: dict[str, dict[str, RosterRow]] = {one.sourced_id: {} for one in classes}
    for row in package.rows("enrollments"):
        if row["role"] == "student" and row["classSourcedId"] in members:
            members[row["classSourcedId"]][row["userSourcedId"]] = row
    wanted = {user for of in members.values() for user in of}
    users = {row["sourcedId"]: row for row in package.rows("users") if row["sourcedId"] in wanted}
    return tuple(
        replace(
            one,
            pupils=tuple(
                _pupil(package, user, line, users) for user, line in members[one.sourced_id].items()
            ),
        )
        for one in classes
    )


def _pupil(
    package: RosterPackage, user: str, enrolled: RosterRow, users: dict[str, RosterRow]
) -> tuple[str, str]:
    row = users.get(user)
    if row is None:
        raise package.refusal("enrollments", f"There is no user {user[:40]}", enrolled.line)
    given = row["preferredGivenName"].strip() or row["givenName"].strip()
    family = row["preferredFamilyName"].strip() or row["familyName"].strip()
    try:
        return user, name_seen(" ".join(f"{given} {family}".split()), "This pupil")
    except InputError as refused:
        raise package.refusal("users", refused.what, row.line) from refused


def class_called(classes: Sequence[ListedClass], called: str, name: str) -> ListedClass:
    """Return the class of a title, or of an identifier. Raises InputError that lists what is there."""
    alike = [
        one
        for one in classes
        if called.strip().casefold() in {one.title.strip().casefold(), one.sourced_id.casefold()}
    ]
    if len(alike) == 1:
        return alike[0]
    listed = ", ".join(f"{one.title} ({one.sourced_id})" for one in classes[:20])
    what = f"There is no class called “{called[:40]}”" if not alike else f"{len(alike)} classes are called so"
    raise InputError(what, file=name, remedy=f"Name one of these: {listed}.")


def add_classes(book: Store, classes: Sequence[ListedClass], now: datetime) -> tuple[Classroom, ...]:
    """Keep all of these classes with their pupils, or none. Raises InputError that names the class."""
    check_classes(classes)
    with book.transaction() as within:
        return tuple(
            new_class(within, one.title, 0, [name for _, name in one.pupils], now) for one in classes
        )


def check_classes(classes: Sequence[ListedClass]) -> None:
    """Refuse what cannot be kept, whatever is kept already. Raises InputError."""
    if not classes:
        raise InputError("There is no class in this list", remedy="Look into the file.")
    if len(classes) > MOST_CLASSES:
        listed = ", ".join(one.title for one in classes[:10])
        what = f"There are {len(classes)} classes in this list, and {MOST_CLASSES} are added at once"
        raise InputError(what, remedy=f"Name the one that you mean: {listed} …")
    titles: set[str] = set()
    for one in classes:
        if len(one.pupils) > MOST_PUPILS:
            what = f"{one.title} would have {len(one.pupils)} pupils; a class has at most {MOST_PUPILS}"
            raise InputError(what, remedy="Take the class apart in the list.")
        if one.title.strip().casefold() in titles:
            what = f"Two classes of this list are called {one.title}"
            raise InputError(what, remedy="Name the one that you mean by its sourcedId.")
        titles.add(one.title.strip().casefold())
        name_seen(one.title, "A class of this list")


def _names(table: Table, file: str) -> Iterator[str]:
    """Yield the names of a table: of the columns that are headed so, or of its only column."""
    heads = (
        [(at, cell.plain) for at, cell in enumerate(table[0]) if is_pupil_word(cell.plain)] if table else []
    )
    columns = [at for at, head in heads if not set(head.casefold().split()) & _NO_NAMES]
    if heads and not columns:
        raise InputError("There is no column of names", file=file, line=1, remedy=_HEAD)
    if not heads and (not table or len(table[0]) > 1):
        raise InputError("Which column has the names?", file=file, line=1, remedy=_HEAD)
    for line, row in enumerate(table[1:] if heads else table, start=2 if heads else 1):
        cells = [row[at] for at in columns or (0,)]
        for at, cell in zip(columns or (0,), cells, strict=True):
            if cell.made in {CellMade.DATE, CellMade.FORMULA}:
                made = "a date" if cell.made is CellMade.DATE else "a formula"
                what = f"Cell {column_letters(at + 1)}{line} is {made}, {cell.plain[:40]}, and no name"
                raise InputError(what, file=file, line=line, column=at + 1, remedy="Type the name as text.")
        if called := " ".join(cell.plain for cell in cells if cell.plain):
            try:
                yield name_seen(called, "This pupil")
            except InputError as refused:
                raise InputError(refused.what, file=file, line=line, remedy=refused.remedy) from refused
