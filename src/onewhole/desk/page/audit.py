"""Look a sheet over before it is printed."""

from pathlib import Path

from onewhole.desk.page.sheets import sheet_in
from onewhole.sheets.audit import Audit
from onewhole.sheets.audit import audit as audited
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.audit_json import Json, audit_object
from onewhole.writers.audit_lines import audit_lines


def audit(sheet: str) -> Audit:
    r"""Look over a typed sheet: what each problem needs and can show, and what may be changed.

    Raises SheetError with every mistake of the sheet and its place.

    >>> audit("1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6").findings[0]
    Twins(labels=('1', '2'))
    """
    return audited(WorkedSheet(read_sheet(sheet)))


def audit_file(path: Path) -> Audit:
    """Look over the sheet in a file; InputError when it cannot be read."""
    return audited(WorkedSheet(sheet_in(path)))


def audit_sheet(sheet: WorkedSheet) -> Audit:
    """Look over a sheet that is read and worked already."""
    return audited(sheet)


def told(audit: Audit) -> tuple[str, ...]:
    """Return an audit as plain lines (see :func:`onewhole.writers.audit_lines.audit_lines`)."""
    return audit_lines(audit)


def as_object(audit: Audit) -> Json:
    """Return an audit as a JSON object."""
    return audit_object(audit)
