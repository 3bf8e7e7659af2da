"""`onewhole check`: is every equals sign true?"""

from typing import Annotated

import typer

from onewhole.cli.say_json import say_json
from onewhole.cli.typed import standard_input
from onewhole.desk.page import check as desk

Chain = Annotated[
    str, typer.Argument(metavar="CHAIN", help="The equalities, in quotes; - reads them from standard input.")
]
Of = Annotated[
    str | None, typer.Option("--problem", metavar="PROBLEM", help="The problem that they work on.")
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(chain: Chain, problem: Of = None, as_json: AsJson = False) -> int:
    """Say that all is true, or which equals sign is false; then the exit code is 1."""
    checked = desk.check(standard_input() if chain == "-" else chain, problem=problem)
    if as_json:
        say_json(desk.as_object(checked))
    else:
        print("\n".join(desk.told(checked)))
    return 0 if all(one.true for one in checked) else 1
