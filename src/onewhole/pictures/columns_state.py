"""What stands in the columns of a working, line by line: digits, what is struck, what is above and below."""

from collections.abc import Iterator
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.ladder import TEN
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Sum, quantities
from onewhole.statements.statement import MissingNumber, Question, Statement, asked_quantities
from onewhole.working.line import Line
from onewhole.working.missing import alone_on_its_side
from onewhole.working.reasons.columns import ColumnAdded, ColumnOpened, ColumnTaken, InColumns
from onewhole.working.strategies.same_units import Signed, same_units
from onewhole.working.working import Working


class DigitColumn(Struct, frozen=True):
    """One column: the digits of the numbers from top to bottom (None where none stands), and what is added.

    ``above`` are small numbers, the lowest first: in subtracting each stands for the one below it, which is
    struck out, and the lowest for the first digit; in adding there is one, and nothing is struck. ``below``
    is the digit of the answer, once it is written.
    """

    unit: Unit
    digits: tuple[int | None, ...]
    above: tuple[int, ...] = ()
    below: int | None = None


class ColumnsState(Struct, frozen=True):
    """Columns from the largest unit on; the second number is ``taken`` from the first, or all are added.

    ``block`` counts the columns of a working that adds and takes away in turn.
    """

    numbers: tuple[Quantity, ...]
    taken: bool
    columns: tuple[DigitColumn, ...]
    block: int = 0

    def changed(self, unit: Unit, **changes: object) -> "ColumnsState":
        """Return the state with one column changed."""
        made = tuple(replace(column, **changes) if column.unit == unit else column for column in self.columns)
        return replace(self, columns=made)

    def column(self, unit: Unit) -> DigitColumn:
        """Return the column of a unit."""
        return next(column for column in self.columns if column.unit == unit)


def columns_states(working: Working) -> tuple[ColumnsState, ...]:
    """Return what stands in the columns at every line of a working that goes column by column.

    Returns nothing for any other working. Where a number is missing, the columns are those in which it is
    found, and they stand there from the first line on.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.columns import COLUMNS
    >>> from onewhole.working.work import work
    >>> states = columns_states(work(read_statement("304 - 128"), COLUMNS))
    >>> [column.above for column in states[-1].columns], [column.below for column in states[-1].columns]
    ([(2,), (10, 9), (14,)], [1, 7, 6])
    """
    blocks = tuple(_blocks(working))
    if not blocks:
        return ()
    found: list[ColumnsState] = []
    now = blocks[0][0]
    begins = {id(lines[0]): (at, state) for at, (state, lines) in enumerate(blocks) if at}
    steps = {id(line): lines for _, lines in blocks for line in lines}
    for line in working.lines:
        if id(line) in begins:
            now = begins[id(line)][1]
        if id(line) in steps:
            now = _stepped(now, line.because, steps[id(line)])
        found.append(now)
    return tuple(found)


def laid_numbers(statement: Statement) -> Signed | None:
    """Return the numbers that stand under each other where a problem is worked in columns, with their signs.

    Where a number is missing, they are those by which it is found. None for what is no sum and no difference.

    >>> from onewhole.statements.reading import read_statement
    >>> [(str(number.value), taken) for number, taken in laid_numbers(read_statement("? + 128 = 304"))]
    [('304', False), ('128', True)]
    """
    match statement:
        case Question():
            return asked_quantities(statement)
        case MissingNumber():
            return asked_quantities(Question(alone_on_its_side(statement).rest))
        case _:
            return None


def _blocks(working: Working) -> Iterator[tuple[ColumnsState, tuple[Line, ...]]]:
    """Yield the columns as they stand at first, with the lines that work them."""
    signed = laid_numbers(working.statement)
    lines = [line for line in working.lines if isinstance(line.because, InColumns)]
    if signed is None or not lines:
        return
    counted, _ = same_units(signed)
    (first, _), *waiting = counted
    for block, group in enumerate(_groups(lines)):
        taken = not isinstance(group[0].because, ColumnAdded)
        count = 1 if taken else next((at for at, (_, gone) in enumerate(waiting) if gone), len(waiting))
        numbers = (first, *(number for number, _ in waiting[:count]))
        del waiting[:count]
        yield _laid(numbers, group, block, taken=taken), group
        said = group[-1].says
        amount = said.rest if isinstance(said, MissingNumber) else said
        assert isinstance(amount, Quantity | Sum), "a line of columns says an amount"
        first = quantities(amount)[0]


