"""Right and wrong answers of many pupils, equal rows counted once."""

from msgspec import Struct

RIGHT, WRONG, MISSING = "1", "0", "."


class RightWrong(Struct, frozen=True):
    """Problems, the rows that occur, and how many pupils have each.

    A row has a sign a problem: ``1`` right, ``0`` wrong, ``.`` not answered. Raises ValueError for other
    rows, for a row that is there twice, and without a pupil.

    >>> RightWrong(("1", "2"), ("10", "1."), (24, 1)).pupils
    25
    """

    problems: tuple[str, ...]
    rows: tuple[str, ...]
    times: tuple[int, ...]

    def __post_init__(self) -> None:
        """Refuse what is no table of right and wrong."""
        if not self.rows or len(self.times) != len(self.rows) or min(self.times) < 1:
            raise ValueError("a table has rows, and at least one pupil for each")
        if any(len(row) != len(self.problems) for row in self.rows) or set().union(*self.rows) - set("10."):
            raise ValueError("a row has one of 1, 0 and . for each problem")
        if len(set(self.rows)) < len(self.rows):
            raise ValueError("a row is there twice")

    @property
    def pupils(self) -> int:
        """How many pupils there are."""
        return sum(self.times)
