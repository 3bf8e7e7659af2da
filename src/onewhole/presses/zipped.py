"""Several files in one, for a browser to save: a ZIP file, the same bytes for the same files."""

from collections.abc import Mapping
from io import BytesIO
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo


def zipped(files: Mapping[str, bytes]) -> bytes:
    """Return files by their names as one ZIP file; the date of each is the first that the format has.

    >>> zipped({"a.txt": b"1"})[:2]
    b'PK'
    """
    made = BytesIO()
    with ZipFile(made, "w", ZIP_DEFLATED) as file:
        for name, content in files.items():
            file.writestr(ZipInfo(name), content, ZIP_DEFLATED)
    return made.getvalue()
