"""A Q-matrix, read from CSV text: one row a problem, one column a skill, 1 where the problem needs the
skill.
"""

from collections.abc import Iterable, Iterator

from onewhole.errors import InputError
from onewhole.mastery.q_matrix import MOST_PROBLEMS, MOST_SKILLS, QMatrix
from onewhole.mastery.skill_model import SkillSet
from onewhole.mastery.table_rows import (
    MOST_TOLD,
    TableRefused,
    header_refusals,
    table_rows,
    width_refusal,
)
from onewhole.statements.table_rows import TableRow


def read_q_matrix(lines: Iterable[str], file: str | None = None) -> QMatrix:
    r"""Read a Q-matrix; the first column names the problems, the first line the skills.

    Raises TableRefused with every reason and its place: a row of another width, a cell that is neither 0 nor
    1, a problem without a skill, a skill that no problem needs, a name that is missing or there twice, more
    than 10 skills or 100 problems.

    >>> q = read_q_matrix(["item,open a whole,same pieces\n", "1,1,0\n", "2,1,1\n"])
    >>> q.problems, q.needs
    (('1', '2'), (1, 3))
    >>> try:
    ...     read_q_matrix(["item,a\n", "1,x\n"])
    ... except TableRefused as refused:
    ...     print(refused)
    The cell is “x”, and 1 or 0 is wanted (line 2, column 2).
    Write 1 where the problem needs the skill, and 0 where it does not.
    """
    rows: list[TableRow] = []
    for row in table_rows(lines, file):
        rows.append(row)
        if len(rows) > MOST_PROBLEMS + 1:
            what = f"there are more than {MOST_PROBLEMS} problems"
            remedy = "Take fewer problems: a part of the test at a time."
            raise TableRefused([InputError(what, file=file, line=row[0], column=1, remedy=remedy)])
    (line, head), *body = rows
    if len(head) - 1 > MOST_SKILLS:
        what = f"there are {len(head) - 1} skills, and {2 ** (len(head) - 1):,} kinds of pupil"
        remedy = (
            f"Take at most {MOST_SKILLS} skills ({2**MOST_SKILLS:,} kinds of pupil): put skills together."
        )
        raise TableRefused([InputError(what, file=file, line=line, column=MOST_SKILLS + 2, remedy=remedy)])
    refusals = [*_head(rows, file), *(one for row in body for one in _row(row, len(head), file))]
    if not refusals:
        refusals = [*_names(body, file), *_unused(head, body, line, file)]
    if refusals:
        raise TableRefused(refusals[:MOST_TOLD])
    needs = tuple(_needs(cells) for _, cells in body)
    return QMatrix(
        tuple(cell.strip() for cell in head[1:]), tuple(cells[0].strip() for _, cells in body), needs
    )


def _needs(cells: list[str]) -> SkillSet:
    return sum(1 << at for at, cell in enumerate(cells[1:]) if cell.strip() == "1")


def _head(rows: list[TableRow], file: str | None) -> Iterator[InputError]:
    line, head = rows[0]
    if len(head) == 1:
        remedy = "Write a column for each skill, divided by commas."
        yield InputError("there is no skill here", file=file, line=line, column=1, remedy=remedy)
    yield from header_refusals(head, line, "skill", file)
    if len(rows) == 1:
        remedy = "Write one line a problem under the first line."
        yield InputError("there is no problem here", file=file, line=line, column=1, remedy=remedy)


def _row(row: TableRow, width: int, file: str | None) -> Iterator[InputError]:
    line, cells = row
    if len(cells) != width:
        yield width_refusal(cells, line, width, file)
        return
    for column, cell in enumerate(cells[1:], start=2):
        if cell.strip() not in {"0", "1"}:
            what = f"the cell is “{cell.strip()}”, and 1 or 0 is wanted"
            remedy = "Write 1 where the problem needs the skill, and 0 where it does not."
            yield InputError(what, file=file, line=line, column=column, remedy=remedy)


def _names(body: list[TableRow], file: str | None) -> Iterator[InputError]:
    seen: dict[str, int] = {}
    for line, cells in body:
        name = cells[0].strip()
        if not name:
            remedy = "Write the problem's label in the first column."
            yield InputError("this problem has no label", file=file, line=line, column=1, remedy=remedy)
        elif name in seen:
            what = f"problem “{name}” is here a second time, after line {seen[name]}"
            yield InputError(what, file=file, line=line, column=1, remedy="Keep one of the two lines.")
        elif not _needs(cells):
            what = f"problem “{name}” needs no skill"
            remedy = "Give it a skill, or take it out of both tables."
            yield InputError(what, file=file, line=line, column=2, remedy=remedy)
        seen.setdefault(name, line)


def _unused(head: list[str], body: list[TableRow], line: int, file: str | None) -> Iterator[InputError]:
    for column, cell in enumerate(head[1:], start=2):
        if all(cells[column - 1].strip() == "0" for _, cells in body):
            what = f"no problem needs the skill “{cell.strip()}”"
            remedy = "Take its column out: these answers cannot tell of it."
            yield InputError(what, file=file, line=line, column=column, remedy=remedy)
