"""Right and wrong answers, read from CSV text: one row a pupil, one column a problem, 1, 0 or nothing in a
cell.

The text is walked line by line and equal rows are counted at once, so that the room it needs grows with the
different rows and not with the pupils.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import islice

from onewhole.errors import InputError
from onewhole.mastery.right_wrong import MISSING, RightWrong
from onewhole.mastery.seen_codes import SeenCodes
from onewhole.mastery.table_rows import (
    MOST_TOLD,
    TableRefused,
    header_refusals,
    table_rows,
    width_refusal,
)
from onewhole.statements.table_rows import TableRow

#: The lines of a table, from the first on; called again for another walk.
Lines = Callable[[], Iterable[str]]
_SIGNS = {"1": "1", "0": "0", "": MISSING}


def read_right_wrong(lines: Lines, problems: Sequence[str], file: str | None = None) -> RightWrong:
    r"""Read the answers to problems that are named by their labels, in any order of columns.

    The first column has the pupils' codes. Raises TableRefused with its reasons, at most twenty, and their
    places: a row of another width, a cell that is not 1, 0 or empty, a code that is missing or there twice, a
    problem that is missing, unknown, there twice, or answered by nobody.

    >>> text = ["pupil,1,2\n", "K01,1,0\n", "K02,1,0\n", "K03,,1\n"]
    >>> read = read_right_wrong(lambda: text, ("1", "2"))
    >>> read.rows, read.times
    (('10', '.1'), (2, 1))
    """
    walked = _walked(lines(), problems, file)
    if walked.maybe_twice:
        walked.refusals.extend(_twice(lines(), walked.maybe_twice, file))
    if walked.refusals:
        first = sorted(walked.refusals, key=lambda refused: (refused.line or 0, refused.column or 0))
        raise TableRefused(first[:MOST_TOLD])
    rows = tuple(walked.counts)
    for at, problem in enumerate(problems):
        if all(row[at] == MISSING for row in rows):
            what = f"nobody answered problem “{problem}”"
            remedy = "Take it out of both tables."
            column = walked.columns[at] + 1
            raise TableRefused([InputError(what, file=file, line=walked.line, column=column, remedy=remedy)])
    return RightWrong(tuple(problems), rows, tuple(walked.counts.values()))


def pupil_rows(
    lines: Iterable[str], problems: Sequence[str], file: str | None = None
) -> Iterator[tuple[str, str]]:
    r"""Give each pupil's code and row, in the order of the file; the text was read before without a refusal.

    >>> list(pupil_rows(["pupil,2,1\n", "K01,1,\n"], ("1", "2")))
    [('K01', '.1')]
    """
    rows = table_rows(lines, file)
    _, head = next(rows)
    columns = _columns(head, problems)
    known: dict[str, str] = {}
    for _, cells in rows:
        text = ",".join(cells[1:])
        if text not in known:
            known[text] = "".join(_SIGNS[cells[column].strip()] for column in columns)
        yield cells[0].strip(), known[text]


class _Walked:
    """What one walk found."""

    def __init__(self, line: int, columns: Sequence[int]) -> None:
        self.line, self.columns = line, columns
        self.counts: dict[str, int] = {}
        self.maybe_twice: set[str] = set()
        self.refusals: list[InputError] = []


def _walked(lines: Iterable[str], problems: Sequence[str], file: str | None) -> _Walked:
    rows = table_rows(lines, file)
    line, head = next(rows)
    refusals = [*header_refusals(head, line, "problem", file), *_unlike(head, line, problems, file)]
    if refusals:
        raise TableRefused(refusals[:MOST_TOLD])
    walked = _Walked(line, _columns(head, problems))
    seen, known, width = SeenCodes(), dict[str, str](), len(head)
    counts, nobody = walked.counts, True
    for at, cells in rows:
        nobody = False
        code = cells[0].strip()
        if not code:
            remedy = "Write the pupil's code in the first column."
            what = "these answers have no pupil"
            walked.refusals.append(InputError(what, file=file, line=at, column=1, remedy=remedy))
        elif seen.add(code):
            walked.maybe_twice.add(code)
        text = ",".join(cells[1:])
        row = known.get(text)
        if row is None:
            walked.refusals.extend(islice(_refused((at, cells), width, file), MOST_TOLD))
            row = known[text] = "".join(
                _SIGNS.get(cell.strip(), MISSING) for cell in map(_at(cells), walked.columns)
            )
        counts[row] = counts.get(row, 0) + 1
        if len(walked.refusals) > MOST_TOLD:
            break
    if nobody:
        remedy = "Write one line a pupil under the first line."
        walked.refusals.append(
            InputError("there is no pupil here", file=file, line=line, column=1, remedy=remedy)
        )
    return walked


def _at(cells: Sequence[str]) -> Callable[[int], str]:
    return lambda column: cells[column] if column < len(cells) else ""


def _columns(head: Sequence[str], problems: Sequence[str]) -> list[int]:
    names = [cell.strip() for cell in head]
    return [names.index(problem, 1) for problem in problems]


def _unlike(
    head: Sequence[str], line: int, problems: Sequence[str], file: str | None
) -> Iterator[InputError]:
    """Refuse columns that are not those of the Q-matrix."""
    names = [cell.strip() for cell in head[1:]]
    if len(names) != len(problems):
        what = f"there are {len(names)} problems here, and {len(problems)} in the Q-matrix"
        remedy = "Let both tables have the same problems, by the same labels."
        yield InputError(what, file=file, line=line, column=1, remedy=remedy)
    for column, name in enumerate(names, start=2):
        if name and name not in problems:
            remedy = "Use the labels of the Q-matrix, or take the column out."
            what = f"the Q-matrix has no problem “{name}”"
            yield InputError(what, file=file, line=line, column=column, remedy=remedy)
    for problem in problems:
        if problem not in names:
            remedy = f"Add a column {problem}, or take the problem out of the Q-matrix."
            what = f"there is no column for problem “{problem}”"
            yield InputError(what, file=file, line=line, column=1, remedy=remedy)


def _refused(row: TableRow, width: int, file: str | None) -> Iterator[InputError]:
    line, cells = row
    if len(cells) != width:
        yield width_refusal(cells, line, width, file)
        return
    for column, cell in enumerate(cells[1:], start=2):
        if cell.strip() not in _SIGNS:
            what = f"the cell is “{cell.strip()}”, and 1, 0 or nothing is wanted"
            remedy = "Write 1 for right, 0 for wrong, and leave the cell empty where nothing was answered."
            yield InputError(what, file=file, line=line, column=column, remedy=remedy)


def _twice(lines: Iterable[str], codes: set[str], file: str | None) -> Iterator[InputError]:
    """Refuse codes that are there twice; only some may be."""
    first: dict[str, int] = {}
    rows = table_rows(lines, file)
    next(rows)
    for line, cells in rows:
        code = cells[0].strip()
        if code not in codes:
            continue
        if code in first:
            what = f"pupil “{code}” is here a second time, after line {first[code]}"
            remedy = "Give each pupil one line, or a code of their own."
            yield InputError(what, file=file, line=line, column=1, remedy=remedy)
        first.setdefault(code, line)
