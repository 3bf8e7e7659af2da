"""A backup comes back while another window makes a class: what that window made is named too."""

from contextlib import closing
from pathlib import Path

import pytest

from onewhole.desk.keep import restoring
from onewhole.desk.keep.backups import back_up
from onewhole.desk.keep.restoring import restore_backup
from onewhole.desk.keep.way_back import moved_aside
from onewhole.store.answers import answers_of
from onewhole.store.opening import open_store
from tests.kit.kept import NOW, first_round, write


def test_what_was_made_meanwhile_is_named(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A damaged file is moved aside, and a class is made under its name before the backup is there."""
    path, saved = tmp_path / "room12.class", tmp_path / "saved.backup"
    with closing(open_store(path)) as book:
        write(book, first_round(book).night, "early")
        back_up(book, saved)
    path.write_bytes(b"torn")

    def then_made(goal: Path, now: object) -> Path:
        aside = moved_aside(goal, NOW)
        assert now == NOW
        with closing(open_store(goal)) as made:
            write(made, first_round(made).night, "meanwhile")
        return aside

    monkeypatch.setattr(restoring, "moved_aside", then_made)
    done = restore_backup(saved, path, NOW)
    assert done.aside is not None
    assert done.aside.read_bytes() == b"torn"
    assert done.before is not None
    for file, text in ((done.before, "meanwhile"), (path, "early")):
        with closing(open_store(file)) as book:
            assert [one.text for one in answers_of(book, 1)] == [text]
