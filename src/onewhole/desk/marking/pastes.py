"""The pastes of a night: each can be taken back as long as the night is kept, and nothing typed later is."""

import re
from collections import defaultdict
from collections.abc import Sequence
from datetime import datetime
from typing import cast

from msgspec import Struct

from onewhole.desk.classes.class_records import night_page, room
from onewhole.errors import InputError
from onewhole.store.answers import KeptAnswer, answers_of, keep_answers, writings_of
from onewhole.store.keeping import all_on_pupil
from onewhole.store.opening import Store

_BY = re.compile(r"paste ([0-9]{1,6})")


class PasteNumber(Struct, frozen=True):
    """The number of a paste within its night.

    >>> PasteNumber(2).by
    'paste 2'
    """

    number: int

    @property
    def by(self) -> str:
        """Return who wrote its cells, as it is kept beside each of them."""
        return f"paste {self.number}"


class NightPaste(Struct, frozen=True):
    """A paste that stands: its number, when it was kept, how many of its cells are still as it wrote them."""

    number: int
    when: datetime
    standing: int


class TakenBack(Struct, frozen=True):
    """What became of a paste: how many cells are as they were before, and the cells that stay, in words.

    ``left`` are the codes of pupils of whom nothing is written any more: they may have come with the paste.
    """

    cells: int
    stay: tuple[str, ...]
    left: tuple[str, ...] = ()


def paste_of(by: str) -> int:
    """Return the number of the paste that wrote an answer; 0 for one that was typed.

    >>> paste_of("paste 12"), paste_of("teacher")
    (12, 0)
    """
    found = _BY.fullmatch(by)
    return int(found[1]) if found else 0


def pastes_in(answers: Sequence[KeptAnswer]) -> tuple[NightPaste, ...]:
    """Return the pastes of which a cell of a night still stands, the last one first."""
    found: dict[int, list[KeptAnswer]] = defaultdict(list)
    for one in answers:
        if number := paste_of(one.by):
            found[number].append(one)
    return tuple(
        NightPaste(number, min(one.written for one in found[number]), len(found[number]))
        for number in sorted(found, reverse=True)
    )


def next_paste(book: Store, night: int) -> PasteNumber:
    """Return the number of the next paste of a night: none comes twice."""
    return PasteNumber(1 + max((paste_of(one.by) for one in writings_of(book, night)), default=0))


def take_back(book: Store, room_number: int, night: int, number: int, *, now: datetime) -> TakenBack:
    """Give every cell of a paste the text that it held before; one that was written since stays, and is told.

    A cell goes back to its writing before the first one of this paste, under the name of who wrote that.
    Raises NotThere, and InputError for a paste that there is not.
    """
    with book.transaction() as within:
        of, page = room(within, room_number), night_page(within, room_number, night)
        writings: dict[tuple[str, str], list[KeptAnswer]] = defaultdict(list)
        for one in writings_of(within, page.night.number):
            writings[one.code, one.problem].append(one)
        by = PasteNumber(number).by
        pasted = {cell: rows for cell, rows in writings.items() if any(row.by == by for row in rows)}
        if not pasted:
            raise InputError("There is no such paste on this night", remedy="Load the page again.")
        back = {cell: _before(rows, by) for cell, rows in pasted.items() if rows[-1].by == by}
        keep_answers(
            within,
            [
                KeptAnswer(night, code, label, was.text if was else "", now, was.by if was else "teacher")
                for (code, label), was in back.items()
            ],
        )
        codes = dict.fromkeys(code for code, _ in back)
        left = tuple(code for code in codes if _has_nothing_else(within, room_number, code, night, by))
    stay = tuple(f"{of.shown(code)}, {label}" for code, label in pasted if (code, label) not in back)
    return TakenBack(len(back), stay, left)


def _has_nothing_else(within: Store, room_number: int, code: str, night: int, by: str) -> bool:
    """Say whether a paste, and its taking back, wrote all there ever was of a pupil: nothing stands of it."""
    held = all_on_pupil(within, room_number, code)
    if any(held[key] for key in ("joined", "left", "asked_answers", "night_words")):
        return False
    mine = {one.problem for one in writings_of(within, night) if one.code == code and one.by == by}
    rows = [row for key in ("answers", "corrections") for row in cast("list[dict[str, str]]", held[key])]
    return all(row["night_number"] == str(night) and row["problem"] in mine for row in rows) and not any(
        one.text for one in answers_of(within, night) if one.code == code
    )


def _before(rows: Sequence[KeptAnswer], by: str) -> KeptAnswer | None:
    first = next(at for at, row in enumerate(rows) if row.by == by)
    return rows[first - 1] if first else None
