"""The page "Try and check", made as a folder of files that any server of files can show."""

import json
import re
import shutil
from importlib.resources import files
from importlib.util import find_spec
from pathlib import Path
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from tools.locked import ROOT

HERE = Path(__file__).parent
BUILT = ROOT / "build" / "try-page"
#: What of Pyodide a page without further packages needs. Source: "Deploying Pyodide" of its documentation.
PYTHON = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "python_stdlib.zip", "pyodide-lock.json")
#: The rooms that the page asks, and what they ask themselves: only Python, and none of the system.
ROOMS = (
    "errors.py", "number", "statements", "working", "sentences", "pictures", "misconceptions", "findings",
    "problems", "languages", "notations", "sheets", "marking",
)  # fmt: skip
#: Kinds of files that Python reads there.
_READ = frozenset({".py", ".csv", ".toml", ".txt"})
_LETTERS = re.compile(r'url\("letters/([^"]+)"\)')


def build(to: Path = BUILT) -> Path:
    """Make the folder anew and return it. FileNotFoundError where `npm ci` has not fetched Pyodide."""
    shutil.rmtree(to, ignore_errors=True)
    (to / "python").mkdir(parents=True)
    for name in PYTHON:
        shutil.copy(ROOT / "node_modules" / "pyodide" / name, to / "python")
    for name in ("try.css", "try.js"):
        shutil.copy(HERE / name, to)
    shutil.copy(HERE / "page.html", to / "index.html")
    static = Path(str(files("onewhole.web") / "static"))
    shutil.copy(static / "kite.svg", to)
    (to / "look.css").write_text(_with_letters(to, static / "look.css"), encoding="utf-8")
    pack(to / "onewhole.zip")
    return to


def _with_letters(to: Path, look: Path) -> str:
    """Return the look of all pages, and copy the letters that it asks for beside it."""
    text = look.read_text(encoding="utf-8")
    (to / "letters").mkdir()
    for name in set(_LETTERS.findall(text)):
        for package in ("fontpkg_lexend", "fontpkg_atkinson_hyperlegible"):
            letters = Path(str(files(package) / "files" / name))
            if letters.exists():
                shutil.copy(letters, to / "letters")
    return text


def pack(goal: Path) -> None:
    """Pack what Python reads: the rooms, number words, how records are made, and what the page asks."""
    package = ROOT / "src" / "onewhole"
    found = {package / "__init__.py": "onewhole/__init__.py", HERE / "trying.py": "trying.py"}
    for room in ROOMS:
        of_room = [package / room] if room.endswith(".py") else sorted((package / room).rglob("*"))
        found |= {path: f"onewhole/{path.relative_to(package).as_posix()}" for path in of_room}
    spec = find_spec("num2words")
    assert spec is not None, "it is installed: the English words of numbers are its own"
    assert spec.origin is not None, "it lies on the disk"
    words = Path(spec.origin).parent
    found |= {path: f"num2words/{path.name}" for path in sorted(words.glob("*.py"))}
    found |= {path: f"msgspec/{path.name}" for path in sorted((HERE / "in_python").glob("*.py"))}
    with ZipFile(goal, "w") as packed:
        for path, name in sorted(found.items(), key=lambda one: one[1]):
            if (
                path.is_file()
                and "__pycache__" not in path.parts
                and path.suffix in {".py", ".csv", ".toml", ".txt"}
            ):
                packed.writestr(ZipInfo(name), path.read_bytes(), compress_type=ZIP_DEFLATED)


def python_version() -> str:
    """Return the version of Pyodide that is pinned."""
    told: dict[str, dict[str, str]] = json.loads((ROOT / "package.json").read_text(encoding="utf-8"))
    return told["devDependencies"]["pyodide"]
