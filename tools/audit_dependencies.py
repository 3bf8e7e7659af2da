"""Asks the index of packages for known faults of what the locks pin: `make audit-dependencies`.

Ends with 0 when every package was looked up and none has a known fault, 1 when one has, and 2 when the index
does not tell: pip-audit alone would call that "no known vulnerabilities".
"""

import json
import subprocess
import sys
from pathlib import Path
from typing import TypedDict

from tools.locked import DEVELOPMENT, RUNTIME


class Fault(TypedDict):
    """A known fault of a package."""

    id: str
    fix_versions: list[str]


class Dependency(TypedDict, total=False):
    """A package in the report of pip-audit: with its faults, or with why it was not looked up."""

    name: str
    version: str
    vulns: list[Fault]
    skip_reason: str


class Report(TypedDict):
    """The report of pip-audit (`--format json`)."""

    dependencies: list[Dependency]


def told(report: Report) -> tuple[int, list[str]]:
    """Return how the audit ends and what it says.

    >>> told({"dependencies": [{"name": "rich", "version": "15.0.0", "vulns": []}]})
    (0, ['1 package looked up: no known fault.'])
    """
    packages = report["dependencies"]
    known = [one for one in packages if "skip_reason" not in one]
    lines = [
        f"{one['name']} {one['version']}: {fault['id']}, {_mended(fault)}"
        for one in known
        for fault in one["vulns"]
    ]
    looked_up = f"{len(known)} package{'' if len(known) == 1 else 's'} looked up"
    if len(known) < len(packages):
        missing = len(packages) - len(known)
        lines.append(f"{looked_up}; on {missing} this machine's index of packages tells nothing.")
        lines.append("Try again on a machine that reaches the public index.")
    elif not lines:
        lines.append(f"{looked_up}: no known fault.")
    return (1 if any(one["vulns"] for one in known) else 2 if len(known) < len(packages) else 0), lines


def _mended(fault: Fault) -> str:
    releases = fault["fix_versions"]
    return f"mended in {', '.join(releases)}" if releases else "mended in no release yet"


def audit(lock: Path) -> tuple[int, list[str]]:
    """Look up what a lock pins."""
    asked = [
        str(Path(sys.executable).with_name("pip-audit")),
        *("--format", "json", "--progress-spinner", "off"),
        *("--disable-pip", "--require-hashes", "--requirement", str(lock)),
    ]
    ran = subprocess.run(asked, capture_output=True, text=True, check=False)  # noqa: S603 - our own tool and lock
    if not ran.stdout.strip():
        said = ran.stderr.strip().splitlines()[-1:]
        return 2, ["The index of packages did not answer. Try again later.", *said]
    return told(json.loads(ran.stdout))


def main() -> int:
    """Look up both locks; return the worse ending: a fault above not knowing."""
    codes = set()
    for lock in (RUNTIME, DEVELOPMENT):
        code, lines = audit(lock)
        print(f"{lock.name}:", *lines, sep="\n  ")
        codes.add(code)
    return 1 if 1 in codes else max(codes)


if __name__ == "__main__":
    sys.exit(main())
