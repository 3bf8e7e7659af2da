"""Addition in columns: what is written in each column, and where a ten goes.

The columns are rungs of a ladder of places, so ten is the ratio throughout.
"""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt, finished, wrongly
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.pair import Pair, pair_of
from onewhole.misconceptions.wrong_steps.one_unit import in_one_unit
from onewhole.number.ladder import TEN, Style, joined
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Expression, plus
from onewhole.statements.statement import Statement
from onewhole.working.pair_state import PairState


class SumColumns(Struct, frozen=True):
    """Two numbers that are added, column by column, ones first; None where one has no digit (a blank)."""

    tops: tuple[int | None, ...]
    bottoms: tuple[int | None, ...]

    def __len__(self) -> int:
        return len(self.tops)

    @property
    def sums(self) -> tuple[int, ...]:
        """Return what each column makes by itself, without a ten from the column to its right."""
        return tuple([(one or 0) + (other or 0) for one, other in zip(self.tops, self.bottoms, strict=True)])

    @property
    def full(self) -> bool:
        """Say whether a column other than the left-most makes ten or more by itself."""
        return max(self.sums[:-1], default=0) >= TEN

    def blank(self, at: int) -> bool:
        """Say whether one number has no digit in a column."""
        return self.tops[at] is None or self.bottoms[at] is None

    @property
    def carries(self) -> tuple[int, ...]:
        """Return what comes into each column from its right when it is added rightly; last, out of the left.

        >>> SumColumns((8, 7, 4), (6, 5, 2)).carries
        (0, 1, 1, 0)
        """
        coming = [0]
        for total in self.sums:
            coming.append((total + coming[-1]) // TEN)
        return tuple(coming)


#: What is written in each column, ones first; the left-most one may be written in full. None where a pattern
#: has nothing to do.
Digits = Callable[[SumColumns], list[int] | None]

#: What is written for the whole, and the false line before it, where there is one.
Sum = Callable[[Pair, SumColumns], tuple[Expression, int] | None]

#: What is passed on of a carry that comes into a column, when so many were made so far.
Pass = Callable[[SumColumns, int, int], int]


def whole_sum(statement: Statement) -> Pair | None:
    """Return the pair of a sum of two whole numbers that stand in digits, or None for anything else."""
    pair = pair_of(statement)
    if pair is None or pair.taken or pair.styles != {Style.PLACES}:
        return None
    return None if max(*pair.first.amounts, *pair.second.amounts) >= TEN else pair


def sum_columns(pair: Pair) -> SumColumns:
    """Lay two numbers out in columns, place under place, with zeros after the digits of a decimal.

    >>> from onewhole.statements.reading import read_statement
    >>> sum_columns(pair_of(read_statement("12.5 + 3.46"))).bottoms
    (6, 4, 3, None)
    """
    ladder = joined(pair.first.ladder, pair.second.ladder)
    tops, bottoms = (
        tuple(
            None if at >= len(number.counts) + ladder.after - number.ladder.after else digit
            for at, digit in enumerate(number.on(ladder).amounts[::-1])
        )
        for number in (pair.first, pair.second)
    )
    return SumColumns(tops, bottoms)


def on_whole_sums(work: Sum, *, show: bool = False) -> Try:
    """Return the attempt at a sum of two whole numbers, its false line written by a rule.

    ``show`` writes what every column makes in full first, a true line, where a column makes ten or more.
    """

    def attempt(statement: Statement) -> Attempt | None:
        pair = whole_sum(statement)
        columns = None if pair is None else sum_columns(pair)
        if pair is None or columns is None or (found := work(pair, columns)) is None:
            return None
        says, answer = found
        state = PairState(pair.first, pair.second, taken=False)
        if show and max(columns.sums) >= TEN:
            state = wrongly(state, in_full(pair, columns.sums))
        return finished(pair.asked, wrongly(wrongly(state, says).now(result=whole(answer)), whole(answer)))

    return in_one_unit(attempt)


def in_full(pair: Pair, sums: tuple[int, ...]) -> Quantity:
    """Write what every column makes, by its place: 6 hundreds 12 tens 14 ones."""
    return Quantity(joined(pair.first.ladder, pair.second.ladder), sums[::-1])


def in_digits(digits: Digits) -> Sum:
    """Return the rule that writes a digit in each column, the columns joined by their places."""

    def work(_: Pair, columns: SumColumns) -> tuple[Expression, int] | None:
        found = digits(columns)
        if found is None:
            return None
        counts = [digit * TEN**at for at, digit in enumerate(found)][::-1]
        places = [whole(count) for count in counts if count]
        return plus(*places) if places else whole(0), sum(counts)

    return work


def side_by_side(digits: Digits) -> Sum:
    """Return the rule that writes what it finds in each column beside the others, in full."""

    def work(_: Pair, columns: SumColumns) -> tuple[Expression, int] | None:
        found = digits(columns)
        if found is None:
            return None
        answer = int("".join(str(count) for count in reversed(found)))
        return whole(answer), answer

    return work


def carried(columns: SumColumns, passes: Pass) -> list[int]:
    """Add from the right; of each carry so much is added to the next column as is passed on."""
    digits: list[int] = []
    coming, made = 0, 0
    for at, total in enumerate(columns.sums):
        if at == len(columns) - 1:
            return [*digits, total + coming]
        carry, digit = divmod(total + coming, TEN)
        made += carry > 0
        coming = carry and passes(columns, at + 1, made) * carry
        digits.append(digit)
    return digits


def carry_forgotten(columns: SumColumns) -> list[int] | None:
    """Write each column without its ten, and carry nothing."""
    return carried(columns, lambda *_: 0) if columns.full else None


def carry_twice(columns: SumColumns) -> list[int] | None:
    """Count every carry twice in the column that gets it."""
    return carried(columns, lambda *_: 2) if any(columns.carries[1:-1]) else None


def carry_once(columns: SumColumns) -> list[int] | None:
    """Add the first carry, and forget every later one."""
    return carried(columns, lambda _, __, made: int(made == 1)) if sum(columns.carries[1:-1]) > 1 else None


def no_carry_over_a_blank(columns: SumColumns) -> list[int] | None:
    """Do not add a carry to a digit that stands alone in its column."""
    reached = any(coming and columns.blank(at) for at, coming in enumerate(columns.carries[:-1]))
    return carried(columns, lambda of, at, _: int(not of.blank(at))) if reached else None


def always_one(columns: SumColumns) -> list[int] | None:
    """Add 1 to every column left of the ones, needed or not."""
    if all(columns.carries[1:-1]):
        return None
    totals = [total + (at > 0) for at, total in enumerate(columns.sums)]
    return [*(total % TEN for total in totals[:-1]), totals[-1]]


def two_to_the_left(columns: SumColumns) -> list[int] | None:
    """Add the ten of a column two columns to its left; past the left end it is written there."""
    if not columns.full:
        return None
    totals = [*columns.sums, 0, 0]
    for at in range(len(columns)):
        carry, totals[at] = divmod(totals[at], TEN)
        totals[at + 2] += carry
    return totals


def ten_written_ones_carried(columns: SumColumns) -> list[int] | None:
    """Of a column that makes ten or more write the tens digit, and carry the ones digit."""
    if not columns.full:
        return None
    digits, coming = [], 0
    for total in columns.sums[:-1]:
        ten, one = divmod(total + coming, TEN)
        digit, coming = (ten, one) if ten else (one, 0)
        digits.append(digit)
    return [*digits, columns.sums[-1] + coming]


def zero_makes_nothing(columns: SumColumns) -> list[int] | None:
    """Write 0 in a column with a 0, lose what is carried into it, and carry nothing on."""
    rows = list(zip(columns.tops, columns.bottoms, strict=True))
    if not any(0 in row and None not in row for row in rows):
        return None
    digits, coming = [], 0
    for at, row in enumerate(rows):
        total = 0 if 0 in row else columns.sums[at] + coming
        coming, digit = divmod(total, TEN) if at < len(rows) - 1 else (0, total)
        digits.append(digit)
    return digits


def whole_columns(columns: SumColumns) -> list[int] | None:
    """Write what every column makes in full."""
    return list(columns.sums) if columns.full else None


def from_the_left(columns: SumColumns) -> list[int] | None:
    """Begin at the left, carry the ten of each column to its right, and write the ones in full."""
    if max(columns.sums[1:], default=0) < TEN:
        return None
    digits, coming = [], 0
    for total in columns.sums[:0:-1]:
        coming, digit = divmod(total + coming, TEN)
        digits.append(digit)
    return [columns.sums[0] + coming, *digits[::-1]]


def under_the_left_edge(pair: Pair, columns: SumColumns) -> tuple[Expression, int] | None:
    """Move the shorter number to the left edge, with zeros to its right, and add."""
    if not columns.blank(len(columns) - 1):
        return None
    moved = [
        number.parts * TEN ** (len(columns) - len(number.counts)) for number in (pair.first, pair.second)
    ]
    return plus(*map(whole, moved)), sum(moved)


def left_end_left_out(pair: Pair, columns: SumColumns) -> tuple[Expression, int] | None:
    """Leave out the new left-most digit of the sum."""
    if not columns.carries[-1]:
        return None
    answer = (pair.first.parts + pair.second.parts) % TEN ** len(columns)
    return whole(answer), answer


def all_digits(pair: Pair, columns: SumColumns) -> tuple[Expression, int] | None:
    """Add every digit that is seen."""
    if len(columns) == 1:
        return None
    digits = [*pair.first.amounts, *pair.second.amounts]
    return plus(*map(whole, digits)), sum(digits)


def one_digit_to_every_column(pair: Pair, columns: SumColumns) -> tuple[Expression, int] | None:
    """Add a number of one digit in every column of the other."""
    numbers = [pair.first, pair.second]
    if sorted(len(number.counts) == 1 for number in numbers) != [False, True]:
        return None
    every = [
        number.parts * int("1" * len(columns)) if len(number.counts) == 1 else number.parts
        for number in numbers
    ]
    return plus(*map(whole, every)), sum(every)
