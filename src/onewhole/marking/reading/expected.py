"""What the answers to one problem are compared with, worked out once for a whole class."""

from collections.abc import Hashable, Iterable, Mapping
from fractions import Fraction
from functools import reduce

from msgspec import Struct

from onewhole.marking.reading.writing import alike, amount
from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family
from onewhole.misconceptions.slip import Slip
from onewhole.number.ladder import Ladder, joined, mixed
from onewhole.number.name_wanted import named_as
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import Kind
from onewhole.number.with_minus import WithMinus
from onewhole.problems.answer import also_right
from onewhole.problems.needs import Needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.expression import WithRemainder, value
from onewhole.statements.factor_question import WordAnswer
from onewhole.statements.gap import HOLE
from onewhole.statements.listing import Listing
from onewhole.statements.statement import (
    AnotherName,
    MissingNumber,
    NumberRow,
    Ordering,
    Relation,
    RightAnswer,
    Statement,
    gap_amount,
)
from onewhole.working.form import divided_last

Ids = tuple[str, ...]


class Expected(Struct, frozen=True):
    """The right answer to a problem, and what each error pattern would answer.

    ``also`` is another amount that is right too (of a number exactly halfway the other neighbor), ``filled``
    is the whole number with its gap filled in, where that is another way to answer; ``steps`` are
    the units of which one more or one fewer may be a fact slip. ``exact`` goes from writing to patterns,
    ``amounts`` from amount to patterns, ``near`` from the amounts one unit off those to patterns; ``forms``
    from writing to the patterns that only leave the right amount in a form. ``orders`` are the writings of
    numbers in order in which two neighbors of the right row, or of a pattern's, stand in each other's place.
    ``slips`` are the workings of the patterns that give a wrong answer here, ``shows`` their ids. ``built``
    is a structural key, equal for problems of the same structure. ``rights`` are the amounts that are right.
    """

    problem: Problem
    right: RightAnswer
    also: Quantity | None
    filled: Quantity | None
    steps: tuple[Fraction, ...]
    exact: Mapping[Hashable, Ids]
    amounts: Mapping[Hashable, Ids]
    near: Mapping[Hashable, Ids]
    forms: Mapping[Hashable, Ids]
    orders: frozenset[Hashable]
    slips: tuple[Slip, ...]
    shows: frozenset[str]
    built: tuple[Hashable, Needs]
    rights: frozenset[tuple[Kind, Fraction] | None]

    @property
    def ideas(self) -> tuple[Slip, ...]:
        """Return the workings of the patterns that are no slips with facts."""
        return tuple(slip for slip in self.slips if not is_fact_slip(slip.pattern))

    @property
    def needs(self) -> Needs:
        """Return what the problem asks of a pupil."""
        return self.built[1]

    @property
    def kind(self) -> Kind | None:
        """Return what a right answer measures, or None where a sign, a word or an order is asked for."""
        if isinstance(self.right, WithRemainder):
            return self.right.quotient.kind
        return self.right.kind if isinstance(self.right, Quantity) else None

    def is_right(self, read: Outcome) -> bool:
        """Say whether an answer is right, in any equal form.

        >>> from onewhole.statements.reading import read_answer, read_statement
        >>> asked = expect(Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6"))
        >>> [asked.is_right(read_answer(text)) for text in ("3 1/2", "21/6", "3.5", "3 4/6", "-3 1/2")]
        [True, True, True, False, False]
        """
        if isinstance(read, Quantity | WithMinus) and isinstance(self.right, Quantity):
            return amount(read) in self.rights or read == self.filled
        if isinstance(read, WithRemainder) or isinstance(self.right, WithRemainder):
            return self._divided_right(read)
        asked = self.problem.statement
        if isinstance(read, NumberRow):
            listed = isinstance(asked, Listing) and read.values == asked.values and not read.signs
            return listed or (isinstance(asked, Ordering) and asked.is_right(read))
        return isinstance(read, Relation | WordAnswer) and read is self.right

    def _divided_right(self, read: Outcome) -> bool:
        """Say whether an answer is right with its remainder, or with the remainder shared too."""
        found = divided_last(self.problem.statement)
        if found is None:
            return False
        if isinstance(read, WithRemainder):
            if isinstance(found, WithRemainder):
                return read.written_as(found)
            return not read.left.parts and self.is_right(read.quotient)
        return isinstance(read, Quantity) and (read.kind, read.value) == (self.kind, value(found))

    def may_be_slip(self, read: Outcome) -> bool:
        """Say whether an answer is one unit more or one fewer than right."""
        if not isinstance(read, Quantity) or not isinstance(self.right, Quantity):
            return False
        return read.kind is self.right.kind and abs(read.value - self.right.value) in self.steps


