"""The files of a OneRoster 1.2 package (CSV binding, 1EdTech; read): their columns, and reading them.

A package is a ZIP with all files at its root. Columns are in the order of the standard, compared exactly; a
field holds no line break. Nothing is read that a class list does not need: no address, number or password.
"""

import csv
import re
from collections.abc import Iterator, Mapping, Sequence
from io import StringIO

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.presses.handed_zip import handed_files

#: A list of 60,000 pupils has some 20 MB.
LARGEST = 20_000_000
_LARGEST_PART, _TOGETHER = 60_000_000, 150_000_000
MANIFEST = "manifest"
#: Every data file that a manifest tells of.
DATA_FILES = (
    "academicSessions",
    "categories",
    "classes",
    "classResources",
    "courseResources",
    "courses",
    "demographics",
    "enrollments",
    "lineItemLearningObjectiveIds",
    "lineItems",
    "lineItemScoreScales",
    "orgs",
    "resources",
    "resultLearningObjectiveIds",
    "results",
    "resultScoreScales",
    "roles",
    "scoreScales",
    "userProfiles",
    "userResources",
    "users",
)
_FIRST = ("sourcedId", "status", "dateLastModified")
#: The columns of the files that are read or written here.
COLUMNS: Mapping[str, tuple[str, ...]] = {
    name: (*_FIRST, *columns.split(","))
    for name, columns in {
        "classes": "title,grades,courseSourcedId,classCode,classType,location,schoolSourcedId,termSourcedIds,"
        "subjects,subjectCodes,periods",
        "users": "enabledUser,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,"
        "agentSourcedIds,grades,password,userMasterIdentifier,preferredGivenName,preferredMiddleName,"
        "preferredFamilyName,primaryOrgSourcedId,pronouns",
        "enrollments": "classSourcedId,schoolSourcedId,userSourcedId,role,primary,beginDate,endDate",
        "categories": "title,weight",
        "lineItems": "title,description,assignDate,dueDate,classSourcedId,categorySourcedId,"
        "academicSessionSourcedId,resultValueMin,resultValueMax,schoolSourcedId",
        "results": "lineItemSourcedId,studentSourcedId,scoreStatus,score,scoreDate,comment,textScore,"
        "classSourcedId,inProgress,incomplete,late,missing",
        "lineItemLearningObjectiveIds": "lineItemSourcedId,source,learningObjectiveId",
    }.items()
}
_ID = re.compile(r"[0-9A-Za-z./@_-]{1,255}")
_AGAIN = "Ask for the class list as OneRoster 1.2 CSV, in bulk, and hand it in as it came."
_ROLES_MOVED = (
    "This is a list of OneRoster 1.1: in 1.2 the roles of users stand in roles.csv. "
    "Ask for OneRoster 1.2 CSV, in bulk."
)


class RosterRow(Struct, frozen=True):
    """A line of a file: its number, from 1, its fields, and where each column is."""

    line: int
    fields: Sequence[str]
    columns: Mapping[str, int]

    def __getitem__(self, column: str) -> str:
        """Return a field."""
        return self.fields[self.columns[column]]


