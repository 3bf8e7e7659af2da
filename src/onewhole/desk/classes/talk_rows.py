"""What pupils of a class were asked in talks, as it is kept: for the marking, and for a page."""

from collections.abc import Iterator, Sequence
from datetime import date, datetime

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.asked import AskedAnswer, asked_problem
from onewhole.marking.reading.asked_table import AskedRow
from onewhole.marking.reading.talk_word import TalkSaid, TalkWord
from onewhole.store.asked import KeptAsked, asked_rows, standing_asked
from onewhole.store.nights import nights_of
from onewhole.store.opening import Store


class TalkText(Struct, frozen=True):
    """One row of a talk that stands, as it was typed: the problem and the answer are empty for a word only.

    ``number`` is the row's own; a row that takes it back names it.
    """

    code: str
    asked: str
    wrote: str
    word: TalkWord | None
    night: int
    day: date
    written: datetime
    by: str
    number: int


def talk_texts(book: Store, room: int, night: int | None = None) -> tuple[TalkText, ...]:
    """Return what stands of the talks after a night of a class, or after all its nights, by day."""
    with book.snapshot() as seen:
        nights = [one for one in nights_of(seen, room) if night is None or one.number == night]
        return tuple(
            _text(row, one.day) for one in nights for row in standing_asked(asked_rows(seen, one.number))
        )


def _text(row: KeptAsked, day: date) -> TalkText:
    word = TalkWord(TalkSaid(row.said), tuple(row.about.split())) if row.said else None
    return TalkText(row.code, row.asked, row.wrote, word, row.night, day, row.written, row.by, row.number)


def rows_of_talks(texts: Sequence[TalkText]) -> tuple[AskedRow, ...]:
    """Read talks for the marking. A problem that this release cannot read counts for nothing."""
    return tuple(AskedRow(one) for text in texts for one in _answer(text))


def _answer(text: TalkText) -> Iterator[AskedAnswer]:
    word = None if text.word and text.word.said is TalkSaid.THIS and not text.word.about else text.word
    try:
        problem = asked_problem(text.asked) if text.asked else None
    except InputError:
        problem = None
    if problem or word:
        written = read_written(text.wrote, problem) if problem else None
        yield AskedAnswer(text.code, problem, written, word)
