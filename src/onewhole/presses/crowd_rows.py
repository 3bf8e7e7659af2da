"""The answers of very many pupils, row by row from a CSV file, never all at once."""

import csv
from collections.abc import Iterator, Sequence
from pathlib import Path

from onewhole.errors import InputError
from onewhole.marking.reading.answers_table import DELIMITERS, read_answers
from onewhole.presses.crowd import Row
from onewhole.problems.problem import Problem


def crowd_rows(path: Path, problems: Sequence[Problem]) -> Iterator[Row]:
    r"""Yield the pupils of a file: each with a cell a problem, in the order of the page.

    The table is that of :func:`.answers_table.read_answers`: first column ``pupil``, the
    others the labels of the problems in any order. A row that ends early leaves the rest empty. Pupils' codes
    are not compared with one another. Raises InputError, with the line, for what is no such table; rows
    before it have been yielded by then.

    >>> from tempfile import TemporaryDirectory
    >>> from onewhole.statements.reading import read_statement
    >>> asked = Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6")
    >>> with TemporaryDirectory() as folder:
    ...     file = Path(folder) / "answers.csv"
    ...     _ = file.write_text("pupil,1\nK01,3 3/6\n")
    ...     list(crowd_rows(file, [asked]))
    [('K01', ['3 3/6'])]
    """
    try:
        with path.open(encoding="utf-8-sig", newline="") as file:
            yield from _rows(file, path, problems)
    except OSError as error:
        msg = f"the file cannot be read: {error.strerror or error}"
        remedy = "See how the name is spelt, in which folder it is, and that you may read it."
        raise InputError(msg, file=str(path), remedy=remedy) from error
    except UnicodeDecodeError as error:
        msg = "the file is not plain text in UTF-8"
        raise InputError(msg, file=str(path), remedy="Save it again as plain text (UTF-8).") from error


def _rows(file: Iterator[str], path: Path, problems: Sequence[Problem]) -> Iterator[Row]:
    before, head = next(((at, line) for at, line in enumerate(file, start=1) if line.strip()), (1, ""))
    delimiter = max(DELIMITERS, key=head.count)
    places = _places(head, delimiter, path, problems)
    last = max(places)
    reader = csv.reader(file, delimiter=delimiter, strict=True)
    try:
        for cells in reader:
            if not any(map(str.strip, cells)):
                continue
            pupil = cells[0].strip()
            if not pupil:
                msg = "these answers have no pupil"
                raise InputError(
                    msg,
                    file=str(path),
                    line=before + reader.line_num,
                    remedy="Write the pupil's code in the first column.",
                )
            cells.extend([""] * (last + 1 - len(cells)))
            yield pupil, [cells[place] for place in places]
    except csv.Error as error:
        msg = f"from here on this is no table: {error}"
        remedy = 'Look for a quotation mark (") that is opened and not closed.'
        raise InputError(msg, file=str(path), line=before + reader.line_num, remedy=remedy) from error


def _places(head: str, delimiter: str, path: Path, problems: Sequence[Problem]) -> list[int]:
    """Return the column of each problem: a pupil who answers with the number of each column tells."""
    width = len(next(csv.reader([head], delimiter=delimiter)))
    numbers = delimiter.join(("numbers", *(str(at) for at in range(1, width))))
    told = read_answers(f"{head.rstrip()}\n{numbers}", problems, str(path))
    return [int(written.text) for written in told.pupils[0].written]
