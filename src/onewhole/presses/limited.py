"""A process of its own for what is not trusted: little memory, little time, and it ends when its parent does.

It imports next to nothing, so that the limits stand before a library is loaded.
"""

import os
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from threading import Thread, Timer
from typing import Final

if sys.platform != "win32":
    import resource

#: Seconds that a process may be there, for each second of the processor that it may take.
PATIENCE: Final = 3


@contextmanager
def limited(
    work: Callable[[], None], *arguments: object, memory: int, seconds: int
) -> Iterator[subprocess.Popen[bytes]]:
    """Run a function of a module in a process with so many bytes and seconds of the processor.

    The process has pipes for standard input and output; it is ended at the end of the `with`, after
    `PATIENCE` times the seconds, and when this process ends in any way: its standard input stays open for as
    long as this process lives.
    """
    code = (
        f"import sys; sys.path[:] = {sys.path!r}\n"
        f"from {limit.__module__} import {limit.__name__} as limit; limit({memory}, {seconds})\n"
        f"from {work.__module__} import {work.__name__} as work; work()"
    )
    process = subprocess.Popen(  # noqa: S603 - Python itself, with a module of ours
        [sys.executable, "-c", code, *map(str, arguments)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
    )
    late = Timer(PATIENCE * seconds, process.kill)
    late.start()
    try:
        with suppress(BrokenPipeError), process:  # a process that was ended reads no more
            try:
                yield process
            finally:
                process.kill()
    finally:
        late.cancel()


def limit(memory: int, seconds: int) -> None:
    """Take this process's memory and time of the processor down, where the system knows limits.

    A library of linear algebra that is loaded after this keeps no memory for threads.
    """
    os.environ["OPENBLAS_NUM_THREADS"] = "1"
    if sys.platform != "win32":
        for which, most in (
            (resource.RLIMIT_AS, memory),
            (resource.RLIMIT_CPU, seconds),
            (resource.RLIMIT_CORE, 0),
        ):
            with suppress(ValueError, OSError):
                resource.setrlimit(which, (most, most))


def limit_time(seconds: int) -> None:
    """Give this process so many more seconds of the processor for what comes next, within its limit."""
    if sys.platform != "win32":
        used = resource.getrusage(resource.RUSAGE_SELF)
        _, most = resource.getrlimit(resource.RLIMIT_CPU)
        soft = int(used.ru_utime + used.ru_stime) + 1 + seconds
        with suppress(ValueError, OSError):
            resource.setrlimit(resource.RLIMIT_CPU, (min(soft, most) if most >= 0 else soft, most))


def read(count: int) -> bytes:
    """Read so many bytes of what the parent sends; end this process when the parent is gone before."""
    found = bytearray()
    while len(found) < count:
        piece = os.read(0, min(count - len(found), 1 << 20))
        if not piece:
            os._exit(1)
        found += piece
    return bytes(found)


def end_with_parent() -> None:
    """From now on, end this process when nobody holds the other end of its standard input."""

    def wait() -> None:
        while os.read(0, 1):
            pass
        os._exit(1)

    Thread(target=wait, daemon=True).start()
