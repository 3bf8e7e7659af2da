"""The school's key: with it alone a pupil's hash can be made again, and it never leaves the school."""

import hashlib
import hmac
import secrets
from pathlib import Path

from onewhole.errors import InputError
from onewhole.presses.files import write

#: How the file of the key is called where none is named: beside the file of the class.
KEY_FILE = "school.key"
#: Bytes of a key, and of a hash: half of what SHA-256 gives, which RFC 2104 (section 5) lets stand.
KEY_BYTES, HASH_BYTES = 32, 16


def school_key(path: Path) -> bytes:
    """Return the key in a file; where there is no file, one is made by chance, for its owner alone.

    Raises InputError for a file that is no key, and FileRefused.
    """
    if not path.exists():
        write(path, f"{secrets.token_hex(KEY_BYTES)}\n".encode(), private=True)
    try:
        key = bytes.fromhex(path.read_text(encoding="ascii"))
    except (OSError, ValueError) as refused:
        raise _no_key(path) from refused
    if len(key) != KEY_BYTES:
        raise _no_key(path)
    return key


def pupil_hash(key: bytes, *names: str) -> str:
    """Return what stands for a pupil: HMAC-SHA-256 (RFC 2104) of school, class and code, the first half.

    >>> one, other = (pupil_hash(bytes(32), "Elm", "Room 12", code) for code in ("K01", "K02"))
    >>> len(one), one == other
    (32, False)
    """
    told = b"".join(len(part).to_bytes(4, "big") + part for part in (name.encode() for name in names))
    return hmac.new(key, told, hashlib.sha256).digest()[:HASH_BYTES].hex()


def _no_key(path: Path) -> InputError:
    remedy = f"Name the school's own file, or one that is not there yet: a key of {KEY_BYTES} bytes is made."
    return InputError("This file holds no key of a school", where=str(path), remedy=remedy)
