"""What a file is asked for, counted where SQLAlchemy asks it."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field

from sqlalchemy import event

from onewhole.desk.classes.class_records import Store


@dataclass(slots=True)
class Counted:
    """The statements in their order, and how many transactions began and were committed.

    ``after`` is called after each statement.
    """

    statements: list[str] = field(default_factory=list)
    begun: int = 0
    committed: int = 0
    after: Callable[[str], None] = lambda _statement: None

    def statement(self, *given: object) -> None:
        """Count a statement."""
        said = str(given[2])
        if not said.startswith("BEGIN"):
            self.statements.append(said)
            self.after(said)

    def begin(self, _connection: object) -> None:
        """Count a transaction."""
        self.begun += 1

    def commit(self, _connection: object) -> None:
        """Count what is put on the disk."""
        self.committed += 1


@contextmanager
def counted(book: Store) -> Iterator[Counted]:
    """Count what a file is asked for in the block."""
    count = Counted()
    listeners = (
        ("after_cursor_execute", count.statement),
        ("begin", count.begin),
        ("commit", count.commit),
    )
    for name, listener in listeners:
        event.listen(book.engine, name, listener)
    try:
        yield count
    finally:
        for name, listener in listeners:
            event.remove(book.engine, name, listener)
