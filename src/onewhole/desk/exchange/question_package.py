"""A page as a package of questions for another program (QTI 3.0), and a page out of one."""

from collections.abc import Iterator

from onewhole.errors import InputError
from onewhole.marking.reading.answer import Blank, Unreadable, read_written
from onewhole.marking.reading.expected import Expected, expect
from onewhole.number.quantity import NotOnLadderError
from onewhole.presses.question_reading import LARGEST, QuestionRead, QuestionsRead, questions_in
from onewhole.presses.zipped import zipped
from onewhole.problems.problem import LABEL, Problem
from onewhole.sheets.document import Instruction, Item, Sheet
from onewhole.sheets.header import Header
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.reading import read_statement
from onewhole.writers.frame import UNTITLED
from onewhole.writers.questions.item import PIECES, SIZE, WHOLE
from onewhole.writers.questions.package import question_files

__all__ = ["LARGEST", "QTI", "page_of_questions", "questions_of_page"]

#: The media type of a package.
QTI = "application/zip"


def questions_of_page(sheet: Sheet) -> tuple[bytes, tuple[str, ...]]:
    """Return a page as a package, and the labels of the problems that are not in it. Raises InputError."""
    made = question_files(WorkedSheet(sheet))
    if len(made.left_out) == len(sheet.problems):
        what = "None of these problems can be asked without its picture"
        raise InputError(what, remedy="Choose a page with other problems.")
    return zipped({name: text.encode() for name, text in made.files.items()}), made.left_out


def page_of_questions(content: bytes, name: str) -> str:
    """Return the problems of a package as a typed page.

    Raises InputError for what is no such package, breaks a rule of the standard, asks what a page cannot ask,
    or calls another answer right than the problem has; it names the file in the package.
    """
    found = questions_in(content, name)
    if not found.items:
        raise InputError("There is no question in this package", file=name, remedy="Look into the file.")
    try:
        return write_sheet(
            Sheet(tuple(_items(found, name)), Header(title="" if found.title == UNTITLED else found.title))
        )
    except InputError as refused:
        raise InputError(
            refused.what,
            file=refused.file or name,
            line=None if refused.file else refused.line,
            remedy=refused.remedy,
        ) from refused


def _items(found: QuestionsRead, name: str) -> Iterator[Item]:
    labels: set[str] = set()
    section = ""
    for number, (words, one) in enumerate(found.items, start=1):
        if words and words != section:
            yield Instruction(words)
        section = words
        label = one.label if LABEL.fullmatch(one.label) else str(number)
        while label.casefold() in labels:
            number += 1  # noqa: PLW2901 - the next number that is free
            label = str(number)
        labels.add(label.casefold())
        try:
            yield _problem(one, label)
        except InputError as refused:
            what = (
                f"{refused.what}: {one.asked[:80]}" if one.asked else "Nothing is asked in words or numbers"
            )
            remedy = "Take the item out of the package, and type its problem."
            raise InputError(what, file=f"{name}: {one.file}", remedy=remedy) from refused


def _problem(one: QuestionRead, label: str) -> Problem:
    statement = read_statement(one.asked)
    problem = Problem(label, statement, one.asked, story=one.words)
    if isinstance(statement, PlotQuestion):
        raise InputError("A line plot does not come with a question")
    try:
        expected = expect(problem)
    except NotOnLadderError as error:
        raise InputError(error.what) from error
    said = _said_right(one)
    if said and not any(_is_right(expected, text) for text in said):
        raise InputError(f"The package says that {said[0]} is right, and it is not")
    return problem


def _is_right(expected: Expected, text: str) -> bool:
    read = read_written(text, expected.problem).read
    return not isinstance(read, Blank | Unreadable) and expected.is_right(read)


def _said_right(one: QuestionRead) -> tuple[str, ...]:
    """Return what the package says is right, as an answer is typed; nothing where it does not say it."""
    if {WHOLE, PIECES, SIZE} == set(one.right):
        whole, top, size = (one.right[name][0] if one.right[name] else "0" for name in (WHOLE, PIECES, SIZE))
        text = f"{whole} {top}/{size}" if whole != "0" else f"{top}/{size}"
        return (whole if top == "0" else text,)
    if len(one.right) != 1:
        return ()
    (said,) = one.right.values()
    return tuple(one.choices.get(text, text) for text in said)
