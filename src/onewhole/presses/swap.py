"""Two names of a folder trade places in one step, where the system can do that."""

import ctypes
import errno
import os
from functools import cache
from pathlib import Path

#: Of `renameat2`, from memory of Linux's own headers: the working folder, and the flag for a trade.
_AT_FDCWD, _RENAME_EXCHANGE = -100, 2
#: What a system says that cannot trade names, or not on this disk.
_CANNOT = {errno.EINVAL, errno.ENOSYS, errno.EOPNOTSUPP, errno.ENOTSUP}


def swapped(one: Path, other: Path) -> bool:
    """Let two names trade what they stand for, at once; False where the system cannot, and nothing changed.

    Raises OSError for anything else that is in the way; nothing changed then either.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     one, other = Path(folder) / "one", Path(folder) / "other"
    ...     _ = one.write_text("kites"), other.write_text("tails")
    ...     traded = swapped(one, other)
    ...     one.read_text() == ("tails" if traded else "kites")
    True
    """
    rename = _renameat2()
    if rename is None:
        return False
    names = os.fsencode(one), os.fsencode(other)
    if rename(_AT_FDCWD, names[0], _AT_FDCWD, names[1], _RENAME_EXCHANGE) == 0:
        return True
    number = ctypes.get_errno()
    if number in _CANNOT:
        return False
    raise OSError(number, os.strerror(number), str(one), None, str(other))


@cache
def _renameat2() -> "ctypes._NamedFuncPointer | None":
    """Return the C library's function; None on a system that has none."""
    try:
        found = ctypes.CDLL(None, use_errno=True).renameat2
    except (OSError, AttributeError, TypeError):
        return None
    found.argtypes = (ctypes.c_int, ctypes.c_char_p, ctypes.c_int, ctypes.c_char_p, ctypes.c_uint)
    found.restype = ctypes.c_int
    return found
