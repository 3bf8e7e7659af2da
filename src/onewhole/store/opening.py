"""A store is opened: made where there is none, brought forward where older, refused where not ours."""

import os
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass, field, replace
from pathlib import Path
from tempfile import mkstemp
from urllib.parse import quote

from sqlalchemy import URL, Connection, Engine, PoolProxiedConnection, create_engine, event

from onewhole.errors import Fault
from onewhole.store.backups import backups_of
from onewhole.store.digest_triggers import keep_digests
from onewhole.store.migrating import bring_forward, known_steps
from onewhole.store.orphan_cleanup import MAKING, hold, remove_orphans
from onewhole.store.place import FilePlace
from onewhole.store.refusals import Damaged, Newer, StoreRefused, translate_error
from onewhole.store.schema import step_of
from onewhole.store.standing import LEAST, MARK, Standing, check_head, check_kind, standing
from onewhole.store.transaction import OneTransaction, translate_errors

#: How long a writer waits for another one.
BUSY_TIMEOUT_MS = 5000

#: When a file is opened, it is written to and taken back: whether it can be written is known then.
_FIRST_LINES = ("PRAGMA journal_mode = WAL", "BEGIN IMMEDIATE", "PRAGMA user_version = 0", "ROLLBACK")
_EACH_CONNECTION = (
    "PRAGMA synchronous = FULL",
    "PRAGMA foreign_keys = ON",
    "PRAGMA secure_delete = ON",
    "PRAGMA temp_store = MEMORY",
)


@dataclass(frozen=True, slots=True)
class Store:
    """An open file. Read and write it by the functions that take a store; close it at last.

    One that is `shared` is the same file within one transaction: all functions that are given it read and
    write in that, and nothing of it is on the disk before it ends. The `anchor` is a connection that nobody
    uses: as long as it is open the log beside the file stays the same one.
    """

    place: FilePlace
    engine: Engine
    shared: OneTransaction | None = field(default=None, repr=False, compare=False)
    anchor: PoolProxiedConnection | None = field(default=None, repr=False, compare=False)

    @property
    def path(self) -> Path:
        """Return the name under which the file was opened."""
        return self.place.path

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """Give a connection that sees one moment of the file. Raises `StoreRefused`."""
        with self.snapshot() as store, translate_errors(self.path):
            yield store.connection()

    @contextmanager
    def writing(self) -> Iterator[Connection]:
        """Give a connection whose changes are kept all together when the block ends, or none of them.

        They are on the disk, in the file under its name, when the block has ended, or, in a shared
        transaction, when that has. A second writer waits. Raises `StoreRefused`; `FileMoved` where the
        name does not lead to this file any more.
        """
        with self.transaction() as store, translate_errors(self.path):
            yield store.connection()

    @contextmanager
    def snapshot(self) -> Iterator["Store"]:
        """Give this store as it is at one moment; a store that is shared is given as it is.

        What is written in the block has transactions of its own, and the block does not see it.
        """
        with self._within(self.shared, writes=False) as store:
            yield store

    @contextmanager
    def transaction(self) -> Iterator["Store"]:
        """Give this store within one transaction, begun at its first use: all its changes are kept, or none.

        A store that is within one already is given as it is. Raises `StoreRefused`.
        """
        writing = self.shared if self.shared and self.shared.writes else None
        with self._within(writing, writes=True) as store:
            yield store

    @contextmanager
    def _within(self, already: OneTransaction | None, *, writes: bool) -> Iterator["Store"]:
        if already is not None:
            yield self
            return
        one = OneTransaction(self.place, self.engine, writes)
        try:
            yield replace(self, shared=one)
        except BaseException:
            one.end(keep=False)
            raise
        one.end(keep=True)

    def connection(self) -> Connection:
        """Return the connection of a shared store."""
        if self.shared is None:
            msg = "only a store within a transaction has a connection"
            raise Fault(msg)
        return self.shared.connection()

    def close(self) -> None:
        """Close the file; what was kept stays."""
        if self.anchor is not None:
            self.anchor.close()
        self.engine.dispose()


