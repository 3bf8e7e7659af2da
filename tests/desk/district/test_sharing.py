"""A class's answers for the district: no name, no code, and what was written where it can be read."""

import re
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path
from zipfile import ZipFile

import polars as pl
import pytest

from onewhole.desk.classes.class_list import name_pupils
from onewhole.desk.classes.class_records import NotThere, Store, open_book, set_night
from onewhole.desk.district.school_key import pupil_hash, school_key
from onewhole.desk.district.sharing import put_shared, shared_archive, shared_nights
from onewhole.errors import InputError
from tests.kit.club import DAY, NOW, small_club

KEY = bytes(range(32))


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """The small club with two nights, one child named, and a night that nobody handed in."""
    made = open_book(tmp_path / "room12.class")
    small_club(made, 2)
    name_pupils(made, 1, {"K01": "Marigold"}, {"K01": ""})
    set_night(made, 1, "title: Nobody\n1. 5 - 2 1/3\n", DAY, NOW)
    yield made
    made.close()


def test_a_paper_a_row_with_no_name_and_no_code(book: Store, tmp_path: Path) -> None:
    """Two files, four papers each; the smudge "x" is only said to be there, and no file tells a child."""
    nights = shared_nights(book, 1, "Elm School", KEY)
    paths = put_shared(nights, tmp_path / "out", "Elm School")
    assert [path.name for path in paths] == ["room-12-2026-09-01-1.parquet", "room-12-2026-09-02-2.parquet"]
    assert {path.parent.name for path in paths} == {"elm-school"}
    table = pl.read_parquet(paths[0])
    assert table.select("class", "school", "night", "grade").unique().rows() == [
        ("Room 12", "Elm School", DAY, 4)
    ]
    assert set(table["problems"]) == {"9 5/8 - 4 6/8\n8 1/6 - 3 5/6\n6 1/4 - 3 2/4"}
    assert sorted(table["answers"]) == [
        "4 6/8\n?\n2 3/4",
        "4 7/8\n4 2/6\n2 3/4",
        "5 1/8\n5 4/6\n2 3/4",
        "5 1/8\n5 4/6\n3 1/4",
    ]
    whole = str(table.rows()) + "".join(path.name for path in paths)
    assert not re.search(r"Marigold|K0\d", whole)
    assert all(b"Marigold" not in path.read_bytes() for path in paths)
    assert [path.stat().st_mode & 0o777 for path in paths] == [0o600, 0o600]


def test_a_pupil_is_the_same_on_every_night_and_nobody_else(book: Store) -> None:
    """The hash is HMAC-SHA-256 under the key: the school alone can make it again."""
    tables = [pl.read_parquet(BytesIO(night.content)) for night in shared_nights(book, 1, "Elm", KEY)]
    assert set(tables[0]["pupil"]) == set(tables[1]["pupil"])
    assert set(tables[0]["pupil"]) == {pupil_hash(KEY, "Elm", "Room 12", f"K0{at}") for at in (1, 2, 3, 4)}
    other = pl.read_parquet(BytesIO(shared_nights(book, 1, "Elm", bytes(32))[0].content))
    assert not set(other["pupil"]) & set(tables[0]["pupil"])


def test_a_hash_is_hmac_of_rfc_4231() -> None:
    """Names of other lengths do not run together: their lengths are in what is hashed."""
    assert pupil_hash(KEY, "ab", "c", "d") != pupil_hash(KEY, "a", "bc", "d")
    assert len(pupil_hash(KEY, "Elm", "Room 12", "K01")) == 32


def test_the_same_papers_give_the_same_bytes(book: Store) -> None:
    """And days outside are left out."""
    nights = shared_nights(book, 1, "Elm", KEY)
    assert shared_archive(nights, "Elm") == shared_archive(shared_nights(book, 1, "Elm", KEY), "Elm")
    names = ZipFile(BytesIO(shared_archive(nights, "Elm"))).namelist()
    assert names == ["elm/room-12-2026-09-01-1.parquet", "elm/room-12-2026-09-02-2.parquet"]
    assert len(shared_nights(book, 1, "Elm", KEY, (DAY, DAY))) == 1


def test_what_cannot_be_is_refused(book: Store, tmp_path: Path) -> None:
    """A school without a name, a class that is not there, and a file that is no key; it stays as it is."""
    with pytest.raises(InputError, match="needs a name"):
        shared_nights(book, 1, " ", KEY)
    with pytest.raises(NotThere):
        shared_nights(book, 2, "Elm", KEY)
    for held in ("kite", "00ff", "\xe9"):
        wrong = tmp_path / "wrong.key"
        wrong.write_text(held, encoding="latin-1")
        with pytest.raises(InputError, match="no key"):
            school_key(wrong)
        assert wrong.read_text(encoding="latin-1") == held


def test_a_key_is_made_once_for_its_owner_alone(tmp_path: Path) -> None:
    """What is made is read again."""
    first = school_key(tmp_path / "school.key")
    assert (len(first), school_key(tmp_path / "school.key")) == (32, first)
    assert (tmp_path / "school.key").stat().st_mode & 0o777 == 0o600
