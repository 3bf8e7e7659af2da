"""Papers of a sheet in a file are read from pictures: an answers table, and what is still to be looked at."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from pathlib import Path

from msgspec import Struct

from onewhole.desk.paper.judged_cells import Key, deciding_cells, judged_cell, of_two
from onewhole.desk.paper.paper_wishes import sureness_told
from onewhole.desk.paper.seen_papers import NamedPicture, SeesPapers
from onewhole.desk.paper.why_told import UNSEEN_HANDS, why_told
from onewhole.desk.pupil.csv_cells import csv_bytes, csv_text
from onewhole.errors import InputError
from onewhole.findings.in_papers import PaperFinding, PaperMissing, StrangeCell
from onewhole.languages.english.in_papers import found_in_papers
from onewhole.marking.paper.read_cell import ReadCell, to_be_shown
from onewhole.marking.paper.spot_check import spot_cells
from onewhole.marking.paper.sureness import Sureness
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.notations.sentences.text import text_of
from onewhole.presses.contact_sheet import MOST_ON_SHEET, ContactPart, contact_sheet
from onewhole.presses.files import write
from onewhole.sheets.document import Sheet

Json = dict[str, object]


class FilePapers(Struct, frozen=True):
    """The papers of a sheet as they were read: every cell judged, with its picture.

    ``codes`` are the pupils of whom there is anything, in the order in which they were asked for; ``found``
    is what else there is to know.
    """

    sheet: Sheet
    codes: tuple[str, ...]
    cells: Mapping[Key, ReadCell]
    crops: Mapping[Key, bytes]
    found: tuple[PaperFinding, ...]
    sureness: Sureness

    def of(self, verdict: PaperVerdict) -> tuple[Key, ...]:
        """Return the cells of a verdict; those to be looked at by doubt, the largest first."""
        keys = [key for key, cell in self.cells.items() if cell.verdict is verdict]
        if verdict is PaperVerdict.UNSURE:
            keys.sort(key=lambda key: -self.cells[key].doubt)
        return tuple(keys)

    @property
    def spot(self) -> tuple[Key, ...]:
        """Return the cells of the spot check, some of those that were read for sure."""
        return spot_cells(self.of(PaperVerdict.READ), 0)


def read_files(
    sheet: Sheet,
    pictures: Iterable[NamedPicture],
    sees: SeesPapers,
    *,
    codes: Sequence[str],
    sureness: Sureness = Sureness.USUAL,
    awaited: Sequence[str] = (),
) -> FilePapers:
    """Read the papers of a sheet from pictures; nothing is kept.

    ``codes`` are those that a paper may have, ``awaited`` those whose paper is missed where it is not there.
    Raises InputError where there is no picture at all.
    """
    seen = sees(pictures)
    if not seen.cells and not seen.found:
        raise InputError("There is no picture here", remedy="Name the photos or the scan of the papers.")
    problems = {one.label: one for one in sheet.problems}
    cells: dict[Key, ReadCell] = {}
    crops: dict[Key, bytes] = {}
    strange: dict[Key, None] = {}
    for one in seen.cells:
        key = one.code, one.label
        if one.label not in problems or one.code not in codes:
            strange[key] = None
            continue
        cell = judged_cell(one, problems[one.label], sureness.limit)
        cells[key] = of_two(cells[key], cell) if key in cells else cell
        crops[key] = one.crop
    order = {key: (codes.index(key[0]), list(problems).index(key[1])) for key in cells}
    cells = {key: cells[key] for key in sorted(cells, key=lambda key: order[key])}
    there = tuple(dict.fromkeys(code for code, _ in cells))
    texts = {key: cell.text for key, cell in cells.items()}
    for key in deciding_cells(sheet.problems, sheet.header.form, texts, there, {}):
        cells[key] = to_be_shown(cells[key], PaperWhy.DECIDES)
    found = (
        *seen.found,
        *(StrangeCell(*key) for key in strange),
        *(PaperMissing(code) for code in awaited if code not in there),
    )
    return FilePapers(sheet, there, cells, crops, found, sureness)


def answers_table(papers: FilePapers) -> str:
    """Return what was read as CSV, as `mark` takes it; what is to be looked at is left empty.

    A minus sign at the start of an answer has an apostrophe before it, so that no spreadsheet works it out.
    """
    labels = [one.label for one in papers.sheet.problems]
    read = {key: papers.cells[key].text for key in papers.of(PaperVerdict.READ)}
    rows = ([code, *(read.get((code, label), "") for label in labels)] for code in papers.codes)
    return csv_text([["pupil", *labels], *rows])


def put_papers(papers: FilePapers, answers: Path, picture: Path) -> None:
    """Write the answers, and the contact sheet of what is to be looked at, each for its owner alone.

    A file that is there already is never replaced: somebody may have typed into it. Raises InputError and
    FileRefused.
    """
    for path in (answers, picture):
        if path.exists() or path.is_symlink():
            raise InputError(
                "There is a file of this name already, and somebody may have typed into it",
                where=str(path),
                remedy="Choose another name, or put that file away.",
            )
    write(picture, contact_of(papers), private=True)
    write(answers, csv_bytes(answers_table(papers)), private=True)


def contact_of(papers: FilePapers) -> bytes:
    """Return the contact sheet (PNG): the cells to be looked at, then the spot check."""

    def parts(keys: Sequence[Key]) -> tuple[tuple[bytes, str, str], ...]:
        return tuple(
            (
                papers.crops[key],
                f"{key[0]}, {key[1]}: {why_told(papers.cells[key].why)}",
                " | ".join(papers.cells[key].choices) or "nothing",
            )
            for key in keys
        )

    unsure, spot = papers.of(PaperVerdict.UNSURE), papers.spot
    shown = [ContactPart(f"To be looked at: {len(unsure)}", parts(unsure[: MOST_ON_SHEET - len(spot)]))]
    if spot:
        shown.append(ContactPart(f"Read for sure: is each of these {len(spot)} right?", parts(spot)))
    return contact_sheet(UNSEEN_HANDS, shown)


def papers_told(papers: FilePapers) -> Iterator[str]:
    """Give the lines for the teacher: how much was read, what to look at, what else was found."""
    if papers.codes:
        unsure = papers.of(PaperVerdict.UNSURE)
        counts = (
            _counted(len(papers.codes), "paper"),
            _counted(len(papers.of(PaperVerdict.READ)), "answer"),
            _counted(len(papers.of(PaperVerdict.EMPTY)), "empty cell"),
        )
        yield f"Read {', '.join(counts)}. To be looked at: {len(unsure)}."
        yield f"{sureness_told(papers.sureness)}. {UNSEEN_HANDS}"
        for code, label in unsure:
            cell = papers.cells[code, label]
            choices = " or ".join(cell.choices) or "nothing"
            yield f"  {code}, {label}: {choices} ({why_told(cell.why)})"
    else:
        yield "No paper could be read, and nothing was written."
    for one in papers.found:
        yield text_of(found_in_papers(one))


def written(papers: FilePapers, answers: Path, picture: Path) -> str:
    """Say where the files lie, and what to do with them."""
    said = [f"The answers: {answers}"]
    unsure, spot = papers.of(PaperVerdict.UNSURE), papers.spot
    if unsure or spot:
        looks = [f"{len(unsure)} to look at"] * bool(unsure)
        looks += [f"{len(spot)} that were read for sure"] * bool(spot)
        said.append(f"A picture of the cells, {' and '.join(looks)}: {picture}")
        said.append("Type what you see into the answers.")
    if spot:
        said.append("If one that was read for sure is wrong, read again with --sure more.")
    return "\n".join(said)


def _counted(count: int, thing: str) -> str:
    return f"{count} {thing}{'s' * (count != 1)}"


def papers_object(papers: FilePapers) -> Json:
    """Return what was read as a JSON object, with the caution."""
    return {
        "caution": UNSEEN_HANDS,
        "sureness": papers.sureness.value,
        "cells": [
            {
                "pupil": code,
                "problem": label,
                "verdict": cell.verdict.value,
                "text": cell.text,
                "choices": list(cell.choices),
                "doubt_ppm": cell.doubt,
                "why": cell.why.value,
            }
            for (code, label), cell in papers.cells.items()
        ],
        "spot_check": [f"{code}, {label}" for code, label in papers.spot],
        "found": [text_of(found_in_papers(one)) for one in papers.found],
    }
