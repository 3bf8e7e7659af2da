"""The table of places: every table, every kind of file, every cache and every store of a browser is in it."""

import ast
import re
from importlib import import_module
from importlib.resources import files
from pathlib import Path

import pytest

from onewhole.desk.keep.lying import what_lies
from onewhole.desk.keep.place import Where
from onewhole.desk.keep.places import DataPlace, place_of
from onewhole.store.tables import METADATA
from tests.house.plan import PACKAGE

#: Tables that SQLite and Alembic keep beside ours.
BESIDE = {"schema_version", "sqlite_sequence"}
#: Functions above the heart that remember results, and from what; those that remember anything of answers are
#: made by `pupil_cache`, and forgotten when a child is erased.
REMEMBER = {
    "desk/classes/class_records.py: sheet_typed": "a page",
    "desk/classes/practised.py: _asked": "a page",
    "desk/classes/practised.py: skills_of": "a page",
    "desk/classes/year_night.py: _like_twin": "a problem",
    "desk/classes/year_night.py: _twin": "a problem",
    "desk/classes/year_plan.py: _gap": "numbers",
    "desk/classes/year_plan.py: _left": "numbers",
    "desk/classes/year_plan.py: year_plan": "a typed year",
    "desk/marking/verdicts.py: expected": "a problem",
    "desk/page/live_page.py: _worked_on": "a problem",
    "desk/walkthrough/board.py: _board": "a page",
    "desk/walkthrough/board.py: _html": "a page",
    "desk/walkthrough/board.py: _offered": "a page",
    "marking/diagnosis/ask_next.py: _candidate": "a problem",
    "marking/diagnosis/information.py: _table": "numbers",
    "marking/practice/course.py: telling": "numbers",
    "store/digest_triggers.py: _triggers": "tables",
    "store/handed_in/records.py: record_types": "tables",
    "store/migrating.py: known_steps": "releases",
    "store/schema.py: _made": "a release",
    "store/schema.py: columns_at": "a release",
    "store/schema.py: schema_at": "a release",
}


def test_every_table_has_a_row() -> None:
    """Those of the code of today, and no others."""
    told = {place.value.found for place in DataPlace if place.value.where is Where.TABLE}
    assert told == {*METADATA.tables, *BESIDE}


def test_a_place_is_told_once() -> None:
    """By what stands there and by where; what is in memory names a module that is there."""
    rows = [place.value for place in DataPlace]
    assert len({row.what for row in rows}) == len(rows)
    for row in rows:
        if row.where is Where.MEMORY:
            assert import_module(row.found).__doc__


@pytest.mark.parametrize(
    "name",
    [
        "room12.class.csv",
        "backups/room13.class.2026-09-01.backup",
        "backups/room12.class.2026-09-01.backup.bak",
        "room12-made/other/night-1/tomorrow/a.pdf",
        "room12-made/mine/week/tomorrow.pdf",
        "room12.class.2026-09-01.damage",
        ".room12.class.making",
        "room12.class-wal2",
    ],
)
def test_a_file_of_another_kind_has_no_place(name: str) -> None:
    """So a new kind of file that the round leaves is seen."""
    assert place_of(name, "room12.class") is None


@pytest.mark.parametrize("place", [one for one in DataPlace if one.value.pattern], ids=lambda one: one.name)
def test_a_file_is_known_whatever_the_class_is_called(place: DataPlace) -> None:
    """With an ending, without one, and with signs that mean something in a pattern."""
    for class_file, stem in (("room12.class", "room12"), ("room12", "room12"), ("a+(b).x.class", "a+(b).x")):
        name = place.value.found.replace("room12.class", class_file).replace("room12-", f"{stem}-")
        name = name.replace("-demo.class", f"-demo{class_file.removeprefix(stem)}")
        assert place_of(name, class_file) is place


def test_only_the_files_of_this_class_lie_here(tmp_path: Path) -> None:
    """A link is not followed, and another class's file, or the teacher's own, is not in the list."""
    for name in ("a.class", "b.class", "a.class.password", "notes.txt", "backups/a.class.2026-09-01.backup"):
        (tmp_path / name).parent.mkdir(exist_ok=True)
        (tmp_path / name).write_bytes(b"x")
    (tmp_path / "a.class.2026-09-01.damaged").symlink_to(tmp_path / "b.class")
    assert {one.place: one.files for one in what_lies(tmp_path / "a.class")} == {
        DataPlace.CLASS_FILE: ("a.class",),
        DataPlace.BACKUPS: ("backups/a.class.2026-09-01.backup",),
        DataPlace.PASSWORD: ("a.class.password",),
    }


def test_a_browser_stores_the_drafts_only() -> None:
    """No script uses another store of the browser, and only one file uses this."""
    stores = re.compile(r"localStorage|sessionStorage|indexedDB|caches\.|document\.cookie|serviceWorker")
    static = Path(str(files("onewhole.web") / "static"))
    found = {(path.name, use) for path in static.glob("*.js") for use in stores.findall(path.read_text())}
    assert found == {("page_desk_kept.js", "localStorage")}
    assert "page_desk_kept.js" in DataPlace.DRAFTS.value.found


def test_only_what_is_no_child_s_is_remembered_for_good() -> None:
    """A new cache above the heart is named here with what it remembers, or is a `pupil_cache`."""
    found = {
        f"{path.relative_to(PACKAGE).as_posix()}: {made.name}"
        for room in ("desk", "marking", "store")
        for path in sorted((PACKAGE / room).rglob("*.py"))
        for made in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(made, ast.FunctionDef)
        and any(re.match(r"(lru_)?cache\b", ast.unparse(one)) for one in made.decorator_list)
    }
    assert found == set(REMEMBER)
