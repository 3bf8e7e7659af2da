"""The docs say what the code does: pages made from it are fresh, sessions and examples run, links lead on."""

import doctest
import json
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.cli.main import VERBS
from onewhole.misconceptions.catalogue import patterns
from onewhole.sheets.settings import SETTINGS
from onewhole.working.strategies.table import STRATEGIES
from tests.house.plan import ROOT, kept_files
from tests.kit.sessions import BLOCK, page_as_it_runs, run
from tools.docs import DOCS, PAGES

MARKDOWN = [path for path in kept_files() if path.suffix == ".md"]
SESSIONS = [
    path
    for path in MARKDOWN
    if path.parent in {ROOT, DOCS} and BLOCK.search(path.read_text(encoding="utf-8"))
]
LINK = re.compile(r"\]\((?!https?:|mailto:)([^)#\s]+)(?:#([^)\s]+))?\)")
#: A text of others that is shown as it is.
QUOTED = re.compile(r"^~~~text$.*?^~~~$", re.MULTILINE | re.DOTALL)
ANCHORED = re.compile(r"^#+ (.*)$", re.MULTILINE)


def _name(path: Path) -> str:
    return str(path.relative_to(ROOT))


#: Some take long to make.
LONG = pytest.mark.more("house/test_docs.py")


@pytest.mark.parametrize(
    "name", [pytest.param(name, marks=LONG) if name == "topics.md" else name for name in PAGES]
)
def test_a_page_made_from_the_code_is_fresh(name: str, accept: bool) -> None:
    """It is what `python -m tools.docs` writes; ONEWHOLE_ACCEPT=1 writes it anew."""
    made = PAGES[name]()
    if accept:
        (DOCS / name).write_text(made, encoding="utf-8")
    assert (DOCS / name).read_text(encoding="utf-8") == made, "write it anew: python -m tools.docs"


@pytest.mark.parametrize("path", SESSIONS, ids=_name)
def test_every_session_in_the_docs_runs(path: Path, tmp_path: Path, accept: bool) -> None:
    """Typed again, every command shows the same; `...` stands for lines that are left out."""
    now = page_as_it_runs(path.read_text(encoding="utf-8"), tmp_path)
    if accept:
        path.write_text(now.text, encoding="utf-8")
    assert not now.excerpts
    assert accept or not now.wrong


def test_the_readme_and_the_json_page_have_sessions() -> None:
    """The list above is not empty by mistake."""
    assert {"README.md", "docs/json.md"} <= {_name(path) for path in SESSIONS}


@pytest.mark.parametrize("path", [path for path in MARKDOWN if ">>> " in path.read_text()], ids=_name)
def test_python_examples_in_the_docs_run(path: Path) -> None:
    """Each `>>>` gives what stands under it."""
    failed, tried = doctest.testfile(str(path), module_relative=False, encoding="utf-8")
    assert (failed, tried > 5) == (0, True)


def test_every_act_is_in_the_page_on_python() -> None:
    """A section an act, with its name as `import onewhole` gives it."""
    page = (DOCS / "python.md").read_text()
    for act in ("work", "check", "patterns", "audit", "mark"):
        assert f"## {act}\n" in page
        assert f"onewhole.{act}(" in page


@pytest.mark.asvs("V15.3.1")
@pytest.mark.parametrize("verb", ["work", "check", "patterns", "compose", "audit", "print", "mark", "skills"])
def test_every_key_is_in_the_page_on_json(verb: str, tmp_path: Path) -> None:
    """The keys of the page's table and those of the object are the same."""
    section = re.split(r"^## ", (DOCS / "json.md").read_text(), flags=re.MULTILINE)
    (page,) = [part for part in section if part.startswith(f"{verb}\n")]
    told = {key for row in page.split("```")[0].splitlines() for key in _keys_in(row)}
    sheet, answers = tmp_path / "sheet.txt", tmp_path / "answers.csv"
    sheet.write_text("1. 5 1/8 - 2 5/8\n2. 6 2/8 - 3 6/8\n3. 6 7/8 - 3 2/8")
    (tmp_path / "q.csv").write_text("item,a,b\n1,1,0\n2,1,1\n3,0,1\n")
    (tmp_path / "right.csv").write_text("pupil,1,2,3\nK01,1,1,1\nK02,1,0,0\nK03,0,0,1\nK04,0,0,0\n")
    rows = [*["9,2 4/8,3 5/8"] * 7, *["2 4/8,9,9"] * 5]
    answers.write_text("\n".join(["pupil,1,2,3", *(f"K{at:02},{row}" for at, row in enumerate(rows, 1))]))
    (tmp_path / "asked.csv").write_text("pupil,asked,wrote,word\nK01,8 2/8 - 6 3/8,2 1/8,A01\n")
    typed = {
        "work": 'onewhole work "304 - 128" --json',
        "check": 'onewhole check "3 + 4 = 7 + 5 = 12" --json',
        "patterns": 'onewhole patterns "3/8 + 2/8" --json',
        "compose": "onewhole compose --skill add --number 4 --denominators 5 --json",
        "audit": "onewhole audit sheet.txt --json",
        "print": "onewhole print sheet.txt --fit 1 --json",
        "mark": "onewhole mark sheet.txt answers.csv --asked asked.csv --json",
        "skills": "onewhole skills right.csv q.csv --json",
    }[verb]
    shown = [line for line in run(typed, tmp_path) if not re.fullmatch(r"\[\d\]", line)]
    found = set(_keys(json.loads("\n".join(shown))))
    assert told == found


