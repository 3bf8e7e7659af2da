"""Numbers written under each other: a column is added or taken away, carried from, or given ten more."""

from dataclasses import dataclass

from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class ColumnOpened:
    """One of a column's unit is regrouped: ``left`` of it stay, and there are ``now`` of the next column's.

    It is done because the column of ``short`` has ``have`` and ``need`` are taken from it. Where ``small`` is
    another unit than ``short``, zeros stand between them. ``begins`` marks the first of a row of openings
    that one column needs.
    """

    large: Unit
    small: Unit
    short: Unit
    have: int
    need: int
    left: int
    now: int
    begins: bool


@dataclass(frozen=True, slots=True)
class ColumnTaken:
    """``gone`` of a column's unit are taken from ``have``; ``blank`` where no digit stands below."""

    unit: Unit
    have: int
    gone: int
    blank: bool


@dataclass(frozen=True, slots=True)
class ColumnAdded:
    """The digits of a column and what was ``carried`` to it are added.

    ``large`` is the unit of the next column. ``outermost`` says that no digit stands in it, so that what is
    carried is written beside.
    """

    unit: Unit
    large: Unit
    digits: tuple[int, ...]
    carried: int
    outermost: bool

    @property
    def total(self) -> int:
        """Return how many of the unit there are.

        >>> from fractions import Fraction
        >>> one, ten = Unit(Fraction(1)), Unit(Fraction(10))
        >>> ColumnAdded(one, ten, (4, 6, 7), 0, outermost=False).total
        17
        """
        return sum(self.digits) + self.carried


#: Every reason of a column.
InColumns = ColumnOpened | ColumnTaken | ColumnAdded
