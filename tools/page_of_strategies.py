"""docs/strategies.md: every strategy with its source, a problem worked by it, and why it may not suit."""

import ast
import inspect
from collections.abc import Iterator
from importlib import import_module
from types import ModuleType

from onewhole.desk.page.work import ToldUnsuitedError, told, work
from onewhole.languages.english.unsuited import unsuited
from onewhole.notations.sentences.text import text_of
from onewhole.working import comparing, comparing_fractions, missing, steps
from onewhole.working.products import in_columns
from onewhole.working.quotients import long_division
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.strategy import Act, Strategy, fits

HEAD = """\
# Strategies

Made from the table of strategies by `python -m tools.docs`. Columns are for whole numbers and decimals; each
of the others works whole numbers, mixed numbers, decimals and measures;
`onewhole work "7 2/6 - 3 5/6" --strategy all` shows every one that suits a problem.
A line in brackets is said by the teacher and need not be written by a pupil. Every line is equal to the
line before, which is checked each time.

| key | name | for | goes with |
| --- | --- | --- | --- |
"""
OPERATIONS = {Act.ADD: "adding", Act.SUBTRACT: "taking away", Act.EITHER: "both"}
EXAMPLES = ("7 2/6 - 3 5/6", "2 4/5 + 1 3/5")
#: What stands in columns.
IN_COLUMNS = ("304 - 128", "1234 + 2876 + 777", "12.05 - 3.8")
#: Problems, one of which each strategy that has its limits does not suit.
TRIED = (
    "52 - 27",
    "4006 - 1278",
    "4567 + 3789",
    "7 - 3",
    "7 5/6 - 2/6",
    "5/6 - 2/6",
    "4 - 2",
    "3 1/5 + 1/5",
    "3 + 1 1/5",
    "3/6 + 1/6",
)
#: How numbers are multiplied and divided in columns.
WRITTEN = (
    (in_columns.MULTIPLY_IN_COLUMNS, in_columns, ("386 x 24", "2.4 x 3.6")),
    (long_division.LONG_DIVISION, long_division, ("9876 / 24", "7263 / 9", "$7.35 / 3")),
)
OTHERS = (
    ("Comparing", comparing, ("345 ? 354", "0.64 ? 0.6", "5 ft ? 58 in")),
    (
        "Comparing fractions",
        comparing_fractions,
        ("4/5 ? 4/7", "3/7 ? 5/8", "7/8 ? 13/12", "5/6 ? 7/8", "5/6 ? 4/7", "2 3/4 ? 2 5/8", "3/5 ? 2/3"),
    ),
    ("A missing number", missing, ("9 - ? = 3 1/2",)),
    ("Several steps", steps, ("18 / 6 + 4 x (5 - 2)", "3 x (20 + 7)", "9 - 2 x 3/4")),
)


def strategies_page() -> str:
    """Return the page."""
    rows = [f"| `{one.key}` | {one.name} | {OPERATIONS[one.act]} | {_partner(one)} |" for one in STRATEGIES]
    return HEAD + "\n".join([*rows, "", *_strategies(), *_written(), *_others()])


def _partner(strategy: Strategy) -> str:
    if strategy is COLUMNS:
        return f"itself, or `{strategy.partner}` where there are no columns"
    if strategy.act is Act.EITHER:
        return "itself"
    return f"`{strategy.partner}`"


def _strategies() -> Iterator[str]:
    for strategy in STRATEGIES:
        problems = (EXAMPLES[not fits(strategy, taken=True)],) if strategy is not COLUMNS else IN_COLUMNS
        yield from (f"## {strategy.name}", "")
        yield from said_by(import_module(f"onewhole.working.strategies.{strategy.key}"))
        for problem in problems:
            yield from _working(problem, strategy.key)
        if unsuited := _unsuited(strategy):
            yield from (unsuited, "")


def _written() -> Iterator[str]:
    for way, module, problems in WRITTEN:
        yield from (f"## {way.name}", "")
        yield from said_by(module)
        for problem in problems:
            yield from _working(problem, way.key)


def _others() -> Iterator[str]:
    for title, module, problems in OTHERS:
        yield from (f"## {title}", "")
        yield from said_by(module)
        for problem in problems:
            yield from _working(problem, None)


def _working(problem: str, strategy: str | None) -> Iterator[str]:
    yield from ("```", *told(work(problem, strategy=strategy)), "```", "")


def said_by(module: ModuleType) -> Iterator[str]:
    """Yield a module's own words, its paragraphs apart and the source on a line of its own."""
    docstring = ast.get_docstring(ast.parse(inspect.getsource(module))) or ""
    for paragraph in docstring.replace("\nSource", "\n\nSource").split("\n\n"):
        yield from (" ".join(paragraph.split()), "")


def _unsuited(strategy: Strategy) -> str | None:
    """Return a problem that the strategy does not suit, with the reason that is told."""
    taken = fits(strategy, taken=True)
    for problem in TRIED:
        if ("-" in problem) != taken and strategy.act is not Act.EITHER:
            continue
        try:
            work(problem, strategy=strategy.key)
        except ToldUnsuitedError as refused:
            return f"For `{problem}` it is refused: {text_of(unsuited(refused.why))}"
    return None