def test_every_key_of_the_list_is_in_the_page_on_the_folder(tmp_path: Path) -> None:
    """The keys of its table and those of a night's manifest.json are the same."""
    told = {key for row in (DOCS / "folder.md").read_text().splitlines() for key in _keys_in(row)}
    (tmp_path / "sheet.txt").write_text("1. 5 1/8 - 2 5/8\n")
    run("onewhole print sheet.txt", tmp_path)
    assert told == set(_keys(json.loads((tmp_path / "out" / "manifest.json").read_text())))


def _keys_in(row: str) -> list[str]:
    """The keys in the first cell of a row of a table."""
    return re.findall(r"`([a-z0-9_.\[\]]+)`", row.split("|")[1]) if row.startswith("| `") else []


def _keys(found: object, path: str = "") -> Iterator[str]:
    """The path of every value; an object whose keys are ids is one value."""
    match found:
        case dict():
            for key, value in found.items():
                name = f"{path}.{key}" if path else key
                ids = isinstance(value, dict) and all(inner.isupper() for inner in value)
                if ids or not isinstance(value, dict):
                    yield name
                yield from () if ids else _keys(value, name)
        case list():
            for value in found:
                yield from _keys(value, f"{path}[]")
        case _:
            return


def test_every_strategy_pattern_verb_and_setting_is_in_the_docs() -> None:
    """With its own heading or row, so that a reader finds it."""
    strategies, listed, commands, sheets = (
        (DOCS / name).read_text()
        for name in ("strategies.md", "patterns.md", "commands.md", "sheet-format.md")
    )
    assert [one.key for one in STRATEGIES if f"## {one.name}\n" not in strategies] == []
    assert [one.id for one in patterns() if f"### {one.id} {one.name}\n" not in listed] == []
    assert [verb for verb in VERBS if f"## {verb}\n" not in commands] == []
    assert [one.name for one in SETTINGS if f"| `{one.name}` |" not in sheets] == []


@pytest.mark.parametrize("path", MARKDOWN, ids=_name)
def test_every_link_leads_somewhere(path: Path) -> None:
    """A link to a file leads to one, and a link to a heading to one."""
    dead = []
    for name, heading in LINK.findall(QUOTED.sub("", path.read_text(encoding="utf-8"))):
        goal = path.parent / name
        if not goal.exists():
            dead.append(name)
        elif heading and heading not in _anchors(goal):
            dead.append(f"{name}#{heading}")
    assert not dead


def test_every_place_in_the_code_is_there() -> None:
    """Files and folders that ARCHITECTURE.md names exist."""
    page = (ROOT / "ARCHITECTURE.md").read_text(encoding="utf-8")
    named = re.findall(r"`((?:src|tests|docs|bench|tools|changelog\.d)/[\w./-]*)`", page)
    assert len(named) > 10
    assert [name for name in named if not (ROOT / name).exists()] == []


def _anchors(page: Path) -> set[str]:
    """The headings of a page as links name them."""
    heads = ANCHORED.findall(page.read_text(encoding="utf-8"))
    return {re.sub(r"[^\w -]", "", head.lower()).replace(" ", "-") for head in heads}


def test_the_two_commands_of_the_readme_are_there() -> None:
    """`make run` and `make test` stand in the README and in the Makefile."""
    makefile = (ROOT / "Makefile").read_text()
    assert "\nmake run\nmake test\n" in (ROOT / "README.md").read_text()
    assert "\nrun: " in makefile
    assert "\ntest: " in makefile
