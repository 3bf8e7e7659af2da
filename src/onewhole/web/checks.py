"""The check of each open file: made beside the first page that is loaded, once for each time it is opened."""

from dataclasses import dataclass, field

from onewhole.desk.classes.class_records import Store
from onewhole.desk.keep.checking import damages_in
from onewhole.web.jobs import Jobs


@dataclass(slots=True)
class Checks:
    """How many damages were found in each file, by its name; none while a check is still to end."""

    _books: dict[str, Store] = field(default_factory=dict)
    _damages: dict[str, int] = field(default_factory=dict)

    def damages(self, name: str, book: Store, jobs: Jobs) -> int:
        """Return how many damages are known of a file; one that was not checked yet is checked now."""
        if self._books.get(name) is not book:
            self._books[name], self._damages[name] = book, 0
            jobs.prefetch(f"check {name}", lambda: self.look_again(name, book))
        return self._damages[name]

    def look_again(self, name: str, book: Store) -> None:
        """Check a file now, and remember what was found. Raises StoreRefused."""
        self._books[name], self._damages[name] = book, damages_in(book)
