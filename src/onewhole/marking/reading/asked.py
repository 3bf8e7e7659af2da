"""What pupils were asked in a talk after a night, what they then said, and the teacher's word on it."""

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.marking.reading.answer import Written
from onewhole.marking.reading.expected import Expected, expect
from onewhole.marking.reading.mark import AskedMark, ClassMarks, PupilMarks, mark
from onewhole.marking.reading.talk_word import TalkWord
from onewhole.number.quantity import NotOnLadderError
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement
from onewhole.working.form import ANY_FORM, FormWanted

#: The label of every problem that was asked; it is told by what it asks.
LABEL = "1"


class AskedAnswer(Struct, frozen=True):
    """A problem that one pupil was asked, what was said or written then, and the teacher's word.

    ``problem`` and ``written`` are None where there is a word only. Raises ValueError for one without the
    other, and for nothing at all.
    """

    pupil: str
    problem: Problem | None
    written: Written | None
    word: TalkWord | None = None

    def __post_init__(self) -> None:
        """Refuse half a row, and an empty one."""
        if (self.problem is None) != (self.written is None):
            msg = "a problem that was asked has its answer"
            raise ValueError(msg)
        if self.problem is None and self.word is None:
            msg = "nothing was asked and nothing is said"
            raise ValueError(msg)


def asked_problem(typed: str) -> Problem:
    """Read a problem that was asked: behind a bar stands how it was told (52 - 27 | Ana has 52 kites ...).

    Raises ReadingError, and InputError for one that has no answer.

    >>> asked_problem(" 9 5/8  - 4 6/8").typed
    '9 5/8 - 4 6/8'
    """
    typed, _, words = typed.partition("|")
    statement = read_statement(typed)
    try:
        answer(statement)
    except NotOnLadderError as error:
        raise InputError(error.what, remedy=error.remedy) from error
    return Problem(LABEL, statement, " ".join(typed.split()), story=" ".join(words.split()))


def asked_line(problem: Problem) -> str:
    """Return a problem as it is typed where it was asked; it reads back as :func:`asked_problem` has it.

    >>> asked_line(asked_problem("52 - 27 |Ana has 52 kites and sells 27. How many are left?"))
    '52 - 27 | Ana has 52 kites and sells 27. How many are left?'
    """
    return f"{problem.typed} | {problem.story}" if problem.story else problem.typed


def with_asked(marks: ClassMarks, asked: Sequence[AskedAnswer], wanted: FormWanted = ANY_FORM) -> ClassMarks:
    """Return the marks of a class with what its pupils were asked beside the page.

    Every answer counts; of several words about a pupil the last one. Rows of pupils who are not in the class
    are left out.
    """
    if not asked:
        return marks
    known: dict[object, Expected] = {}
    rows: dict[str, PupilMarks] = {pupil.pupil: pupil for pupil in marks.pupils}
    for one in asked:
        if (pupil := rows.get(one.pupil)) is None:
            continue
        if one.problem is not None and one.written is not None:
            key = one.problem
            expected = known[key] if key in known else known.setdefault(key, expect(one.problem))
            found = AskedMark(expected, mark(expected, one.written, wanted))
            pupil = replace(pupil, asked=(*pupil.asked, found))
        rows[one.pupil] = replace(pupil, word=one.word or pupil.word)
    return replace(marks, pupils=tuple(rows[pupil.pupil] for pupil in marks.pupils))
