"""The pages of the code: each pure room, its public classes and functions with what they promise."""

import ast
import re
from collections.abc import Iterator
from inspect import cleandoc
from pathlib import Path

from tools.locked import ROOT

PACKAGE = ROOT / "src" / "onewhole"
#: The rooms without input and output, lowest first, and marking: what another program may call.
ROOMS = (
    "number", "statements", "working", "sentences", "pictures", "misconceptions", "findings", "problems",
    "languages", "notations", "sheets", "marking",
)  # fmt: skip
_ROLE = re.compile(r":(?:func|class|meth|mod|exc|attr):`~?([^`]+)`")


def write_api(to: Path) -> list[str]:
    """Write a page a room and an index; return their names."""
    (to / "api").mkdir(parents=True, exist_ok=True)
    rows = []
    for room in ROOMS:
        page = "\n".join(_room(room))
        (to / "api" / f"{room}.md").write_text(page, encoding="utf-8")
        rows.append(f"- [`onewhole.{room}`]({room}.md): {_first(_parsed(PACKAGE / room / '__init__.py'))}")
    head = (
        "# The code\n\nThe rooms that another program may call, made from the docstrings. "
        "The acts of a teacher from Python are on [a page of their own](../docs/python.md).\n\n"
    )
    (to / "api" / "index.md").write_text(head + "\n".join(rows) + "\n", encoding="utf-8")
    return ["api/index.md", *(f"api/{room}.md" for room in ROOMS)]


def _parsed(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def _first(node: ast.Module) -> str:
    return (ast.get_docstring(node) or "").partition("\n")[0]


def _room(room: str) -> Iterator[str]:
    yield from (f"# onewhole.{room}", "")
    yield from _told(_parsed(PACKAGE / room / "__init__.py"))
    for path in sorted((PACKAGE / room).rglob("*.py")):
        if path.name.startswith("_"):
            continue
        parsed = _parsed(path)
        public = [node for node in parsed.body if _is_public(node)]
        if public:
            place = path.relative_to(PACKAGE.parent).with_suffix("").as_posix().replace("/", ".")
            yield from (f"## {place}", "")
            yield from _told(parsed)
            for node in public:
                yield from _entry(node)


def _is_public(node: ast.AST) -> bool:
    return isinstance(node, ast.ClassDef | ast.FunctionDef) and not node.name.startswith("_")


def _entry(node: ast.AST, of: str = "") -> Iterator[str]:
    assert isinstance(node, ast.ClassDef | ast.FunctionDef), "only these are public"
    level = "####" if of else "###"
    yield from (f"{level} {of}{node.name}", "", "```python", _signature(node), "```", "")
    yield from _told(node)
    if isinstance(node, ast.ClassDef):
        for inner in node.body:
            if _is_public(inner):
                yield from _entry(inner, f"{node.name}.")


def _signature(node: ast.ClassDef | ast.FunctionDef) -> str:
    if isinstance(node, ast.FunctionDef):
        gives = f" -> {ast.unparse(node.returns)}" if node.returns else ""
        return f"def {node.name}({ast.unparse(node.args)}){gives}"
    bases = f"({', '.join(map(ast.unparse, node.bases))})" if node.bases else ""
    fields = [f"    {ast.unparse(one)}" for one in node.body if isinstance(one, ast.AnnAssign)]
    return "\n".join([f"class {node.name}{bases}:" if fields else f"class {node.name}{bases}", *fields])


def _told(node: ast.Module | ast.ClassDef | ast.FunctionDef) -> Iterator[str]:
    """Yield a docstring as the site shows it: what is tried stands in a block of code."""
    inside = False
    for line in cleandoc(ast.get_docstring(node) or "").splitlines():
        starts = line.startswith((">>> ", "... "))
        if starts and not inside:
            yield "```python"
        elif inside and not line.strip():
            yield "```"
        inside = starts or (inside and bool(line.strip()))
        yield line if inside else _plain(line)
    if inside:
        yield "```"
    yield ""


def _plain(line: str) -> str:
    """Return a line of a docstring in Markdown: what stands in angle brackets is no tag."""
    said = _ROLE.sub(r"`\1`", line).replace("``", "`")
    return "".join(
        part
        if at % 2
        else part.replace("<", "&lt;").replace("*", r"\*").replace("_", r"\_").replace("[", r"\[")
        for at, part in enumerate(re.split(r"(`[^`]*`)", said))
    )
