"""What stands in the squares of a long division, line by line: the quotient, and what is taken away."""

from collections.abc import Iterator
from dataclasses import dataclass, field

from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import Unit
from onewhole.pictures.caption import Count
from onewhole.pictures.description import Description, DividedInColumns, DivisionRow, WrittenOver
from onewhole.pictures.squares import RowSign, Squares, WrittenState, counts_of, digits_of
from onewhole.statements.expression import WithRemainder
from onewhole.working.line import Line
from onewhole.working.reasons.columns import DigitBroughtDown, DivisionEnds, QuotientDigit


def quotient_states(lines: tuple[Line, ...], number: Quantity, by: int) -> Iterator[WrittenState]:
    """Yield the squares of a long division: the quotient over the number, and below it what is taken away."""
    writing = _QuotientSquares.of(lines, number, by)
    for line in lines:
        writing.step(line.because)
        rest = line.says.left if isinstance(line.says, WithRemainder) else None
        yield writing.state(rest)


@dataclass
class _QuotientSquares:
    """The squares of a long division, which change line by line."""

    number: Quantity
    by: int
    squares: Squares
    units: tuple[Unit, ...]
    row: int = -1
    over: dict[Unit, int] = field(default_factory=dict)
    taken: Count | None = None
    left: Count | None = None

    @classmethod
    def of(cls, lines: tuple[Line, ...], number: Quantity, by: int) -> "_QuotientSquares":
        """Write the number that is divided behind the one that it is divided by."""
        reasons = [line.because for line in lines]
        down = [one.unit for one in reasons if isinstance(one, DigitBroughtDown)]
        units = (*number.ladder.units, *[unit for unit in down if unit.size < number.ladder.units[-1].size])
        begin = len(str(by))  # where the quotient and the number begin
        squares = Squares(begin + len(units))
        squares.add("quotient")
        squares.change("quotient", rule=(begin, begin + len(number.amounts)))
        squares.add("number")
        squares.write("number", (*digits_of(by), *number.amounts), begin + len(number.amounts) - 1)
        if number.ladder.after:
            squares.change("number", point=begin + len(number.amounts) - number.ladder.after)
        for at, _ in enumerate(one for one in reasons if isinstance(one, QuotientDigit) and one.digit):
            squares.add(f"taken/{at}")
            squares.add(f"left/{at}")
        return cls(number, by, squares, units)

    @property
    def _begin(self) -> int:
        """Return the square in which the quotient and the number begin."""
        return len(str(self.by))

    def _square(self, unit: Unit) -> int:
        return self._begin + next(at for at, one in enumerate(self.units) if one.size == unit.size)

    def step(self, reason: object) -> None:
        """Write what a line writes."""
        match reason:
            case QuotientDigit(unit, have, _, digit):
                at = self._square(unit)
                self.squares.write("quotient", (digit,), at)
                self.over[unit] = digit
                self.taken = self.left = None
                if digit:
                    self.row += 1
                    self._taken(reason.product, have, at)
                    self.taken = Count(reason.product, unit)
            case DigitBroughtDown(unit):
                self._brought_down(reason, self._square(unit))
                self.left = Count(reason.now, unit)
            case DivisionEnds(taken=taken):
                if taken is not None:
                    self.squares.write(f"left/{self.row}", digits_of(reason.left), self._last)
                self.left = Count(reason.left, self._unit)
            case _:
                return

    @property
    def _unit(self) -> Unit:
        return min(self.over, key=lambda unit: unit.size)

    @property
    def _last(self) -> int:
        return self._square(self._unit)

    def _taken(self, product: int, have: int, at: int) -> None:
        name, begin = f"taken/{self.row}", at + 1 - len(str(product))
        self.squares.write(name, digits_of(product), at)
        rule = (min(begin - 1, at + 1 - len(str(have))), at + 1)
        self.squares.change(name, sign=RowSign.MINUS, sign_at=begin - 1, rule=rule)

    def _brought_down(self, reason: DigitBroughtDown, at: int) -> None:
        digits = self.squares.rows["number"].digits
        if digits[at] is None:
            self.squares.write("number", (reason.down,), at)
            self.squares.change("quotient", rule=(self._begin, at + 1))
        if reason.point:
            self.squares.change("quotient", point=at)
            self.squares.change("number", point=at)
        if reason.taken is not None:
            self.squares.write(f"left/{self.row}", (*digits_of(reason.left), reason.down), at)
        elif self.row >= 0:
            self.squares.write(f"left/{self.row}", (reason.down,), at)

    def state(self, rest: Quantity | None) -> WrittenState:
        """Return what stands there now, and its words."""
        told: list[Description] = [DividedInColumns(self.number, whole(self.by))]
        if self.over:
            told.append(WrittenOver(counts_of(self.over)))
        if self.taken or self.left:
            told.append(DivisionRow(self.taken, self.left))
        left = None if rest is None else self.left.count if self.left else None
        rows = tuple(self.squares.rows.values())
        after = 0 if rest is None else rest.ladder.after
        return WrittenState(rows, tuple(told), self._begin, left, after=after)