def expect(problem: Problem) -> Expected:
    """Work out what the answers to a problem are compared with.

    >>> from onewhole.statements.reading import read_statement
    >>> "A01" in expect(Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8")).shows
    True
    """
    return expect_worked(WorkedProblem(problem))


def expect_worked(worked: WorkedProblem) -> Expected:
    """Work out what the answers to a problem are compared with, from the problem worked already."""
    problem, statement = worked.problem, worked.statement
    right, found = worked.answer, worked.slips
    wrong = tuple(slip for slip in found if not slip.form)
    steps = _steps(statement, right)
    also = also_right(statement)
    beside = tuple(
        slip for slip in wrong if not is_fact_slip(slip.pattern) and not by_id(slip.pattern).fact_off
    )
    return Expected(
        problem,
        right,
        also,
        _filled(statement),
        steps,
        _gathered((alike(outcome), slip) for slip in wrong for outcome in slip.outcomes),
        _gathered((amount(outcome), slip) for slip in wrong for outcome in slip.outcomes),
        _gathered(near for slip in beside for near in _beside(slip, steps)),
        _gathered((alike(outcome), slip) for slip in found if slip.form for outcome in slip.outcomes),
        _orders(statement, (right, *(slip.wrote for slip in wrong))),
        wrong,
        frozenset(slip.pattern for slip in wrong),
        (twin_key(statement), worked.needs),
        frozenset(amount(one) for one in (right, also) if one is not None),
    )


def _gathered(pairs: Iterable[tuple[Hashable, Slip]]) -> dict[Hashable, Ids]:
    """Gather pattern ids by key, each once, in the order of the catalogue, fact slips last."""
    found: dict[Hashable, dict[str, None]] = {}
    for key, slip in pairs:
        if key is not None:
            found.setdefault(key, {})[slip.pattern] = None
    return {key: tuple(sorted(ids, key=is_fact_slip)) for key, ids in found.items()}


def _orders(statement: Statement, rows: Iterable[Outcome]) -> frozenset[Hashable]:
    """Return how the rows are written that are one change of neighbors from one of these."""
    if not isinstance(statement, Ordering):
        return frozenset()
    meant = (row for row in rows if isinstance(row, NumberRow))
    return frozenset(alike(beside) for row in meant for beside in row.with_neighbors_changed())


def is_fact_slip(pattern: str) -> bool:
    """Say whether a pattern is a careless slip with a fact, which is never a steady idea."""
    return by_id(pattern).family is Family.FACT


def _beside(slip: Slip, steps: tuple[Fraction, ...]) -> Iterable[tuple[Hashable, Slip]]:
    for outcome in slip.outcomes:
        if isinstance(outcome, Quantity):
            for step in (*steps, *_own_piece(outcome)):
                for near in (outcome.value - step, outcome.value + step):
                    if near >= 0:
                        yield (outcome.kind, near), slip


def _own_piece(outcome: Quantity) -> tuple[Fraction, ...]:
    """Return the piece in which a wrong answer is counted, which need not be one of the problem's."""
    return (outcome.ladder.finest,) if outcome.ladder.finest < 1 else ()


def _steps(statement: Statement, right: RightAnswer) -> tuple[Fraction, ...]:
    """Return the units of which one more or one fewer is a fact slip: the whole and the piece, each rung."""
    if not isinstance(right, Quantity):
        return ()
    if isinstance(statement, MissingNumber) and not statement.gap.alone:
        return (Fraction(1),)
    ladders = [quantity.ladder for quantity in numbers_of(statement) if quantity.kind is right.kind]
    return tuple(unit.size for unit in reduce(joined, ladders or [right.ladder]).units)


def _count_alone(asked: AnotherName) -> Quantity | None:
    """Return what is written in the one blank before a unit: 36 for 3 ft = ? in."""
    if not isinstance(asked.wanted, Ladder) or len(asked.wanted.units) > 1:
        return None
    return whole(named_as(asked.number, asked.wanted).parts)


def _filled(statement: Statement) -> Quantity | None:
    """Return the number with its gap filled in: 6 8/6 for 7 2/6 = 6 ?/6, where the answer is 8.

    And 36 for 3 ft = ? in, where the answer is 36 in.
    """
    if isinstance(statement, AnotherName):
        return _count_alone(statement)
    if not isinstance(statement, MissingNumber) or statement.gap.top is None:
        return None
    gap = statement.gap
    found = gap.filling(gap_amount(statement))
    number = found if isinstance(found, int) else found.numerator
    wholes, top, bottom = (number if part is HOLE else part for part in (gap.wholes, gap.top, gap.bottom))
    return Quantity(mixed(bottom or 1), (wholes, top or 0))
