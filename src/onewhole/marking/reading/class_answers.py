"""What a class wrote on a page: as texts, one cell a problem, and as answers that were read from them."""

from collections.abc import Iterable, Sequence

from msgspec import Struct

from onewhole.findings.attendance import PaperWord
from onewhole.marking.reading.answer import Written, read_written
from onewhole.problems.problem import Problem


class PupilTexts(Struct, frozen=True):
    """What one pupil wrote, exactly as typed: one text a problem, in the order of the page.

    ``paper`` is what the teacher said of a paper that is not there; of one that is there it says nothing.
    """

    pupil: str
    texts: tuple[str, ...]
    paper: PaperWord = PaperWord.HERE


class PupilAnswers(Struct, frozen=True):
    """What one pupil wrote, one cell a problem in the order of the page; ``pupil`` is the teacher's code."""

    pupil: str
    written: tuple[Written, ...]
    paper: PaperWord = PaperWord.HERE


class ClassAnswers(Struct, frozen=True):
    """What a class wrote: the problems in the order of the page, the pupils in the order of the file."""

    problems: tuple[Problem, ...]
    pupils: tuple[PupilAnswers, ...]

    def __post_init__(self) -> None:
        """Refuse a pupil with too few or too many answers, and a pupil who is there twice."""
        if any(len(row.written) != len(self.problems) for row in self.pupils):
            msg = "a pupil has one answer for each problem"
            raise ValueError(msg)
        if len({row.pupil for row in self.pupils}) != len(self.pupils):
            msg = "a pupil is there twice"
            raise ValueError(msg)


def read_texts(rows: Iterable[PupilTexts], problems: Sequence[Problem]) -> ClassAnswers:
    """Read what pupils wrote as answers to the problems of a page.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6")
    >>> print(read_texts([PupilTexts("K01", ("3 3/6",))], (asked,)).pupils[0].written[0].text)
    3 3/6
    """
    pupils = (
        PupilAnswers(row.pupil, tuple(map(read_written, row.texts, problems)), row.paper) for row in rows
    )
    return ClassAnswers(tuple(problems), tuple(pupils))
