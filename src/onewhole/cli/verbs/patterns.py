"""`onewhole patterns`: what each error pattern would write on a problem."""

from typing import Annotated

import typer

from onewhole.cli.say_json import say_json
from onewhole.desk.page import patterns as desk

Problem = Annotated[
    str,
    typer.Argument(
        metavar="PROBLEM",
        help="The problem, in quotes: '9 5/8 - 4 6/8', or with its story: '12 - 3 | Ana ...'.",
    ),
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(problem: Problem, as_json: AsJson = False) -> int:
    """Print the id, the raw answer and the plain name of every pattern that shows here."""
    if as_json:
        say_json(desk.as_object(problem))
    else:
        print("\n".join(desk.told(problem)))
    return 0
