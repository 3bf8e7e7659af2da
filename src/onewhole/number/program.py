"""An integer linear program in whole numbers: its limits, and exact checks of a solution and a bound."""

from collections.abc import Mapping, Sequence
from fractions import Fraction

from msgspec import Struct


class Limit(Struct, frozen=True):
    """A linear constraint on the counts: ``least`` <= sum of ``terms`` <= ``most``.

    ``terms`` go from the place of a count to its weight; None is no limit on that side. ``name`` says which
    wish or habit this is.
    """

    name: str
    terms: Mapping[int, int]
    least: int | None = None
    most: int | None = None

    def kept(self, counts: Sequence[int]) -> bool:
        """Say whether counts satisfy it, exactly.

        >>> Limit("two in all", {0: 1, 1: 1}, least=2, most=2).kept((1, 1))
        True
        """
        total = sum(weight * counts[at] for at, weight in self.terms.items())
        return (self.least is None or self.least <= total) and (self.most is None or total <= self.most)


class Program(Struct, frozen=True):
    """A linear program: each count from 0 to its ``most``, the first ``whole`` of them whole numbers.

    What is gained is the sum of ``gains`` times counts, and every limit is to be kept. All figures are whole
    numbers, so that a choice and a bound can be checked exactly. Raises ValueError when the rows do not fit.
    """

    gains: tuple[int, ...]
    most: tuple[int, ...]
    limits: tuple[Limit, ...]
    whole: int

    def __post_init__(self) -> None:
        """Refuse rows of different lengths, a bound below zero and a place that is not there."""
        size = len(self.gains)
        if len(self.most) != size or not 0 <= self.whole <= size or min(self.most, default=0) < 0:
            msg = "each count has one gain and one bound, not below zero"
            raise ValueError(msg)
        if any(not 0 <= at < size for limit in self.limits for at in limit.terms):
            msg = "a limit names a count that is not there"
            raise ValueError(msg)

    def gained(self, counts: Sequence[int]) -> int:
        """Return what counts gain.

        >>> Program((3, 2), (1, 1), (), 2).gained((1, 1))
        5
        """
        return sum(gain * count for gain, count in zip(self.gains, counts, strict=True))

    def broken(self, counts: Sequence[int]) -> tuple[str, ...]:
        """Return the names of violated limits; ``bounds`` for a count out of its bounds."""
        within = all(0 <= count <= most for count, most in zip(counts, self.most, strict=True))
        names = (limit.name for limit in self.limits if not limit.kept(counts))
        return (*(() if within else ("bounds",)), *dict.fromkeys(names))

    def bound(self, prices: Sequence[tuple[int, int]], grain: int = 1) -> Fraction:
        """Return an upper bound on the gain from dual prices of the limits (weak duality), exactly.

        ``prices`` has for each limit what one more unit of ``most`` and one fewer of ``least`` would be
        worth, counted in parts of which ``grain`` make one. Any prices of at least 0 give a true bound,
        however they were found; good ones give a tight bound. A price below 0, or one for a side without a
        limit, counts as 0. Source: the weak duality theorem of linear programming (any textbook).

        >>> program = Program((3, 2), (9, 9), (Limit("four in all", {0: 1, 1: 1}, most=4),), 2)
        >>> program.bound([(3, 0)])
        Fraction(12, 1)
        """
        rest = [gain * grain for gain in self.gains]
        total = 0
        for limit, (over, under) in zip(self.limits, prices, strict=True):
            above = max(over, 0) if limit.most is not None else 0
            below = max(under, 0) if limit.least is not None else 0
            total += above * (limit.most or 0) - below * (limit.least or 0)
            if above != below:
                for at, weight in limit.terms.items():
                    rest[at] -= (above - below) * weight
        left = sum(part * most for part, most in zip(rest, self.most, strict=True) if part > 0)
        return Fraction(total + left, grain)
