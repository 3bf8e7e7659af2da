"""docs/security-checklist.md: the lines of the OWASP ASVS, each with its tests or why it has none."""

import ast
import tomllib
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

ROOT = Path(__file__).parents[1]
LINES = ROOT / "tools" / "asvs.toml"
CHAPTERS = {
    "V1": "Encoding and sanitization",
    "V2": "Validation and business logic",
    "V3": "Web frontend security",
    "V4": "API and web service",
    "V5": "File handling",
    "V6": "Authentication",
    "V7": "Session management",
    "V8": "Authorization",
    "V9": "Self-contained tokens",
    "V10": "OAuth and OIDC",
    "V11": "Cryptography",
    "V12": "Secure communication",
    "V13": "Configuration",
    "V14": "Data protection",
    "V15": "Secure coding and architecture",
    "V16": "Security logging and error handling",
    "V17": "WebRTC",
}
#: What stands before the tables: written by hand.
HEAD = ROOT / "tools" / "security_checklist.txt"


@dataclass(frozen=True, slots=True)
class Line:
    """A line of the standard, and what answers it besides tests."""

    number: str
    level: int
    words: str
    page: str = ""
    apart: str = ""
    unmet: str = ""
    note: str = ""

    @property
    def chapter(self) -> str:
        """Return the chapter: V6 of V6.2.1."""
        return self.number.partition(".")[0]

    @property
    def order(self) -> tuple[int, ...]:
        """Return what sorts lines: V10 comes after V9."""
        return tuple(int(part) for part in self.number[1:].split("."))


@cache
def lines() -> tuple[Line, ...]:
    """Return every line in its order. ValueError for a number that stands twice."""
    read = tomllib.loads(LINES.read_text(encoding="utf-8"))
    found = [Line(number, **row) for number, row in read["lines"].items()]
    for group in read["groups"]:
        for one in group["lines"].split():
            number, _, level = one.partition(":")
            found.append(Line(number, int(level), f"{group['words']}.", apart=group["apart"]))
    if len({one.number for one in found}) < len(found):
        raise ValueError("a line stands twice in asvs.toml")
    return tuple(sorted(found, key=lambda one: one.order))


@cache
def proofs() -> dict[str, tuple[str, ...]]:
    """Return the tests that bear each number, as their files spell it: the markers are read, not run."""
    found: dict[str, list[str]] = {}
    for path in sorted((ROOT / "tests").rglob("test_*.py")):
        text = path.read_text(encoding="utf-8")
        if "mark.asvs" not in text:
            continue
        for node in ast.walk(ast.parse(text)):
            if isinstance(node, ast.FunctionDef):
                for number in _numbers(node):
                    found.setdefault(number, []).append(f"{path.relative_to(ROOT)}::{node.name}")
    return {number: tuple(tests) for number, tests in found.items()}


def _numbers(test: ast.FunctionDef) -> Iterator[str]:
    for mark in test.decorator_list:
        match mark:
            case ast.Call(func=ast.Attribute(ast.Attribute(ast.Name("pytest"), "mark"), "asvs"), args=args):
                yield from (ast.literal_eval(one) for one in args)
            case _:
                pass


def kind_of(line: Line) -> str:
    """Return what answers a line: by a test, by a page, not met, or why it does not apply."""
    if line.unmet:
        return "not met"
    if line.apart:
        return "does not apply"
    return "by a page" if line.page else "by a test"


def security_page() -> str:
    """Return the page."""
    return HEAD.read_text(encoding="utf-8") + "\n".join(_page())


def _page() -> Iterator[str]:
    levels = (1, 2)
    kinds = ("by a test", "by a page", "does not apply", "not met")
    counted = Counter((one.level, kind_of(one)) for one in lines())
    yield ""
    yield "| level | lines | proved by a test | told on a page | does not apply | not met |"
    yield "| --- | --- | --- | --- | --- | --- |"
    for level in levels:
        row = [counted[level, kind] for kind in kinds]
        yield f"| {level} | {sum(row)} | {' | '.join(map(str, row))} |"
    yield ""
    yield f"Of level 3, {sum(one.level == 3 for one in lines())} lines that a test proves stand here too."
    yield ""
    yield "## What applies and is not met"
    yield ""
    for one in lines():
        if one.unmet:
            yield f"- **{one.number}** {one.words} {one.unmet}"
    for chapter, name in CHAPTERS.items():
        yield from (
            "",
            f"## {chapter} {name}",
            "",
            "| line | level | what it asks | answer |",
            "| --- | --- | --- | --- |",
        )
        for one in lines():
            if one.chapter == chapter:
                yield f"| {one.number} | {one.level} | {one.words} | {_answer(one)} |"
    yield ""


def _answer(line: Line) -> str:
    told = []
    if line.unmet:
        told.append(f"**Not met.** {line.unmet}")
    if line.apart:
        told.append(f"Does not apply: {line.apart}")
    if line.page:
        told.append(f"[{line.page}]({line.page})")
    told += [f"`{test}`" for test in proofs().get(line.number, ())]
    if line.note:
        told.append(line.note)
    return "<br>".join(told)
