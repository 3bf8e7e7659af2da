"""What keeps the usual run short, without a clock: it tries few of each, and says what it leaves to CI."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.house.plan import ROOT
from tests.kit.how_much import EXAMPLES, MORE_EXAMPLES

TESTS = ROOT / "tests"
FILES = sorted(TESTS.rglob("test_*.py"))


def _fixed_examples(parsed: ast.Module) -> Iterator[ast.keyword]:
    """Yield each number of examples that a test sets by itself, whatever the run."""
    for node in ast.walk(parsed):
        if (
            isinstance(node, ast.keyword)
            and node.arg == "max_examples"
            and isinstance(node.value, ast.Constant)
        ):
            yield node


def _marks(parsed: ast.Module, name: str) -> Iterator[tuple[str, tuple[str, ...]]]:
    """Yield the tests that bear a mark, each with what the mark says."""
    for node in parsed.body:
        for mark in getattr(node, "decorator_list", []):
            match mark:
                case ast.Call(func=ast.Attribute(attr=attr), args=given) if attr == name:
                    yield (
                        getattr(node, "name", ""),
                        tuple(str(one.value) for one in given if isinstance(one, ast.Constant)),
                    )


@pytest.fixture(scope="module")
def read() -> dict[Path, ast.Module]:
    """The files of the tests that speak of examples or of what is left to CI."""
    texts = {path: path.read_text(encoding="utf-8") for path in FILES if path != Path(__file__)}
    return {
        path: ast.parse(text) for path, text in texts.items() if "max_examples" in text or "mark.more" in text
    }


def test_a_test_takes_its_examples_from_the_run(read: dict[Path, ast.Module]) -> None:
    """A part of them or a few times as many, but no number of its own: the usual run would not be short."""
    found = [path.name for path, parsed in read.items() for _ in _fixed_examples(parsed)]
    assert found == []
    assert EXAMPLES < MORE_EXAMPLES


def test_what_is_left_to_ci_is_held_elsewhere(read: dict[Path, ast.Module]) -> None:
    """A test that the usual run leaves out names the files that hold its parts in tests of the usual run."""
    left = {path: list(_marks(parsed, "more")) for path, parsed in read.items()}
    assert any(left.values())
    for path, tests in left.items():
        for name, where in tests:
            assert where, f"{path.name}::{name} does not say where its parts are held"
            for one in where:
                held = TESTS / one
                assert held.is_file(), f"{path.name}::{name} names {one}, which is not there"
                here = ast.parse(held.read_text(encoding="utf-8"))
                tests_of_it = {node.name for node in ast.walk(here) if isinstance(node, ast.FunctionDef)}
                usual = {test for test in tests_of_it if test.startswith("test_")}
                assert usual - dict(left.get(held, ())).keys(), f"{one} is left out itself"


@pytest.mark.parametrize("more", ["max_examples=500", "deadline=None, max_examples=60"])
def test_a_number_of_its_own_is_seen(more: str) -> None:
    """The first rule can fail, and lets a share of the run's examples pass."""
    assert list(_fixed_examples(ast.parse(f"@settings({more})\ndef test(): ...")))
    assert not list(
        _fixed_examples(ast.parse("@settings(max_examples=settings().max_examples // 4)\ndef t(): ..."))
    )