def _groups(lines: list[Line]) -> Iterator[tuple[Line, ...]]:
    """Part lines where the columns begin again from the right."""
    group: list[Line] = []
    for line in lines:
        if group and _place(line) <= _place(group[-1], done=True):
            yield tuple(group)
            group = []
        group.append(line)
    yield tuple(group)


def _place(line: Line, *, done: bool = False) -> Fraction:
    """Return the size of the column that a line is about; one that only gets more is not ``done``."""
    match line.because:
        case ColumnOpened(short=short):
            return Fraction(0) if done else short.size
        case ColumnTaken(unit) | ColumnAdded(unit):
            return unit.size
        case _:
            msg = "a line of columns has a reason of columns"
            raise TypeError(msg)


def _laid(numbers: tuple[Quantity, ...], lines: tuple[Line, ...], block: int, *, taken: bool) -> ColumnsState:
    sizes = {unit.size for number in numbers for unit in number.ladder.units}
    for line in lines:
        if isinstance(line.because, ColumnAdded) and line.because.outermost and line.because.total >= TEN:
            sizes.add(line.because.large.size)
    units = [replace(numbers[0].ladder.units[0], size=size) for size in sorted(sizes, reverse=True)]
    columns = [DigitColumn(unit, tuple(_digit(number, unit) for number in numbers)) for unit in units]
    used = next(at for at, one in enumerate(columns) if one.unit.size == 1 or _used(one, lines))
    return ColumnsState(numbers, taken, tuple(columns[used:]), block)


def _used(column: DigitColumn, lines: tuple[Line, ...]) -> bool:
    """Say whether anything stands or will stand in a column."""
    carried = any(
        isinstance(line.because, ColumnAdded) and line.because.large == column.unit for line in lines
    )
    return carried or any(digit is not None for digit in column.digits)


def _digit(number: Quantity, unit: Unit) -> int | None:
    """Return the digit of a number in a column; None in front of its first digit."""
    pairs = tuple(zip(number.ladder.units, number.amounts, strict=True))
    if unit.size > 1 and not any(count for one, count in pairs if one.size >= unit.size):
        return None
    return next((count for one, count in pairs if one == unit), None if unit.size > 1 else 0)


def _stepped(now: ColumnsState, reason: object, lines: tuple[Line, ...]) -> ColumnsState:
    match reason:
        case ColumnOpened(large, small, left=left, now=count):
            opened = now.changed(large, above=(*now.column(large).above, left))
            return opened.changed(small, above=(*opened.column(small).above, count))
        case ColumnTaken(unit, have, gone):
            made = now.changed(unit, below=have - gone) if unit.size <= _front(lines) else now
            return _begun(made) if reason is lines[-1].because else made
        case ColumnAdded(unit, large):
            up, digit = divmod(reason.total, TEN)
            made = now.changed(unit, below=digit)
            if not up:
                return made
            return made.changed(large, below=up) if reason.outermost else made.changed(large, above=(up,))
        case _:
            return now


def _front(lines: tuple[Line, ...]) -> Fraction:
    """Return the size of the largest place that has a digit in the answer: nothing is written before it."""
    taken = [line.because for line in lines if isinstance(line.because, ColumnTaken)]
    return max(
        (one.unit.size for one in taken if one.have > one.gone or one.unit.size == 1), default=Fraction(1)
    )


def _begun(now: ColumnsState) -> ColumnsState:
    """Write the zero before the point where nothing else stands there."""
    ones = next(column for column in now.columns if column.unit.size == 1)
    return now.changed(ones.unit, below=0) if ones.below is None else now
