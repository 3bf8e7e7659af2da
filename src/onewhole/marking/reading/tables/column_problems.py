"""Which problem each column of a table is: by its heading, in the order of the page, or asked."""

from collections import Counter

from onewhole.marking.reading.tables.answer_grid import AnswerGrid
from onewhole.marking.reading.tables.asking import (
    EACH,
    FIRST,
    HERE,
    SKIP,
    TableAsks,
    TableQuestion,
    TableTalk,
)
from onewhole.marking.reading.tables.labels import match_label
from onewhole.marking.reading.tables.layout import TableLayout
from onewhole.marking.reading.tables.pupil_columns import is_other_word, is_pupil_word


def column_problems(layout: TableLayout, grid: AnswerGrid, talk: TableTalk) -> dict[int, str]:
    """Return the label of each column that is settled; what is not is asked.

    A heading that means one problem is sure, where no other column has the same. Without headings, as many
    columns as problems are taken in the order of the page, and any other number is asked about.
    """
    if layout.heading is None:
        return _in_order(layout, grid, talk)
    heads = {at: layout.at(layout.heading, at) for at in layout.columns}
    labels = {at: match_label(head, grid.problems) for at, head in heads.items()}
    counted = Counter(labels.values())
    found: dict[int, str] = {}
    for at, label in labels.items():
        if label is not None and counted[label] == 1 and f"column:{at}" not in talk.decided:
            found[at] = label
        elif is_pupil_word(heads[at]):
            talk.left_out.append(heads[at])
        elif (said := _asked_which(at, heads[at], label, grid, talk)) is not None:
            found[at] = said
    return _none_twice(found, heads, grid, talk)


def _asked_which(at: int, head: str, label: str | None, grid: AnswerGrid, talk: TableTalk) -> str | None:
    """Ask which problem a column is; return the label, None where it is open or left out."""
    usual = SKIP if label is None and is_other_word(head) else None
    about = (head,) if label is None else (head, label)
    options = (*grid.labels, SKIP)
    said = talk.ask(f"column:{at}", TableAsks.PROBLEM, about, options, line=at + 1, usual=usual)
    if said == SKIP:
        talk.left_out.append(head)
        return None
    return said


def _none_twice(
    found: dict[int, str], heads: dict[int, str], grid: AnswerGrid, talk: TableTalk
) -> dict[int, str]:
    """Ask again about columns that came to be one problem; return the others."""
    counted = Counter(found.values())
    for at in sorted(at for at, label in found.items() if counted[label] > 1):
        about = (heads[at], found.pop(at))
        options = (*grid.labels, SKIP)
        talk.ask_anew(TableQuestion(f"column:{at}", TableAsks.PROBLEM, about, options, None, at + 1))
    return found


def _in_order(layout: TableLayout, grid: AnswerGrid, talk: TableTalk) -> dict[int, str]:
    labels, columns = grid.labels, layout.columns
    if len(columns) == len(labels) or not columns:
        return dict(zip(columns, labels, strict=False))
    offers = {HERE: grid.labels_here, FIRST: labels}
    if offers[HERE] == labels:
        del offers[HERE]
    fits = {name: one for name, one in offers.items() if len(one) >= len(columns)}
    size = (str(len(columns)), str(len(labels)))
    said = talk.ask("problem-order", TableAsks.PROBLEM_ORDER, size, (*fits, EACH))
    if said in fits:
        return dict(zip(columns, fits[said], strict=False))
    found: dict[int, str] = {}
    if said == EACH:
        heads = {at: _first_answer(layout, at) for at in columns}
        for at in columns:
            if (said := _asked_which(at, heads[at], None, grid, talk)) is not None:
                found[at] = said
        return _none_twice(found, heads, grid, talk)
    return found


def _first_answer(layout: TableLayout, at: int) -> str:
    """Return what a column without a heading is told by: its first answer."""
    return next((layout.at(row, at) for row in layout.rows if layout.at(row, at)), "")
