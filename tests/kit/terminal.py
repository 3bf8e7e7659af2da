"""What a user types, and what the terminal shows."""

import json
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
        code = main([str(argument) for argument in arguments])
        return Shown(code, *self._capsys.readouterr())
