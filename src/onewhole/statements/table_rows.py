"""A typed table cut into rows of cells, one after another, so that a long table needs no room."""

import csv
from collections.abc import Iterable, Iterator
from itertools import chain

from onewhole.errors import InputError

DELIMITERS = (",", ";", "\t")

#: Among so many lines the first one with a sign that divides is looked for.
MOST_ABOVE = 20

#: The line on which a row begins, counted from 1, and its cells.
TableRow = tuple[int, list[str]]


class NoTable(InputError):
    """The text is no table from a line on."""


def cut_rows(lines: Iterable[str], file: str | None = None) -> Iterator[TableRow]:
    r"""Give the rows that have something in them; ``lines`` have their ends.

    Cells are divided by commas, semicolons or tabs, whichever the first line that has any has most of: a
    title may stand above. Raises NoTable with the line from which the text is none.

    >>> list(cut_rows(["item;a;b\n", "\n", "1;1;0\n"]))
    [(1, ['item', 'a', 'b']), (3, ['1', '1', '0'])]
    """
    found = iter(lines)
    above: list[str] = []
    for one in found:
        above.append(one)
        if len(above) == MOST_ABOVE or any(map(one.count, DELIMITERS)):
            break
    delimiter = max(DELIMITERS, key=above[-1].count) if above else DELIMITERS[0]
    reader = csv.reader(chain(above, found), delimiter=delimiter, strict=True)
    line = 1
    try:
        for cells in reader:
            if any(map(str.strip, cells)):
                yield line, cells
            line = reader.line_num + 1
    except csv.Error as error:
        msg = f"from here on this is no table: {error}"
        remedy = 'Look for a quotation mark (") that is opened and not closed.'
        raise NoTable(msg, file=file, line=line, remedy=remedy) from error
