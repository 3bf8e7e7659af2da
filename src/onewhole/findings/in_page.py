"""What an audit finds in a page: a closed family. ``labels`` are its problems; none means the whole page."""

from enum import Enum
from fractions import Fraction
from typing import assert_never

from msgspec import Struct

from onewhole.findings.searched import Searched
from onewhole.findings.standard import StandardCode
from onewhole.number.quantity import Quantity
from onewhole.statements.statement import Statement

Labels = tuple[str, ...]


class Severity(Enum):
    """How much a finding weighs. Neither stops a page."""

    NOTE = "note"
    ADVICE = "advice"


class Twins(Struct, frozen=True):
    """These problems ask the same thing with the same differences of numbers."""

    labels: Labels


class OverBudget(Struct, frozen=True):
    """The page takes longer than the teacher set; ``enough`` would do, where a budget can be so large."""

    minutes: Fraction
    budget: int
    enough: int | None

    @property
    def labels(self) -> Labels:
        """Mean the whole page."""
        return ()


class OverEvening(Struct, frozen=True):
    """The page takes longer than an evening's homework in its grade."""

    minutes: Fraction
    evening: int

    @property
    def labels(self) -> Labels:
        """Mean the whole page."""
        return ()


class Alike(Struct, frozen=True):
    """The page cannot tell these patterns apart: on its problems they write the same.

    ``telling`` is a problem that tells them apart. Where there is none, ``tried`` problems that tell most
    and the spaces ``searched`` were looked at.
    """

    patterns: tuple[str, ...]
    labels: Labels
    telling: Statement | None
    tried: int
    searched: tuple[Searched, ...]


class RightByLuck(Struct, frozen=True):
    """A pattern gives the right answer wherever it could show; ``showing`` is a problem that shows it."""

    pattern: str
    labels: Labels
    showing: Statement | None


class FallsBack(Struct, frozen=True):
    """A problem of so many points stands right after one with more."""

    before: str
    after: str
    points_before: int
    points_after: int

    @property
    def labels(self) -> Labels:
        """Return both."""
        return self.before, self.after


class HardToRead(Struct, frozen=True):
    """The words of a problem read at a grade above the one aimed at."""

    label: str
    grade: Quantity
    aim: int

    @property
    def labels(self) -> Labels:
        """Return the problem."""
        return (self.label,)


class NumbersUntold(Struct, frozen=True):
    """The words of a problem do not tell these numbers of it."""

    label: str
    numbers: tuple[Quantity, ...]

    @property
    def labels(self) -> Labels:
        """Return the problem."""
        return (self.label,)


class HigherThanPage(Struct, frozen=True):
    """A problem needs more room than a page has, or than the ``first`` page has under its title.

    ``missing`` lines of its working are written on other paper, and where it is ``unpictured``, nothing is
    drawn beside it.
    """

    label: str
    missing: int
    unpictured: bool
    first: bool = False

    @property
    def labels(self) -> Labels:
        """Return the problem."""
        return (self.label,)


class OutsideStandard(Struct, frozen=True):
    """A standard that the page, or some of its problems, does not meet, or that is good to know."""

    code: StandardCode
    labels: Labels


#: Everything that an audit finds.
PageFinding = (
    Twins
    | OverBudget
    | OverEvening
    | Alike
    | RightByLuck
    | FallsBack
    | HardToRead
    | NumbersUntold
    | HigherThanPage
    | OutsideStandard
)


def severity(found: PageFinding) -> Severity:
    """Return how much a finding weighs.

    >>> severity(Twins(("1", "2")))
    <Severity.ADVICE: 'advice'>
    """
    match found:
        case Twins() | OverBudget() | OverEvening() | Alike():
            return Severity.ADVICE
        case OutsideStandard(StandardCode.BOTH_KINDS):
            return Severity.ADVICE
        case RightByLuck() | FallsBack() | HardToRead() | NumbersUntold():
            return Severity.NOTE
        case HigherThanPage() | OutsideStandard():
            return Severity.NOTE
        case _:
            assert_never(found)
