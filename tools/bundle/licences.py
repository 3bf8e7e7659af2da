"""The papers of the built folder: its terms, whose sources are to be had, a bill of all that is in it."""

import platform
import sys
from importlib.metadata import version
from pathlib import Path

from onewhole import __version__
from tools.bundle.contents import Contents
from tools.locked import ROOT
from tools.notices import LICENCES, NOTICES
from tools.sbom import Beside, sbom
from tools.third_party import Bundled, Package, by_hand, packages

#: The terms of the folder as a whole: docs/decisions/0064.
TERMS = "GPL-3.0-or-later"
_HERE = Path(__file__).parent


def write_papers(folder: Path, found: Contents) -> None:
    """Write them into the folder."""
    head = (_HERE / "licence.txt").read_text(encoding="utf-8")
    own = (ROOT / "LICENSE").read_text(encoding="utf-8")
    gpl = (LICENCES / "GPL-3.0.txt").read_text(encoding="utf-8")
    line = "\n" + 78 * "-" + "\n\n"
    _write(folder / "LICENCE.txt", line.join((head, own, gpl)))
    _write(folder / "NOTICE.txt", notice(found))
    _write(folder / "sbom.cdx.json", sbom(found.packages, beside(found), licence=TERMS))
    _write(folder / "THIRD-PARTY-NOTICES.md", NOTICES.read_text(encoding="utf-8"))
    told = (_HERE / "read_me_first.txt").read_text(encoding="utf-8")
    _write(folder / "Read me first.txt", told.replace("VERSION", __version__))


def beside(found: Contents) -> tuple[Beside, ...]:
    """Return what is in the folder and no package: Python, libraries of the system, what starts it."""
    known = by_hand()["system"]
    return (
        Beside("Python", platform.python_version(), "PSF-2.0", "LICENSE of Python, from memory"),
        Beside(
            "PyInstaller",
            version("pyinstaller"),
            "GPL-2.0-or-later WITH Bootloader-exception",
            "COPYING.txt of PyInstaller: only what starts the program is in the folder",
        ),
        *(
            Beside(name, "", known[name]["licence"], f"{known[name]['name']}; {known[name]['source']}")
            for name in sorted(found.libraries)
        ),
    )


def notice(found: Contents) -> str:
    """Return the page that names everything in the folder whose source has to be to be had."""
    rows = [
        f"  {row}"
        for package in packages()
        if package.name in found.packages
        for row in (*_of_package(package), *(_of_library(package, one) for one in package.bundled))
        if "GPL" in row
    ]
    system = [f"  {one.name}: {one.licence} ({one.told})" for one in beside(found) if "GPL" in one.licence]
    head = (_HERE / "notice.txt").read_text(encoding="utf-8")
    made = f"Made from onewhole {__version__} with Python {platform.python_version()} on {sys.platform}."
    return "\n".join((head, made, "", *rows, *system, ""))


def _of_package(one: Package) -> list[str]:
    return [f"{one.name} {one.version}: {one.licence}. Source: the package's own release on PyPI."]


def _of_library(package: Package, one: Bundled) -> str:
    number = f", file version {one.version}" if one.version else ""
    return (
        f"{one.project} ({one.file}{number}) in {package.name} {package.version}: {one.licence}. "
        "Source: that project's own releases."
    )


def _write(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8", newline="\n")
