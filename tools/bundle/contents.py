"""What lies in a folder that was built: each file and each module of Python, and whose it is."""

import sys
from collections.abc import Iterator
from dataclasses import dataclass
from importlib.metadata import distribution
from pathlib import Path, PurePosixPath

from packaging.utils import canonicalize_name
from PyInstaller.archive.readers import CArchiveReader

from tools.bundle.parts import kept, of_module
from tools.locked import RUNTIME, pinned
from tools.third_party import by_hand, library

#: Whose the parts of Python itself are, and those of the program that starts it.
PYTHON, STARTER = "Python", "PyInstaller"


@dataclass(frozen=True, slots=True)
class Contents:
    """Whose the parts are: packages of the lock, libraries of the system by the start of their names.

    ``unknown`` are files and modules of which nobody has said whose they are.
    """

    packages: frozenset[str]
    libraries: frozenset[str]
    unknown: tuple[str, ...]
    files: int
    bytes: int


def contents(folder: Path) -> Contents:
    """Return what lies in a built folder. Every link leads to a file that is looked at by its own name."""
    inner = folder / "_internal"
    files = [path for path in sorted(inner.rglob("*")) if path.is_file() and not path.is_symlink()]
    packages, libraries, unknown = set[str](), set[str](), list[str]()
    owners = _owners()
    for path in files:
        place = path.relative_to(inner).as_posix()
        owner = owners.get(place) or _of_folder(place)
        if owner is not None:
            packages.add(owner)
        elif (name := _of_system(place)) is not None:
            libraries.add(name)
        else:
            unknown.append(place)
    of = of_module()
    for module in sorted({name.partition(".")[0] for name in _modules(folder / _program(folder))}):
        found = of.get(module, frozenset()) & kept()
        if found:
            packages |= found
        elif module not in sys.stdlib_module_names and not _is_of_python(module):
            unknown.append(f"module {module}")
    size = sum(path.stat().st_size for path in folder.rglob("*") if path.is_file() and not path.is_symlink())
    return Contents(frozenset(packages), frozenset(libraries), tuple(unknown), len(files), size)


def _program(folder: Path) -> str:
    return "onewhole.exe" if (folder / "onewhole.exe").exists() else "onewhole"


def _modules(program: Path) -> Iterator[str]:
    """Return the modules of Python that are packed into the program."""
    archive = CArchiveReader(str(program))
    for name in archive.toc:
        if name.startswith("PYZ"):
            yield from archive.open_embedded_archive(name).toc


def _is_of_python(module: str) -> bool:
    """Say whether a module is Python's own though it is not listed: its build's settings, PyInstaller's."""
    return module.startswith(("_sysconfigdata", "_pyi", "pyi", "__main__", "PyInstaller"))


def _owners() -> dict[str, str]:
    """Return the packages by the files that they installed."""
    return {
        PurePosixPath(str(file)).as_posix(): one.name
        for one in pinned(RUNTIME)
        for file in distribution(one.name).files or ()
    }


def _of_folder(place: str) -> str | None:
    """Return whose a file is by its folder: our own, Python's, and what a package's metadata became."""
    first = place.partition("/")[0]
    if first == "onewhole" or first.startswith("onewhole-"):
        return "onewhole"
    if first.startswith("python3") or first in {"base_library.zip", "lib-dynload"}:
        return PYTHON
    if first.endswith(".dist-info") and (name := canonicalize_name(first.split("-")[0])) in kept():
        return name
    return None


def _of_system(place: str) -> str | None:
    """Return the name of a library of the system, of which a line of `third_party.toml` tells."""
    found = library(place)
    name = found[0] if found else PurePosixPath(place).name.partition(".")[0]
    return next((known for known in by_hand()["system"] if name == known), None)
