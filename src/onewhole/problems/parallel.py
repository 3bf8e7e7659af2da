"""Problems parallel to one: the same structure with new numbers, for tomorrow's practice."""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from functools import lru_cache
from itertools import islice
from math import gcd, prod
from typing import TypeVar

from msgspec.structs import replace

from onewhole.errors import InputError, OnewholeError
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.like_names import asked_in_pieces, like_names
from onewhole.problems.like_plots import like_plots
from onewhole.problems.needs import Needs, Operation, needs
from onewhole.problems.numbers import numbers_of, with_numbers
from onewhole.problems.other_pieces import with_other_pieces
from onewhole.problems.traps import core_traps
from onewhole.problems.twins import twin_key
from onewhole.statements.clock_sides import as_read
from onewhole.statements.expression import WithRemainder
from onewhole.statements.factor_question import WordAnswer
from onewhole.statements.gap import Gap, type_hole
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.statement import (
    AnotherName,
    MissingNumber,
    NumberRow,
    Question,
    Relation,
    Statement,
    meaning,
)
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.products.share_then_times import SHARE_THEN_TIMES, fraction_first
from onewhole.working.products.work_product import factors
from onewhole.working.questions import steps_found
from onewhole.working.quotients.work_quotient import divided
from onewhole.working.steps.work_steps import has_steps

TEN = 10
#: A number with no more factors is 1, a prime, or the square of one.
FEW = 3
#: Wholes of a parallel problem go up to here; the first problem's own wholes may lie higher.
WHOLES = 9
#: At most so many sets of numbers are tried: spaces of long numbers are too large to search whole.
LOOKED_AT = 20_000
#: Where a problem of the other sort is possible, about every second set of numbers gives one: few are tried.
NEAR = 300
#: So many parallels are kept: the groups of a night practise on those of the same few problems.
KEPT = 4096

_T = TypeVar("_T")


def parallel(statement: Statement) -> Iterator[Statement]:
    """Yield problems of the same structure with new numbers, in an order that never changes.

    They have the same operations and denominators, the same needs (regroupings, renaming, a whole on top,
    fractions greater than one), the same places empty, an answer written with the same units, and no trap in
    regrouping or in the pieces that the first one has not (:mod:`onewhole.problems.traps`). None is a twin of
    the first one or of one yielded before. The space is searched in wide steps, so that the first few results
    are already spread over it. Where a problem has several denominators, others that go together in the same
    way come after its own (:mod:`onewhole.problems.other_pieces`). There may be few or none: 1/2 + 1/2 has no
    other halves.

    >>> from itertools import islice
    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("9 5/8 - 4 6/8")
    >>> all(needs(other) == needs(asked) for other in islice(parallel(asked), 5))
    True
    """
    seen, turn = {twin_key(statement)}, 0
    while (found := _after(statement, turn)) is not None:
        one, turn = found
        if (key := twin_key(one)) not in seen:
            seen.add(key)
            yield one


@lru_cache(maxsize=KEPT)
def _after(statement: Statement, turn: int) -> tuple[Statement, int] | None:
    """Return the first problem after a turn of the walk that is like this one, and its turn."""
    model = _model(statement)
    return next(
        ((one, at) for at, one in _walk(statement, turn + 1) if model.like(one) and model.no_new_trap(one)),
        None,
    )


def of_the_other_sort(statement: Statement) -> Iterator[Statement]:
    """Yield problems with the same operations and denominators that need regrouping where this one does not.

    And the other way round. There may be none: what is taken from a bare whole always opens it.

    >>> from onewhole.statements.reading import read_statement
    >>> needs(next(of_the_other_sort(read_statement("7 2/6 - 3 5/6")))).regrouping
    False
    """
    own = needs(statement)
    for _, found in islice(_walk(statement), NEAR):
        try:
            meant, other = meaning(found), needs(found)
        except OnewholeError:
            continue
        whole = not isinstance(meant, int | Fraction) or meant > 0
        same = (other.operations, other.denominators) == (own.operations, own.denominators)
        if whole and same and other.regrouping != own.regrouping:
            yield found


