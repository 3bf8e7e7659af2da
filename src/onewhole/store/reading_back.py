"""A file read back from the disk: what was written is compared with what the disk gives."""

import os
from contextlib import suppress
from hashlib import blake2b

_AT_ONCE = 1 << 20


def digest_of(handle: int) -> bytes:
    """Digest the whole of an open file, BLAKE2b, as `b2sum` does."""
    digest = blake2b()
    os.lseek(handle, 0, os.SEEK_SET)
    while read := os.read(handle, _AT_ONCE):
        digest.update(read)
    return digest.digest()


def read_back(handle: int) -> bytes:
    """Digest a file that was put on the disk, as the disk gives it and not the memory that stands before it.

    Where the system cannot be asked to forget that memory, or the disk is memory, it is read all the same.
    """
    if hasattr(os, "posix_fadvise"):
        with suppress(OSError):
            os.posix_fadvise(handle, 0, 0, os.POSIX_FADV_DONTNEED)
    return digest_of(handle)
