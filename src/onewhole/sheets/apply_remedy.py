"""Apply a remedy: a typed sheet after one click."""

from collections.abc import Mapping
from itertools import chain, pairwise
from typing import assert_never

from msgspec import Struct

from onewhole.findings.click import (
    AddProblem,
    AskInstead,
    AsStory,
    Click,
    Done,
    EasyToHard,
    GoTo,
    LeaveOut,
    LineUse,
    NewlyNumbered,
    NewNumbers,
    NoOtherNumbers,
    SettingLine,
    SetTo,
    TellAs,
    UseLine,
    WithoutWords,
)
from onewhole.notations.text import text
from onewhole.problems.difficulty import difficulty
from onewhole.problems.parallel import of_the_other_sort, parallel
from onewhole.problems.twins import twin_key
from onewhole.sheets.document import Sheet
from onewhole.sheets.page import FALL
from onewhole.sheets.reading import read_part, read_sheet
from onewhole.sheets.sheet_editor import SheetEditor
from onewhole.sheets.stories import told_anew
from onewhole.sheets.typed_lines import problem_lines
from onewhole.sheets.unread_line import problems_beside
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import Statement


class ChangedSheet(Struct, frozen=True):
    """What is typed now, and what was done."""

    typed: str
    done: Done


def apply_remedy(typed: str, click: Click) -> ChangedSheet:
    r"""Return a typed sheet after one click.

    Only the rows that the click is about change, and the numbers at the margin where they count down the
    page. Lines that cannot be read stand as they are. Raises SheetError for a click that is not about this
    sheet, and where nothing of it can be read and the click is not about such a line.

    >>> apply_remedy("1. 7 2/6 - 3 5/6\n2. 5 4/6 - 2 1/6", EasyToHard())
    ChangedSheet(typed='1. 5 4/6 - 2 1/6\n2. 7 2/6 - 3 5/6', done=EasyToHard())
    """
    rows = SheetEditor.of(typed)
    if isinstance(click, TellAs):
        told = rows.told_as(rows.line_of(click.line, click.seen), text(click.asked))
        return ChangedSheet(told.typed, click)
    if isinstance(click, UseLine):
        return ChangedSheet(_used(rows, rows.line_of(click.line, click.seen), click.use).typed, click)
    sheet = read_part(typed).sheet or read_sheet(typed)
    match click:
        case AddProblem(asked):
            return ChangedSheet(rows.added(text(asked), _after(sheet, asked)).typed, click)
        case LeaveOut():
            labels = _known(rows, click.labels)
            return ChangedSheet(rows.without(labels).typed, LeaveOut(labels))
        case NewNumbers():
            return _new_numbers(sheet, rows, _known(rows, click.labels))
        case AskInstead(asked):
            named = tuple(zip(_known(rows, click.labels), (other for _, other in asked), strict=True))
            return ChangedSheet(_asking(rows, dict(named)).typed, AskInstead(named))
        case WithoutWords():
            labels = _known(rows, click.labels)
            plain = {one.label: one.typed for one in sheet.problems if one.label in labels}
            return ChangedSheet(rows.asking(plain).typed, WithoutWords(labels))
        case AsStory():
            labels = _known(rows, click.labels)
            return ChangedSheet(_told(sheet, rows, labels).typed, AsStory(labels, click.anew))
        case EasyToHard():
            score = {one.label: one.difficulty.score for one in WorkedSheet(sheet).problems}
            order = sorted(rows.problems, key=lambda label: score[label])
            return ChangedSheet(rows.in_order(order).typed, click)
        case SetTo(lines):
            for line in lines:
                rows = rows.with_setting(line)
            return ChangedSheet(rows.typed, click)
        case GoTo(label):
            _known(rows, () if label is None else (label,))
            return ChangedSheet(typed, click)
        case _:
            assert_never(click)


def _used(rows: SheetEditor, line: int, use: LineUse) -> SheetEditor:
    """Return the rows with a line as what it is meant as."""
    gone = rows.with_line(line)
    said = " ".join(rows.lines[line - 1].split())
    match use:
        case LineUse.NOTHING:
            return gone
        case LineUse.WORDS:
            return rows.with_line(line, f"# {said.lstrip('# ')}")
        case LineUse.TITLE:
            return gone.with_setting(SettingLine("title", said))
        case LineUse.JOINED:
            after = " ".join(rows.lines[line].split()) if line < len(rows.lines) else ""
            return gone.with_line(line, f"{said} {after}") if after else rows
        case LineUse.SPLIT:
            found = problem_lines(rows.lines).get(line - 1)
            start = found.start if found else 0
            first, *others = problems_beside(rows.lines[line - 1][start:]) or (said,)
            return rows.with_line(line, rows.lines[line - 1][:start] + first, *others)
        case _:
            assert_never(use)


def _known(rows: SheetEditor, labels: tuple[str, ...]) -> tuple[str, ...]:
    """Return labels as they stand on the sheet. Raises SheetError for one that does not."""
    there = list(rows.problems)
    return tuple(there[rows.place(label) - 1] for label in labels)


def _after(sheet: Sheet, asked: Statement) -> int:
    """Return how many problems a new one stands after so that the page falls least, the most there may be."""
    taught = sheet.header.taught
    own = difficulty(asked, taught).score
    scores = [one.difficulty.score for one in WorkedSheet(sheet).problems]

    def falls(at: int) -> int:
        row = [*scores[:at], own, *scores[at:]]
        return sum(max(0, before - after - FALL + 1) for before, after in pairwise(row))

    return min(range(len(scores), -1, -1), key=falls)


def _new_numbers(sheet: Sheet, rows: SheetEditor, labels: tuple[str, ...]) -> ChangedSheet:
    """Give each problem numbers that make it no twin of any: of its own sort, or else of the other.

    Where none of them has such numbers they are left out instead.
    """
    taken = {twin_key(one.statement) for one in sheet.problems}
    asked: dict[str, Statement] = {}
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
                asked[one.label] = found
                break
    if not asked:
        return ChangedSheet(rows.without(labels).typed, NoOtherNumbers(labels))
    left = tuple(label for label in labels if label not in asked)
    return ChangedSheet(_asking(rows, asked).typed, NewlyNumbered(tuple(asked.items()), left))


def _told(sheet: Sheet, rows: SheetEditor, labels: tuple[str, ...]) -> SheetEditor:
    """Tell problems in words that they do not have; the header names what they count."""
    words, left = sheet.header.words, sheet.header.remainder
    stories = {one.label: told_anew(one, words, left) for one in sheet.problems if one.label in labels}
    rows = rows.asking({label: f"{text(one.statement)} | {one.words}" for label, one in stories.items()})
    counted = next((one.whole for one in stories.values() if one.counts_wholes), words)
    return rows if counted == words else rows.with_setting(SettingLine("whole", counted.whole))


def _asking(rows: SheetEditor, asked: Mapping[str, Statement]) -> SheetEditor:
    return rows.asking({label: text(statement) for label, statement in asked.items()})
