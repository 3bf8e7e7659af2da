"""A backup locked with a passphrase: the age format, which other programs open too.

Source of the format: the page "age-encryption.org/v1" of the C2SP project (scrypt, HKDF, ChaCha20-Poly1305).
Only the backup is locked that a teacher saves elsewhere: those beside the class's file lie where that lies.
"""

import re
from pathlib import Path
from unicodedata import normalize

from pyrage import DecryptError, passphrase

from onewhole.desk.keep.backups import check_free
from onewhole.desk.keep.guessing import check_hard_to_guess
from onewhole.desk.keep.password import LEAST, MOST
from onewhole.errors import Fault, InputError
from onewhole.presses.files import write
from onewhole.presses.texts import read_text
from onewhole.store.keeping import backup_bytes
from onewhole.store.opening import Store

#: How a locked backup begins. One written as text is told as locked, and refused.
_BEGINS, _ARMOUR = b"age-encryption.org/v1\n", b"-----BEGIN AGE ENCRYPTED FILE-----"
#: The line of the head that says how much work the passphrase is made to cost: a power of two, times 1 KiB of
#: memory (scrypt, RFC 7914).
_WORK = re.compile(rb"-> scrypt [A-Za-z0-9+/]+ (\d{1,2})\n")
#: The least work taken without a second try, and the most that is opened: 1 GiB of memory. The library
#: measures for each backup anew what takes a second, and may measure wrongly on a busy machine.
_LEAST_WORK, MOST_WORK = 15, 20
_TRIES = 5

#: How the name of a locked backup ends.
ENDING = ".age"
#: The most bytes of a backup that is handed in.
LARGEST = 256 * 1024 * 1024

#: What is told before a passphrase is chosen.
FORGOTTEN = (
    "The passphrase is kept nowhere. Who forgets it cannot open this backup any more, and nobody else can "
    "either: there is no other way in. The class itself is not locked by it. Write the passphrase down and "
    "put it where the backup is not."
)


class WrongPassphrase(InputError):
    """A passphrase that does not open a locked backup."""


def check_passphrase(typed: str, again: str) -> str:
    """Return a passphrase that was typed twice. Raises InputError.

    >>> check_passphrase("six kites over the hill", "six kites over the hill")
    'six kites over the hill'
    """
    if not LEAST <= len(typed) <= MOST:
        raise InputError(
            f"A passphrase has from {LEAST} to {MOST} characters",
            remedy="Take a few words that nobody would guess; spaces count.",
        )
    if typed != again:
        raise InputError("The two were not the same", remedy="Type the passphrase twice, once more.")
    check_hard_to_guess(typed)
    return typed


def locked_bytes(book: Store, typed: str) -> bytes:
    """Return a backup locked with a passphrase; nothing of it stays on the disk. Raises StoreRefused."""
    plain, secret = backup_bytes(book), normalize("NFC", typed)
    locked: bytes = passphrase.encrypt(plain, secret)
    for _ in range(_TRIES):
        if _LEAST_WORK <= _work(locked) <= MOST_WORK:
            break
        locked = passphrase.encrypt(plain, secret)
    if _work(locked) > MOST_WORK:
        msg = "a backup would be locked with more work than is opened here"
        raise Fault(msg)
    return locked


def _work(content: bytes) -> int:
    """Return the work that the head asks for; 0 where it says none."""
    found = _WORK.search(content[:200])
    return 0 if found is None else int(found[1])


def back_up_locked(book: Store, path: Path, typed: str) -> None:
    """Write a locked backup into one new file. Raises StoreRefused, also where the name is taken."""
    check_free(path)
    write(path, locked_bytes(book, typed), private=True)


def passphrase_in(path: Path) -> str:
    """Return the first line of a text file, which holds a passphrase. Raises InputError."""
    return read_text(path).partition("\n")[0].removesuffix("\r")


def is_locked(content: bytes) -> bool:
    """Say whether these bytes, or the first of them, are those of a locked backup."""
    return content.startswith((_BEGINS, _ARMOUR))


def is_locked_file(path: Path) -> bool:
    """Say whether a plain file is a locked backup; False for one that cannot be read."""
    try:
        if not path.is_file():
            return False
        with path.open("rb") as file:
            return is_locked(file.read(64))
    except OSError:
        return False


def unlocked_file(path: Path, typed: str) -> bytes:
    """Return the backup in a locked file. Raises WrongPassphrase, InputError."""
    try:
        if path.stat().st_size > LARGEST:
            raise InputError("The file is too large to be a backup", file=str(path), remedy="Choose another.")
        return unlocked(path.read_bytes(), typed)
    except OSError as error:
        raise InputError(
            f"The file cannot be read: {error.strerror or error}",
            file=str(path),
            remedy="See that you may read it.",
        ) from error


def unlocked(content: bytes, typed: str) -> bytes:
    """Return a backup unlocked, from memory to memory. It takes a second or so, on purpose.

    Raises WrongPassphrase, and InputError for bytes that are torn, changed, or locked in another way.
    """
    if not typed:
        raise WrongPassphrase("This backup is locked", remedy="Type the passphrase that it was locked with.")
    torn = InputError(
        "This locked backup is torn, was changed, or is not locked with a passphrase as we do it",
        remedy="Take another one. Nothing was changed.",
    )
    if content.startswith(_ARMOUR) or not 0 < _work(content) <= MOST_WORK:
        raise torn
    try:
        plain: bytes = passphrase.decrypt(content, normalize("NFC", typed))
    except DecryptError as error:
        if str(error) == "Decryption failed":
            raise WrongPassphrase(
                "The passphrase does not open this backup",
                remedy="Type it once more: capitals and spaces count. Nothing was changed.",
            ) from error
        if "Excessive work" in str(error):
            raise InputError(
                "This machine is too busy, or too slow, to open this locked backup",
                remedy="Close what else is running and do it again. Nothing was changed.",
            ) from error
        raise torn from error
    return plain