def open_store(path: Path, *, before_steps: Callable[[Path], None] = lambda _path: None) -> Store:
    """Open the file of a class, or make it: mode 0600, WAL with full sync, the tables of today.

    A file of an earlier release is brought forward, all steps or none; ``before_steps`` is given its place
    first, and where that raises, the file stays as it is. A new file is made whole beside and then takes its
    name. Raises `StoreRefused` for a newer, damaged or foreign file (which stays as it is)
    and for a folder that takes no file; for a damaged file it names the newest automatic backup.
    What a killed process left half made beside it is taken away.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     store = open_store(Path(folder) / "room12.class")
    ...     store.close()
    ...     oct(store.path.stat().st_mode & 0o777)
    '0o600'
    """
    try:
        with disk_refusals(path):
            check_kind(path)
            path = Path(os.path.realpath(path))
            if standing(path) is Standing.NOTHING:
                _make(path)
            step = check_file(path)
            path.chmod(0o600)
    except Damaged as damaged:
        raise _offering(damaged, path) from damaged
    place = FilePlace.of(path)
    store = Store(place, engine_for(place))
    try:
        if step != known_steps()[-1]:
            before_steps(path)
            with store.writing() as connection:
                bring_forward(connection)
            store.engine.dispose()
        with translate_errors(path):
            store = replace(store, anchor=_anchored(store.engine))
        event.listen(store.engine, "connect", _keep_digests)
        store = replace(store, place=place.with_log())
        store.place.check()
    except BaseException:
        store.close()
        raise
    remove_orphans(path)
    return store


def _anchored(engine: Engine) -> PoolProxiedConnection:
    """Return a connection to a file that may be written and has its write-ahead log beside it."""
    anchor = engine.raw_connection()
    for line in _FIRST_LINES:
        anchor.cursor().execute(line).fetchall()
    return anchor


def check_file(path: Path) -> str:
    """Refuse what is not ours, is damaged or is newer, before anything is written; return the step it is at.

    Raises `Damaged` and `StoreRefused`.
    """
    log, journal = logs_of(path)
    with disk_refusals(path), translate_errors(path):
        if path.stat().st_size < LEAST:  # beside an empty file SQLite takes a log away
            raise translate_error("not a database", str(path))
        if journal.exists():  # SQLite would mend the file by it: only one that bears our mark
            check_head(path)
        # A log stays as it is while the file is only looked at: a damaged file takes it aside.
        return _step_when_whole(path, "ro" if log.exists() else "rw")


def _step_when_whole(path: Path, mode: str) -> str:
    with closing(connected(path, mode)) as connection:
        for line in ("PRAGMA trusted_schema = OFF", "PRAGMA cell_size_check = ON"):
            connection.execute(line)
        connection.execute("BEGIN")
        (mark,), (encoding,) = (
            connection.execute(f"PRAGMA {name}").fetchone() for name in ("application_id", "encoding")
        )
        if (mark, encoding) != (int.from_bytes(MARK), "UTF-8"):
            raise translate_error("not a database", str(path))
        step = step_of(connection.execute, str(path))
        ((found, *_), *_) = connection.execute("PRAGMA quick_check(1)").fetchall()
    if found != "ok":
        raise translate_error("malformed", str(path))
    return step


def _offering(damaged: Damaged, path: Path) -> Damaged:
    """The same refusal, with the newest backup by name where there is one."""
    newest = next(iter(backups_of(path)), None)
    if newest is None or isinstance(damaged, Newer):
        return damaged
    return Damaged(
        damaged.what,
        where=damaged.where,
        remedy=f"Restore the newest backup, {newest.path.name}; the file is then kept aside.",
    )


