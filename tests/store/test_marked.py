"""Which pupils have an answer."""

from datetime import UTC, date, datetime
from pathlib import Path

from onewhole.store.answers import KeptAnswer
from onewhole.store.classes import add_class, add_pupil
from onewhole.store.marked import answered
from onewhole.store.nights import add_night
from onewhole.store.opening import open_store
from onewhole.store.sheets import add_sheet
from tests.kit.kept import keep_answer

NOW = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)


def test_a_pupil_counts_once_and_a_cleared_answer_not(tmp_path: Path) -> None:
    """Two answers of one pupil count once; an answer cleared again, or of blanks, is none."""
    store = open_store(tmp_path / "room.class")
    kites = add_class(store, "Room 12", NOW)
    codes = [add_pupil(store, kites.number).code for _ in range(4)]
    sheet = add_sheet(store, "Kites", "1. 52 - 27\n2. 4 - 1", NOW)
    first, second = (add_night(store, kites.number, sheet.number, 1, date(2026, 9, day)) for day in (1, 2))
    for code, label, text in (
        (codes[0], "1", "25"), (codes[0], "2", "3"), (codes[1], "1", "35"), (codes[1], "1", ""),
        (codes[2], "2", "  "), (codes[3], "2", "?"),
    ):  # fmt: skip
        keep_answer(store, KeptAnswer(first.number, code, label, text, NOW, "teacher"))
    assert answered(store, [first.number, second.number]) == {first.number: frozenset({codes[0], codes[3]})}
    assert answered(store, []) == {}
    store.close()
