"""The packages that onewhole runs with, as installed, and what is known beyond their metadata."""

import json
import re
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from importlib.metadata import Distribution, distribution
from pathlib import Path, PurePosixPath

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from tools.locked import ROOT, RUNTIME, pinned

BY_HAND = ROOT / "tools" / "third_party.toml"
#: A library's file: its name, the checksum that auditwheel puts behind it, its version.
_LIBRARY = re.compile(r"(?P<name>lib[\w-]+?)(-[0-9a-f]{8})*(\.\d+)*\.so(\.(?P<version>[\d.]+[a-z]?))?")
_LICENCE_FILE = re.compile(r"licen[cs]e|copying|notice", re.IGNORECASE)


@dataclass(frozen=True, slots=True, order=True)
class Bundled:
    """A library inside a package: its file, the version where the file's name has one, its project."""

    file: str
    version: str
    project: str
    licence: str
    source: str


@dataclass(frozen=True, slots=True, order=True)
class Crate:
    """A part of a package as the package's own list tells it."""

    name: str
    version: str
    licence: str
    purl: str


@dataclass(frozen=True, slots=True)
class Package:
    """A package: what its metadata tells, what it needs, what is inside, and the texts of its licences."""

    name: str
    version: str
    licence: str
    source: str
    summary: str
    needs: tuple[str, ...]
    bundled: tuple[Bundled, ...]
    crates: tuple[Crate, ...]
    texts: tuple[tuple[str, str], ...]


@cache
def by_hand() -> dict[str, dict[str, dict[str, str]]]:
    """Return what `third_party.toml` holds."""
    return tomllib.loads(BY_HAND.read_text(encoding="utf-8"))


@cache
def packages() -> tuple[Package, ...]:
    """Return what onewhole runs with, as the lock orders it.

    PackageNotFoundError where one is not installed; ValueError where an installed one is of another version
    or something about it is told nowhere.
    """
    locked = pinned(RUNTIME)
    names = frozenset(one.name for one in locked)
    found = []
    for one in locked:
        installed = distribution(one.name)
        if _plain(installed.version) != _plain(one.version):
            raise ValueError(f"{one.name} {installed.version} is installed, and {one.version} is locked")
        found.append(_package(one.name, one.version, installed, names))
    return tuple(found)


def _package(name: str, version: str, installed: Distribution, locked: frozenset[str]) -> Package:
    known = by_hand()["packages"].get(name)
    told = installed.metadata.json.get("license_expression")
    if known is None and told is None:
        raise ValueError(f"{name} tells no licence, and third_party.toml has none for it")
    return Package(
        name,
        version,
        known["licence"] if known else str(told),
        known["source"] if known else "its metadata",
        str(installed.metadata.json.get("summary", "")),
        tuple(sorted(_needs(installed) & locked)),
        tuple(sorted(set(_bundled(name, installed)))),
        tuple(sorted(_crates(installed))),
        tuple(_texts(installed)),
    )


def library(file: str) -> tuple[str, str] | None:
    """Return name and version of a library's file, or None for another file.

    >>> library("av.libs/libx264-d6533a8d.so.165"), library("numpy/linalg.py")
    (('libx264', '165'), None)
    """
    found = _LIBRARY.fullmatch(PurePosixPath(file).name)
    return None if found is None else (found["name"], found["version"] or "")


def libraries(installed: Distribution) -> set[tuple[str, str]]:
    """Return the libraries among a package's files; of a file with several names the longest version."""
    found: dict[str, set[str]] = {}
    for file in installed.files or ():
        if (one := library(str(file))) is not None:
            found.setdefault(one[0], set()).add(one[1])
    return {(name, version) for name, versions in found.items() for version in _longest(versions)}


def _longest(versions: set[str]) -> Iterator[str]:
    """Leave out each version that another begins with: 1 beside 1.52.0."""
    for version in versions:
        if not any(other != version and other.startswith(version) for other in versions):
            yield version


def _bundled(name: str, installed: Distribution) -> Iterator[Bundled]:
    rows = by_hand()["bundled"].get(name, {})
    for file, version in libraries(installed):
        row: dict[str, str] | None = rows.get(file)  # type: ignore[assignment]
        if row is None:
            raise ValueError(f"{name} bundles {file}, and third_party.toml does not tell of it")
        yield Bundled(file, version, row["name"], row["licence"], row["source"])


def _crates(installed: Distribution) -> Iterator[Crate]:
    """Return the Rust crates that the package lists itself (PEP 770: `.dist-info/sboms`)."""
    for file in installed.files or ():
        if file.parent.name == "sboms" and file.suffix == ".json":
            for part in json.loads(file.read_text())["components"]:
                if part.get("purl", "").startswith("pkg:cargo/"):
                    licence = " AND ".join(one.get("expression", "") for one in part.get("licenses", ()))
                    yield Crate(part["name"], part["version"], licence, part["purl"].partition("?")[0])


def _needs(installed: Distribution) -> set[str]:
    """Return what a package needs, whatever the machine and Python; the lock says which of it is there."""
    wanted = (Requirement(line) for line in installed.requires or ())
    return {
        canonicalize_name(one.name) for one in wanted if one.marker is None or "extra" not in str(one.marker)
    }


def _texts(installed: Distribution) -> Iterator[tuple[str, str]]:
    """Return the files of a package's metadata that hold its licences, by their name or their folder's."""
    for file in sorted(installed.files or (), key=str):
        folder, _, inner = str(file).partition("/")
        place = inner.removeprefix("licenses/")
        if folder.endswith(".dist-info") and file.suffix != ".pyc" and _LICENCE_FILE.search(place):
            yield place, _decoded(Path(str(file.locate())).read_bytes())


def _decoded(content: bytes) -> str:
    """Return a text in UTF-8, or of the time before it.

    >>> _decoded("©".encode()), _decoded("©".encode("latin-1"))
    ('©', '©')
    """
    try:
        return content.decode("utf-8")
    except UnicodeDecodeError:
        return content.decode("latin-1")


def _plain(version: str) -> tuple[int | str, ...]:
    """Return a version with its numbers as numbers: 1.006 is 1.6."""
    return tuple(int(part) if part.isdecimal() else part for part in version.split("."))