class RosterPackage(Struct, frozen=True):
    """A package that was handed in: what refusals call it, its files, and what its manifest says of them."""

    name: str
    files: Mapping[str, bytes]
    kinds: Mapping[str, str]

    def refusal(self, file: str, what: str, line: int | None = None, column: int | None = None) -> InputError:
        """Return a refusal that names the file in the package."""
        return InputError(what, file=f"{self.name}: {file}.csv", line=line, column=column, remedy=_AGAIN)

    def rows(self, file: str) -> Iterator[RosterRow]:
        """Yield the lines of a file that stand; those that are to be deleted do not.

        Raises InputError for a file that is not there, other columns, a field with a line break, a missing or
        wrong identifier.
        """
        if self.kinds.get(file) != "bulk":
            raise self.refusal(
                file, f"The manifest says that this file is {self.kinds.get(file) or 'not there'}"
            )
        lines = self._lines(file)
        line, head = next(lines, (1, []))
        if file == "users" and "role" in head:
            raise InputError(_ROLES_MOVED, file=f"{self.name}: users.csv", line=line, remedy=_AGAIN)
        wanted = COLUMNS[file]
        for at, column in enumerate(wanted):
            if at >= len(head) or head[at] != column:
                here = head[at] if at < len(head) else "nothing"
                what = f"Column {at + 1} is called {column} in OneRoster 1.2, and here it is {here[:40]}"
                raise self.refusal(file, what, line, at + 1)
        columns = {column: at for at, column in enumerate(head)}
        for line, cells in lines:
            if len(cells) != len(head):
                raise self.refusal(file, f"This line has {len(cells)} fields and not {len(head)}", line)
            if not _ID.fullmatch(cells[0]):
                raise self.refusal(file, f"“{cells[0][:40]}” is no sourcedId", line, 1)
            if cells[1] != "tobedeleted":
                yield RosterRow(line, cells, columns)

    def _lines(self, file: str) -> Iterator[tuple[int, list[str]]]:
        name = f"{file}.csv"
        if name not in self.files:
            raise self.refusal(file, "The package does not have this file")
        try:
            text = self.files[name].decode("utf-8-sig")
        except UnicodeDecodeError as error:
            line = self.files[name].count(b"\n", 0, error.start) + 1
            raise self.refusal(file, "This is no UTF-8", line) from error
        reader = csv.reader(StringIO(text, newline=""), strict=True)
        line = 1
        try:
            for cells in reader:
                if reader.line_num > line:
                    at = next(
                        (at for at, cell in enumerate(cells, start=1) if "\n" in cell or "\r" in cell), 1
                    )
                    raise self.refusal(file, "A field has a line break in it", line, at)
                if cells:
                    yield line, cells
                line = reader.line_num + 1
        except csv.Error as error:
            raise self.refusal(file, "From here on this is no CSV", line) from error


def roster_package(content: bytes, name: str) -> RosterPackage:
    """Return a package that was handed in, its manifest read.

    Raises InputError for what is no such package, one that is too large, and another version than 1.2.
    """
    files = handed_files(
        content, name, largest=LARGEST, largest_part=_LARGEST_PART, together=_TOGETHER, remedy=_AGAIN
    )
    package = RosterPackage(name, files, {})
    lines = list(package._lines(MANIFEST))  # noqa: SLF001 - the manifest says what the other files are
    if not lines or lines[0][1] != ["propertyName", "value"]:
        raise package.refusal(MANIFEST, "Its first line is not propertyName,value", 1)
    said = {cells[0]: cells[1] for _, cells in lines[1:] if len(cells) > 1}
    version = said.get("oneroster.version", "")
    if version != "1.2":
        raise package.refusal(MANIFEST, f"This is OneRoster {version or 'of no version'}, and 1.2 is read")
    kinds = {name: said.get(f"file.{name}", "") for name in DATA_FILES}
    return RosterPackage(name, files, kinds)


def is_roster(content: bytes) -> bool:
    """Say whether a ZIP has the manifest of such a package, by the name that stands in it."""
    return content.startswith(b"PK") and b"manifest.csv" in content


def written_files(tables: Mapping[str, list[tuple[str, ...]]]) -> dict[str, bytes]:
    """Return the files of a package, each with its columns, and the manifest that tells of them all."""
    manifest: list[tuple[str, ...]] = [
        ("propertyName", "value"),
        ("manifest.version", "1.0"),
        ("oneroster.version", "1.2"),
    ]
    manifest += [(f"file.{name}", "bulk" if name in tables else "absent") for name in DATA_FILES]
    manifest += [("source.systemName", "onewhole"), ("source.systemCode", "")]
    files = {MANIFEST: manifest}
    for name, rows in tables.items():
        files[name] = [COLUMNS[name], *rows]
    return {f"{name}.csv": _written(rows) for name, rows in files.items()}


def _written(rows: list[tuple[str, ...]]) -> bytes:
    held = StringIO()
    csv.writer(held, lineterminator="\r\n").writerows(rows)
    return held.getvalue().encode()
