"""`onewhole tell`: a problem as a word problem of the class."""

from typing import Annotated

import typer

from onewhole.cli.say_json import say_json
from onewhole.desk.page import stories as desk

Problem = Annotated[str, typer.Argument(metavar="PROBLEM", help="The problem, in quotes: '5 1/3 - 2 2/3'.")]
Kind = Annotated[
    str | None,
    typer.Option(
        "--kind",
        metavar="KIND",
        help="How it is built, such as take-from or equal-groups; left out, the seed chooses.",
    ),
]
Seed = Annotated[
    int, typer.Option("--seed", metavar="NUMBER", min=0, help="0, 1, 2 ... for other words each time.")
]
Whole = Annotated[
    str | None, typer.Option("--whole", metavar="WORDS", help="What the class calls one whole.")
]
Stories = Annotated[
    str | None,
    typer.Option(
        "--stories",
        metavar="WORDS",
        help="Kitchen, garden or school hall, or who does what: 'the trail club walks'.",
    ),
]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(
    problem: Problem,
    kind: Kind = None,
    seed: Seed = 0,
    whole: Whole = None,
    stories: Stories = None,
    as_json: AsJson = False,
) -> int:
    """Print the story, how it is built, how hard it is to read, and its line for a sheet."""
    story = desk.tell(problem, kind=kind, seed=seed, whole=whole, stories=stories)
    if as_json:
        say_json(desk.as_object(story))
    else:
        print("\n".join(desk.told(story)))
    return 0
