"""Reading a sheet as a teacher types it, with the place of everything that cannot be read."""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.number.quantity import NotOnLadderError, Quantity
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from onewhole.sheets.document import Instruction, Item, Sheet, SheetError
from onewhole.sheets.header import Header
from onewhole.sheets.settings import header_of, setting_named
from onewhole.sheets.stories import known_telling
from onewhole.sheets.typed_lines import (
    ProblemLine,
    header_lines_of,
    is_words,
    lines_of,
    problem_lines,
    setting_in,
)
from onewhole.sheets.unread_line import no_setting, unread
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, Statement
from onewhole.working.form import FormWanted, formed

MOST_TOLD = 20
#: The most problems and lines of a page: what the press, the audit and a class can take in at once.
MOST_PROBLEMS, MOST_LINES = 200, 2000

#: What is said of a sheet that has settings and words at most.
NO_PROBLEM = "there is no problem on this sheet"
#: Points that lead to the place of an answer, as word processors set them.
_LEADERS = re.compile(r"\s*(?:\.{2,}|\N{HORIZONTAL ELLIPSIS})[.\N{HORIZONTAL ELLIPSIS}]*\s*$")
_ALONE = "this number stands alone, and nothing is asked about it"
_ALONE_REMEDY = (
    "Ask for another name with a blank, such as 3/4 = ?/8, or write a sum or a difference. "
    "A number is worked by itself where one other name is meant: 6/8, 1 1/2, 0.75, 26 in."
)


@dataclass(slots=True)
class _Draft:
    """A sheet while it is read: its lines, which of them hold a problem, and every mistake so far."""

    lines: Sequence[str]
    problems: Mapping[int, ProblemLine]
    said: dict[str, str] = field(default_factory=dict)
    places: dict[str, tuple[int, int]] = field(default_factory=dict)
    items: list[Item] = field(default_factory=list)
    labels: dict[str, int] = field(default_factory=dict)
    mistakes: list[InputError] = field(default_factory=list)


class ReadPart(Struct, frozen=True):
    """A sheet as far as it can be read (None: not at all), and every mistake in the order of its line."""

    sheet: Sheet | None
    mistakes: tuple[InputError, ...]


def read_sheet(text: str, file: str | None = None) -> Sheet:
    r"""Read a sheet: header lines ``key: value``, a blank line, then problems and ``#`` lines.

    ``file`` is the name the teacher knows the text by. Header and blank lines may be left out; line ends of
    any computer, a mark at the very start (BOM) and tabs are fine. A problem without a label is counted. A
    bar after a problem begins the words of a word problem. A page has at most 200 problems and 2,000 lines;
    nothing beyond is read. Raises one SheetError that tells every mistake of the sheet, each with its line,
    column and what to do; its ``mistakes`` hold them one by one.

    >>> sheet = read_sheet("title: Kites\n\n# Show each step.\n1. 7 2/6 - 3 5/6\n52 - 27\n")
    >>> sheet.header.title, [problem.label for problem in sheet.problems]
    ('Kites', ['1', '2'])
    """
    part = read_part(text)
    if part.mistakes:
        raise _gathered(part.mistakes, file)
    assert part.sheet is not None, "a sheet without a problem is a mistake"
    return part.sheet


def read_part(text: str) -> ReadPart:
    r"""Read what can be read of a sheet, as :func:`read_sheet` reads it; nothing is raised.

    >>> part = read_part("1. 5 -\n2. 52 - 27")
    >>> [problem.label for problem in part.sheet.problems], [mistake.line for mistake in part.mistakes]
    (['2'], [1])
    """
    whole = lines_of(text)
    lines = whole[:MOST_LINES]
    draft = _Draft(lines, problem_lines(lines))
    start = _read_header(lines, draft)
    header, wrong = header_of(draft.said)
    draft.mistakes.extend(_at(error, *draft.places[name]) for name, error in wrong.items())
    for number, line in enumerate(lines[start:], start=start + 1):
        if len(draft.labels) == MOST_PROBLEMS and number - 1 in draft.problems:
            draft.mistakes.append(_too_many(f"problem, and a page has at most {MOST_PROBLEMS}", number))
            break
        try:
            draft.items.extend(_item(line, number, draft, header))
        except InputError as error:
            draft.mistakes.append(error)
    if len(whole) > MOST_LINES:
        draft.mistakes.append(_too_many(f"line, and a page has at most {MOST_LINES:,}", MOST_LINES + 1))
    if not draft.mistakes and not draft.labels:
        remedy = "Write one problem a line: 7 2/6 - 3 5/6"
        draft.mistakes.append(SheetError(NO_PROBLEM, line=len(lines), column=1, remedy=remedy))
    found = any(isinstance(item, Problem) for item in draft.items)
    return ReadPart(
        Sheet(tuple(draft.items), header) if found else None,
        tuple(sorted(draft.mistakes, key=lambda one: (one.line or 0, one.column or 0))),
    )


