"""What of the source is reached from a door, told from the syntax trees alone."""

import ast
import re
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from tests.house.plan import PACKAGE, ROOT, tree

#: Modules that are run by their names and not imported: the verbs, and what the database library reads.
RUN_BY_NAME = ("onewhole.cli.verbs.", "onewhole.store.migrations.")


@dataclass(frozen=True)
class SourceModule:
    """A module: what it defines, what each of its names stands for, and what it takes from other modules."""

    tree: ast.Module
    defined: dict[str, tuple[ast.stmt, ...]]
    imported: dict[str, tuple[str, str]]
    taken: tuple[tuple[str, str], ...]


@cache
def modules() -> dict[str, SourceModule]:
    """Every module of the source by its dotted name."""
    found = {}
    for path in sorted(PACKAGE.rglob("*.py")):
        parts = path.relative_to(PACKAGE.parent).with_suffix("").parts
        name = ".".join(parts[:-1] if parts[-1] == "__init__" else parts)
        found[name] = _module(tree(path))
    return found


def _module(parsed: ast.Module) -> SourceModule:
    defined: dict[str, tuple[ast.stmt, ...]] = {}
    for node in parsed.body:
        for name in _names(node):
            defined[name] = (*defined.get(name, ()), node)
    imported, taken = {}, []
    for one in ast.walk(parsed):
        if isinstance(one, ast.ImportFrom) and one.module and one.module.startswith("onewhole"):
            for alias in one.names:
                imported[alias.asname or alias.name] = (one.module, alias.name)
                taken.append((one.module, alias.name))
    return SourceModule(parsed, defined, imported, tuple(taken))


def _names(node: ast.stmt) -> Iterator[str]:
    """The names that a statement at the top of a module defines."""
    match node:
        case ast.FunctionDef(name=name) | ast.AsyncFunctionDef(name=name) | ast.ClassDef(name=name):
            yield name
        case ast.Assign(targets=targets):
            yield from (one.id for target in targets for one in ast.walk(target) if isinstance(one, ast.Name))
        case ast.AnnAssign(target=ast.Name(id=name)):
            yield name
        case _:
            return


def doors() -> set[tuple[str, str]]:
    """What is called from outside: the commands, the browser door, the acts of the package itself.

    The folder to unpack begins at a place of its own: `tools/bundle/start.py`.
    """
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]
    points = [project["scripts"], *project["entry-points"].values()]
    named = [tuple(point.split(":")) for group in points for point in group.values()]
    acts = [
        (node.module, alias.name)
        for node in ast.walk(modules()["onewhole"].tree)
        if isinstance(node, ast.ImportFrom) and node.module and node.module.startswith("onewhole.desk")
        for alias in node.names
    ]
    by_name = [
        (name, one)
        for name, module in modules().items()
        if name.startswith(RUN_BY_NAME)
        for one in module.defined
    ]
    unpacked = ("onewhole.cli.unpacked", "begin")
    return {(module, name) for module, name in (*named, *acts, *by_name, unpacked)}


def owner(module: str, name: str) -> tuple[str, str] | None:
    """The module and name that a name stands for in a module, where that is a name of ours."""
    known = modules()
    while module in known:
        if name in known[module].defined:
            return module, name
        if name not in known[module].imported:
            return None
        module, name = known[module].imported[name]
    return None


def taken() -> set[tuple[str, str]]:
    """Every name that a module of the source takes from another: imported, or read through the module."""
    found = {one for module in modules().values() for one in module.taken}
    for module in modules().values():
        for node in ast.walk(module.tree):
            if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
                source = module.imported.get(node.value.id)
                if source:
                    found.add((".".join(source), node.attr))
    return found


def passed_on(module: SourceModule) -> tuple[str, ...]:
    """The names in a module's ``__all__`` that it does not define itself."""
    lists = (
        ast.literal_eval(node.value)
        for node in module.defined.get("__all__", ())
        if isinstance(node, ast.Assign)
    )
    return tuple(name for names in lists for name in names if name not in module.defined)


def _mentioned(module: str, node: ast.AST) -> Iterator[tuple[str, str]]:
    """What of ours a node mentions: by its name, through its module, or in an annotation that is a string."""
    for one in ast.walk(node):
        found = None
        match one:
            case ast.Name(id=name):
                found = owner(module, name)
            case ast.Attribute(value=ast.Name(id=name), attr=attribute):
                source = modules()[module].imported.get(name)
                found = owner(".".join(source), attribute) if source else None
            case ast.Constant(value=str() as text) if text.isidentifier():
                found = owner(module, text)
        if found:
            yield found


@cache
def unreached() -> tuple[tuple[str, str], ...]:
    """Every name at the top of a module that no door reaches, by module and name."""
    known = modules()
    todo = list(doors())
    for name, module in known.items():
        for node in module.tree.body:
            if not any(True for _ in _names(node)):
                todo.extend(_mentioned(name, node))
    reached: set[tuple[str, str]] = set()
    while todo:
        here = todo.pop()
        if here not in reached:
            reached.add(here)
            for node in known[here[0]].defined[here[1]]:
                todo.extend(_mentioned(here[0], node))
    every = {(name, one) for name, module in known.items() for one in module.defined}
    return tuple(sorted(one for one in every - reached if not one[1].startswith("__")))


def uncalled() -> Iterator[str]:
    """Every method and property whose name is read nowhere in the source or its templates."""
    read = {word for path in PACKAGE.rglob("*.html") for word in re.findall(r"\w+", path.read_text())}
    for module in modules().values():
        for node in ast.walk(module.tree):
            match node:
                case ast.Attribute(attr=name) | ast.keyword(arg=str() as name):
                    read.add(name)
                case ast.MatchClass(kwd_attrs=names):
                    read.update(names)
                case ast.Constant(value=str() as text):
                    read.add(text)
                case _:
                    pass
    for name, module in modules().items():
        for node in ast.walk(module.tree):
            if isinstance(node, ast.ClassDef):
                methods = (one.name for one in node.body if isinstance(one, ast.FunctionDef))
                yield from (
                    f"{name}.{node.name}.{one}" for one in methods if one not in read and one[:2] != "__"
                )
