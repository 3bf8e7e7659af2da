"""The answers of a class in a table of cells, as a workbook holds them, where nobody can be asked.

The table is recognised as one that is pasted in the browser (:mod:`onewhole.marking.reading.tables`). Where a
question would be asked there, the table is refused here with the question and what to do.
"""

from collections.abc import Iterator, Mapping, Sequence

from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.marking.reading.answers_table import MOST_PUPILS, AnswersError
from onewhole.marking.reading.class_answers import ClassAnswers, PupilTexts, read_texts
from onewhole.marking.reading.tables.answer_grid import AnswerGrid
from onewhole.marking.reading.tables.asking import TableTalk
from onewhole.marking.reading.tables.column_problems import column_problems
from onewhole.marking.reading.tables.labels import match_label
from onewhole.marking.reading.tables.layout import TableLayout, find_layout
from onewhole.marking.reading.tables.pupil_columns import is_other_word
from onewhole.marking.reading.tables.spoilt import Spoilt, SpoiltCell, spoilt
from onewhole.marking.reading.tables.table_cell import CellMade, Table, TableCell, column_letters, turned
from onewhole.problems.problem import Problem

#: A line of labels, and a pupil.
LEAST_ROWS = 2
_TYPE_AGAIN = (
    "Format the column as text and type the answer again, or save the sheet as CSV and mend it there."
)


def answers_in_table(table: Table, problems: Sequence[Problem], file: str | None = None) -> ClassAnswers:
    r"""Read the answers of a class from the cells of a sheet.

    Pupils are known by what stands in their column, problems by their labels in any usual form. Raises
    AnswersError with every reason at once: where it is not sure which line or column is what, a pupil who is
    missing or there twice, a problem without a column, a date, a fraction that the sheet shortened.

    >>> from onewhole.marking.reading.tables.cutting import cut_table
    >>> from onewhole.statements.reading import read_statement
    >>> asked = Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6")
    >>> found = answers_in_table(cut_table("Name,Q1\nMaya,3 3/6\nBen,"), (asked,))
    >>> [(one.pupil, one.written[0].text) for one in found.pupils]
    [('Maya', '3 3/6'), ('Ben', '')]
    """
    if sum(any(cell.plain for cell in row) for row in table) < LEAST_ROWS:
        what, remedy = "there is no pupil here", "Write one line a pupil under the labels of the problems."
        raise AnswersError([InputError(what, file=file, line=1, remedy=remedy)])
    layout = _layout(table, problems)
    _check_layout(layout, problems, file)
    talk = TableTalk({})
    columns = column_problems(layout, AnswerGrid((), tuple(problems)), talk)
    rows = [row for row in layout.rows if not is_other_word(_named(layout, row))]
    refusals = [*_row_refusals(layout, rows, file)] or [
        *_column_refusals(layout, talk, columns, problems, file),
        *_cell_refusals(layout, rows, columns, problems, file),
    ]
    if refusals:
        raise AnswersError(refusals)
    places = {label: at for at, label in columns.items()}
    return read_texts(
        (
            PupilTexts(_named(layout, row), tuple(layout.at(row, places[one.label]) for one in problems))
            for row in rows
        ),
        problems,
    )


def _layout(table: Table, problems: Sequence[Problem]) -> TableLayout:
    """Find where everything is; pupils stand across where no heading of a column is a problem's label."""
    found = find_layout(table, (), problems)
    other = find_layout(turned(table), (), problems)
    if _labels(found, problems) or not _labels(other, problems):
        return found
    return replace(other, turned=not other.turned)


def _labels(layout: TableLayout, problems: Sequence[Problem]) -> int:
    heads = [] if layout.heading is None else [layout.at(layout.heading, at) for at in layout.columns]
    return sum(match_label(head, problems) is not None for head in heads)


def _named(layout: TableLayout, row: int) -> str:
    return " ".join(layout.at(row, at) for at in layout.pupils if layout.at(row, at))


def _check_layout(layout: TableLayout, problems: Sequence[Problem], file: str | None) -> None:
    """Refuse a table of which it is not sure where its pupils and its problems are."""
    if layout.heading is not None and layout.pupils and not layout.doubtful:
        return
    labels = ", ".join(one.label for one in problems)
    remedy = f"Write “pupil” above the pupils, and beside it the labels of the problems: {labels}."
    if layout.doubtful and layout.heading is not None:
        texts = ", ".join(cell.plain for cell in layout.table[layout.heading] if cell.plain)
        what, line = f"are these labels of problems or answers: {texts}?", layout.heading + 1
    elif layout.pupils:
        what, line = "which column is which problem? No line says it", 1
    else:
        what, line = "whose are these answers? No column says it", 1
    raise AnswersError([InputError(what, file=file, line=line, remedy=remedy)])


