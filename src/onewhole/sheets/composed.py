"""A page that was composed: the sheet with its recipe, and what it can tell apart."""

from collections.abc import Sequence
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import Fault
from onewhole.notations.text import text
from onewhole.problems.problem import Problem
from onewhole.sheets.arranging import apart, arranged, hard
from onewhole.sheets.candidates import PageCandidate
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Header
from onewhole.sheets.learning import Doubt, learnt, settles
from onewhole.sheets.one_plot import beside_each_other
from onewhole.sheets.recipe import Recipe, write_recipe
from onewhole.statements.statement import Statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import USUAL


class Told(Struct, frozen=True):
    """Two sets of patterns, and the labels of the problems on which they write different answers."""

    first: tuple[str, ...]
    second: tuple[str, ...]
    labels: tuple[str, ...]


class Composed(Struct, frozen=True):
    """A composed page.

    ``taught`` is what it teaches about the class (:func:`onewhole.sheets.learning.learnt`); ``bound`` is
    proven to be at least what any page with these wishes and habits can teach, and ``doubt`` what a page
    would teach that settled everything often enough. ``listed`` counts the problems among which it was
    chosen, and ``drawn`` says that the seed took those from more. ``told`` has every doubt, also those that
    the page leaves open (no labels). ``notes`` say in sentences what was not as usual. ``stopped`` says that
    the time was up before the solver was done.
    """

    sheet: Sheet
    recipe: Recipe
    taught: int
    bound: int
    doubt: int
    listed: int
    told: tuple[Told, ...]
    notes: tuple[str, ...]
    stopped: bool
    drawn: bool = False

    def __post_init__(self) -> None:
        """Refuse a page that teaches more than the bound."""
        if self.taught > self.bound:
            msg = f"a page teaches {self.taught}, more than was proven to be possible ({self.bound})"
            raise Fault(msg)

    @property
    def gap(self) -> Fraction:
        """Return the optimality gap: what a better page could teach more at most, as a share of the bound."""
        return Fraction(self.bound - self.taught, self.bound) if self.bound else Fraction(0)

    @property
    def doubt_left(self) -> Fraction:
        """Return the share of all doubt that the page leaves: each problem that settles one halves it."""
        return Fraction(self.doubt - self.taught, self.doubt) if self.doubt else Fraction(0)

    @property
    def least_left(self) -> Fraction:
        """Return the share of all doubt that any page with these wishes leaves at least."""
        return Fraction(max(0, self.doubt - self.bound), self.doubt) if self.doubt else Fraction(0)


def sheet_of(
    header: Header,
    recipe: Recipe,
    problems: Sequence[Statement],
    review: Sequence[Statement],
    example: PageCandidate | None,
) -> Sheet:
    """Return the page: the problems in their order under a header that carries the recipe.

    A class that has not said how it works keeps its usual way, which regroups mixed numbers first too.
    """
    wishes = recipe.wishes
    usual = header.strategy is USUAL and wishes.strategy is REGROUP_FIRST
    taught = header.strategy if usual else wishes.strategy
    order = apart(arranged([hard(one, taught) for one in (*problems, *review)]))
    order = beside_each_other(order)
    labelled = [Problem(str(at), one.statement, text(one.statement)) for at, one in enumerate(order, start=1)]
    own = replace(
        header,
        strategy=taught,
        minutes=wishes.minutes,
        to_finish=example.statement if example else None,
        recipe=write_recipe(recipe),
    )
    return Sheet(tuple(labelled), own)


def told_by(sheet: Sheet, doubts: Sequence[Doubt], kinds_told: Sequence[int]) -> tuple[tuple[Told, ...], int]:
    """Return what the problems of a page tell apart, from the catalogue itself, and what that is worth.

    ``kinds_told`` is what the model computed for its problems, in any order; Fault when the catalogue
    disagrees. Review problems settle doubts too: they count in what is told apart, and not in what it is
    worth.
    """
    seen = {problem.label: settles(problem.statement, doubts) for problem in sheet.problems}
    rest = sorted(kinds_told)
    labels: list[str] = []
    for problem in sheet.problems:
        if seen[problem.label] in rest:
            rest.remove(seen[problem.label])
            labels.append(problem.label)
    if rest:
        msg = "the model and the catalogue see different answers in a composed problem"
        raise Fault(msg)
    told = tuple(
        Told(one.first, one.second, tuple(label for label, bits in seen.items() if bits >> at & 1))
        for at, one in enumerate(doubts)
    )
    return told, learnt(doubts, [seen[label] for label in labels])
