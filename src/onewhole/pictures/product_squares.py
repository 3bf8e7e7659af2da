"""What stands in the squares of a product, line by line: what is carried, both numbers, rows, their sum."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from onewhole.number.ladder import TEN
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import Unit
from onewhole.pictures.description import (
    Description,
    TimesInColumns,
    WrittenAbove,
    WrittenBelow,
    WrittenRows,
)
from onewhole.pictures.squares import RowSign, Squares, WrittenState, counts_of, digits_of
from onewhole.working.line import Line
from onewhole.working.reasons.columns import ColumnAdded, DigitMultiplied, ProductPoint, ZerosWritten


def product_states(
    lines: tuple[Line, ...], laid: tuple[Quantity, Quantity], answer: Quantity
) -> Iterator[WrittenState]:
    """Yield the squares of a product: what is carried, both numbers, the rows and their sum."""
    writing = _ProductSquares.of(lines, laid, answer)
    for line in lines:
        writing.step(line.because)
        yield writing.state()


@dataclass
class _ProductSquares:
    """The squares of a product, which changes line by line."""

    laid: tuple[Quantity, Quantity]
    answer: Quantity
    squares: Squares
    count: int
    zeros: int = 0
    column: int = 0
    done: tuple[int, ...] = ()
    carried: dict[Unit, int] = field(default_factory=dict)
    below: dict[Unit, int] = field(default_factory=dict)

    @classmethod
    def of(
        cls, lines: tuple[Line, ...], laid: tuple[Quantity, Quantity], answer: Quantity
    ) -> "_ProductSquares":
        """Lay both numbers, and leave every other row empty."""
        steps = [line.because for line in lines if isinstance(line.because, DigitMultiplied)]
        carries = {one.row for one in steps if one.total >= TEN and not one.outermost}
        count = 1 + max(one.row for one in steps)
        across = 1 + max(len(number.amounts) for number in (*laid, answer))
        squares = Squares(across)
        for row in reversed(range(count)):
            if row in carries:
                squares.add(f"carried/{row}", small=True)
        for name, number in zip(("above", "below"), laid, strict=True):
            squares.add(name)
            squares.write(name, number.amounts, across - 1)
            if number.ladder.after:
                squares.change(name, point=across - number.ladder.after)
        squares.change("below", sign=RowSign.TIMES, rule=(0, across))
        made = cls(laid, answer, squares, count)
        if count > 1:
            sums = [line.because for line in lines if isinstance(line.because, ColumnAdded)]
            if any(one.total >= TEN and not one.outermost for one in sums):
                squares.add("carried/sum", small=True)
            for row in range(count):
                squares.add(f"row/{row}")
        squares.add("answer")
        return made

    def step(self, reason: object) -> None:
        """Write what a line writes."""
        match reason:
            case ZerosWritten(zeros=zeros, row=row):
                self.zeros = zeros
                self._begin(row)
                self._write(row, (0,) * zeros, 0)
            case DigitMultiplied():
                self._multiplied(reason)
            case ColumnAdded():
                self._added(reason)
            case ProductPoint():
                self.squares.write("answer", self.answer.amounts, self.squares.across - 1)
                self.squares.change("answer", point=self.squares.across - self.answer.ladder.after)
            case _:
                return

    def _begin(self, row: int) -> None:
        """Strike out what was carried in the rows before."""
        self.carried.clear()
        self.below.clear()
        for other in range(row):
            if f"carried/{other}" in self.squares.rows:
                self.squares.change(f"carried/{other}", struck=True)

    def _write(self, row: int, digits: Sequence[int], square: int) -> None:
        """Write digits with the last one in a square, counted from the right."""
        self.squares.write(self._name(row), digits, self.squares.across - 1 - square)

    def _multiplied(self, reason: DigitMultiplied) -> None:
        up, stays = divmod(reason.total, TEN)
        if reason.outermost:
            self._write(reason.row, digits_of(reason.total), reason.square)
            self.done = (*self.done, self._amount(reason.row))
            self.carried.clear()
            self.below.clear()
            return
        self._write(reason.row, (stays,), reason.square)
        self.below[reason.unit] = stays
        self.carried.clear()
        if up:
            square = self.squares.across - 2 - reason.square + self.zeros
            self.squares.write(f"carried/{reason.row}", (up,), square)
            self.carried[reason.large] = up

    def _amount(self, row: int) -> int:
        digits = self.squares.rows[self._name(row)].digits
        return int("".join(str(digit) for digit in digits if digit is not None))

    def _name(self, row: int) -> str:
        """Return the name of a row of the product; a single one is the answer."""
        return f"row/{row}" if self.count > 1 else "answer"

    def _added(self, reason: ColumnAdded) -> None:
        if not self.column:
            self._begin(self.count)
            last = f"row/{self.count - 1}"
            self.squares.change(last, sign=RowSign.PLUS, rule=(0, self.squares.across))
        at = self.squares.across - 1 - self.column
        up, stays = divmod(reason.total, TEN)
        written = digits_of(reason.total) if reason.outermost else (stays,)
        self.squares.write("answer", written, at)
        self.carried.clear()
        self.below[reason.unit] = reason.total if reason.outermost else stays
        if up and not reason.outermost:
            self.squares.write("carried/sum", (up,), at - 1)
            self.carried[reason.large] = up
        self.column += 1

    def state(self) -> WrittenState:
        """Return what stands there now, and its words."""
        told: list[Description] = [TimesInColumns(*self.laid)]
        if self.carried:
            told.append(WrittenAbove(counts_of(self.carried), struck=False))
        if self.done:
            told.append(WrittenRows(tuple(map(whole, self.done))))
        if self.below:
            told.append(WrittenBelow(counts_of(self.below)))
        if self.squares.rows["answer"].point is not None:
            told[1:] = [WrittenRows((self.answer,))]
        return WrittenState(tuple(self.squares.rows.values()), tuple(told))
