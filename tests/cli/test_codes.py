"""The command ends with a code: 0 fine, 1 the maths says no, 2 bad input, 3 a fault of the program."""

import subprocess
import sys
from pathlib import Path

import pytest

from onewhole.cli import door
from onewhole.errors import Fault
from tests.kit.terminal import Terminal

COMMAND = Path(sys.executable).with_name("onewhole")


@pytest.mark.parametrize(
    ("arguments", "code"),
    [
        (["work", "7 2/6 - 3 5/6"], 0),
        (["work", "7 2/6 - 3 5/6", "--strategy", "all"], 0),
        (["check", "7 2/6 = 6 8/6"], 0),
        (["check", "7 2/6 = 6 7/6"], 1),
        (["check", "3 3/6", "--problem", "7 2/6 - 3 5/6"], 2),
        (["patterns", "9 5/8 - 4 6/8"], 0),
        (["work", "7 2/0 - 3"], 2),
        (["work", "7 2/6 - 3 5/6", "--strategy", "fly"], 2),
        (["work", "7 2/6 - 3 5/6", "--blank", "-1"], 2),
        (["work"], 2),
        (["check", "7"], 2),
        (["patterns", "nothing"], 2),
    ],
)
def test_of_a_problem(onewhole: Terminal, arguments: list[str], code: int) -> None:
    """Something is shown on the right stream: results on standard output, refusals on standard error."""
    shown = onewhole(*arguments)
    assert shown.code == code
    assert bool(shown.out) == (code < 2)
    assert bool(shown.err) == (code == 2)


def test_of_an_audit(onewhole: Terminal, sheet: Path) -> None:
    """Findings alone stop nothing; with --strict they give 1, and a page without any gives 0."""
    twins = sheet.with_name("twins.txt")
    twins.write_text("1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6\n")
    assert [onewhole("audit", twins).code, onewhole("audit", twins, "--strict").code] == [0, 1]
    assert onewhole("audit", "examples/room12/sheet.txt", "--strict").code == 0


def test_of_marks(onewhole: Terminal, sheet: Path, answers: Path) -> None:
    """Wrong answers are no fault of the page: 0."""
    assert onewhole("mark", sheet, answers).code == 0


def test_a_mistake_of_the_program_is_no_result(onewhole: Terminal, monkeypatch: pytest.MonkeyPatch) -> None:
    """A false line that the program catches itself in gives 3 and says whose fault it is."""

    def broken(*_: object) -> int:
        raise Fault("two strategies disagree")

    monkeypatch.setattr(door, "call", broken)
    shown = onewhole("work", "7 2/6 - 3 5/6")
    assert shown == (
        3,
        "",
        "Two strategies disagree\n  next:  Please report what you typed; nothing was changed.\n",
    )


@pytest.mark.parametrize(
    ("arguments", "code", "out", "err"),
    [
        (["check", "1/2 = 2/4"], 0, "1/2 = 2/4\n  true, every equals sign\n", ""),
        (["work", "7 - 9"], 2, "", "The result is below zero"),
        (["check", "1/2 = 2/3"], 1, "1/2 = 2/3\n  line 1, column 7: 1/2 is not equal to 2/3\n", ""),
    ],
)
def test_of_the_installed_command(arguments: list[str], code: int, out: str, err: str) -> None:
    """What a script sees is what the process ends with."""
    ran = subprocess.run([COMMAND, *arguments], check=False, capture_output=True, text=True)
    assert (ran.returncode, ran.stdout.startswith(out), ran.stderr.startswith(err)) == (code, True, True)


def test_a_reader_that_has_enough(sheet: Path) -> None:
    """A pipe that is closed early is no mistake of anybody: nothing is told."""
    with subprocess.Popen(
        [COMMAND, "audit", sheet], stdout=subprocess.PIPE, stderr=subprocess.PIPE
    ) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.close()
        assert process.stderr.read() == b""
        assert process.wait() == 0
