"""A row's bytes and digest; every connection of a store keeps the digests of whatever it writes."""

import sqlite3
from contextlib import closing

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.store import tables
from onewhole.store.classes import add_class, add_pupil
from onewhole.store.digest_check import DamageKind
from onewhole.store.digests import CHAINS, DIGESTED, HEADS, row_digest
from onewhole.store.keeping import clean, erase_pupil, set_keep_until
from onewhole.store.mending import check_store
from onewhole.store.opening import Store
from onewhole.store.recordings import forget_recording
from tests.kit.kept import DAY, NOW, Round, first_round

_VALUES = st.none() | st.integers(-(2**63), 2**63 - 1) | st.text() | st.binary()


def test_every_table_has_a_digest_last() -> None:
    """And it is the one column that the digest itself does not cover; every table with rows is checked."""
    for table in tables.METADATA.tables.values():
        assert [column.name for column in table.columns][-1] == "digest", table.name
    assert {*DIGESTED, HEADS} == set(tables.METADATA.tables)


def test_the_bytes_of_a_row_stay_those_of_the_first_release() -> None:
    """Other bytes would tell every file there is as damaged."""
    assert row_digest() == -450762322201056936
    assert row_digest("answers", 0, "teacher", 1, None, -5, b"\x00") == -1121238493601415475


@given(st.lists(_VALUES, max_size=4), st.lists(_VALUES, max_size=4))
def test_other_values_have_another_digest(one: list[str], other: list[str]) -> None:
    """1 is not "1", a text no sound, and where one value ends and the next begins counts."""
    alike = [(type(value), value) for value in one] == [(type(value), value) for value in other]
    assert (row_digest(*one) == row_digest(*other)) == alike


@pytest.mark.parametrize(("one", "other"), [((1,), ("1",)), (("ab", "c"), ("a", "bc")), (("a",), (b"a",))])
def test_near_values_have_another_digest(one: tuple[str, ...], other: tuple[str, ...]) -> None:
    """The three that a join of texts would mix up."""
    assert row_digest(*one) != row_digest(*other)


def test_whatever_is_written_is_right(full: Store) -> None:
    """Every table has rows, all fit, also after a child was erased and the file written anew."""
    first = Round(1, 1, 1)
    checked = check_store(full)
    assert checked.damages == ()
    assert checked.rows == sum(_rows(full).values())
    assert all(_rows(full).values())
    erase_pupil(full, first.class_number, "K01")
    forget_recording(full, first.night, "1")
    set_keep_until(full, None)
    clean(full)
    assert check_store(full).damages == ()
    assert 0 in _rows(full).values()


def test_a_statement_of_its_own_is_kept_as_well(store: Store) -> None:
    """No function has to remember the digests: they are the connection's."""
    first = first_round(store)
    with store.writing() as connection:
        connection.exec_driver_sql("INSERT INTO settings (name, text) VALUES ('a', 'b'), ('c', 'd')")
        connection.exec_driver_sql("UPDATE settings SET text = text || 'x'")
        connection.exec_driver_sql("DELETE FROM settings WHERE name = 'a'")
        connection.exec_driver_sql("DELETE FROM nights")
    assert check_store(store).damages == ()
    assert add_class(store, "Room 14", NOW).number == first.class_number + 1


def test_nothing_of_it_is_in_the_file(full: Store) -> None:
    """A file holds tables and indexes; what runs is the connection's."""
    with full.reading() as connection:
        kinds = connection.exec_driver_sql("SELECT DISTINCT type FROM main.sqlite_master").scalars().all()
    assert set(kinds) == {"table", "index"}


def test_a_writing_covers_the_one_before(full: Store) -> None:
    """The same text written again has another digest, and so has that of another cell."""
    first = Round(1, 1, 1)
    with full.reading() as connection:
        digests = connection.exec_driver_sql("SELECT digest FROM answers").scalars().all()
    assert len(set(digests)) == len(digests) == 4
    assert CHAINS.keys() == {"answers", "corrections", "asked_answers", "night_words", "sheet_versions"}
    with closing(sqlite3.connect(full.path)) as file, file:
        file.execute("DELETE FROM answers WHERE number = 2")
    found = {(one.kind, one.row.get("number")) for one in check_store(full).damages}
    assert found == {(DamageKind.LOST, None)}, (
        "the writing after it is right, and follows the one that is lost"
    )
    assert first.night == 1


def test_a_writing_that_is_changed_is_damaged_whoever_changes_it(full: Store) -> None:
    """Through the store too: a writing is never changed."""
    with full.writing() as connection:
        connection.exec_driver_sql("UPDATE answers SET text = '9' WHERE number = 1")
    (one,) = check_store(full).damages
    assert (one.kind, one.row["text"]) == (DamageKind.CHANGED, "9")


def test_a_change_beside_a_damage_does_not_hide_it(full: Store) -> None:
    """A name that was damaged is told after a child was added to its class, and after another one."""
    first = Round(1, 1, 1)
    with closing(sqlite3.connect(full.path)) as file, file:
        file.execute("UPDATE classes SET name = 'Rook 13'")
        file.execute(f"UPDATE {HEADS} SET rows = rows + 1 WHERE name = 'settings'")  # noqa: S608 - our own name
    for _ in range(2):
        add_pupil(full, first.class_number)
        set_keep_until(full, DAY)
        assert [(one.kind, one.table) for one in check_store(full).damages] == [
            (DamageKind.CHANGED, "classes"),
            (DamageKind.TOLD, "settings"),
        ]


def test_numbers_that_are_forgotten_are_missed(full: Store) -> None:
    """SQLite's note of the highest number: with a lower one a child's number could come twice."""
    with closing(sqlite3.connect(full.path)) as file, file:
        file.execute("UPDATE sqlite_sequence SET seq = 1 WHERE name = 'pupils'")
    (one,) = check_store(full).damages
    assert (one.kind, one.table, one.count) == (DamageKind.COUNTING, "pupils", 2)


def _rows(store: Store) -> dict[str, int]:
    with store.reading() as connection:
        return {
            name: connection.exec_driver_sql(f"SELECT count(*) FROM {name}").scalar_one()  # noqa: S608 - our own names
            for name in DIGESTED
        }
