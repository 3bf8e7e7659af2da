"""A file is ours when all that it holds is exactly what a step of ours makes."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from onewhole.store.migrating import known_steps
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import Damaged, Newer
from onewhole.store.schema import schema_at, schema_of
from tests.kit.kept import first_round

#: What is done to a class file, and a word of the refusal.
CHANGES = {
    "CREATE TRIGGER t AFTER INSERT ON answers BEGIN SELECT 1; END": "trigger t",
    "CREATE VIEW v AS SELECT 1": "view v",
    "CREATE TABLE songs (name)": "table songs",
    "CREATE INDEX i ON answers (text) WHERE text > 'a'": "index i",
    "CREATE VIRTUAL TABLE f USING fts5(x)": "table f",
    "DROP INDEX answers_of_a_night": "index answers_of_a_night",
    "DROP TABLE recordings": "recordings",
    "ALTER TABLE pupils ADD COLUMN shoe TEXT": "table pupils",
    "ALTER TABLE pupils DROP COLUMN name": "table pupils",
    "DELETE FROM schema_version": "which release",
    "INSERT INTO schema_version VALUES ('0001')": "which release",
    "UPDATE schema_version SET version_num = x'ff'": "which release",
    "UPDATE schema_version SET version_num = '0000'": "no release",
    "DROP TABLE schema_version": "release is not ours",
}


@pytest.mark.parametrize("change", CHANGES)
def test_a_file_that_is_built_otherwise_is_refused(store: Store, change: str) -> None:
    """It is told as damaged with what differs, and nothing in it changes."""
    first_round(store)
    store.close()
    with closing(sqlite3.connect(store.path)) as raw:
        raw.execute(change)
        raw.commit()
    before = store.path.read_bytes()
    with pytest.raises(Damaged, match=CHANGES[change]) as refused:
        open_store(store.path)
    assert not isinstance(refused.value, Newer)
    assert refused.value.where == str(store.path)
    assert store.path.read_bytes() == before


def test_a_view_in_place_of_the_release_never_runs(store: Store) -> None:
    """An endless one would hang whoever asks it."""
    first_round(store)
    store.close()
    with closing(sqlite3.connect(store.path)) as raw:
        raw.execute("DROP TABLE schema_version")
        raw.execute(
            "CREATE VIEW schema_version AS WITH RECURSIVE r(version_num) AS (SELECT 1 UNION ALL "
            "SELECT 1 + version_num FROM r) SELECT version_num FROM r WHERE version_num < 0"
        )
    with pytest.raises(Damaged, match="not ours"):
        open_store(store.path)


def test_every_step_has_a_schema_of_its_own() -> None:
    """So that a file cannot claim the step of another."""
    assert len({schema_at(step) for step in known_steps()}) == len(known_steps()) > 1


def test_blanks_are_one_and_letters_count(tmp_path: Path) -> None:
    """A table told with other blanks is the same; with another letter it is not."""
    made = []
    for at, sql in enumerate(
        ("CREATE TABLE a (b,\n\tc)", "CREATE TABLE a (b,   c)", "CREATE TABLE a (b, d)")
    ):
        with closing(sqlite3.connect(tmp_path / f"{at}.db")) as raw:
            raw.execute(sql)
            made.append(schema_of(raw.execute, "a file"))
    assert made[0] == made[1] != made[2]
