"""PyInstaller, asked to build the folder."""

import shutil
from pathlib import Path

from PyInstaller.__main__ import run

from tools.locked import ROOT

SPEC = ROOT / "tools" / "bundle" / "onewhole.spec"
#: Where what is built goes; nothing of it is kept in the repository.
BUILT = ROOT / "build" / "bundle"


def build(to: Path = BUILT) -> Path:
    """Build the folder anew and return it. SystemExit where PyInstaller refuses."""
    folder = to / "onewhole"
    shutil.rmtree(folder, ignore_errors=True)
    run(
        [
            str(SPEC),
            "--noconfirm",
            "--log-level=ERROR",
            f"--distpath={to}",
            f"--workpath={to / 'work'}",
        ]
    )
    return folder
