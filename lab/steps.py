"""How one invented pupil works one problem: line by line, with the slips that happen inside a line.

No chance of an *answer* stands here. A number is copied wrongly before anything is worked; a fact in a
written line is one off, and what follows goes on from the wrong number; a form is changed at the end.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from fractions import Fraction
from functools import lru_cache
from itertools import pairwise
from random import Random

from lab.lists_and_remainders import (
    any_list,
    as_the_class_writes,
    list_slipped,
    other_forms,
    with_remainder,
)
from lab.outside import written
from lab.pupils import Kind, Only, Pupil
from onewhole.errors import OnewholeError
from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.misconceptions.pattern import Family
from onewhole.misconceptions.slip import Slip
from onewhole.misconceptions.telling import ToldAs
from onewhole.notations.text import text
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import NotOnLadderError, Quantity, usual, whole
from onewhole.problems.numbers import numbers_of, with_numbers
from onewhole.problems.problem import Problem
from onewhole.statements.expression import Expression, WithRemainder, value
from onewhole.statements.factor_question import FactorQuestion, WordAnswer
from onewhole.statements.listing import Listing
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    NumberRow,
    Ordering,
    Question,
    Relation,
    Statement,
    relation,
)
from onewhole.working.line import Line
from onewhole.working.questions import for_question, work_question
from onewhole.working.strategies.table import strategy_named
from onewhole.working.work import work as worked
from onewhole.working.working import equal_forms

TEN = 10
SIXTH = Fraction(1, 6)
#: The taught way, and the ways that some pupils take instead; our assumption.
WAYS = ("regroup_first", "regroup_first", "regroup_first", "wholes_first", "to_fractions", "count_up")


@dataclass(frozen=True, slots=True)
class Work:
    """What stands on the paper: lines and the answer. ``idea`` is the pattern that acted, "" for none.

    ``false_at`` is the line that the idea makes false, 0 where there is none.
    """

    lines: tuple[Line, ...]
    wrote: Outcome
    idea: str = ""
    also: tuple[Outcome, ...] = ()
    false_at: int = 0


@dataclass(slots=True)
class Pen:
    """A pupil at work on a page: the chance of this pupil alone, the way taken, ideas already dropped."""

    pupil: Pupil
    chance: Random
    way: str = ""
    dropped: set[str] = field(default_factory=set)

    def __post_init__(self) -> None:
        """Choose a way to work for the whole page."""
        self.way = self.chance.choice(WAYS)

    def happens(self, rate: float) -> bool:
        """Say whether something that happens so often happens now."""
        return self.chance.random() < rate


def page_of(pupil: Pupil, problems: Iterable[Problem], seed: str) -> tuple[str, ...]:
    """Return what a pupil writes on a page, one cell a problem."""
    pen = Pen(pupil, Random(f"{seed} {pupil.code}"))
    return tuple(cell(pen, problem.statement, problem.told) for problem in problems)


def cell(pen: Pen, statement: Statement, told: ToldAs | None = None) -> str:
    """Return what a pupil writes for one problem; ``told`` is how a story tells it."""
    if pen.happens(pen.pupil.blank):
        return ""
    found = _written(pen, statement, told)
    rate = pen.pupil.transposed
    return _transposed(pen, found) if rate and pen.happens(rate) else found


def _written(pen: Pen, statement: Statement, told: ToldAs | None) -> str:
    once = pen.happens(pen.pupil.once)
    if once and pen.happens(pen.pupil.air):
        return text(_out_of_the_air(pen, statement))
    idea = _dropped_idea(pen, statement, told) if once else _steady_idea(pen, statement, told)
    read = _copied(pen, statement) if pen.happens(pen.pupil.copied) else statement
    work = _outside(pen, read) or _by_idea(idea, read, told) or _rightly(pen.way, read)
    for at, line in enumerate(work.lines):
        if at and any(pen.happens(pen.pupil.slip) for _ in range(_facts(work, line))):
            work = _one_off(pen, work, at)
            break
    return text(_form(pen, work))


def _facts(work: Work, line: Line) -> int:
    """Return how many facts a pupil writes in a line, each of which may be off.

    One in a line of a working, also in that of a pair of factors. Of two numbers that are compared nothing
    but the sign is written, and of numbers in order, and of multiples, nothing but the row: which is more is
    decided between each two neighbors in it, and each is counted on from the one before. (A row of the
    numbers with one denominator, as they stood, says no order yet.)
    """
    if line.aside:
        return 0
    if isinstance(work.wrote, NumberRow):
        if isinstance(work.lines[0].says, Ordering):
            return len(line.says.signs) if isinstance(line.says, NumberRow) else 0
        if any(isinstance(each.says, Comparison) for each in work.lines):
            return 1 if isinstance(line.says, Comparison) else 0
        return len(work.wrote.parts) - 1 if isinstance(line.says, NumberRow) else 0
    return 0 if isinstance(line.says, Comparison) and line.says.sign is None else 1


def _steady_idea(pen: Pen, statement: Statement, told: ToldAs | None) -> str:
    """Return the steady idea that acts here, unless the pupil is back at the right way; "" for none."""
    used_here = pen.pupil.ideas if used(pen.pupil, statement) else ()
    acting = [key for key in used_here if by_id(key).slip(statement, told)]
    if not acting or pen.happens(pen.pupil.back):
        return ""
    return pen.chance.choice(acting) if pen.pupil.kind is Kind.IN_TURN else acting[0]


def used(pupil: Pupil, statement: Statement) -> bool:
    """Say whether a pupil uses an idea on a problem of this sort at all."""
    first = numbers_of(statement)[0]
    finest = min(number.ladder.finest for number in numbers_of(statement))
    match pupil.only:
        case None:
            return True
        case Only.WHOLE_FIRST:
            return first.value.denominator == 1
        case Only.PIECES_FIRST:
            return first.value.denominator > 1
        case Only.LARGE_PIECES:
            return finest >= SIXTH
        case Only.SMALL_PIECES:
            return finest < SIXTH


def _outside(pen: Pen, statement: Statement) -> Work | None:
    """Work by the rule of a pupil outside the catalogue, now and then with one count one off."""
    if not pen.pupil.outside or pen.happens(pen.pupil.back):
        return None
    wrote = written(pen.pupil.outside, statement)
    if wrote is None:
        return None
    if pen.happens(pen.pupil.slip):
        step = pen.chance.choice([unit.size for unit in wrote.ladder.units])
        wrote = usual(wrote.ladder, wrote.value + step)
    return Work((), wrote)


def _transposed(pen: Pen, cell: str) -> str:
    """Write two neighbouring digits of an answer in each other's place, where that can still be read."""
    digits = [at for at, sign in enumerate(cell) if sign.isdigit()]
    pairs = [pair for pair in pairwise(digits) if cell[pair[0]] != cell[pair[1]]]
    if not pairs:
        return cell
    first, second = pen.chance.choice(pairs)
    changed = list(cell)
    changed[first], changed[second] = cell[second], cell[first]
    return "".join(changed)


