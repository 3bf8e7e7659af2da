"""One problem of a page: its label, what it asks, and the text it was typed as."""

from dataclasses import dataclass

from onewhole.statements.statement import Statement


@dataclass(frozen=True, slots=True)
class Problem:
    """A labelled statement.

    ``label`` is the teacher's own (``1``, ``2a``), without the dot or bracket; ``typed`` is the text as it
    stands in the sheet and ``line`` (from 1) where.

    >>> from onewhole.statements.reading import read_statement
    >>> Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6", 4).label
    '1'
    """

    label: str
    statement: Statement
    typed: str
    line: int = 1

    def __post_init__(self) -> None:
        """Refuse an empty label."""
        if not self.label.strip():
            msg = "a problem needs a label"
            raise ValueError(msg)
