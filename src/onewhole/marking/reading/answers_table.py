"""The answers of a class, read from CSV text: one row a pupil, one column a problem.

The text is untrusted. Every cell is text and nothing else: what looks like a formula is never worked, and
what cannot be read as an answer is kept as written.
"""

from collections.abc import Iterator, Sequence
from io import StringIO
from itertools import islice

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.marking.reading.class_answers import ClassAnswers, PupilTexts, read_texts
from onewhole.marking.reading.tables.labels import match_label
from onewhole.marking.reading.tables.layout import find_layout
from onewhole.marking.reading.tables.table_cell import table_of
from onewhole.problems.problem import Problem
from onewhole.statements.table_rows import NoTable, cut_rows

PUPIL = "pupil"
#: More than a whole grade of a school, and as many as are seated within seconds.
MOST_PUPILS = 200
#: The most mistakes that one refusal lists.
MOST_TOLD = 20
_MARK = "\N{ZERO WIDTH NO-BREAK SPACE}"  # the byte-order mark that some spreadsheets write first


class AnswersError(InputError):
    r"""The answers cannot be used; ``refusals`` are all the reasons, in the order of the file.

    ``column`` of each counts the columns of the table from 1, as a spreadsheet does, and ``line`` counts the
    lines of the file. The error itself is placed where the first of them is.

    >>> try:
    ...     read_answers("pupil\nK01\nK01", ())
    ... except AnswersError as refused:
    ...     print(refused)
    Pupil “K01” is here a second time, after line 2 (line 3, column 1).
    Give each pupil one line, or a code of their own.
    """

    refusals: tuple[InputError, ...]

    def __init__(self, refusals: Sequence[InputError]) -> None:
        """Gather refusals; there is at least one."""
        first = refusals[0]
        super().__init__(
            _told(refusals),
            file=first.file,
            line=first.line,
            column=first.column,
            remedy=first.remedy if len(refusals) == 1 else "Change all of these and read the answers again.",
        )
        self.refusals = tuple(refusals)


def read_answers(text: str, problems: Sequence[Problem], file: str | None = None) -> ClassAnswers:
    r"""Read the answers of a class.

    The first column is called ``pupil``, or as pupils are called in tables (name, code, student), the others
    carry the labels of the problems in any order and any usual form, as in a table that is pasted
    (:mod:`onewhole.marking.reading.tables`); lines above that are a title. Cells are divided by commas,
    semicolons or tabs, whichever the first line with any of them uses. A row that ends early leaves the rest
    blank; an empty row, and an empty column without a label, is left out. Raises AnswersError with every
    reason at once: a column that is missing, unknown or there twice, a row that is too long, a pupil that is
    missing or there twice, text that is no table, more than 200 pupils.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6")
    >>> [row.written[0].text for row in read_answers("pupil;1\nK01;3 3/6\nK02;", (asked,)).pupils]
    ['3 3/6', '']
    """
    rows = csv_rows(text, file, MOST_PUPILS + 1)
    if len(rows) > MOST_PUPILS + 1:
        msg = f"these are the answers of more than {MOST_PUPILS} pupils"
        remedy = "Mark one class at a time: put the others into files of their own, each with the first line."
        raise AnswersError([InputError(msg, file=file, line=rows[-1].line, column=1, remedy=remedy)])
    if not rows:
        msg = "there are no answers here"
        remedy = "Start with the line: pupil,1,2,3 and so on, then one line a pupil."
        raise AnswersError([InputError(msg, file=file, line=1, remedy=remedy)])
    rows = _headed(rows, problems)
    refusals = [*_header_refusals(rows, problems, file), *_row_refusals(rows, file)]
    if refusals:
        raise AnswersError(sorted(refusals, key=lambda refused: refused.line or 0))
    labels = [_label(cell) for cell in rows[0].cells]
    places = [labels.index(problem.label) for problem in problems]
    texts = (PupilTexts(row.cells[0].strip(), tuple(map(row.at, places))) for row in rows[1:])
    return read_texts(texts, problems)


class CsvRow(Struct, frozen=True):
    """One row with something in it, and the line it begins on."""

    line: int
    cells: list[str]

    def at(self, place: int) -> str:
        """Return a cell; a row that ends early leaves the rest empty."""
        return self.cells[place] if place < len(self.cells) else ""


