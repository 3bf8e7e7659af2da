"""`onewhole patterns`: what each error pattern would write on a problem."""

import json
from typing import Annotated

import typer

from onewhole.desk.page import patterns as desk

Problem = Annotated[str, typer.Argument(metavar="PROBLEM", help="The problem, in quotes: '9 5/8 - 4 6/8'.")]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(problem: Problem, as_json: AsJson = False) -> int:
    """Print the id, the raw answer and the plain name of every pattern that shows here."""
    if as_json:
        print(json.dumps(desk.as_object(problem), indent=2, ensure_ascii=False))
    else:
        print("\n".join(desk.told(problem)))
    return 0
