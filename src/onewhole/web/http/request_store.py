"""The class file as one request sees it: one snapshot to read, or one transaction for all that it changes."""

from contextlib import AbstractContextManager, ExitStack
from dataclasses import dataclass, field
from enum import Enum, auto
from types import TracebackType

from onewhole.desk.classes.class_records import Store
from onewhole.web.app import Books


class FileUse(Enum):
    """How a page function uses the class file.

    ``SNAPSHOT``: all that it reads is of one moment. ``TRANSACTION``: what it changes is on the disk before
    the reply is sent, all of it or, where it refuses, nothing; for what is done quickly, since a second
    writer waits. ``ITSELF``: the open file, for what is no single transaction.
    """

    SNAPSHOT = auto()
    TRANSACTION = auto()
    ITSELF = auto()


@dataclass(slots=True)
class RequestStore(AbstractContextManager["RequestStore"]):
    """The class file within one request; the file is touched when it is first read or written."""

    books: Books
    use: FileUse
    _within: dict[str, Store] = field(default_factory=dict)
    _stack: ExitStack = field(default_factory=ExitStack)

    def __getitem__(self, name: str) -> Store:
        """Return a file in the request's snapshot or transaction. Raises NotThere, StoreRefused."""
        if name not in self._within:
            self._within[name] = self._entered(self.books[name])
        return self._within[name]

    def _entered(self, book: Store) -> Store:
        match self.use:
            case FileUse.SNAPSHOT:
                return self._stack.enter_context(book.snapshot())
            case FileUse.TRANSACTION:
                return self._stack.enter_context(book.transaction())
            case FileUse.ITSELF:
                return book

    def __exit__(
        self, kind: type[BaseException] | None, raised: BaseException | None, at: TracebackType | None
    ) -> None:
        """Keep the changes, or none of them where something was raised. Raises StoreRefused."""
        self._stack.__exit__(kind, raised, at)
