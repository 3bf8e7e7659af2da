"""The grid that a table is laid on: the class, the problems of a page, and the cell that one was in."""

from collections.abc import Sequence

from msgspec import Struct

from onewhole.marking.reading.tables.class_names import ListedPupil
from onewhole.problems.problem import Problem


class AnswerGrid(Struct, frozen=True):
    """The pupils of a class and the problems of a page, each in their order.

    ``code`` and ``label`` are the cell that one was in, or empty. ``rows`` are the codes that the grid shows,
    those who got the page; none where it shows all.
    """

    pupils: tuple[ListedPupil, ...]
    problems: tuple[Problem, ...]
    code: str = ""
    label: str = ""
    rows: tuple[str, ...] = ()

    @property
    def codes(self) -> tuple[str, ...]:
        """Return the codes of the class."""
        return tuple(one.code for one in self.pupils)

    @property
    def codes_shown(self) -> tuple[str, ...]:
        """Return the codes of the rows of the grid."""
        return self.rows or self.codes

    @property
    def labels(self) -> tuple[str, ...]:
        """Return the labels of the problems."""
        return tuple(one.label for one in self.problems)

    @property
    def codes_here(self) -> tuple[str, ...]:
        """Return the codes from the cell that one was in."""
        return _from(self.codes_shown, self.code)

    @property
    def labels_here(self) -> tuple[str, ...]:
        """Return the labels from the cell that one was in."""
        return _from(self.labels, self.label)


def _from(every: Sequence[str], one: str) -> tuple[str, ...]:
    return tuple(every[every.index(one) :] if one in every else every)