def _read_header(lines: list[str], draft: _Draft) -> int:
    """Read settings up to the first line that is none, and return the place of that line."""
    header = header_lines_of(lines)
    for at in header:
        found = setting_in(lines[at])
        assert found is not None
        name, value = found["name"], " ".join(found["value"].split())
        column = found.start("name") + 1
        try:
            setting = setting_named(name)
        except InputError as error:
            draft.mistakes.append(no_setting(error, lines[at], at + 1, column))
            continue
        if setting.name in draft.places:
            msg = f"{setting.name} is set twice, the first time on line {draft.places[setting.name][0]}"
            draft.mistakes.append(SheetError(msg, line=at + 1, column=column, remedy="Leave one of the two."))
            continue
        blanks = len(found["value"]) - len(found["value"].lstrip())
        draft.said[setting.name] = value
        draft.places[setting.name] = at + 1, found.start("value") + blanks + 1
    return header.stop


def _item(line: str, number: int, draft: _Draft, header: Header) -> Iterator[Item]:
    """Read one line under the header: an instruction, a problem, or nothing."""
    said = " ".join(line.split())
    if not said:
        return
    column = len(line) - len(line.lstrip()) + 1
    found = draft.problems.get(number - 1)
    if found is None:
        if not said.startswith("#") and not _is_setting(line):
            goes_on = _goes_on(draft, number)
            raise unread(SheetError("nothing is asked here"), line, number, column, goes_on=goes_on)
        if not said.startswith("#"):
            msg = "a setting stands under the header"
            remedy = "Move it to the top, above the first blank line."
            raise no_setting(SheetError(msg, remedy=remedy), line, number, column)
        if words := said.lstrip("# "):
            yield _instruction(words, number, column)
        return
    before = draft.labels.setdefault(found.label.casefold(), number)
    problem = _problem(found, draft, number, header)
    if before == number:
        yield problem
        return
    msg = f"the label {found.label} is used twice, the first time on line {before}"
    raise SheetError(msg, line=number, column=column, remedy="Give each problem its own label.")


def _instruction(words: str, number: int, column: int) -> Instruction:
    try:
        return Instruction(words)
    except InputError as error:
        raise _at(error, number, column) from error


def _is_setting(line: str) -> bool:
    """Say whether a line sets something, wherever it stands: words with a colon do not."""
    found = setting_in(line)
    try:
        return found is not None and bool(setting_named(found["name"]))
    except InputError:
        return False


def _goes_on(draft: _Draft, number: int) -> bool:
    """Say whether the line after a line (from 1) is words without a label."""
    after = draft.lines[number] if number < len(draft.lines) else ""
    below = draft.problems.get(number)
    loose = not after.lstrip().startswith("#") and setting_in(after) is None
    return loose and is_words(after) and not (below and below.typed)


def _problem(found: ProblemLine, draft: _Draft, number: int, header: Header) -> Problem:
    asked, bar, story = draft.lines[number - 1][found.start :].partition("|")
    label, column = found.label, found.start + 1
    asked = _LEADERS.sub("", asked)
    if not asked.strip():
        msg = f"nothing stands after the label {label}"
        raise SheetError(
            msg, line=number, column=column, remedy="Write the problem after it, or take the label out."
        )
    if bar and not story.strip():
        msg = f"no words stand after the bar of problem {label}"
        remedy = "Write the word problem after the bar, or take the bar out."
        raise SheetError(msg, line=number, column=column + len(asked), remedy=remedy)
    try:
        statement = read_statement(asked, number, column)
    except InputError as error:
        if bar:
            raise
        raise unread(error, asked, number, column, goes_on=_goes_on(draft, number)) from error
    try:
        if _nothing_to_do(statement, header.form):
            column += len(asked) - len(asked.lstrip())
            raise SheetError(_ALONE, line=number, column=column, remedy=_ALONE_REMEDY)
        words = " ".join(story.split())
        told = known_telling(statement, words, header.words, header.remainder) if words else None
        return Problem(label, statement, " ".join(asked.split()), number, words, told)
    except (InputError, NotOnLadderError) as error:
        raise SheetError(error.what, line=number, column=column, remedy=error.remedy) from error


def _nothing_to_do(statement: Statement, wanted: FormWanted) -> bool:
    """Say whether a lone number is in its final form already: its answer would be the number itself."""
    found = answer(statement)
    return (
        isinstance(statement, Question)
        and isinstance(found, Quantity)
        and formed(found, wanted) == statement.asked
    )


def _too_many(of: str, line: int) -> SheetError:
    """Refuse what goes on too long, with the line where it does."""
    return SheetError(
        f"here is one more {of}", line=line, column=1, remedy="Make two or more pages of this one."
    )


def _at(error: InputError, line: int, column: int) -> InputError:
    """Return a mistake with its place in the sheet."""
    return SheetError(error.what, line=line, column=column, remedy=error.remedy)


def _gathered(mistakes: Sequence[InputError], file: str | None) -> SheetError:
    """Make one refusal of all the mistakes."""
    placed = [error.placed(file=file) for error in mistakes]
    if len(placed) == 1:
        (only,) = placed
        found = SheetError(only.what, file=file, line=only.line, column=only.column, remedy=only.remedy)
    else:
        told = [f"  {error}" for error in placed[:MOST_TOLD]]
        if len(placed) > MOST_TOLD:
            told.append(f"  and {len(placed) - MOST_TOLD} more")
        found = SheetError(f"{len(placed)} things on this sheet need a change:\n" + "\n".join(told))
    found.mistakes = tuple(placed)
    return found
