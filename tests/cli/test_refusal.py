"""A refusal on the terminal."""

from onewhole.cli.refusal import told
from onewhole.errors import InputError


def test_it_begins_with_a_capital() -> None:
    """Whatever the room that refuses wrote, the terminal shows a sentence."""
    assert told(InputError("there is no such file", file="a.txt")).startswith("There is no such file\n")
    assert told(InputError("“a5” is none of the choices")) == "“a5” is none of the choices"