def _dropped_idea(pen: Pen, statement: Statement, told: ToldAs | None) -> str:
    """Return an idea that this pupil has not tried yet, never to be tried again."""
    fresh = [key for key in _possible(statement, told) if key not in pen.dropped]
    if not fresh:
        return ""
    pen.dropped.add(chosen := pen.chance.choice(fresh))
    return chosen


@lru_cache(maxsize=1024)
def _possible(statement: Statement, told: ToldAs | None) -> tuple[str, ...]:
    return tuple(
        slip.pattern
        for slip in shows(statement, told)
        if by_id(slip.pattern).family is not Family.FACT and not slip.form
    )


@lru_cache(maxsize=16384)
def _slip(idea: str, statement: Statement, told: ToldAs | None) -> Slip | None:
    return by_id(idea).slip(statement, told)


def _by_idea(idea: str, statement: Statement, told: ToldAs | None = None) -> Work | None:
    slip = _slip(idea, statement, told) if idea else None
    return Work(slip.lines, slip.wrote, idea, slip.also, slip.false_at or 0) if slip else None


@lru_cache(maxsize=16384)
def _rightly(way: str, statement: Statement) -> Work:
    if isinstance(statement, Comparison):
        sign = relation(statement.left, statement.right)
        return Work((Line(statement), Line(Comparison(statement.left, statement.right, sign))), sign)
    if isinstance(statement, Question):
        working = work_question(statement, for_question(statement, strategy_named(way)), checked=False)
    else:
        working = worked(statement, strategy_named(way))
    return Work(working.lines, working.answer)


def _copied(pen: Pen, statement: Statement) -> Statement:
    """Copy one digit of one number wrongly; a problem that cannot be worked then is read again."""
    numbers = list(numbers_of(statement))
    at = pen.chance.randrange(len(numbers))
    counts = list(numbers[at].counts)
    rung = pen.chance.randrange(len(counts))
    counts[rung] = pen.chance.randrange(1, TEN)
    numbers[at] = _kept(Quantity(numbers[at].ladder, tuple(counts)))
    try:
        other = with_numbers(statement, numbers)
        _rightly("regroup_first", other)
    except (OnewholeError, ValueError):
        return statement
    return other


def _kept(number: Quantity) -> Quantity:
    """Write a whole number by its digits again, as a copied number is."""
    return whole(number.value.numerator) if number.ladder.style is Style.PLACES else number


