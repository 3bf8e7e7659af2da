"""The password of a door that other machines can reach: its hash is kept beside the file of the class."""

from pathlib import Path
from unicodedata import normalize

from argon2 import PasswordHasher
from argon2.exceptions import InvalidHashError, VerificationError, VerifyMismatchError

from onewhole.desk.keep.guessing import check_hard_to_guess
from onewhole.errors import InputError, OnewholeError
from onewhole.presses.files import write

#: A password has so many characters at least, so many at most. Common practice, from memory.
LEAST, MOST = 12, 200
#: Argon2id with the library's own costs (RFC 9106, the choice for little memory).
_HASHER = PasswordHasher()


class PasswordRefused(OnewholeError, OSError):
    """The file with the password's hash cannot be used."""


def password_file(path: Path) -> Path:
    """Return where the hash of the password is kept: beside the file of the class, never in its backups.

    >>> password_file(Path("school/room12.class")).as_posix()
    'school/room12.class.password'
    """
    return path.with_name(f"{path.name}.password")


def set_password(path: Path, typed: str) -> None:
    """Keep the Argon2id hash of a password, mode 0600. Raises InputError, FileRefused.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     book = Path(folder) / "room12.class"
    ...     set_password(book, "six kites over the hill")
    ...     is_password(book, "six kites over the hill"), is_password(book, "seven kites")
    (True, False)
    """
    if not LEAST <= len(typed) <= MOST:
        raise InputError(
            f"A password has from {LEAST} to {MOST} characters",
            remedy="Take a few words that nobody would guess; spaces count.",
        )
    check_hard_to_guess(typed, (path.stem,))
    write(password_file(path), f"{_HASHER.hash(normalize('NFC', typed))}\n".encode(), private=True)


def has_password(path: Path) -> bool:
    """Say whether a password was set for the file of a class."""
    try:
        return password_file(path).stat().st_size > 0
    except OSError:
        return False


def is_password(path: Path, typed: str) -> bool:
    """Say whether this is the password. It takes a tenth of a second or so, on purpose.

    Raises PasswordRefused when the file with the hash cannot be read.
    """
    if len(typed) > MOST:
        return False
    try:
        kept = password_file(path).read_text(encoding="ascii").strip()
        return _HASHER.verify(kept, normalize("NFC", typed))
    except VerifyMismatchError:
        return False
    except (OSError, ValueError, InvalidHashError, VerificationError) as error:
        raise PasswordRefused(
            "The password that was set cannot be read",
            remedy="Set it again with --set-password on the machine that serves.",
        ) from error
