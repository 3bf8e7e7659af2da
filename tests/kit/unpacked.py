"""The folder that `make bundle` built, started where no Python is: without a PATH, or in its own root."""

import os
import re
import shutil
import subprocess
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from tests.kit.waiting import GIVE_UP

#: The folder to try, named by whoever built it: `make bundle-check`.
FOLDER = Path(os.environ.get("ONEWHOLE_BUNDLE", ""))
IS_NAMED = "ONEWHOLE_BUNDLE" in os.environ
#: What a system has beside the program: its own C library and nothing else. Debian's places.
_OF_C = (
    "libc.so.6",
    "libm.so.6",
    "libmvec.so.1",
    "libdl.so.2",
    "libz.so.1",
    "libpthread.so.0",
    "librt.so.1",
    "libutil.so.1",
)
_LOADER = Path("/lib64/ld-linux-x86-64.so.2")
_LIBRARIES = Path("/lib/x86_64-linux-gnu")


@dataclass(frozen=True, slots=True)
class Started:
    """A program that runs and told its address; ``said`` is all that it printed until then."""

    process: subprocess.Popen[str]
    address: str
    said: str


def bare(home: Path, **more: str) -> dict[str, str]:
    """Return an environment with a home and no way to any program: PATH is an empty folder."""
    empty = home / "nothing"
    empty.mkdir(parents=True, exist_ok=True)
    return {"HOME": str(home), "PATH": str(empty), **more}


@contextmanager
def started(command: Sequence[str | Path], environment: Mapping[str, str]) -> Iterator[Started]:
    """Start a program that serves, until it told its address; it is ended at last, whatever happens."""
    with subprocess.Popen(
        list(map(str, command)),
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        env=dict(environment),
        cwd="/",
    ) as process:
        try:
            assert process.stdout
            said: list[str] = []
            for line in process.stdout:
                said.append(line)
                if found := re.search(r"http://\S+", line):
                    yield Started(process, found[0], "".join(said))
                    break
            else:
                raise AssertionError("".join(said))
        finally:
            process.kill()


def ended(process: subprocess.Popen[str]) -> int:
    """Wait for the end of a program and return its exit code."""
    return process.wait(GIVE_UP)


def rooted(at: Path) -> list[str]:
    """Lay a root with the folder, the C library, zlib and nothing else; return what starts it there.

    Only the administrator of a machine may: `unshare` and `chroot` are asked.
    """
    for name in ("dev", "proc", "tmp", "home", "lib64", str(_LIBRARIES)[1:]):
        (at / name).mkdir(parents=True, exist_ok=True)
    shutil.copy(_LOADER, at / "lib64")
    for name in _OF_C:
        shutil.copy(_LIBRARIES / name, at / str(_LIBRARIES)[1:])
    shutil.copytree(FOLDER, at / "onewhole", symlinks=True)
    mounted = f"mount --rbind /dev {at}/dev && mount -t proc proc {at}/proc"
    inside = f'{mounted} && exec chroot {at} /onewhole/onewhole "$@"'
    return ["unshare", "--mount", "sh", "-c", inside, "sh"]
