"""A measure written in another unit, or in two, by a wrong rule: 3 ft as 30 in, 26 in as 2 ft 6 in."""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.wrong_steps.pointed import pointed
from onewhole.number.another_name import another_name
from onewhole.number.ladder import TEN, Ladder, Style, measure
from onewhole.number.quantity import Quantity, trimmed, usual, whole, with_mark
from onewhole.number.unit import Unit
from onewhole.statements.statement import AnotherName, Question, Statement
from onewhole.working.line import Line

HUNDRED = 100
_TWO = 2
#: Units of which so many make one are written with a point.
_TENFOLD = frozenset({10, 100, 1000})


class Conversion(Struct, frozen=True):
    """A measure of one or two units that is to be written in one unit.

    ``large`` and ``small`` are the two units, ``ratio`` how many of the small one make a large one; ``count``
    is how many there are of the first unit that is written, ``beside`` of the second, None where there is
    none. ``down`` says that it is written in the small unit.
    """

    large: Unit
    small: Unit
    count: int
    beside: int | None
    down: bool

    @property
    def ratio(self) -> int:
        """Return how many of the small unit make one of the large one."""
        return int(self.large.size / self.small.size)

    @property
    def into(self) -> Unit:
        """Return the unit that is wanted."""
        return self.small if self.down else self.large


class InTwoUnits(Struct, frozen=True):
    """A count of a smaller unit that is written in a larger one and what is over: 26 in as 2 ft 2 in."""

    large: Unit
    small: Unit
    count: int

    @property
    def ratio(self) -> int:
        """Return how many of the small unit make one of the large one."""
        return int(self.large.size / self.small.size)

    @property
    def parted(self) -> tuple[int, int]:
        """Return how many of the larger unit it is, and what is over."""
        return divmod(self.count, self.ratio)


#: From such a count: what is written, or None where the rule does not apply.
TwoRule = Callable[[InTwoUnits], Quantity | None]
#: From a conversion: what is written, or None where the rule does not apply.
Rule = Callable[[Conversion], int | None]


def conversion(statement: Statement) -> Conversion | None:
    """Return what is to be converted, or None where nothing is.

    >>> from onewhole.statements.reading import read_statement
    >>> found = conversion(read_statement("5 ft 3 in = ? in"))
    >>> found.count, found.beside, found.ratio, found.down
    (5, 3, 12, True)
    """
    match statement:
        case AnotherName(number, Ladder() as wanted):
            return _between(number, wanted)
        case Question(Quantity() as number) if number.ladder.style is Style.MEASURE:
            name = another_name(number)
            return None if name is None else _between(number, name.ladder)
        case _:
            return None


def in_two_units(statement: Statement) -> InTwoUnits | None:
    """Return what is to be written in two units, or None where nothing is.

    >>> from onewhole.statements.reading import read_statement
    >>> in_two_units(read_statement("26 in = ? ft ? in")).parted
    (2, 2)
    """
    match statement:
        case AnotherName(number, Ladder() as wanted):
            pass
        case Question(Quantity() as number) if number.ladder.style is Style.MEASURE:
            name = another_name(number)
            if name is None or name.value != number.value:
                return None
            wanted = name.ladder
        case _:
            return None
    if wanted.style is not Style.MEASURE or len(wanted.units) != _TWO or len(number.ladder.units) > 1:
        return None
    large, small = wanted.units
    return InTwoUnits(large, small, number.parts) if number.ladder.units == (small,) else None


def writes_two(rule: TwoRule) -> Try:
    """Return the attempt at a count of a smaller unit that is written in two units by a wrong rule."""

    def attempt(statement: Statement) -> Attempt | None:
        found = in_two_units(statement)
        wrote = None if found is None else rule(found)
        if wrote is None:
            return None
        says = statement.number if isinstance(statement, AnotherName) else _asked(statement)
        return Attempt((Line(says), Line(wrote)), wrote, _read_as_measure(found, wrote))

    return attempt


