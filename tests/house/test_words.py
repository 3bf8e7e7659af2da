"""What may stand in a kept file: nothing about the place where it was made."""

import re
from pathlib import Path

import pytest

from tests.house.plan import ROOT, kept_files

#: Written in pieces, so that this file may be read by its own test.
HOSTS = (
    "pypi" + ".org",
    "python" + "hosted",
    "npmjs" + ".",
    "registry" + ".",
    "debian" + ".org",
    "://" + "deb.",
)
FOLDERS = ("work", "home", "root", "opt", "tmp", "var", "Users", "mnt")
MAKERS = (
    "agen" + "ts?",
    "A" + "I",
    "LL" + "Ms?",
    "chat" + "bots?",
    "language" + " models?",
    "co" + "pilot",
    "Clau" + "de",
)
MAKING = ("seed" + " documents?", "issues?" + r" #?\d+", "(this|last|previous|coding)" + " sessions?")

FORBIDDEN = {
    "a registry's host": re.compile(
        rf"(?<!@)({'|'.join(map(re.escape, HOSTS))})", re.IGNORECASE
    ),  # behind an @ it is the address of a person whose licence is shown,
    "a folder of one machine": re.compile(rf"""(?<![\w.~$)}}*/-])/({"|".join(FOLDERS)})/\w"""),
    "its makers": re.compile(rf"\b({'|'.join(MAKERS)})\b"),
    "its making": re.compile(rf"\b({'|'.join(MAKING)})\b", re.IGNORECASE),
}


def _text(path: Path) -> str:
    try:
        return path.read_text(encoding="utf-8")
    except UnicodeDecodeError:
        return ""  # a picture or a page


@pytest.mark.parametrize("what", FORBIDDEN)
def test_no_file_tells_about(what: str) -> None:
    """A file tells about schools and mathematics and its own code."""
    found = [
        f"{path.relative_to(ROOT)}:{number}: {line.strip()[:100]}"
        for path in kept_files()
        for number, line in enumerate(_text(path).splitlines(), start=1)
        if FORBIDDEN[what].search(line)
    ]
    assert not found


@pytest.mark.parametrize(
    ("what", "line"),
    [
        ("a registry's host", "see https://" + "pypi" + ".org/project"),
        ("a folder of one machine", "read " + "/wo" + "rk/main/README.md"),
        ("a folder of one machine", "'" + "/ho" + "me/teacher'"),
        ("its makers", "written by an " + "A" + "I"),
        ("its making", "see issue" + " #12"),
    ],
)
def test_the_rule_sees(what: str, line: str) -> None:
    """Each rule finds what it is for."""
    assert FORBIDDEN[what].search(line)


@pytest.mark.parametrize(
    "line", ["../shared/data", "src/work/x", "#!/usr/bin/env bash", "her work/home rhythm", "aid"]
)
def test_the_rule_lets_pass(line: str) -> None:
    """Relative paths and plain words are no findings."""
    assert [what for what, rule in FORBIDDEN.items() if rule.search(line)] == []
