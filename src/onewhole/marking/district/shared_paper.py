"""One pupil's paper of a night as a district gets it: a hash for the pupil, problems and answers as text."""

from collections.abc import Sequence
from datetime import date

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.marking.reading.answer import Blank, Unreadable, read_written
from onewhole.notations.text import text
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement

#: What stands between the problems of a page, and between the answers to them: a line each.
BETWEEN = "\n"
#: What stands for an answer that cannot be read: what was written there is not passed on.
NOT_READ = "?"


class SharedPaper(Struct, frozen=True):
    """A paper: whose (a hash that only the school can make), where, when, what was asked and written.

    ``problems`` and ``answers`` have a line a problem, in the order of the page; an empty line is no answer.
    Raises ValueError where there are more lines in one than in the other.
    """

    pupil: str
    class_name: str
    school: str
    night: date
    grade: int
    problems: str
    answers: str

    def __post_init__(self) -> None:
        """Refuse a paper with more answers than problems, or fewer."""
        if self.problems.count(BETWEEN) != self.answers.count(BETWEEN):
            raise ValueError("a paper has one answer a problem")


def as_asked(problem: Problem) -> str | None:
    """Return a problem as a district gets it: its numbers and signs, and no story.

    None where those do not say all that is asked, as with the points of a line plot.

    >>> as_asked(Problem("4", read_statement("7 2/6-3 5/6"), "7 2/6-3 5/6"))
    '7 2/6 - 3 5/6'
    """
    told = text(problem.statement)
    try:
        same = read_statement(told) == problem.statement
    except InputError:
        return None
    return told if same and BETWEEN not in told else None


def as_answered(written: str, problem: Problem) -> str:
    """Return an answer as a district gets it: as it was written, blanks alike.

    What cannot be read as an answer may be anything, a name too, and is only said to be there.

    >>> asked = Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6")
    >>> [as_answered(said, asked) for said in (" 3  3/6", "-", "ask Kim")]
    ['3 3/6', '', '?']
    """
    match read_written(written, problem).read:
        case Blank():
            return ""
        case Unreadable():
            return NOT_READ
        case _:
            return " ".join(written.split())


def paper_lines(texts: Sequence[str]) -> str:
    """Put the problems of a page, or the answers of a paper, together."""
    return BETWEEN.join(texts)
