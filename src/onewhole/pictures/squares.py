"""Rows of squares with a digit in each, for numbers that are multiplied or divided in columns."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from enum import Enum

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.quantity import whole
from onewhole.number.unit import Unit
from onewhole.pictures.caption import Count
from onewhole.pictures.description import Description


class RowSign(Enum):
    """The sign before a number that stands in squares."""

    TIMES = "x"
    PLUS = "+"
    MINUS = "-"


class WrittenRow(Struct, frozen=True):
    """A row of squares from the left, each with a digit or nothing (None).

    A ``small`` row holds what is carried, and is ``struck`` once that was used. The ``sign`` stands in the
    square ``sign_at``. The ``point`` stands behind so many squares. A ``rule`` is a line below the row from
    before one square to before another.
    """

    name: str
    digits: tuple[int | None, ...]
    small: bool = False
    struck: bool = False
    sign: RowSign | None = None
    sign_at: int = 0
    point: int | None = None
    rule: tuple[int, int] | None = None

    @property
    def empty(self) -> bool:
        """Say whether nothing stands in it."""
        return all(digit is None for digit in self.digits)


class WrittenState(Struct, frozen=True):
    """The rows from top to bottom. All states of a working have the same rows, and squares in each.

    ``bracket`` is the square before which the bracket of a division stands, in its second row; None for a
    product. ``remainder`` stands behind the quotient, counted in its last place; ``after`` says
    how many places stand behind the point. ``told`` says what stands there.
    """

    rows: tuple[WrittenRow, ...]
    told: tuple[Description, ...]
    bracket: int | None = None
    remainder: int | None = None
    block: int = 0
    after: int = 0

    @property
    def squares(self) -> int:
        """Return how many squares stand side by side."""
        return len(self.rows[0].digits)

    @property
    def remainder_digits(self) -> tuple[int, ...]:
        """Return the digits of the remainder, of which the last ``after`` stand behind its point."""
        if self.remainder is None:
            return ()
        digits = digits_of(self.remainder)
        return ((0,) * (self.after + 1 - len(digits))) + digits

    @property
    def remainder_signs(self) -> str:
        """Return the remainder as it is written, with its point: 1 cent is 0.01; nothing without one."""
        signs = "".join(map(str, self.remainder_digits))
        return f"{signs[: -self.after]}.{signs[-self.after :]}" if self.after and signs else signs


@dataclass
class Squares:
    """Rows while they are filled; squares are counted from the left."""

    across: int
    rows: dict[str, WrittenRow] = field(default_factory=dict)

    def add(self, name: str, *, small: bool = False) -> None:
        """Begin an empty row."""
        self.rows[name] = WrittenRow(name, (None,) * self.across, small=small)

    def change(self, name: str, **changes: object) -> None:
        """Change a row."""
        self.rows[name] = replace(self.rows[name], **changes)

    def write(self, name: str, number: Sequence[int], end: int) -> None:
        """Write digits so that the last one stands in a square."""
        digits = list(self.rows[name].digits)
        digits[end - len(number) + 1 : end + 1] = number
        self.change(name, digits=tuple(digits))


def digits_of(number: int) -> tuple[int, ...]:
    """Return the digits of a whole number from the left.

    >>> digits_of(304)
    (3, 0, 4)
    """
    return whole(number).amounts


def counts_of(written: Mapping[Unit, int]) -> tuple[Count, ...]:
    """Return what is written of each unit, the largest first."""
    largest_first = sorted(written, key=lambda unit: unit.size, reverse=True)
    return tuple([Count(written[unit], unit) for unit in largest_first])
