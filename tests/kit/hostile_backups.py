"""Backups made to deceive: each builder changes a good one; each is refused with the class unchanged."""

import re
import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

#: A row of SQLite's list of what a file holds, changed past every check.
REWRITE = "UPDATE sqlite_schema SET sql = replace(sql, ?, ?) WHERE name = ?"
Builder = Callable[[Path], None]


def ran(*lines: str, keys: bool = False) -> Builder:
    """Run lines of SQL in the file."""

    def build(path: Path) -> None:
        with closing(sqlite3.connect(path, isolation_level=None)) as file:
            file.execute(f"PRAGMA foreign_keys = {int(keys)}")
            for line in lines:
                file.execute(line)

    return build


def rewritten(name: str, was: str, now: str) -> Builder:
    """Write what SQLite says of a table anew, without a change of its rows."""

    def build(path: Path) -> None:
        with closing(sqlite3.connect(path, isolation_level=None)) as file:
            file.execute("PRAGMA writable_schema = ON")
            assert file.execute(REWRITE, (was, now, name)).rowcount == 1
            file.execute("PRAGMA writable_schema = OFF")

    return build


def patched(change: Callable[[bytearray], None]) -> Builder:
    """Change the bytes of the file."""

    def build(path: Path) -> None:
        content = bytearray(path.read_bytes())
        before = bytes(content)
        change(content)
        assert content != before
        path.write_bytes(content)

    return build


