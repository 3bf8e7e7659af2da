"""Where a table has its pupils, its problems and its answers."""

from collections.abc import Callable, Iterator, Sequence

from msgspec import Struct

from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.tables.class_names import ListedPupil, MatchedBy, looks_like_code, match_pupil
from onewhole.marking.reading.tables.labels import is_surely_label, match_label
from onewhole.marking.reading.tables.pupil_columns import counts_up, is_pupil_word, pupil_columns
from onewhole.marking.reading.tables.table_cell import Table, turned
from onewhole.problems.problem import Problem


class TableLayout(Struct, frozen=True):
    """A table that has pupils in its rows, turned for that where need be.

    ``titles`` are rows above the table itself; ``heading`` is the row of the problems' labels, or None;
    ``pupils`` are the columns that say whose a row is, none for a bare block; ``rows`` and ``columns`` hold
    answers. ``doubtful`` says that the heading may be a row of answers, ``numbered`` that pupils are told by
    numbers only, which may be answers.
    """

    table: Table
    titles: tuple[int, ...]
    heading: int | None
    pupils: tuple[int, ...]
    rows: tuple[int, ...]
    columns: tuple[int, ...]
    turned: bool = False
    doubtful: bool = False
    numbered: bool = False

    def at(self, row: int, column: int) -> str:
        """Return the text of a cell without blanks around it."""
        return self.table[row][column].plain


def find_layout(table: Table, pupils: Sequence[ListedPupil], problems: Sequence[Problem]) -> TableLayout:
    r"""Find where a table has its pupils, its problems and its answers.

    Pupils stand in a column or, where more of them are found so, in a row. A column or a row of strangers is
    taken for pupils where nothing else can be meant. Empty rows and columns are passed over, except in a bare
    block of answers, where each has its place.

    >>> from onewhole.marking.reading.tables.cutting import cut_table
    >>> from onewhole.statements.reading import read_statement
    >>> page = [Problem("1", read_statement("5 - 2"), "5 - 2")]
    >>> found = find_layout(cut_table("Kites, 3rd period\n\nWho,1\nK02,3\n"), (ListedPupil("K02"),), page)
    >>> found.titles, found.heading, found.pupils, found.rows, found.columns
    ((0,), 2, (0,), (3,), (1,))
    """
    flat, other = turned(table), table
    found, count = pupil_columns(other, pupils, problems)
    across, more = pupil_columns(flat, pupils, problems)
    if not (found or across):
        return _bare(table, problems)
    is_turned = more > count or (not found and bool(across))
    return _with_pupils(
        flat if is_turned else table, across if is_turned else found, pupils, problems, is_turned
    )


def _filled(table: Table, rows: Sequence[int]) -> tuple[int, ...]:
    if not table:
        return ()
    return tuple(at for at in range(len(table[0])) if any(table[row][at].plain for row in rows))


def _labelled(table: Table, heading: int | None, problems: Sequence[Problem]) -> Iterator[int]:
    """Yield the columns that are headed as a problem, also where nobody answered it."""
    if heading is not None:
        yield from (
            at for at, cell in enumerate(table[heading]) if match_label(cell.plain, problems) is not None
        )


def _with_pupils(
    table: Table,
    columns: tuple[int, ...],
    pupils: Sequence[ListedPupil],
    problems: Sequence[Problem],
    is_turned: bool,
) -> TableLayout:
    def whose(row: int) -> list[str]:
        return [table[row][at].plain for at in columns if table[row][at].plain]

    def is_hit(row: int) -> bool:
        matches = [match_pupil(text, pupils) for text in whose(row)]
        return any(one.codes and one.by is not MatchedBy.NUMBER for one in matches)

    beside = [at for at in range(len(table[0])) if at not in columns]
    numbered = len(columns) == 1 and not any(map(is_hit, range(len(table))))
    first_hit = next((row for row in range(len(table)) if is_hit(row)), len(table))
    heading, doubtful = _heading(table, beside, whose, first_hit, problems)
    above = range(heading) if heading is not None else _titles(table, beside, whose, first_hit)
    titles = tuple(row for row in above if any(cell.plain for cell in table[row]))
    after = heading + 1 if heading is not None else (above[-1] + 1 if above else 0)
    rows = tuple(row for row in range(after, len(table)) if any(cell.plain for cell in table[row]))
    filled = {*_filled(table, rows), *_labelled(table, heading, problems)}
    in_rows = tuple(sorted(filled.difference(columns)))
    told_by_number = numbered and counts_up([text for row in rows for text in whose(row)])
    return TableLayout(table, titles, heading, columns, rows, in_rows, is_turned, doubtful, told_by_number)


