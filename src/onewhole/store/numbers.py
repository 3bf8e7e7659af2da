"""Numbers of classes, pages and nights: each is given once, also when what had it is deleted.

An address, an open window and a backup name a night by its number: a later night never answers to it.
"""

from sqlalchemy import Connection, Table, func, select
from sqlalchemy.dialects.sqlite import insert

from onewhole.store import tables


def next_number(connection: Connection, table: Table) -> int:
    """Return the next number of a table, higher than any that was ever given in it, and note it as given.

    The caller writes the row in the same transaction.
    """
    given = tables.numbers_given.c
    noted = connection.scalar(select(given.last).where(given.name == table.name)) or 0
    stands = connection.scalar(select(func.max(table.c.number))) or 0
    number: int = max(noted, stands) + 1
    kept = insert(tables.numbers_given).values(name=table.name, last=number)
    connection.execute(kept.on_conflict_do_update(index_elements=[given.name], set_={"last": number}))
    return number