def _one_off(pen: Pen, work: Work, at: int) -> Work:
    """Write one count of a line one too large or too small, and go on from there; or another sign."""
    if isinstance(work.wrote, Relation):
        return replace(work, wrote=pen.chance.choice([sign for sign in Relation if sign is not work.wrote]))
    asked, says = work.lines[0].says, work.lines[at].says
    if isinstance(work.wrote, WordAnswer) and isinstance(asked, FactorQuestion):
        others = [word for word in asked.choices if word is not work.wrote]
        return replace(work, wrote=pen.chance.choice(others))
    if isinstance(work.wrote, NumberRow) and isinstance(asked, Listing):
        return replace(work, wrote=list_slipped(asked, work.wrote, at, pen.chance))
    if isinstance(work.wrote, NumberRow):
        return replace(work, wrote=pen.chance.choice(tuple(work.wrote.with_neighbors_changed())))
    if isinstance(says, Rounding | AnotherName) and isinstance(work.wrote, Quantity):
        return replace(work, wrote=_one_count_off(pen, work.wrote))
    if not isinstance(says, Expression) or not isinstance(work.wrote, Quantity | WithRemainder):
        return work
    before = Question(says)
    numbers = list(numbers_of(before))
    which = pen.chance.randrange(len(numbers))
    amounts = list(numbers[which].amounts)
    rung = pen.chance.choice([rung for rung, count in enumerate(amounts) if count] or [len(amounts) - 1])
    amounts[rung] += pen.chance.choice((-1, 1))
    if amounts[rung] < 0:
        return work
    ladder = numbers[which].ladder
    numbers[which] = _kept(Quantity(ladder, tuple(amounts)))
    after = with_numbers(before, numbers)
    try:
        return _going_on(work, at, after)
    except (OnewholeError, ValueError, ZeroDivisionError):
        return work


def _one_count_off(pen: Pen, wrote: Quantity) -> Quantity:
    """Write one count of an answer one too large: where a line says no amount, a fact is off there."""
    amounts = list(wrote.amounts)
    amounts[pen.chance.randrange(len(amounts))] += 1
    return _kept(Quantity(wrote.ladder, tuple(amounts)))


def _going_on(work: Work, at: int, after: Statement) -> Work:
    """Return the answer that follows from a changed line: the idea acts on it, or it is worked out."""
    assert isinstance(after, Question)
    if work.idea and at < work.false_at and (found := _by_idea(work.idea, after)):
        return found
    amount = value(after.asked)
    if isinstance(work.wrote, WithRemainder):
        return Work(work.lines, with_remainder(amount, work.wrote), work.idea)
    assert isinstance(work.wrote, Quantity)
    return Work(work.lines, _written_like(work.wrote, amount), work.idea)


def _written_like(wrote: Quantity, amount: Fraction) -> Quantity:
    """Write another amount as the answer was written: its overfull pieces stay overfull."""
    step = amount - wrote.value
    for rung, unit in enumerate(wrote.ladder.units):
        if abs(step) == unit.size and (count := wrote.amounts[rung] + (1 if step > 0 else -1)) >= 0:
            counts = tuple(count if at == rung else kept for at, kept in enumerate(wrote.counts))
            return _kept(Quantity(wrote.ladder, counts))
    try:
        return usual(wrote.ladder, amount)
    except NotOnLadderError:
        return usual(mixed(amount.denominator), amount)


def _form(pen: Pen, work: Work) -> Outcome:
    """Write the answer, now and then in another form of the same amount or of the same wrong step."""
    usually = as_the_class_writes(work.wrote, pen.pupil.remainder)
    if not pen.happens(pen.pupil.other_form):
        return usually
    forms: list[Outcome] = [*work.also, *other_forms(work.wrote)]
    if isinstance(work.wrote, Quantity):
        forms += [usual(work.wrote.ladder, work.wrote.value), *equal_forms(work.wrote)]
    other = [form for form in forms if form not in {work.wrote, usually}]
    return pen.chance.choice(other) if other else usually


def _out_of_the_air(pen: Pen, statement: Statement) -> Outcome:
    """Return a number of the usual look that nothing leads to, or any sign, or any order."""
    if isinstance(statement, Comparison):
        return pen.chance.choice(list(Relation))
    if isinstance(statement, FactorQuestion):
        return pen.chance.choice(statement.choices)
    if isinstance(statement, Listing):
        return any_list(statement, pen.chance)
    if isinstance(statement, Ordering):
        return NumberRow(tuple(pen.chance.sample(statement.parts, len(statement.parts))))
    ladder = numbers_of(statement)[0].ladder
    if ladder.style is Style.MIXED:
        return Quantity(
            ladder, (pen.chance.randrange(1, TEN), pen.chance.randrange(1, ladder.denominator + 1))
        )
    return whole(pen.chance.randrange(1, TEN ** len(ladder.units)))