class _Model:
    """What a parallel problem shares with the first one."""

    def __init__(self, statement: Statement) -> None:
        self._needs = needs(statement)
        self._shape = _shape(statement)
        self._divided = _how_divided(statement)
        self._traps = core_traps(statement)

    def like(self, found: Statement) -> bool:
        """Say whether a problem has this structure; one below zero, or whose gap nothing fits, has not."""
        try:
            meant = meaning(found)
            if isinstance(meant, int | Fraction) and meant <= 0:
                return False
            if isinstance(found, Question) and not as_read(found.asked):
                return False
            if isinstance(found, Question) and has_steps(found.asked):
                steps_found(found.asked)
            if _how_divided(found) != self._divided:
                return False
            return self._needed(needs(found)) == self._needed(self._needs) and _shape(found) == self._shape
        except OnewholeError:
            return False

    def _needed(self, found: Needs) -> Needs:
        """Return what is needed; the walk sees to denominators where others may stand for them."""
        others = found.operations == (Operation.RENAME,) or len(found.denominators) > 1
        return replace(found, denominators=()) if others else found

    def no_new_trap(self, found: Statement) -> bool:
        """Say whether a problem shows and distinguishes at least as many core patterns."""
        return core_traps(found).within(self._traps)


@lru_cache(maxsize=KEPT)
def _model(statement: Statement) -> _Model:
    return _Model(statement)


def _shape(statement: Statement) -> object:
    """Return which units the answer is written with, the sign that is the answer, or how it is ordered."""
    found = answer(statement)
    if isinstance(found, Relation | WordAnswer):
        return found
    if isinstance(statement, WholeGroups):
        return bool(statement.left), statement.full > 1, statement.full == statement.left
    if isinstance(statement, Listing):
        return "listed", len(found.parts) > FEW if isinstance(found, NumberRow) else 0
    if isinstance(found, NumberRow):
        return tuple(numbers_of(statement).index(part) for part in found.parts), found.signs
    if isinstance(found, WithRemainder):
        return bool(found.left.parts), _written_with(found.quotient)
    asked = divided(statement.asked) if isinstance(statement, Question) else None
    groups = asked is not None and _unit_fraction(asked.right)
    # An axis further on has wholes too, and 6 and 12 groups are alike.
    if isinstance(statement, PlotQuestion) or groups:
        return found.ladder.style, found.ladder.kind
    return _written_with(found)


def _how_divided(statement: Statement) -> object:
    """Return which numbers of a quotient are unit fractions, and whether nothing is divided by 1.

    Of a part of a measure or of a price, whether one share is taken, or several.


    A unit fraction by a whole number stays one (5.NF.B.7.a), and nobody practises dividing by 1.
    """
    if not isinstance(statement, Question):
        return None
    product, asked = factors(statement.asked), divided(statement.asked)
    if product is not None and SHARE_THEN_TIMES.unsuited(product) is None:
        return fraction_first(product).left.parts == 1
    if asked is None:
        return None
    return _unit_fraction(asked.left), _unit_fraction(asked.right), asked.shares == 1


def _unit_fraction(number: Quantity) -> bool:
    return number.ladder.style is Style.MIXED and number.amounts == (0, 1)


def _written_with(found: Quantity) -> object:
    return found.ladder.style, found.ladder.kind, tuple(bool(count) for count in found.amounts)


def _walk(statement: Statement, first: int = 1) -> Iterator[tuple[int, Statement]]:
    """Yield the statement with other counts, each with its turn, going on from its own in wide steps.

    Other denominators come after its own.
    """
    if (likes := _likes(statement)) is not None:
        yield from ((turn, one) for turn, one in enumerate(likes, 1) if turn >= first)
        return
    own = _OwnPieces(statement)
    yield from ((turn, one) for turn in range(first, own.turns) if (one := own.problem(turn)))
    others = tuple(map(_OwnPieces, with_other_pieces(statement)))
    for turn in range(max(first, own.turns), own.turns + LOOKED_AT if others else 0):
        at, which = divmod(turn - own.turns, len(others))
        if at < others[which].turns:
            if one := others[which].problem(at):
                yield turn, one
        elif not which and at >= max(other.turns for other in others):
            return


