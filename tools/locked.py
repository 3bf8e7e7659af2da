"""What the locks pin: every package with its version and the checksums of its files."""

import re
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).parents[1]
#: What an installed onewhole runs with, what builds it, and what tests it.
RUNTIME, BUILD, DEVELOPMENT = (ROOT / f"requirements{part}.lock" for part in ("", "-build", "-dev"))
_PINNED = re.compile(
    r"(?P<name>[a-z0-9][a-z0-9-]*)==(?P<version>[0-9][0-9A-Za-z.!+]*)(?P<sums>( --hash=sha256:[0-9a-f]{64})+)"
)


@dataclass(frozen=True, slots=True)
class Pinned:
    """A package as a lock pins it."""

    name: str
    version: str
    checksums: frozenset[str]

    def __post_init__(self) -> None:
        """Refuse a package without a checksum: pip would take any file for it."""
        if not self.checksums:
            raise ValueError(f"{self.name} has no checksum")


def pinned(lock: Path) -> tuple[Pinned, ...]:
    """Return the packages of a lock in their order. ValueError for a line that is anything else.

    >>> [one.name for one in pinned(RUNTIME)][:2]
    ['alembic', 'annotated-doc']
    """
    return tuple(_read(line) for line in _joined(lock.read_text(encoding="utf-8")))


def _joined(text: str) -> list[str]:
    """Return the entries, each on one line; remarks and empty lines are left out."""
    lines = re.sub(r" \\\n *", " ", text).splitlines()
    return [line for line in lines if line and not line.startswith("#")]


def _read(line: str) -> Pinned:
    found = _PINNED.fullmatch(line)
    if found is None:
        raise ValueError(f"not a package, its version and its checksums: {line[:80]!r}")
    checksums = frozenset(found["sums"].replace("--hash=", "").split())
    return Pinned(found["name"], found["version"], checksums)
