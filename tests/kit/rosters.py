"""A small class list as OneRoster 1.2 CSV, written by hand, and the same with something changed."""

import zipfile
from collections.abc import Mapping
from io import BytesIO

from onewhole.desk.exchange.roster_files import COLUMNS, DATA_FILES


def _table(name: str, *rows: str) -> str:
    return "".join(f"{line}\r\n" for line in (",".join(COLUMNS[name]), *rows))


_REST = ",,,,,,,,"
USERS = _table(
    "users",
    f'u-1,,,true,a,,Augusta,"\'Lovelace\'",{_REST},"Ada,",,,,',
    f'u-2,,,true,b,,"Bo ""B""",Núñez,{_REST},,,,,',
    f"u-3,,,true,c,,Cy,=cmd,{_REST},,,,,",
    f"u-4,,,true,d,,Di,,{_REST},,,,,",
    f"t-1,,,true,e,,Eve,Teacher,{_REST},,,,,",
)
_FILES = {
    "classes": _table(
        "classes",
        'c-12,,,Room 12,04,k-1,,homeroom,,s-1,"t-1,t-2",,,',
        "c-7,,,Room 7,04,k-1,,homeroom,,s-1,t-1,,,",
        "c-9,tobedeleted,2026-08-01T00:00:00.000Z,Room 9,04,k-1,,homeroom,,s-1,t-1,,,",
    ),
    "users": USERS,
    "enrollments": _table(
        "enrollments",
        "e-1,,,c-12,s-1,u-1,student,,,",
        "e-2,,,c-12,s-1,u-2,student,,,",
        "e-3,,,c-12,s-1,u-3,student,,,",
        "e-4,,,c-12,s-1,t-1,teacher,true,,",
        "e-5,,,c-7,s-1,u-4,student,,,",
    ),
}
_KINDS = "".join(f"file.{name},{'bulk' if name in _FILES else 'absent'}\r\n" for name in DATA_FILES)
_MANIFEST = f"propertyName,value\r\nmanifest.version,1.0\r\noneroster.version,1.2\r\n{_KINDS}"


def packed(files: Mapping[str, str | bytes]) -> bytes:
    """Return these files as a ZIP."""
    held = BytesIO()
    with zipfile.ZipFile(held, "w", zipfile.ZIP_DEFLATED) as made:
        for name, content in files.items():
            made.writestr(name, content)
    return held.getvalue()


def roster(changed: Mapping[str, str | bytes | None] | None = None) -> bytes:
    """Return the class list, with files instead of its own, or without those that are None."""
    files = {"manifest": _MANIFEST, **_FILES, **(changed or {})}
    return packed({f"{name}.csv": content for name, content in files.items() if content is not None})
