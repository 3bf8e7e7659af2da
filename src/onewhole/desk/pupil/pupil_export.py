"""All that is held on one child, for the child's family: on a page, as JSON, and as a table."""

import json
from collections.abc import Iterator
from pathlib import Path

from msgspec import Struct
from msgspec.structs import asdict

from onewhole.desk.pupil.csv_cells import csv_bytes, csv_text
from onewhole.desk.pupil.held_findings import HOW_KNOWN, HeldFinding, held_findings
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.presses.files import write
from onewhole.presses.folders import made
from onewhole.store.given_out import GivenOut, given_out_of
from onewhole.store.keeping import all_on_pupil
from onewhole.store.opening import Store

_COLUMNS = ("what", "day", "night", "problem", "text", "written", "by")
_GIVEN = ("what", "to", "why", "day", "written", "by")
_PROGRAM = "found by the program"


class AllHeld(Struct, frozen=True):
    """All that the file holds on a child: the rows that were typed, and what the program found in them."""

    rows: dict[str, object]
    findings: tuple[HeldFinding, ...]
    given_out: tuple[GivenOut, ...]

    @property
    def answers(self) -> object:
        """Return every writing of every answer."""
        return self.rows["answers"]

    @property
    def corrections(self) -> object:
        """Return the teacher's word."""
        return self.rows["corrections"]

    @property
    def papers(self) -> object:
        """Return the teacher's words on the papers of nights."""
        return self.rows["night_words"]

    @property
    def cells(self) -> object:
        """Return the cells of papers that were read from pictures and are still kept."""
        return self.rows["paper_cells"]

    @property
    def talks(self) -> object:
        """Return every row of the talks, those that were taken back too."""
        return self.rows["asked_answers"]


def all_held(book: Store, room: int, code: str) -> AllHeld:
    """Return all that is held on a child, of one moment. Raises NotThere."""
    with book.snapshot() as seen:
        rows = all_on_pupil(seen, room, code)
        return AllHeld(rows, held_findings(seen, room, code), given_out_of(seen, room, code))


def export_json(book: Store, room: int, code: str) -> str:
    """Return all that is held on a child as JSON, every earlier writing in it. Raises NotThere.

    The findings that are kept stand in it in plain words, with how they are known and the caution.
    """
    held = all_held(book, room, code)
    findings = {"caution": CAUTION, "how_known": HOW_KNOWN, "nights": [asdict(one) for one in held.findings]}
    given = [{key: asdict(one)[key] for key in _GIVEN} for one in held.given_out]
    told = {**held.rows, "findings": findings, "given_out": given}
    return json.dumps(told, ensure_ascii=False, indent=2, default=str) + "\n"


def export_csv(book: Store, room: int, code: str) -> str:
    """Return the same as CSV for a spreadsheet, a row for each thing held. Raises NotThere.

    Cells are guarded against being taken for formulas (see :func:`~.csv_cells.guarded`): such a
    cell has an apostrophe more than what is held.
    """
    return csv_text((_COLUMNS, *_rows(all_held(book, room, code))))


def put_export(book: Store, room: int, code: str, folder: Path) -> tuple[Path, ...]:
    """Write both into a folder (made if it is not there), mode 0600. Raises NotThere, FileRefused."""
    files = (
        (".json", export_json(book, room, code).encode()),
        (".csv", csv_bytes(export_csv(book, room, code))),
    )
    made(folder, private=True)
    paths = []
    for ending, content in files:
        path = folder / f"held-on-{code.lower()}{ending}"
        write(path, content, private=True)
        paths.append(path)
    return tuple(paths)


def _rows(held: AllHeld) -> Iterator[tuple[str, ...]]:
    for what in ("class", "code", "name", "joined", "left", "reads"):
        if held.rows[what] or what not in {"joined", "left", "reads"}:
            yield (what, "", "", "", str(held.rows[what] or ""), "", "")
    for what in ("answers", "corrections"):
        rows = held.rows[what]
        assert isinstance(rows, list)
        for row in rows:
            kind = f"{what}: {row['of']}" if "of" in row else what
            yield (kind, *(row[key] for key in ("day", "night_number", "problem", "text", "written", "by")))
    papers = held.rows["night_words"]
    assert isinstance(papers, list)
    for row in papers:
        yield ("paper", row["day"], row["night_number"], "", row["said"], row["written"], row["by"])
    cells = held.rows["paper_cells"]
    assert isinstance(cells, list)
    for row in cells:
        where = (row["day"], row["night_number"], row["problem"])
        yield ("cell of a paper, with its picture", *where, row["text"], row["written"], row["by"])
    talks = held.rows["asked_answers"]
    assert isinstance(talks, list)
    for row in talks:
        told = f"row {row['takes_back']} is taken back" if row["takes_back"] != "0" else _talked(row)
        kind = f"talk: row {row['number']}"
        yield (kind, row["day"], row["night_number"], row["asked"], told, row["written"], row["by"])
    if held.findings:
        yield ("findings: a caution", "", "", "", CAUTION, "", "")
        yield ("findings: how they are known", "", "", "", HOW_KNOWN, "", "")
    for one in held.findings:
        said = {
            "finding": one.says,
            "finding: each answer": one.answers,
            "finding: sat with": one.group,
            "finding: carried on": one.carried,
        }
        for what, text in said.items():
            if text:
                yield (what, one.day.isoformat(), str(one.night), "", text, "", _PROGRAM)
    for given in held.given_out:
        why = f" ({given.why})" if given.why else ""
        told = f"{given.what}, to {given.to}{why}"
        yield ("given out", given.day.isoformat(), "", "", told, str(given.written), given.by)


def _talked(row: dict[str, str]) -> str:
    """Tell what was said in a talk, and the teacher's word on it where there is one."""
    word = f"{row['said']}: {row['about']}" if row["about"] else row["said"]
    return "; ".join(one for one in (row["wrote"], f"the teacher's word: {word}" if word else "") if one)
