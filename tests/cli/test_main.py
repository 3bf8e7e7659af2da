"""The command answers for itself, loads one verb, and ends with a code that a script can trust."""

import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from types import SimpleNamespace
from typing import Annotated

import pytest
import typer

from onewhole import __version__
from onewhole.cli import door, main, verbs
from onewhole.cli.refusal import told
from onewhole.errors import InputError, OnewholeError

VERB_FILES = Path(verbs.__file__).parent


def run(kite: str, strips: Annotated[int, typer.Option("--strips")] = 1) -> int:
    """A verb made for these tests: prints, and says no to a kite of no strips."""
    if kite == "torn":
        raise InputError("This kite is torn", line=1, remedy="Cut a new strip.")
    if kite == "caught":
        signal.raise_signal(signal.SIGINT)
    if kite == "lost":
        raise RuntimeError("nobody thought of this")
    print(f"{kite}: {strips} strips of {kite}⅔")
    return 0 if strips else 1


@pytest.fixture
def fly(monkeypatch: pytest.MonkeyPatch) -> None:
    """Puts the verb `fly` into the table and its code where the door looks."""
    monkeypatch.setitem(main.VERBS, "fly", "Fly a kite.")
    monkeypatch.setattr(door, "import_module", lambda _: SimpleNamespace(run=run))


def test_the_table_and_the_verbs_are_the_same() -> None:
    """Every verb in the table has its file, and every file stands in the table."""
    assert sorted(main.VERBS) == sorted(
        file.stem for file in VERB_FILES.glob("*.py") if file.stem != "__init__"
    )


@pytest.mark.parametrize("arguments", [[], ["--help"], ["-h"]])
def test_help_names_every_verb(arguments: list[str], fly: None, capsys: pytest.CaptureFixture[str]) -> None:
    """Asked for help or for nothing, the command tells each verb and its sentence."""
    assert main.main(arguments) == 0
    said = capsys.readouterr().out
    assert all(f"  {verb}" in said and sentence in said for verb, sentence in main.VERBS.items())


def test_an_unknown_verb_is_bad_input(capsys: pytest.CaptureFixture[str]) -> None:
    """It is named, and the verbs there are follow."""
    assert main.main(["flew"]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert err.startswith("There is no verb 'flew'.\n\nonewhole VERB ...")


@pytest.mark.parametrize(
    ("arguments", "code", "out", "err"),
    [
        (["red"], 0, "red: 1 strips of red⅔\n", ""),
        (["red", "--strips", "0"], 1, "red: 0 strips of red⅔\n", ""),
        (["torn"], 2, "", "This kite is torn\n  where: line 1\n  next:  Cut a new strip.\n"),
    ],
)
def test_a_verb_gives_its_code(
    arguments: list[str], code: int, out: str, err: str, fly: None, capsys: pytest.CaptureFixture[str]
) -> None:
    """0: fine; 1: the maths says no; 2: a refusal, with what, where and what to do next on standard error."""
    assert main.main(["fly", *arguments]) == code
    assert capsys.readouterr() == (out, err)


@pytest.mark.parametrize("arguments", [[], ["red", "--strips", "two"], ["red", "--tail"]])
def test_arguments_that_do_not_fit_are_bad_input(
    arguments: list[str], fly: None, capsys: pytest.CaptureFixture[str]
) -> None:
    """Typer says what is missing or wrong; the code is 2."""
    assert main.main(["fly", *arguments]) == 2
    assert "onewhole fly" in capsys.readouterr().err


def test_a_verb_tells_its_help(fly: None, capsys: pytest.CaptureFixture[str]) -> None:
    """The help is the table's sentence and the verb's own options."""
    assert main.main(["fly", "--help"]) == 0
    said = capsys.readouterr().out
    assert "Fly a kite." in said
    assert "--strips" in said


def test_a_fault_shows_itself_whole(fly: None, capsys: pytest.CaptureFixture[str]) -> None:
    """What nobody thought of keeps its trace and never looks like an answer about mathematics."""
    assert main.main(["fly", "lost"]) == 3
    said = capsys.readouterr().err
    assert said.startswith("Traceback")
    assert 'raise RuntimeError("nobody thought of this")' in said
    assert said.endswith("This is a fault in onewhole and not in what you typed.\n")


def test_a_refusal_shows_only_what_is_known() -> None:
    """No empty line for a place or a next step that is not known."""
    assert told(OnewholeError("The page is empty")) == "The page is empty"


def test_the_command_answers_without_loading_typer() -> None:
    """The installed command tells its version; doing so loads neither Typer nor any room."""
    code = (
        "import sys; from onewhole.cli.main import main; main(['--version']);"
        "print([name for name in sys.modules if name.startswith(('typer', 'rich', 'onewhole'))])"
    )
    said = subprocess.run([sys.executable, "-c", code], check=True, capture_output=True, text=True).stdout
    assert said == f"onewhole {__version__}\n{['onewhole', 'onewhole.cli', 'onewhole.cli.main']}\n"


def test_help_into_a_pipe_that_is_closed() -> None:
    """`head` that has what it wants gives no trace and no other code."""
    read, write = os.pipe()
    os.close(read)
    command = Path(sys.executable).with_name("onewhole")
    ran = subprocess.run([command, "--help"], check=False, stdout=write, stderr=subprocess.PIPE)
    os.close(write)
    assert (ran.returncode, ran.stderr) == (0, b"")


@pytest.fixture
def heard() -> Iterator[None]:
    """Ctrl-C is heard, here and in what is started; a shell lets jobs in the background ignore it."""
    before = signal.signal(signal.SIGINT, signal.default_int_handler)
    yield
    signal.signal(signal.SIGINT, before)


@pytest.mark.usefixtures("heard")
def test_ctrl_c_while_a_verb_is_at_work(fly: None, capsys: pytest.CaptureFixture[str]) -> None:
    """It ends with the code that a shell expects, and without a trace."""
    assert main.main(["fly", "caught"]) == 130
    assert capsys.readouterr() == ("", "Stopped.\n")


@pytest.mark.usefixtures("heard")
@pytest.mark.parametrize(
    "loaded", ["onewhole.cli.door", "typer", "onewhole.cli.verbs.audit", "onewhole.errors"]
)
def test_ctrl_c_while_the_command_starts(loaded: str) -> None:
    """Whatever is being loaded, the process ends at once, by the signal and without a trace."""
    code = f"""
import signal, sys
class Meets:
    def find_spec(self, name, *_):
        if name == {loaded!r}:
            signal.raise_signal(signal.SIGINT)
sys.meta_path.insert(0, Meets())
sys.argv = ["onewhole", "audit", "none.txt"]
from onewhole.cli.main import main
sys.exit(main())
"""
    ran = subprocess.run([sys.executable, "-c", code], check=False, capture_output=True, text=True)
    assert (ran.returncode, ran.stdout, ran.stderr) == (-signal.SIGINT, "", "")


def test_the_installed_command_runs() -> None:
    """The script beside this Python is `onewhole`."""
    command = Path(sys.executable).with_name("onewhole")
    said = subprocess.run([command, "--version"], check=True, capture_output=True, text=True).stdout
    assert said == f"onewhole {__version__}\n"