def _make(path: Path) -> None:
    """Make the file under a temporary name, then hard-link it; lose a race to another process quietly."""
    logged = any(log.exists() for log in logs_of(path))
    if logged and not path.exists():  # asked last: another window may have made it since
        raise Damaged(
            "The file is gone, and its log is still there",
            where=str(path),
            remedy="Bring the file back to its place, or restore a backup.",
        )
    handle, beside = make_beside(path)
    engine = engine_for(FilePlace.of(beside))
    try:
        with disk_refusals(path), translate_errors(path):
            with engine.begin() as connection:
                connection.exec_driver_sql(f"PRAGMA application_id = {int.from_bytes(MARK)}")
                bring_forward(connection)
            engine.dispose()
            with suppress(FileExistsError):
                path.hardlink_to(beside)
    finally:
        engine.dispose()
        take_beside_away(handle, beside)
    sync_folder(path.parent)


def logs_of(path: Path) -> tuple[Path, ...]:
    """What SQLite keeps beside a file while it is written; it belongs to that file and to no other."""
    return tuple(path.with_name(path.name + end) for end in ("-wal", "-journal"))


def all_beside(path: Path) -> tuple[Path, ...]:
    """What goes where a file goes: its logs, and the index of a log, which SQLite makes anew."""
    return (*logs_of(path), path.with_name(f"{path.name}-shm"))


def make_beside(path: Path) -> tuple[int, Path]:
    """Make an empty hidden file beside a name, mode 0600, and give its handle and path.

    Until the handle is closed no sweep takes the file for one that a killed process left.
    """
    while True:
        with disk_refusals(path):
            handle, name = mkstemp(dir=path.parent, prefix=f".{path.name[:40]}.", suffix=MAKING)
        if hold(handle):
            return handle, Path(name)
        os.close(handle)


def take_beside_away(handle: int | None, beside: Path) -> None:
    """Take a file made beside away, where it still has that name, and let go of it; None is let go already.

    It has done its work or has failed already: where the disk does not let it go, it is swept later.
    """
    with suppress(OSError):
        beside.unlink(missing_ok=True)
    if handle is not None:
        with suppress(OSError):
            os.close(handle)


def sync_folder(folder: Path) -> None:
    """Put a new name in a folder on the disk, where the system can."""
    with suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def engine_for(place: FilePlace) -> Engine:
    """Return what opens connections to a file that is there; one taken away is not made anew, empty.

    No connection is opened to another file that has taken the name: `FileMoved`.
    """
    address = URL.create("sqlite", database=_address(place.path), query={"mode": "rw", "uri": "true"})
    # A page may hold a snapshot and write beside it: no page waits for the connection of another.
    engine = create_engine(address, connect_args={"isolation_level": None}, max_overflow=-1)

    @event.listens_for(engine, "connect")
    def _prepare(raw: sqlite3.Connection, _: object) -> None:
        place.check()  # SQLite opened the file a moment ago, by its name
        for line in (f"PRAGMA busy_timeout = {BUSY_TIMEOUT_MS}", *_EACH_CONNECTION):
            raw.execute(line)

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        writing = connection.get_execution_options().get("writing", False)
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writing else "BEGIN")

    return engine


def _keep_digests(raw: sqlite3.Connection, _: object) -> None:
    keep_digests(raw)


def connected(path: Path, mode: str) -> sqlite3.Connection:
    """Open a file that is there by SQLite alone, ``ro`` or ``rw``; one taken away is not made anew, empty."""
    address = f"{_address(path)}?mode={mode}"
    return sqlite3.connect(address, uri=True, isolation_level=None, timeout=BUSY_TIMEOUT_MS / 1000)


def _address(path: Path) -> str:
    """The address of a file as SQLite takes it, whatever the bytes of its name are."""
    return f"file:{quote(os.fsencode(path))}"


@contextmanager
def disk_refusals(path: Path) -> Iterator[None]:
    """Turn what the system refuses into `StoreRefused`; a refusal of ours stays as it is."""
    try:
        yield
    except StoreRefused:
        raise
    except OSError as error:
        raise refused(path, error) from error


def refused(path: Path, error: OSError) -> StoreRefused:
    """Say that a file or its folder does not let itself be used."""
    return StoreRefused(
        f"The file cannot be opened or made: {error.strerror or error}",
        where=str(path),
        remedy="See that the folder is there, that you may write in it and that the disk has room.",
    )