def _read_as_measure(found: InTwoUnits | None, wrote: Quantity) -> tuple[Quantity, ...]:
    """Return what 1.30 h is read as: 1 h 18 min; nothing where it does not come out even."""
    if found is None or wrote.ladder.style is not Style.DECIMAL:
        return ()
    count = wrote.value * found.ratio
    two = measure(found.large.mark, found.small.mark)
    return (usual(two, count * found.small.size),) if count.denominator == 1 else ()


def _in_both(found: InTwoUnits, larger: int, smaller: int) -> Quantity:
    return trimmed(Quantity(measure(found.large.mark, found.small.mark), (larger, smaller)))


def parted_at_ten(found: InTwoUnits) -> Quantity | None:
    """26 in is said to be 2 ft 6 in."""
    if found.count >= HUNDRED or found.ratio in _TENFOLD:
        return None
    return _in_both(found, *divmod(found.count, TEN))


def parted_at_a_hundred(found: InTwoUnits) -> Quantity | None:
    """130 min is said to be 1 h 30 min."""
    if found.count < HUNDRED or found.ratio in _TENFOLD:
        return None
    return _in_both(found, *divmod(found.count, HUNDRED))


def rest_dropped(found: InTwoUnits) -> Quantity | None:
    """26 in is said to be 2 ft."""
    larger, over = found.parted
    return _in_both(found, larger, 0) if over and larger else None


def after_a_point(found: InTwoUnits) -> Quantity | None:
    """90 min is said to be 1.30 h; not where ten, a hundred or a thousand make one."""
    larger, over = found.parted
    if not over or found.ratio in _TENFOLD:
        return None
    return with_mark(pointed(larger, str(over)), found.large.mark)


def _between(number: Quantity, wanted: Ladder) -> Conversion | None:
    if wanted.style is not Style.MEASURE or len(wanted.units) != 1 or number.ladder == wanted:
        return None
    units, (into,) = number.ladder.units, wanted.units
    if len(units) == _TWO and units[1] == into:
        return Conversion(units[0], into, number.amounts[0], number.amounts[1], down=True)
    if len(units) != 1 or units[0].kind is not into.kind:
        return None
    down = into.size < units[0].size
    large, small = (units[0], into) if down else (into, units[0])
    return Conversion(large, small, number.amounts[0], None, down)


def converts(rule: Rule) -> Try:
    """Return the attempt at a conversion by a wrong rule; a child may leave the unit off."""

    def attempt(statement: Statement) -> Attempt | None:
        found = conversion(statement)
        count = None if found is None else rule(found)
        if found is None or count is None:
            return None
        says = statement.number if isinstance(statement, AnotherName) else _asked(statement)
        wrote = Quantity(measure(found.into.mark), (count,))
        bare = whole(count)
        return Attempt((Line(says), Line(wrote)), wrote, (bare,) if bare.value != says.value else ())

    return attempt


def _asked(statement: Statement) -> Quantity:
    match statement:
        case Question(Quantity() as number):
            return number
        case _:
            msg = "no one number is asked about"
            raise LookupError(msg)


def times_on_the_way_up(found: Conversion) -> int | None:
    """36 in is said to be 432 ft."""
    return None if found.down else found.count * found.ratio


def divided_on_the_way_down(found: Conversion) -> int | None:
    """36 ft is said to be 3 in; only where the ratio divides the number."""
    if not found.down or found.beside is not None or found.count % found.ratio:
        return None
    return found.count // found.ratio


def times_ten(found: Conversion) -> int | None:
    """3 ft is said to be 30 in."""
    return found.count * TEN if found.down and found.beside is None and found.ratio != TEN else None


def times_hundred(found: Conversion) -> int | None:
    """3 h is said to be 300 min."""
    return found.count * HUNDRED if found.down and found.beside is None and found.ratio != HUNDRED else None


def small_left_out(found: Conversion) -> int | None:
    """5 ft 3 in is said to be 60 in."""
    return found.count * found.ratio if found.beside else None


def added(found: Conversion) -> int | None:
    """5 ft 3 in is said to be 8 in."""
    return None if found.beside is None else found.count + found.beside


def side_by_side(found: Conversion) -> int | None:
    """5 ft 3 in is said to be 53 in."""
    return None if found.beside is None else int(f"{found.count}{found.beside}")
