"""A typed sheet after a click on a remedy."""

from dataclasses import dataclass
from itertools import chain, pairwise
from typing import assert_never

from onewhole.notations.text import text
from onewhole.problems.difficulty import difficulty
from onewhole.problems.parallel import of_the_other_sort, parallel
from onewhole.problems.twins import twin_key
from onewhole.sheets.document import Sheet
from onewhole.sheets.page import FALL
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.remedies import MOST_TOLD, Remedy, RemedyAct, listed
from onewhole.sheets.rows import Rows
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.reading import read_statement


@dataclass(frozen=True, slots=True)
class Changed:
    """What is typed now, and in a sentence what was done."""

    typed: str
    words: str


def remedied(typed: str, remedy: Remedy) -> Changed:
    r"""Return a typed sheet after one click.

    Only the rows that the remedy is about change, and the numbers at the margin where they count down the
    page. The lines of a sheet that cannot be read can be numbered. Raises SheetError for any other act on
    such a sheet, and for a remedy that is not about this one.

    >>> remedied("1. 7 2/6 - 3 5/6\n2. 5 4/6 - 2 1/6", Remedy(RemedyAct.ORDER, "Put in order"))
    Changed(typed='1. 5 4/6 - 2 1/6\n2. 7 2/6 - 3 5/6', words='The page goes from easy to hard.')
    """
    rows = Rows.of(typed)
    if remedy.act is RemedyAct.NUMBER:
        return Changed(rows.numbered().typed, "Every line has its label.")
    sheet = read_sheet(typed)
    labels = tuple(list(rows.problems)[rows.place(label) - 1] for label in remedy.labels)
    match remedy.act:
        case RemedyAct.ADD:
            return _added(sheet, rows, remedy.values)
        case RemedyAct.LEAVE_OUT:
            return Changed(rows.without(labels).typed, f"{_problems(labels)} left out.")
        case RemedyAct.NEW_NUMBERS:
            return _new_numbers(sheet, rows, labels)
        case RemedyAct.ASK_INSTEAD:
            return _asking(rows, dict(zip(labels, remedy.values, strict=True)))
        case RemedyAct.NO_WORDS:
            plain = {one.label: one.typed for one in sheet.problems if one.label in labels}
            return Changed(rows.asking(plain).typed, f"{_problems(labels)} asked without words.")
        case RemedyAct.ORDER:
            score = {one.label: one.difficulty.score for one in WorkedSheet(sheet).problems}
            order = sorted(rows.problems, key=lambda label: score[label])
            return Changed(rows.in_order(order).typed, "The page goes from easy to hard.")
        case RemedyAct.SET:
            for said in remedy.values:
                rows = rows.with_setting(said)
            return Changed(rows.typed, f"Set {listed(remedy.values)}.")
        case RemedyAct.GO:
            return Changed(typed, "Nothing was changed.")
        case _:
            assert_never(remedy.act)


def _added(sheet: Sheet, rows: Rows, values: tuple[str, ...]) -> Changed:
    for asked in values:
        rows = rows.added(asked, _after(sheet, asked))
        sheet = read_sheet(rows.typed)
    return Changed(rows.typed, f"Added {listed(values)}.")


def _after(sheet: Sheet, asked: str) -> int:
    """Return how many problems a new one stands after so that the page falls least, the most there may be."""
    taught = sheet.header.strategy
    own = difficulty(read_statement(asked), taught).score
    scores = [one.difficulty.score for one in WorkedSheet(sheet).problems]

    def falls(at: int) -> int:
        row = [*scores[:at], own, *scores[at:]]
        return sum(max(0, before - after - FALL + 1) for before, after in pairwise(row))

    return min(range(len(scores), -1, -1), key=falls)


def _new_numbers(sheet: Sheet, rows: Rows, labels: tuple[str, ...]) -> Changed:
    """Give each problem numbers that make it no twin of any: of its own sort, or else of the other.

    Where none of them has such numbers they are left out instead.
    """
    taken = {twin_key(one.statement) for one in sheet.problems}
    asked: dict[str, str] = {}
    spent = False
    for one in sheet.problems:
        if one.label not in labels:
            continue
        near = of_the_other_sort(one.statement)
        stream = near if spent else chain(parallel(one.statement), [None], near)
        for found in stream:
            if found is None:
                spent = True
            elif (key := twin_key(found)) not in taken:
                taken.add(key)
                asked[one.label] = text(found)
                break
    if not asked:
        left = f"No other numbers are like these. {_problems(labels)} left out."
        return Changed(rows.without(labels).typed, left)
    changed = _asking(rows, asked)
    if not (none := tuple(label for label in labels if label not in asked)):
        return changed
    return Changed(changed.typed, f"{changed.words} No other numbers are like {listed(none)}.")


def _asking(rows: Rows, asked: dict[str, str]) -> Changed:
    words = " ".join(f"Problem {label} asks {said} now." for label, said in asked.items())
    if len(asked) > MOST_TOLD:
        words = f"{len(asked)} problems have new numbers."
    return Changed(rows.asking(asked).typed, words)


def _problems(labels: tuple[str, ...]) -> str:
    return f"Problem{'s' * (len(labels) > 1)} {listed(labels)}"