def csv_rows(text: str, file: str | None, most: int) -> list[CsvRow]:
    """Cut the text into rows with something in them, each with the line it begins on.

    Cutting ends with the first row beyond those that a file may have: ``most``, the header among them.
    Raises AnswersError for text that is no table.
    """
    lines = StringIO(text.removeprefix(_MARK), newline="")
    try:
        return [CsvRow(line, cells) for line, cells in islice(cut_rows(lines, file), most + 1)]
    except NoTable as error:
        raise AnswersError([error]) from error


def _headed(rows: list[CsvRow], problems: Sequence[Problem]) -> list[CsvRow]:
    """Return the rows from the labels on, these as the page has them, where it is sure which line that is."""
    at = 0
    if rows[0].cells[0].strip().casefold() != PUPIL:
        found = find_layout(table_of([row.cells for row in rows]), (), problems)
        if found.heading is None or found.doubtful or found.turned or found.pupils != (0,):
            return rows
        at = found.heading
    labels = [match_label(cell, problems) or cell for cell in rows[at].cells[1:]]
    return [CsvRow(rows[at].line, [PUPIL, *labels]), *rows[at + 1 :]]


def _label(cell: str) -> str:
    """Return a label as the page knows it: ``1.`` and ``2a)`` are typed with their dot or bracket there."""
    return cell.strip().rstrip(".):").strip()


def _header_refusals(
    rows: list[CsvRow], problems: Sequence[Problem], file: str | None
) -> Iterator[InputError]:
    header = rows[0]
    known = [problem.label for problem in problems]
    listed = ", ".join(known) or "none"
    if header.cells[0].strip().casefold() != PUPIL:
        yield InputError(
            f"the first column must be “{PUPIL}”; here it is “{header.cells[0].strip()}”",
            file=file,
            line=header.line,
            column=1,
            remedy=f"Call the first column {PUPIL}.",
        )
    seen: dict[str, int] = {}
    for column, cell in enumerate(header.cells[1:], start=2):
        label = _label(cell)
        if not label and not any(row.at(column - 1).strip() for row in rows):
            continue
        if label not in known:
            what = f"the page has no problem “{label}”" if label else "this column has no label"
            remedy = f"Use the labels of the page ({listed}), or take the column out."
            yield InputError(what, file=file, line=header.line, column=column, remedy=remedy)
        elif label in seen:
            what = f"problem “{label}” has two columns, {seen[label]} and {column}"
            remedy = "Keep one of them."
            yield InputError(what, file=file, line=header.line, column=column, remedy=remedy)
        seen.setdefault(label, column)
    for label in known:
        if label not in seen:
            what = f"there is no column for problem “{label}”"
            remedy = f"Add a column {label}; leave its cells empty if nobody answered."
            yield InputError(what, file=file, line=header.line, remedy=remedy)


def _row_refusals(rows: list[CsvRow], file: str | None) -> Iterator[InputError]:
    width = len(rows[0].cells)
    first_on: dict[str, int] = {}
    if len(rows) == 1:
        remedy = "Write one line a pupil under the first line."
        yield InputError("there is no pupil here", file=file, line=rows[0].line, remedy=remedy)
    for row in rows[1:]:
        pupil = row.cells[0].strip()
        if not pupil:
            remedy = "Write the pupil's code in the first column."
            yield InputError("these answers have no pupil", file=file, line=row.line, column=1, remedy=remedy)
        elif pupil in first_on:
            what = f"pupil “{pupil}” is here a second time, after line {first_on[pupil]}"
            remedy = "Give each pupil one line, or a code of their own."
            yield InputError(what, file=file, line=row.line, column=1, remedy=remedy)
        first_on.setdefault(pupil, row.line)
        extra = next((at for at in range(width, len(row.cells)) if row.cells[at].strip()), None)
        if extra is not None:
            what = f"this row is longer than the first line: it has {len(row.cells)} cells, not {width}"
            remedy = (
                "Look for a sign that divides cells inside an answer, and put that answer in quotation marks."
            )
            yield InputError(what, file=file, line=row.line, column=extra + 1, remedy=remedy)


def _told(refusals: Sequence[InputError]) -> str:
    if len(refusals) == 1:
        return refusals[0].what[:1].upper() + refusals[0].what[1:]
    told = "\n".join(f"- {refused}" for refused in refusals[:MOST_TOLD])
    if len(refusals) > MOST_TOLD:
        told += f"\n- and {len(refusals) - MOST_TOLD} more"
    return f"{len(refusals)} things in the answers need a change:\n{told}\nThe first is here"