def _heading(
    table: Table,
    beside: Sequence[int],
    whose: Callable[[int], list[str]],
    first_hit: int,
    problems: Sequence[Problem],
) -> tuple[int | None, bool]:
    """Return the row of labels above the pupils, and whether it may be a row of answers.

    A row that is headed as pupils are goes before others, then the one with the most labels, then the first.
    """
    best: tuple[int, tuple[bool, int]] | None = None
    for row in range(min(first_hit, len(table))):
        texts = [table[row][at].plain for at in beside if table[row][at].plain]
        labels = [label for text in texts if (label := match_label(text, problems)) is not None]
        count = len(set(labels))
        corner = " ".join(whose(row))
        is_headed = not corner or is_pupil_word(corner) or all(map(is_pupil_word, whose(row)))
        if not count and not (corner and is_headed):
            continue
        few = looks_like_code(corner) or 2 * len(labels) < len(texts) - 1
        if few and not (corner and is_headed):
            continue
        rank = bool(corner) and is_headed, count
        if best is None or rank > best[1]:
            best = row, rank
    if best is None:
        return None, False
    row = best[0]
    corner = " ".join(whose(row))
    texts = [table[row][at].plain for at in beside if table[row][at].plain]
    in_order = [match_label(text, problems) for text in texts] == [one.label for one in problems]
    sure = (
        (bool(corner) and all(map(is_pupil_word, whose(row))))
        or (not corner and _grows(texts, problems))
        or any(map(is_surely_label, texts))
        or (in_order and first_hit < len(table))
        or any(isinstance(read_written(text).read, Unreadable) for text in texts)
    )
    return row, not sure


def _grows(texts: Sequence[str], problems: Sequence[Problem]) -> bool:
    """Whether the labels of a row come in the order of the page, each once."""
    known = [one.label for one in problems]
    places = [known.index(label) for text in texts if (label := match_label(text, problems)) is not None]
    return places == sorted(set(places))


def _titles(table: Table, beside: Sequence[int], whose: Callable[[int], list[str]], first_hit: int) -> range:
    """Return the rows above the first pupil of the class that hold no answer beside them."""
    last = -1
    for row in range(min(first_hit, len(table))):
        texts = [table[row][at].plain for at in beside if table[row][at].plain]
        if not any(not isinstance(read_written(text).read, Unreadable) for text in texts) and (
            texts or not any(map(looks_like_code, whose(row)))
        ):
            last = row
        else:
            break
    return range(last + 1) if first_hit < len(table) else range(0)


def _bare(table: Table, problems: Sequence[Problem]) -> TableLayout:
    """A block without pupils: with a row of labels above it, or a column of them beside it, or nothing."""
    for is_turned, way in ((False, table), (True, turned(table))):
        for row, cells in enumerate(way[:-1]):
            texts = [cell.plain for cell in cells if cell.plain]
            labels = [match_label(text, problems) for text in texts]
            several = len(labels) > 1 or (bool(texts) and is_surely_label(texts[0]))
            if several and all(labels) and len(set(labels)) == len(labels):
                after = range(row + 1, len(way))
                columns = tuple(
                    at for at in range(len(way[0])) if any(way[one][at].plain for one in (row, *after))
                )
                sure = all(map(is_surely_label, texts)) or any(
                    isinstance(read_written(text).read, Unreadable) for text in texts
                )
                titles = tuple(above for above in range(row) if any(cell.plain for cell in way[above]))
                return TableLayout(way, titles, row, (), tuple(after), columns, is_turned, not sure)
            if len(texts) > 1 or any(not isinstance(read_written(text).read, Unreadable) for text in texts):
                break
    columns = tuple(range(len(table[0]))) if table else ()
    return TableLayout(table, (), None, (), tuple(range(len(table))), columns)