def _likes(statement: Statement) -> Iterator[Statement] | None:
    """Return what is asked alike of another plot or in other pieces; None for what has only other counts."""
    if isinstance(statement, PlotQuestion):
        return like_plots(statement)
    asked = asked_in_pieces(statement)
    if asked is None:
        return None
    if asked == statement:
        return like_names(asked)
    return (Question(one.number) for one in like_names(asked) if _alone(one) is not None)


class _OwnPieces:
    """The problems that are a statement with other counts of the same units, in wide steps from its own."""

    def __init__(self, statement: Statement) -> None:
        self._statement = statement
        numbers = self._numbers = numbers_of(statement)
        gap = statement.gap if isinstance(statement, MissingNumber) else None
        self._places = [place for number in numbers for place in _places(number)]
        self._beside = _gap_places(gap) if gap else []
        own = _index(self._places, [count for number in numbers for count in number.counts])
        self._gaps = prod(map(len, self._beside))
        self._own = own * self._gaps + (_index(self._beside, [gap.wholes, gap.top, gap.bottom]) if gap else 0)
        size = self._size = prod(map(len, (*self._places, *self._beside)))
        self._step = next(step for step in range(size * 618 // 1000, 2 * size + 2) if gcd(step, size) == 1)

    @property
    def turns(self) -> int:
        """Return how many there are, the statement itself among them; of very many, how many are tried."""
        return min(self._size, LOOKED_AT)

    def problem(self, turn: int) -> Statement | None:
        """Return the problem of a turn; the first, 0, is the statement itself. None where there is none."""
        at, in_gap = divmod((self._own + turn * self._step) % self._size, self._gaps)
        counts = iter(_row(self._places, at))
        found = [
            Quantity(number.ladder, tuple(islice(counts, len(number.counts)))) for number in self._numbers
        ]
        try:
            filled = with_numbers(self._statement, found)
        except InputError:
            return None
        if isinstance(filled, MissingNumber):
            return replace(filled, gap=Gap(*_row(self._beside, in_gap)))
        return filled


def _alone(one: AnotherName) -> AnotherName | None:
    """Return the question where a number that stands alone would be answered in the same form, else None."""
    return one if asked_in_pieces(Question(one.number)) == one else None


def _places(number: Quantity) -> list[Sequence[int | None]]:
    """Return the possible counts of each rung: the same kind of count as there is now."""
    first = WHOLES if number.ladder.style in {Style.MIXED, Style.MEASURE} else TEN - 1
    ratios = (first + 1, *number.ladder.ratios)
    return [_like(count, ratio) for count, ratio in zip(number.counts, ratios, strict=True)]


def _like(count: int | None, ratio: int) -> Sequence[int | None]:
    """Return counts that fill as many larger units as this one; nothing written, and 0, stay."""
    if not count:
        return (count,)
    full = count // ratio
    return range(max(1, full * ratio), (full + 1) * ratio)


def _gap_places(gap: Gap) -> list[Sequence[int | type_hole | None]]:
    """Return the possible values of each part of the number with the gap; its denominator stays."""
    wholes: Sequence[int | type_hole | None] = (
        range(min(1, gap.wholes), max(WHOLES, gap.wholes) + 1)
        if isinstance(gap.wholes, int)
        else (gap.wholes,)
    )
    top: Sequence[int | type_hole | None] = (
        range(min(1, gap.top), max(TEN, gap.top) + 1) if isinstance(gap.top, int) else (gap.top,)
    )
    return [wholes, top, (gap.bottom,)]


def _index(places: Sequence[Sequence[_T]], counts: Sequence[_T]) -> int:
    """Return the number of a row of counts; the inverse of :func:`_row`."""
    at = 0
    for place, count in zip(places, counts, strict=True):
        at = at * len(place) + place.index(count)
    return at


def _row(places: Sequence[Sequence[_T]], at: int) -> list[_T]:
    row: list[_T] = []
    for place in reversed(places):
        at, which = divmod(at, len(place))
        row.append(place[which])
    return row[::-1]
