"""How the class did on each problem."""

from collections.abc import Sequence
from fractions import Fraction

from msgspec import Struct

from onewhole.marking.reading.mark import ClassMarks, Mark, Verdict

#: Least pupils, and least of them on either side, those right and those not: below that nothing is said of a
#: key. Our own; with three on a side one contrary pupil decides nothing.
FEWEST_PUPILS, FEWEST_A_SIDE = 10, 3
#: The square of 2.326: by chance alone a correlation falls so far below 0 once in a hundred problems.
SQUARE = Fraction(2326, 1000) ** 2


class ProblemStats(Struct, frozen=True):
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
    is below 0 by more than chance would bring about once in a hundred problems: pupils who do well elsewhere
    do worse here, so the key may be wrong. At least 10 pupils, 3 of them right and 3 not, must have written
    something. If right and wrong fell on the pupils by chance, the correlation of n pupils would have the
    variance 1/(n - 1): Pitman (1937), Significance tests which may be applied to samples from any
    populations, II (from memory); the limit is the normal one. It is compared exactly, in whole numbers.
    Source of "negative: check the key": Ebel and Frisbie as cited in an open text; taking the problem out of
    the total: from memory.
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
        _contrary(at, present),
    )


def _contrary(at: int, present: Sequence[Sequence[Mark]]) -> bool:
    """Say whether one problem goes against the total of the others by more than chance does."""
    scores = [int(_right(marks[at])) for marks in present]
    count, right = len(scores), sum(scores)
    if count < FEWEST_PUPILS or not FEWEST_A_SIDE <= right <= count - FEWEST_A_SIDE:
        return False
    rests = [sum(map(_right, marks)) - score for marks, score in zip(present, scores, strict=True)]
    together = _products(scores, rests)
    return together < 0 and (count - 1) * together**2 >= SQUARE * _products(scores, scores) * _products(
        rests, rests
    )


def _products(one: Sequence[int], other: Sequence[int]) -> int:
    """Return the covariance of two rows, times the square of how many they are."""
    together = sum(a * b for a, b in zip(one, other, strict=True))
    return len(one) * together - sum(one) * sum(other)


def _right(mark: Mark) -> bool:
    """Say whether the amount is right: the key is about amounts."""
    return mark.verdict in {Verdict.RIGHT, Verdict.FORM}
