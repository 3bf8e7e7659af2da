"""The age format once more, in plain Python and slow: a second road to what is locked with a passphrase.

Sources, from memory: the page "age-encryption.org/v1" of the C2SP project; RFC 7914 (scrypt), RFC 5869
(HKDF), RFC 8439 (ChaCha20-Poly1305, whose own example is checked in `tests/desk/keep/test_locked_backup.py`).
"""

import hmac
import struct
from base64 import b64decode, b64encode
from hashlib import scrypt, sha256

import pytest

BEGINS = b"age-encryption.org/v1\n"
CHUNK = 64 * 1024
QUICK = 10
_MASK = 0xFFFFFFFF


def age_lock(
    plain: bytes, passphrase: str, *, salt: bytes, file_key: bytes, nonce: bytes, log_n: int
) -> bytes:
    """Lock bytes; the salt, the key and the nonce are the caller's, 16 bytes each."""
    wrapped = seal(_wrap_key(passphrase, salt, log_n), bytes(12), file_key)
    head = BEGINS + b"-> scrypt %s %d\n%s\n---" % (_b64(salt), log_n, _b64(wrapped))
    head += b" " + _b64(hmac.digest(_hkdf(file_key, b"", b"header"), head, "sha256")) + b"\n"
    key = _hkdf(file_key, nonce, b"payload")
    pieces = [plain[at : at + CHUNK] for at in range(0, len(plain), CHUNK)] or [b""]
    last = len(pieces) - 1
    sealed = (seal(key, _counter(at, last=at == last), piece) for at, piece in enumerate(pieces))
    return head + nonce + b"".join(sealed)


def lock_quickly(patch: pytest.MonkeyPatch) -> None:
    """Let backups be locked by this road with little work: a real one takes seconds and much memory."""

    def lock(plain: bytes, passphrase: str) -> bytes:
        return age_lock(plain, passphrase, salt=b"s" * 16, file_key=b"k" * 16, nonce=b"n" * 16, log_n=QUICK)

    patch.setattr("onewhole.desk.keep.locked_backup.passphrase.encrypt", lock)
    patch.setattr("onewhole.desk.keep.locked_backup._LEAST_WORK", QUICK)


def age_open(locked: bytes, passphrase: str) -> bytes:
    """Open what is locked with a passphrase. ValueError for a byte that is not as it was written."""
    first, stanza, wrapped, mac = locked.split(b"\n", 4)[:4]
    head = b"\n".join((first, stanza, wrapped, b"---"))
    _, kind, salt, log_n = stanza.split(b" ")
    if first + b"\n" != BEGINS or kind != b"scrypt":
        raise ValueError(stanza)
    file_key = unseal(_wrap_key(passphrase, _plain(salt), int(log_n)), bytes(12), _plain(wrapped))
    if hmac.digest(_hkdf(file_key, b"", b"header"), head, "sha256") != _plain(mac.removeprefix(b"--- ")):
        raise ValueError(mac)
    rest = locked[len(head) + len(mac) - 3 + 1 :]
    key, body = _hkdf(file_key, rest[:16], b"payload"), rest[16:]
    pieces = [body[at : at + CHUNK + 16] for at in range(0, len(body), CHUNK + 16)]
    return b"".join(
        unseal(key, _counter(at, last=at == len(pieces) - 1), piece) for at, piece in enumerate(pieces)
    )


def seal(key: bytes, nonce: bytes, plain: bytes, more: bytes = b"") -> bytes:
    """ChaCha20-Poly1305: the bytes, and their tag of 16."""
    hidden = _chacha(key, nonce, plain)
    return hidden + _tag(key, nonce, hidden, more)


def unseal(key: bytes, nonce: bytes, sealed: bytes, more: bytes = b"") -> bytes:
    """Open it again. ValueError where the tag is another one."""
    hidden, tag = sealed[:-16], sealed[-16:]
    if _tag(key, nonce, hidden, more) != tag:
        raise ValueError(tag)
    return _chacha(key, nonce, hidden)


def _wrap_key(passphrase: str, salt: bytes, log_n: int) -> bytes:
    label = b"age-encryption.org/v1/scrypt"
    return scrypt(
        passphrase.encode(), salt=label + salt, n=1 << log_n, r=8, p=1, maxmem=(1 << 31) - 2, dklen=32
    )


def _hkdf(key: bytes, salt: bytes, info: bytes) -> bytes:
    """One block of HKDF-SHA-256."""
    return hmac.digest(hmac.digest(salt or bytes(32), key, "sha256"), info + b"\1", sha256)


def _counter(at: int, *, last: bool) -> bytes:
    return at.to_bytes(11, "big") + bytes([last])


def _b64(content: bytes) -> bytes:
    return b64encode(content).rstrip(b"=")


def _plain(text: bytes) -> bytes:
    return b64decode(text + b"=" * (-len(text) % 4))


def _chacha(key: bytes, nonce: bytes, content: bytes) -> bytes:
    stream = b"".join(_block(key, nonce, 1 + at) for at in range(-(-len(content) // 64)))
    return bytes(one ^ other for one, other in zip(content, stream, strict=False))


def _block(key: bytes, nonce: bytes, counter: int) -> bytes:
    state = [*struct.unpack("<4I", b"expand 32-byte k"), *struct.unpack("<8I", key), counter]
    state += struct.unpack("<3I", nonce)
    mixed = state.copy()
    columns = ((0, 4, 8, 12), (1, 5, 9, 13), (2, 6, 10, 14), (3, 7, 11, 15))
    diagonals = ((0, 5, 10, 15), (1, 6, 11, 12), (2, 7, 8, 13), (3, 4, 9, 14))
    for _ in range(10):
        for four in (*columns, *diagonals):
            _quarter(mixed, *four)
    return struct.pack("<16I", *((one + other) & _MASK for one, other in zip(mixed, state, strict=True)))


def _quarter(state: list[int], a: int, b: int, c: int, d: int) -> None:
    for to, plus, turned, by in ((a, b, d, 16), (c, d, b, 12), (a, b, d, 8), (c, d, b, 7)):
        state[to] = (state[to] + state[plus]) & _MASK
        crossed = state[turned] ^ state[to]
        state[turned] = (crossed << by | crossed >> (32 - by)) & _MASK


def _tag(key: bytes, nonce: bytes, hidden: bytes, more: bytes) -> bytes:
    """Poly1305 over what is beside, what is hidden, and both lengths."""
    once = _block(key, nonce, 0)[:32]
    r = int.from_bytes(once[:16], "little") & 0x0FFFFFFC0FFFFFFC0FFFFFFC0FFFFFFF
    padded = b"".join(part + bytes(-len(part) % 16) for part in (more, hidden))
    padded += struct.pack("<QQ", len(more), len(hidden))
    total = 0
    for at in range(0, len(padded), 16):
        total = (total + int.from_bytes(padded[at : at + 16] + b"\1", "little")) * r % ((1 << 130) - 5)
    return ((total + int.from_bytes(once[16:], "little")) & ((1 << 128) - 1)).to_bytes(16, "little")
