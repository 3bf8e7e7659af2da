"""Equalities written one after another, as a pupil or a teacher writes them: a = b = c."""

from msgspec import Struct

from onewhole.statements.expression import Expression, Sum, kind, value


class Link(Struct, frozen=True):
    """One expression of a chain and where it begins (1-based line and column of the typed text)."""

    says: Expression
    line: int
    column: int


class Chain(Struct, frozen=True):
    """Two or more expressions said to be equal.

    >>> from onewhole.statements.reading import read_chains
    >>> [chain.first_false() for chain in read_chains("2 + 3 = 5 = 6")]
    [1]
    """

    links: tuple[Link, ...]

    def __post_init__(self) -> None:
        """Refuse a chain without an equals sign."""
        if len(self.links) < 2:
            msg = "a chain has at least two sides"
            raise ValueError(msg)

    def first_false(self) -> int | None:
        """Return the number (from 0) of the first equals sign whose sides differ, or None if all are true."""
        for index in range(len(self.links) - 1):
            if not self.true_at(index):
                return index
        return None

    def true_at(self, index: int) -> bool:
        """Say whether the sides of equals sign ``index`` are equal in kind and amount."""
        left, right = self.links[index].says, self.links[index + 1].says
        return kind(left) is kind(right) and value(left) == value(right)

    def runs_on(self, index: int) -> bool:
        """Say whether a false equals sign only runs on.

        The next side begins with the amount just found and goes on working with it, as in
        2 + 3 = 5 + 4 = 9: each act makes sense, the equals sign does not.
        """
        left, right = self.links[index].says, self.links[index + 1].says
        if not isinstance(right, Sum) or kind(left) is not kind(right):
            return False
        return value(right.terms[0].part) == value(left)
