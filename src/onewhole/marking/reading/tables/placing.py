"""Where each answer of a table goes: what is sure is placed, what is not is asked, and nothing is guessed."""

from msgspec import Struct
from msgspec.structs import replace

from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.tables.answer_grid import AnswerGrid
from onewhole.marking.reading.tables.asking import (
    ANSWERS,
    FIRST,
    FIRST_TURNED,
    HERE,
    HERE_TURNED,
    LABELS,
    SKIP,
    Decided,
    TableAsks,
    TableQuestion,
    TableTalk,
)
from onewhole.marking.reading.tables.cell_answers import PlacedCell, cell_answers
from onewhole.marking.reading.tables.column_problems import column_problems
from onewhole.marking.reading.tables.layout import TableLayout, find_layout
from onewhole.marking.reading.tables.row_pupils import row_pupils
from onewhole.marking.reading.tables.table_cell import Table, turned


class Placing(Struct, frozen=True):
    """Where the answers of a table go, as far as that is known, and what is asked.

    ``added`` are pupils to be added, by key, with their names. ``left_out`` are rows and columns that are not
    taken, by their headings; ``titles`` what was read as a title; ``unreadable`` the placed answers that are
    none. ``in_order`` says that columns without a heading are taken in the order of the page, ``turned`` that
    pupils stand across.
    """

    cells: tuple[PlacedCell, ...]
    questions: tuple[TableQuestion, ...]
    added: tuple[tuple[str, str], ...] = ()
    left_out: tuple[str, ...] = ()
    titles: tuple[str, ...] = ()
    unreadable: tuple[PlacedCell, ...] = ()
    in_order: bool = False
    turned: bool = False

    @property
    def open(self) -> tuple[TableQuestion, ...]:
        """Return the questions that have no answer yet."""
        return tuple(one for one in self.questions if one.chosen is None)

    @property
    def pupils(self) -> int:
        """Return of how many pupils answers are placed."""
        return len({one.code for one in self.cells})

    @property
    def problems(self) -> int:
        """Return to how many problems answers are placed."""
        return len({one.label for one in self.cells})

    @property
    def strangers(self) -> tuple[str, ...]:
        """Return whom the class does not have, as they stand in the table."""
        return tuple(
            one.about[0] for one in self.questions if one.asks is TableAsks.PUPIL and len(one.about) == 1
        )


def place(table: Table, grid: AnswerGrid, decided: Decided) -> Placing:
    r"""Lay a table on the grid of a night, with what the teacher decided so far.

    An empty cell changes nothing. While a question is open, the answers that it is about are not placed.

    >>> from onewhole.marking.reading.tables.class_names import ListedPupil
    >>> from onewhole.marking.reading.tables.cutting import cut_table
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> problem = Problem("1", read_statement("5 - 1 1/2"), "5 - 1 1/2")
    >>> grid = AnswerGrid((ListedPupil("K01"), ListedPupil("K02")), (problem,))
    >>> found = place(cut_table("Code,Q1\nK02,3 1/2\nK99,4\n"), grid, {})
    >>> found.cells, [(one.asks.value, one.about) for one in found.open]
    ((PlacedCell(code='K02', label='1', text='3 1/2', read=''),), [('pupil', ('K99',))])
    """
    talk = TableTalk(decided)
    layout = _headed(find_layout(table, grid.pupils, grid.problems), talk)
    if not layout.pupils and layout.heading is None:
        layout, rows, columns = _bare(layout, grid, talk)
    else:
        rows, columns = row_pupils(layout, grid, talk), column_problems(layout, grid, talk)
    cells = tuple(cell_answers(layout, rows, columns, grid, talk))
    problems = {one.label: one for one in grid.problems}
    return Placing(
        cells,
        tuple(talk.questions),
        tuple(talk.added),
        tuple(talk.left_out),
        tuple(" ".join(cell.plain for cell in layout.table[row] if cell.plain) for row in layout.titles),
        tuple(
            one
            for one in cells
            if not one.read and isinstance(read_written(one.text, problems[one.label]).read, Unreadable)
        ),
        in_order=layout.heading is None and bool(layout.pupils) and len(columns) == len(grid.labels),
        turned=layout.turned,
    )


def _headed(layout: TableLayout, talk: TableTalk) -> TableLayout:
    """Settle whether a doubtful first line is of labels or of answers; nothing is placed before."""
    if not layout.doubtful or layout.heading is None:
        return layout
    texts = tuple(cell.plain for cell in layout.table[layout.heading] if cell.plain)
    said = talk.ask("first-line", TableAsks.FIRST_LINE, texts, (LABELS, ANSWERS), line=layout.heading + 1)
    if said == LABELS:
        return layout
    if said is None:
        return replace(layout, rows=(), columns=())
    if not layout.pupils:
        table = turned(layout.table) if layout.turned else layout.table
        every = (tuple(range(len(table))), tuple(range(len(table[0]))))
        return TableLayout(table, (), None, (), *every)
    rows = tuple(sorted((layout.heading, *layout.rows)))
    columns = tuple(
        at
        for at in range(len(layout.table[0]))
        if at not in layout.pupils and any(layout.at(row, at) for row in rows)
    )
    return replace(layout, heading=None, rows=rows, columns=columns)


def _bare(
    layout: TableLayout, grid: AnswerGrid, talk: TableTalk
) -> tuple[TableLayout, dict[int, str], dict[int, str]]:
    """Lay a block without codes and labels where the teacher says: where one was is an offer and no guess."""
    table = layout.table
    if not layout.rows:
        return layout, {}, {}
    flat, here, first = turned(table), (grid.codes_here, grid.labels_here), (grid.codes_shown, grid.labels)
    ways = {
        HERE: (table, here),
        FIRST: (table, first),
        HERE_TURNED: (flat, here),
        FIRST_TURNED: (flat, first),
    }
    if here == first:
        del ways[HERE], ways[HERE_TURNED]
    if len(table) == len(flat) == 1:
        ways = {name: way for name, way in ways.items() if name in {HERE, FIRST}}
    fits = {
        name: (way, codes, labels)
        for name, (way, (codes, labels)) in ways.items()
        if len(way) <= len(codes) and len(way[0]) <= len(labels)
    }
    said = talk.ask("order", TableAsks.ORDER, (str(len(table)), str(len(flat))), (*fits, SKIP))
    if said not in fits:
        return replace(layout, rows=(), columns=()), {}, {}
    way, codes, labels = fits[said]
    rows, columns = range(len(way)), range(len(way[0]))
    laid = TableLayout(way, (), None, (), tuple(rows), tuple(columns), turned=way is flat)
    return laid, dict(zip(rows, codes, strict=False)), dict(zip(columns, labels, strict=False))
