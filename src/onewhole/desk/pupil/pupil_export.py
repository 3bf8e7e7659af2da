"""All that is held on one child, for the child's family: as JSON, and as a table."""

import json
from collections.abc import Iterator, Mapping
from pathlib import Path

from onewhole.desk.pupil.csv_cells import csv_text
from onewhole.presses.files import write
from onewhole.presses.folders import made
from onewhole.store.keeping import all_on_pupil
from onewhole.store.opening import Store

_COLUMNS = ("what", "day", "night", "problem", "text", "written", "by")


def export_json(book: Store, room: int, code: str) -> str:
    """Return all that is held on a child as JSON, every earlier writing in it. Raises NotThere.

    Findings are not in it: they are not kept but computed anew from the answers.
    """
    return json.dumps(all_on_pupil(book, room, code), ensure_ascii=False, indent=2) + "\n"


def export_record(book: Store, room: int, code: str) -> Mapping[str, object]:
    """Return the same as plain texts and lists, to be shown. Raises NotThere."""
    return all_on_pupil(book, room, code)


def export_csv(book: Store, room: int, code: str) -> str:
    """Return the same as CSV for a spreadsheet, a row for each thing held. Raises NotThere.

    Cells are guarded against being taken for formulas (see :func:`~.csv_cells.guarded`): such a
    cell has an apostrophe more than what is held.
    """
    return csv_text((_COLUMNS, *_rows(all_on_pupil(book, room, code))))


def put_export(book: Store, room: int, code: str, folder: Path) -> tuple[Path, ...]:
    """Write both into a folder (made if it is not there), mode 0600. Raises NotThere, FileRefused."""
    texts = ((".json", export_json(book, room, code)), (".csv", "\ufeff" + export_csv(book, room, code)))
    made(folder)
    paths = []
    for ending, text in texts:
        path = folder / f"held-on-{code.lower()}{ending}"
        write(path, text.encode())
        path.chmod(0o600)
        paths.append(path)
    return tuple(paths)


def _rows(held: Mapping[str, object]) -> Iterator[tuple[str, ...]]:
    for what in ("class", "code", "name"):
        yield (what, "", "", "", str(held[what] or ""), "", "")
    for what, rows in held.items():
        for row in rows if isinstance(rows, list) else ():
            kind = f"{what}: {row['of']}" if "of" in row else what
            yield (kind, *(row[key] for key in ("day", "night_number", "problem", "text", "written", "by")))
