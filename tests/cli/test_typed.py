"""What is piped into the command."""

import subprocess
import sys
from pathlib import Path

import pytest

COMMAND = Path(sys.executable).with_name("onewhole")


@pytest.mark.parametrize(
    ("piped", "code", "start"),
    [
        (b"7 2/6 - 3 5/6 = 6 8/6 - 3 5/6\n= 3 3/6\n", 0, ""),
        ("\ufeff7⅔ = 6 5/3\n".encode(), 0, ""),
        (b"7 2/6 = 6 8/6\n7 2/6 = 6 7/6\n", 1, ""),
        (b"7 2/6 = 6 8/6\n\xff\n", 2, "What comes in is not plain text in UTF-8\n  where: line 2, standard"),
        (b"", 2, "There is no equality to check\n"),
    ],
)
def test_a_chain_may_be_piped_in(piped: bytes, code: int, start: str) -> None:
    """`onewhole check -` reads one or many lines; bytes that are no text are refused with their line."""
    ran = subprocess.run([COMMAND, "check", "-"], input=piped, check=False, capture_output=True)
    assert (ran.returncode, ran.stderr.decode().startswith(start)) == (code, True)
