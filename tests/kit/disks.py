"""A disk that is soon full."""

import shutil
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest


@contextmanager
def small_disk(folder: Path, kib: int) -> Iterator[Path]:
    """A disk of its own, so many KiB large; skipped where one may not mount."""
    mount, umount = shutil.which("mount"), shutil.which("umount")
    disk = folder / "disk"
    disk.mkdir()
    command = [mount or "mount", "-t", "tmpfs", "-o", f"size={kib}k,mode=700", "tmpfs", str(disk)]
    if not (mount and umount) or subprocess.run(command, capture_output=True, check=False).returncode:
        pytest.skip("a small disk of its own cannot be mounted by this user")
    try:
        yield disk
    finally:
        subprocess.run([umount or "umount", "--lazy", str(disk)], check=True)
