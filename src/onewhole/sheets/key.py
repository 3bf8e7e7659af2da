"""The answer key of a page: every answer, the forms that are right too, and how it is worked."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from onewhole.problems.taught import as_taught
from onewhole.sheets.document import Sheet
from onewhole.statements.statement import Relation
from onewhole.working.working import Working, equal_forms


@dataclass(frozen=True, slots=True)
class KeyEntry:
    """One problem of the key.

    ``forms`` are other usual ways to write the answer; each is right (K5). ``working`` is by the sheet's
    strategy, its partner for the other operation, or one that suits; None for what is not worked line by
    line.
    """

    problem: Problem
    answer: Quantity | Relation
    forms: tuple[Quantity, ...]
    working: Working | None


def answer_key(sheet: Sheet) -> tuple[KeyEntry, ...]:
    r"""Return the key of a sheet in the order of its problems.

    >>> from onewhole.sheets.reading import read_sheet
    >>> [entry.answer.counts for entry in answer_key(read_sheet("1. 7 2/6 - 3 5/6\n2. 52 - 27"))]
    [(3, 3), (2, 5)]
    """
    return tuple(_entry(problem, sheet) for problem in sheet.problems)


def _entry(problem: Problem, sheet: Sheet) -> KeyEntry:
    found = answer(problem.statement)
    forms = equal_forms(found) if isinstance(found, Quantity) else ()
    return KeyEntry(problem, found, forms, as_taught(problem.statement, sheet.header.strategy))
