"""How the class did on each problem."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from onewhole.marking.reading.mark import ClassMarks, Mark, Verdict

#: Nothing can be said about a problem from fewer pupils than this: two points always lie on a line.
FEWEST_PUPILS = 3


@dataclass(frozen=True, slots=True)
class ProblemStats:
    """One problem: how many tried it, how many were right, and whether its key should be looked at.

    ``tried`` counts answers that could be read; ``form`` counts those that are right in amount but not in the
    form that the teacher asks for (they are not in ``right``).
    """

    label: str
    tried: int
    right: int
    form: int
    check_key: bool

    @property
    def share(self) -> Fraction | None:
        """Return the share right of those who tried, exactly, or None when nobody did."""
        return Fraction(self.right, self.tried) if self.tried else None


def problem_stats(marked: ClassMarks) -> tuple[ProblemStats, ...]:
    """Return the problems of a page with how the class did on each, in the order of the page.

    ``check_key`` is set where the point-biserial correlation between one problem and the total of the others
    is negative: pupils who do well elsewhere do worse here, so the key may be wrong. Its sign is that of the
    covariance, worked out exactly in whole numbers; with one class the number itself says too little to be
    shown. Source of "negative: check the key": Ebel and Frisbie as cited in an open text; taking the problem
    out of the total: from memory.
    """
    present = [pupil.marks for pupil in marked.pupils if any(_readable(mark) for mark in pupil.marks)]
    return tuple(
        _item(asked.problem.label, at, [marks[at] for marks in present], present)
        for at, asked in enumerate(marked.expected)
    )


def _readable(mark: Mark) -> bool:
    return mark.verdict not in {Verdict.BLANK, Verdict.UNREADABLE}


def _item(label: str, at: int, column: Sequence[Mark], present: Sequence[Sequence[Mark]]) -> ProblemStats:
    return ProblemStats(
        label,
        sum(_readable(mark) for mark in column),
        sum(mark.verdict is Verdict.RIGHT for mark in column),
        sum(mark.verdict is Verdict.FORM for mark in column),
        len(present) >= FEWEST_PUPILS and _covariance(at, present) < 0,
    )


def _covariance(at: int, present: Sequence[Sequence[Mark]]) -> int:
    """Return the covariance of one problem with the total of the others, times the pupils squared."""
    scores = [int(_right(marks[at])) for marks in present]
    rests = [sum(map(_right, marks)) - score for marks, score in zip(present, scores, strict=True)]
    together = sum(score * rest for score, rest in zip(scores, rests, strict=True))
    return len(present) * together - sum(scores) * sum(rests)


def _right(mark: Mark) -> bool:
    """Say whether the amount is right: the key is about amounts."""
    return mark.verdict in {Verdict.RIGHT, Verdict.FORM}
