"""What pupils were asked in a story: how it is told is known where the words are ours."""

from collections.abc import Sequence
from dataclasses import replace as changed

from msgspec.structs import replace

from onewhole.marking.reading.asked_table import AskedRow
from onewhole.sheets.header import Header
from onewhole.sheets.stories import known_telling


def told_as_asked(header: Header, asked: Sequence[AskedRow]) -> tuple[AskedRow, ...]:
    """Return what was asked, each story with what its words may mislead with, as on the class's sheets."""
    return tuple([_told(header, row) for row in asked])


def _told(header: Header, row: AskedRow) -> AskedRow:
    problem = row.answer.problem
    if problem is None or not problem.story:
        return row
    telling = known_telling(problem.statement, problem.story, header.words, header.remainder)
    return replace(row, answer=replace(row.answer, problem=changed(problem, telling=telling)))
