"""Problems moved up and down a page that is being typed, readable or not."""

from msgspec import Struct

from onewhole.sheets.sheet_editor import SheetEditor
from onewhole.sheets.typed_lines import lines_of, problem_lines


class Moved(Struct, frozen=True):
    """A problem moved: what is typed now, in a sentence what was done, and where it stands, counted from 1.

    ``place`` is its place among the problems (0: nothing was moved), ``line`` its line.
    """

    typed: str
    words: str
    place: int
    line: int


def moved_by(typed: str, label: str, by: int) -> Moved:
    r"""Return a typed sheet with a problem so many places further down the page, or up; as :func:`moved`.

    >>> moved_by("a. 5 - 2\nb. 6 - 3", "b", -1).typed
    'b. 6 - 3\na. 5 - 2'
    """
    return moved(typed, label, SheetEditor.of(typed).place(label) + by)


def moved_on_line(typed: str, line: int, by: int) -> Moved:
    r"""Return a typed sheet with the problem of a line (from 1) moved; on any other line nothing is.

    >>> moved_on_line("1)5 - 2\n2)6 - 3", 2, -1).typed
    '1)6 - 3\n2)5 - 2'
    """
    said = problem_lines(lines_of(typed)).get(line - 1)
    if said is None:
        return Moved(typed, "There is no problem on this line.", 0, line)
    return moved_by(typed, said.label, by)


def moved(typed: str, label: str, to: int) -> Moved:
    r"""Return a typed sheet with a problem in another place down the page (from 1).

    Instructions, header and blank lines stay where they are, and labels 1, 2, 3 stay in that order down the
    page. The sheet need not be readable. Raises InputError for a label that is not there.

    >>> moved("a. 5 - 2\n# Look first.\nb. 6 - 3", "b", 1)
    Moved(typed='b. 6 - 3\n# Look first.\na. 5 - 2', words='Problem b is number 1 of 2 now.', place=1, line=1)
    """
    rows = SheetEditor.of(typed)
    before, most = rows.place(label), len(rows.problems)
    to = max(1, min(to, most))
    words = f"Problem {label} is number {to} of {most} now." if to != before else f"Problem {label} stays."
    return Moved(rows.moved(label, to).typed, words, to, list(rows.problems.values())[to - 1] + 1)
