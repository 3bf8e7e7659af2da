"""No bit of a file turns over unnoticed: it is refused, or named, or no value of any row is another one.

A sample is tried; ONEWHOLE_WHOLE_WALK=1 turns over every bit (`make walk`).
"""

import os
import random
import sqlite3
from collections import Counter
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest

from onewhole.errors import OnewholeError
from onewhole.store.digest_check import check_rows
from onewhole.store.digests import DIGESTED, HEADS
from onewhole.store.opening import check_file
from onewhole.store.transaction import translate_errors

EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
#: So many bits are turned over where not all are: of the whole file, and of the values that somebody wrote.
ANYWHERE, IN_VALUES = 150, 250
#: The smallest pages that SQLite has, so that the whole walk ends.
PAGE = 512


def _small_file(path: Path, content: bytes) -> bytes:
    """A file with rows in every table, on small pages."""
    path.write_bytes(content)
    with closing(sqlite3.connect(path, isolation_level=None)) as file:
        file.execute(f"PRAGMA page_size = {PAGE}")
        file.execute("VACUUM")
    return path.read_bytes()


def _rows(file: sqlite3.Connection) -> list[list[tuple[object, ...]]]:
    """Every value of every row, found with and without the indexes, and what is told of the tables."""
    asked = [f"SELECT * FROM {name} NOT INDEXED" for name in (*DIGESTED, HEADS)]  # noqa: S608 - our own names
    asked.extend(
        f"SELECT * FROM answers INDEXED BY {index} WHERE night_number > 0 AND pupil_number > 0"  # noqa: S608 - our own names
        for index in ("answers_of_a_night", "answers_by_night", "answers_of_a_pupil")
    )
    return [sorted(file.execute(one), key=repr) for one in asked]


def _outcome(path: Path, right: object) -> str:
    """What becomes of a file: refused, named, or the same; anything else is what must not be."""
    try:
        check_file(path)
        with translate_errors(path), closing(sqlite3.connect(path)) as file:
            if check_rows(file).damages:
                return "named"
            return "the same" if _rows(file) == right else "unnoticed"
    except OnewholeError:
        return "refused"


def _bits(content: bytes) -> Iterator[int]:
    """The bits to be turned over."""
    if EVERYTHING:
        yield from range(len(content) * 8)
        return
    chance = random.Random(29)
    for _ in range(ANYWHERE):
        yield chance.randrange(len(content) * 8)
    written = [at for at in range(len(content)) if content[at : at + 1].isalnum() and at > PAGE * 30]
    for _ in range(IN_VALUES):
        yield chance.choice(written) * 8 + chance.randrange(8)


@pytest.mark.more("store/test_damaged.py")
def test_no_bit_turns_over_unnoticed(tmp_path: Path, full_file: bytes) -> None:
    """Nowhere in the file; a fault of the program is none of the three either."""
    path = tmp_path / "a.class"
    content = _small_file(path, full_file)
    with closing(sqlite3.connect(path)) as file:
        right = _rows(file)
    assert _outcome(path, right) == "the same"
    came: Counter[str] = Counter()
    for bit in _bits(content):
        turned = bytearray(content)
        turned[bit // 8] ^= 1 << bit % 8
        path.write_bytes(turned)
        came[what := _outcome(path, right)] += 1
        assert what != "unnoticed", f"byte {bit // 8}, bit {bit % 8}"
    assert came["named"] > 0
    assert came["refused"] > 0
    print(dict(came))
