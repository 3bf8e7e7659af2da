"""One transaction that several functions of the store share: a snapshot to read, or changes kept together."""

import os
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection, Engine, PoolProxiedConnection
from sqlalchemy.exc import DBAPIError

from onewhole.store.place import FilePlace
from onewhole.store.refusals import NotThere, StoreRefused, UnreadableValue, translate_error


@dataclass(slots=True)
class OneTransaction:
    """A transaction that begins when it is first asked for its connection; one thread uses it."""

    place: FilePlace
    engine: Engine
    writes: bool
    _connection: Connection | None = None

    def connection(self) -> Connection:
        """Return the connection that all share. Raises `StoreRefused`."""
        if self._connection is None:
            with translate_errors(self.place.path):
                self._connection = begun(self.engine, writes=self.writes)
        return self._connection

    def end(self, *, keep: bool) -> None:
        """Put the changes on the disk, all together, or none of them.

        Raises `StoreRefused`: then none is. Raises `FileMoved` where the file was moved, replaced or taken
        away before the changes were on the disk under its name; as long as this transaction writes, nobody of
        ours replaces it.
        """
        if self._connection is None:
            return
        with translate_errors(self.place.path), self._connection as connection:
            if not keep:
                connection.rollback()
                return
            # After some errors SQLite ends a transaction by itself, and then a commit would keep nothing.
            raw = driver_of(connection)
            if not raw.in_transaction:
                raise StoreRefused("Nothing could be kept", where=str(self.place.path), remedy="Do it again.")
            if self.writes:
                self.place.check()
            try:
                connection.commit()
            except BaseException:
                connection.invalidate()  # its transaction may still be open: nobody gets it again
                raise
            if self.writes:
                self.place.check()  # somebody else may have moved it meanwhile, and not asked us


def begun(engine: Engine, *, writes: bool) -> Connection:
    """Return a connection whose transaction has begun; where it writes, no other one does until it ends."""
    connection = engine.execution_options(writing=True).connect() if writes else engine.connect()
    try:
        connection.begin()
    except BaseException:
        connection.close()
        raise
    return connection


def driver_of(connection: Connection | PoolProxiedConnection) -> sqlite3.Connection:
    """Return SQLite's own connection within one of SQLAlchemy, or of its pool."""
    pooled = connection.connection if isinstance(connection, Connection) else connection
    raw = pooled.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    return raw


@contextmanager
def translate_errors(path: Path) -> Iterator[None]:
    """Turn SQLite's exceptions into `StoreRefused` with words for a teacher."""
    try:
        yield
    except (DBAPIError, sqlite3.Error) as error:
        said: object = error.orig if isinstance(error, DBAPIError) else error
        if getattr(said, "sqlite_errorcode", 0) == sqlite3.SQLITE_READONLY and os.access(path, os.W_OK):
            said = "malformed"  # one may write it: so its own first bytes say that one may not
        raise translate_error(said, str(path)) from error
    except UnreadableValue as error:
        raise translate_error(error, str(path)) from error
    except UnicodeDecodeError as error:  # SQLite's own words quote the file, and are no text then
        raise translate_error("malformed", str(path)) from error
    except OverflowError as error:
        raise NotThere("A number is too large to be one of ours", where=str(path)) from error
