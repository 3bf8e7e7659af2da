"""Floors 0 to 5 know no clock, chance, disk, network or float."""

import ast
import sys
from pathlib import Path

import pytest

from tests.house.plan import PACKAGE, ROOT, nodes, place, pure_files

#: What the pure heart may import besides its own rooms. `math` and `datetime` are narrowed below.
PURE_IMPORTS = frozenset(
    [
        "abc",
        "base64",
        "bisect",
        "collections",
        "collections.abc",
        "contextlib",
        "copy",
        "csv",
        "dataclasses",
        "difflib",
        "enum",
        "fractions",
        "functools",
        "heapq",
        "hashlib",
        "html",
        "importlib.resources",  # files of the package itself, which are part of the code
        "itertools",
        "json",
        "math",
        "msgspec",  # records: made, changed, and read from JSON and back
        "msgspec.structs",
        "num2words",
        "operator",
        "re",
        "segno",  # words as a square code: numbers in, numbers out
        "string",
        "textwrap",
        "types",
        "typing",
        "unicodedata",
        "xml.etree.ElementTree",
        "xml.sax.saxutils",
    ]
)
#: Whole numbers in, whole numbers out; `ceil` and `floor` are exact on the Fractions they are given here.
WHOLE_MATH = frozenset({"ceil", "comb", "factorial", "floor", "gcd", "isqrt", "lcm", "perm", "prod"})
NAMES_FROM = {"math": WHOLE_MATH, "datetime": frozenset({"date"}), "io": frozenset({"StringIO"})}
IMPURE_CALLS = frozenset({"open", "input", "print", "exec", "eval", "compile", "__import__", "breakpoint"})
CLOCK_CALLS = frozenset({"today", "fromtimestamp"})  # of the `date` that may be imported

#: Files whose functions may import, each with its reason.
LATE_IMPORTS = {
    "cli/main.py": "loads the door when a verb was asked for, so that the command answers quickly",
    "languages/table.py": "a language is loaded when something is said in it: most commands speak one",
    "writers/film_link.py": "only a sheet with a film's address waits for what makes its code",
    "presses/listening/listener.py": "the process that listens loads what hears, once its limits stand",
    "presses/listening/scores.py": "the recognizer is an extra: the process that listens loads it",
    "presses/workbook.py": "the process that reads a workbook loads what reads it, once its limits stand",
    "cli/class_option.py": "only who names the file of a class waits for what opens it",
    "cli/verbs/night.py": "only a folder with photos waits for what reads them",
    "desk/paper/press_reading.py": "OpenCV is loaded by who looks at pictures, and by nobody else",
    "desk/district/sharing.py": "only who gives answers to a district waits for what writes Parquet",
    "presses/answer_workbook.py": "only who saves a workbook waits for its library, not the first page",
    "desk/district/running.py": "only who puts a district together waits for Polars and Dask",
    "presses/district/engine.py": "only who asks for a cluster waits for Dask",
    "presses/workbook_writing.py": "only who saves a workbook waits for its library, not the first page",
}


def _impure(tree: ast.AST) -> str | None:
    """What a node does that the pure heart may not, in words; None when it may."""
    match tree:
        case ast.Import(names=names):
            bad = [name.name for name in names if _foreign(name.name)]
            return f"imports {', '.join(bad)}" if bad else None
        case ast.ImportFrom(module=str(module), names=names, level=0) if module in NAMES_FROM:
            bad = [name.name for name in names if name.name not in NAMES_FROM[module]]
            return f"imports {', '.join(bad)} from {module}" if bad else None
        case ast.ImportFrom(module=str(module), level=0):
            return f"imports from {module}" if _foreign(module) else None
        case ast.ImportFrom():
            return "imports by dots"
        case ast.Call(func=ast.Name(id=name)) if name in IMPURE_CALLS:
            return f"calls {name}()"
        case ast.Call(func=ast.Attribute(attr=name)) if name in CLOCK_CALLS:
            return f"asks the clock: {name}()"
        case ast.Attribute(value=ast.Name(id="math"), attr=name) if name not in WHOLE_MATH:
            return f"uses math.{name}"
        case ast.Constant(value=float() | complex() as number):
            return f"writes the float {number}"
        case ast.Call(func=ast.Name(id="float" | "complex" as name)):
            return f"calls {name}()"
        case ast.AnnAssign(annotation=ast.Name(id="float")) | ast.arg(annotation=ast.Name(id="float")):
            return "keeps a float"
        case ast.FunctionDef(returns=ast.Name(id="float")):
            return "returns a float"
        case _:
            return None


def _foreign(module: str) -> bool:
    return module.partition(".")[0] != "onewhole" and module not in PURE_IMPORTS


def test_the_pure_heart_is_pure() -> None:
    """No file on floors 0 to 5 imports or calls what knows the world, and none writes a float."""
    found = [
        f"{place(path, node)} {why}"
        for path in pure_files()
        for node in nodes(path)
        if (why := _impure(node))
    ]
    assert not found


@pytest.mark.parametrize(
    ("code", "why"),
    [
        ("import os", "imports os"),
        ("from pathlib import Path", "imports from pathlib"),
        ("from random import choice", "imports from random"),
        ("import datetime as dt", "imports datetime"),
        ("from datetime import datetime", "imports datetime from datetime"),
        ("from math import sqrt, gcd", "imports sqrt from math"),
        ("from . import unit", "imports by dots"),
        ("math.log(2)", "uses math.log"),
        ("open('page.txt')", "calls open()"),
        ("date.today()", "asks the clock: today()"),
        ("half = 0.5", "writes the float 0.5"),
        ("float(half)", "calls float()"),
        ("def share(of: float): ...", "keeps a float"),
        ("def share() -> float: ...", "returns a float"),
    ],
)
def test_the_rule_sees_what_is_impure(code: str, why: str) -> None:
    """Each thing that the pure heart may not do is seen where it is done."""
    assert why in [_impure(node) for node in ast.walk(ast.parse(code))]


@pytest.mark.parametrize(
    "code", ["from math import gcd", "math.gcd(4, 6)", "from datetime import date", "x = 1 / y"]
)
def test_the_rule_lets_exact_work_pass(code: str) -> None:
    """Whole-number mathematics and a date that was handed in are pure."""
    assert [_impure(node) for node in ast.walk(ast.parse(code)) if _impure(node)] == []


def test_what_the_heart_may_import_exists() -> None:
    """The list names real modules of the standard library, msgspec, num2words and segno."""
    roots = {name.partition(".")[0] for name in PURE_IMPORTS}
    assert roots - sys.stdlib_module_names == {"msgspec", "num2words", "segno"}


def _late_imports(path: Path) -> list[str]:
    functions = [node for node in nodes(path) if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)]
    inside = {node for function in functions for node in ast.walk(function)}
    return sorted({place(path, node) for node in inside if isinstance(node, ast.Import | ast.ImportFrom)})


def test_no_function_imports() -> None:
    """Imports stand at the top, where the floors can be seen; the exceptions are listed with reasons."""
    files = [path for path in PACKAGE.rglob("*.py") if str(path.relative_to(PACKAGE)) not in LATE_IMPORTS]
    assert files
    assert [found for path in files for found in _late_imports(path)] == []


def test_an_import_inside_a_function_is_seen() -> None:
    """The one in the door is found, so the rule above can fail."""
    late = ROOT / "src" / "onewhole" / "cli" / "main.py"
    assert len(_late_imports(late)) == 1
