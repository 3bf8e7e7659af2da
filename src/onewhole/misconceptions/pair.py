"""The two numbers that a problem asks about, when a pattern can be looked for in it."""

from msgspec import Struct

from onewhole.number.ladder import Ladder, Style
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression
from onewhole.statements.statement import MissingNumber, Question, Statement, asked_quantities
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.same_units import same_units

PAIR = 2


class Pair(Struct, frozen=True):
    """Two quantities as typed, joined by + or -, and the expression they stand in."""

    asked: Expression
    first: Quantity
    second: Quantity
    taken: bool

    @property
    def styles(self) -> set[Style]:
        """Return the styles in which the two are written."""
        return {self.first.ladder.style, self.second.ladder.style}

    def state(self, ladder: Ladder) -> PairState:
        """Return the state to work from: both numbers on one ladder, every rung written."""
        return PairState(self.first.on(ladder), self.second.on(ladder), self.taken)


def pair_of(statement: Statement) -> Pair | None:
    """Return the two numbers of a plain sum or difference, or None for anything else.

    >>> from onewhole.statements.reading import read_statement
    >>> pair_of(read_statement("4 - 1 3/8")).second.counts
    (1, 3)
    """
    question = as_question(statement)
    signed = asked_quantities(question) if isinstance(question, Question) else None
    if not isinstance(question, Question) or signed is None or len(signed) != PAIR:
        return None
    (first, _), (second, taken) = signed
    return Pair(question.asked, first, second, taken)


def as_question(statement: Statement) -> Statement:
    """Read ``? = 4 - 1 3/8`` as the question it is; anything else, and ``? = 5/6``, is returned as it is.

    >>> from onewhole.statements.reading import read_statement
    >>> as_question(read_statement("? = 3 x 2/5")) == read_statement("3 x 2/5")
    True
    """
    match statement:
        case MissingNumber(Quantity()):
            return statement
        case MissingNumber(rest, gap, beside=()) if gap.alone and not statement.gap_taken:
            return Question(rest)
        case _:
            return statement


def like_parts(statement: Statement, *, taken: bool) -> tuple[Pair, PairState] | None:
    """Return the pair of a sum or difference with like denominators, and both numbers on one ladder.

    A whole number counts as having the other number's denominator; two whole numbers have none.

    >>> from onewhole.statements.reading import read_statement
    >>> like_parts(read_statement("4 - 1 3/8"), taken=True)[1].first.counts
    (4, 0)
    """
    pair = pair_of(statement)
    if pair is None or pair.taken != taken or not pair.styles <= {Style.MIXED, Style.PLACES}:
        return None
    ladders = {n.ladder for n in (pair.first, pair.second) if n.ladder.style is Style.MIXED}
    return (pair, pair.state(ladders.pop())) if len(ladders) == 1 else None


def renamed_parts(statement: Statement, *, taken: bool) -> tuple[Pair, PairState] | None:
    """Return the pair of a sum or difference with unlike denominators, renamed rightly, with those lines.

    >>> from onewhole.statements.reading import read_statement
    >>> renamed_parts(read_statement("5 1/3 - 2 3/4"), taken=True)[1].first.counts
    (5, 4)
    """
    pair = unlike_parts(statement, taken=taken)
    if pair is None:
        return None
    moved, lines = same_units(((pair.first, False), (pair.second, taken)))
    (first, _), (second, _) = moved
    return pair, PairState(first, second, taken, lines)


def unlike_parts(statement: Statement, *, taken: bool) -> Pair | None:
    """Return the pair of a sum or difference with unlike denominators.

    >>> from onewhole.statements.reading import read_statement
    >>> unlike_parts(read_statement("3/4 - 3/8"), taken=True) is None
    False
    """
    pair = pair_of(statement)
    if pair is None or pair.taken != taken or pair.styles != {Style.MIXED}:
        return None
    return pair if pair.first.ladder != pair.second.ladder else None
