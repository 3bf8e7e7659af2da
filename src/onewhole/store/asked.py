"""What pupils were asked in talks after a night: a row is added and stays, also one that is taken back."""

from collections.abc import Sequence
from datetime import datetime

from msgspec import Struct
from sqlalchemy import insert, select

from onewhole.store import tables
from onewhole.store.nights import pupil_numbers
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere


class KeptAsked(Struct, frozen=True):
    """One row of a talk: `asked` and `wrote` exactly as typed, both empty where there is a word only.

    `said` is the teacher's word (:class:`~onewhole.marking.reading.talk_word.TalkSaid`, or empty) and `about`
    the ids of the patterns that it is about, parted by blanks. `number` is 0 before it is kept; `takes_back`
    is the number of the row that this one takes back, 0 for none: it holds nothing else.
    """

    night: int
    code: str
    asked: str
    wrote: str
    said: str
    about: str
    written: datetime
    by: str
    number: int = 0
    takes_back: int = 0


_COLUMNS = tables.asked_answers.c
#: The columns of a row, as `KeptAsked` takes them; two have another name there.
_ELSEWHERE = {"night": _COLUMNS.night_number, "code": tables.pupils.c.code}
_ROW = tuple(
    _ELSEWHERE[name] if name in _ELSEWHERE else _COLUMNS[name] for name in KeptAsked.__struct_fields__
)


def keep_asked(store: Store, row: KeptAsked) -> None:
    """Keep a row. Raises `NotThere`, also for taking back what does not stand, and as `keep_answers`."""
    with store.transaction() as within, within.writing() as connection:
        pupils = pupil_numbers(connection, row.night, {row.code})
        standing = {
            one.number for one in standing_asked(asked_rows(within, row.night)) if one.code == row.code
        }
        if row.takes_back and row.takes_back not in standing:
            raise NotThere(
                "This row is not there any more",
                where=f"pupil {row.code[:20]!r}",
                remedy="Load the page again.",
            )
        connection.execute(
            insert(tables.asked_answers).values(
                night_number=row.night,
                pupil_number=pupils[row.code],
                asked=row.asked,
                wrote=row.wrote,
                said=row.said,
                about=row.about,
                takes_back=row.takes_back,
                written=row.written,
                by=row.by,
            )
        )


def asked_rows(store: Store, night: int) -> tuple[KeptAsked, ...]:
    """Every row of a night in the order they were written, those that were taken back too."""
    asked = (
        select(*_ROW)
        .join(tables.pupils, tables.pupils.c.number == _COLUMNS.pupil_number)
        .where(_COLUMNS.night_number == night)
        .order_by(_COLUMNS.number)
    )
    with store.reading() as connection:
        return tuple(KeptAsked(*row) for row in connection.execute(asked))


def standing_asked(rows: Sequence[KeptAsked]) -> tuple[KeptAsked, ...]:
    """The rows that stand: those that were not taken back."""
    gone = {row.takes_back for row in rows}
    return tuple(row for row in rows if not row.takes_back and row.number not in gone)
