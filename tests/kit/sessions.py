"""Terminal sessions in markdown: what is typed after `$ `, and what must be shown under it.

A session is a fenced block of the kind `console`. A line that begins with `> ` goes on with the command above
it. An exit code other than 0 stands last, as `[1]`. A line `...` stands for any lines. The sessions of one
page share a folder, which holds a copy of `examples/` when they begin.

What needs a shell (a pipe, another program, `onewhole` without a verb) goes to a shell. `onewhole VERB ...`
by itself is run here, by the same function that the installed command runs: a process of its own would only
load everything once more.
"""

import os
import re
import shlex
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import chdir, redirect_stderr, redirect_stdout
from dataclasses import dataclass
from io import BytesIO, TextIOWrapper
from pathlib import Path
from unittest.mock import patch

from onewhole.cli.main import VERBS, main

ROOT = Path(__file__).parents[2]
BLOCK = re.compile(r"(?<=^```console\n).*?(?=^```$)", re.DOTALL | re.MULTILINE)
MORE = "..."
#: What a shell would do something with, outside of quotes or in them.
_FOR_A_SHELL = re.compile(r"[|&;<>$`*?~\\\n!(){}]")
_WIDTH = "80"


@dataclass(frozen=True, slots=True)
class Typed:
    """One command and the lines that must be shown."""

    command: str
    shown: tuple[str, ...]

    @property
    def page(self) -> str:
        """The same as it stands on the page."""
        first, *more = self.command.split("\n")
        return "\n".join([f"$ {first}", *(f"> {line}" for line in more), *self.shown])

    def matches(self, found: tuple[str, ...]) -> bool:
        """Say whether what was shown is what must be shown."""
        wanted = [".*" if line == MORE else re.escape(line) for line in self.shown]
        pattern = "\n".join(wanted).replace("\n.*", "(?:\n.*)?").replace(".*\n", "(?:.*\n)?")
        return re.fullmatch(pattern, "\n".join(found), re.DOTALL) is not None


def typed_in(block: str) -> Iterator[Typed]:
    """Yield the commands of one block."""
    command: list[str] = []
    shown: list[str] = []
    for line in block.splitlines():
        if line.startswith("$ "):
            if command:
                yield Typed("\n".join(command), tuple(shown))
            command, shown = [line[2:]], []
        elif line.startswith("> ") and not shown:
            command.append(line[2:])
        else:
            shown.append(line.rstrip())
    if command:
        yield Typed("\n".join(command), tuple(shown))


def verb_of(command: str) -> list[str] | None:
    """Return the arguments of a command that is `onewhole VERB ...` and nothing else, or None.

    >>> verb_of('onewhole work "3 - ? = 1" --brief'), verb_of("onewhole work '3 - 1' | head -1")
    (['work', '3 - ? = 1', '--brief'], None)
    """
    outside = re.sub(r"\"[^\"$`\\]*\"|'[^']*'", "", command)
    if _FOR_A_SHELL.search(outside) or '"' in outside or "'" in outside:
        return None
    program, *arguments = shlex.split(command)
    return arguments if program == "onewhole" and arguments and arguments[0] in VERBS else None


def run(command: str, folder: Path) -> tuple[str, ...]:
    """Type a command in a folder; the lines shown, and the exit code where it is not 0."""
    arguments, (first, filters) = verb_of(command), piped(command)
    if arguments is not None:
        shown, code = _called(arguments, folder)
    elif first and (arguments := verb_of(first)) is not None:
        given, _ = _called(arguments, folder)
        shown, code = _typed(filters, folder, given)
    else:
        shown, code = _typed(command, folder)
    lines = tuple(line.rstrip() for line in shown.splitlines())
    return (*lines, f"[{code}]") if code else lines


def _called(arguments: list[str], folder: Path) -> tuple[str, int]:
    """Run a verb here, in a folder, with nothing to read: what it shows, and its exit code."""
    shown = TextIOWrapper(BytesIO(), encoding="utf-8", write_through=True)
    nothing = TextIOWrapper(BytesIO(), encoding="utf-8")
    with (
        chdir(folder),
        redirect_stdout(shown),
        redirect_stderr(shown),
        patch.object(sys, "stdin", nothing),
        patch.dict(os.environ, {"COLUMNS": _WIDTH}),
    ):
        code = main(arguments)
    shown.seek(0)
    return shown.read(), code


def piped(command: str) -> tuple[str, str]:
    """Return a command and what filters all that it shows; "" and "" where nothing does.

    What a command of a session says of an error is filtered too: none says any without `2>&1`.

    >>> piped("onewhole check - 2>&1 | sed 's/a|b/c/' | head -1"), piped("onewhole check '3 | 4'")
    (('onewhole check -', "sed 's/a|b/c/' | head -1"), ('', ''))
    """
    first, sign, filters = command.partition("|")
    shows_all = first.rstrip().removesuffix("2>&1")
    apart = sign and not filters.startswith("|") and shows_all.count("'") % 2 == shows_all.count('"') % 2 == 0
    return (shows_all.strip(), filters.strip()) if apart else ("", "")


def _typed(command: str, folder: Path, given: str = "") -> tuple[str, int]:
    """Give a command to a shell, and what it reads: what it shows, and its exit code."""
    beside = Path(sys.executable).parent
    ran = subprocess.run(
        ["sh", "-c", command],  # noqa: S607 - sh is on PATH
        cwd=folder,
        env={**os.environ, "PATH": f"{beside}{os.pathsep}{os.environ['PATH']}", "COLUMNS": _WIDTH},
        input=given,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        check=False,
        text=True,
        encoding="utf-8",
    )
    return ran.stdout, ran.returncode


@dataclass(frozen=True, slots=True)
class Page:
    """A page with what its commands show now, and those that show another thing than it says.

    ``excerpts`` are wrong where `...` stands for some lines: nothing can write those anew but a person.
    """

    text: str
    wrong: tuple[str, ...]
    excerpts: tuple[str, ...]


def page_as_it_runs(page: str, folder: Path) -> Page:
    """Run every session of a page; what shows something else is written anew, excerpts stay."""
    shutil.copytree(ROOT / "examples", folder / "examples")
    wrong: list[str] = []
    excerpts: list[str] = []

    def anew(block: re.Match[str]) -> str:
        written = []
        for typed in typed_in(block[0]):
            found = run(typed.command, folder)
            now = Typed(typed.command, found)
            if typed.matches(found):
                now = typed
            elif MORE in typed.shown:
                excerpts.append(now.page)
                now = typed
            else:
                wrong.append(now.page)
            written.append(now.page)
        return "\n".join([*written, ""])

    return Page(BLOCK.sub(anew, page), tuple(wrong), tuple(excerpts))
