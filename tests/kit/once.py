"""What takes long is made once in a run: the processes that share the tests share what one of them makes."""

import hashlib
import os
from collections.abc import Callable
from pathlib import Path
from tempfile import mkdtemp

#: The folder of a run, told by the process that hands out the tests.
FOLDER = "ONEWHOLE_TESTS_MADE"


def begin() -> Path | None:
    """Make the folder of this run; None where another process has made it."""
    if FOLDER in os.environ:
        return None
    folder = Path(mkdtemp(prefix="onewhole-tests-"))
    os.environ[FOLDER] = str(folder)
    return folder


def once(name: str, make: Callable[[], bytes]) -> bytes:
    """Return what `make` gives, made by whoever of the run asks first for this name.

    Two that ask at the same moment both make it, which is the same. Without a run it is made each time.
    """
    if FOLDER not in os.environ:
        return make()
    kept = Path(os.environ[FOLDER], hashlib.sha256(name.encode()).hexdigest())
    if not kept.exists():
        beside = kept.with_suffix(f".{os.getpid()}")
        beside.write_bytes(make())
        beside.replace(kept)
    return kept.read_bytes()
