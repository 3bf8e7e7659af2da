"""Rows of a table of right and wrong or of a Q-matrix, and what is refused of them."""

from collections.abc import Iterable, Iterator, Sequence

from onewhole.errors import InputError
from onewhole.statements.table_rows import NoTable, TableRow, cut_rows

#: The most mistakes that one refusal lists.
MOST_TOLD = 20


class TableRefused(InputError):
    """A table cannot be used; ``refusals`` are the reasons, at most twenty, in the order of the file.

    ``line`` counts the lines of the file and ``column`` the columns of the table, as a spreadsheet does. The
    error itself is placed where the first of them is.

    >>> first = InputError("a cell is neither 0 nor 1", line=2, column=3)
    >>> TableRefused([first, InputError("this row is short", line=4, column=1)]).line
    2
    """

    refusals: tuple[InputError, ...]

    def __init__(self, refusals: Sequence[InputError]) -> None:
        """Gather refusals; there is at least one."""
        first = refusals[0]
        told = first.what[:1].upper() + first.what[1:]
        if len(refusals) > 1:
            listed = "\n".join(f"- {refused}" for refused in refusals)
            told = f"{len(refusals)} things in the table need a change:\n{listed}\nThe first is here"
        super().__init__(
            told,
            file=first.file,
            line=first.line,
            column=first.column,
            remedy=first.remedy if len(refusals) == 1 else "Change all of these and try again.",
        )
        self.refusals = tuple(refusals)


def table_rows(lines: Iterable[str], file: str | None = None) -> Iterator[TableRow]:
    r"""Give the rows that have something in them, as :func:`onewhole.statements.table_rows.cut_rows` does.

    Raises TableRefused where the text is no table, and where there is nothing in it.

    >>> list(table_rows(["item;a;b\n", "\n", "1;1;0\n"]))
    [(1, ['item', 'a', 'b']), (3, ['1', '1', '0'])]
    """
    empty = True
    try:
        for row in cut_rows(lines, file):
            empty = False
            yield row
    except NoTable as error:
        raise TableRefused([error]) from error
    if empty:
        msg = "there is nothing in this table"
        remedy = "Start with a line of names, then one line each."
        raise TableRefused([InputError(msg, file=file, line=1, remedy=remedy)])


def header_refusals(cells: Sequence[str], line: int, kind: str, file: str | None) -> Iterator[InputError]:
    """Refuse names of columns, after the first, that are missing or there twice; ``kind`` is what they
    name.
    """
    seen: dict[str, int] = {}
    for column, cell in enumerate(cells[1:], start=2):
        name = cell.strip()
        if not name:
            remedy = f"Name the {kind}, or take the column out."
            yield InputError("this column has no name", file=file, line=line, column=column, remedy=remedy)
        elif name in seen:
            what = f"the {kind} “{name}” has two columns, {seen[name]} and {column}"
            yield InputError(what, file=file, line=line, column=column, remedy="Keep one of them.")
        seen.setdefault(name, column)


def width_refusal(cells: Sequence[str], line: int, width: int, file: str | None) -> InputError:
    """Refuse a row that has not as many cells as the first line."""
    what = f"this row has {len(cells)} cells, and the first line has {width}"
    column = min(len(cells), width) + (len(cells) > width)
    remedy = "Give each column a cell; leave it empty where nothing was answered."
    return InputError(what, file=file, line=line, column=column, remedy=remedy)
