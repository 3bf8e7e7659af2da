"""Reading a sheet as a teacher types it, with the place of everything that cannot be read."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from onewhole.errors import InputError
from onewhole.number.quantity import NotOnLadderError, Quantity
from onewhole.problems.answer import answer
from onewhole.problems.problem import LABEL, Problem
from onewhole.sheets.document import Instruction, Item, Sheet, SheetError
from onewhole.sheets.settings import header_of, setting_named
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, Statement
from onewhole.working.form import FormWanted, formed

MOST_TOLD = 20
#: The most problems and lines of a page: what the press, the audit and a class can take in at once.
MOST_PROBLEMS, MOST_LINES = 200, 2000
#: What is said of a line that begins with no label.
NO_LABEL = "this line has no label"

_LINE_END = re.compile(r"\r\n|\r|\n")
_SETTING = re.compile(r"\s*(?P<name>[^\W\d_][\w \t-]*[^\W\d_])\s*:(?P<value>.*)")
# A dot that ends a label has a blank after it: 1.5 + 2 has no label.
_LABELLED = re.compile(rf"\s*\(?(?P<label>{LABEL.pattern})\s*(?:[.:]?\)[.:]?|:|\.)(?:(?<!\.)|(?=\s|$))\s*")
_ALONE = "this number stands alone, and nothing is asked about it"
_ALONE_REMEDY = (
    "Ask for another name with a blank, such as 3/4 = ?/8, or write a sum or a difference. "
    "A number is worked by itself where one other name is meant: 6/8, 1 1/2, 0.75, 26 in."
)
_LABEL_REMEDY = (
    "Begin a problem with its label and a blank: 3. 7 2/6 - 3 5/6. Begin words to the pupil with #. "
    "A setting stands at the very top with a colon: title: Kites."
)


@dataclass(slots=True)
class _Draft:
    """A sheet while it is read, and every mistake so far."""

    said: dict[str, str] = field(default_factory=dict)
    places: dict[str, tuple[int, int]] = field(default_factory=dict)
    items: list[Item] = field(default_factory=list)
    labels: dict[str, int] = field(default_factory=dict)
    mistakes: list[InputError] = field(default_factory=list)


def read_sheet(text: str, file: str | None = None) -> Sheet:
    r"""Read a sheet: header lines ``key: value``, a blank line, then labelled problems and ``#`` lines.

    ``file`` is the name the teacher knows the text by. Header and blank lines may be left out; line ends of
    any computer, a mark at the very start (BOM) and tabs are fine. A bar after a problem begins the words of
    a word problem. A page has at most 200 problems and 2,000 lines; nothing beyond is read. Raises one
    SheetError that tells every mistake of the sheet, each with its line, column and what to do;
    its ``mistakes`` hold them one by one.

    >>> sheet = read_sheet("title: Kites\n\n# Show each step.\n1. 7 2/6 - 3 5/6\n2a) 52 - 27\n")
    >>> sheet.header.title, [problem.label for problem in sheet.problems]
    ('Kites', ['1', '2a'])
    """
    whole = lines_of(text)
    lines = whole[:MOST_LINES]
    draft = _Draft()
    start = _read_header(lines, draft)
    header, wrong = header_of(draft.said)
    draft.mistakes.extend(_at(error, *draft.places[name]) for name, error in wrong.items())
    for number, line in enumerate(lines[start:], start=start + 1):
        if len(draft.labels) == MOST_PROBLEMS and _LABELLED.match(line):
            draft.mistakes.append(_too_many(f"problem, and a page has at most {MOST_PROBLEMS}", number))
            break
        try:
            draft.items.extend(_item(line, number, draft, header.form))
        except InputError as error:
            draft.mistakes.append(error)
    if len(whole) > MOST_LINES:
        draft.mistakes.append(_too_many(f"line, and a page has at most {MOST_LINES:,}", MOST_LINES + 1))
    if not draft.mistakes and not draft.labels:
        msg = "there is no problem on this sheet"
        remedy = "Write one problem a line with its label: 1. 7 2/6 - 3 5/6"
        draft.mistakes.append(SheetError(msg, line=len(lines), column=1, remedy=remedy))
    if draft.mistakes:
        raise _gathered(draft.mistakes, file)
    return Sheet(tuple(draft.items), header)


def _read_header(lines: list[str], draft: _Draft) -> int:
    """Read settings up to the first line that is none, and return the place of that line."""
    start = next((at for at, line in enumerate(lines) if line.strip()), len(lines))
    for at, line in enumerate(lines[start:], start=start):
        found = _setting(line)
        if found is None:
            return at
        name, value = found["name"], " ".join(found["value"].split())
        column = found.start("name") + 1
        try:
            setting = setting_named(name)
        except InputError as error:
            draft.mistakes.append(_at(error, at + 1, column))
            continue
        if setting.name in draft.places:
            msg = f"{setting.name} is set twice, the first time on line {draft.places[setting.name][0]}"
            draft.mistakes.append(SheetError(msg, line=at + 1, column=column, remedy="Leave one of the two."))
            continue
        blanks = len(found["value"]) - len(found["value"].lstrip())
        draft.said[setting.name] = value
        draft.places[setting.name] = at + 1, found.start("value") + blanks + 1
    return len(lines)


def _setting(line: str) -> re.Match[str] | None:
    """Return the parts of a line that looks like a setting; a label is none."""
    return None if _LABELLED.match(line) else _SETTING.fullmatch(line)


def label_in(line: str) -> re.Match[str] | None:
    """Return where a line's label stands (group ``label``) and ends; None for a line without one.

    >>> label_in("2a) 52 - 27")["label"]
    '2a'
    """
    return _LABELLED.match(line)


def setting_in(line: str) -> re.Match[str] | None:
    """Return the parts of a line of the header (groups ``name`` and ``value``); None for any other line.

    >>> setting_in("title: Kites")["name"]
    'title'
    """
    return _setting(line)


def lines_of(text: str) -> list[str]:
    r"""Return the lines of a text with the line ends of any computer.

    >>> lines_of("1. 5 - 2\r\n2. 6 - 3")
    ['1. 5 - 2', '2. 6 - 3']
    """
    return _LINE_END.split(text.removeprefix("\N{ZERO WIDTH NO-BREAK SPACE}"))


def _item(line: str, number: int, draft: _Draft, wanted: FormWanted) -> Iterator[Item]:
    """Read one line under the header: an instruction, a problem, or nothing."""
    said = " ".join(line.split())
    if not said:
        return
    column = len(line) - len(line.lstrip()) + 1
    if said.startswith("#"):
        if words := said.lstrip("# "):
            yield _instruction(words, number, column)
        return
    labelled = _LABELLED.match(line)
    if labelled is None:
        if _setting(line):
            msg = "a setting stands under the header"
            remedy = "Move it to the top, above the first blank line."
            raise SheetError(msg, line=number, column=column, remedy=remedy)
        msg = NO_LABEL
        raise SheetError(msg, line=number, column=column, remedy=_LABEL_REMEDY)
    label = labelled["label"]
    before = draft.labels.setdefault(label.casefold(), number)
    if before != number:
        msg = f"the label {label} is used twice, the first time on line {before}"
        remedy = "Give each problem its own label."
        draft.mistakes.append(SheetError(msg, line=number, column=column, remedy=remedy))
    yield _problem(label, line[labelled.end() :], number, labelled.end() + 1, wanted)


def _instruction(words: str, number: int, column: int) -> Instruction:
    try:
        return Instruction(words)
    except InputError as error:
        raise _at(error, number, column) from error


def _problem(label: str, rest: str, number: int, column: int, wanted: FormWanted) -> Problem:
    asked, bar, story = rest.partition("|")
    if not asked.strip():
        msg = f"nothing stands after the label {label}"
        raise SheetError(
            msg, line=number, column=column, remedy="Write the problem after it, or take the label out."
        )
    if bar and not story.strip():
        msg = f"no words stand after the bar of problem {label}"
        remedy = "Write the word problem after the bar, or take the bar out."
        raise SheetError(msg, line=number, column=column + len(asked), remedy=remedy)
    statement = read_statement(asked, number, column)
    try:
        if _nothing_to_do(statement, wanted):
            column += len(asked) - len(asked.lstrip())
            raise SheetError(_ALONE, line=number, column=column, remedy=_ALONE_REMEDY)
        return Problem(label, statement, " ".join(asked.split()), number, " ".join(story.split()))
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


def _gathered(mistakes: list[InputError], file: str | None) -> SheetError:
    """Make one refusal of all the mistakes, in the order of their lines."""
    placed = sorted(
        (error.placed(file=file) for error in mistakes), key=lambda e: (e.line or 0, e.column or 0)
    )
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
