"""Pages and answers of a class, short to write down, for the rooms that read answers back."""

from collections.abc import Mapping, Sequence

from onewhole.desk.tomorrow.seats import seated
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.group_settings import MEETS, GroupSettings
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.class_answers import ClassAnswers, PupilAnswers
from onewhole.marking.reading.expected import Expected, expect
from onewhole.marking.reading.mark import ClassMarks, Mark, PupilMarks, mark, mark_class, mark_row
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement
from onewhole.working.form import ANY_FORM, FormWanted

#: Twelve problems, most of which tell patterns apart; 1 and 2 need no regrouping, 5 and 9 begin with a whole.
TWELVE = (
    "5 4/6 - 2 1/6",
    "6 7/8 - 3 2/8",
    "4 1/3 - 1 2/3",
    "6 1/4 - 3 2/4",
    "5 - 1 3/8",
    "7 3/5 - 3 4/5",
    "9 5/8 - 4 6/8",
    "8 3/6 - 4 4/6",
    "6 - 2 3/4",
    "2 4/5 + 1 3/5",
    "9 4/12 - 6 5/12",
    "9 7/12 - 4 9/12",
)


def page(typed: Sequence[str] = TWELVE) -> tuple[Problem, ...]:
    """Problems labelled 1, 2, 3 and so on."""
    return tuple(Problem(str(at), read_statement(one), one) for at, one in enumerate(typed, start=1))


def one_mark(problem: str, written: str, wanted: FormWanted = ANY_FORM) -> Mark:
    """One answer to one typed problem, marked."""
    return mark(expect(Problem("1", read_statement(problem), problem)), read_written(written), wanted)


def right(problem: Problem) -> str:
    """The right answer as a pupil would write it."""
    return text(answer(problem.statement))


def by_pattern(pattern: str, problems: Sequence[Problem]) -> list[str]:
    """What a pupil would write who always follows one pattern, right where it does not show."""
    slips = [by_id(pattern).slip(problem.statement) for problem in problems]
    return [text(slip.wrote) if slip else right(one) for slip, one in zip(slips, problems, strict=True)]


def all_right(problems: Sequence[Problem]) -> list[str]:
    """A page with every answer right."""
    return [right(problem) for problem in problems]


def written_by(problems: Sequence[Problem], rows: Mapping[str, Sequence[str]]) -> ClassAnswers:
    """The answers of a class, a list of cells a pupil."""
    pupils = (PupilAnswers(pupil, tuple(map(read_written, cells))) for pupil, cells in rows.items())
    return ClassAnswers(tuple(problems), tuple(pupils))


def marked(problems: Sequence[Problem], rows: Mapping[str, Sequence[str]]) -> ClassMarks:
    """The marks of a class."""
    return mark_class(written_by(problems, rows))


def marked_against(expected: Sequence[Expected], rows: Mapping[str, Sequence[str]]) -> ClassMarks:
    """The same, where what is expected has been worked out before."""
    written = {pupil: tuple(map(read_written, cells)) for pupil, cells in rows.items()}
    pupils = (PupilMarks(pupil, mark_row(expected, cells)) for pupil, cells in written.items())
    return ClassMarks(tuple(expected), tuple(pupils))


def found(problems: Sequence[Problem], cells: Sequence[str]) -> Finding:
    """The finding of one pupil."""
    return findings(marked(problems, {"K01": cells}))[0]


def grouped(
    problems: Sequence[Problem], rows: Mapping[str, Sequence[str]], meets: int = MEETS
) -> tuple[Group, ...]:
    """Tomorrow's groups of a class."""
    marks = marked(problems, rows)
    return seated(marks.pupils, findings(marks), GroupSettings(meets)).groups
