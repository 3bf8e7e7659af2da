"""The state of one running server: the class files, the background jobs, the clock."""

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, datetime
from pathlib import Path
from threading import Lock

from onewhole.desk.classes.class_records import NotThere, Store, open_book
from onewhole.desk.keep.backups import remove_kept
from onewhole.desk.keep.way_back import Damaged
from onewhole.desk.paper.press_reading import sees_papers
from onewhole.desk.paper.seen_papers import SeesPapers
from onewhole.web.checks import Checks
from onewhole.web.jobs import Jobs

#: The class's own file, and the demo's, which is never mixed with it.
MINE, DEMO = "mine", "demo"


@dataclass(slots=True)
class Books:
    """The open files by name. A file is opened when it is first asked for, and once.

    Where another file has taken its name meanwhile, that one is opened; where none has, it is gone.
    """

    paths: dict[str, Path]
    _open: dict[str, Store] = field(default_factory=dict)
    _turn: Lock = field(default_factory=Lock)

    def __getitem__(self, name: str) -> Store:
        """Return an open file. Raises NotThere for one that is not there, StoreRefused for a damaged one."""
        with self._turn:
            if name in self._open and self._open[name].place.is_there():
                return self._open[name]
            path = self._path(name)
            if name == DEMO and not path.exists():
                raise _no_file(name)
            if name in self._open and not path.exists():
                raise Damaged(
                    "The file of the class is gone from its place",
                    where=str(path),
                    remedy="Bring it back to its place, or bring a backup back.",
                )
            if name in self._open:
                self._open[name].close()  # first: what stood only in a log that was taken away is saved so
            self._open[name] = open_book(path)
            return self._open[name]

    def there(self, name: str) -> bool:
        """Say whether a file stands under a name."""
        return self._path(name).exists()

    def put_in(self, name: str, make: Callable[[Path], Store]) -> Store:
        """Close a file and put another one in its place; what ``make`` raises leaves it closed.

        Raises NotThere for a name that is none.
        """
        with self._turn:
            path = self._path(name)
            if name in self._open:
                self._open.pop(name).close()
            self._open[name] = make(path)
            return self._open[name]

    def put_away(self, name: str) -> None:
        """Close a file and take it off the disk, with what stands beside it. Only for the demo.

        Raises StoreRefused where that cannot be.
        """
        if name != DEMO:
            raise NotThere("Only the demo can be put away", where=name)
        with self._turn:
            if name in self._open:
                self._open.pop(name).close()
            remove_kept(self.paths[name])

    def close(self) -> None:
        """Close every file."""
        with self._turn:
            while self._open:
                self._open.popitem()[1].close()

    def _path(self, name: str) -> Path:
        if name not in self.paths:
            raise _no_file(name)
        return self.paths[name]


def _no_file(name: str) -> NotThere:
    return NotThere("There is no such class file", where=name[:20], remedy="Go to the Week and start there.")


Sees = Callable[[Store, int, int], SeesPapers]
"""Gives what looks at the pictures of papers, for a file, a class and a night."""


@dataclass(frozen=True, slots=True)
class App:
    """The state that every page shares. ``folder`` is where films and printed pages of the nights are put.

    ``sees`` looks at the pictures of papers. ``signs_in`` says that one signs in with a password, and so out
    again. ``stop`` lets the program end soon, where a page may do that.
    """

    books: Books
    folder: Path
    jobs: Jobs
    now: Callable[[], datetime]
    signs_in: bool = False
    checks: Checks = field(default_factory=Checks)
    sees: Sees = sees_papers
    stop: Callable[[], None] | None = None

    def today(self) -> date:
        """Return the day it is where the teacher is."""
        return self.now().date()

    def close(self) -> None:
        """Stop: running jobs are told to end, files are closed."""
        self.jobs.close()
        self.books.close()


def app_for(
    path: Path,
    now: Callable[[], datetime],
    *,
    signs_in: bool = False,
    stop: Callable[[], None] | None = None,
) -> App:
    """Return the state for a class file; the demo's file and the folder of made things lie beside it."""
    path = path.resolve()
    books = Books({MINE: path, DEMO: path.with_name(f"{path.stem}-demo{path.suffix}")})
    made = path.with_name(f"{path.stem}-made")
    return App(books, made, Jobs(), now, signs_in, stop=stop)
