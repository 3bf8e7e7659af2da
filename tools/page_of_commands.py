"""docs/commands.md: every verb as its own help tells it."""

import os
from collections.abc import Iterator
from contextlib import redirect_stdout
from io import StringIO
from unittest.mock import patch

from onewhole.cli.main import VERBS, main

HEAD = """\
# The command

Made from each verb's own help by `python -m tools.docs`.

A verb ends with an exit code that a script can trust:

| code | what it means |
| --- | --- |
| 0 | fine |
| 1 | the maths says no: a false equals sign, or something found by `audit --strict` |
| 2 | the input cannot be used: standard error says what is wrong, where, and what to do next |
| 3 | a fault in onewhole itself, told with its whole trace |

Input that cannot be used never costs anything: no file that was there is changed, and no page is
half-written. `--json` prints the objects of [json.md](json.md). Problems are typed as
[sheet-format.md](sheet-format.md#problems) shows.

"""


def commands_page() -> str:
    """Return the page."""
    return HEAD + "\n".join(_page())


def _page() -> Iterator[str]:
    yield from ("```", shown(["--help"]), "```", "")
    for verb in VERBS:
        yield from (f"## {verb}", "", "```", shown([verb, "--help"]), "```", "")
        yield f"A session that runs: [tests/commands/{verb}.md](../tests/commands/{verb}.md)."
        yield ""


def shown(arguments: list[str]) -> str:
    """Return what the command shows on a terminal of 80 columns."""
    out = StringIO()
    with patch.dict(os.environ, {"COLUMNS": "80"}), redirect_stdout(out):
        main(arguments)
    return "\n".join(line.rstrip() for line in out.getvalue().strip().splitlines())
