"""What a user types, and what the terminal shows."""

import json
import os
from typing import NamedTuple

import pytest

from onewhole.cli.main import main


class Shown(NamedTuple):
    """The exit code, and what was shown."""

    code: int
    out: str
    err: str

    @property
    def data(self) -> dict[str, object]:
        """What was shown, read as one JSON object."""
        read = json.loads(self.out)
        assert isinstance(read, dict)
        return read


class Terminal:
    """Calls the command in this process."""

    def __init__(self, capsys: pytest.CaptureFixture[str]) -> None:
        self._capsys = capsys

    def __call__(self, *arguments: object) -> Shown:
        """Type what is given after the command."""
        before = os.umask(0o022)  # a command that changes it may, and ends with it
        try:
            code = main([str(argument) for argument in arguments])
        finally:
            os.umask(before)
        return Shown(code, *self._capsys.readouterr())
