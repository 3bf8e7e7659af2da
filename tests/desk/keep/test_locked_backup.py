"""A backup locked with a passphrase: opened by it only, by two roads, and refused kindly without it."""

import os
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest
from pyrage import passphrase

from onewhole.desk.keep.locked_backup import (
    WrongPassphrase,
    back_up_locked,
    check_passphrase,
    is_locked,
    is_locked_file,
    locked_bytes,
    unlocked,
    unlocked_file,
)
from onewhole.desk.keep.restoring import restore_bytes
from onewhole.errors import Fault, InputError
from onewhole.store.answers import answers_of
from onewhole.store.keeping import backup_bytes
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import StoreRefused
from tests.kit.age_format import BEGINS, CHUNK, age_lock, age_open, lock_quickly, seal
from tests.kit.kept import NOW, first_round, write

WHOLE = bool(os.environ.get("ONEWHOLE_WHOLE_WALK"))
PHRASE = "six kites over the hill"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class file with an answer, closed after the test."""
    opened = open_store(tmp_path / "room12.class")
    write(opened, first_round(opened).night, "early")
    yield opened
    opened.close()


def _lock(plain: bytes, phrase: str = PHRASE) -> bytes:
    return age_lock(plain, phrase, salt=b"s" * 16, file_key=b"k" * 16, nonce=b"n" * 16, log_n=10)


@cache
def _whole() -> bytes:
    """Two pieces, the last of one byte."""
    return _lock(bytes(CHUNK + 1))


@pytest.mark.asvs("V11.3.1", "V11.3.2")
def test_the_second_road_is_chacha20_poly1305() -> None:
    """The example of RFC 8439, section 2.8.2, from memory: its tag and the first bytes that are hidden."""
    sunscreen = (
        b"Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the future, "
        b"sunscreen would be it."
    )
    sealed = seal(
        bytes(range(0x80, 0xA0)),
        bytes.fromhex("070000004041424344454647"),
        sunscreen,
        bytes.fromhex("50515253c0c1c2c3c4c5c6c7"),
    )
    assert sealed[:16].hex() == "d31a8d34648e60db7b86afbc53ef7ec2"
    assert sealed[-16:].hex() == "1ae10b594f09e26a7e902ecbd0600691"


@pytest.mark.parametrize("size", [0, 1, CHUNK, CHUNK + 1], ids=str)
def test_what_is_locked_elsewhere_opens(size: int) -> None:
    """By another program of the same format, of any number of pieces, with an accent in the passphrase."""
    plain = bytes(at % 251 for at in range(size))
    assert unlocked(_lock(plain, "six kîtes over the hill"), "six kîtes over the hill") == plain


@pytest.mark.more("store/test_damaged.py")
@pytest.mark.asvs("V11.3.2")
def test_the_library_writes_the_format() -> None:
    """Its first line, a passphrase as the only way in, and work that is opened here; no word can be read."""
    locked: bytes = passphrase.encrypt(b"kites", PHRASE)
    first, stanza, *_ = locked.split(b"\n")
    assert first + b"\n" == BEGINS
    assert stanza.startswith(b"-> scrypt ")
    assert locked.count(b"\n-> ") == 1
    assert b"kites" not in locked


@pytest.mark.asvs("V11.3.2")
def test_a_locked_backup_opens_elsewhere_and_comes_back(
    book: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """One new file, its owner's alone, that begins as the format says and holds no word of the class.

    `make walk` lets the library lock it, with all the work that this takes.
    """
    if not WHOLE:
        lock_quickly(monkeypatch)
    goal = tmp_path / "monday.backup.age"
    back_up_locked(book, goal, PHRASE)
    assert goal.stat().st_mode & 0o777 == 0o600
    content = goal.read_bytes()
    assert content.startswith(BEGINS)
    assert (is_locked(content), is_locked_file(goal)) == (True, True)
    assert not any(word in content for word in (b"SQLite", b"early", b"Room 12"))
    assert age_open(content, PHRASE).startswith(b"SQLite format 3\0")
    with pytest.raises(StoreRefused, match="file of this name"):
        back_up_locked(book, goal, PHRASE)
    write(book, 1, "late")
    restore_bytes(unlocked_file(goal, PHRASE), book.path, NOW)
    assert [one.text for one in answers_of(book, 1)] == ["early"]
    assert [path.name for path in tmp_path.iterdir() if path.name.startswith(".")] == []


@pytest.mark.parametrize("typed", ["", "six kites over the hil", "Six kites over the hill", PHRASE + " "])
def test_another_passphrase_opens_nothing(book: Store, typed: str) -> None:
    """It is told as that, and not as damage."""
    with pytest.raises(WrongPassphrase, match=r"does not open|is locked"):
        unlocked(_lock(backup_bytes(book)), typed)


@pytest.mark.asvs("V11.3.3")
@pytest.mark.parametrize("fault", ["head", "cut", "body", "more", "empty", "work", "kind", "armour"])
def test_a_torn_or_foreign_one_is_refused(fault: str) -> None:
    """In words for a teacher; nothing comes out of it, not even a part."""
    whole = _whole()
    wrong = {
        "head": whole.replace(b"--- ", b"--- A", 1),
        "cut": whole[:-17],
        "body": whole[:-1] + bytes([whole[-1] ^ 1]),
        "more": whole + b"x",
        "empty": BEGINS,
        "work": whole.replace(b" 10\n", b" 30\n", 1),
        "kind": whole.replace(b"-> scrypt", b"-> kites", 1),
        "armour": b"-----BEGIN AGE ENCRYPTED FILE-----\nkites\n",
    }[fault]
    assert is_locked(wrong)
    with pytest.raises(InputError, match="Nothing was changed") as refused:
        unlocked(wrong, PHRASE)
    assert not isinstance(refused.value, WrongPassphrase)


@pytest.mark.asvs("V11.4.4")
@pytest.mark.parametrize(
    ("works", "made"), [((17,), 17), ((21, 9, 18), 18), ((9,) * 9, 9)], ids=["at once", "busy", "slow"]
)
def test_the_work_is_measured_once_more_where_it_was_measured_wrongly(
    book: Store, monkeypatch: pytest.MonkeyPatch, works: tuple[int, ...], made: int
) -> None:
    """Too little is taken after some tries: the machine is slow. Too much never: it could not be opened."""
    head = BEGINS + b"-> scrypt c2FsdHNhbHRzYWx0c2FsdA %d\n"
    measured = iter(works)
    monkeypatch.setattr(
        "onewhole.desk.keep.locked_backup.passphrase.encrypt", lambda *_: head % next(measured)
    )
    assert locked_bytes(book, PHRASE) == head % made
    measured = iter((21,) * 9)
    with pytest.raises(Fault):
        locked_bytes(book, PHRASE)


def test_a_passphrase_is_long_and_typed_twice_alike() -> None:
    """Twelve characters at least, as a password has."""
    assert check_passphrase(PHRASE, PHRASE) == PHRASE
    for typed, again, said in (
        ("six kites", "six kites", "from 12"),
        ("x" * 201, "x" * 201, "to 200"),
        (PHRASE, PHRASE.upper(), "not the same"),
        ("password1234", "password1234", "guessed too easily"),
    ):
        with pytest.raises(InputError, match=said):
            check_passphrase(typed, again)


def test_only_a_plain_file_is_looked_into(tmp_path: Path) -> None:
    """A folder, a pipe that nobody writes, and nothing are no locked backups."""
    (tmp_path / "folder").mkdir()
    (tmp_path / "plain").write_bytes(b"SQLite format 3\0")
    os.mkfifo(tmp_path / "pipe")
    assert not any(is_locked_file(tmp_path / name) for name in ("folder", "plain", "pipe", "none"))
    with pytest.raises(InputError, match="cannot be read"):
        unlocked_file(tmp_path / "none", PHRASE)
