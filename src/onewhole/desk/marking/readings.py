"""How the teacher reads what the program cannot, or reads wrongly: the cell stays as it was typed."""

from collections.abc import Mapping, Sequence
from datetime import datetime

from msgspec import Struct

from onewhole.desk.classes.seen import is_to_be_written
from onewhole.errors import InputError
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.store.correction_rows import CellReadAs
from onewhole.store.corrections import Correction, corrections_of, keep_correction
from onewhole.store.opening import Store

LONGEST = 200


class Reading(Struct, frozen=True):
    """What was typed, and what the teacher reads it as. It holds for that text; for any where None.

    >>> Reading("3 and a smudge", "3 3/6").of("3 and a smudge"), Reading("3 and a smudge", "3 3/6").of("4")
    ('3 3/6', '4')
    """

    typed: str | None
    read: str

    def of(self, text: str) -> str:
        """Return a text as the teacher reads it; another one than was typed stays as it is."""
        return self.read if self.typed in {None, text} else text


Readings = Mapping[tuple[str, str], Reading]
"""By pupil's code and problem's label."""


def keep_reading(
    book: Store,
    night: int,
    reading: Reading,
    *,
    code: str,
    label: str,
    now: datetime,
    by: str,
    saw: str | None = None,
) -> None:
    """Keep how a cell is read; a reading that is the text itself takes an earlier one back.

    ``saw`` is how the window that asks saw the cell read. Raises InputError for a reading that cannot be read
    either or is too long, ChangedMeanwhile, NotThere and StoreRefused.
    """
    if len(reading.read) > LONGEST or len(reading.typed or "") > LONGEST:
        raise InputError(f"A reading has {LONGEST} characters at most", remedy="Type the answer alone.")
    read = read_written(reading.read).read
    if isinstance(read, Unreadable) and reading.read != reading.typed:
        raise InputError(read.why, remedy="Type a number such as 3 3/6, or - where nothing can be read.")
    word = CellReadAs(label, reading.typed, reading.read)
    with book.transaction() as within:
        was = readings(within, night).get((code, label))
        stands = (reading.typed or "") if was is None else was.of(reading.typed or "")
        changes = is_to_be_written("The reading of this cell", reading.read, saw, stands)
        if changes or reading.read == stands:
            keep_correction(within, Correction(night, code, word, now, by))


def readings(book: Store, night: int) -> Readings:
    """Return how the teacher reads cells of a night; the last reading of a cell counts."""
    return readings_in(corrections_of(book, night))


def readings_in(corrections: Sequence[Correction]) -> Readings:
    """Return the readings among a night's corrections, these in the order they were written."""
    return {
        (one.code, one.word.problem): Reading(one.word.typed, one.word.read)
        for one in corrections
        if isinstance(one.word, CellReadAs)
    }
