"""Makes a release: `python -m tools.release 0.2.0`. It commits nothing and hands nothing out.

The number stands once, in `src/onewhole/__init__.py`. What stands in `changelog.d` becomes a section of
CHANGELOG.md, written by towncrier, and the bill of materials is made anew.
"""

import re
import subprocess
import sys
from pathlib import Path

from packaging.version import InvalidVersion, Version

from tools.locked import ROOT

_NUMBER = re.compile(r'^__version__ = "([^"]+)"$', re.MULTILINE)
_THERE = Path("src", "onewhole", "__init__.py")


class ReleaseError(ValueError):
    """A release that cannot be made."""


def number(root: Path = ROOT) -> str:
    """Return the number of the release that stands there."""
    found = _NUMBER.search((root / _THERE).read_text(encoding="utf-8"))
    if found is None:
        raise ReleaseError(f"{_THERE} names no version")
    return found[1]


def released(wanted: str, root: Path = ROOT) -> None:
    """Set the number and write the section of the changelog. Raises ReleaseError; then nothing is changed."""
    try:
        is_later = Version(wanted) > Version(number(root))
    except InvalidVersion:
        raise ReleaseError(f"{wanted!r} is no number of a release: write it like 0.2.0") from None
    if not is_later:
        raise ReleaseError(f"{wanted} does not come after {number(root)}")
    if not list((root / "changelog.d").glob("*.md")):
        raise ReleaseError("changelog.d tells of no change: there is nothing to release")
    command = [sys.executable, "-m", "towncrier", "build", "--yes", "--version", wanted]
    ran = subprocess.run(command, cwd=root, capture_output=True, text=True, check=False)
    if ran.returncode:
        raise ReleaseError(ran.stderr or ran.stdout)
    text = (root / _THERE).read_text(encoding="utf-8")
    (root / _THERE).write_text(_NUMBER.sub(f'__version__ = "{wanted}"', text), encoding="utf-8")


def main(typed: list[str]) -> int:
    """Make the release, and say what is left to do by hand; 2 where it cannot be made."""
    if len(typed) != 1:
        print("Say which number: make release VERSION=0.2.0", file=sys.stderr)
        return 2
    try:
        released(typed[0])
    except ReleaseError as no:
        print(no, file=sys.stderr)
        return 2
    print(
        f"{typed[0]} stands in code and CHANGELOG.md. Then make sbom docs test dist-check bundle-check, "
        f"read what changed, git commit, git tag v{typed[0]}, make dist, make bundle ARCHIVE=--archive."
    )
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
