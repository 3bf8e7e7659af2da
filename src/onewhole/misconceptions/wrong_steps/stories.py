"""Stories in which another operation is chosen: by a word, for all numbers, the wrong way round."""

from collections.abc import Callable

from msgspec import Struct
from msgspec.structs import replace

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.in_story import InStory
from onewhole.misconceptions.telling import Doing, ToldAs
from onewhole.misconceptions.wrong_steps.gaps import known_of
from onewhole.misconceptions.wrong_steps.steps import asked_in_steps, first_step_only, worked_instead
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.statements.expression import (
    Expression,
    Quotient,
    Sum,
    Term,
    Times,
    WithRemainder,
    minus,
    plus,
    quantities,
)
from onewhole.statements.statement import Question, Statement
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.line import LineContent
from onewhole.working.quotients.remainder_shared import both_shared

_TWO = 2


class ToldNumbers(Struct, frozen=True):
    """The numbers that a story tells, in the order of its equation, and what is to be done with them.

    ``doing`` is None where there are several steps. ``asked`` is the first line of a working.
    """

    asked: LineContent
    numbers: tuple[Quantity, ...]
    doing: Doing | None = None

    @property
    def two(self) -> tuple[Quantity, Quantity]:
        """Return both numbers where there are two; of the missing number's equation the known ones."""
        first, second = self.numbers
        return first, second


#: What is worked instead; None where a rule does not apply.
Chosen = Callable[[ToldNumbers, ToldAs], Expression | None]


def told_numbers(statement: Statement) -> ToldNumbers | None:
    """Return the numbers of a statement that a story may tell; None for one in which nothing is chosen.

    >>> from onewhole.statements.reading import read_statement
    >>> [told_numbers(read_statement(typed)).doing.value for typed in ("9 - 4", "? - 4 = 9", "4 + ? = 9")]
    ['-', '+', '-']
    """
    found = _in_one_step(statement) or _of_a_gap(statement) or _of_steps(statement)
    return None if found is None or any(one.ladder.clock for one in found.numbers) else found


def _in_one_step(statement: Statement) -> ToldNumbers | None:
    match statement:
        case Question(Sum((Term(Quantity() as first), Term(Quantity() as second, taken))) as asked):
            return ToldNumbers(asked, (first, second), Doing.TAKING if taken else Doing.ADDING)
        case Question(Times(Quantity() as first, Quantity() as second) as asked):
            return ToldNumbers(asked, (first, second), Doing.MULTIPLYING)
        case Question(Quotient(Quantity() as first, Quantity() as second) as asked):
            return ToldNumbers(asked, (first, second), Doing.DIVIDING)
        case WholeGroups(number=first, by=second):
            return ToldNumbers(statement, (first, second), Doing.DIVIDING)
        case _:
            return None


def _of_a_gap(statement: Statement) -> ToldNumbers | None:
    known = known_of(statement)
    if known is None or known[0].more or len(known[0].rest) != 1:
        return None
    numbers, asked = known
    taken_from_gap = not asked.gap_taken and asked.beside[0][1]
    return ToldNumbers(
        asked, (numbers.beside, *numbers.rest), Doing.ADDING if taken_from_gap else Doing.TAKING
    )


def _of_steps(statement: Statement) -> ToldNumbers | None:
    asked = asked_in_steps(statement)
    return ToldNumbers(asked, quantities(asked)) if asked is not None else None


def chooses(chosen: Chosen) -> InStory:
    """Return the attempt at a story that works what is chosen instead of what is asked."""

    def attempt(statement: Statement, telling: ToldAs) -> Attempt | None:
        found = told_numbers(statement)
        says = chosen(found, telling) if found else None
        tried = None if found is None or says is None else worked_instead(found.asked, says)
        if tried is None or not isinstance(tried.wrote, WithRemainder):
            return tried
        return replace(tried, also=both_shared(tried.wrote))

    return InStory(attempt)


def by_a_word(found: ToldNumbers, telling: ToldAs) -> Expression | None:
    """Do what a word of the story suggests, where that is not what is to be done."""
    if telling.suggests in {None, found.doing} or len(found.numbers) != _TWO:
        return None
    assert telling.suggests is not None
    return done(telling.suggests, *found.two)


def the_wrong_way_round(found: ToldNumbers, telling: ToldAs) -> Expression | None:
    """Take the amount that is told first for that of the other, so that the opposite is done."""
    if not telling.compares or found.doing is None:
        return None
    return done(found.doing.opposite, *found.two)


def everything_added(found: ToldNumbers, _: ToldAs) -> Expression | None:
    """Add all numbers that the story tells, whatever it asks."""
    return None if _only_adds(found) else _added(found.numbers)


def first_step_told(found: ToldNumbers, _: ToldAs) -> Expression | None:
    """Do the first of several steps and stop."""
    match found.asked:
        case Sum((first, second, *_)) if len(found.numbers) > _TWO and _plain(first) and _plain(second):
            return Sum((first, second))
        case Sum() | Times() | Quotient() if len(found.numbers) > _TWO:
            return first_step_only(found.asked)
        case _:
            return None


def part_divided(found: ToldNumbers, _: ToldAs) -> Expression | None:
    """Divide by the fraction of which a part is asked: 3/4 of 8 as 8 / 3/4."""
    if found.doing is not Doing.MULTIPLYING:
        return None
    part, whole = found.two
    return Quotient(whole, part) if 0 < part.value < 1 else None


def done(doing: Doing, first: Quantity, second: Quantity) -> Expression | None:
    """Return two numbers with something done with them; None where no child could write it.

    The smaller one is taken from the larger one. What is divided has the unit, or is the larger one.

    >>> from onewhole.notations.text import text
    >>> from onewhole.number.quantity import whole
    >>> [text(done(doing, whole(4), whole(12))) for doing in Doing]
    ['4 + 12', '12 - 4', '4 x 12', '12 ÷ 4']
    """
    match doing:
        case Doing.ADDING:
            return _added((first, second))
        case Doing.TAKING:
            larger, smaller = (second, first) if second.value > first.value else (first, second)
            return minus(larger, smaller) if _alike(first, second) else None
        case Doing.MULTIPLYING:
            return Times(first, second) if first.plain or second.plain else None
        case Doing.DIVIDING:
            return _divided(first, second)


def _divided(first: Quantity, second: Quantity) -> Expression | None:
    both = first.plain and second.plain
    turned = second.value > first.value if both else first.plain
    amount, count = (second, first) if turned else (first, second)
    if not count.plain or count.value <= 1:
        return None
    with_unit = amount.kind is not Kind.NUMBER or bool(amount.ladder.mark)
    return None if with_unit and amount.parts % count.parts else Quotient(amount, count)


def _added(numbers: tuple[Quantity, ...]) -> Expression | None:
    return plus(*numbers) if all(_alike(numbers[0], one) for one in numbers[1:]) else None


def _alike(first: Quantity, second: Quantity) -> bool:
    """Say whether two numbers can be added as they stand: measures of one kind, or both without a unit."""
    return first.kind is second.kind and bool(first.ladder.mark) == bool(second.ladder.mark)


def _only_adds(found: ToldNumbers) -> bool:
    match found.asked:
        case Sum(terms):
            return not any(term.taken for term in terms) and all(map(_plain, terms))
        case _:
            return False


def _plain(term: Term) -> bool:
    return isinstance(term.part, Quantity)