def _place(layout: TableLayout, row: int, column: int) -> tuple[int, int]:
    """Return the line and column of a cell in the sheet, counted from 1."""
    return (column + 1, row + 1) if layout.turned else (row + 1, column + 1)


def _column_refusals(
    layout: TableLayout,
    talk: TableTalk,
    columns: Mapping[int, str],
    problems: Sequence[Problem],
    file: str | None,
) -> Iterator[InputError]:
    heading = layout.heading or 0
    listed = ", ".join(one.label for one in problems) or "none"
    for one in talk.questions:
        if one.chosen is None:
            line, column = _place(layout, heading, one.line - 1)
            twice = len(one.about) > 1
            what = f"which problem is “{one.about[0]}”?"
            if twice:
                what = f"which column is problem {one.about[1]}? “{one.about[0]}” is not the only one"
            remedy = f"Use the labels of the page ({listed}), each once, or take the column out."
            yield InputError(what, file=file, line=line, column=column, remedy=remedy)
    asked = {label for one in talk.questions if one.chosen is None for label in one.about[1:]}
    for problem in problems:
        if problem.label not in {*columns.values(), *asked}:
            what = f"there is no column for problem “{problem.label}”"
            remedy = f"Add a column {problem.label}; leave its cells empty if nobody answered."
            yield InputError(what, file=file, line=_place(layout, heading, 0)[0], remedy=remedy)


def _row_refusals(layout: TableLayout, rows: Sequence[int], file: str | None) -> Iterator[InputError]:
    first_on: dict[str, int] = {}
    at = layout.pupils[0]
    if not rows:
        remedy = "Write one line a pupil under the first line."
        yield InputError("there is no pupil here", file=file, line=(layout.heading or 0) + 1, remedy=remedy)
    if len(rows) > MOST_PUPILS:
        msg = f"these are the answers of more than {MOST_PUPILS} pupils"
        remedy = "Mark one class at a time: put the others into files of their own, each with the first line."
        yield InputError(msg, file=file, line=rows[MOST_PUPILS] + 1, column=1, remedy=remedy)
    for row in rows:
        named, (line, column) = _named(layout, row), _place(layout, row, at)
        if not named:
            remedy = "Write the pupil's code or name beside them."
            yield InputError(
                "these answers have no pupil", file=file, line=line, column=column, remedy=remedy
            )
        elif named in first_on:
            what = f"pupil “{named}” is here a second time, after line {first_on[named]}"
            remedy = "Give each pupil one line, or a code of their own."
            yield InputError(what, file=file, line=line, column=column, remedy=remedy)
        first_on.setdefault(named, line)


def _cell_refusals(
    layout: TableLayout,
    rows: Sequence[int],
    columns: Mapping[int, str],
    problems: Sequence[Problem],
    file: str | None,
) -> Iterator[InputError]:
    by_label = {one.label: one for one in problems}
    for row in rows:
        for at, label in columns.items():
            why = _why_not(layout.table[row][at], by_label[label]) if layout.at(row, at) else ""
            if why:
                line, column = _place(layout, row, at)
                what = f"{_named(layout, row)}, {label} (cell {column_letters(column)}{line}): {why}"
                yield InputError(what, file=file, line=line, column=column, remedy=_TYPE_AGAIN)


def _why_not(cell: TableCell, problem: Problem) -> str:
    """Say why a cell is not taken as it stands; nothing where it is."""
    if cell.made is CellMade.FORMULA:
        return f"this cell is a formula, and what it came to, {cell.plain}, may be old"
    found = spoilt(cell, problem)
    if found is None or (found.how is Spoilt.REDUCED and len(found.offers) == 1):
        return ""
    return _changed(cell.plain, found)


def _changed(text: str, cell: SpoiltCell) -> str:
    """Say how a cell was changed, and ask what it was."""
    was = f": was it {' or '.join(cell.offers)}?" if cell.offers else ""
    match cell.how:
        case Spoilt.DATE:
            return f"the sheet made a date of this answer, {text}{was}"
        case Spoilt.DAYS:
            return f"this may be the number of a date, {text}{was}"
        case Spoilt.REDUCED:
            return f"the sheet shows this answer in its lowest terms, {text}{was}"