def _twice_one_code(content: bytearray) -> None:
    """The row says K01 a second time, the index still says K02."""
    rows = [found.start() for found in re.finditer(b"K02", content)]
    for at in rows:
        page = content[at // 4096 * 4096]
        if page == 0x0D:  # a leaf of a table (sqlite.org/fileformat2.html, 1.6)
            content[at : at + 3] = b"K01"
            return
    raise AssertionError(rows)


def _free_pages_of_nowhere(content: bytearray) -> None:
    content[32:36] = (9_999_999).to_bytes(4)
    content[36:40] = (7).to_bytes(4)


def _giant_cell(path: Path) -> None:
    """A cell that says it holds two milliards of bytes."""
    ran("INSERT INTO settings (name, text) VALUES ('giant', 'PATCHMEPATCHME')")(path)
    content = bytearray(path.read_bytes())
    at = content.index(b"giantPATCHMEPATCHME")
    # The record's head is 4 bytes: its length, the length of the name, of the text, and no digest.
    start = at - 4
    assert content[start] == 4
    content[start + 2] = 0xFF
    path.write_bytes(content)


def many_rows(path: Path) -> None:
    """Give the answers so many rows that their tree has a page of branches, each leaf once."""
    with closing(sqlite3.connect(path, isolation_level=None)) as file:
        file.execute("BEGIN")
        file.executemany(
            'INSERT INTO answers (night_number, pupil_number, problem, text, written, "by") '
            'SELECT night_number, pupil_number, problem, ?, written, "by" FROM answers WHERE number = 1',
            [(f"{at}" * 40,) for at in range(600)],
        )
        file.execute("COMMIT")


def row_bomb(path: Path) -> None:
    """All branches of the answers lead to one leaf: few bytes, very many rows."""
    many_rows(path)
    with closing(sqlite3.connect(path)) as file:
        ((root,),) = file.execute("SELECT rootpage FROM sqlite_schema WHERE name = 'answers'")
    content = bytearray(path.read_bytes())
    page = (root - 1) * 4096
    assert content[page] == 0x05, "a page of branches of a table"
    cells = int.from_bytes(content[page + 3 : page + 5])
    assert cells > 3
    starts = [page + int.from_bytes(content[page + 12 + 2 * at : page + 14 + 2 * at]) for at in range(cells)]
    first = content[starts[0] : starts[0] + 4]
    for start in starts:
        content[start : start + 4] = first
    path.write_bytes(content)


def utf16(path: Path) -> None:
    """The same tables and rows in another encoding of text."""
    other = path.with_name("utf16")
    with (
        closing(sqlite3.connect(path)) as file,
        closing(sqlite3.connect(other, isolation_level=None)) as made,
    ):
        made.execute("PRAGMA encoding = 'UTF-16le'")
        ((mark,),) = file.execute("PRAGMA application_id")
        made.execute(f"PRAGMA application_id = {mark}")
        made.executescript("\n".join(file.iterdump()))
    other.replace(path)


_ENDLESS = (
    "CREATE VIEW schema_version AS WITH RECURSIVE r(version_num) AS "
    "(SELECT '0001' UNION ALL SELECT version_num FROM r) SELECT version_num FROM r"
)

#: What is handed in, by what is wrong with it.
HOSTILE: dict[str, Builder] = {
    # What would run.
    "a trigger that changes answers": ran(
        "CREATE TRIGGER t AFTER INSERT ON answers BEGIN UPDATE answers SET text = '9 9/9'; END"
    ),
    "a trigger that drops answers": ran(
        "CREATE TRIGGER t BEFORE INSERT ON answers BEGIN SELECT RAISE(IGNORE); END"
    ),
    "a trigger that keeps erased names": ran(
        "CREATE TRIGGER t BEFORE DELETE ON pupils BEGIN "
        "INSERT INTO settings (name, text) VALUES (OLD.code, OLD.name); END"
    ),
    "a view more": ran("CREATE VIEW v AS SELECT * FROM pupils"),
    "a view in place of answers": ran(
        "ALTER TABLE answers RENAME TO kept", "CREATE VIEW answers AS SELECT * FROM kept"
    ),
    "an endless view as the release": ran("DROP TABLE schema_version", _ENDLESS),
    "full text search": ran("CREATE VIRTUAL TABLE f USING fts5(text, content='answers')"),
    "a tree of places": ran("CREATE VIRTUAL TABLE f USING rtree(number, low, high)"),
    "a table of an unknown kind": ran(
        "PRAGMA writable_schema = ON",
        "INSERT INTO sqlite_schema VALUES "
        "('table', 'z', 'z', 0, 'CREATE VIRTUAL TABLE z USING zipfile(''/etc/passwd'')')",
    ),
    "a check that calls a function": rewritten(
        "settings", "name TEXT NOT NULL,", "name TEXT NOT NULL CHECK (load_extension(name) IS NULL),"
    ),
    "a default that is computed": rewritten(
        "settings", "text TEXT NOT NULL,", "text TEXT NOT NULL DEFAULT (randomblob(9)),"
    ),
    "a column that is computed": ran("ALTER TABLE pupils ADD COLUMN shoe TEXT AS (upper(name)) VIRTUAL"),
    "an index of some rows": ran("CREATE INDEX i ON answers (text) WHERE length(text) > 1"),
    "an index of something computed": ran("CREATE INDEX i ON answers (abs(number))"),
    "another order of texts": rewritten(
        "settings", "name TEXT NOT NULL,", "name TEXT COLLATE NOCASE NOT NULL,"
    ),
    # What is missing or too much.
    "no recordings": ran("DROP TABLE recordings"),
    "no answers": ran("DROP TABLE answers"),
    "no names": ran("ALTER TABLE pupils DROP COLUMN name"),
    "no index": ran("DROP INDEX answers_of_a_night"),
    "a table more": ran("CREATE TABLE songs (name TEXT)"),
    "a column more": ran("ALTER TABLE nights ADD COLUMN weather TEXT"),
    "no release": ran("DELETE FROM schema_version"),
    "two releases": ran("INSERT INTO schema_version VALUES ('0001')"),
    "a release to come": ran("UPDATE schema_version SET version_num = '9999'"),
    "a release that never was": ran("UPDATE schema_version SET version_num = 'zero'"),
    # What no column holds.
    "a day that is none": ran("UPDATE nights SET day = '2026-02-30'"),
    "a moment that is none": ran("UPDATE answers SET written = 'soon'"),
    "a moment without a zone": ran("UPDATE answers SET written = '2026-09-01T18:30:00.000000'"),
    "a last day that is none": ran("UPDATE settings SET text = 'soon' WHERE name = 'keep until'"),
    "a name that is bytes": ran("UPDATE pupils SET name = x'00ff'"),
    "a number that is text": ran("UPDATE answers SET night_number = 'one'"),
    "a number with a fraction": ran("UPDATE classes SET codes_given = 2.5"),
    "a number below nothing": ran("UPDATE classes SET codes_given = -2"),
    "a giant number": ran("UPDATE sheet_versions SET version = 9007199254740993"),
    "a giant text": ran("UPDATE sheet_versions SET typed = printf('%.*c', 1000001, 'x')"),
    "a cell longer than the file": _giant_cell,
    "text that is no text": ran("UPDATE answers SET text = CAST(x'6bff' AS TEXT)"),
    "a code with an escape": ran("UPDATE pupils SET code = 'K' || char(27) || '[2J' WHERE number = 1"),
    "a code that was never given": ran("UPDATE classes SET codes_given = 1"),
    "a recording that is a page": ran("UPDATE recordings SET kind = 'text/html'"),
    "steps of a board that are none": ran("UPDATE recordings SET cues = '1; 2'"),
    "steps of a board that go back": ran("UPDATE recordings SET cues = '900 5'"),
    "a sound that is text": ran("UPDATE recordings SET sound = '<script>'"),
    "a step that is none": ran("UPDATE steps SET step = 'burned'"),
    "a correction of nothing": ran("UPDATE corrections SET \"of\" = 'shoes'"),
    "numbers given of another kind": ran("UPDATE sqlite_sequence SET seq = 'x' WHERE name = 'answers'"),
    "numbers given elsewhere": ran("INSERT INTO sqlite_sequence VALUES ('songs', 7)"),
    # What does not hang together.
    "two pupils of one code": patched(_twice_one_code),
    "answers of a night that is not there": ran("DELETE FROM nights"),
    "answers of a pupil who is not there": ran("DELETE FROM pupils WHERE number = 1"),
    "a night of a page that is not there": ran("DELETE FROM sheet_versions"),
    "free pages of nowhere": patched(_free_pages_of_nowhere),
    "two tables in one place": ran(
        "PRAGMA writable_schema = ON",
        "UPDATE sqlite_schema SET rootpage = (SELECT rootpage FROM sqlite_schema WHERE name = 'answers') "
        "WHERE name = 'corrections'",
    ),
    "a bomb of rows": row_bomb,
    "another encoding": utf16,
}


def with_log_head(path: Path) -> None:
    """The head says that a log may lie beside it; there is none."""
    with closing(sqlite3.connect(path)) as file:
        file.execute("PRAGMA journal_mode = WAL")


def with_free_pages(path: Path) -> None:
    """Pages that hold nothing any more, and the words that stood there."""
    with closing(sqlite3.connect(path, isolation_level=None)) as file:
        file.execute("PRAGMA secure_delete = OFF")
        file.executemany(
            "INSERT INTO settings (name, text) VALUES (?, ?)",
            [(f"{at}", "Wrenalinda" * 400) for at in range(9)],
        )
        file.execute("DELETE FROM settings WHERE name <> 'keep until'")


def with_bytes_behind(path: Path) -> None:
    """Bytes behind the last page."""
    with path.open("ab") as file:
        file.write(b"Wrenalinda" * 1000)


#: What is odd and does no harm: it comes back clean.
HARMLESS: dict[str, Builder] = {
    "the head of a file with a log": with_log_head,
    "free pages": with_free_pages,
    "bytes behind the last page": with_bytes_behind,
    "an unknown setting": ran("INSERT INTO settings (name, text) VALUES ('paper', 'a4')"),
    "another mark of the user": ran("PRAGMA user_version = 77"),
}
