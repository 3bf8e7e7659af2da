"""The plan of the house as pyproject.toml holds it, and the files that stand in it."""

import ast
import subprocess
import tomllib
from collections.abc import Iterable
from functools import cache
from itertools import count
from pathlib import Path

ROOT = Path(__file__).parents[2]
PACKAGE = ROOT / "src" / "onewhole"
PURE_TOP = "5"


@cache
def floors() -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Every floor, top first: its number as the plan says it ("5", "0a", "" for errors.py) and its rooms."""
    contracts = tomllib.loads((ROOT / "pyproject.toml").read_text())["tool"]["importlinter"]["contracts"]
    (layers,) = [contract["layers"] for contract in contracts if contract["id"] == "floors"]
    rooms = [tuple(room.strip(" ()") for room in layer.split("|")) for layer in layers]
    named = ["", "0a", "0b", "1", "2a", "2b", "3a", "3b", "3c"]
    numbers = [*named, *(str(number) for number, _ in zip(count(4), rooms[len(named) :], strict=False))]
    return tuple(zip(reversed(numbers), rooms, strict=True))


def pure_rooms() -> tuple[str, ...]:
    """The rooms of floors 0 to 5, and errors.py."""
    numbers = [number for number, _ in floors()]
    return tuple(room for _, rooms in floors()[numbers.index(PURE_TOP) :] for room in rooms)


def room_files(room: str) -> list[Path]:
    """A room's Python files: one for a room that is a file, none for a room that is not there yet."""
    alone = PACKAGE / f"{room}.py"
    return [alone] if alone.exists() else sorted((PACKAGE / room).rglob("*.py"))


def pure_files() -> list[Path]:
    """Every Python file of the pure heart."""
    return [path for room in pure_rooms() for path in room_files(room)]


def kept_files() -> list[Path]:
    """Every file that is in the repository or would be added to it."""
    listing = subprocess.run(
        ["git", "ls-files", "--cached", "--others", "--exclude-standard", "-z"],  # noqa: S607 - git is on PATH
        cwd=ROOT,
        check=True,
        capture_output=True,
        text=True,
    ).stdout
    return [path for name in listing.split("\0") if name and (path := ROOT / name).is_file()]


def kept_links() -> list[str]:
    """The names of all links that are in the repository: files of mode 120000."""
    listing = subprocess.run(
        ["git", "ls-files", "--stage", "-z"],  # noqa: S607 - git is on PATH
        cwd=ROOT,
        check=True,
        capture_output=True,
        text=True,
    ).stdout
    return [line.partition("\t")[2] for line in listing.split("\0") if line.startswith("120000 ")]


@cache
def tree(path: Path) -> ast.Module:
    """The syntax tree of a file of the source, read once for all tests of this folder."""
    return ast.parse(path.read_text(), filename=str(path))


@cache
def _nodes(path: Path) -> tuple[ast.AST, ...]:
    return tuple(ast.walk(tree(path)))


def nodes(path: Path) -> Iterable[ast.AST]:
    """Every node of a Python file's syntax tree; a file of the source is read once."""
    return _nodes(path) if path.is_relative_to(PACKAGE) else ast.walk(ast.parse(path.read_text()))


def forget_trees() -> None:
    """Let go of the trees: half a million nodes are in the way of every collection of garbage."""
    tree.cache_clear()
    _nodes.cache_clear()


def place(path: Path, node: ast.AST) -> str:
    """A node's place in words: `src/onewhole/number/unit.py:12`."""
    return f"{path.relative_to(ROOT)}:{getattr(node, 'lineno', 1)}"
